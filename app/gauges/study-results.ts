// What a finished repeat test says: first in a sentence, then where what differs comes from.
import { accept, type Result } from '../base/result.ts';
import type { StudyRow } from '../statistics/crossed-study.ts';
import { type GaugeComponents, gaugeStudy } from '../statistics/gauge-study.ts';

/** Interaction and repeatability are taken together where p is above this: AIAG MSA 4th edition, III B. */
export const pooledAbove = 0.25;

export type StudyLine = {
  readonly source: 'part' | 'repeatability' | 'reproducibility' | 'interaction' | 'gauge' | 'total';
  /** Of the total variance, 0 … 1. */
  readonly share: number;
  readonly standardDeviation: number;
  readonly percentStudyVariation: number;
  readonly percentTolerance: number | null;
};

export type StudyResults = {
  readonly sentence: string;
  readonly lines: readonly StudyLine[];
  readonly distinctCategories: number | null;
  readonly isPooled: boolean;
  readonly pInteraction: number | null;
  /** The same by averages and ranges; null where the test is too large for its tables. */
  readonly byRanges: readonly StudyLine[] | null;
  readonly repeatability: { readonly standardDeviation: number; readonly degreesOfFreedom: number };
};

/** Amounts in the unit of the rows. Refuses what the study of a table refuses. */
export function studyResults(rows: readonly StudyRow[], tolerance: number | null): Result<StudyResults> {
  const study = gaugeStudy(rows, { above: pooledAbove }, tolerance);
  if (!study.ok) return study;
  const { chosen, isPooled, anova, averageRange } = study.value;
  const { sumsOfSquares, degreesOfFreedom } = anova;
  return accept({
    sentence: studySentence(chosen),
    lines: linesOf(chosen),
    distinctCategories: chosen.distinctCategories,
    isPooled,
    pInteraction: anova.pInteraction,
    byRanges: averageRange && linesOf(averageRange),
    repeatability: {
      standardDeviation: Math.sqrt(sumsOfSquares.repeatability / degreesOfFreedom.repeatability),
      degreesOfFreedom: degreesOfFreedom.repeatability,
    },
  });
}

const sources = ['part', 'repeatability', 'reproducibility', 'interaction', 'gauge', 'total'] as const;

function linesOf(components: GaugeComponents): StudyLine[] {
  const { variances, standardDeviations, percentStudyVariation, percentTolerance } = components;
  return sources.map((source) => ({
    source,
    share: variances.total > 0 ? variances[source] / variances.total : 0,
    standardDeviation: standardDeviations[source],
    percentStudyVariation: percentStudyVariation[source],
    percentTolerance: percentTolerance?.[source] ?? null,
  }));
}

/** "The parts make 92 of 100 of what differs, reading again 5, the hand 3." */
function studySentence({ variances }: GaugeComponents): string {
  const shares = [
    { who: 'the parts', variance: variances.part },
    { who: 'reading again with the same hand', variance: variances.repeatability },
    { who: 'whose hand it is', variance: variances.reproducibility + variances.interaction },
  ].toSorted((one, other) => other.variance - one.variance);
  const told = shares.map(({ who, variance }) => ({ who, of100: Math.round((100 * variance) / variances.total) }));
  const [first, ...rest] = told;
  const words = `${first?.who ?? ''} makes ${first?.of100 ?? 0} of 100 of what differs`.replace(
    'parts makes',
    'parts make',
  );
  const others = rest.map(({ who, of100 }) => `${who} ${of100}`).join(', ');
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}, ${others}.`;
}
