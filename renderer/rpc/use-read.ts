// A read of the contract, kept on the screen and read again when something was written.
import { keepPreviousData, skipToken, type UseQueryResult, useQuery } from '@tanstack/react-query';
import type { Input, Output } from '../../app/contract/contract.ts';
import { call, type ReadName } from './client.ts';

export type Read<T> = UseQueryResult<T, Error>;

/**
 * `input` null: what it depends on is not known yet, so nothing is asked. `keepsLast` leaves the last answer standing
 * while the next one is looked up, for what is searched letter by letter. `again_ms` asks again and again, for what runs.
 */
export function useRead<M extends ReadName>(
  method: M,
  input: Input<M> | null,
  { keepsLast = false, again_ms = 0 } = {},
): Read<Output<M>> {
  return useQuery<Output<M>, Error>({
    queryKey: [method, input],
    queryFn: input === null ? skipToken : () => call(method, input),
    ...(keepsLast && { placeholderData: keepPreviousData }),
    ...(again_ms > 0 && { refetchInterval: again_ms }),
  });
}
