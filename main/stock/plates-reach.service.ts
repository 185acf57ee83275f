// What the plates at hand can do for a pack, from the newest packs of its kind and what lies on the bench.
import { boundsOf } from '../../app/readings/judge-take.ts';
import type { PieceKind } from '../../app/specs/spec-sheet.ts';
import type { SavedPack } from '../../app/specs/specs.contract.ts';
import { reachOf } from '../../app/stock/reach.ts';
import { reachSentence } from '../../app/stock/reach-sentence.ts';
import { accepted, found, Refused } from '../database/errors.ts';
import type { Reading } from '../database/tables.ts';
import { type MockUpAtHand, packAtHand } from '../packs/pack-at-hand.service.ts';
import { getSettings } from '../shop/shop.service.ts';
import { findPack, listChecks } from '../specs/specs.repository.ts';
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
  const pack = found(await findPack(reading, packId), 'pack');
  const check = (await listChecks(reading, row.revision_id)).find((each) => each.packId === packId);
  if (check?.quantity !== 'length') {
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

/** Newest first: what each pack of this kind held when it was found, and what it read first, with what in it. */
async function packsSeen(reading: Reading, adjuster: Adjuster, named: { familyId: number; name: string }) {
  const rows = await repository.newestPacksNamed(reading, { ...named, limit: mostPacks });
  const seen = [];
  for (const row of rows) {
    const { pack, check, mockUps } = await packAtHand(reading, row);
    const heights = (mockUp: MockUpAtHand | undefined) => heightsOf(pack, adjuster, mockUp);
    const first = mockUps.find((mockUp) => mockUp.take !== null);
    const mean = first?.take?.evaluation.mean ?? null;
    const isRead = mean !== null && check?.quantity === 'length';
    seen.push({
      jobId: row.jobId,
      jobNumber: row.jobNumber,
      asFound: heights(mockUps[0]),
      first: isRead ? { clearance_nm: mean, fitted: heights(first), ...boundsOf(check.limits) } : null,
    });
  }
  return seen;
}

function heightsOf(pack: SavedPack, adjuster: Adjuster, mockUp: MockUpAtHand | undefined): number[] {
  const slotIds = new Set(slotsOf(pack, adjuster).map((slot) => slot.slotId));
  return (mockUp?.pieces ?? []).filter(({ slotId }) => slotIds.has(slotId)).map(({ piece }) => piece.height_nm);
}
