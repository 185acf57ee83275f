// Steels and other adjusters: cans sorted by thickness with a count, single plates with a tag, what is known of each, and
// what they can do for the packs they fit.
import { z } from 'zod';
import { computed_nm, done, id, instant, length_nm, line, requiredLine } from '../contract/fields.ts';
import { read, write } from '../contract/method.ts';
import { piece } from '../packs/packs.contract.ts';
import { pieceKinds } from '../specs/spec-sheet.ts';

export const can = z.strictObject({
  canId: id,
  kind: z.enum(pieceKinds),
  outline: line,
  height_nm: length_nm,
  count: z.int().nonnegative(),
});

/**
 * read again: it came out of a pack since it was last measured. do not use: discarded, looked over and rejected, or
 * put among the others of a can; such a one may still sit in a unit.
 */
export const plateStates = ['free', 'in a unit', 'read again', 'do not use'] as const;
export const flatness = ['flat', 'not flat', 'not tried'] as const;

/** One look at a plate on the flat plate. */
const lookOver = {
  flat: z.enum(flatness),
  hasHotSpots: z.boolean(),
  isGlazed: z.boolean(),
  isConed: z.boolean(),
  isUsable: z.boolean(),
  note: line,
};

export const plate = piece.extend({
  state: z.enum(plateStates),
  /** Why it is not free: "dished", "in Forward of job 214". */
  why: z.string(),
  where: z.strictObject({ jobId: id, jobNumber: z.int().positive(), packId: id, packName: z.string() }).nullable(),
  /** The can it came out of. */
  canId: id.nullable(),
  /** Thickest less thinnest point, where it was measured at several. */
  spread_nm: length_nm.nullable(),
  measuredAt: instant,
  measuredBy: z.string(),
});

export const plateInFull = plate.extend({
  batchId: id.nullable(),
  /** Newest first. */
  heights: z.array(
    z.strictObject({
      height_nm: length_nm,
      heightFrom: piece.shape.heightFrom,
      points_nm: z.array(length_nm),
      typed: z.string(),
      micrometer: z.string(),
      standardUncertainty_nm: length_nm.nullable(),
      reason: z.string(),
      at: instant,
      by: z.string(),
    }),
  ),
  /** Newest first. */
  looks: z.array(z.strictObject({ ...lookOver, offFlat_nm: length_nm.nullable(), at: instant, by: z.string() })),
});

export const outlineLine = z.strictObject({
  outline: z.string(),
  kinds: z.array(z.enum(pieceKinds)),
  /** Packs of the newest spec sheets that it fits. */
  packs: z.array(z.strictObject({ familyId: id, familyName: z.string(), packId: id, packName: z.string() })),
  /** Single plates at hand: free, or to be read again. */
  free: z.int().nonnegative(),
  /** Plates in its cans. */
  inCans: z.int().nonnegative(),
});

/** From one clearance to another; null: without end. */
const interval = z.strictObject({ from_nm: length_nm.nullable(), to_nm: length_nm.nullable() });

