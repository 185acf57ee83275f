// Every act on a job in order, gathered from where each was written down, and the two papers that are made of it.

import { sayAnswer } from '../../app/jobs/answer-text.ts';
import { dayIn, timeIn } from '../../app/jobs/calendar-days.ts';
import type { Act } from '../../app/jobs/history.contract.ts';
import type { CheckOfJob, Job } from '../../app/jobs/jobs.contract.ts';
import { changesBetween } from '../../app/packs/mock-up-changes.ts';
import { benchSheet } from '../../app/papers/bench-sheet.ts';
import { buildSheet } from '../../app/papers/build-sheet.ts';
import { writeDay } from '../../app/papers/dates.ts';
import { formatAmount, formatLength } from '../../app/quantities/format-amount.ts';
import { formatMoney } from '../../app/quantities/money.ts';
import { shownUnit, unitNamed } from '../../app/quantities/units.ts';
import type { Take } from '../../app/readings/readings.contract.ts';
import { verdictWords } from '../../app/readings/verdict-words.ts';
import type { Settings } from '../../app/shop/shop.contract.ts';
import { loadActs } from '../clutch/clutch.service.ts';
import { comebackActs } from '../comebacks/comebacks-history.service.ts';
import type { OpenShop } from '../database/open-shop.ts';
import type { Reading } from '../database/tables.ts';
import { listMockUpPieces } from '../packs/packs.repository.ts';
import { listPhotos } from '../photos/photos.service.ts';
import { zoneHere } from '../ports/clock.ts';
import { takesOfJob } from '../readings/readings.service.ts';
import { getSettings } from '../shop/shop.service.ts';
import { listPacks } from '../specs/packs-of-sheets.repository.ts';
import { picturesOnPaper } from '../specs/pictures-on-paper.service.ts';
import { getRevision } from '../specs/specs.service.ts';
import { paintInWorker } from '../workers/paint-paper.ts';
import { deliveryActs } from './delivery-history.service.ts';
import { listCalls, listIntakes, listPromises } from './door.repository.ts';
import { findingsOnRecord } from './findings.service.ts';
import * as repository from './history.repository.ts';
import { tellFinding } from './history-of-findings.ts';
import { listOverrides, listStageEntries } from './jobs.repository.ts';
import { getJobRow } from './jobs.service.ts';
import { listAnswers } from './lists.repository.ts';
import { listListsOfJob, listsOfJob } from './lists-of-job.service.ts';
import { listPassedOver, listSignOffs } from './stages.repository.ts';
import { getJob } from './ticket.service.ts';

type Told = Omit<Act, 'checkId'> & { readonly checkId?: number };

export async function getHistory(reading: Reading, { jobId }: { jobId: number }): Promise<Act[]> {
  const job = await getJob(reading, { jobId });
  const settings = await getSettings(reading);
  const acts: Told[] = [
    ...(await doorActs(reading, job)),
    ...(await stageActs(reading, jobId)),
    ...(await deliveryActs(reading, jobId, settings)),
    ...(await comebackActs(reading, jobId, settings)),
    ...(await benchActs(reading, job, settings)),
    ...(await mockUpActs(reading, job, settings)),
    ...(await loadActs(reading, jobId, settings)),
    ...(await listActs(reading, jobId)),
    ...(await stockActs(reading, jobId)),
    ...(await moneyActs(reading, jobId, settings)),
    ...(await photoActs(reading, jobId)),
    ...(await findingActs(reading, jobId, settings)),
  ];
  // What was written at the same instant stays in the order above.
  return acts
    .toSorted((one, other) => (one.at < other.at ? -1 : one.at > other.at ? 1 : 0))
    .map((each) => ({ ...each, checkId: each.checkId ?? null }));
}

