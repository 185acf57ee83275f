// The calculator's computations about the clutch itself: force, torque, heat, fill and drag. Estimates all.
import { z } from 'zod';
import { refuse } from '../../../../app/base/result.ts';
import { engagement } from '../../../../app/clutch/engagement.ts';
import { fillAndDrag } from '../../../../app/clutch/fill-and-drag.ts';
import { pistonForce } from '../../../../app/clutch/piston-force.ts';
import { clutchTheories, torqueCapacity } from '../../../../app/clutch/torque-capacity.ts';
import { computation, mapResult, notNegative, number, positive } from './computation.ts';

const ring = { outerDiameter_m: positive('m'), innerDiameter_m: notNegative('m') };

const force = computation({
  name: 'piston-force',
  purpose: 'what pushes a clutch piston, less its spring, with what spinning fluid adds',
  input: z.strictObject({
    pressure_Pa: notNegative('Pa'),
    ...ring,
    spring_N: notNegative('N, as installed'),
    speed_rpm: notNegative('revolutions a minute; with it the next two are needed').optional(),
    density_kg_m3: positive('kg/m³').optional(),
    freeSurfaceRadius_m: notNegative('m, where the fluid’s surface stands; not outside the inner radius').optional(),
  }),
  outputs: {
    area_m2: 'of the ring, m²',
    pressureForce_N: 'N',
    centrifugalForce_N: 'N',
    netForce_N: 'pressure and centrifugal force less the spring, N',
    startingPressure_Pa: 'at which the piston begins to move, standing still and without seal drag, Pa',
  },
  formula: 'p · π/4 (D² − d²) − F(spring) + (πρω²/4)(rₒ² − rᵢ²)(rₒ² + rᵢ² − 2rₛ²)',
  source: 'hydrostatics of a fluid turning as one body',
  compute: (input) => {
    const { speed_rpm, density_kg_m3, freeSurfaceRadius_m } = input;
    const isStill = speed_rpm === undefined || speed_rpm === 0;
    if (!isStill && (density_kg_m3 === undefined || freeSurfaceRadius_m === undefined)) {
      return refuse('fluid', 'With a speed, the fluid’s density and free surface radius are needed too.');
    }
    return pistonForce(
      input,
      input.pressure_Pa,
      input.spring_N,
      isStill ? null : { speed_rpm, density_kg_m3: density_kg_m3!, freeSurfaceRadius_m: freeSurfaceRadius_m! },
    );
  },
});

const pack = {
  theory: z.enum(clutchTheories),
  ...ring,
  friction: positive('coefficient'),
  surfaces: z.int().positive().describe('friction surfaces, two a plate'),
};

const torque = computation({
  name: 'torque-capacity',
  purpose: 'how much torque a clutch can hold',
  input: z.union([
    z.strictObject({ ...pack, force_N: positive('on the plates, N') }),
    z.strictObject({ ...pack, maximumPressure_Pa: positive('that the lining may carry, Pa') }),
  ]),
  outputs: { force_N: 'on the plates, N', torque_Nm: 'N·m', meanRadius_m: 'at which friction acts, m' },
  formula: [
    'uniform wear: F = πp·d(D − d)/2, r = (D + d)/4',
    'uniform pressure: F = πp(D² − d²)/4, r = (D² + Dd + d²)/(3(D + d))',
    'torque = friction · F · surfaces · r',
  ].join('\n'),
  source: 'V. Bhandari, Design of Machine Elements, 11; Shigley, Mechanical Engineering Design, 16',
  compute: (input) => torqueCapacity(input.theory, input, input.friction, input.surfaces, input),
});

const shift = computation({
  name: 'engagement',
  purpose: 'heat, slip time and steel temperature of one engagement',
  input: z.strictObject({
    inertia1_kgm2: positive('kg·m²'),
    inertia2_kgm2: positive('kg·m²'),
    speed1_rpm: number('revolutions a minute; the other way round is negative'),
    speed2_rpm: number('revolutions a minute'),
    torque_Nm: positive('N·m, constant'),
    steelMass_kg: positive('kg'),
    specificHeat_J_kgK: positive('J/(kg·K)'),
  }),
  outputs: {
    energy_J: 'turned into heat, J',
    slipTime_s: 's',
    finalSpeed_rad_s: 'of both, rad/s',
    temperatureRise_K: 'of the steels if all of it goes into them, K',
  },
  formula: 'E = I₁I₂(ω₁ − ω₂)²/2(I₁ + I₂); t = I₁I₂|ω₁ − ω₂|/T(I₁ + I₂); ΔT = E/mc',
  source: 'Shigley, Mechanical Engineering Design, 16-8 and 16-9',
  compute: engagement,
});

const fill = computation({
  name: 'fill-and-drag',
  purpose: 'what clearance changes: fill volume, fill time, and open drag against today’s',
  input: z.strictObject({
    clearances_m: z.array(z.number().positive()).min(1).describe('m'),
    today_m: positive('the clearance it has now, m'),
    pistonOuterDiameter_m: positive('m'),
    pistonInnerDiameter_m: notNegative('m'),
    flow_m3_s: positive('that fills it, m³/s').optional(),
  }),
  outputs: {
    rows: 'clearance_m, fillVolume_m3, fillTime_s where a flow is given, dragRelativeToToday (no unit; full film, equal spacing: a ceiling)',
  },
  formula: 'volume = π/4 (D² − d²) · clearance; time = volume / flow; drag ∝ 1/clearance',
  source: 'viscous drag between parallel plates',
  compute: (input) => {
    const piston = { outerDiameter_m: input.pistonOuterDiameter_m, innerDiameter_m: input.pistonInnerDiameter_m };
    const found = fillAndDrag(input.clearances_m, input.today_m, piston, input.flow_m3_s ?? null);
    return mapResult(found, (rows) => ({
      rows: rows.map(({ fillTime_s, ...row }) => (fillTime_s === null ? row : { ...row, fillTime_s })),
    }));
  },
});

export const clutchComputations = [force, torque, shift, fill];
