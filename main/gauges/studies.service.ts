// Repeat tests: begin one, hand out what to read next, take readings one by one, and say what it came to.
import type { Study, StudyHead } from '../../app/gauges/studies.contract.ts';
import { studyRows } from '../../app/gauges/study-cells.ts';
import { type StudyPlace, studyOrder } from '../../app/gauges/study-order.ts';
import { studyResults } from '../../app/gauges/study-results.ts';
import { parseAmount } from '../../app/quantities/parse-amount.ts';
import { lineField } from '../../app/readings/line-field.ts';
import type { PooledMethod } from '../../app/readings/take-figures.ts';
import { parseLine, valueOfReading } from '../../app/readings/typed-line.ts';
import { accepted, found, Refused } from '../database/errors.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { getSettings, personAtWork } from '../shop/shop.service.ts';
import { gaugeAtHand } from './register.service.ts';
import * as repository from './studies.repository.ts';

export async function listStudies(reading: Reading): Promise<StudyHead[]> {
  return (await knownStudies(reading, await repository.listStudies(reading))).map(({ head }) => head);
}

export async function getStudy(reading: Reading, { studyId }: { studyId: number }): Promise<Study> {
  const { head, order, reads, size, seed } = await oneStudy(reading, studyId);
  const placeAt = (index: number) => {
    const at = order[index];
    return at ? { place: index + 1, ...namesOf(at, head) } : null;
  };
  const isRead = head.taken === head.outOf;
  const rows = studyRows(
    size,
    seed,
    reads.map((read) => read.amount_nm),
  );
  const results = isRead ? studyResults(rows, head.tolerance_nm) : null;
  return {
    ...head,
    next: placeAt(reads.length),
    before: reads.length === 0 ? null : placeAt(reads.length - 1),
    results: results?.ok
      ? {
          ...results.value,
          lines: [...results.value.lines],
          byRanges: results.value.byRanges && [...results.value.byRanges],
        }
      : null,
    why: results && !results.ok ? results.refusal.message : null,
    // Nobody sees what was read before the last reading is in.
    reads: isRead
      ? reads.flatMap((read, index) => {
          const place = placeAt(index);
          return place ? [{ ...place, amount_nm: read.amount_nm, typed: read.typed }] : [];
        })
      : [],
  };
}

export async function startStudy(
  writing: Writing,
  now: string,
  seed: number,
  input: {
    name: string;
    method: PooledMethod;
    gaugeId: number | null;
    parts: readonly string[];
    people: readonly number[];
    trials: number;
    tolerance: string;
    by: number;
  },
) {
  await personAtWork(writing, input.by);
  for (const personId of input.people) await personAtWork(writing, personId);
  if (new Set(input.people).size < input.people.length) {
    throw new Refused('person-twice', 'Everybody reads once a round: name each of them once.', 'people');
  }
  if (new Set(input.parts).size < input.parts.length) {
    throw new Refused('part-twice', 'Two parts have the same name: they could not be told apart.', 'parts');
  }
  if (input.gaugeId !== null) {
    await gaugeAtHand(writing, input.gaugeId, { name: 'these parts', quantity: 'length' }, input.method);
  }
  const studyId = await repository.insertStudy(
    writing,
    {
      name: input.name,
      method: input.method,
      gauge_id: input.gaugeId,
      trials: input.trials,
      tolerance_nm: input.tolerance === '' ? null : await widthTyped(writing, input.tolerance),
      seed,
      started_at: now,
      started_by: input.by,
    },
    input.parts,
    input.people,
  );
  return { studyId };
}

export async function recordStudyRead(
  writing: Writing,
  now: string,
  input: { studyId: number; place: number; typed: string; by: number },
) {
  await personAtWork(writing, input.by);
  const { head, reads } = await oneStudy(writing, input.studyId);
  if (reads.length === head.outOf) throw new Refused('all-read', 'Every reading of this test is in.');
  if (input.place !== reads.length + 1) throw new Refused('other-place', 'That reading is in: read what is asked now.');
  const amount_nm = await amountTyped(writing, head.method, input.typed);
  await repository.insertRead(writing, {
    study_id: input.studyId,
    place: input.place,
    typed: input.typed,
    amount_nm,
    supersedes_id: null,
    reason: '',
    taken_at: now,
    taken_by: input.by,
  });
  return {};
}

export async function supersedeStudyRead(
  writing: Writing,
  now: string,
  input: { studyId: number; place: number; typed: string; reason: string; by: number },
) {
  await personAtWork(writing, input.by);
  const { head, reads } = await oneStudy(writing, input.studyId);
  const misread = found(reads[input.place - 1], 'reading');
  await repository.insertRead(writing, {
    study_id: input.studyId,
    place: input.place,
    typed: input.typed,
    amount_nm: await amountTyped(writing, head.method, input.typed),
    supersedes_id: misread.study_read_id,
    reason: input.reason,
    taken_at: now,
    taken_by: input.by,
  });
  return {};
}

async function oneStudy(reading: Reading, studyId: number) {
  const row = found(await repository.findStudy(reading, studyId), 'repeat test');
  return found((await knownStudies(reading, [row]))[0], 'repeat test');
}

async function knownStudies(reading: Reading, rows: readonly repository.StudyRowOfFile[]) {
  const ids = rows.map((row) => row.study_id);
  const parts = await repository.partsOfStudies(reading, ids);
  const people = await repository.peopleOfStudies(reading, ids);
  const reads = await repository.readsOfStudies(reading, ids);
  return rows.map((row) => {
    const hands = people.get(row.study_id) ?? [];
    const names = (parts.get(row.study_id) ?? []).map(({ name }) => name);
    const size = { parts: names.length, people: hands.length, trials: row.trials };
    const taken = reads.get(row.study_id) ?? [];
    const head: StudyHead = {
      studyId: row.study_id,
      name: row.name,
      method: row.method,
      gauge: row.gauge_id === null ? null : { gaugeId: row.gauge_id, tag: row.tag ?? '' },
      parts: names,
      people: hands.map((hand) => ({ personId: hand.person_id, initials: hand.initials, name: hand.name })),
      trials: row.trials,
      tolerance_nm: row.tolerance_nm,
      startedAt: row.started_at,
      by: row.initials,
      taken: taken.length,
      outOf: size.parts * size.people * size.trials,
    };
    return { head, size, seed: row.seed, order: studyOrder(size, row.seed), reads: taken };
  });
}

function namesOf({ part, person, trial }: StudyPlace, { parts, people }: StudyHead) {
  return { part: parts[part] ?? '', initials: people[person]?.initials ?? '', round: trial + 1 };
}

async function amountTyped(reading: Reading, method: PooledMethod, typed: string): Promise<number> {
  const field = lineField({ quantity: 'length', unit: 'thou' }, method, null, await getSettings(reading));
  const line = accepted(parseLine(typed, { ...field, isZeroedAgain: false, meaning: 'total' }), 'typed');
  const value = valueOfReading(line);
  if (value === null)
    throw new Refused('air-only', 'Air only is no clearance: type push-down and air travel.', 'typed');
  return value;
}

async function widthTyped(reading: Reading, typed: string): Promise<number> {
  const { lengthUnit, decimalMark } = await getSettings(reading);
  const width = accepted(
    parseAmount(typed, { quantity: 'length', unit: lengthUnit, decimalMark, what: 'the width of the band' }),
    'tolerance',
  );
  if (width <= 0) throw new Refused('not-positive', 'A band is wider than nothing.', 'tolerance');
  return width;
}
