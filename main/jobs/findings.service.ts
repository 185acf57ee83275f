// What teardown found: written down part by part, corrected by a further card, decided on, pinned to photos, charged for.
import type { Finding, FindingCard, FindingDecision, FindingTyped } from '../../app/jobs/findings.contract.ts';
import { placeInPack } from '../../app/jobs/place-in-pack.ts';
import { slotName } from '../../app/packs/slot-name.ts';
import { parseAmount } from '../../app/quantities/parse-amount.ts';
import type { SavedPack } from '../../app/specs/specs.contract.ts';
import { accepted, found, Refused } from '../database/errors.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { listPhotos } from '../photos/photos.service.ts';
import { getSettings, personAtWork } from '../shop/shop.service.ts';
import { listPacks } from '../specs/packs-of-sheets.repository.ts';
import { findLine, listLines } from './estimate.repository.ts';
import * as repository from './findings.repository.ts';
import { checkOfJobRow, getJobRow, jobAtBench, jobAtWork } from './jobs.service.ts';

const inch_nm = 25_400_000;

type Pinning = {
  readonly isPinned: boolean;
  readonly caption: string;
  readonly at: string;
  readonly by: string;
};

/** A finding that was withdrawn too, and every pinning of a photo: the history tells of them. */
export type FindingOnRecord = Finding & { readonly isWithdrawn: boolean; readonly pinnings: readonly Pinning[] };

export async function listFindings(reading: Reading, input: { jobId: number }): Promise<Finding[]> {
  const all = await findingsOnRecord(reading, input);
  return all.flatMap(({ isWithdrawn, pinnings: _, ...finding }) => (isWithdrawn ? [] : [finding]));
}

export async function findingsOnRecord(reading: Reading, { jobId }: { jobId: number }): Promise<FindingOnRecord[]> {
  const { revision_id } = await getJobRow(reading, jobId);
  const packs = await listPacks(reading, revision_id);
  const cards = Map.groupBy(await repository.listCards(reading, jobId), (row) => row.finding_id);
  const decisions = Map.groupBy(await repository.listDecisions(reading, jobId), (row) => row.finding_id);
  const pins = Map.groupBy(await repository.listPins(reading, jobId), (row) => row.finding_id);
  const charged = await chargedFindings(reading, jobId);
  return [...cards].map(([findingId, rows]) => {
    const written = rows.map((row) => cardOfRow(row, packs));
    const decided = (decisions.get(findingId) ?? []).map(({ decision, note, decided_at, initials }) => ({
      decision,
      note,
      at: decided_at,
      by: initials,
    }));
    // The newest word on each photo counts.
    const pinned = pins.get(findingId) ?? [];
    const isPinned = new Map(pinned.map((pin) => [pin.photo_id, pin.is_pinned === 1]));
    return {
      ...written.at(-1)!,
      findingId,
      decision: decided.at(-1)!,
      earlier: written.slice(0, -1),
      earlierDecisions: decided.slice(0, -1),
      photoIds: [...isPinned].flatMap(([photoId, isOn]) => (isOn ? [photoId] : [])),
      isCharged: charged.has(findingId),
      isWithdrawn: rows.at(-1)?.is_withdrawn === 1,
      pinnings: pinned.map(({ is_pinned, caption, pinned_at, initials }) => ({
        isPinned: is_pinned === 1,
        caption,
        at: pinned_at,
        by: initials,
      })),
    };
  });
}

function cardOfRow(row: repository.CardRow, packs: readonly SavedPack[]): FindingCard {
  const pack = packs.find((each) => each.packId === row.pack_id);
  const index = pack?.slots.findIndex((slot) => slot.slotId === row.slot_id) ?? -1;
  return {
    part: row.part,
    packId: row.pack_id,
    packName: pack?.name ?? null,
    slotId: row.slot_id,
    slotName: pack && index >= 0 ? slotName(pack.slots, index) : null,
    place: row.place,
    condition: row.condition,
    thickness_nm: row.thickness_nm,
    thicknessTyped: row.thickness_typed,
    nominal_nm: pack?.slots[index]?.nominal_nm ?? null,
    checkId: row.check_id,
    note: row.note,
    reason: row.reason,
    at: row.written_at,
    by: row.initials,
  };
}

/** Those with a line that holds, also where it was replaced by another since. */
async function chargedFindings(reading: Reading, jobId: number): Promise<Set<number>> {
  const links = await repository.listFindingLines(reading, jobId);
  if (links.length === 0) return new Set();
  const lines = new Map((await listLines(reading, jobId)).map((line) => [line.job_line_id, line]));
  const holds = (lineId: number | null): boolean => {
    const line = lineId === null ? undefined : lines.get(lineId);
    return line !== undefined && (line.ended_at === null || holds(line.replaced_by_id));
  };
  return new Set(links.filter((link) => holds(link.job_line_id)).map((link) => link.finding_id));
}

