// Mock-ups of a clutch pack: what sits in each slot, the gap the readings imply, what to swap.
import { z } from 'zod';
import { computed_nm, id, instant, length_nm, line, requiredLine } from '../contract/fields.ts';
import { read, write } from '../contract/method.ts';
import { verdict } from '../readings/readings.contract.ts';
import { pieceKinds } from '../specs/spec-sheet.ts';
import { savedPack } from '../specs/specs.contract.ts';

export const piece = z.strictObject({
  pieceId: id,
  kind: z.enum(pieceKinds),
  outline: line,
  tag: line,
  height_nm: length_nm,
  /** measured: by micrometer. nominal: nobody measured it. catalogue: as sold. */
  heightFrom: z.enum(['measured', 'nominal', 'catalogue']),
  /** Of the micrometer that measured it; null where that was not written down. */
  standardUncertainty_nm: length_nm.positive().nullable(),
});

/** Where the piece of a slot comes from. */
export const pieceSource = z.union([
  z.strictObject({ pieceId: id }),
  z.strictObject({ typed: requiredLine.describe('its height, as typed'), tag: line.optional() }),
  z.strictObject({ canId: id }),
  z.strictObject({ catalogue_nm: length_nm.positive() }),
]);

export const mockUp = z.strictObject({
  mockUpId: id,
  /** 0 is the pack as it was found. */
  number: z.int().nonnegative(),
  at: instant,
  by: z.string(),
  note: line,
  pieces: z.array(z.strictObject({ slotId: id, piece, isNew: z.boolean() })),
  /** What the book expected it to read, before it was read. */
  predicted: z.strictObject({ mean_nm: computed_nm, standardDeviation_nm: computed_nm }).nullable(),
  read: z.strictObject({ takeId: id, mean_nm: computed_nm, expanded_nm: computed_nm.nullable(), verdict }).nullable(),
  /** How many standard deviations the reading lies from what the earlier mock-ups say. */
  innovation: z.number().nullable(),
  /** When that is beyond 3: what to look at, first suspect first. */
  suspects: z.array(z.string()),
  brokenRules: z.array(z.string()),
});

export const packOfJob = savedPack.extend({
  checkId: id.nullable(),
  mockUps: z.array(mockUp),
  gap: z.strictObject({ mean_nm: computed_nm, standardDeviation_nm: computed_nm }).nullable(),
  ruleSentences: z.array(z.string()),
});

export const swapOption = z.strictObject({
  changes: z.int().nonnegative(),
  out: z.array(z.strictObject({ slotId: id, slotName: z.string(), piece })),
  in: z.array(
    z.strictObject({
      slotId: id,
      slotName: z.string(),
      height_nm: length_nm,
      label: z.string().describe('its tag, its can, or "catalogue"'),
      from: pieceSource,
    }),
  ),
  /** Pieces that stay but move to another slot, so that the family's rules hold. */
  moved: z.array(z.strictObject({ fromSlotId: id, toSlotId: id, pieceId: id, sentence: z.string() })),
  predicted_nm: computed_nm,
  standardDeviation_nm: computed_nm,
  expanded_nm: computed_nm,
  probabilityInBand: z.number().nullable(),
  /** True when it has no better chance than a plan with fewer changes. */
  isNoBetter: z.boolean(),
  /** How many sets of plates come out equally good. */
  equallyGood: z.int().positive(),
});

const plannedPack = z.strictObject({
  /** null: see `problem`. */
  option: swapOption.nullable(),
  /** Why there is no plan, or why it does not reach the band and what to buy. */
  problem: z.string().nullable(),
});

export const unitPlan = z.strictObject({
  packs: z.array(
    z.strictObject({
      packId: id,
      name: z.string(),
      target_nm: computed_nm,
      /** Each with the fewest swaps that do, from what the packs before it left. */
      inOrder: plannedPack,
      /** As the joint optimiser shares the same plates out. */
      together: plannedPack,
    }),
  ),
  /** One a group of packs that take the same plates. */
  sharing: z.array(
    z.strictObject({
      packs: z.array(z.string()),
      /** NotBothWays: better ones trade plates both ways, which cannot be built. Refused: it was never searched. */
      status: z.enum(['Optimal', 'Infeasible', 'BudgetExhausted', 'NotBothWays', 'Refused']),
      sentence: z.string(),
      /** Which pack is taken apart first, where a plate goes from one into another. */
      order: z.array(z.string()),
    }),
  ),
  advised: z.enum(['inOrder', 'together']),
  /** What to do and why, in one sentence. */
  advice: z.string(),
  /** What sharing out together brings over pack after pack; null where no two packs take the same plates. */
  gain: z.string().nullable(),
});

export const packsContract = {
  'packs.getPack': read(
    'a pack of a job: slots, rules, mock-ups with prediction beside reading',
    z.strictObject({ jobId: id, packId: id }),
    packOfJob,
  ),
  'packs.recordMockUp': write(
    'what sits in the pack now; slots not named keep what the last mock-up had, or the nominal height at the first',
    z.strictObject({
      jobId: id,
      packId: id,
      pieces: z.array(z.strictObject({ slotId: id, from: pieceSource })).max(40),
      note: line,
      by: id,
    }),
    z.strictObject({ mockUpId: id, number: z.int().nonnegative() }),
  ),
  'packs.planSwaps': read(
    'for every number of changes, the plates at hand with the best chance of being in the band',
    z.strictObject({ jobId: id, packId: id }),
    z.strictObject({
      options: z.array(swapOption),
      /** Which option to take and why, in one sentence. */
      advice: z.string(),
      adviseChanges: z.int().nonnegative().nullable(),
      /** What the prediction rests on, in one sentence. */
      basis: z.string(),
      /** When nothing at hand fits: the height that would. */
      buy: z.string().nullable(),
    }),
  ),
  'packs.planUnit': read(
    'what to swap in all packs of a job that are mocked up and not settled: pack after pack, and shared out together',
    z.strictObject({
      jobId: id,
      objective: z.enum(['sum', 'largest']).describe('smallest sum of deviations, or the largest of them first'),
    }),
    /** null: no pack is open. */
    unitPlan.nullable(),
  ),
  'packs.printPullList': read(
    'the plates to pull for all packs of a job, as a PDF',
    z.strictObject({
      jobId: id,
      objective: z.enum(['sum', 'largest']),
      way: z.enum(['inOrder', 'together']),
      paper: z.enum(['letter', 'A4']).optional(),
    }),
    z.strictObject({ fileName: z.string(), pdfBase64: z.string() }),
  ),
  'packs.planShim': read(
    'which selective washer brings an end play to its target',
    z.strictObject({ jobId: id, checkId: id, shimIn: requiredLine.describe('the washer in now, as typed') }),
    z.strictObject({
      endPlay_nm: computed_nm,
      options: z.array(
        z.strictObject({ shim_nm: length_nm, endPlay_nm: computed_nm, deviation_nm: computed_nm.nullable() }),
      ),
      sentence: z.string(),
    }),
  ),
} as const;

export type Piece = z.infer<typeof piece>;
export type PieceSource = z.infer<typeof pieceSource>;
export type MockUp = z.infer<typeof mockUp>;
export type PackOfJob = z.infer<typeof packOfJob>;
export type SwapOption = z.infer<typeof swapOption>;
export type UnitPlan = z.infer<typeof unitPlan>;
