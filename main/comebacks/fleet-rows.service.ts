// Gathers what is on record of a family's delivered builds into columns, a place a build.
import type {
  FactorColumn,
  FleetBuild,
  FleetRows,
  GroupColumn,
  LaterVisit,
  NumberColumn,
} from '../../app/comebacks/fleet-rows.ts';
import { whatACheckTells } from '../../app/comebacks/what-a-check-tells.ts';
import { dayIn } from '../../app/jobs/calendar-days.ts';
import type { Distance } from '../../app/jobs/distance.contract.ts';
import { writeDay } from '../../app/papers/dates.ts';
import type { Reading } from '../database/tables.ts';
import { zoneHere } from '../ports/clock.ts';
import { getSettings } from '../shop/shop.service.ts';
import * as repository from './fleet.repository.ts';

type BuildRow = Awaited<ReturnType<typeof repository.listBuilds>>[number];

/** Where each build stands in the columns, by its job. */
type Places = ReadonlyMap<number, number>;

/** The columns made of the shelf's figures, which are most of the work, and what tells that they still hold. */
export type FiguresOfFleet = { readonly mark: string; readonly columns: readonly FactorColumn[] };

/**
 * Everything there is to ask of the delivered builds of a family; their figures must be on the shelf. What `kept` holds
 * from the last time is not read again while it still holds.
 */
export async function gatherFleet(
  reading: Reading,
  familyId: number,
  today: string,
  kept: FiguresOfFleet | null,
): Promise<{ rows: FleetRows; figures: FiguresOfFleet }> {
  const rows = await repository.listBuilds(reading, familyId);
  const places: Places = new Map(rows.map(({ job_id }, place) => [job_id, place]));
  const batches = await batchesByBuild(reading, familyId, places);
  const visits = await visitsByUnit(reading, familyId);
  const { lengthUnit, decimalMark } = await getSettings(reading);
  const mark = JSON.stringify([await repository.markOfFigures(reading, familyId), [...places.keys()]]);
  const figures = kept?.mark === mark ? kept : { mark, columns: await columnsOfFigures(reading, familyId, places) };
  const fleet = {
    today,
    builds: rows.map((row, place) => buildOf(row, batches.ofBuild.get(place) ?? none, visits.get(row.unit_id) ?? none)),
    columns: [
      ...figures.columns,
      ...plainColumns(rows),
      ...batches.columns,
      ...(await choiceColumns(reading, familyId, places)),
    ],
    words: { lengthUnit, decimalMark },
  };
  return { rows: fleet, figures };
}

async function columnsOfFigures(reading: Reading, familyId: number, places: Places): Promise<FactorColumn[]> {
  return [
    ...(await checkColumns(reading, familyId, places)),
    ...(await reusedColumns(reading, familyId, places)),
    ...(await wayColumns(reading, familyId, places)),
  ];
}

type Visit = LaterVisit & { readonly jobId: number; readonly builtJobId: number | null };

function buildOf(row: BuildRow, batchIds: readonly number[], visits: readonly Visit[]): FleetBuild {
  return {
    jobId: row.job_id,
    revisionNumber: row.revision_number,
    builderId: row.builder,
    batchIds,
    deliveredOn: row.delivered_on,
    distanceAtDelivery: distanceOf(row.distance_amount, row.distance_unit),
    inServiceOn: row.in_service_on,
    months: row.months,
    laterVisits: visits.length === 0 ? none : visitsAfter(row, visits),
  };
}

const none: readonly never[] = [];

/** A comeback held against another build of the unit is a visit like any other. */
function visitsAfter(build: BuildRow, visits: readonly Visit[]): LaterVisit[] {
  return visits
    .filter(
      ({ jobId, builtJobId, day }) =>
        builtJobId === build.job_id || (jobId > build.job_id && day >= build.delivered_on),
    )
    .map(({ day, distance, comeback, builtJobId }) => ({
      day,
      distance,
      comeback: builtJobId === build.job_id ? comeback : null,
    }))
    .toSorted((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0));
}

