// What speaks for a cause, what against it and what is missing, on shops made by hand.
import { describe, expect, test } from 'vitest';
import { asFoundNow } from '../../app/comebacks/as-found-now.ts';
import type { CauseFacts } from '../../app/comebacks/cause-facts.ts';
import { type Cause, causes } from '../../app/comebacks/causes.ts';
import { causesOfTrace } from '../../app/comebacks/causes-of-trace.ts';
import type { RecordedBuild } from '../../app/comebacks/recorded-build.ts';
import { traceBuild } from '../../app/comebacks/trace-build.ts';
import { answered, build, builds, clearance, foundPart, psi, recorded, words } from './hand-made.ts';

const siblings = builds(40, (index) => ({
  checks: [
    clearance('Forward clearance', 23 + (index % 5)),
    clearance('Direct clearance', 44 + (index % 4)),
    recorded('Port A, Forward', { amount: (3 + (index % 3)) * psi }),
    recorded('Line, idle, D', { amount: (80 + (index % 6)) * psi }),
    recorded('Cooler flow in 30 s', { amount: 1_200_000 + (index % 9) * 10_000 }),
  ],
  lines: [
    answered('Forward before the snap ring', 'Frictions', { kind: 'counted', count: 4 }),
    answered('Valve body', 'Check balls', { kind: 'counted', count: 5 }),
  ],
}));

const usual = siblings[3]!;

function facts(of: Partial<RecordedBuild>, more: Partial<CauseFacts> = {}): CauseFacts {
  const came = build(99, { ...usual, jobId: 99, ...of });
  const { findings } = traceBuild(came, siblings, words);
  return { build: came, returnJobId: 100, findings, asFound: [], found: [], quietBatches: [], words, ...more };
}

function asked(cause: Cause, given: CauseFacts, said = new Map()) {
  const { causes: all } = causesOfTrace(given, said);
  return { ...all.find((each) => each.cause === cause)!, position: all.findIndex((each) => each.cause === cause) };
}

const sentences = (lines: ReadonlyArray<{ sentence: string }>) => lines.map(({ sentence }) => sentence);

describe('what speaks for a cause', () => {
  test('a tight pack speaks for too tight, and the others stand against', () => {
    const checks = usual.checks.with(0, clearance('Forward clearance', 21));
    const tight = asked('too tight', facts({ checks }));
    expect(tight.position).toBe(0);
    expect(sentences(tight.speaksFor)).toEqual(['Forward clearance 21.0 thou: tighter than all 40 builds.']);
    expect(sentences(tight.speaksAgainst)).toEqual(['Direct clearance: as in other builds.']);
    expect(sentences(asked('too loose', facts({ checks })).speaksFor)).toEqual([]);
  });

  test('a circuit that lost more, and the only pack hurt, speak for a leak', () => {
    const checks = usual.checks.with(2, recorded('Port A, Forward', { amount: 9 * psi }));
    const found = [foundPart('Forward', 'friction 2', { condition: 'burnt' })];
    const leak = asked('leak in one circuit', facts({ checks }, { found }));
    expect(leak.position).toBe(0);
    expect(sentences(leak.speaksFor)).toEqual([
      'Port A, Forward 9.0 psi: more than all 40 builds.',
      'Forward is the only pack hurt by heat.',
    ]);
  });

  test('two packs hurt speak against a leak in one circuit and for low pressure', () => {
    const found = [
      foundPart('Forward', 'friction 2', { condition: 'burnt' }),
      foundPart('Direct', 'friction 1', { condition: 'glazed' }),
    ];
    expect(sentences(asked('leak in one circuit', facts({}, { found })).speaksAgainst)).toContain(
      'Forward and Direct are all hurt by heat.',
    );
    expect(sentences(asked('low line pressure', facts({}, { found })).speaksFor)).toEqual([
      'Forward and Direct are all hurt by heat.',
    ]);
  });

  test('a friction too few speaks for a stack-up error; all counted in speaks against it', () => {
    const short = answered('Forward before the snap ring', 'Frictions', { kind: 'counted', count: 3 });
    const stack = asked('stack-up error', facts({ lines: usual.lines.with(0, short) }));
    expect(stack.position).toBe(0);
    expect(stack.speaksFor[0]?.sentence).toContain('3 in, 4 asked for');
    expect(sentences(asked('stack-up error', facts({})).speaksAgainst)).toContain(
      'Counts and order: all answered and good.',
    );
  });

  test('with two siblings a verdict speaks, a place does not', () => {
    const outside = clearance('Forward clearance', 18, { verdict: 'tight', outsideBy: 2 * 25_400 });
    const came = build(99, { checks: [outside, clearance('Direct clearance', 41.5)] });
    const { findings } = traceBuild(came, siblings.slice(0, 2), words);
    const given = { build: came, returnJobId: 100, findings, asFound: [], found: [], quietBatches: [], words };
    const tight = asked('too tight', given);
    expect(sentences(tight.speaksFor)).toEqual([
      'Forward clearance went out tight by 2.0 thou; not enough yet, 2 of 8 siblings.',
    ]);
    expect(sentences(tight.speaksAgainst)).toEqual(['Direct clearance: within limits.']);
  });

  test('a batch that others run in peace speaks against the material', () => {
    const material = asked('material', facts({}, { quietBatches: [{ name: 'KX3-FR-80, batch L5', builds: 12 }] }));
    expect(sentences(material.speaksAgainst)).toEqual([
      'KX3-FR-80, batch L5: 12 other builds have it and none came back.',
    ]);
  });
});