async function doorActs(reading: Reading, job: Job): Promise<Told[]> {
  const { jobId } = job;
  const intakes = (await listIntakes(reading, jobId)).toReversed();
  const promises = (await listPromises(reading, jobId)).toReversed();
  const calls = (await listCalls(reading, jobId)).toReversed();
  return [
    ...intakes.map(({ at, by, complaint, diagnosis }, index): Told => {
      const seen = Object.values(diagnosis).filter((each) => each !== '' && each !== 'not looked at');
      return {
        at,
        by,
        kind: 'door',
        says: index === 0 ? `Checked in for ${job.customer.name}` : 'What was said and seen was corrected',
        more: [complaint, seen.join(', ')].filter((each) => each !== '').join(' '),
      };
    }),
    ...promises.map(({ at, by, on, reason }, index): Told => {
      const says = index === 0 ? `Promised for ${writeDay(on)}` : `Promised for ${writeDay(on)} instead`;
      return { at, by, kind: 'promise', says, more: reason };
    }),
    ...calls.map(({ at, by, direction, withWhom, said }): Told => {
      const says = direction === 'we called' ? `Called ${withWhom}` : `${withWhom} called`;
      return { at, by, kind: 'call', says, more: said };
    }),
  ];
}

async function stageActs(reading: Reading, jobId: number): Promise<Told[]> {
  const entries = await listStageEntries(reading, jobId);
  const passedOver = await listPassedOver(reading, jobId);
  const signOffs = await listSignOffs(reading, jobId);
  return [
    ...entries.flatMap((entry): Told[] => [
      { at: entry.entered_at, by: entry.initials, kind: 'stage', says: `Into ${entry.name}`, more: '' },
      ...passedOver
        .filter((each) => each.stage_entry_id === entry.stage_entry_id)
        .map(
          ({ name, what, reason }): Told => ({
            at: entry.entered_at,
            by: entry.initials,
            kind: 'went on without',
            says: `Left ${name} without: ${what}`,
            more: reason,
          }),
        ),
    ]),
    ...signOffs.map(
      (each): Told => ({
        at: each.signed_at,
        by: each.initials,
        kind: 'sign-off',
        says: `Signed off ${each.place}`,
        more: each.note,
      }),
    ),
  ];
}

async function benchActs(reading: Reading, job: Job, settings: Settings): Promise<Told[]> {
  const takes = await takesOfJob(reading, job.jobId, job.checks);
  const overrides = await listOverrides(reading, job.jobId);
  return job.checks.flatMap((check) => [
    ...(takes.get(check.checkId) ?? []).flatMap((take) => takeActs(take, check, settings)),
    ...overrides
      .filter((each) => each.check_id === check.checkId)
      .map(
        (each): Told => ({
          at: each.overridden_at,
          by: each.initials,
          kind: 'decision',
          says: `${check.name}: let stand as it is`,
          more: each.reason,
          checkId: check.checkId,
        }),
      ),
  ]);
}

/** Every answer, the ones that were put right later too. */
async function listActs(reading: Reading, jobId: number): Promise<Told[]> {
  const lists = await listsOfJob(reading, await getJobRow(reading, jobId));
  const lines = new Map(lists.flatMap((list) => list.lines.map((line) => [line.lineId, { list, line }] as const)));
  return (await listAnswers(reading, jobId)).flatMap(({ lineId, given }): Told[] => {
    const of = lines.get(lineId);
    if (!of) return [];
    const says = `${of.list.name}, ${of.line.words}: ${sayAnswer(of.line.asks, given.answer)}`;
    return [{ at: given.at, by: given.by, kind: 'list', says, more: given.reason }];
  });
}

