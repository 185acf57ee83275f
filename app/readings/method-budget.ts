// What one reading by each method is worth: the lines of its uncertainty budget besides the number itself.
import type { Settings } from '../shop/shop.contract.ts';
import type { ReadingMethod } from '../specs/spec-sheet.ts';
import { type BudgetLine, rectangular } from '../statistics/uncertainty-budget.ts';
import { airLines, dialRounding } from './clearance-by-air.ts';
import type { Setup } from './readings.contract.ts';
import type { Repeatability } from './repeatability.ts';
import type { TypedReading } from './typed-line.ts';
import type { ReadQuality } from './values-at-spots.ts';

/** JCGM 100:2008 6.2.2: about 95 of 100. */
const coverage = 0.95;

/** How well the shop repeats one reading by this method, in nanometres; null where nothing is stated. */
function statedRepeatability(method: ReadingMethod, settings: Settings): Repeatability | null {
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

/** What one reading by this method is worth in this shop, in nanometres. */
export function readQuality(
  method: ReadingMethod,
  settings: Settings,
  setup: Setup | null,
  readings: readonly TypedReading[],
): ReadQuality {
  return {
    repeatability: statedRepeatability(method, settings),
    fixedLines: [...linesOfMethod(method, settings, setup), ...linesOfReadings(method, readings)],
    // Leaves bracket the gap, so a feeler reading is sure of its bracket even when nothing was read twice.
    standsAlone: method === 'feeler',
    coverage,
  };
}

function linesOfMethod(method: ReadingMethod, settings: Settings, setup: Setup | null): BudgetLine[] {
  switch (method) {
    case 'air':
      return airLines({
        handForceHalfWidth: settings.handForceHalfWidth_nm,
        baseOnPumpHalfWidth: setup?.dialBase === 'pump or lower drum' ? settings.baseOnPumpHalfWidth_nm : 0,
        dialResolution: settings.dialResolution_nm,
        // The shop's gauges are not in the book yet; their permitted error comes with them.
        dialPermittedError: 0,
      });
    case 'dial':
      return [typeB('dial resolution', dialRounding(settings.dialResolution_nm))];
    case 'direct':
      return [typeB('micrometer', settings.micrometerUncertainty_nm)];
    default:
      return [];
  }
}

function linesOfReadings(method: ReadingMethod, readings: readonly TypedReading[]): BudgetLine[] {
  const widest = Math.max(0, ...readings.map(halfWidthOf));
  return [typeB(method === 'feeler' ? 'between the leaves' : 'wavering needle', rectangular(widest))];
}

function typeB(name: string, standardUncertainty: number): BudgetLine {
  return { name, standardUncertainty, degreesOfFreedom: Number.POSITIVE_INFINITY };
}

function halfWidthOf(reading: TypedReading): number {
  if (reading.method === 'feeler') return (reading.stops - reading.goes) / 2;
  return reading.method === 'air' ? reading.waver : 0;
}
