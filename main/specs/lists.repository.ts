// The lists of spec sheets in and out of the file.
import type { Asks, SpecList } from '../../app/specs/spec-list.ts';
import type { SavedList } from '../../app/specs/specs.contract.ts';
import type { Reading, Writing } from '../database/tables.ts';
import type { ListLinesTable } from './specs.tables.ts';

export async function insertLists(
  writing: Writing,
  revisionId: number,
  lists: readonly SpecList[],
  packIds: ReadonlyMap<string, number>,
): Promise<void> {
  for (const [position, list] of lists.entries()) {
    const { list_id } = await writing
      .insertInto('lists')
      .values({
        revision_id: revisionId,
        position,
        pack_id: list.packName === null ? null : (packIds.get(list.packName) ?? null),
        name: list.name,
        gone_through: list.when,
        source_note: list.sourceNote,
      })
      .returning('list_id')
      .executeTakeFirstOrThrow();
    for (const [place, { words, asks }] of list.lines.entries()) {
      const { list_line_id } = await writing
        .insertInto('list_lines')
        .values({
          list_id,
          position: place,
          words,
          asks: asks.kind,
          expected_count: asks.kind === 'count' ? asks.expected : null,
          low_rpm: asks.kind === 'stall' ? asks.lowRpm : null,
          high_rpm: asks.kind === 'stall' ? asks.highRpm : null,
          longest_seconds: asks.kind === 'stall' ? asks.longestSeconds : null,
        })
        .returning('list_line_id')
        .executeTakeFirstOrThrow();
      for (const [at, option] of (asks.kind === 'choice' ? asks.options : []).entries()) {
        await writing
          .insertInto('list_line_options')
          .values({ list_line_id, position: at, words: option.words, is_good: option.isGood ? 1 : 0 })
          .execute();
      }
    }
  }
}

export async function deleteLists(writing: Writing, revisionId: number): Promise<void> {
  const listIds = writing.selectFrom('lists').select('list_id').where('revision_id', '=', revisionId);
  const lineIds = writing.selectFrom('list_lines').select('list_line_id').where('list_id', 'in', listIds);
  await writing.deleteFrom('list_line_options').where('list_line_id', 'in', lineIds).execute();
  await writing.deleteFrom('list_lines').where('list_id', 'in', listIds).execute();
  await writing.deleteFrom('lists').where('revision_id', '=', revisionId).execute();
}

export async function listLists(reading: Reading, revisionId: number): Promise<SavedList[]> {
  const lists = await reading
    .selectFrom('lists')
    .leftJoin('packs', 'packs.pack_id', 'lists.pack_id')
    .selectAll('lists')
    .select('packs.name as pack_name')
    .where('lists.revision_id', '=', revisionId)
    .orderBy('lists.position')
    .execute();
  if (lists.length === 0) return [];
  const lines = await reading
    .selectFrom('list_lines')
    .innerJoin('lists', 'lists.list_id', 'list_lines.list_id')
    .selectAll('list_lines')
    .where('revision_id', '=', revisionId)
    .orderBy('list_lines.position')
    .execute();
  const options = await reading
    .selectFrom('list_line_options')
    .innerJoin('list_lines', 'list_lines.list_line_id', 'list_line_options.list_line_id')
    .innerJoin('lists', 'lists.list_id', 'list_lines.list_id')
    .select(['list_line_options.list_line_id', 'list_line_options.words', 'is_good'])
    .where('revision_id', '=', revisionId)
    .orderBy('list_line_options.position')
    .execute();
  return lists.map((list) => ({
    listId: list.list_id,
    name: list.name,
    when: list.gone_through,
    packId: list.pack_id,
    packName: list.pack_name,
    sourceNote: list.source_note,
    lines: lines
      .filter((line) => line.list_id === list.list_id)
      .map((line) => ({
        lineId: line.list_line_id,
        words: line.words,
        asks: asksOfRow(
          line,
          options
            .filter((option) => option.list_line_id === line.list_line_id)
            .map(({ words, is_good }) => ({ words, isGood: is_good === 1 })),
        ),
      })),
  }));
}

// The table's CHECKs promise that the numbers a kind of line needs are there.
function asksOfRow(
  row: Pick<ListLinesTable, 'asks' | 'expected_count' | 'low_rpm' | 'high_rpm' | 'longest_seconds'>,
  options: Extract<Asks, { kind: 'choice' }>['options'],
): Asks {
  switch (row.asks) {
    case 'count':
      return { kind: 'count', expected: row.expected_count ?? 0 };
    case 'choice':
      return { kind: 'choice', options };
    case 'stall':
      return {
        kind: 'stall',
        lowRpm: row.low_rpm ?? 0,
        highRpm: row.high_rpm ?? 0,
        longestSeconds: row.longest_seconds ?? 0,
      };
    case 'tick':
    case 'words':
    case 'change':
      return { kind: row.asks };
  }
}