function takeActs(take: Take, check: CheckOfJob, settings: Settings): Told[] {
  const { evaluation, readings } = take;
  const { checkId } = check;
  const phase = take.phase === 'mock-up' ? `mock-up ${take.mockUpNumber ?? ''}`.trim() : take.phase;
  const misreads = readings.flatMap((misread): Told[] => {
    const right = readings.find((each) => each.readingId === misread.supersededById);
    if (!right) return [];
    const says = `${check.name}: ${misread.typed} was misread, ${right.typed} stands in its place`;
    return [{ at: right.at, by: right.by, kind: 'misread', says, more: right.reason, checkId }];
  });
  const willNotHold = take.notes.find((note) => note.what === 'will not hold air');
  // A take that was begun and never read says nothing.
  if (evaluation.mean === null && !willNotHold) return misreads;
  // It stands where its last line was typed, so that the verdict follows what it rests on.
  const at =
    readings
      .map((each) => each.at)
      .toSorted()
      .at(-1) ??
    willNotHold?.at ??
    take.startedAt;
  const says = `${check.name}, ${phase}: ${valueWords(take, check, settings)}`;
  const more = [take.gauge ? `Read with ${take.gauge.tag}` : '', take.note].filter((each) => each !== '').join('; ');
  return [{ at, by: take.by, kind: 'reading', says, more, checkId }, ...misreads];
}

function valueWords({ evaluation }: Take, check: CheckOfJob, settings: Settings): string {
  const { mean, expanded, variantName } = evaluation;
  if (mean === null) return 'would not hold air';
  const name = shownUnit(check.unit, settings.lengthUnit);
  const unit = unitNamed(name);
  const { decimalMark } = settings;
  const plusMinus = expanded === null ? '' : ` ± ${formatAmount(expanded, unit, { decimalMark })}`;
  const verdict = variantName ?? verdictWords(evaluation.verdict, { ...check, unit: unit.name });
  return `${formatAmount(mean, unit, { decimalMark })}${plusMinus} ${name}, ${verdict}`;
}

async function mockUpActs(reading: Reading, job: Job, settings: Settings): Promise<Told[]> {
  const rows = await repository.listMockUpsOf(reading, job.jobId);
  const packs = await listPacks(reading, (await getJobRow(reading, job.jobId)).revision_id);
  const shown = (height_nm: number) => formatLength(height_nm, settings.lengthUnit, undefined, settings.decimalMark);
  const before = new Map<number, Awaited<ReturnType<typeof listMockUpPieces>>>();
  const acts: Told[] = [];
  for (const row of rows) {
    const pieces = await listMockUpPieces(reading, row.mock_up_id);
    const slots = packs.find((pack) => pack.packId === row.pack_id)?.slots ?? [];
    const swapped = changesBetween(slots, before.get(row.pack_id) ?? [], pieces, shown);
    before.set(row.pack_id, pieces);
    acts.push({
      at: row.made_at,
      by: row.initials,
      kind: 'mock-up',
      says: row.number === 0 ? `${row.name}: entered as found` : `${row.name}: mock-up ${row.number}`,
      more: [swapped.join(', '), row.note].filter((each) => each !== '').join('; '),
    });
  }
  return acts;
}

async function photoActs(reading: Reading, jobId: number): Promise<Told[]> {
  const photos = await listPhotos(reading, { jobId });
  return photos.map(({ at, by, caption }) => ({ at, by, kind: 'photo', says: 'Photo taken in', more: caption }));
}

async function findingActs(reading: Reading, jobId: number, settings: Settings): Promise<Told[]> {
  const findings = await findingsOnRecord(reading, { jobId });
  return findings.flatMap((finding) => tellFinding(finding, settings));
}

async function stockActs(reading: Reading, jobId: number): Promise<Told[]> {
  const movements = await repository.listPartMovements(reading, jobId);
  const cores = await repository.listCoresOf(reading, jobId);
  return [
    ...movements.map((move): Told => {
      const what = `${Math.abs(move.change)} × ${move.number} ${move.description}`;
      const says = move.kind === 'pull' ? `Pulled ${what}` : `Gave back ${what}`;
      const more = move.mark === '' ? move.document : `batch ${move.mark}`;
      return { at: move.moved_at, by: move.initials, kind: 'part', says, more };
    }),
    ...cores.flatMap((core): Told[] => [
      { at: core.opened_at, by: core.initials, kind: 'core', says: `Core ${core.direction}: ${core.what}`, more: '' },
      ...(core.how === null || core.settled_at === null
        ? []
        : [
            {
              at: core.settled_at,
              by: core.settled_initials ?? '',
              kind: 'core',
              says: `Core ${core.how}: ${core.what}`,
              more: core.note ?? '',
            } as const,
          ]),
    ]),
  ];
}