async function visitsByUnit(reading: Reading, familyId: number): Promise<Map<number, Visit[]>> {
  const causes = Map.groupBy(await repository.listCauses(reading), (row) => row.comeback_id);
  const visits = new Map<number, Visit[]>();
  const zone = zoneHere();
  for (const row of await repository.listVisits(reading, familyId)) {
    const { comeback_id: comebackId, outcome } = row;
    const atReturn = distanceOf(row.distance_at_return, row.unit_at_return);
    const visit: Visit = {
      jobId: row.job_id,
      builtJobId: row.built_job_id,
      day: row.came_back_on ?? dayIn(row.opened_at, zone),
      distance: atReturn ?? distanceOf(row.distance_amount, row.distance_unit),
      comeback:
        comebackId === null || outcome === null
          ? null
          : {
              outcome,
              causes: (causes.get(comebackId) ?? []).flatMap(({ cause, certainty, pack_name: packName }) =>
                certainty === 'taken back' ? [] : [{ cause, certainty, packName }],
              ),
            },
    };
    const ofUnit = visits.get(row.unit_id);
    if (ofUnit) ofUnit.push(visit);
    else visits.set(row.unit_id, [visit]);
  }
  return visits;
}

function distanceOf(amount: number | null, unit: Distance['unit'] | null): Distance | null {
  return amount === null || unit === null ? null : { amount, unit };
}

/** Every check by its name, over the revisions; of variants only one is right, so how far apart they are tells nothing. */
async function checkColumns(reading: Reading, familyId: number, places: Places): Promise<NumberColumn[]> {
  const columns = new Map<string, NumberColumn & { values: Array<number | null> }>();
  const byCheck = new Map<number, Array<number | null>>();
  for (const row of await repository.listChecksByName(reading, familyId)) {
    if (row.limit_kind === 'variants') continue;
    const key = JSON.stringify([row.name, row.quantity]);
    const { name, heading: group, method, quantity, pack_name: packName } = row;
    const column = columns.get(key) ?? {
      kind: 'number',
      name,
      packName,
      unit: row.unit,
      tells: whatACheckTells({ name, group, method, quantity, packName }),
      values: new Array<number | null>(places.size).fill(null),
    };
    columns.set(key, column);
    byCheck.set(row.check_id, column.values);
  }
  for (const row of await repository.listAmounts(reading, familyId)) {
    const values = byCheck.get(row.check_id);
    if (!values) continue;
    const jobs: number[] = JSON.parse(row.jobs);
    const amounts: Array<number | null> = JSON.parse(row.amounts);
    for (const [i, jobId] of jobs.entries()) {
      const place = places.get(jobId);
      if (place !== undefined) values[place] = amounts[i] ?? null;
    }
  }
  return [...columns.values()].filter(({ values }) => values.some((value) => value !== null));
}

async function reusedColumns(reading: Reading, familyId: number, places: Places): Promise<NumberColumn[]> {
  const columns = new Map<string, Array<number | null>>();
  for (const row of await repository.listReusedPlates(reading, familyId)) {
    const place = places.get(row.job_id);
    if (place === undefined) continue;
    const values = columns.get(row.name) ?? new Array<number | null>(places.size).fill(null);
    columns.set(row.name, values);
    values[place] = row.reused_plates;
  }
  return [...columns].map(([packName, values]) => ({
    kind: 'number',
    name: `Reused plates, ${packName}`,
    packName,
    unit: '',
    tells: 'reused plates',
    values,
  }));
}

async function wayColumns(reading: Reading, familyId: number, places: Places): Promise<GroupColumn[]> {
  const checks = await repository.listChecksByName(reading, familyId);
  const named = new Map(checks.map((row) => [row.check_id, row]));
  const columns = groupColumnsOf(places);
  for (const row of await repository.listWaysRead(reading, familyId)) {
    const check = named.get(row.check_id);
    if (!check) continue;
    const { name, pack_name: packName } = check;
    const { method, plates } = row;
    const jobs: number[] = JSON.parse(row.jobs);
    for (const jobId of jobs) columns.add(jobId, { name: `${name} read by`, packName, grouping: 'method' }, method);
    if (plates === null) continue;
    for (const jobId of jobs) columns.add(jobId, { name: `${name}, plates`, packName, grouping: 'plates' }, plates);
  }
  return columns.all();
}

