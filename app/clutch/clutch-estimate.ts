// What the stated figures of a clutch come to: each estimate, or what it waits for.
import type { Result } from '../base/result.ts';
import type { PieceKind } from '../specs/spec-sheet.ts';
import type { ClutchEstimate, ClutchFigures, ClutchLoad, ClutchOfJob } from './clutch.contract.ts';
import { clutchFigureList, type FigureName, noClutchFigures } from './clutch-figures.ts';
import { engagement } from './engagement.ts';
import { fillAndDrag } from './fill-and-drag.ts';
import { type Annulus, pistonForce } from './piston-force.ts';
import { torqueCapacity } from './torque-capacity.ts';

/** The pressure a clutch is usually checked at with air: 40 psi, to the pascal. */
export const usualCheckingPressure_Pa = 275_790;

/** Of plain steel near 100 °C. Source: engineering tables give 0.46 to 0.49 kJ/(kg·K). */
export const steelSpecificHeat_J_kgK = 460;

export type ClutchFacts = Pick<ClutchOfJob, 'surfaces' | 'checkingPressure_Pa' | 'clearance'> & {
  readonly figures: ClutchFigures | null;
  readonly load: ClutchLoad | null;
};

/** Two rubbing faces a friction, less those that lie against another friction. */
export function frictionSurfaces(slots: ReadonlyArray<{ readonly kind: PieceKind }>): number {
  const isFriction = (index: number) => slots[index]?.kind === 'friction';
  const faces = slots.flatMap((_, index) => (isFriction(index) ? [isFriction(index - 1), isFriction(index + 1)] : []));
  return faces.filter((isAgainstFriction) => !isAgainstFriction).length;
}

/**
 * Each estimate by itself, in SI units; one that lacks figures names them, one that its figures forbid says why.
 * The springs hold back their installed force where the piston starts and at the checking pressure, and the rate times
 * today's clearance more once the pack is closed.
 */
export function clutchEstimate(facts: ClutchFacts): ClutchEstimate {
  const { known, missing } = stated(facts.figures ?? noClutchFigures);
  const ring: Annulus = {
    outerDiameter_m: known.pistonOutside_nm * 1e-9,
    innerDiameter_m: known.pistonInside_nm * 1e-9,
  };
  const lacksPiston = missing('pistonOutside_nm', 'pistonInside_nm', 'springs_mN');
  const piston = estimated(lacksPiston, () =>
    mapped(pistonForce(ring, facts.checkingPressure_Pa, known.springs_mN * 1e-3, null), (found) => ({
      area_m2: found.area_m2,
      startingPressure_Pa: found.startingPressure_Pa,
      checkingForce_N: found.pressureForce_N,
      checkingNet_N: found.netForce_N,
    })),
  );
  const torque = estimated(
    [
      ...lacksPiston,
      ...missing('frictionOutside_nm', 'frictionInside_nm', 'friction_millionths', 'applyPressure_Pa'),
      ...(facts.surfaces === 0 ? ['Frictions in the pack'] : []),
    ],
    () => torqueHeld(facts, known, ring),
  );
  const lacksShift = missing('inertia1_mg_m2', 'inertia2_mg_m2', 'speed1_rpm', 'speed2_rpm', 'steelMass_mg');
  const shift = estimated([...lacksShift, ...(torque.known === null ? ['Torque it holds'] : [])], () =>
    mapped(
      engagement({
        inertia1_kgm2: known.inertia1_mg_m2 * 1e-6,
        inertia2_kgm2: known.inertia2_mg_m2 * 1e-6,
        speed1_rpm: known.speed1_rpm,
        speed2_rpm: known.speed2_rpm,
        torque_Nm: torque.known?.wear_Nm ?? 0,
        steelMass_kg: known.steelMass_mg * 1e-6,
        specificHeat_J_kgK: steelSpecificHeat_J_kgK,
      }),
      ({ energy_J, slipTime_s, temperatureRise_K }) => ({ energy_J, slipTime_s, temperatureRise_K }),
    ),
  );
  const lacksFilling = [
    ...missing('pistonOutside_nm', 'pistonInside_nm'),
    ...(facts.clearance === null ? ['Clearance'] : []),
  ];
  const filling = estimated(lacksFilling, () => {
    const flow_m3_s = facts.figures?.flow_uL_min == null ? null : (facts.figures.flow_uL_min * 1e-9) / 60;
    const { today_nm } = facts.clearance!;
    const clearances_m = [today_nm, ...clearancesDrawn(facts.clearance!)].map((each) => each * 1e-9);
    return mapped(fillAndDrag(clearances_m, today_nm * 1e-9, ring, flow_m3_s), ([today, ...rows]) => ({
      today: today!,
      rows,
    }));
  });
  return { piston, torque, shift, filling };
}

