// A pack of a job: what sat in it at each mock-up, what that says about its gap, and what to put in next.
import { gapEstimate, learnGap, predictClearance } from '../../app/packs/gap.ts';
import { firstSuspects, innovationLimit, packEvidence, pieceName } from '../../app/packs/pack-evidence.ts';
import type { MockUp, PackOfJob, Piece, PieceSource } from '../../app/packs/packs.contract.ts';
import { brokenRules, ruleSentence } from '../../app/packs/placement.ts';
import { slotName } from '../../app/packs/slot-name.ts';
import { planSwaps as plan } from '../../app/packs/swap-plan.ts';
import type { PackToPlan } from '../../app/packs/swap-search.ts';
import { formatLength } from '../../app/quantities/format-amount.ts';
import { boundsOf } from '../../app/readings/judge-take.ts';
import type { Settings } from '../../app/shop/shop.contract.ts';
import type { SavedPack } from '../../app/specs/specs.contract.ts';
import { accepted, found, Refused } from '../database/errors.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { jobAtBench } from '../jobs/jobs.service.ts';
import { getJob } from '../jobs/ticket.service.ts';
import { personAtWork } from '../shop/shop.service.ts';
import { listCans } from '../stock/cans.repository.ts';
import { findPiece, listLoosePieces } from '../stock/plates.repository.ts';
import { nominalPieceForSlot, pieceForSlot, pieceThatStays } from '../stock/plates-for-slots.service.ts';
import { type MockUpAtHand, packAtHand, readOf, recordOf } from './pack-at-hand.service.ts';
import * as repository from './packs.repository.ts';

export async function getPack(reading: Reading, input: { jobId: number; packId: number }): Promise<PackOfJob> {
  const { pack, check, settings, mockUps } = await packAtHand(reading, input);
  const records = mockUps.map(recordOf);
  const knowledge = learnGap(packEvidence(records, [], settings));
  const shown = (height_nm: number) => formatLength(height_nm, settings.lengthUnit);
  const gap = knowledge.ok ? gapEstimate(knowledge.value) : undefined;
  let readSoFar = 0;
  return {
    ...pack,
    checkId: check?.checkId ?? null,
    gap: gap ? { mean_nm: gap.mean, standardDeviation_nm: gap.standardDeviation } : null,
    ruleSentences: pack.rules.map((rule) => ruleSentence(rule)),
    mockUps: mockUps.map((mockUp, index): MockUp => {
      const innovation = mockUp.take && knowledge.ok ? (knowledge.value.innovations[readSoFar] ?? null) : null;
      if (mockUp.take) readSoFar += 1;
      const before = new Set(mockUps[index - 1]?.pieces.map(({ piece }) => piece.pieceId));
      return {
        mockUpId: mockUp.mockUpId,
        number: mockUp.number,
        at: mockUp.at,
        by: mockUp.by,
        note: mockUp.note,
        pieces: mockUp.pieces.map((each) => ({ ...each, isNew: index > 0 && !before.has(each.piece.pieceId) })),
        predicted: mockUp.predicted,
        read: mockUp.take && readOf(mockUp.take),
        innovation,
        suspects: innovation !== null && Math.abs(innovation) > innovationLimit ? [...firstSuspects] : [],
        brokenRules: brokenRules(pack.slots, heightsBySlot(pack, mockUp.pieces), pack.rules, shown),
      };
    }),
  };
}

export async function recordMockUp(
  writing: Writing,
  now: string,
  input: {
    jobId: number;
    packId: number;
    pieces: ReadonlyArray<{ slotId: number; from: PieceSource }>;
    note: string;
    by: number;
  },
) {
  await personAtWork(writing, input.by);
  await jobAtBench(writing, input.jobId);
  const { pack, settings, mockUps } = await packAtHand(writing, input);
  const fitted = await fillSlots(writing, now, pack, mockUps.at(-1), input, settings);
  const number = mockUps.length;
  const shown = (height_nm: number) => formatLength(height_nm, settings.lengthUnit);
  // What was found may break the family's rules; what is built may not.
  const [broken] = brokenRules(pack.slots, heightsBySlot(pack, fitted), pack.rules, shown);
  if (number > 0 && broken !== undefined) throw new Refused('placement', broken);
  const mockUpId = await repository.insertMockUp(writing, {
    ...input,
    number,
    now,
    predicted: predictionFor(mockUps, fitted, settings),
    pieces: fitted.map(({ slotId, piece }) => ({ slotId, pieceId: piece.pieceId })),
  });
  return { mockUpId, number };
}

