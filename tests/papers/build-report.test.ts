import { describe, expect, test } from 'vitest';
import { unitWords } from '../../app/charts/amounts.ts';
import { buildReport } from '../../app/papers/build-report.ts';
import { limitsText, summary } from '../../app/papers/build-report-checks.ts';
import type { BuildReportFacts, CheckFacts } from '../../app/papers/build-report-facts.ts';
import { writeDay, writeDays } from '../../app/papers/dates.ts';
import type { Block } from '../../app/papers/paper.ts';
import { check, forward, forwardPack, kx3, thou } from './kx3-report.ts';

const sumUp = (checks: readonly CheckFacts[]) => summary({ ...kx3, checks });
const out = { ...forward, name: 'Forward', verdict: 'loose', by: thou(2) } as const;
const close = { ...forward, verdict: 'too close to call' } as const;
const notRead = check('Servo', 'Servo travel', '', { low: 100, high: 150 }, null);

describe('the sentence that sums up', () => {
  test('all in', () => {
    expect(sumUp([forward, forward])).toMatchObject({
      verdict: 'in',
      sentence: 'All 2 measured checks are in.',
      aside: '',
    });
    expect(sumUp([forward])).toMatchObject({ sentence: 'The one measured check is in.' });
  });

  test('what is out comes first and is named', () => {
    expect(sumUp([out, { ...out, name: 'Direct', verdict: 'tight' }, forward, close, notRead])).toMatchObject({
      verdict: 'loose',
      sentence: '2 of 4 measured checks are out, 1 is too close to call, 1 is not read.',
      aside: 'Out: Forward, Direct.',
    });
  });

  test('too close to call and not read are never called in', () => {
    expect(sumUp([forward, close])).toMatchObject({
      verdict: 'too close to call',
      sentence: '1 of 2 measured checks is too close to call.',
    });
    expect(sumUp([forward, notRead])).toMatchObject({
      verdict: 'not read',
      sentence: 'The one measured check is in, 1 is not read.',
    });
    expect(sumUp([])).toMatchObject({ verdict: 'not read', sentence: 'Nothing has been measured.' });
  });

  test('an override is counted beside what is out, not instead of it', () => {
    expect(sumUp([{ ...out, override: { by: 'RA', reason: 'x' } }])).toMatchObject({
      sentence: 'The one measured check is out.',
      aside: 'Out: Forward. 1 stands as it is by decision of the shop.',
    });
  });
});

describe('limits', () => {
  const inThou = (low: number | null, high: number | null) =>
    limitsText({ low: low === null ? null : thou(low), high: high === null ? null : thou(high) }, unitWords('thou'));

  test('carry as many decimals as the finer of the two needs', () => {
    expect(inThou(20, 30)).toBe('20–30');
    expect(inThou(0.8, 2)).toBe('0.8–2.0');
    expect(inThou(1, 3.5)).toBe('1.0–3.5');
  });

  test('say at least and at most by sign', () => {
    expect(inThou(10, null)).toBe('≥ 10');
    expect(inThou(null, 10)).toBe('≤ 10');
    expect(inThou(null, null)).toBe('');
  });

  test('keep three decimals in millimetres: 20–30 thou is 0.508–0.762 mm', () => {
    expect(limitsText({ low: thou(20), high: thou(30) }, unitWords('mm', ','))).toBe('0,508–0,762');
  });
});

describe('days', () => {
  test('are written as a person writes them', () => {
    expect(writeDay('2026-11-26')).toBe('26 November 2026');
    expect(writeDays('2026-11-23', '2026-11-26')).toBe('23–26 November');
    expect(writeDays('2026-11-30', '2026-12-02')).toBe('30 November – 2 December');
    expect(writeDays('2026-11-23', '2026-11-23')).toBe('23 November');
  });
});

describe('the report as data', () => {
  const closingOf = (facts: BuildReportFacts) =>
    buildReport(facts).blocks.find((block): block is Block & { kind: 'closing' } => block.kind === 'closing')!;

  test('draws the packs of one row on one scale, so that they compare', () => {
    const [forwardChart, directChart] = closingOf(kx3).versions[0]!;
    const backing = (chart: typeof forwardChart) =>
      chart!.shapes
        .filter((shape) => shape.kind === 'rect' && shape.depicts === 'piece')
        .map((shape) => (shape as { height: number }).height)[8]!;
    expect(backing(directChart) / backing(forwardChart)).toBeCloseTo(310 / 250, 2);
  });

  test('marks a calculated clearance that the reading did not repeat, and only that', () => {
    const words = closingOf(kx3)
      .notes.flat()
      .map((each) => each.text);
    expect(words).toContain('* Forward by calculation. By air it read 26.0 ± 1.5, from 25 to 27 around the drum.');
    expect(words.some((each) => each.startsWith('* Direct'))).toBe(false);
  });

  test('draws the clearance that was read where the gap is not known', () => {
    const [chart] = closingOf({ ...kx3, packs: [{ ...forwardPack, calculated_nm: null }] }).versions[0]!;
    expect(chart!.title).toContain('Clearance 26.0.');
  });

  test('a pressure is low or high where a clearance is tight or loose', () => {
    const low = check(
      'Line pressure',
      'Idle',
      '',
      { low: 70, high: 90 },
      [60, null],
      { verdict: 'tight', by: 10 * 6895 },
      (psi) => psi * 6895,
      'psi',
    );
    expect(JSON.stringify(buildReport({ ...kx3, checks: [low] }).blocks)).toContain(
      '"verdict":"low","text":"low by 10.0"',
    );
  });

  test('tells the customer when it was handed over and how long the warranty runs', () => {
    const delivery = { to: 'Mrs Okoro', on: '2026-11-27', warranty: 'until 27 November 2027' };
    const facts = (report: typeof kx3) =>
      buildReport(report).blocks.flatMap((block) => (block.kind === 'facts' ? block.facts : []));
    const handedOver = { name: 'Handed over', value: '27 November 2026, to Mrs Okoro' };
    for (const copy of ['customer', 'shop'] as const) {
      expect(facts({ ...kx3, copy, delivery })).toContainEqual(handedOver);
      expect(facts({ ...kx3, copy, delivery })).toContainEqual({ name: 'Warranty', value: 'until 27 November 2027' });
    }
    expect(facts(kx3).map(({ name }) => name)).not.toContain('Handed over');
  });

  test('moves a warranty too long for the foot among the notes', () => {
    const long =
      'twelve months or twelve thousand miles, whichever comes first, from the day in service, parts and labour, cooler excepted';
    expect(buildReport(kx3).foot.middle).toBe(`Warranty: ${kx3.warranty}`);
    const report = buildReport({ ...kx3, warranty: long });
    expect(report.foot.middle).toBe('');
    expect(
      closingOf({ ...kx3, warranty: long })
        .notes.flat()
        .map((each) => each.text),
    ).toContain(`Warranty: ${long}`);
  });
});
