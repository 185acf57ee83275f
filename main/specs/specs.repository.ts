// Spec sheets in and out of the file.
import { sql } from 'kysely';
import type { PlacementRule, SpecSheet } from '../../app/specs/spec-sheet.ts';
import { deleteClutchFigures, insertClutchFigures } from '../clutch/clutch.repository.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { deleteLists, insertLists } from './lists.repository.ts';
import { deletePictures, insertPictures } from './pictures.repository.ts';

export function findFamily(reading: Reading, familyId: number) {
  return reading.selectFrom('families').selectAll().where('family_id', '=', familyId).executeTakeFirst();
}

export function findFamilyNamed(reading: Reading, name: string) {
  return reading.selectFrom('families').selectAll().where('name', '=', name).executeTakeFirst();
}

export function listFamilies(reading: Reading) {
  return reading.selectFrom('families').selectAll().orderBy('name').execute();
}

/** Every family with how much its newest sheet holds, in the order of their names. */
export function listFamiliesWithSheets(reading: Reading) {
  return reading
    .selectFrom('families')
    .leftJoin('revisions', (join) =>
      join.onRef('revisions.family_id', '=', 'families.family_id').on(({ eb, selectFrom }) =>
        eb(
          'revisions.number',
          '=',
          selectFrom('revisions as newer')
            .whereRef('newer.family_id', '=', 'families.family_id')
            .select((of) => of.fn.max('newer.number').as('number')),
        ),
      ),
    )
    .select(['families.family_id as familyId', 'families.name'])
    .select(({ fn, exists, selectFrom }) => [
      fn.coalesce('revisions.number', sql.lit(0)).as('revisionNumber'),
      exists(selectFrom('jobs').select('job_id').whereRef('jobs.revision_id', '=', 'revisions.revision_id')).as(
        'is_frozen',
      ),
      countOf('packs'),
      countOf('checks'),
      countOf('lists'),
      countOf('pictures'),
    ])
    .orderBy('families.name')
    .execute();

  function countOf<T extends 'packs' | 'checks' | 'lists' | 'pictures'>(table: T) {
    return sql<number>`(select count(*) from ${sql.table(table)} as counted where counted.revision_id = revisions.revision_id)`.as(
      table,
    );
  }
}

export function newestRevision(reading: Reading, familyId: number) {
  return revisions(reading)
    .where('revisions.family_id', '=', familyId)
    .orderBy('number', 'desc')
    .limit(1)
    .executeTakeFirst();
}

export function findRevision(reading: Reading, revisionId: number) {
  return revisions(reading).where('revision_id', '=', revisionId).executeTakeFirst();
}

export function findRevisionNumbered(reading: Reading, familyId: number, number: number) {
  return revisions(reading).where('revisions.family_id', '=', familyId).where('number', '=', number).executeTakeFirst();
}

function revisions(reading: Reading) {
  return reading
    .selectFrom('revisions')
    .innerJoin('families', 'families.family_id', 'revisions.family_id')
    .innerJoin('people', 'people.person_id', 'revisions.saved_by')
    .select([
      'revision_id',
      'revisions.family_id',
      'families.name as family_name',
      'number',
      'source_note',
      'saved_at',
      'people.initials',
    ])
    .select((row) =>
      row
        .exists(row.selectFrom('jobs').select('job_id').whereRef('jobs.revision_id', '=', 'revisions.revision_id'))
        .as('is_frozen'),
    );
}

export async function insertRevision(
  writing: Writing,
  row: { familyId: number; number: number; sourceNote: string; by: number; now: string },
): Promise<number> {
  const { revision_id } = await writing
    .insertInto('revisions')
    .values({
      family_id: row.familyId,
      number: row.number,
      source_note: row.sourceNote,
      saved_at: row.now,
      saved_by: row.by,
    })
    .returning('revision_id')
    .executeTakeFirstOrThrow();
  return revision_id;
}

