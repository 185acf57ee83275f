// What a family should measure, as plain data: packs with ordered slots, checks with limits, lists, and
// pictures of the parts.
// Amounts of a check are whole base units of its quantity (nm, Pa, mN·m, µL, degrees, ones).
import { z } from 'zod';
import { clutchFigures } from '../clutch/clutch.contract.ts';
import { length_nm, line, requiredLine, text } from '../contract/fields.ts';
import { quantities, unitNames } from '../quantities/units.ts';
import { specList } from './spec-list.ts';

/** From the piston to the snap ring a pack is made of these and nothing else. */
export const pieceKinds = ['apply plate', 'wave plate', 'steel', 'friction', 'backing plate', 'snap ring'] as const;

/** How a number is read. direct: one instrument, one number, or bore and shaft. drop: pressure lost over a time. */
export const methods = ['air', 'feeler', 'dial', 'direct', 'count', 'drop'] as const;

export const waveStates = ['none', 'in', 'flattened', 'left out'] as const;

export const slot = z.strictObject({
  kind: z.enum(pieceKinds),
  /** The height to expect, for plates nobody measures; null when it must be typed. */
  nominal_nm: length_nm.positive().nullable(),
  /** May be swapped to bring the clearance into the band. */
  isAdjuster: z.boolean(),
  /** Which loose plates fit: plates and slots of the same outline go together. */
  outline: line,
  /** Heights a selective part is made in. */
  catalogue_nm: z.array(length_nm.positive()).max(40),
  /** How it lies, if that matters: "dish up", "bevel to the ring". */
  facing: line,
});

/** Places count the slots of one kind from the piston: place 1 is the one nearest to it. */
export const placementRule = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('thinnest-in'),
    pieceKind: z.enum(pieceKinds),
    places: z.array(z.int().positive()).min(1),
  }),
  z.strictObject({
    kind: z.literal('thickest-in'),
    pieceKind: z.enum(pieceKinds),
    places: z.array(z.int().positive()).min(1),
  }),
  z.strictObject({ kind: z.literal('all-equal'), pieceKind: z.enum(pieceKinds) }),
]);

export const pack = z.strictObject({
  name: requiredLine,
  slots: z.array(slot).min(1).max(40),
  rules: z.array(placementRule),
  note: text,
  /** What the estimates of the clutch are made from; null where nobody stated any. */
  clutch: clutchFigures.nullable().default(null),
});

export const limits = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('range'), low: z.int(), high: z.int() }),
  /** A target with good enough within `low` to `high`. */
  z.strictObject({ kind: z.literal('target'), target: z.int(), low: z.int(), high: z.int() }),
  z.strictObject({ kind: z.literal('minimum'), low: z.int() }),
  z.strictObject({ kind: z.literal('maximum'), high: z.int() }),
  /** Decides between variants: the reading names the one whose nominal it is within, and is refused in between. */
  z.strictObject({
    kind: z.literal('variants'),
    variants: z.array(z.strictObject({ name: requiredLine, nominal: z.int(), within: z.int().positive() })).min(2),
  }),
]);

/** Which reading the limits bind. mean and tightest: the mean inside and the tightest spot not below the low limit. */
export const holdsFor = ['mean and tightest', 'mean', 'tightest spot', 'every spot'] as const;

export const check = z.strictObject({
  name: requiredLine,
  /** The heading it stands under on the ticket and the report. */
  group: requiredLine,
  /** The pack whose clearance this is, by name, or null. */
  packName: requiredLine.nullable(),
  method: z.enum(methods),
  quantity: z.enum(quantities),
  unit: z.enum(unitNames),
  limits,
  holdsFor: z.enum(holdsFor),
  waveState: z.enum(waveStates),
  spots: z.int().min(1).max(12),
  /** Thicknesses of the selective washer or shim that moves this number; empty where there is none. */
  shims_nm: z.array(length_nm.positive()).max(40),
  sourceNote: line,
});

/** A place on a picture, and what it names: a check, a line of a list, or nothing but itself. */
export const picturePoint = z.strictObject({
  /** Short, as it stands on the picture: "A", "C1". */
  label: z.string().trim().min(1, 'must not be empty').max(12),
  /** What is said beside the picture: "lube, flows". */
  note: line,
  /** Thousandths of the width from the left, and of the height from the top. */
  x_permille: z.int().min(0).max(1000),
  y_permille: z.int().min(0).max(1000),
  checkName: requiredLine.nullable(),
  listName: requiredLine.nullable(),
  lineWords: requiredLine.nullable(),
});

/** The shop's own photograph of a part. Its file lies beside the shop file, named after what is in it. */
export const picture = z.strictObject({
  title: requiredLine,
  sha256: z.string().regex(/^[0-9a-f]{64}$/, 'must be the name of a kept picture'),
  width: z.int().positive(),
  height: z.int().positive(),
  points: z.array(picturePoint).max(60),
});

export const specSheet = z.strictObject({
  packs: z.array(pack).max(20),
  checks: z.array(check).max(200),
  lists: z.array(specList).max(40).default([]),
  pictures: z.array(picture).max(20).default([]),
});

export type PieceKind = (typeof pieceKinds)[number];
export type ReadingMethod = (typeof methods)[number];
export type WaveState = (typeof waveStates)[number];
export type Slot = z.infer<typeof slot>;
export type PlacementRule = z.infer<typeof placementRule>;
export type Pack = z.infer<typeof pack>;
export type Limits = z.infer<typeof limits>;
export type HoldsFor = (typeof holdsFor)[number];
export type Check = z.infer<typeof check>;
export type PicturePoint = z.infer<typeof picturePoint>;
export type Picture = z.infer<typeof picture>;
export type SpecSheet = z.infer<typeof specSheet>;
