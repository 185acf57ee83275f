// Lists: what is answered, where a line stands, and when the gates that ask for them open.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseAnswer, sayAnswer } from '../../app/jobs/answer-text.ts';
import { isSettled, standingOfLine } from '../../app/jobs/list-answers.ts';
import type { Answer } from '../../app/jobs/lists.contract.ts';
import { type NeedFacts, whatIsMissing } from '../../app/jobs/unmet-needs.ts';
import { asksText, parseAsks } from '../../app/specs/asks-text.ts';
import type { Asks, ListTime } from '../../app/specs/spec-list.ts';
import { beforeTheRing, tradeLists } from '../../app/specs/trade-lists.ts';
import { openJob } from '../../main/shop/demo/kx3-job.ts';
import { answerLists } from '../../main/shop/demo/kx3-lists.ts';
import { kx3Sheet } from '../../main/shop/demo/kx3-sheet.ts';
import { shopWithKx3 } from '../desk.ts';

const count = (expected: number): Asks => ({ kind: 'count', expected });
const faces: Asks = {
  kind: 'choice',
  options: [
    { words: 'smooth', isGood: true },
    { words: 'polished', isGood: true },
    { words: 'scored', isGood: false },
  ],
};
const stall: Asks = { kind: 'stall', lowRpm: 2100, highRpm: 2400, longestSeconds: 5 };

describe('a typed answer', () => {
  test.each<[Asks, string, string]>([
    [{ kind: 'tick' }, '', 'done'],
    [{ kind: 'tick' }, 'n', 'not so'],
    [{ kind: 'words' }, '-', 'does not apply'],
    [{ kind: 'words' }, 'dark fines', 'dark fines'],
    [count(4), '4', '4'],
    [count(5), '4', '4 in, 5 asked for'],
    [faces, '3', 'scored'],
    [faces, 'po', 'polished'],
    [{ kind: 'change' }, '.062 > .086', '.062 → .086'],
    [stall, '2250 4', '2250 rpm for 4 s'],
    [stall, '2250 rpm, 7 s', '2250 rpm for 7 s: over the cap of 5 s'],
    [stall, '2000 4', '2000 rpm for 4 s: low by 100 rpm'],
  ])('to %j of “%s” says %s', (asks, typed, said) => {
    const read = parseAnswer(asks, typed);
    expect(read.ok && sayAnswer(asks, read.value)).toBe(said);
  });

  test.each<[Asks, string]>([
    [count(4), 'four'],
    [count(4), ''],
    [faces, 's'],
    [faces, '4'],
    [{ kind: 'words' }, ' '],
    [{ kind: 'change' }, '.086'],
    [stall, '2250'],
  ])('to %j of “%s” is asked for again', (asks, typed) => {
    expect(parseAnswer(asks, typed).ok).toBe(false);
  });
});

// A line with an answer of which it is known beforehand whether it keeps a gate shut.
const none = null as Answer | null;
const lines: fc.Arbitrary<{ asks: Asks; answer: Answer | null; isGood: boolean }> = fc.oneof(
  fc
    .constantFrom<Asks>({ kind: 'tick' }, { kind: 'words' }, { kind: 'change' }, count(4), faces, stall)
    .chain((asks) =>
      fc.constantFrom(
        { asks, answer: none, isGood: false },
        { asks, answer: { kind: 'not so' } as const, isGood: false },
        { asks, answer: { kind: 'does not apply' } as const, isGood: true },
      ),
    ),
  fc.constant({ asks: { kind: 'tick' } as const, answer: { kind: 'done' } as const, isGood: true }),
  fc.nat(9).map((counted) => ({
    asks: count(4),
    answer: { kind: 'counted', count: counted } as const,
    isGood: counted === 4,
  })),
  fc.constantFrom('smooth', 'polished', 'scored').map((option) => ({
    asks: faces,
    answer: { kind: 'chosen', option } as const,
    isGood: option !== 'scored',
  })),
  fc.tuple(fc.integer({ min: 2000, max: 2500 }), fc.integer({ min: 1, max: 9 })).map(([rpm, seconds]) => ({
    asks: stall,
    answer: { kind: 'stalled', rpm, seconds } as const,
    isGood: !(rpm < 2100) && !(rpm > 2400) && !(seconds > 5),
  })),
);
const answered = fc.record({ line: lines, reason: fc.constantFrom('', ' ', 'customer wants it so') });
const times: readonly ListTime[] = ['as found', 'teardown', 'build', 'final', 'delivery'];
const needOf = { teardown: 'teardown lists done', build: 'build lists done', final: 'final lists done' } as const;

