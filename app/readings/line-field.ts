// How a line of a check is typed: what the parser needs to know besides the text itself.
import { shownUnit } from '../quantities/units.ts';
import type { Settings } from '../shop/shop.contract.ts';
import type { Check, ReadingMethod } from '../specs/spec-sheet.ts';
import type { Setup } from './readings.contract.ts';
import type { LineField } from './typed-line.ts';

/** The face most dials have where the setup card does not say. */
const usualDialFaceCounts = 100;

/** Bare numbers are in the unit that the figures beside the entry are shown in. */
export function lineField(
  check: Pick<Check, 'quantity' | 'unit'>,
  method: ReadingMethod,
  setup: Pick<Setup, 'dialFaceCounts'> | null,
  settings: Pick<Settings, 'lengthUnit' | 'decimalMark'>,
): Omit<LineField, 'isZeroedAgain' | 'meaning'> {
  return {
    method,
    quantity: check.quantity,
    unit: shownUnit(check.unit, settings.lengthUnit),
    decimalMark: settings.decimalMark,
    dialFaceCounts: setup?.dialFaceCounts ?? usualDialFaceCounts,
  };
}
