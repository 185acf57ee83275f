// How much torque a clutch can hold. An estimate: friction is what somebody says it is.
import { accept, type Result, refuse } from '../base/result.ts';
import type { Annulus } from './piston-force.ts';

export const clutchTheories = ['uniform wear', 'uniform pressure'] as const;

export type ClutchTheory = (typeof clutchTheories)[number];

/** The force that presses the plates, or the most pressure the lining may carry. */
export type Pressing = { readonly force_N: number } | { readonly maximumPressure_Pa: number };

export type TorqueCapacity = { readonly force_N: number; readonly torque_Nm: number; readonly meanRadius_m: number };

/**
 * Uniform wear: F = πp·d(D − d)/2, r = (D + d)/4. Uniform pressure: F = πp(D² − d²)/4,
 * r = (D² + Dd + d²)/(3(D + d)). Torque = friction · F · surfaces · r; surfaces are friction *surfaces*, two a plate.
 * An inner diameter of 0 is a full disc. Refuses diameters that make no ring, a friction, force, pressure or number of
 * surfaces that is not above zero, and a largest pressure for a full disc by uniform wear, where p grows as 1/r.
 * Source: V. Bhandari, Design of Machine Elements, 11; Shigley, Mechanical Engineering Design, 16.
 */
export function torqueCapacity(
  theory: ClutchTheory,
  { outerDiameter_m, innerDiameter_m }: Annulus,
  friction: number,
  surfaces: number,
  pressing: Pressing,
): Result<TorqueCapacity> {
  if (!(innerDiameter_m >= 0) || !(outerDiameter_m > innerDiameter_m)) {
    return refuse('diameters', 'The outer diameter must be larger than the inner one, and neither below zero.');
  }
  if (!(friction > 0)) return refuse('not-positive', 'The coefficient of friction must be more than zero.');
  if (!Number.isInteger(surfaces) || surfaces < 1) {
    return refuse('surfaces', 'The number of friction surfaces must be a whole number of one or more.');
  }
  const [D, d] = [outerDiameter_m, innerDiameter_m];
  const isWear = theory === 'uniform wear';
  if (isWear && d === 0 && 'maximumPressure_Pa' in pressing) {
    return refuse(
      'endless-pressure',
      'With uniform wear the pressure has no limit at the centre of a full disc: give the force, or an inner diameter.',
    );
  }
  const loadedArea = isWear ? (Math.PI * d * (D - d)) / 2 : (Math.PI * (D - d) * (D + d)) / 4;
  const force_N = 'force_N' in pressing ? pressing.force_N : pressing.maximumPressure_Pa * loadedArea;
  if (!(force_N > 0)) return refuse('not-positive', 'The force on the plates must be more than zero.');
  const meanRadius_m = isWear ? (D + d) / 4 : (D * D + D * d + d * d) / (3 * (D + d));
  return accept({ force_N, torque_Nm: friction * force_N * surfaces * meanRadius_m, meanRadius_m });
}
