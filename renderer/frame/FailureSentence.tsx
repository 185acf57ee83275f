// What went wrong with a read or a write, in the sentence it came with, where the person is.
import { Refusal } from '../components/Refusal.tsx';

/**
 * Every failure of the contract is already one plain sentence; a fault's names its code. Shows nothing when `error`
 * is null, so a screen can leave it standing beside its key.
 */
export function FailureSentence({ error }: { error: Error | null }) {
  return error && <Refusal>{error.message}</Refusal>;
}
