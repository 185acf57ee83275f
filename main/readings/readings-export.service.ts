// Readings and takes as lists to leave the book with: as typed, in figures, with setup and verdict.
import { setImmediate } from 'node:timers/promises';
import { unitNamed } from '../../app/quantities/units.ts';
import type { Setup, Take } from '../../app/readings/readings.contract.ts';
import { valueOfReading } from '../../app/readings/typed-line.ts';
import { shownVerdict } from '../../app/readings/verdict-words.ts';
import type { SavedCheck } from '../../app/specs/specs.contract.ts';
import type { CsvCell } from '../../app/stock/csv-cells.ts';
import type { Reading } from '../database/tables.ts';
import type { CsvSheet } from '../exports/csv-sheet.ts';
import { exportedUnits, figuresWith } from '../exports/figures.ts';
import { getSettings } from '../shop/shop.service.ts';
import { listChecks } from '../specs/checks-of-sheets.repository.ts';
import { typedReadingOf } from './readings.repository.ts';
import { takesOfJob } from './readings.service.ts';
import { streamReadings } from './readings-export.repository.ts';

/** What a list of readings or takes is about: one job, or null for the whole shop. */
type Of = { readonly jobId: number | null };

export async function sheetOfReadings(reading: Reading, { jobId }: Of): Promise<CsvSheet> {
  const { lengthUnit, decimalMark } = await getSettings(reading);
  const { amount } = figuresWith(decimalMark);
  const length = unitNamed(lengthUnit);
  const units = exportedUnits(lengthUnit);
  return {
    name: 'readings',
    says: 'every line that was typed at the bench, also those that were misread',
    headings: [
      ...['reading', 'job', 'pack', 'check', 'phase', 'mock-up', 'take', 'spot', 'method', 'typed'],
      ...['push', 'air', 'goes', 'stops', 'waver'].map((heading) => `${heading}, ${lengthUnit}`),
      ...units.map(([quantity, { name }]) => (name === '' ? quantity : `${quantity}, ${name}`)),
      ...['feel', 'zeroed again', 'air only', 'at', 'by', 'superseded by', 'why superseded', 'in place of'],
    ],
    rows: (async function* () {
      for await (const row of streamReadings(reading, jobId)) {
        const value = valueOfReading(typedReadingOf(row));
        yield [
          row.reading_id,
          row.job_number,
          row.pack_name ?? '',
          row.check_name,
          row.phase,
          row.phase === 'as found' && row.pack_name !== null ? 0 : (row.mock_up_number ?? ''),
          row.take_id,
          row.spot,
          row.method,
          row.typed,
          amount(row.push_amount, length),
          amount(row.air_amount, length),
          amount(row.goes_amount, length),
          amount(row.stops_amount, length),
          amount(row.method === 'air' ? row.waver_amount : null, length),
          ...units.map(([quantity, unit]) => amount(quantity === row.quantity ? value : null, unit)),
          row.feel,
          yes(row.is_zeroed_again === 1),
          yes(row.is_air_only === 1),
          row.taken_at,
          row.initials,
          row.superseded_by_id ?? '',
          row.superseded_reason ?? '',
          row.supersedes_id ?? '',
        ] satisfies CsvCell[];
      }
    })(),
  };
}

export async function sheetOfTakes(reading: Reading, { jobId }: Of): Promise<CsvSheet> {
  const { lengthUnit, decimalMark } = await getSettings(reading);
  const figures = figuresWith(decimalMark);
  const checksOf = new Map<number, SavedCheck[]>();
  let jobs = reading.selectFrom('jobs').select(['job_id', 'number', 'revision_id']).orderBy('job_id');
  if (jobId !== null) jobs = jobs.where('job_id', '=', jobId);
  return {
    name: 'takes',
    says: 'every go at a check: how the gauge stood, what it came to, the verdict',
    headings: [
      ...['take', 'job', 'group', 'check', 'phase', 'mock-up', 'mode', 'method', 'at', 'by', 'note', 'spots'],
      ...['unit', 'mean', 'lowest', 'highest', 'plus or minus', 'verdict', 'outside by', 'why', 'rule', 'came out as'],
      ...['remarks', 'at the spots', 'dial base', 'piston seated', 'air, psi', 'port', 'wave plate', 'plates'],
      ...['open end up', 'dial', 'dial face', 'mark'],
    ],
    rows: (async function* () {
      // Not as a stream: while one runs, Kysely lets nothing else be asked on its connection.
      for (const job of await jobs.execute()) {
        // What a take comes to is worked out here, job by job, and others are served between two jobs.
        await setImmediate();
        const checks = checksOf.get(job.revision_id) ?? (await listChecks(reading, job.revision_id));
        checksOf.set(job.revision_id, checks);
        const takes = await takesOfJob(reading, job.job_id, checks);
        for (const check of checks) {
          for (const take of takes.get(check.checkId) ?? []) yield takeCells(job.number, check, take);
        }
      }
    })(),
  };

  function takeCells(jobNumber: number, check: SavedCheck, take: Take): CsvCell[] {
    const { evaluation, setup } = take;
    const { verdict } = evaluation;
    const unit = unitNamed(check.quantity === 'length' ? lengthUnit : check.unit);
    const amount = (each: number | null) => figures.amount(each, unit);
    return [
      take.takeId,
      jobNumber,
      check.group,
      check.name,
      take.phase,
      take.mockUpNumber ?? '',
      take.mode,
      take.method,
      take.startedAt,
      take.by,
      take.note,
      evaluation.spots.length,
      unit.name,
      amount(evaluation.mean),
      amount(evaluation.min),
      amount(evaluation.max),
      amount(evaluation.expanded),
      shownVerdict(verdict, check.quantity),
      amount(verdict.by),
      verdict.reason,
      evaluation.decisionRule,
      evaluation.variantName ?? '',
      evaluation.remarks.join(' '),
      take.notes.map(({ spot, what }) => `${spot}: ${what}`).join('; '),
      ...setupCells(setup),
    ];
  }

  function setupCells(setup: Setup | null): CsvCell[] {
    if (!setup) return Array(10).fill('');
    return [
      setup.dialBase,
      yes(setup.isPistonSeated),
      figures.amount(setup.air_pa, unitNamed('psi')),
      setup.port,
      setup.waveState,
      setup.plates,
      yes(setup.isOpenEndUp),
      setup.dialType,
      setup.dialFaceCounts,
      setup.mark,
    ];
  }
}

function yes(isSo: boolean): string {
  return isSo ? 'yes' : '';
}