function plainColumns(rows: readonly BuildRow[]): GroupColumn[] {
  const column = (
    name: string,
    grouping: GroupColumn['grouping'],
    levelOf: (row: BuildRow) => string | null,
  ): GroupColumn => {
    const known = new Map<string, readonly [string]>();
    const levels = rows.map((row) => {
      const level = levelOf(row);
      if (level === null || level === '') return null;
      const told = known.get(level) ?? ([level] as const);
      known.set(level, told);
      return told;
    });
    return { kind: 'group', name, packName: null, grouping, levels };
  };
  return [
    column('Built by', 'builder', (row) => row.initials),
    column('Use', 'use', (row) => row.use),
    column('Installed by', 'installer', (row) => row.installed_by),
  ];
}

/** A build that took none of a part at all, or of which nobody wrote it down, is left out of that part's batches. */
async function batchesByBuild(reading: Reading, familyId: number, places: Places) {
  const batches = new Map((await repository.listBatches(reading)).map((row) => [row.batch_id, row]));
  const columns = groupColumnsOf(places);
  const ofBuild = new Map<number, number[]>();
  for (const { job_id: jobId, batch_id: batchId } of await repository.listBatchesOfJobs(reading, familyId)) {
    const place = places.get(jobId);
    const batch = batches.get(batchId);
    if (place === undefined || !batch) continue;
    ofBuild.set(place, [...(ofBuild.get(place) ?? []), batchId]);
    const name = `Batch of ${batch.number}`;
    columns.add(jobId, { name, packName: null, grouping: 'batch' }, batchName(batch));
  }
  return { columns: columns.all(), ofBuild };
}

/** "lot 7 of 12 March 2026": two deliveries may carry the same mark. */
export function batchName(batch: { mark: string; document: string; received_on: string }): string {
  return `${batch.mark || batch.document || 'no mark'} of ${writeDay(batch.received_on)}`;
}

async function choiceColumns(reading: Reading, familyId: number, places: Places): Promise<GroupColumn[]> {
  const newest = new Map<string, { jobId: number; line: string; chosen: string | null }>();
  for (const { job_id: jobId, line, says, chosen } of await repository.listChoices(reading, familyId)) {
    newest.set(`${jobId} ${line}`, { jobId, line, chosen: says === 'chosen' ? chosen : null });
  }
  const columns = groupColumnsOf(places);
  for (const { jobId, line, chosen } of newest.values()) {
    if (chosen !== null) columns.add(jobId, { name: line, packName: null, grouping: 'choice' }, chosen);
  }
  return columns.all();
}

/** Builds group columns row by row, with one array for builds of the same levels. */
function groupColumnsOf(places: Places) {
  const columns = new Map<
    string,
    {
      head: Pick<GroupColumn, 'name' | 'packName' | 'grouping'>;
      levels: Array<readonly string[] | null>;
      single: Map<string, readonly [string]>;
    }
  >();
  return {
    add: (jobId: number, head: Pick<GroupColumn, 'name' | 'packName' | 'grouping'>, level: string) => {
      const place = places.get(jobId);
      if (place === undefined) return;
      const column = columns.get(head.name) ?? {
        head,
        levels: new Array<readonly string[] | null>(places.size).fill(null),
        single: new Map<string, readonly [string]>(),
      };
      columns.set(head.name, column);
      const alone = column.single.get(level) ?? ([level] as const);
      column.single.set(level, alone);
      const before = column.levels[place] ?? null;
      if (before === null) column.levels[place] = alone;
      else if (!before.includes(level)) column.levels[place] = [...before, level];
    },
    all: (): GroupColumn[] => [...columns.values()].map(({ head, levels }) => ({ kind: 'group', ...head, levels })),
  };
}
