// Asking the calculator within a test.
import { answer } from '../../main/shells/headless/calculator/computation.ts';
import { computations } from '../../main/shells/headless/calculator/registry.ts';

/** What one computation answers, through the same door as the console but in this process. */
export function ask(name: string, input: unknown) {
  const computation = computations.find((each) => each.name === name);
  if (!computation) throw new Error(`no computation is called ${name}`);
  const result = answer(computation, typeof input === 'string' ? input : JSON.stringify(input));
  return result.ok
    ? (JSON.parse(JSON.stringify(result.value)) as Record<string, unknown>)
    : { refusal: result.refusal };
}
