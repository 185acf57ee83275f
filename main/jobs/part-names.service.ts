// Names of parts to choose from while a finding is typed: of the job's packs, of earlier findings, of the stock.
import type { SuggestedPart } from '../../app/jobs/findings.contract.ts';
import { slotName } from '../../app/packs/slot-name.ts';
import type { Reading } from '../database/tables.ts';
import { listPacks } from '../specs/packs-of-sheets.repository.ts';
import { listParts } from '../stock/parts.repository.ts';
import { listPartsFoundBefore } from './findings.repository.ts';
import { getJobRow } from './jobs.service.ts';

const mostOffered = 10;
const mostOfEach = 5;

/** Each holds every word of `text`, in any case; those of the job's own packs come first. */
export async function suggestParts(
  reading: Reading,
  { jobId, text }: { jobId: number; text: string },
): Promise<SuggestedPart[]> {
  const words = text
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  if (words.length === 0) return [];
  const { revision_id } = await getJobRow(reading, jobId);
  const ofPacks = (await listPacks(reading, revision_id)).flatMap(({ packId, name, slots }) =>
    slots.map((slot, index) => ({ part: slotName(slots, index), packId, slotId: slot.slotId, note: name })),
  );
  const before = await listPartsFoundBefore(reading, words, mostOfEach);
  const stock = await listParts(reading, {
    text,
    kind: null,
    familyId: null,
    only: 'in use',
    offset: 0,
    limit: mostOfEach,
  });
  const loose = { packId: null, slotId: null };
  const all = [
    ...ofPacks.filter(({ part, note }) => holdsAll(`${note} ${part}`.toLowerCase(), words)),
    ...before.map(({ part }) => ({ part, ...loose, note: 'found before' })),
    ...stock.map(({ description, number, on_hand }) => ({
      part: description,
      ...loose,
      note: `${number}, ${on_hand} on hand`,
    })),
  ];
  const isFirst = (each: SuggestedPart, index: number) =>
    all.findIndex((other) => other.part === each.part && other.slotId === each.slotId) === index;
  return all.filter(isFirst).slice(0, mostOffered);
}

function holdsAll(name: string, words: readonly string[]): boolean {
  return words.every((word) => name.includes(word));
}