function torqueHeld(facts: ClutchFacts, known: Record<FigureName, number>, ring: Annulus) {
  const travel_m = (facts.clearance?.today_nm ?? 0) * 1e-9;
  const springs_N = known.springs_mN * 1e-3 + known.springRate_mN_m * 1e-3 * travel_m;
  const pressed = pistonForce(ring, known.applyPressure_Pa, springs_N, null);
  if (!pressed.ok) return pressed;
  const force_N = pressed.value.netForce_N;
  const lining: Annulus = {
    outerDiameter_m: known.frictionOutside_nm * 1e-9,
    innerDiameter_m: known.frictionInside_nm * 1e-9,
  };
  const by = (theory: 'uniform wear' | 'uniform pressure') =>
    torqueCapacity(theory, lining, known.friction_millionths * 1e-6, facts.surfaces, { force_N });
  const wear = by('uniform wear');
  const pressure = by('uniform pressure');
  if (!wear.ok) return wear;
  const asked_Nm = askedOf(facts);
  return mapped(pressure, (even) => ({
    force_N,
    wear_Nm: wear.value.torque_Nm,
    pressure_Nm: even.torque_Nm,
    wearRadius_m: wear.value.meanRadius_m,
    pressureRadius_m: even.meanRadius_m,
    asked_Nm,
    wearMargin: asked_Nm === null ? null : wear.value.torque_Nm / asked_Nm,
    pressureMargin: asked_Nm === null ? null : even.torque_Nm / asked_Nm,
  }));
}

function askedOf({ load, figures }: ClutchFacts): number | null {
  const share = figures?.gearShare_millionths ?? null;
  if (load === null || share === null) return null;
  return load.engineTorque_mNm * 1e-3 * load.converterRatio_millionths * 1e-6 * share * 1e-6;
}

const clearancesInRow = 41;

/** A little beyond the limits, and beyond today's where that lies outside. */
function clearancesDrawn({ today_nm, low_nm, high_nm }: NonNullable<ClutchFacts['clearance']>): number[] {
  const from = 0.75 * Math.min(low_nm ?? today_nm, today_nm);
  const to = 1.25 * Math.max(high_nm ?? today_nm, today_nm);
  return Array.from({ length: clearancesInRow }, (_, index) => from + ((to - from) * index) / (clearancesInRow - 1));
}

/** Figures as numbers, 0 where not stated, and the names of those that are not. */
function stated(figures: ClutchFigures) {
  const known = Object.fromEntries(clutchFigureList.map(({ name }) => [name, figures[name] ?? 0])) as Record<
    FigureName,
    number
  >;
  const missing = (...names: readonly FigureName[]) =>
    clutchFigureList.filter(({ name }) => names.includes(name) && figures[name] === null).map(({ label }) => label);
  return { known, missing };
}

function estimated<T>(missing: readonly string[], estimate: () => Result<T>) {
  const waits = { known: null, missing: [...missing], problem: null };
  if (missing.length > 0) return waits;
  const found = estimate();
  return found.ok ? { ...waits, known: found.value } : { ...waits, problem: found.refusal.message };
}

function mapped<T, U>(result: Result<T>, map: (value: T) => U): Result<U> {
  return result.ok ? { ok: true, value: map(result.value) } : result;
}
