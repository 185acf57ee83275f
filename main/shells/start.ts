// `npm start`: the desktop window where its runtime is there or can be fetched, else the loopback host.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

const root = join(import.meta.dirname, '../..');
const electronFolder = join(root, 'node_modules/electron');

/** The desktop runtime's executable, judged by its files: requiring the package from Node would start a download. */
function desktopRuntime(): string | undefined {
  const pathFile = join(electronFolder, 'path.txt');
  if (!existsSync(pathFile) || !existsSync(join(electronFolder, 'dist/version'))) return undefined;
  const executable = join(electronFolder, 'dist', readFileSync(pathFile, 'utf8').trim());
  return existsSync(executable) ? executable : undefined;
}

function fetchDesktopRuntime(): string | undefined {
  if (process.env.THOUBOOK_DESKTOP === 'no' || !existsSync(join(electronFolder, 'install.js'))) return undefined;
  console.log('Looking for the desktop runtime…');
  spawnSync(process.execPath, ['install.js'], { cwd: electronFolder, stdio: 'ignore', timeout: 120_000 });
  return desktopRuntime();
}

const runtime = desktopRuntime() ?? fetchDesktopRuntime();
if (runtime) {
  const { status } = spawnSync(runtime, [root], { stdio: 'inherit' });
  process.exit(status ?? 1);
}
console.log('No desktop runtime here: serving the same book to a browser on this machine.');
await import(pathToFileURL(join(root, 'dist/main/serve.js')).href);