async function moneyActs(reading: Reading, jobId: number, { decimalMark }: Settings): Promise<Told[]> {
  const estimates = await repository.listEstimatesOf(reading, jobId);
  const approvals = await repository.listApprovalsOf(reading, jobId);
  return [
    ...estimates.map((each): Told => {
      const says = `Estimate ${each.number} given: ${formatMoney(each.total_cents, decimalMark)}`;
      return { at: each.given_at, by: each.initials, kind: 'estimate', says, more: '' };
    }),
    ...approvals.map((each): Told => {
      const says = `Estimate ${each.number} approved by ${each.approved_by}, ${each.how}`;
      return { at: each.recorded_at, by: each.initials, kind: 'estimate', says, more: each.note };
    }),
  ];
}

type PaperSize = 'letter' | 'A4';

export async function printBuildSheet(shop: OpenShop, input: { jobId: number; paper?: PaperSize | undefined }) {
  const zone = zoneHere();
  const facts = await shop.read(async (reading) => {
    const job = await getJob(reading, input);
    const settings = await getSettings(reading);
    const acts = await getHistory(reading, input);
    return {
      paper: input.paper ?? settings.paper,
      shopName: settings.shopName,
      isDemo: settings.isDemo,
      jobNumber: job.number,
      printedOn: dayIn(shop.clock(), zone),
      customerName: job.customer.name,
      unit: {
        name: `${job.unit.familyName} ${job.unit.serial}`.trim(),
        vehicle: [job.unit.vehicle, job.unit.use].filter((each) => each !== '').join(', '),
        caseTag: job.caseTag,
      },
      complaint: job.complaint,
      diagnosis: job.diagnosis,
      stageName: job.stages.find((stage) => stage.stageId === job.stageId)?.name ?? '',
      promisedOn: job.promised?.on ?? null,
      acts: acts.map((each) => ({ ...each, day: dayIn(each.at, zone), time: timeIn(each.at, zone) })),
    };
  });
  const pdf = await paintInWorker(buildSheet(facts));
  return { fileName: `job ${facts.jobNumber} build sheet.pdf`, pdfBase64: pdf.toString('base64') };
}

export async function printBenchSheet(
  shop: OpenShop,
  input: { of: { familyId: number } | { jobId: number }; paper?: PaperSize | undefined },
) {
  const facts = await shop.read(async (reading) => {
    const settings = await getSettings(reading);
    const job = 'jobId' in input.of ? await getJob(reading, input.of) : null;
    const revision = await getRevision(
      reading,
      'familyId' in input.of ? input.of : { familyId: job?.unit.familyId ?? 0, number: job?.revisionNumber },
    );
    return {
      paper: input.paper ?? settings.paper,
      lengthUnit: settings.lengthUnit,
      decimalMark: settings.decimalMark,
      shopName: settings.shopName,
      isDemo: settings.isDemo,
      printedOn: dayIn(shop.clock(), zoneHere()),
      familyName: revision.familyName,
      revisionNumber: revision.number,
      job: job && {
        number: job.number,
        unit: `${job.unit.familyName} ${job.unit.serial}`.trim(),
        customerName: job.customer.name,
      },
      packs: revision.packs.filter(({ packId }) => job === null || job.packs.some((pack) => pack.packId === packId)),
      checks: job?.checks ?? revision.checks,
      lists: job ? await listListsOfJob(reading, { jobId: job.jobId, when: null }) : revision.lists,
      onPictures: picturesOnPaper(shop.file, revision.pictures, ({ checkId, lineId }) => ({
        figure: '',
        mark: lineId === null ? { kind: checkId === null ? 'none' : 'blank' } : { kind: 'tick', state: 'open' },
      })),
    };
  });
  const pdf = await paintInWorker(benchSheet(facts));
  const of = facts.job ? `job ${facts.job.number}` : facts.familyName;
  return { fileName: `${of} bench sheet.pdf`, pdfBase64: pdf.toString('base64') };
}
