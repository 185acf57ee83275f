// What the plates at hand can do for a pack, from the newest packs of its kind and what lies on the bench.
import type { Piece } from '../../app/packs/packs.contract.ts';
import { boundsOf } from '../../app/readings/judge-take.ts';
import { mockUpRead } from '../../app/readings/mock-up-read.ts';
import type { Take } from '../../app/readings/readings.contract.ts';
import type { PieceKind } from '../../app/specs/spec-sheet.ts';
import type { SavedCheck, SavedPack } from '../../app/specs/specs.contract.ts';
import { reachOf } from '../../app/stock/reach.ts';
import { reachSentence } from '../../app/stock/reach-sentence.ts';
import { accepted, found, Refused } from '../database/errors.ts';
import type { Reading } from '../database/tables.ts';
import { mockUpsOfPacks, piecesOfMockUps } from '../packs/packs.repository.ts';
import { takesOfChecks } from '../readings/readings.service.ts';
import { getSettings } from '../shop/shop.service.ts';
import { listChecks } from '../specs/checks-of-sheets.repository.ts';
import { findPack } from '../specs/packs-of-sheets.repository.ts';
import { listCans } from './cans.repository.ts';
import { listLoosePieces } from './plates.repository.ts';
import * as repository from './plates-reach.repository.ts';

/** More packs than this are not looked back on. */
const mostPacks = 100;

/** Plates that may be swapped for each other. */
type Adjuster = { kind: PieceKind; outline: string };

export async function getReach(reading: Reading, { packId }: { packId: number }) {
  const settings = await getSettings(reading);
  const row = found(await repository.findPackOfFamily(reading, packId), 'pack');
  const { pack, check } = await sheetOf(reading, packId, row.revision_id);
  if (!check) {
    throw new Refused('no-check', `${pack.name} has no clearance on its spec sheet, so there is nothing to aim at.`);
  }
  const adjuster = mainAdjuster(pack);
  const bin = await heightsAtHand(reading, adjuster);
  const seen = await packsSeen(reading, adjuster, { familyId: row.family_id, name: pack.name });
  const newest = seen[0]?.asFound ?? [];
  const nominal = slotsOf(pack, adjuster).flatMap(({ nominal_nm }) => (nominal_nm === null ? [] : [nominal_nm]));
  const fitted_nm = newest.length > 0 ? newest : nominal;
  const fittedFrom = newest.length > 0 ? 'the last unit' : nominal.length > 0 ? 'the spec sheet' : 'nothing';
  const bounds = boundsOf(check.limits);
  const read = seen.flatMap(({ jobId, jobNumber, first }) => (first ? [{ jobId, jobNumber, ...first }] : []));
  const reach = accepted(
    reachOf({
      fitted: fitted_nm,
      bounds,
      bin,
      packs: read.map((each) => ({ ...each, clearance: Math.round(each.clearance_nm) })),
      catalogue: [...new Set(slotsOf(pack, adjuster).flatMap((slot) => slot.catalogue_nm))],
      lengthUnit: settings.lengthUnit,
    }),
  );
  const atHand_nm = bin.map((each) => each.height).toSorted((a, b) => a - b);
  const said = { packName: pack.name, familyName: row.family_name, fittedFrom, atHand_nm, reach } as const;
  return {
    packName: pack.name,
    familyName: row.family_name,
    outline: adjuster.outline,
    lower_nm: bounds.lower,
    upper_nm: bounds.upper,
    fitted_nm,
    fittedFrom: said.fittedFrom,
    reach: [...reach.intervals],
    packs: read.map(({ jobId, jobNumber, clearance_nm }, index) => ({
      jobId,
      jobNumber,
      clearance_nm,
      swaps: reach.packs[index]?.swaps ?? null,
      asks_nm: reach.packs[index]?.asks_nm ?? null,
    })),
    covered: reach.covered,
    buy: reach.buy.map(({ heights_nm, covers }) => ({ heights_nm: [...heights_nm], covers })),
    sentence: reachSentence(said, settings),
  };
}

