// An offer as the line a person would have typed: in the gauge's own unit, so that nothing is rounded on the way.
import { type DecimalMark, formatAmount } from '../quantities/format-amount.ts';
import { unitNamed } from '../quantities/units.ts';
import type { MeasuredOffer } from './plate-offer.ts';

/** Decimals of a nanometre. */
const finest = { mm: 6, in: 8 } as const;

/**
 * "-0.102 0.584 mm": what `app/readings/typed-line.ts` reads back to the same nanometres. The push is typed as it was
 * shown, with its minus: without one, a long push would be taken for a dial that ran backwards past its zero.
 */
export function typedOffer(offer: MeasuredOffer, unit: 'mm' | 'in', decimalMark: DecimalMark): string {
  const write = (length_nm: number) => {
    const full = formatAmount(length_nm, unitNamed(unit), { decimals: finest[unit], decimalMark });
    const shortest = full.length - (finest[unit] - (unit === 'mm' ? 3 : 4));
    return full.slice(0, shortest) + full.slice(shortest).replace(/0+$/, '');
  };
  switch (offer.kind) {
    case 'push and air':
      return `-${write(offer.push_nm)} ${write(offer.air_nm)} ${unit}`;
    case 'whole':
      return `${write(offer.air_nm)} ${unit}`;
    case 'travel':
    case 'size':
      return `${write(offer.amount_nm)} ${unit}`;
  }
}
