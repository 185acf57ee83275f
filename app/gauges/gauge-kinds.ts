// The kinds of gauge a shop has, and what each of them reads.
import { type Quantity, unitsOf } from '../quantities/units.ts';
import type { ReadingMethod } from '../specs/spec-sheet.ts';

export const gaugeKinds = [
  'dial plunger',
  'dial lever',
  'micrometer',
  'depth gauge',
  'feeler set',
  'pressure gauge',
  'torque wrench',
] as const;
export type GaugeKind = (typeof gaugeKinds)[number];

const reads: Record<GaugeKind, { readonly quantity: Quantity; readonly methods: readonly ReadingMethod[] }> = {
  'dial plunger': { quantity: 'length', methods: ['air', 'dial'] },
  'dial lever': { quantity: 'length', methods: ['air', 'dial'] },
  micrometer: { quantity: 'length', methods: ['direct'] },
  'depth gauge': { quantity: 'length', methods: ['direct'] },
  'feeler set': { quantity: 'length', methods: ['feeler'] },
  'pressure gauge': { quantity: 'pressure', methods: ['direct', 'dial', 'drop'] },
  'torque wrench': { quantity: 'torque', methods: ['direct', 'dial'] },
};

export function quantityOf(kind: GaugeKind): Quantity {
  return reads[kind].quantity;
}

/** The units a gauge of this kind may be marked in. */
export function unitsOfKind(kind: GaugeKind): readonly string[] {
  return unitsOf(quantityOf(kind)).map((unit) => unit.name);
}

/** Whether a gauge of this kind can read a check of this quantity this way. */
export function fits(kind: GaugeKind, method: ReadingMethod, quantity: Quantity): boolean {
  return reads[kind].quantity === quantity && reads[kind].methods.includes(method);
}

/** Only a dial can stand out of square with what moves it. */
export function mayStandOffSquare(kind: GaugeKind): boolean {
  return kind === 'dial plunger' || kind === 'dial lever';
}
