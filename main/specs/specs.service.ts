// Families and their spec sheets, frozen by use.
import { soundSheet } from '../../app/specs/sheet-problems.ts';
import type { SpecSheet } from '../../app/specs/spec-sheet.ts';
import type { Revision } from '../../app/specs/specs.contract.ts';
import { accepted, found, Refused } from '../database/errors.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { personAtWork } from '../shop/shop.service.ts';
import { listChecks } from './checks-of-sheets.repository.ts';
import { listLists } from './lists.repository.ts';
import { listPacks } from './packs-of-sheets.repository.ts';
import { listPictures } from './pictures.repository.ts';
import * as repository from './specs.repository.ts';

export async function listFamilies(reading: Reading) {
  const rows = await repository.listFamiliesWithSheets(reading);
  return rows.map(({ is_frozen, ...family }) => ({ ...family, isFrozen: is_frozen === 1 }));
}

export async function getRevision(
  reading: Reading,
  input: { familyId: number; number?: number | undefined },
): Promise<Revision> {
  const row =
    input.number === undefined
      ? await repository.newestRevision(reading, input.familyId)
      : await repository.findRevisionNumbered(reading, input.familyId, input.number);
  const revision = found(row, 'spec sheet');
  return {
    revisionId: revision.revision_id,
    familyId: revision.family_id,
    familyName: revision.family_name,
    number: revision.number,
    isFrozen: revision.is_frozen === 1,
    sourceNote: revision.source_note,
    savedAt: revision.saved_at,
    savedBy: revision.initials,
    packs: await listPacks(reading, revision.revision_id),
    checks: await listChecks(reading, revision.revision_id),
    lists: await listLists(reading, revision.revision_id),
    pictures: await listPictures(reading, revision.revision_id),
  };
}

export async function addFamily(writing: Writing, now: string, input: { name: string; by: number }) {
  await personAtWork(writing, input.by);
  if (await repository.findFamilyNamed(writing, input.name)) {
    throw new Refused('family-exists', `There is already a family called ${input.name}.`, 'name');
  }
  const { family_id } = await writing
    .insertInto('families')
    .values({ name: input.name })
    .returning('family_id')
    .executeTakeFirstOrThrow();
  await repository.insertRevision(writing, { familyId: family_id, number: 1, sourceNote: '', by: input.by, now });
  return { familyId: family_id };
}

/**
 * A revision that a job was checked in under stays as it is: the sheet becomes the next revision. `isKept` says whether
 * the file of a picture is there; one that was lost since the sheet was saved last keeps its place.
 */
export async function saveSheet(
  writing: Writing,
  now: string,
  input: { familyId: number; sheet: SpecSheet; sourceNote: string; by: number },
  isKept: (sha256: string) => boolean,
) {
  await personAtWork(writing, input.by);
  const sheet = accepted(soundSheet(input.sheet));
  const newest = found(await repository.newestRevision(writing, input.familyId), 'family');
  const before = new Set((await listPictures(writing, newest.revision_id)).map(({ sha256 }) => sha256));
  const missing = sheet.pictures.find(({ sha256 }) => !before.has(sha256) && !isKept(sha256));
  if (missing) throw new Refused('picture-gone', `The picture ${missing.title} is not kept yet: take it in again.`);
  if (newest.is_frozen === 1) {
    const number = newest.number + 1;
    const revisionId = await repository.insertRevision(writing, { ...input, number, now });
    await repository.insertSheet(writing, revisionId, sheet);
    return { revisionId, number };
  }
  await repository.deleteSheet(writing, newest.revision_id);
  await repository.insertSheet(writing, newest.revision_id, sheet);
  await repository.stampRevision(writing, newest.revision_id, { ...input, now });
  return { revisionId: newest.revision_id, number: newest.number };
}
