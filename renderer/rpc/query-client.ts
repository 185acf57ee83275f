// What is kept of answers already read, and when they are read again: whenever main says something was written.
import { QueryClient } from '@tanstack/react-query';
import { transport } from './transport.ts';

// The book is on this machine: there is no network to wait for, and asking twice would not change an answer.
const always = { networkMode: 'always', retry: false } as const;

export function createQueryClient(): QueryClient {
  return new QueryClient({
    defaultOptions: { queries: { ...always, staleTime: Number.POSITIVE_INFINITY }, mutations: always },
  });
}

/** Reads again, on every `changed`, what is on the screen. Gives back what ends it. */
export function followChanges(queryClient: QueryClient): () => void {
  return transport.subscribe('changed', () => void queryClient.invalidateQueries());
}
