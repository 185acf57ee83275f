// What pushes a clutch piston, what holds it back, and what spinning fluid adds.
import { accept, type Result, refuse } from '../base/result.ts';

export type Annulus = { readonly outerDiameter_m: number; readonly innerDiameter_m: number };

export type SpinningFluid = {
  readonly speed_rpm: number;
  readonly density_kg_m3: number;
  /** Where the fluid's surface stands, from the axis; inside the annulus it would not fill. */
  readonly freeSurfaceRadius_m: number;
};

export type PistonForce = {
  readonly area_m2: number;
  readonly pressureForce_N: number;
  readonly centrifugalForce_N: number;
  /** Pressure and centrifugal force less the spring. */
  readonly netForce_N: number;
  /** At which the piston begins to move, without seal drag and standing still. */
  readonly startingPressure_Pa: number;
};

/** The ring between two diameters. Refuses an inner diameter that is not below the outer one. */
export function annulusArea({ outerDiameter_m, innerDiameter_m }: Annulus): Result<number> {
  if (!(innerDiameter_m >= 0) || !(outerDiameter_m > innerDiameter_m)) {
    return refuse('diameters', 'The outer diameter must be larger than the inner one, and neither below zero.');
  }
  return accept((Math.PI / 4) * (outerDiameter_m - innerDiameter_m) * (outerDiameter_m + innerDiameter_m));
}

/**
 * p · A − F(spring) + (πρω²/4)(rₒ² − rᵢ²)(rₒ² + rᵢ² − 2rₛ²), which is ∫ ½ρω²(r² − rₛ²) 2πr dr for a free surface
 * rₛ ≤ rᵢ. Refuses diameters that make no ring, a negative pressure, spring, speed or density, and a free surface
 * outside the inner radius. Source: hydrostatics of a fluid turning as one body.
 */
export function pistonForce(
  annulus: Annulus,
  pressure_Pa: number,
  spring_N: number,
  fluid: SpinningFluid | null,
): Result<PistonForce> {
  const area = annulusArea(annulus);
  if (!area.ok) return area;
  if (!(pressure_Pa >= 0) || !(spring_N >= 0)) {
    return refuse('negative', 'Pressure and spring force are zero or more.');
  }
  const centrifugal = fluid ? centrifugalForce(annulus, fluid) : accept(0);
  if (!centrifugal.ok) return centrifugal;
  const pressureForce_N = pressure_Pa * area.value;
  return accept({
    area_m2: area.value,
    pressureForce_N,
    centrifugalForce_N: centrifugal.value,
    netForce_N: pressureForce_N + centrifugal.value - spring_N,
    startingPressure_Pa: spring_N / area.value,
  });
}

function centrifugalForce({ outerDiameter_m, innerDiameter_m }: Annulus, fluid: SpinningFluid): Result<number> {
  const { speed_rpm, density_kg_m3, freeSurfaceRadius_m } = fluid;
  if (!(speed_rpm >= 0) || !(density_kg_m3 > 0) || !(freeSurfaceRadius_m >= 0)) {
    return refuse('negative', 'Speed, density and the free surface’s radius cannot be below zero.');
  }
  const [outer, inner] = [outerDiameter_m / 2, innerDiameter_m / 2];
  if (freeSurfaceRadius_m > inner) {
    return refuse('free-surface', 'The free surface must not lie outside the piston’s inner radius.');
  }
  const angularSpeed = (speed_rpm * Math.PI) / 30;
  return accept(
    ((Math.PI * density_kg_m3 * angularSpeed ** 2) / 4) *
      (outer - inner) *
      (outer + inner) *
      (outer ** 2 + inner ** 2 - 2 * freeSurfaceRadius_m ** 2),
  );
}
