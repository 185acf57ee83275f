// What a new shop starts with until it has learned its own figures. Lengths in nanometres; 25 400 nm is one thou.
import type { Settings } from './shop.contract.ts';

/**
 * The starting settings. The figures of the hand and the gauge are stated starting values (common practice, no
 * source): one thou of zero return, re-stack and hand force; a shop replaces them by its own.
 */
export function startingSettings(shop: Pick<Settings, 'shopName' | 'lengthUnit' | 'paper'>): Settings {
  return {
    ...shop,
    decimalMark: '.',
    warranty: '',
    warrantyMonths: null,
    warrantyDistance: null,
    warrantyDistanceUnit: 'miles',
    warrantyPasses: null,
    zeroReturnLimit_nm: 25_400,
    repeatLimit_nm: 2 * 25_400,
    unevenLimit_nm: 4 * 25_400,
    repeatability_nm: 17_780,
    dialRepeatability_nm: 12_700,
    directRepeatability_nm: 2_540,
    repeatabilityDegreesOfFreedom: 50,
    handForceHalfWidth_nm: 25_400,
    baseOnPumpHalfWidth_nm: 25_400,
    dialResolution_nm: 25_400,
    restack_nm: 25_400,
    micrometerUncertainty_nm: 5_080,
    decisionRule: 'guarded',
  };
}