export async function insertSheet(writing: Writing, revisionId: number, sheet: SpecSheet): Promise<void> {
  const packIds = new Map<string, number>();
  for (const [position, pack] of sheet.packs.entries()) {
    const { pack_id } = await writing
      .insertInto('packs')
      .values({ revision_id: revisionId, position, name: pack.name, note: pack.note })
      .returning('pack_id')
      .executeTakeFirstOrThrow();
    packIds.set(pack.name, pack_id);
    await insertSlots(writing, pack_id, pack.slots);
    await insertRules(writing, pack_id, pack.rules);
    await insertClutchFigures(writing, pack_id, pack.clutch);
  }
  for (const [position, check] of sheet.checks.entries()) {
    const { check_id } = await writing
      .insertInto('checks')
      .values({
        revision_id: revisionId,
        position,
        pack_id: check.packName === null ? null : (packIds.get(check.packName) ?? null),
        name: check.name,
        heading: check.group,
        method: check.method,
        quantity: check.quantity,
        unit: check.unit,
        limit_kind: check.limits.kind,
        low_amount: 'low' in check.limits ? check.limits.low : null,
        target_amount: 'target' in check.limits ? check.limits.target : null,
        high_amount: 'high' in check.limits ? check.limits.high : null,
        holds_for: check.holdsFor,
        wave_state: check.waveState,
        spots: check.spots,
        source_note: check.sourceNote,
      })
      .returning('check_id')
      .executeTakeFirstOrThrow();
    const variants = check.limits.kind === 'variants' ? check.limits.variants : [];
    for (const [place, variant] of variants.entries()) {
      await writing
        .insertInto('check_variants')
        .values({
          check_id,
          position: place,
          name: variant.name,
          nominal_amount: variant.nominal,
          within_amount: variant.within,
        })
        .execute();
    }
    for (const height_nm of new Set(check.shims_nm)) {
      await writing.insertInto('check_shims').values({ check_id, height_nm }).execute();
    }
  }
  await insertLists(writing, revisionId, sheet.lists, packIds);
  await insertPictures(writing, revisionId, sheet.pictures);
}

async function insertSlots(
  writing: Writing,
  packId: number,
  slots: SpecSheet['packs'][number]['slots'],
): Promise<void> {
  for (const [position, slot] of slots.entries()) {
    const { slot_id } = await writing
      .insertInto('slots')
      .values({
        pack_id: packId,
        position: position + 1,
        kind: slot.kind,
        nominal_nm: slot.nominal_nm,
        is_adjuster: slot.isAdjuster ? 1 : 0,
        outline: slot.outline,
        facing: slot.facing,
      })
      .returning('slot_id')
      .executeTakeFirstOrThrow();
    for (const height_nm of new Set(slot.catalogue_nm)) {
      await writing.insertInto('slot_catalogue').values({ slot_id, height_nm }).execute();
    }
  }
}

async function insertRules(writing: Writing, packId: number, rules: readonly PlacementRule[]): Promise<void> {
  for (const [position, rule] of rules.entries()) {
    const { placement_rule_id } = await writing
      .insertInto('placement_rules')
      .values({ pack_id: packId, position, rule: rule.kind, kind: rule.pieceKind })
      .returning('placement_rule_id')
      .executeTakeFirstOrThrow();
    for (const place of rule.kind === 'all-equal' ? [] : new Set(rule.places)) {
      await writing.insertInto('placement_rule_places').values({ placement_rule_id, place }).execute();
    }
  }
}

/** Takes an unused revision's packs, checks, lists and pictures away, so that a new sheet can take their place. */
export async function deleteSheet(writing: Writing, revisionId: number): Promise<void> {
  await deletePictures(writing, revisionId);
  await deleteLists(writing, revisionId);
  await deleteClutchFigures(writing, revisionId);
  const checkIds = writing.selectFrom('checks').select('check_id').where('revision_id', '=', revisionId);
  const packIds = writing.selectFrom('packs').select('pack_id').where('revision_id', '=', revisionId);
  const slotIds = writing.selectFrom('slots').select('slot_id').where('pack_id', 'in', packIds);
  const ruleIds = writing.selectFrom('placement_rules').select('placement_rule_id').where('pack_id', 'in', packIds);
  await writing.deleteFrom('check_variants').where('check_id', 'in', checkIds).execute();
  await writing.deleteFrom('check_shims').where('check_id', 'in', checkIds).execute();
  await writing.deleteFrom('checks').where('revision_id', '=', revisionId).execute();
  await writing.deleteFrom('slot_catalogue').where('slot_id', 'in', slotIds).execute();
  await writing.deleteFrom('slots').where('pack_id', 'in', packIds).execute();
  await writing.deleteFrom('placement_rule_places').where('placement_rule_id', 'in', ruleIds).execute();
  await writing.deleteFrom('placement_rules').where('pack_id', 'in', packIds).execute();
  await writing.deleteFrom('packs').where('revision_id', '=', revisionId).execute();
}

export async function stampRevision(
  writing: Writing,
  revisionId: number,
  stamp: { sourceNote: string; by: number; now: string },
): Promise<void> {
  await writing
    .updateTable('revisions')
    .set({ source_note: stamp.sourceNote, saved_by: stamp.by, saved_at: stamp.now })
    .where('revision_id', '=', revisionId)
    .execute();
}
