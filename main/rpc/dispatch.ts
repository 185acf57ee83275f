// The one way in: look the method up, validate what came, run it, validate what goes back. Both shells call this.
import { type Contract, contract, type MethodName, type Output } from '../../app/contract/contract.ts';
import type { Failure, Reply } from '../../app/contract/reply.ts';
import { Refused, storageErrorOf } from '../database/errors.ts';
import type { Desk } from '../shop/desk.ts';
import { handlers } from './handlers.ts';
import { sentenceOf } from './sentence-of.ts';

/** Answers a call with the value or with one of the three failures; it never throws. */
export async function dispatch<M extends MethodName>(desk: Desk, name: M, input: unknown): Promise<Reply<Output<M>>> {
  if (!Object.hasOwn(contract, name)) {
    return failed({ kind: 'refusal', code: 'unknown-method', message: `There is no method called ${String(name)}.` });
  }
  const method: Contract[M] = contract[name];
  const parsed = method.input.safeParse(input);
  if (!parsed.success) {
    const { message, field } = sentenceOf(parsed.error);
    return failed({ kind: 'refusal', code: 'input', message, ...(field === '' ? {} : { field }) });
  }
  if (holdsUnkeepable(parsed.data)) {
    return failed({ kind: 'refusal', code: 'input', message: 'What was sent holds characters that no text has.' });
  }
  try {
    const run = handlers[name] as (desk: Desk, input: unknown) => Promise<unknown>;
    const value = method.output.parse(await run(desk, parsed.data)) as Output<M>;
    if (method.kind === 'write') desk.announceChange();
    return { ok: true, value };
  } catch (thrown) {
    return failed(failureOf(desk, name, thrown));
  }
}

/** NUL ends a text for SQLite, and half a surrogate pair comes back from it as another character. */
function holdsUnkeepable(value: unknown): boolean {
  if (typeof value === 'string') return value.includes('\0') || !value.isWellFormed();
  return typeof value === 'object' && value !== null && Object.values(value).some(holdsUnkeepable);
}

function failed(error: Failure): { readonly ok: false; readonly error: Failure } {
  return { ok: false, error };
}

function failureOf(desk: Desk, name: string, thrown: unknown): Failure {
  if (thrown instanceof Refused) {
    const field = thrown.field === undefined ? {} : { field: thrown.field };
    return { kind: 'refusal', code: thrown.code, message: thrown.message, ...field };
  }
  const storage = storageErrorOf(thrown);
  if (storage) return { kind: 'storage', code: storage.code, message: storage.message };
  const id = desk.logFault(name, thrown);
  return { kind: 'fault', id, message: `Something went wrong inside Thoubook and nothing was written (fault ${id}).` };
}