const facts: Omit<NeedFacts, 'lists'> = {
  complaint: '',
  packs: [],
  checks: [],
  promisedOn: null,
  estimate: 'to give',
  isSignedOff: false,
  isDelivered: false,
  undecided: [],
  openCores: [],
  unmeasuredPlates: [],
};

test('a gate opens exactly when every line of its lists is good, does not apply, or is off with a reason', () => {
  fc.assert(
    fc.property(
      fc.array(fc.record({ when: fc.constantFrom(...times), lines: fc.array(answered, { maxLength: 4 }) }), {
        maxLength: 5,
      }),
      (sheet) => {
        const lists = sheet.map(({ when, lines: asked }, index) => ({
          name: `List ${index + 1}`,
          when,
          openLines: asked.filter(({ line, reason }) => !isSettled(standingOfLine(line.asks, line.answer), reason))
            .length,
        }));
        for (const [when, need] of Object.entries(needOf)) {
          const all = sheet.filter((list) => list.when === when).flatMap((list) => list.lines);
          const isOpen = all.every(
            ({ line, reason }) => line.isGood || (line.answer !== null && reason === 'customer wants it so'),
          );
          expect(whatIsMissing(need, { ...facts, lists }) === null).toBe(isOpen);
        }
      },
    ),
  );
});

test('what a line expects is read back as it was written', () => {
  for (const asks of [count(4), faces, stall, { kind: 'tick' } as const]) {
    expect(parseAsks(asks.kind, asksText(asks))).toEqual({ ok: true, value: asks });
  }
  expect(parseAsks('stall', '2100-2400, 5 s')).toEqual({ ok: true, value: stall });
  expect(parseAsks('choice', 'smooth').ok).toBe(false);
});

test('a set to start from counts what the slots of each pack hold, and says how they lie', () => {
  // Hand count: Low/reverse of the example unit holds one wave plate, five steels and five frictions.
  const lowReverse = kx3Sheet.packs.find(({ name }) => name === 'Low/reverse')!;
  const dished = { ...lowReverse, slots: lowReverse.slots.with(0, { ...lowReverse.slots[0]!, facing: 'dish up' }) };
  expect(beforeTheRing(dished).map(({ words, asks }) => [words, asksText(asks)])).toEqual([
    ['Frictions', '5'],
    ['Steels', '5'],
    ['Wave plates', '1'],
    ['Wave plate: dish up', ''],
    ['Backing plate at the ring end', ''],
    ['Ring seated all round', ''],
  ]);
  const lists = tradeLists(kx3Sheet.packs);
  expect(new Set(lists.map(({ sourceNote }) => sourceNote))).toEqual(new Set(['common practice, no source']));
  expect(lists.filter(({ packName }) => packName !== null).map(({ name }) => name)).toEqual([
    'Forward before the snap ring',
    'Direct before the snap ring',
    'Low/reverse before the snap ring',
  ]);
});

