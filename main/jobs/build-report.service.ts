// The build report of a job: its facts read in one view of the file, then painted outside of it.

import { estimateSentences } from '../../app/clutch/clutch-words.ts';
import type { KeptTrace } from '../../app/indicators/indicators.contract.ts';
import type { CheckOfJob, Job } from '../../app/jobs/jobs.contract.ts';
import { warrantyWords } from '../../app/jobs/warranty.ts';
import { changesBetween } from '../../app/packs/mock-up-changes.ts';
import type { MockUp, PackOfJob } from '../../app/packs/packs.contract.ts';
import { slotName } from '../../app/packs/slot-name.ts';
import { buildReport } from '../../app/papers/build-report.ts';
import type { BuildReportFacts, CheckFacts, Copy, PackFacts } from '../../app/papers/build-report-facts.ts';
import { writeDay } from '../../app/papers/dates.ts';
import { unitOnPaper } from '../../app/papers/unit-on-paper.ts';
import { formatLength } from '../../app/quantities/format-amount.ts';
import { boundsOf } from '../../app/readings/judge-take.ts';
import { methodWords } from '../../app/readings/method-words.ts';
import type { Take } from '../../app/readings/readings.contract.ts';
import { setupLines } from '../../app/readings/setup-words.ts';
import { shownVerdict } from '../../app/readings/verdict-words.ts';
import type { Settings } from '../../app/shop/shop.contract.ts';
import { normalCoverageFactor } from '../../app/statistics/normal.ts';
import { getClutch } from '../clutch/clutch.service.ts';
import type { OpenShop } from '../database/open-shop.ts';
import type { Reading } from '../database/tables.ts';
import { listTraces } from '../indicators/indicators.service.ts';
import { getPack } from '../packs/packs.service.ts';
import { picturesForReport } from '../photos/photos.service.ts';
import { takesOfJob } from '../readings/readings.service.ts';
import { getSettings } from '../shop/shop.service.ts';
import { paintInWorker } from '../workers/paint-paper.ts';
import { getDelivery } from './delivery.service.ts';
import { listFindings } from './findings.service.ts';
import { listListsOfJob } from './lists-of-job.service.ts';
import { picturesOfJob } from './pictures-of-job.service.ts';
import { getJob } from './ticket.service.ts';

export async function printBuildReport(
  shop: OpenShop,
  input: { jobId: number; copy: Copy; paper?: 'letter' | 'A4' | undefined },
): Promise<{ fileName: string; pdfBase64: string }> {
  const facts = await shop.read(async (reading) => ({
    ...(await factsOf(reading, input, shop.clock().slice(0, 10))),
    photos: await picturesForReport(reading, shop.file, input.jobId),
    onPictures: await picturesOfJob(reading, shop.file, input.jobId),
  }));
  const pdf = await paintInWorker(buildReport(facts));
  const fileName = `job ${facts.jobNumber} build report, ${input.copy} copy.pdf`;
  return { fileName, pdfBase64: pdf.toString('base64') };
}

async function factsOf(
  reading: Reading,
  input: { jobId: number; copy: Copy; paper?: 'letter' | 'A4' | undefined },
  printedOn: string,
): Promise<Omit<BuildReportFacts, 'photos' | 'onPictures'>> {
  const settings = await getSettings(reading);
  const job = await getJob(reading, input);
  const takes = await takesOfJob(reading, input.jobId, job.checks);
  const packs = await Promise.all(job.packs.map(({ packId }) => getPack(reading, { ...input, packId })));
  const clutches = new Map<number, readonly string[]>();
  for (const { packId } of packs) {
    const { estimate, checkingPressure_Pa } = await getClutch(reading, { ...input, packId });
    clutches.set(packId, estimateSentences(estimate, checkingPressure_Pa, settings));
  }
  const traces = new Map<number, KeptTrace[]>();
  for (const { latest } of job.checks) {
    if (latest) traces.set(latest.takeId, await listTraces(reading, latest));
  }
  const days = [...takes.values()]
    .flat()
    .map((take) => take.startedAt.slice(0, 10))
    .toSorted();
  const builders = new Set([...takes.values()].flat().map((take) => take.by));
  return {
    copy: input.copy,
    paper: input.paper ?? settings.paper,
    lengthUnit: settings.lengthUnit,
    decimalMark: settings.decimalMark,
    shopName: settings.shopName,
    isDemo: settings.isDemo,
    jobNumber: job.number,
    printedOn,
    customerName: job.customer.name,
    unit: unitOnPaper(job),
    complaint: job.complaint,
    distance: job.distance ? `${job.distance.amount.toLocaleString('en-US')} ${job.distance.unit}` : '',
    builtBy: [...builders].join(', ') || job.openedBy,
    builtFrom: days[0] ?? null,
    builtUntil: days.at(-1) ?? null,
    specRevision: job.revisionNumber,
    checks: job.checks.map((check) => checkFacts(check)),
    packs: packs
      .filter((pack) => pack.mockUps.length > 0)
      .map((pack) => ({
        ...packFacts(pack, job, takes.get(pack.checkId ?? 0) ?? [], traces, settings),
        clutch: clutches.get(pack.packId) ?? [],
      })),
    findings: await listFindings(reading, input),
    lists: await listListsOfJob(reading, { jobId: input.jobId, when: null }),
    superseded: job.checks.flatMap((check) => supersededOf(check, takes.get(check.checkId) ?? [])),
    warranty: settings.warranty,
    delivery: await deliveryFacts(reading, job.jobId, settings),
    cautions: [],
    notes: remarksOf(job.checks),
  };
}