describe('what was never recorded', () => {
  test('a flow nobody measured is to be measured now', () => {
    const checks = usual.checks.with(4, recorded('Cooler flow in 30 s', null));
    const cooler = asked('cooler or fluid', facts({ checks }));
    expect(sentences(cooler.lookNow)).toEqual([
      'Not read when it was built: Cooler flow in 30 s.',
      'Not read as found now: Cooler flow in 30 s.',
      'Nothing of the fluid or the pan is written down yet.',
    ]);
  });

  test('what the return ticket has read is asked for no more', () => {
    const given = facts({});
    const flow = recorded('Cooler flow in 30 s', null).check;
    const read = [{ jobId: 100, checkId: 5, takeId: 9, check: flow, amount: 900_000, expanded: null }];
    const asFound = asFoundNow(given.build, read, words);
    expect(sentences(asked('cooler or fluid', { ...given, asFound }).lookNow)).toEqual([
      'Nothing of the fluid or the pan is written down yet.',
    ]);
  });
});

describe('what would settle it', () => {
  const settle = (given: CauseFacts) => causesOfTrace(given, new Map()).wouldSettle;

  test('the measurement of the suspect, with the limit it lies near', () => {
    const checks = usual.checks.with(0, clearance('Forward clearance', 21));
    expect(settle(facts({ checks }))).toContain(
      'Read Forward clearance by air as found, then measure every friction: less the wear, 20.0 thou or more clears it.',
    );
    const leaking = usual.checks.with(2, recorded('Port A, Forward', { amount: 9 * psi }));
    expect(settle(facts({ checks: leaking }))).toContain('Read Port A, Forward as found: 10.0 psi or less clears it.');
  });

  test('pairs of readings for a pack that was read another way', () => {
    const checks = usual.checks.with(0, clearance('Forward clearance', 25, { method: 'feeler' }));
    expect(settle(facts({ checks }))).toContain(
      'Read Forward clearance at the same spots by air and by feeler: the pairs tell how far the second is out.',
    );
  });
});

test('every cause stands there once with what a person said of it, and nothing is told of a build without anything', () => {
  const said = new Map([['material', 'suspected'] as const]);
  const { causes: all } = causesOfTrace(facts({}), said);
  expect(all.map(({ cause }) => cause).toSorted()).toEqual([...causes].toSorted());
  expect(all.filter(({ certainty }) => certainty !== null)).toMatchObject([
    { cause: 'material', certainty: 'suspected' },
  ]);
  const { causes: none } = causesOfTrace(
    { build: build(99), returnJobId: 100, findings: [], asFound: [], found: [], quietBatches: [], words },
    new Map(),
  );
  expect(none.flatMap(({ speaksFor, speaksAgainst }) => [...speaksFor, ...speaksAgainst])).toEqual([]);
});
