// A pack read by feeler and by air in the same state: the two takes, and by how much they differ.
import type { Evaluation, Take } from './readings.contract.ts';

type Comparable = Pick<Take, 'phase' | 'mockUpNumber' | 'method'> & {
  readonly evaluation: Pick<Evaluation, 'mean' | 'feelerBias'>;
  readonly notes: readonly Pick<Take['notes'][number], 'what'>[];
};

export type FeelerBesideAir<T> = {
  readonly feeler: T;
  readonly air: T;
  /** Feeler as it was read less air, in base units: below zero where the feeler read less. */
  readonly feelerAboveAir: number;
};

/**
 * `shown` with the newest take of the other kind in its state; `takes` are those of one check, oldest first. As found is
 * mock-up 0. Null where the other kind has no clearance there, and for
 * a state nobody wrote down. A pack that would not hold air was not read by it.
 */
export function feelerBesideAir<T extends Comparable>(shown: T, takes: readonly T[]): FeelerBesideAir<T> | null {
  if (shown.method !== 'air' && shown.method !== 'feeler') return null;
  if (stateOf(shown) === null) return null;
  const isFeeler = shown.method === 'feeler';
  const other = takes.findLast(
    (take) =>
      take.method === (isFeeler ? 'air' : 'feeler') &&
      take.evaluation.mean !== null &&
      stateOf(take) === stateOf(shown) &&
      !take.notes.some(({ what }) => what === 'will not hold air'),
  );
  if (!other) return null;
  const [feeler, air] = isFeeler ? [shown, other] : [other, shown];
  const byFeeler = asRead(feeler);
  const byAir = asRead(air);
  return byFeeler === null || byAir === null ? null : { feeler, air, feelerAboveAir: byFeeler - byAir };
}

/** The mean before a feeler's bias was taken off it. */
export function asRead({ evaluation }: Pick<Comparable, 'evaluation'>): number | null {
  return evaluation.feelerBias?.meanAsRead ?? evaluation.mean;
}

function stateOf({ phase, mockUpNumber }: Comparable): number | null {
  return phase === 'as found' ? 0 : mockUpNumber;
}
