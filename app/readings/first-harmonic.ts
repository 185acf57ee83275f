// How a clearance goes around the drum: c₀ + a cos θ + b sin θ through the spots.
import type { Repeatability } from './repeatability.ts';

export type FirstHarmonic = {
  readonly amplitude: number;
  /** Where the fitted clearance is largest, 0 ≤ degrees < 360; null where the amplitude is zero. */
  readonly loosestAtDegrees: number | null;
  /** How often repeat scatter alone would show at least this amplitude; null where the scatter is unknown. */
  readonly probabilityByChance: number | null;
};

export type HarmonicSpot = { readonly degrees: number; readonly value: number; readonly reads: number };

/**
 * Least squares over all reads. null with fewer than four different places, or where more than half a turn lies between
 * two neighbours: then the fit has no evidence left of its own. Chance by F with 2 and the repeatability's degrees of
 * freedom, whose upper tail is (1 + 2F/ν)^(−ν/2).
 */
export function fitFirstHarmonic(
  spots: readonly HarmonicSpot[],
  repeatability: Repeatability | null,
): FirstHarmonic | null {
  if (!areUsable(spots.map((spot) => spot.degrees))) return null;
  const rows = spots.map(({ degrees, value, reads }) => {
    const angle = (degrees * Math.PI) / 180;
    return { cosine: Math.cos(angle), sine: Math.sin(angle), value, reads };
  });
  const reads = rows.reduce((sum, row) => sum + row.reads, 0);
  const mean = (of: 'cosine' | 'sine' | 'value') => rows.reduce((sum, row) => sum + row.reads * row[of], 0) / reads;
  const [meanCosine, meanSine, meanValue] = [mean('cosine'), mean('sine'), mean('value')];
  let [cc, cs, ss, cv, sv] = [0, 0, 0, 0, 0];
  for (const row of rows) {
    const [c, s, v] = [row.cosine - meanCosine, row.sine - meanSine, row.value - meanValue];
    cc += row.reads * c * c;
    cs += row.reads * c * s;
    ss += row.reads * s * s;
    cv += row.reads * c * v;
    sv += row.reads * s * v;
  }
  const determinant = cc * ss - cs * cs;
  const alongMark = (ss * cv - cs * sv) / determinant;
  const across = (cc * sv - cs * cv) / determinant;
  const amplitude = Math.hypot(alongMark, across);
  const isLevel = amplitude <= 1e-12 * Math.max(...rows.map((row) => Math.abs(row.value)));
  if (isLevel) return { amplitude: 0, loosestAtDegrees: null, probabilityByChance: repeatability && 1 };
  // Turned on and back: a rounding error below 0 would otherwise come out as 360.
  const degrees = ((Math.atan2(across, alongMark) * 180) / Math.PI + 360) % 360;
  const explained = alongMark * cv + across * sv;
  return {
    amplitude,
    loosestAtDegrees: degrees,
    probabilityByChance: repeatability && chanceOf(explained, repeatability),
  };
}

function chanceOf(explained: number, { standardDeviation, degreesOfFreedom }: Repeatability): number {
  if (standardDeviation === 0) return 0;
  const ratio = explained / (standardDeviation * standardDeviation);
  if (degreesOfFreedom === Number.POSITIVE_INFINITY) return Math.exp(-ratio / 2);
  return Math.exp((-degreesOfFreedom / 2) * Math.log1p(ratio / degreesOfFreedom));
}

function areUsable(places: readonly number[]): boolean {
  const sorted = [...new Set(places)].sort((a, b) => a - b);
  if (sorted.length < 4) return false;
  return sorted.every((place, i) => (sorted[i + 1] ?? sorted[0]! + 360) - place <= 180);
}
