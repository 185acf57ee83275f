// The order for the next line: which spot, and what the hand does there.
import type { ReadingMethod } from '../../../app/specs/spec-sheet.ts';
import { useAtCheck } from './at-check.ts';
import { readingOrder } from './entry-words.ts';
import styles from './ReadPrompt.module.css';
import { spotName } from './reading-plan.ts';

type ReadPromptProps = {
  method: ReadingMethod;
  spot: number;
  /** How many spots this take has. */
  spots: number;
  /** How often this spot was read already. */
  reads: number;
  /** Why a spot is asked about once more. */
  why: string | null;
};

export function ReadPrompt({ method, spot, spots, reads, why }: ReadPromptProps) {
  const { check } = useAtCheck();
  const isByAir = method === 'air';
  return (
    <>
      <h1 className="say">
        {spots === 1 && !isByAir ? `${check.name}.` : placeOrder(spot, spots, reads, spotName(spot, check.spots))}
        {isByAir && spot === 1 && ' Zero the dial.'}
      </h1>
      {why && <p>{why}</p>}
      <p className={styles.hand}>
        {isByAir ? (
          <>
            Push lightly to the stop; let go: back to zero? <b>Hand off the plate</b>, then air.
          </>
        ) : (
          readingOrder(check, method)
        )}
      </p>
    </>
  );
}

function placeOrder(spot: number, spots: number, reads: number, place: string): string {
  if (spots === 1) return reads > 0 ? 'Once more, at the mark.' : 'At the mark.';
  if (reads > 0) return spot === 1 ? 'Spot 1 once more, at the mark.' : `Spot ${spot} once more, at ${place}.`;
  return spot === 1 ? 'Spot 1, at the mark.' : `Spot ${spot}. Turn the drum to ${place}.`;
}