export const platesContract = {
  'stock.listOutlines': read('every outline, and which packs it fits', z.strictObject({}), z.array(outlineLine)),
  'stock.listPlates': read(
    'single plates of an outline by thickness, where each is and whether it may be used; a window of the list',
    z.strictObject({
      outline: line,
      text: line.describe('a piece of the tag or of the height; empty: all'),
      state: z.enum(plateStates).nullable(),
      offset: z.int().nonnegative(),
      limit: z.int().positive().max(1000),
    }),
    z.strictObject({
      total: z.int().nonnegative(),
      byState: z.record(z.enum(plateStates), z.int().nonnegative()),
      plates: z.array(plate),
      cans: z.array(can),
      /** Single plates by height and state: for the picture, the whole outline. */
      histogram: z.array(
        z.strictObject({ height_nm: length_nm, state: z.enum(plateStates), count: z.int().positive() }),
      ),
    }),
  ),
  'stock.listPlateMoves': read(
    'the last things that happened to the plates and cans of an outline, newest first',
    z.strictObject({ outline: line, limit: z.int().positive().max(200) }),
    z.array(z.strictObject({ name: z.string(), says: z.string(), at: instant, by: z.string() })),
  ),
  'stock.getPlate': read('all that is known of a plate', z.strictObject({ pieceId: id }), plateInFull),
  'stock.addMeasured': write(
    'one plate of a box, measured: into the can of its class, or among the single plates',
    z.strictObject({
      kind: z.enum(pieceKinds),
      outline: requiredLine,
      typed: requiredLine.describe('its height as typed, or several around the plate with blanks between'),
      into: z.discriminatedUnion('kind', [
        z.strictObject({ kind: z.literal('single'), tag: line }),
        /** Cans are for heights rounded to whole classes of this width. */
        z.strictObject({ kind: z.literal('can'), class_nm: length_nm.positive() }),
      ]),
      /** The batch it is taken out of. */
      batchId: id.nullable(),
      micrometer: line,
      /** The person was asked about an unlikely height, and means it. */
      isSure: z.boolean().default(false),
      by: id,
    }),
    z.strictObject({
      height_nm: length_nm,
      into: z.discriminatedUnion('kind', [
        z.strictObject({ kind: z.literal('single'), pieceId: id }),
        z.strictObject({ kind: z.literal('can'), canId: id, canMovementId: id, can_nm: length_nm, count: z.int() }),
      ]),
    }),
  ),
  'stock.takeBackMeasured': write(
    'the plate measured last was mistyped: take it out of the list or the can again',
    z.strictObject({ canMovementId: id.nullable(), pieceId: id.nullable(), by: id }),
    done,
  ),
  'stock.lookOverPlate': write(
    'a plate was looked over: flat, hot spots, glaze, cone; usable or not',
    z.strictObject({
      pieceId: id,
      ...lookOver,
      offFlat: line.describe('by how much, as typed; empty where not measured'),
      by: id,
    }),
    done,
  ),
  'stock.putInCan': write(
    'a free plate goes among the others of the can of its height; it is not told apart any more',
    z.strictObject({
      pieceId: id,
      /** Cans are for heights rounded to whole classes of this width; null: the can of its very height. */
      class_nm: length_nm.positive().nullable().default(null),
      by: id,
    }),
    z.strictObject({ canId: id }),
  ),
  'stock.getReach': read(
    'what the plates at hand can do for a pack: which clearances one swap brings into the band, and what to buy',
    z.strictObject({ packId: id }),
    z.strictObject({
      packName: z.string(),
      familyName: z.string(),
      outline: z.string(),
      lower_nm: length_nm.nullable(),
      upper_nm: length_nm.nullable(),
      /** Heights the picture stands on: the newest unit of this pack as it was found, or the spec’s nominal ones. */
      fitted_nm: z.array(length_nm),
      fittedFrom: z.enum(['the last unit', 'the spec sheet', 'nothing']),
      /** Clearances as read that need no swap or one. */
      reach: z.array(interval),
      /** The newest packs of this kind, at most 100: what they read first, and whether one swap would do today. */
      packs: z.array(
        z.strictObject({
          jobId: id,
          jobNumber: z.int().positive(),
          clearance_nm: computed_nm,
          swaps: z.int().min(0).max(2).nullable(),
          /** The height it would take if one swap cannot do it, for the picture. */
          asks_nm: length_nm.nullable(),
        }),
      ),
      covered: z.int().nonnegative(),
      /**
       * The best one height to buy, then the best two: of those the slots list as made, or else of whole half thou
       * (hundredths of a millimetre) from 20 below the thinnest known to 20 above the thickest.
       */
      buy: z.array(z.strictObject({ heights_nm: z.array(length_nm), covers: z.int().nonnegative() })),
      sentence: z.string(),
    }),
  ),
} as const;

/** What the bench needs of the loose ones. */
export const loosePlatesContract = {
  'stock.listLoose': read(
    'the pieces and cans at hand of one outline, or of all when it is empty',
    z.strictObject({ outline: line }),
    z.strictObject({ outlines: z.array(z.string()), pieces: z.array(piece), cans: z.array(can) }),
  ),
  'stock.addPiece': write(
    'put one measured piece among the loose ones',
    z.strictObject({ kind: z.enum(pieceKinds), outline: requiredLine, tag: line, typed: requiredLine, by: id }),
    z.strictObject({ pieceId: id }),
  ),
  'stock.remeasurePiece': write(
    'a piece was measured again, or written down wrong: its new height counts from now on, the old one stays on record',
    z.strictObject({ pieceId: id, typed: requiredLine, reason: requiredLine, by: id }),
    done,
  ),
  'stock.discardPiece': write(
    'a loose piece is not to be used any more, with a reason',
    z.strictObject({ pieceId: id, reason: requiredLine, by: id }),
    done,
  ),
  'stock.addCan': write(
    'start a can of one thickness with a count',
    z.strictObject({
      kind: z.enum(pieceKinds),
      outline: requiredLine,
      typed: requiredLine,
      count: z.int().positive().max(10_000),
      by: id,
    }),
    z.strictObject({ canId: id }),
  ),
  'stock.moveInCan': write(
    'put so many plates into a can, or with a negative number take them out, with a reason',
    z.strictObject({
      canId: id,
      change: z
        .int()
        .min(-10_000)
        .max(10_000)
        .refine((change) => change !== 0, 'must not be zero'),
      reason: requiredLine,
      by: id,
    }),
    done,
  ),
  'stock.countCan': write(
    'a can was counted: correct it, with a reason',
    z.strictObject({ canId: id, count: z.int().nonnegative().max(10_000), reason: requiredLine, by: id }),
    done,
  ),
} as const;

export type Can = z.infer<typeof can>;
export type Plate = z.infer<typeof plate>;
export type PlateInFull = z.infer<typeof plateInFull>;
export type OutlineLine = z.infer<typeof outlineLine>;
export type PlateState = (typeof plateStates)[number];
export type Flatness = (typeof flatness)[number];
