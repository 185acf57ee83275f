// A write of the contract. Once it has answered, everything on the screen is read again.
import { type UseMutationResult, useMutation, useQueryClient } from '@tanstack/react-query';
import type { Input, Output } from '../../app/contract/contract.ts';
import { call, type WriteName } from './client.ts';
import { readAgain } from './query-client.ts';

export type Write<M extends WriteName> = UseMutationResult<Output<M>, Error, Input<M>>;

/**
 * `mutate(input, { onSuccess })` from a key; `error` holds the refusal until the next try. Main announces every write
 * too, but its announcement can be late or lost, and a person must see what they just wrote.
 */
export function useWrite<M extends WriteName>(method: M): Write<M> {
  const queryClient = useQueryClient();
  return useMutation<Output<M>, Error, Input<M>>({
    mutationFn: (input) => call(method, input),
    onSuccess: () => readAgain(queryClient),
  });
}
