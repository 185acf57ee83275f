// Parts in and out of the file, with what is on hand: the sum of what moved in their batches.
import { sql } from 'kysely';
import type { PartKind } from '../../app/stock/parts.contract.ts';
import type { Reading, Writing } from '../database/tables.ts';

export type PartToSave = {
  number: string;
  description: string;
  kind: PartKind;
  supplier: string;
  unit_of_issue: string;
  bin: string;
  cost_cents: number | null;
  price_cents: number | null;
  core_charge_cents: number | null;
  reorder_point: number | null;
  reorder_quantity: number | null;
};

export type PartFilter = {
  text: string;
  kind: PartKind | null;
  familyId: number | null;
  only: 'in use' | 'low' | 'retired';
};

function parts(reading: Reading) {
  return reading
    .selectFrom('parts')
    .selectAll('parts')
    .select((row) =>
      row
        .selectFrom('batches')
        .innerJoin('movements', 'movements.batch_id', 'batches.batch_id')
        .whereRef('batches.part_id', '=', 'parts.part_id')
        .select((sum) => sum.fn.coalesce(sum.fn.sum<number>('change'), sum.lit(0)).as('on_hand'))
        .as('on_hand'),
    );
}

export type PartRow = NonNullable<Awaited<ReturnType<typeof findPart>>>;

export function findPart(reading: Reading, partId: number) {
  return parts(reading).where('part_id', '=', partId).executeTakeFirst();
}

export function findPartNumbered(reading: Reading, number: string) {
  return parts(reading).where('number', '=', number).executeTakeFirst();
}

/** Who has this number, without counting what is on hand. */
export function findNumbered(reading: Reading, number: string) {
  return reading
    .selectFrom('parts')
    .select(['part_id', 'number', 'description'])
    .where('number', '=', number)
    .executeTakeFirst();
}

/** By number. `limit` null: all of them. */
export function listParts(reading: Reading, filter: PartFilter & { offset: number; limit: number | null }) {
  const rows = matching(parts(reading), filter).orderBy('number').orderBy('part_id').offset(filter.offset);
  return rows.limit(filter.limit ?? -1).execute();
}

export async function countParts(reading: Reading, filter: PartFilter): Promise<number> {
  const counted = matching(parts(reading), filter).clearSelect().select(reading.fn.countAll<number>().as('total'));
  return (await counted.executeTakeFirstOrThrow()).total;
}

function matching(rows: ReturnType<typeof parts>, filter: PartFilter): ReturnType<typeof parts> {
  let found = rows.where('is_retired', '=', filter.only === 'retired' ? 1 : 0);
  if (filter.only === 'low') {
    found = found.where('reorder_point', '>=', (row) =>
      row
        .selectFrom('batches')
        .innerJoin('movements', 'movements.batch_id', 'batches.batch_id')
        .whereRef('batches.part_id', '=', 'parts.part_id')
        .select((sum) => sum.fn.coalesce(sum.fn.sum<number>('change'), sum.lit(0)).as('on_hand')),
    );
  }
  const { kind, familyId, text } = filter;
  if (kind !== null) found = found.where('kind', '=', kind);
  if (familyId !== null) {
    // A part with no family listed fits any.
    found = found.where((row) => {
      const families = row
        .selectFrom('part_families')
        .whereRef('part_families.part_id', '=', 'parts.part_id')
        .select('family_id');
      return row.or([row.exists(families.where('family_id', '=', familyId)), row.not(row.exists(families))]);
    });
  }
  for (const word of text.split(/\s+/).filter((each) => each !== '')) {
    const fragment = `%${word.replace(/[\\%_]/g, '\\$&')}%`;
    found = found.where((row) =>
      row.or([
        likeFragment('number', fragment),
        likeFragment('description', fragment),
        likeFragment('supplier', fragment),
        likeFragment('bin', fragment),
        row.exists(
          row
            .selectFrom('batches')
            .whereRef('batches.part_id', '=', 'parts.part_id')
            .where(likeFragment('mark', fragment))
            .select('batch_id'),
        ),
      ]),
    );
  }
  return found;
}

function likeFragment(column: 'number' | 'description' | 'supplier' | 'bin' | 'mark', fragment: string) {
  return sql<boolean>`${sql.ref(column)} like ${fragment} escape '\\'`;
}

export async function listSuppliers(reading: Reading): Promise<string[]> {
  const rows = await reading
    .selectFrom('parts')
    .select('supplier')
    .distinct()
    .where('supplier', '<>', '')
    .orderBy('supplier')
    .execute();
  return rows.map((row) => row.supplier);
}

export async function insertPart(writing: Writing, part: PartToSave): Promise<number> {
  const { part_id } = await writing
    .insertInto('parts')
    .values({ ...part, is_retired: 0 })
    .returning('part_id')
    .executeTakeFirstOrThrow();
  return part_id;
}

export async function replacePart(
  writing: Writing,
  partId: number,
  part: Partial<PartToSave> & { is_retired?: 0 | 1 },
) {
  await writing.updateTable('parts').set(part).where('part_id', '=', partId).execute();
}

export async function replaceFamilies(writing: Writing, partId: number, familyIds: readonly number[]): Promise<void> {
  await writing.deleteFrom('part_families').where('part_id', '=', partId).execute();
  await addFamilies(writing, partId, familyIds);
}

export async function addFamilies(writing: Writing, partId: number, familyIds: readonly number[]): Promise<void> {
  for (const familyId of familyIds) {
    await writing.insertInto('part_families').values({ part_id: partId, family_id: familyId }).execute();
  }
}

export async function replaceContents(
  writing: Writing,
  kitId: number,
  contents: ReadonlyArray<{ partId: number; quantity: number }>,
): Promise<void> {
  await writing.deleteFrom('kit_lines').where('kit_id', '=', kitId).execute();
  for (const { partId, quantity } of contents) {
    await writing.insertInto('kit_lines').values({ kit_id: kitId, part_id: partId, quantity }).execute();
  }
}

export function listFamilies(reading: Reading, partId: number) {
  return reading
    .selectFrom('part_families')
    .innerJoin('families', 'families.family_id', 'part_families.family_id')
    .select(['families.family_id as familyId', 'families.name'])
    .where('part_id', '=', partId)
    .orderBy('families.name')
    .execute();
}

export function listContents(reading: Reading, kitId: number) {
  return reading
    .selectFrom('kit_lines')
    .innerJoin('parts', 'parts.part_id', 'kit_lines.part_id')
    .select(['parts.part_id as partId', 'parts.number', 'parts.description', 'kit_lines.quantity'])
    .where('kit_id', '=', kitId)
    .orderBy('parts.number')
    .execute();
}

export function listKitsWith(reading: Reading, partId: number) {
  return reading
    .selectFrom('kit_lines')
    .innerJoin('parts', 'parts.part_id', 'kit_lines.kit_id')
    .select(['parts.part_id as partId', 'parts.number', 'parts.description', 'kit_lines.quantity'])
    .where('kit_lines.part_id', '=', partId)
    .orderBy('parts.number')
    .execute();
}
