// A log that does not grow without end: when it is full it steps aside for a new one, and the oldest goes.
import { appendFileSync, existsSync, readFileSync, renameSync, statSync } from 'node:fs';

const largest_bytes = 500_000;
/** Those that stepped aside, newest first. */
const earlier = ['.1', '.2'] as const;

export function appendToLog(file: string, entry: string): void {
  if (existsSync(file) && statSync(file).size + Buffer.byteLength(entry) > largest_bytes) stepAside(file);
  appendFileSync(file, entry);
}

/** All that is still kept, oldest first. */
export function readLog(file: string): string {
  return [...earlier.map((ending) => `${file}${ending}`).reverse(), file]
    .filter((each) => existsSync(each))
    .map((each) => readFileSync(each, 'utf8'))
    .join('');
}

function stepAside(file: string): void {
  const names = [file, ...earlier.map((ending) => `${file}${ending}`)];
  for (let place = names.length - 1; place > 0; place -= 1) {
    const from = names[place - 1] ?? file;
    // A rename takes the place of what had the name.
    if (existsSync(from)) renameSync(from, names[place] ?? file);
  }
}
