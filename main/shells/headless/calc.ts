// The calculator console: `npm run --silent calc -- NAME < input.json`, `calc -- list`, `calc -- NAME --explain`.
import { text } from 'node:stream/consumers';
import { accept, type Result, refuse } from '../../../app/base/result.ts';
import { answer } from './calculator/computation.ts';
import { explain } from './calculator/explain.ts';
import { computations } from './calculator/registry.ts';

/** What goes to standard output: names, an explanation, or one JSON object. */
async function run(words: readonly string[]): Promise<Result<string>> {
  const [name, option, ...more] = words;
  if (name === undefined) return refuse('usage', 'Say which computation: calc -- list names them.');
  if (name === 'list') {
    return option === undefined
      ? accept(computations.map((each) => each.name).join('\n'))
      : refuse('usage', 'list takes nothing more: it names every computation.');
  }
  const chosen = computations.find((each) => each.name === name);
  if (!chosen) return refuse('unknown-name', `“${name}” is not a computation here: calc -- list names them.`);
  if (option === '--explain') {
    return more.length === 0
      ? accept(explain(chosen))
      : refuse('usage', `“${more[0]}” is not understood: nothing may follow --explain.`);
  }
  if (option !== undefined) return refuse('usage', `“${option}” is not understood: only --explain may follow a name.`);
  const result = answer(chosen, await text(process.stdin));
  return result.ok ? accept(JSON.stringify(result.value)) : result;
}

const result = await run(process.argv.slice(2)).catch(() =>
  refuse('fault', 'Something broke inside: this input should have had an answer or a plain refusal.'),
);
process.stdout.write(`${result.ok ? result.value : JSON.stringify({ refusal: result.refusal })}\n`);
process.exitCode = result.ok ? 0 : 2;
