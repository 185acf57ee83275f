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

/** Reads again, a moment after every `changed`, what is on the screen. Gives back what ends it. */
export function followChanges(queryClient: QueryClient): () => void {
  return transport.subscribe('changed', () => readAgainSoon(queryClient));
}

/**
 * The news of a write comes just before its own answer. Whoever waits for that answer must not stand behind everything
 * the news asks to be read again, and what came in one moment is read once.
 */
const moment_ms = 150;
const due = new WeakMap<QueryClient, ReturnType<typeof setTimeout>>();

/** Reads again what is on the screen, once the moment is over. */
export function readAgainSoon(queryClient: QueryClient): void {
  if (due.has(queryClient)) return;
  due.set(
    queryClient,
    setTimeout(() => void readAgain(queryClient), moment_ms),
  );
}

/** Reads again what is on the screen, now; resolves when all of it is there. */
export function readAgain(queryClient: QueryClient): Promise<void> {
  putOff(queryClient);
  return queryClient.invalidateQueries();
}

/** Runs `act` with nothing read again under it, and reads again soon after it has ended, well or not. */
export async function beforeReadingAgain<T>(queryClient: QueryClient, act: () => Promise<T>): Promise<T> {
  putOff(queryClient);
  try {
    return await act();
  } finally {
    readAgainSoon(queryClient);
  }
}

function putOff(queryClient: QueryClient): void {
  clearTimeout(due.get(queryClient));
  due.delete(queryClient);
}
