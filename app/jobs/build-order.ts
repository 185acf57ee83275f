// The checks of a job in the order a unit is built, and those that are read when it runs.
import type { Check } from '../specs/spec-sheet.ts';

type Ordered = Pick<Check, 'method' | 'quantity' | 'group'> & { readonly packId: number | null };

/** Line pressures and flows are read on a unit that runs. */
export function isReadRunning({ method, quantity }: Pick<Check, 'method' | 'quantity'>): boolean {
  return quantity === 'volume' || (quantity === 'pressure' && method !== 'drop');
}

/** Packs, end play, leak-down, sizes, torques; groups stay together, and what is alike as the sheet has it. */
export function inBuildOrder<C extends Ordered>(checks: readonly C[]): C[] {
  const place = new Map<string, number>();
  for (const check of checks) place.set(check.group, Math.min(place.get(check.group) ?? steps, stepOf(check)));
  return checks.toSorted((one, other) => (place.get(one.group) ?? steps) - (place.get(other.group) ?? steps));
}

const steps = 5;

function stepOf({ packId, method, quantity }: Ordered): number {
  if (packId !== null) return 0;
  if (method === 'dial') return 1;
  if (method === 'drop') return 2;
  return quantity === 'torque' ? 4 : 3;
}
