// The client, derived from the contract: what may be asked, and the answer or an error to show.
import type { Contract, Input, MethodName, Output } from '../../app/contract/contract.ts';
import { errorOf, ShutOut, Unanswered } from './failures.ts';
import { transport } from './transport.ts';

type NameOfKind<K extends 'read' | 'write'> = {
  [M in MethodName]: Contract[M]['kind'] extends K ? M : never;
}[MethodName];
export type ReadName = NameOfKind<'read'>;
export type WriteName = NameOfKind<'write'>;

/** Asks main. Throws `Refused`, `Fault`, `StorageFailed`, `Unanswered` or `ShutOut`, and nothing else. */
export async function call<M extends MethodName>(method: M, input: Input<M>): Promise<Output<M>> {
  const reply = await transport.call(method, input).catch((cause: unknown) => {
    throw cause instanceof ShutOut ? cause : new Unanswered(cause);
  });
  if (!reply.ok) throw errorOf(reply.error);
  // Main validated it against the contract before it was sent.
  return reply.value as Output<M>;
}