export async function recordFinding(
  writing: Writing,
  now: string,
  input: { jobId: number; finding: FindingTyped; decision: FindingDecision; by: number },
) {
  await personAtWork(writing, input.by);
  const job = await jobAtBench(writing, input.jobId);
  const { decision, by } = input;
  const card = await cardToKeep(writing, job, input.finding);
  const findingId = await repository.insertFinding(writing, input.jobId);
  await repository.insertCard(writing, card, { findingId, isWithdrawn: false, reason: '', by, now });
  await repository.insertDecision(writing, { findingId, decision, note: '', by, now });
  return { findingId };
}

export async function correctFinding(
  writing: Writing,
  now: string,
  input: { findingId: number; finding: FindingTyped; reason: string; by: number },
) {
  await personAtWork(writing, input.by);
  const before = await findingAtWork(writing, input.findingId);
  const card = await cardToKeep(writing, await getJobRow(writing, before.job_id), input.finding);
  if ((Object.keys(card) as Array<keyof typeof card>).every((key) => card[key] === before[key])) {
    throw new Refused('nothing-changed', 'That is what stands there already: nothing was written.');
  }
  await repository.insertCard(writing, card, { ...input, isWithdrawn: false, now });
  return {};
}

export async function withdrawFinding(
  writing: Writing,
  now: string,
  input: { findingId: number; reason: string; by: number },
) {
  await personAtWork(writing, input.by);
  const before = await findingAtWork(writing, input.findingId);
  const { part, pack_id, slot_id, place, condition, thickness_nm, thickness_typed, check_id, note } = before;
  const card = { part, pack_id, slot_id, place, condition, thickness_nm, thickness_typed, check_id, note };
  await repository.insertCard(writing, card, { ...input, isWithdrawn: true, now });
  return {};
}

export async function decideFinding(
  writing: Writing,
  now: string,
  input: { findingId: number; decision: FindingDecision; note: string; by: number },
) {
  await personAtWork(writing, input.by);
  await findingAtWork(writing, input.findingId);
  await repository.insertDecision(writing, { ...input, now });
  return {};
}

export async function pinPhoto(
  writing: Writing,
  now: string,
  input: { findingId: number; photoId: number; isPinned: boolean; by: number },
) {
  await personAtWork(writing, input.by);
  const { job_id } = await findingAtWork(writing, input.findingId);
  const photos = await listPhotos(writing, { jobId: job_id });
  found(
    photos.find((photo) => photo.photoId === input.photoId),
    'photo on this ticket',
  );
  await repository.insertPin(writing, { ...input, now });
  return {};
}

export async function chargeFinding(
  writing: Writing,
  now: string,
  input: { findingId: number; lineId: number; by: number },
) {
  await personAtWork(writing, input.by);
  const { job_id } = await findingAtWork(writing, input.findingId);
  const line = found(await findLine(writing, input.lineId), 'line');
  if (line.job_id !== job_id) throw new Refused('not-found', 'There is no such line on this ticket.');
  await repository.insertFindingLine(writing, { ...input, now });
  return {};
}

async function findingAtWork(writing: Writing, findingId: number) {
  const finding = found(await repository.findFinding(writing, findingId), 'finding');
  await jobAtWork(writing, finding.job_id);
  if (finding.is_withdrawn === 1) throw new Refused('withdrawn', 'That finding was taken back already.');
  return finding;
}

type JobRow = Awaited<ReturnType<typeof getJobRow>>;

async function cardToKeep(writing: Writing, job: JobRow, typed: FindingTyped): Promise<repository.CardToKeep> {
  const { part, condition, checkId, note } = typed;
  if (checkId !== null) await checkOfJobRow(writing, job, checkId);
  const lay = whereItLay(typed, await listPacks(writing, job.revision_id));
  return {
    part,
    ...lay,
    condition,
    thickness_nm: await thicknessOf(writing, typed.thickness),
    thickness_typed: typed.thickness,
    check_id: checkId,
    note,
  };
}

/** The slot decides the place; a place or a slot alone says nothing. */
function whereItLay({ packId, slotId, place }: FindingTyped, packs: readonly SavedPack[]) {
  if (packId === null) {
    if (slotId !== null || place !== null) throw new Refused('no-pack', 'Say of which pack it is first.', 'packId');
    return { pack_id: null, slot_id: null, place: null };
  }
  const { slots } = found(
    packs.find((pack) => pack.packId === packId),
    'pack on this job',
  );
  if (slotId === null) return { pack_id: packId, slot_id: null, place };
  const index = slots.findIndex((slot) => slot.slotId === slotId);
  if (index < 0) throw new Refused('not-found', 'There is no such slot in this pack.');
  return { pack_id: packId, slot_id: slotId, place: placeInPack(slots, index) };
}

async function thicknessOf(reading: Reading, typed: string): Promise<number | null> {
  if (typed === '') return null;
  const { lengthUnit, decimalMark } = await getSettings(reading);
  const field = { quantity: 'length', unit: lengthUnit, decimalMark, what: 'a thickness', largest: inch_nm } as const;
  const thickness = accepted(parseAmount(typed, field), 'thickness');
  if (thickness <= 0)
    throw new Refused('negative', `“${typed}”: what is left has a thickness above nothing.`, 'thickness');
  return thickness;
}
