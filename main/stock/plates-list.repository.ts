// Windows and counts of the single plates of an outline: the list, its picture, and what is known of every outline.
import type { ExpressionBuilder } from 'kysely';
import type { LengthUnit } from '../../app/quantities/units.ts';
import type { PlateState } from '../../app/stock/plates.contract.ts';
import type { Reading, Tables } from '../database/tables.ts';

export type PlateFilter = {
  readonly outline: string;
  /** A piece of the tag or of the height as shown. */
  readonly text: string;
  readonly lengthUnit: LengthUnit;
};

/** Every single plate of an outline, or of all where it is empty, whose tag or height holds the text. */
function singles(reading: Reading, { outline, text, lengthUnit }: PlateFilter) {
  const [places, unit_nm] = lengthUnit === 'thou' ? ['%.1f', 25_400] : ['%.3f', 1_000_000];
  return reading
    .selectFrom('plates_as_known')
    .where('is_single', '=', 1)
    .where('outline', outline === '' ? '<>' : '=', outline)
    .$if(text !== '', (query) =>
      query.where((row) => {
        const height = row(row.cast<number>('height_nm', 'real'), '/', row.lit(unit_nm));
        const shown = row.fn<string>('printf', [row.val(places), height]);
        return row.or([
          row(row.fn<number>('instr', [row.fn('lower', ['tag']), row.val(text.toLowerCase())]), '>', 0),
          row(row.fn<number>('instr', [shown, row.val(text.replace(',', '.'))]), '>', 0),
        ]);
      }),
    );
}

/** How many single plates of each height are in each state. */
export function countByHeight(reading: Reading, filter: PlateFilter) {
  return singles(reading, filter)
    .select((row) => ['height_nm', 'state', row.fn.countAll<number>().as('count')])
    .groupBy(['height_nm', 'state'])
    .orderBy('height_nm')
    .execute();
}

/** Thinnest first, a window of them, each with where it is. */
export function listWindow(
  reading: Reading,
  filter: PlateFilter & { state: PlateState | null; offset: number; limit: number },
) {
  const window = singles(reading, filter)
    .$if(filter.state !== null, (query) => query.where('state', '=', filter.state as PlateState))
    .select('piece_id')
    .orderBy('height_nm')
    .orderBy('piece_id')
    .limit(filter.limit)
    .offset(filter.offset);
  return plates(reading)
    .where('plates_as_known.piece_id', 'in', window)
    .orderBy('height_nm')
    .orderBy('plates_as_known.piece_id')
    .execute();
}

/** One plate, single or not, as the list shows it. */
export function findPlate(reading: Reading, pieceId: number) {
  return plates(reading).where('plates_as_known.piece_id', '=', pieceId).executeTakeFirst();
}

export type PlateRow = NonNullable<Awaited<ReturnType<typeof findPlate>>>;

function plates(reading: Reading) {
  return reading
    .selectFrom('plates_as_known')
    .innerJoin('people', 'people.person_id', 'plates_as_known.measured_by')
    .leftJoin('mock_ups', 'mock_ups.mock_up_id', 'plates_as_known.mock_up_id')
    .leftJoin('jobs', 'jobs.job_id', 'mock_ups.job_id')
    .leftJoin('packs', 'packs.pack_id', 'mock_ups.pack_id')
    .leftJoin('piece_looks', 'piece_looks.piece_look_id', 'plates_as_known.piece_look_id')
    .leftJoin('cans as returned_can', 'returned_can.can_id', 'plates_as_known.returned_can_id')
    .selectAll('plates_as_known')
    .select([
      'people.initials',
      'mock_ups.job_id',
      'mock_ups.pack_id',
      'jobs.number as job_number',
      'packs.name as pack_name',
      'piece_looks.flat',
      'piece_looks.off_flat_nm',
      'piece_looks.has_hot_spots',
      'piece_looks.is_glazed',
      'piece_looks.is_coned',
      'piece_looks.is_usable',
      'piece_looks.note',
      'returned_can.height_nm as returned_can_nm',
    ])
    .select((row) =>
      row
        .selectFrom('piece_height_points')
        .where('piece_height_id', '=', (newest) =>
          newest
            .selectFrom('piece_heights')
            .whereRef('piece_heights.piece_id', '=', 'plates_as_known.piece_id')
            .select((height) => height.fn.max<number>('piece_height_id').as('newest')),
        )
        .select((point) =>
          point(point.fn.max<number>('height_nm'), '-', point.fn.min<number>('height_nm')).as('spread_nm'),
        )
        .as('spread_nm'),
    );
}

