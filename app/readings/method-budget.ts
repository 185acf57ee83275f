// What one reading by each method is worth: the lines of its uncertainty budget besides the number itself.
import type { ReadingMethod } from '../specs/spec-sheet.ts';
import { type BudgetLine, rectangular } from '../statistics/uncertainty-budget.ts';
import { airLines, dialRounding } from './clearance-by-air.ts';
import type { Setup } from './readings.contract.ts';
import type { FeelerFigures, TakeFigures } from './take-figures.ts';
import type { TypedReading } from './typed-line.ts';
import type { ReadQuality } from './values-at-spots.ts';

/** JCGM 100:2008 6.2.2: about 95 of 100. */
const coverage = 0.95;

/** The line of a feeler reading that was put in terms of air. */
export const feelerBiasLine = 'feeler bias';

/** What one reading by this method is worth by the figures the take leans on, in nanometres. */
export function readQuality(
  method: ReadingMethod,
  figures: TakeFigures,
  setup: Setup | null,
  readings: readonly TypedReading[],
): ReadQuality {
  return {
    repeatability: figures.repeatability,
    fixedLines: [...linesOfMethod(method, figures, setup), ...linesOfReadings(method, readings)],
    // Leaves bracket the gap, so a feeler reading is sure of its bracket even when nothing was read twice.
    standsAlone: method === 'feeler',
    coverage,
  };
}

function linesOfMethod(method: ReadingMethod, figures: TakeFigures, setup: Setup | null): BudgetLine[] {
  switch (method) {
    case 'air':
      return airLines({
        handForceHalfWidth: figures.handForceHalfWidth_nm,
        baseOnPumpHalfWidth: setup?.dialBase === 'pump or lower drum' ? figures.baseOnPumpHalfWidth_nm : 0,
        dialResolution: figures.dialResolution_nm,
        // The shop's gauges are not in the book yet; their permitted error comes with them.
        dialPermittedError: 0,
      });
    case 'dial':
      return [typeB('dial resolution', dialRounding(figures.dialResolution_nm))];
    case 'direct':
      return [typeB('micrometer', figures.micrometerUncertainty_nm)];
    case 'feeler':
      return biasLines(figures.feeler);
    default:
      return [];
  }
}

function biasLines(feeler: FeelerFigures | null): BudgetLine[] {
  if (!feeler?.bias) return [];
  // The mean of so many differences, spread about it as they were seen: JCGM 100:2008 4.2.3.
  const { standardUncertainty } = feeler.bias;
  return [{ name: feelerBiasLine, standardUncertainty, degreesOfFreedom: feeler.pairs - 1 }];
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
