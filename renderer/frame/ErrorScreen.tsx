// What stands in place of a screen that failed: a bug of ours, said once, with the way on.
import type { ErrorComponentProps } from '@tanstack/react-router';
import { Button } from '../components/Button.tsx';
import { EmptyState } from '../components/EmptyState.tsx';
import { Fault } from '../rpc/failures.ts';

export function ErrorScreen({ error, reset }: ErrorComponentProps) {
  return (
    <EmptyState title="Something went wrong inside Thoubook." act={<Button onPress={reset}>Try again</Button>}>
      What was recorded is safe. If it happens again, note the code <b className="mono">{codeOf(error)}</b>.
    </EmptyState>
  );
}

function codeOf(error: unknown): string {
  return error instanceof Fault ? error.id : `screen ${sumOf(String(error))}`;
}

/** The same bug gives the same four figures. */
function sumOf(message: string): string {
  let sum = 0;
  for (const letter of message) sum = (sum * 31 + (letter.codePointAt(0) ?? 0)) % 10_000;
  return String(sum).padStart(4, '0');
}
