// Which delivered builds share a batch, a plate, a gauge that was found out, or a finding; and what may be asked for.
import type { BuildThatShares, BuildToCall, SharedThing } from '../../app/comebacks/calls.contract.ts';
import { serviceUntil } from '../../app/comebacks/service-until.ts';
import { doneWords } from '../../app/jobs/finding-words.ts';
import { writeDay } from '../../app/papers/dates.ts';
import { found } from '../database/errors.ts';
import type { Reading } from '../database/tables.ts';
import { listFoundOut } from '../gauges/register.service.ts';
import { listTouched } from '../gauges/touched.service.ts';
import { dayHere, zoneHere } from '../ports/clock.ts';
import { findPlates } from '../shop/find-anything.repository.ts';
import { trailOf } from '../stock/tracing.service.ts';
import { sameUnits } from './builds.repository.ts';
import { buildAsDelivered } from './builds.service.ts';
import { listUnitsToCall } from './calls.repository.ts';
import { distanceOf, listComebacksOf } from './log.repository.ts';
import * as repository from './sharing.repository.ts';

/** What a ticket has of the thing asked about, one line each. */
type Share = { readonly jobId: number; readonly what: string };

const mostBuilds = 300;

export async function listSharing(reading: Reading, today: string, { of }: { of: SharedThing }) {
  const { title, shares, caution } = await sharesOf(reading, of);
  const jobIds = [...new Set(shares.map((share) => share.jobId))];
  const delivered = await repository.deliveredOf(reading, jobIds);
  const builds: BuildThatShares[] = [];
  for (const jobId of delivered.slice(0, mostBuilds)) {
    const onList = await listUnitsToCall(reading, jobId);
    builds.push({
      ...(await buildToCall(reading, today, jobId)),
      what: [...new Set(shares.filter((share) => share.jobId === jobId).map((share) => share.what))],
      isOnList: onList.some((each) => each.what === title),
    });
  }
  const more = delivered.length - builds.length;
  return {
    title,
    builds,
    stillHere: jobIds.length - delivered.length,
    caution: [more > 0 ? `${more} older builds are not shown.` : '', caution].filter(Boolean).join(' '),
  };
}

/** A build as it stands today: where its unit was seen last, and what it came back as. */
export async function buildToCall(reading: Reading, today: string, jobId: number): Promise<BuildToCall> {
  const build = await buildAsDelivered(reading, jobId);
  const seen = await repository.newestTicketSince(reading, await sameUnits(reading, build.unit), jobId);
  const seenSince = seen
    ? { jobId: seen.job_id, number: seen.number, on: dayHere(seen.opened_at), distance: distanceOf(seen) }
    : null;
  const comebacks = (await listComebacksOf(reading, [jobId])).filter((each) => each.built_job_id === jobId);
  const until = [today, ...comebacks.map((each) => each.came_back_on)].toSorted()[0] ?? today;
  return {
    ...build,
    service: serviceUntil({ ...build, ...build.left }, until, seenSince?.distance ?? null),
    seenSince,
    cameBack: comebacks.map(({ comeback_id, number, came_back_on, outcome }) => ({
      comebackId: comeback_id,
      number,
      cameBackOn: came_back_on,
      outcome,
    })),
  };
}

type Shares = { readonly title: string; readonly shares: readonly Share[]; readonly caution: string };

async function sharesOf(reading: Reading, of: SharedThing): Promise<Shares> {
  switch (of.kind) {
    case 'batch':
    case 'plate': {
      const { title, goings, caution } = await trailOf(reading, of);
      return { title, shares: goings.filter((going) => going.isStillIn), caution };
    }
    case 'gauge': {
      const touched = await listTouched(reading, zoneHere(), of);
      return {
        title: `${touched.tag}, found out on ${writeDay(touched.foundOn)}`,
        shares: touched.takes.map(({ jobId, checkName, word, couldSay }) => ({
          jobId,
          what:
            couldSay.length === 0
              ? `${checkName}: ${word} all the same`
              : `${checkName}: ${word}, could be ${couldSay.join(' or ')}`,
        })),
        caution: 'Only readings that name their gauge can be listed.',
      };
    }
    case 'finding':
      return sharesOfFinding(reading, of.findingId);
  }
}

/** A build has it by its own teardown, or by what was found when it came back. */
async function sharesOfFinding(reading: Reading, findingId: number): Promise<Shares> {
  const same = found(await repository.ticketsWithSameFinding(reading, findingId), 'finding');
  return {
    title: `${same.part} ${same.condition}, ${same.family_name}`,
    shares: same.tickets.flatMap(({ job_id, number, decision, built_job_id }) => [
      { jobId: job_id, what: `found at its teardown, ${doneWords[decision]}` },
      ...(built_job_id === null ? [] : [{ jobId: built_job_id, what: `found when it came back as job ${number}` }]),
    ]),
    caution: '',
  };
}

const mostOfAKind = 6;

type Suggestion = { of: SharedThing; says: string; more: string };

export async function suggestShared(reading: Reading, { text }: { text: string }): Promise<Suggestion[]> {
  const words = text.split(/\s+/).filter((word) => word !== '');
  const holdsAll = (says: string) => words.every((word) => says.toLowerCase().includes(word.toLowerCase()));
  const gauges = (await listFoundOut(reading)).map(
    ({ gaugeCheckId, tag, checkedOn }): Suggestion => ({
      of: { kind: 'gauge', gaugeCheckId },
      says: tag,
      more: `gauge, found out on ${writeDay(checkedOn)}`,
    }),
  );
  const findings = (await repository.findingsHolding(reading, words, mostOfAKind)).map(
    ({ finding_id, part, condition, family_name, times }): Suggestion => ({
      of: { kind: 'finding', findingId: finding_id },
      says: `${part} ${condition}`,
      more: `finding, ${family_name}, ${times === 1 ? 'on one ticket' : `on ${times} tickets`}`,
    }),
  );
  return [
    ...gauges.filter(({ says }) => holdsAll(says)).slice(0, mostOfAKind),
    ...(words.length === 0 ? await batchesThatCameBack(reading) : await batchesNamed(reading, words)),
    ...(words.length === 0 ? [] : await platesNamed(reading, words)),
    ...findings,
  ];
}

type BatchRow = Awaited<ReturnType<typeof repository.batchesHolding>>[number];

function batchSuggestion(
  { batch_id, number, description, mark, document, received_on }: BatchRow,
  more: string,
): Suggestion {
  return {
    of: { kind: 'batch', batchId: batch_id },
    says: `${number}, ${mark || document || writeDay(received_on)}`,
    more: [`batch of ${description}`, more].filter(Boolean).join(', '),
  };
}

async function batchesNamed(reading: Reading, words: readonly string[]): Promise<Suggestion[]> {
  const rows = await repository.batchesHolding(reading, words, mostOfAKind);
  return rows.map((row) => batchSuggestion(row, `came in ${writeDay(row.received_on)}`));
}

async function batchesThatCameBack(reading: Reading): Promise<Suggestion[]> {
  const rows = await repository.batchesThatCameBack(reading, mostOfAKind);
  return rows.map((row) =>
    batchSuggestion(row, row.times === 1 ? 'in one that came back' : `in ${row.times} that came back`),
  );
}

async function platesNamed(reading: Reading, words: readonly string[]): Promise<Suggestion[]> {
  const rows = await findPlates(reading, { words, limit: mostOfAKind });
  return rows.map(({ piece_id, tag, outline, kind }) => ({
    of: { kind: 'plate', pieceId: piece_id },
    says: tag,
    more: `${kind}, ${outline}`,
  }));
}