describe('on a real job', () => {
  test('answers stay, the newest counts, and what is off holds the job until somebody says why', async () => {
    const { call, refusal, familyId, by } = await shopWithKx3();
    const job = await openJob(call, familyId, by);
    const { jobId, sheet } = job;
    expect(sheet.lists.map(({ lines: asked, ...list }) => ({ ...list, asked: asked.length }))).toMatchObject(
      kx3Sheet.lists.map(({ lines: asked, ...list }) => ({ ...list, asked: asked.length })),
    );
    const stages = await call('jobs.listStages', {});
    const stageId = (name: string) => stages.find((each) => each.name === name)?.stageId;
    await call('jobs.moveToStage', { jobId, stageId: stageId('Build'), reason: 'came in apart', by });
    const past = { jobId, stageId: stageId('Final check'), by };
    await call('jobs.changeStageNeeds', { stageId: stageId('Build'), needs: ['build lists done'], by });
    await answerLists(job, 'build');
    const balls = sheet.lists.flatMap((list) => list.lines).find(({ words }) => words === 'Check balls');
    const answer = (counted: number, reason = '') =>
      call('jobs.answerLine', {
        jobId,
        lineId: balls?.lineId,
        answer: { kind: 'counted', count: counted },
        reason,
        by,
      });
    expect(await answer(4)).toEqual({ standing: 'off', isSettled: false });
    expect((await refusal('jobs.moveToStage', past)).message).toBe('Before Final check: Valve body (1): lines open.');
    const [valveBody] = (await call('jobs.listListsOfJob', { jobId, when: 'build' })).filter(
      ({ name }) => name === 'Valve body',
    );
    expect(valveBody?.lines.find(({ words }) => words === 'Check balls')).toMatchObject({
      standing: 'off',
      earlier: 1,
      given: { answer: { kind: 'counted', count: 4 }, by: 'RA' },
    });
    expect(await answer(4, 'one left out on purpose')).toEqual({ standing: 'off', isSettled: true });
    await call('jobs.moveToStage', past);
    const said = (await call('jobs.getHistory', { jobId })).filter(({ kind }) => kind === 'list');
    expect(
      said.filter(({ says }) => says.startsWith('Valve body, Check balls')).map(({ says, more }) => [says, more]),
    ).toEqual([
      ['Valve body, Check balls: 5', ''],
      ['Valve body, Check balls: 4 in, 5 asked for', ''],
      ['Valve body, Check balls: 4 in, 5 asked for', 'one left out on purpose'],
    ]);
    expect(
      (await call('jobs.listJobs', { text: 'left out on', includeClosed: true })).map((each) => each.jobId),
    ).toEqual([jobId]);
  });

  test('an answer after the sign-off has to be signed off again', async () => {
    const { call, familyId, by } = await shopWithKx3();
    const job = await openJob(call, familyId, by);
    await answerLists(job, 'build');
    await call('jobs.signOff', { jobId: job.jobId, place: 'on stand', note: '', by });
    expect((await call('jobs.getJob', { jobId: job.jobId })).signOff?.isOutdated).toBe(false);
    await answerLists(job, 'final');
    expect((await call('jobs.getJob', { jobId: job.jobId })).signOff?.isOutdated).toBe(true);
  });

  test('an answer that the line did not ask for, a line of another sheet and a closed job are refused', async () => {
    const { call, refusal, familyId, by } = await shopWithKx3();
    const { jobId, sheet } = await openJob(call, familyId, by);
    const lineId = sheet.lists[0]?.lines[0]?.lineId;
    const given = { jobId, lineId, answer: { kind: 'counted', count: 4 }, by };
    expect(await refusal('jobs.answerLine', given)).toMatchObject({ code: 'answer' });
    expect(await refusal('jobs.answerLine', { ...given, lineId: 9999 })).toMatchObject({ code: 'not-found' });
    const closed = (await call('jobs.listStages', {})).find(({ isClosed }) => isClosed);
    await call('jobs.moveToStage', { jobId, stageId: closed?.stageId, reason: 'given back as it is', by });
    const fits = { ...given, answer: { kind: 'written', words: 'fines' } };
    expect(await refusal('jobs.answerLine', fits)).toMatchObject({ code: 'job-closed' });
  });

  test('a sheet with a wrong list is not saved, and says which', async () => {
    const { refusal, familyId, by } = await shopWithKx3();
    const save = (lists: unknown) =>
      refusal('specs.saveSheet', { familyId, sheet: { ...kx3Sheet, lists }, sourceNote: '', by });
    const list = {
      name: 'Final',
      when: 'final',
      packName: null,
      sourceNote: '',
      lines: [{ words: 'Fluid', asks: { kind: 'words' } }],
    };
    expect((await save([list, list])).message).toContain('two lists called Final');
    expect((await save([{ ...list, packName: 'Third' }])).message).toContain('a pack called Third');
    expect((await save([{ ...list, lines: [...list.lines, ...list.lines] }])).message).toContain('twice for Fluid');
    const backwards = { words: 'Stall', asks: { ...stall, lowRpm: 2500 } };
    expect((await save([{ ...list, lines: [backwards] }])).message).toContain('2500 rpm is not below');
  });
});
