// What one reading by each method is worth: the lines of its uncertainty budget besides the number itself.
import type { Settings } from '../shop/shop.contract.ts';
import type { ReadingMethod } from '../specs/spec-sheet.ts';
import { type BudgetLine, rectangular, roundingOf } from '../statistics/uncertainty-budget.ts';
import type { Setup } from './readings.contract.ts';
import type { Repeatability } from './repeatability.ts';
import type { TypedReading } from './typed-line.ts';

/** JCGM 100:2008 6.2.2: about 95 of 100. */
export const coverage = 0.95;

/** How well the shop repeats one reading by this method, in nanometres; null where nothing is stated. */
export function statedRepeatability(method: ReadingMethod, settings: Settings): Repeatability | null {
  const degreesOfFreedom = settings.repeatabilityDegreesOfFreedom;
  switch (method) {
    case 'air':
      return { standardDeviation: settings.repeatability_nm, degreesOfFreedom };
    case 'dial':
      return { standardDeviation: settings.dialRepeatability_nm, degreesOfFreedom };
    case 'direct':
      return { standardDeviation: settings.directRepeatability_nm, degreesOfFreedom };
    default:
      return null;
  }
}

/** The lines that more reads do not shrink, in nanometres, by name; those of nothing are left out. */
export function fixedLines(
  method: ReadingMethod,
  settings: Settings,
  setup: Setup | null,
  readings: readonly TypedReading[],
): BudgetLine[] {
  const lines: Array<readonly [name: string, standardUncertainty: number]> = [];
  if (method === 'air') {
    lines.push(['hand force on the push', rectangular(settings.handForceHalfWidth_nm)]);
    if (setup?.dialBase === 'pump or lower drum')
      lines.push(['dial base on the pump', rectangular(settings.baseOnPumpHalfWidth_nm)]);
  }
  if (method === 'air' || method === 'dial') {
    // A difference of two dial states, each rounded by itself.
    lines.push(['dial resolution', Math.SQRT2 * roundingOf(settings.dialResolution_nm)]);
  }
  if (method === 'direct') lines.push(['micrometer', settings.micrometerUncertainty_nm]);
  const widest = Math.max(0, ...readings.map(halfWidthOf));
  lines.push([method === 'feeler' ? 'between the leaves' : 'wavering needle', rectangular(widest)]);
  return lines
    .filter(([, standardUncertainty]) => standardUncertainty > 0)
    .map(([name, standardUncertainty]) => ({ name, standardUncertainty, degreesOfFreedom: Number.POSITIVE_INFINITY }));
}

function halfWidthOf(reading: TypedReading): number {
  if (reading.method === 'feeler') return (reading.stops - reading.goes) / 2;
  return reading.method === 'air' ? reading.waver : 0;
}
