// Student's t, for any real number of degrees of freedom and for infinitely many.
import { betaWeight, incompleteBeta } from './incomplete-beta.ts';
import { logGamma } from './log-gamma.ts';
import { normalCoverageFactor, normalTwoSided } from './normal.ts';
import { pointWithTails, type Tails } from './tails.ts';

/** From here on t differs from the normal distribution by less than a double can tell, in any tail down to 1e-300. */
const asGoodAsEndless = 1e25;
/** Below this the density is level to the last digit, so what lies within ± t grows with t; t² would leave the range of doubles. */
const levelUpTo = 1e-50;

/**
 * The probability within ± `t` (lower) and outside of it (upper), t ≥ 0. Degrees of freedom ≥ 0.01, real, may be infinite.
 * Source: DLMF 8.17 with x = ν / (ν + t²). Relative error below 1e-12 in each, down to 1e-300.
 */
export function studentTTwoSided(t: number, degreesOfFreedom: number): Tails {
  if (degreesOfFreedom >= asGoodAsEndless) return normalTwoSided(t);
  if (t < levelUpTo) {
    const lower = (t / levelUpTo) * studentTTwoSided(levelUpTo, degreesOfFreedom).lower;
    return { lower, upper: 1 - lower };
  }
  const { outside, inside } = sharesAt(t, degreesOfFreedom);
  if (outside < 1e-280) {
    // ν / (ν + t²) leaves the range of doubles before the tail does; its leading term is then the whole of it.
    const half = degreesOfFreedom / 2;
    const logPower = -degreesOfFreedom * (Math.log(t) - Math.log(degreesOfFreedom) / 2);
    const upper = Math.exp(logPower + logGamma(half + 0.5) - logGamma(half + 1)) / Math.sqrt(Math.PI);
    return { lower: 1 - upper, upper };
  }
  return incompleteBeta(0.5, degreesOfFreedom / 2, inside, outside);
}

/** The probability below and above `t`. Domain and accuracy as `studentTTwoSided`. */
export function studentTTails(t: number, degreesOfFreedom: number): Tails {
  const small = studentTTwoSided(Math.abs(t), degreesOfFreedom).upper / 2;
  return t < 0 ? { lower: small, upper: 1 - small } : { lower: 1 - small, upper: small };
}

// A root is looked for by iteration; the takes of a shop lean on the same few figures again and again.
const known = new Map<string, number>();
const mostKnown = 10_000;

/**
 * How many standard uncertainties hold the central `probability`: JCGM 100:2008 table G.2, for real degrees of freedom.
 * 0 < probability < 1, degrees of freedom ≥ 0.01, may be infinite. Infinite where it exceeds the range of doubles.
 */
export function studentTCoverageFactor(probability: number, degreesOfFreedom: number): number {
  if (degreesOfFreedom >= asGoodAsEndless) return normalCoverageFactor(probability);
  const asked = `${probability} ${degreesOfFreedom}`;
  const before = known.get(asked);
  if (before !== undefined) return before;
  if (known.size >= mostKnown) known.clear();
  const factor = coverageFactor(probability, degreesOfFreedom);
  known.set(asked, factor);
  return factor;
}

function coverageFactor(probability: number, degreesOfFreedom: number): number {
  return pointWithTails({ lower: probability, upper: 1 - probability }, (t) => {
    const tails = studentTTwoSided(t, degreesOfFreedom);
    if (t < levelUpTo) return { ...tails, slope: tails.lower };
    const { outside, inside } = sharesAt(t, degreesOfFreedom);
    return { ...tails, slope: 2 * betaWeight(0.5, degreesOfFreedom / 2, inside, outside) };
  });
}

/** The point below which `probability` lies. */
export function studentTQuantile(probability: number, degreesOfFreedom: number): number {
  if (probability === 0.5) return 0;
  if (probability < 0.5) return -studentTCoverageFactor(1 - 2 * probability, degreesOfFreedom);
  return studentTCoverageFactor(2 * probability - 1, degreesOfFreedom);
}

/** ν / (ν + t²) and its complement, each with its own digits. */
function sharesAt(t: number, degreesOfFreedom: number) {
  const scaled = t / Math.sqrt(degreesOfFreedom);
  const squared = scaled * scaled;
  return { outside: 1 / (1 + squared), inside: squared === Number.POSITIVE_INFINITY ? 1 : squared / (1 + squared) };
}
