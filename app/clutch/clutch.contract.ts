// The clutch of a pack: the figures a sheet states, what the vehicle asks of it, and what both say. Estimates all.
import { z } from 'zod';
import { id, instant, requiredLine } from '../contract/fields.ts';
import { read, write } from '../contract/method.ts';

const stated = z.int().positive().nullable();

/** Whole base units, null where not stated. */
export const clutchFigures = z.strictObject({
  pistonOutside_nm: stated,
  pistonInside_nm: z.int().nonnegative().nullable(),
  /** Of all return springs together, as installed. */
  springs_mN: z.int().nonnegative().nullable(),
  springRate_mN_m: stated,
  frictionOutside_nm: stated,
  frictionInside_nm: z.int().nonnegative().nullable(),
  friction_millionths: stated,
  applyPressure_Pa: stated,
  /** Of the torque into the box, how much this clutch carries where it carries most. */
  gearShare_millionths: stated,
  /** That fills it. */
  flow_uL_min: stated,
  inertia1_mg_m2: stated,
  inertia2_mg_m2: stated,
  speed1_rpm: z.int().nullable(),
  speed2_rpm: z.int().nullable(),
  steelMass_mg: stated,
});

/** What the vehicle asks of it. */
export const clutchLoad = z.strictObject({
  engineTorque_mNm: z.int().positive(),
  converterRatio_millionths: z.int().positive(),
});

/** One estimate: what came of it, or which figures it waits for, or why these figures give none. */
const estimated = <T extends z.ZodType>(of: T) =>
  z.strictObject({ known: of.nullable(), missing: z.array(z.string()), problem: z.string().nullable() });

const torque = z.strictObject({
  force_N: z.number(),
  wear_Nm: z.number(),
  pressure_Nm: z.number(),
  wearRadius_m: z.number(),
  pressureRadius_m: z.number(),
  /** Engine torque × converter ratio × gear share. */
  asked_Nm: z.number().nullable(),
  /** What it holds over what is asked. */
  wearMargin: z.number().nullable(),
  pressureMargin: z.number().nullable(),
});

const filling = z.strictObject({
  clearance_m: z.number(),
  fillVolume_m3: z.number(),
  fillTime_s: z.number().nullable(),
  dragRelativeToToday: z.number(),
});

export const clutchEstimate = z.strictObject({
  piston: estimated(
    z.strictObject({
      area_m2: z.number(),
      startingPressure_Pa: z.number(),
      checkingForce_N: z.number(),
      checkingNet_N: z.number(),
    }),
  ),
  torque: estimated(torque),
  shift: estimated(
    z.strictObject({
      energy_J: z.number(),
      slipTime_s: z.number(),
      temperatureRise_K: z.number(),
    }),
  ),
  filling: estimated(z.strictObject({ today: filling, rows: z.array(filling) })),
});

export const clutchOfJob = z.strictObject({
  jobNumber: z.int(),
  familyId: id,
  familyName: requiredLine,
  revisionNumber: z.int().positive(),
  packId: id,
  packName: requiredLine,
  figures: clutchFigures.nullable(),
  /** Friction faces that rub, counted from the slots. */
  surfaces: z.int().nonnegative(),
  hasWavePlate: z.boolean(),
  checkingPressure_Pa: z.int().positive(),
  /** Whether that is what the setup card of the newest reading says, or what is usual. */
  isPressureOnCard: z.boolean(),
  clearance: z
    .strictObject({
      today_nm: z.number(),
      from: z.enum(['as read', 'as predicted', 'the target']),
      low_nm: z.number().nullable(),
      high_nm: z.number().nullable(),
    })
    .nullable(),
  load: clutchLoad.extend({ at: instant, by: z.string(), reason: z.string() }).nullable(),
  estimate: clutchEstimate,
});

export const clutchContract = {
  'clutch.getClutch': read(
    'what the figures of a pack’s clutch say on a job; estimates',
    z.strictObject({ jobId: id, packId: id }),
    clutchOfJob,
  ),
  'clutch.stateLoad': write(
    'state what the vehicle asks of its clutches: engine torque and converter ratio, as typed',
    z.strictObject({
      jobId: id,
      engineTorque: z.string().trim().max(200),
      converterRatio: z.string().trim().max(200),
      reason: z.string().trim().max(200),
      by: id,
    }),
    z.strictObject({}),
  ),
} as const;

export type ClutchFigures = z.infer<typeof clutchFigures>;
export type ClutchLoad = z.infer<typeof clutchLoad>;
export type ClutchEstimate = z.infer<typeof clutchEstimate>;
export type ClutchOfJob = z.infer<typeof clutchOfJob>;
export type Filling = z.infer<typeof filling>;