export async function planSwaps(reading: Reading, input: { jobId: number; packId: number }) {
  return accepted(plan(await packToPlan(reading, input)));
}

/** The packs that are mocked up and whose check is not settled, in the order of their checks. */
export async function packsOfUnit(reading: Reading, jobId: number): Promise<PackToPlan[]> {
  const job = await getJob(reading, { jobId });
  const open = job.checks.filter(
    ({ checkId, packId }) =>
      job.missing.some((each) => each.checkId === checkId) &&
      job.packs.some((pack) => pack.packId === packId && pack.mockUpNumber !== null),
  );
  const asked: PackToPlan[] = [];
  for (const { packId } of open) if (packId !== null) asked.push(await packToPlan(reading, { jobId, packId }));
  return asked;
}

async function packToPlan(reading: Reading, input: { jobId: number; packId: number }): Promise<PackToPlan> {
  const { pack, check, settings, mockUps } = await packAtHand(reading, input);
  if (!check)
    throw new Refused('no-check', `${pack.name} has no clearance on its spec sheet, so there is nothing to aim at.`);
  const now = found(mockUps.at(-1), 'mock-up yet: enter what sits in the pack first');
  const outlines = [...new Set(pack.slots.filter((slot) => slot.isAdjuster).map((slot) => slot.outline))];
  const pieces = await Promise.all(outlines.map((outline) => listLoosePieces(reading, outline)));
  const cans = await Promise.all(outlines.map((outline) => listCans(reading, outline)));
  return {
    pack,
    bounds: boundsOf(check.limits),
    target: check.limits.kind === 'target' ? check.limits.target : null,
    fitted: now.pieces,
    loosePieces: pieces.flat(),
    cans: cans.flat().filter((can) => can.count > 0),
    records: mockUps.map(recordOf),
    settings,
  };
}

function heightsBySlot(pack: SavedPack, pieces: ReadonlyArray<{ slotId: number; piece: Piece }>): number[] {
  return pack.slots.map((slot) => pieces.find((each) => each.slotId === slot.slotId)?.piece.height_nm ?? 0);
}

function predictionFor(
  mockUps: readonly MockUpAtHand[],
  fitted: ReadonlyArray<{ piece: Piece }>,
  settings: Settings,
): MockUp['predicted'] {
  const pieces = fitted.map(({ piece }) => piece);
  const knowledge = learnGap(packEvidence(mockUps.map(recordOf), pieces, settings));
  if (!knowledge.ok) return null;
  const prediction = predictClearance(
    knowledge.value,
    pieces.map((piece) => pieceName(piece.pieceId)),
  );
  return prediction.ok
    ? { mean_nm: prediction.value.mean, standardDeviation_nm: prediction.value.standardDeviation }
    : null;
}

async function fillSlots(
  writing: Writing,
  now: string,
  pack: SavedPack,
  last: MockUpAtHand | undefined,
  input: { jobId: number; packId: number; pieces: ReadonlyArray<{ slotId: number; from: PieceSource }>; by: number },
  settings: Settings,
): Promise<Array<{ slotId: number; piece: Piece }>> {
  const stray = input.pieces.find((given) => !pack.slots.some((slot) => slot.slotId === given.slotId));
  if (stray) throw new Refused('no-slot', `${pack.name} has ${pack.slots.length} slots and none left for that piece.`);
  const fitted: Array<{ slotId: number; piece: Piece }> = [];
  for (const [index, slot] of pack.slots.entries()) {
    const given = input.pieces.filter((each) => each.slotId === slot.slotId);
    const name = slotName(pack.slots, index);
    if (given.length > 1) throw new Refused('slot-taken', `${pack.name}, ${name}: one slot takes one piece.`);
    const [one] = given;
    const before = last?.pieces.find((each) => each.slotId === slot.slotId)?.piece.pieceId;
    const pieceId = one
      ? await pieceForSlot(writing, now, slot, one.from, input)
      : before !== undefined
        ? await pieceThatStays(writing, before, input)
        : await nominalPieceForSlot(writing, now, slot, `${pack.name}, ${name}`, input.by);
    fitted.push({ slotId: slot.slotId, piece: found(await findPiece(writing, pieceId), 'plate') });
  }
  const twice = fitted.find((each, index) =>
    fitted.some((other, at) => at < index && other.piece.pieceId === each.piece.pieceId),
  );
  if (twice) {
    const { tag, height_nm } = twice.piece;
    const shown = tag || formatLength(height_nm, settings.lengthUnit);
    throw new Refused('piece-twice', `${shown} would sit in two slots of ${pack.name}: say what goes where it was.`);
  }
  return fitted;
}
