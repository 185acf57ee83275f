// Looks a shop file over after a kill: the file itself, the rules it holds, and what the book reads from it.
import { dirname } from 'node:path';
import Sqlite from 'better-sqlite3';
import { openConnection } from '../../main/database/connection.ts';
import { openShop } from '../../main/database/open-shop.ts';
import { systemClock } from '../../main/ports/clock.ts';
import { Desk } from '../../main/shop/desk.ts';
import { spotToRead } from '../../renderer/screens/bench/reading-plan.ts';
import { callerOn } from './shop-to-kill.ts';

/** Rows that are half an act, in words; each query answers how many there are. */
const halves: ReadonlyArray<readonly [words: string, query: string]> = [
  ['jobs without intake', 'select count(*) from jobs where job_id not in (select job_id from intakes)'],
  ['jobs in no stage', 'select count(*) from jobs where job_id not in (select job_id from jobs_in_stages)'],
  [
    'units handed over whose ticket did not go on',
    "select count(*) from deliveries join jobs_in_stages using (job_id) join stages using (stage_id) where name not in ('Picked up', 'Closed')",
  ],
  ['jobs no stage entry tells of', 'select count(*) from jobs where job_id not in (select job_id from stage_entries)'],
  ['takes without figures', 'select count(*) from takes where take_id not in (select take_id from take_figures)'],
  [
    'findings without card',
    'select count(*) from findings where finding_id not in (select finding_id from finding_cards)',
  ],
  [
    'findings without decision',
    'select count(*) from findings where finding_id not in (select finding_id from finding_decisions)',
  ],
  [
    'mock-ups with an empty slot',
    `select count(*) from mock_ups join slots using (pack_id) left join mock_up_pieces using (mock_up_id, slot_id)
      where piece_id is null`,
  ],
  [
    'estimates without lines',
    'select count(*) from estimates where estimate_id not in (select estimate_id from estimate_lines)',
  ],
  ['batches nothing came in of', 'select count(*) from batches where batch_id not in (select batch_id from movements)'],
  [
    'kits taken apart whose parts are not laid in',
    // Nine frictions and three seals lie in one kit.
    `select abs(coalesce(sum(change), 0)) from (
      select 12 * change as change from movements where kind = 'open'
      union all select change from movements join batches using (batch_id) where kit_batch_id is not null and kind = 'receive')`,
  ],
  ['batches below zero', 'select count(*) from (select 1 from movements group by batch_id having sum(change) < 0)'],
  ['gauges without card', 'select count(*) from gauges where gauge_id not in (select gauge_id from gauge_cards)'],
  [
    'checks of a gauge without points',
    'select count(*) from gauge_checks where gauge_check_id not in (select gauge_check_id from gauge_check_points)',
  ],
  [
    'deliveries without warranty',
    'select count(*) from deliveries where job_id not in (select job_id from warranties)',
  ],
  [
    'comebacks without card',
    'select count(*) from comebacks where comeback_id not in (select comeback_id from comeback_cards)',
  ],
];

const neverChanged = ['readings', 'movements', 'stage_entries', 'finding_cards', 'comeback_cards', 'deliveries'];

/** What is wrong with `file`, one sentence each. */
export async function lookOver(file: string): Promise<string[]> {
  return [...lookAtFile(file), ...(await lookThroughBook(file))];
}

function lookAtFile(file: string): string[] {
  const connection = openConnection(file, 'write');
  try {
    const count = (query: string) => Number(connection.prepare(query).pluck().get());
    const integrity = connection.pragma('integrity_check', { simple: true });
    const broken = connection.pragma('foreign_key_check') as unknown[];
    return [
      ...(integrity === 'ok' ? [] : [`integrity_check says ${String(integrity)}`]),
      ...(broken.length === 0 ? [] : [`${broken.length} rows point nowhere`]),
      ...halves
        .map(([words, query]) => ({ words, many: count(query) }))
        .flatMap(({ words, many }) => (many === 0 ? [] : [`${many} ${words}`])),
      ...neverChanged.filter((table) => letsChange(connection, table)).map((table) => `${table} let itself be changed`),
    ];
  } finally {
    connection.close();
  }
}

function letsChange(connection: Sqlite.Database, table: string): boolean {
  if (connection.prepare(`select 1 from ${table} limit 1`).get() === undefined) return false;
  return [`delete from ${table}`, `update ${table} set rowid = rowid`].some((change) => {
    connection.exec('begin');
    try {
      connection.exec(change);
      return true;
    } catch {
      return false;
    } finally {
      connection.exec('rollback');
    }
  });
}

/** Opens it as the book does and reads every ticket, the stock, and where each half read take goes on. */
async function lookThroughBook(file: string): Promise<string[]> {
  const desk = Desk.over(await openShop(file, 'write', systemClock), dirname(file));
  const onlooker = new Sqlite(file, { readonly: true });
  try {
    const call = callerOn(desk);
    const wrong: string[] = [];
    const jobs = onlooker.prepare('select job_id from jobs').pluck().all() as number[];
    for (const jobId of jobs) await call('jobs.getJob', { jobId });
    const { parts } = await call('stock.listParts', {
      text: '',
      kind: null,
      familyId: null,
      only: 'in use',
      offset: 0,
      limit: 50,
    });
    for (const { number, onHand } of parts) {
      const sum = onlooker
        .prepare(
          'select coalesce(sum(change), 0) from parts join batches using (part_id) join movements using (batch_id) where parts.number = ?',
        )
        .pluck()
        .get(number);
      if (onHand !== sum) wrong.push(`${number} is said to be ${onHand} on hand, its movements come to ${String(sum)}`);
    }
    const takes = onlooker
      .prepare(
        'select job_id as jobId, check_id as checkId, max(take_id) as takeId from takes group by job_id, check_id',
      )
      .all() as Array<{ jobId: number; checkId: number; takeId: number }>;
    for (const { jobId, checkId, takeId } of takes) {
      const take = await call('readings.latestTake', { jobId, checkId });
      const spots = onlooker.prepare('select distinct spot from readings where take_id = ?').pluck().all(takeId);
      // A spot that is asked about once more comes first.
      const asked = take?.evaluation.asks[0]?.spot;
      const left = asked ?? [1, 2, 3, 4].find((spot) => !spots.includes(spot)) ?? null;
      const check = await checkOf(jobId, checkId);
      const resumes = take && check ? spotToRead(take, check, null) : null;
      if (take?.takeId !== takeId) wrong.push(`the bench goes on with take ${take?.takeId}, not ${takeId}`);
      if (left !== null && resumes !== left) wrong.push(`take ${takeId} goes on at spot ${resumes}, not ${left}`);
    }
    return wrong;

    async function checkOf(jobId: number, checkId: number) {
      const job = await call('jobs.getJob', { jobId });
      const revision = await call('specs.getRevision', { familyId: job.unit.familyId });
      return revision.checks.find((each) => each.checkId === checkId);
    }
  } finally {
    onlooker.close();
    await desk.close();
  }
}
