// What one reading by each method is worth: the lines of its uncertainty budget besides the number itself.
import type { ReadingMethod } from '../specs/spec-sheet.ts';
import { type BudgetLine, rectangular } from '../statistics/uncertainty-budget.ts';
import {
  betweenLeavesLine,
  feelerBiasLine,
  gaugeErrorLine,
  leafLine,
  micrometerLine,
  offSquareLine,
  permittedErrorLine,
  resolutionLine,
  waveringLine,
} from './budget-lines.ts';
import { airLines, dialRounding } from './clearance-by-air.ts';
import type { Setup } from './readings.contract.ts';
import type { FeelerFigures, GaugeFigures, TakeFigures } from './take-figures.ts';
import { type TypedReading, valueOfReading } from './typed-line.ts';
import type { ReadQuality } from './values-at-spots.ts';

/** JCGM 100:2008 6.2.2: about 95 of 100. */
const coverage = 0.95;

/** What one reading by this method is worth by the figures the take leans on, in nanometres. */
export function readQuality(
  method: ReadingMethod,
  figures: TakeFigures,
  setup: Setup | null,
  readings: readonly TypedReading[],
): ReadQuality {
  return {
    repeatability: figures.repeatability,
    fixedLines: [
      ...linesOfMethod(method, figures, setup),
      ...offSquareLines(figures.gauge, readings),
      ...linesOfReadings(method, readings),
    ],
    // Leaves bracket the gap, so a feeler reading is sure of its bracket even when nothing was read twice.
    standsAlone: method === 'feeler',
    coverage,
  };
}

/**
 * What a reading of anything but a length is worth: what its gauge may be off by is all that is stated, so where nothing
 * was read twice it stands alone. A drop is the difference of two pressures, each off on its own: twice the variance.
 */
export function readQualityByGauge(method: ReadingMethod, gauge: GaugeFigures | null): ReadQuality {
  const ofOne = rectangular(gauge?.permittedError ?? 0);
  const ofReading = method === 'drop' ? Math.SQRT2 * ofOne : ofOne;
  const fixedLines = ofReading > 0 ? [typeB(gaugeErrorLine, ofReading)] : [];
  return { repeatability: null, fixedLines, standsAlone: fixedLines.length > 0, coverage };
}

function linesOfMethod(method: ReadingMethod, figures: TakeFigures, setup: Setup | null): BudgetLine[] {
  const permittedError = figures.gauge?.permittedError ?? null;
  switch (method) {
    case 'air':
      return airLines({
        handForceHalfWidth: figures.handForceHalfWidth_nm,
        baseOnPumpHalfWidth: setup?.dialBase === 'pump or lower drum' ? figures.baseOnPumpHalfWidth_nm : 0,
        dialResolution: figures.dialResolution_nm,
        dialPermittedError: permittedError ?? 0,
      });
    case 'dial':
      return [
        typeB(resolutionLine, dialRounding(figures.dialResolution_nm)),
        typeB(permittedErrorLine, rectangular(permittedError ?? 0)),
      ];
    case 'direct':
      // What is stated for this one stands in place of what the shop states for any.
      return [
        typeB(micrometerLine, permittedError === null ? figures.micrometerUncertainty_nm : rectangular(permittedError)),
      ];
    case 'feeler':
      return [...biasLines(figures.feeler), typeB(leafLine, rectangular(permittedError ?? 0))];
    default:
      return [];
  }
}

/**
 * Out of square by up to α a dial shows the travel over its cosine: too much by up to r·(1 − cos α), never too little.
 * The reading is left as it was read, so the error is taken about it: the root mean square of anything from nothing to
 * the most, most/√3 (JCGM 100:2008 4.3.7, 4.3.8 and F.2.4.5).
 */
function offSquareLines(gauge: GaugeFigures | null, readings: readonly TypedReading[]): BudgetLine[] {
  if (gauge === null || gauge.offSquareDegrees === 0) return [];
  const longest = Math.max(0, ...readings.map((reading) => Math.abs(valueOfReading(reading) ?? 0)));
  return [typeB(offSquareLine, rectangular(longest * (1 - Math.cos((gauge.offSquareDegrees * Math.PI) / 180))))];
}

function biasLines(feeler: FeelerFigures | null): BudgetLine[] {
  if (!feeler?.bias) return [];
  // The mean of so many differences, spread about it as they were seen: JCGM 100:2008 4.2.3.
  const { standardUncertainty } = feeler.bias;
  return [{ name: feelerBiasLine, standardUncertainty, degreesOfFreedom: feeler.pairs - 1 }];
}

function linesOfReadings(method: ReadingMethod, readings: readonly TypedReading[]): BudgetLine[] {
  const widest = Math.max(0, ...readings.map(halfWidthOf));
  return [typeB(method === 'feeler' ? betweenLeavesLine : waveringLine, rectangular(widest))];
}

function typeB(name: string, standardUncertainty: number): BudgetLine {
  return { name, standardUncertainty, degreesOfFreedom: Number.POSITIVE_INFINITY };
}

function halfWidthOf(reading: TypedReading): number {
  if (reading.method === 'feeler') return (reading.stops - reading.goes) / 2;
  return reading.method === 'air' ? reading.waver : 0;
}
