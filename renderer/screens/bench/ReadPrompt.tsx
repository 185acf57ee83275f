// The order for the next line: which spot, and what the hand does there.

import type { ReadingMethod } from '../../../app/specs/spec-sheet.ts';
import { useAtCheck } from './at-check.ts';
import { readingOrder } from './entry-words.ts';
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
  const place = spotName(spot, check.spots);
  if (method !== 'air') {
    return (
      <h1 className="say">
        {spots > 1 ? `Spot ${spot} of ${spots}, ${spot === 1 ? 'at the mark' : `at ${place}`}.` : `${check.name}.`}
        <br />
        {why ?? readingOrder(check, method)}
      </h1>
    );
  }
  return (
    <h1 className="say">
      {why ??
        (reads > 0
          ? `Once more ${spot === 1 ? 'at the mark' : `at ${place}`}. Zero the dial.`
          : spotOrder(spot, spots, place))}
      <br />
      Push lightly to the stop; let go: back to zero? <b>Hand off the plate</b>, then air.
    </h1>
  );
}

function spotOrder(spot: number, spots: number, place: string): string {
  if (spots === 1) return 'At the mark. Zero the dial.';
  if (spot === 1) return `Spot 1 of ${spots}, at the mark. Zero the dial.`;
  return `Spot ${spot} of ${spots}. Turn the drum to ${place}.`;
}