async function deliveryFacts(
  reading: Reading,
  jobId: number,
  { decimalMark }: Settings,
): Promise<BuildReportFacts['delivery']> {
  const { delivery, warranty } = await getDelivery(reading, { jobId });
  if (!delivery) return null;
  const words = warranty ? warrantyWords(warranty, { decimalMark, sayDay: writeDay }) : 'no warranty';
  return { to: delivery.deliveredTo, on: delivery.deliveredOn, warranty: words };
}

/** Each remark once, with the checks it was made on. */
function remarksOf(checks: readonly CheckOfJob[]): string[] {
  const names = new Map<string, string[]>();
  for (const { name, latest } of checks) {
    for (const remark of latest?.remarks ?? []) names.set(remark, [...(names.get(remark) ?? []), name]);
  }
  return [...names].map(([remark, on]) => `${remark} (${on.join('; ')})`);
}

function checkFacts(check: CheckOfJob): CheckFacts {
  const { asFound, latest, limits, override } = check;
  const { lower, upper } = boundsOf(limits);
  // What was only read as found stands as found and as built: nothing was changed since.
  return {
    group: check.group,
    name: check.name,
    method: methodWords(latest?.method ?? check.method),
    unit: check.unit,
    limits: { low: lower, high: upper },
    target: limits.kind === 'target' ? limits.target : null,
    asFound: asFound?.value == null ? null : { value: asFound.value, expanded: asFound.expanded },
    final:
      latest?.value == null
        ? null
        : {
            value: latest.value,
            expanded: latest.expanded,
            min: latest.min ?? latest.value,
            max: latest.max ?? latest.value,
            spots: latest.spots,
          },
    verdict: shownVerdict(latest?.verdict ?? null, check.quantity),
    by: latest?.verdict.by ?? null,
    variantName: latest?.variantName ?? null,
    override: override && { by: override.by, reason: override.reason },
    supersededCount: latest?.supersededCount ?? 0,
    note: latest?.note ?? '',
  };
}

function packFacts(
  pack: PackOfJob,
  job: Job,
  takes: readonly Take[],
  traces: ReadonlyMap<number, readonly KeptTrace[]>,
  settings: Settings,
): Omit<PackFacts, 'clutch'> {
  const built = pack.mockUps.at(-1);
  const check = job.checks.find((each) => each.checkId === pack.checkId);
  const last = takes.findLast((take) => take.takeId === check?.latest?.takeId);
  const evaluation = last?.evaluation;
  const heights_nm = (built?.pieces ?? []).reduce((sum, { piece }) => sum + piece.height_nm, 0);
  const shownGap = built?.number === 0 ? null : (built?.predicted?.mean_nm ?? null);
  const firstPieces = new Set(pack.mockUps[0]?.pieces.map(({ piece }) => piece.pieceId));
  return {
    name: pack.name,
    pieces: pack.slots.flatMap((slot, index) => {
      const piece = built?.pieces.find((each) => each.slotId === slot.slotId)?.piece;
      if (!piece) return [];
      const isNew = !firstPieces.has(piece.pieceId);
      const label = slotName(pack.slots, index);
      return [{ kind: slot.kind, label, ...(piece.tag ? { tag: piece.tag } : {}), height_nm: piece.height_nm, isNew }];
    }),
    calculated_nm: shownGap ?? (pack.gap ? pack.gap.mean_nm - heights_nm : null),
    check: check ? checkFacts(check) : null,
    spots: (evaluation?.spots ?? []).map(({ degrees, value }) => ({ degrees, value })),
    harmonic: evaluation?.harmonic ?? null,
    mockUps: pack.mockUps.map((mockUp, index) => ({
      number: mockUp.number,
      changed: changesIn(pack, mockUp, pack.mockUps[index - 1], settings),
      predicted: mockUp.predicted && {
        value: mockUp.predicted.mean_nm,
        expanded: normalCoverageFactor(0.95) * mockUp.predicted.standardDeviation_nm,
      },
      read: mockUp.read && { value: mockUp.read.mean_nm, expanded: mockUp.read.expanded_nm },
      note: [...shopNote(mockUp), ...mockUp.suspects].join(' '),
    })),
    setup: last?.setup ? setupLines(last.setup) : [],
    traces: last ? standingTraces(last, traces.get(last.takeId) ?? []) : [],
  };
}

function standingTraces({ readings }: Take, traces: readonly KeptTrace[]): PackFacts['traces'] {
  return traces.flatMap((trace) => {
    const reading = readings.find(({ readingId }) => readingId === trace.readingId);
    return reading && reading.supersededById === null ? [{ ...trace, spot: reading.spot }] : [];
  });
}

// What only says again that it was found, or names the swap that stands beside it, is left out.
function shopNote({ note }: MockUp): string[] {
  return note === '' || note === 'as found' || /→/.test(note) ? [] : [note];
}

/** "steel 2: 76.5 → 83.0", or nothing where nothing changed. */
function changesIn(pack: PackOfJob, mockUp: MockUp, before: MockUp | undefined, settings: Settings): string {
  const shown = (height_nm: number) => formatLength(height_nm, settings.lengthUnit, undefined, settings.decimalMark);
  return changesBetween(pack.slots, before?.pieces ?? [], mockUp.pieces, shown).join(', ');
}

function supersededOf(check: CheckOfJob, takes: readonly Take[]): BuildReportFacts['superseded'][number][] {
  return takes.flatMap(({ readings }) =>
    readings.flatMap((misread) => {
      const right = readings.find((reading) => reading.readingId === misread.supersededById);
      if (!right) return [];
      return [{ check: check.name, typed: misread.typed, putRight: right.typed, reason: right.reason, by: right.by }];
    }),
  );
}