/** Of a pack with several sorts of adjusters the one in most slots; the nearest to the piston of two alike. */
function mainAdjuster(pack: SavedPack): Adjuster {
  const adjusters = pack.slots.filter((slot) => slot.isAdjuster);
  const [main] = adjusters.toSorted((a, b) => slotsOf(pack, b).length - slotsOf(pack, a).length);
  if (!main) throw new Refused('no-adjuster', `${pack.name} has no plates on its spec sheet that may be swapped.`);
  return main;
}

function slotsOf(pack: SavedPack, { kind, outline }: Adjuster) {
  return pack.slots.filter((slot) => slot.isAdjuster && slot.kind === kind && slot.outline === outline);
}

async function heightsAtHand(reading: Reading, { kind, outline }: Adjuster) {
  if (outline === '') return [];
  const plates = await listLoosePieces(reading, outline);
  const cans = await listCans(reading, outline);
  return [...plates.map((plate) => ({ ...plate, count: 1 })), ...cans]
    .filter((each) => each.kind === kind && each.count > 0)
    .map(({ height_nm: height, count }) => ({ height, count }));
}

type PackSeen = {
  jobId: number;
  jobNumber: number;
  /** Heights of its adjusters when it was found. */
  asFound: number[];
  /** What it read first, the way its sheet means, with what in it and under which limits. */
  first: { clearance_nm: number; fitted: number[]; lower: number | null; upper: number | null } | null;
};

/** The newest packs of this kind, newest first. */
async function packsSeen(
  reading: Reading,
  adjuster: Adjuster,
  named: { familyId: number; name: string },
): Promise<PackSeen[]> {
  const rows = await repository.newestPacksNamed(reading, { ...named, limit: mostPacks });
  const sheets = new Map<number, { pack: SavedPack; check: SavedCheck | undefined }>();
  for (const { packId, revisionId } of rows) {
    if (!sheets.has(packId)) sheets.set(packId, await sheetOf(reading, packId, revisionId));
  }
  const jobIds = rows.map(({ jobId }) => jobId);
  const checks = [...sheets.values()].flatMap(({ check }) => check ?? []);
  const takes = await takesOfChecks(reading, jobIds, checks);
  const mockUps = Map.groupBy(await mockUpsOfPacks(reading, jobIds, [...sheets.keys()]), (mockUp) => mockUp.job_id);
  const pieces = await piecesOfMockUps(
    reading,
    [...mockUps.values()].flat().map((mockUp) => mockUp.mock_up_id),
  );
  return rows.map(({ jobId, jobNumber, packId }) => {
    const { pack, check } = found(sheets.get(packId), 'pack');
    const heights = (number: number) => {
      const mockUp = mockUps.get(jobId)?.find((each) => each.number === number);
      return mockUp ? heightsOf(pack, adjuster, pieces.get(mockUp.mock_up_id) ?? []) : [];
    };
    return {
      jobId,
      jobNumber,
      asFound: heights(0),
      first: check ? firstRead(takes.get(jobId) ?? [], check, heights) : null,
    };
  });
}

async function sheetOf(reading: Reading, packId: number, revisionId: number) {
  const pack = found(await findPack(reading, packId), 'pack');
  const check = (await listChecks(reading, revisionId)).find((each) => each.packId === packId);
  return { pack, check: check?.quantity === 'length' ? check : undefined };
}

/** Of the earliest mock-up that was read the newest take: reading the same pack again corrects what it read. */
function firstRead(
  takes: readonly Take[],
  check: SavedCheck,
  heights: (mockUpNumber: number) => number[],
): PackSeen['first'] {
  const read = takes.flatMap((take) => {
    const { mean } = take.evaluation;
    return take.method === check.method && mean !== null
      ? [{ clearance_nm: mean, mockUpNumber: mockUpRead(take) }]
      : [];
  });
  const number = Math.min(...read.map((take) => take.mockUpNumber));
  const take = read.findLast((each) => each.mockUpNumber === number);
  if (!take) return null;
  return { clearance_nm: take.clearance_nm, fitted: heights(number), ...boundsOf(check.limits) };
}

function heightsOf(
  pack: SavedPack,
  adjuster: Adjuster,
  pieces: ReadonlyArray<{ slotId: number; piece: Piece }>,
): number[] {
  const slotIds = new Set(slotsOf(pack, adjuster).map((slot) => slot.slotId));
  return pieces.filter(({ slotId }) => slotIds.has(slotId)).map(({ piece }) => piece.height_nm);
}
