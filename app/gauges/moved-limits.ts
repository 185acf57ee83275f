// Limits moved as a whole, for asking what a verdict would have been with a gauge that was off.
import type { Limits } from '../specs/spec-sheet.ts';

/** Every limit further up by so much, in base units. */
export function movedLimits(limits: Limits, by: number): Limits {
  switch (limits.kind) {
    case 'range':
      return { ...limits, low: limits.low + by, high: limits.high + by };
    case 'target':
      return { ...limits, target: limits.target + by, low: limits.low + by, high: limits.high + by };
    case 'minimum':
      return { ...limits, low: limits.low + by };
    case 'maximum':
      return { ...limits, high: limits.high + by };
    case 'variants':
      return {
        ...limits,
        variants: limits.variants.map((variant) => ({ ...variant, nominal: variant.nominal + by })),
      };
  }
}