/** Every height a plate was written down with, newest first, each with its points. */
export async function listHeights(reading: Reading, pieceId: number) {
  const heights = await reading
    .selectFrom('piece_heights')
    .innerJoin('people', 'people.person_id', 'piece_heights.measured_by')
    .selectAll('piece_heights')
    .select('people.initials')
    .where('piece_id', '=', pieceId)
    .orderBy('piece_height_id', 'desc')
    .execute();
  const points = await reading
    .selectFrom('piece_height_points')
    .innerJoin('piece_heights', 'piece_heights.piece_height_id', 'piece_height_points.piece_height_id')
    .select(['piece_height_points.piece_height_id', 'piece_height_points.height_nm'])
    .where('piece_id', '=', pieceId)
    .orderBy('piece_height_points.piece_height_id')
    .orderBy('point')
    .execute();
  return heights.map((height) => ({
    ...height,
    points_nm: points
      .filter((point) => point.piece_height_id === height.piece_height_id)
      .map((point) => point.height_nm),
  }));
}

/**
 * Single plates at hand, by outline: those of `plates_as_known` that are free or to be read again. Asked without it,
 * because this goes through every plate there ever was, and finding each one's newest height takes twice as long.
 */
export function countLoose(reading: Reading) {
  return reading
    .selectFrom('pieces')
    .select((row) => ['outline', row.fn.countAll<number>().as('count')])
    .where('outline', '<>', '')
    .where((row) => row.not(row.exists(newestSitting(row))))
    .where('piece_id', 'not in', reading.selectFrom('discards').select('discards.piece_id'))
    .where('piece_id', 'not in', reading.selectFrom('can_returns').select('can_returns.piece_id'))
    .where('piece_id', 'not in', rejected(reading))
    .groupBy('outline')
    .execute();
}

/** The mock-up that a plate of `pieces` sits in now. */
function newestSitting(row: ExpressionBuilder<Tables, 'pieces'>) {
  return row
    .selectFrom('mock_ups as sits')
    .where('sits.mock_up_id', '=', (newest) =>
      newest
        .selectFrom('mock_up_pieces')
        .whereRef('mock_up_pieces.piece_id', '=', 'pieces.piece_id')
        .select((each) => each.fn.max<number>('mock_up_pieces.mock_up_id').as('newest')),
    )
    .where((sits) =>
      sits.not(
        sits.exists(
          sits
            .selectFrom('mock_ups as without')
            .whereRef('without.job_id', '=', 'sits.job_id')
            .whereRef('without.pack_id', '=', 'sits.pack_id')
            .where((each) => each('without.number', '=', each('sits.number', '+', each.lit(1))))
            .select('without.mock_up_id'),
        ),
      ),
    )
    .select('sits.mock_up_id');
}

function rejected(reading: Reading) {
  return reading
    .selectFrom('piece_looks')
    .where('is_usable', '=', 0)
    .where((row) =>
      row.not(
        row.exists(
          row
            .selectFrom('piece_looks as later')
            .whereRef('later.piece_id', '=', 'piece_looks.piece_id')
            .whereRef('later.piece_look_id', '>', 'piece_looks.piece_look_id')
            .select('later.piece_look_id'),
        ),
      ),
    )
    .select('piece_looks.piece_id');
}

/** Kinds of every outline that a plate, a can or a slot of a newest sheet has. */
export function listKinds(reading: Reading) {
  return reading
    .selectFrom('pieces')
    .select(['outline', 'kind'])
    .where('outline', '<>', '')
    .union(reading.selectFrom('cans').select(['outline', 'kind']))
    .union(newestSlots(reading).select(['slots.outline', 'slots.kind']))
    .orderBy('outline')
    .orderBy('kind')
    .execute();
}

/** Which packs of the newest sheets take plates of an outline. */
export function listPacksOfOutlines(reading: Reading) {
  return newestSlots(reading)
    .select(['slots.outline', 'revisions.family_id', 'families.name as family_name', 'packs.pack_id', 'packs.name'])
    .distinct()
    .orderBy('families.name')
    .orderBy('packs.position')
    .execute();
}

function newestSlots(reading: Reading) {
  return reading
    .selectFrom('slots')
    .innerJoin('packs', 'packs.pack_id', 'slots.pack_id')
    .innerJoin('revisions', 'revisions.revision_id', 'packs.revision_id')
    .innerJoin('families', 'families.family_id', 'revisions.family_id')
    .where('slots.outline', '<>', '')
    .where((row) =>
      row.not(
        row.exists(
          row
            .selectFrom('revisions as later')
            .whereRef('later.family_id', '=', 'revisions.family_id')
            .whereRef('later.number', '>', 'revisions.number')
            .select('later.revision_id'),
        ),
      ),
    );
}
