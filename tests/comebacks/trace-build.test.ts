// What of a build stands out beside its siblings, on shops made by hand in which one thing is odd.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { RecordedBuild } from '../../app/comebacks/recorded-build.ts';
import { traceBuild } from '../../app/comebacks/trace-build.ts';
import { answered, build, builds, clearance, psi, recorded, thou, words } from './hand-made.ts';

/** Clearances that go up and down from build to build and never stray. */
const usual = (index: number) => 25 + ((index * 7) % 9) / 2;

const sentences = (of: RecordedBuild, siblings: readonly RecordedBuild[]) =>
  traceBuild(of, siblings, words).findings.map(({ sentence }) => sentence);

describe('the planted oddity comes first', () => {
  test('a clearance tighter than all but two', () => {
    const siblings = builds(40, (index) => ({
      checks: [
        clearance('Forward clearance', index < 2 ? 20.5 : usual(index)),
        clearance('Direct clearance', 45 + (index % 5)),
      ],
    }));
    const odd = build(99, { checks: [clearance('Forward clearance', 21), clearance('Direct clearance', 47)] });
    // The tightest spot of 20.0 is not under the limit of 20.
    expect(sentences(odd, siblings)[0]).toBe('Forward clearance 21.0 thou: tighter than 38 of 40 builds.');
    const [first] = traceBuild(odd, siblings, words).findings;
    expect(first).toMatchObject({ p: 6 / 41, opens: { kind: 'check', jobId: 99, checkId: 1, takeId: 1 } });
  });

  test('the farther out of two numbers beyond all others', () => {
    const siblings = builds(40, (index) => ({
      checks: [
        clearance('Direct clearance', 45 + (index % 5)),
        recorded('Port A, Forward', { amount: (3 + (index % 3)) * psi }),
      ],
    }));
    const odd = build(99, {
      checks: [clearance('Direct clearance', 49.2), recorded('Port A, Forward', { amount: 9 * psi })],
    });
    expect(sentences(odd, siblings).slice(0, 2)).toEqual([
      'Port A, Forward 9.0 psi: more than all 40 builds.',
      'Direct clearance 49.2 thou: looser than all 40 builds.',
    ]);
  });

  test('read by feeler where the shop reads by air', () => {
    const siblings = builds(40, (index) => ({
      checks: [clearance('Forward clearance', usual(index), { method: index < 3 ? 'feeler' : 'air' })],
    }));
    const odd = build(99, { checks: [clearance('Forward clearance', 26.2, { method: 'feeler' })] });
    expect(sentences(odd, siblings)[0]).toBe('Forward clearance was read by feeler; 37 of 40 by air.');
  });

  test('dry plates, and the wave plate left out', () => {
    const setup = { plates: 'soaked', waveState: 'in', dialBase: 'drum', isPistonSeated: true } as const;
    const siblings = builds(40, (index) => ({
      checks: [clearance('Low/reverse clearance', 55 + (index % 7), { setup })],
    }));
    const odd = build(99, {
      checks: [clearance('Low/reverse clearance', 58, { setup: { ...setup, plates: 'dry', waveState: 'left out' } })],
    });
    expect(sentences(odd, siblings).slice(0, 2)).toEqual([
      'Low/reverse clearance was read with dry plates; 40 of 40 with soaked plates.',
      'Low/reverse clearance was read with the wave plate left out; 40 of 40 with the wave plate in.',
    ]);
  });

  test('a spot under the limit, let stand with a reason', () => {
    const siblings = builds(40, (index) => ({ checks: [clearance('Forward clearance', usual(index))] }));
    const tight = clearance('Forward clearance', 20.4, { lowest: 19 * thou, verdict: 'tight', outsideBy: thou });
    const odd = build(99, {
      checks: [{ ...tight, override: { by: 'RA', reason: 'customer waits; goes as it is' } }],
    });
    expect(sentences(odd, siblings)).toEqual(
      expect.arrayContaining([
        'Forward clearance 20.4 thou: tighter than all 40 builds.',
        'Forward clearance: tightest spot 19.0 thou, under the limit of 20.0; so in 0 of 40 builds.',
        'Forward clearance went out tight by 1.0 thou; so did 0 of 40 builds.',
        'Forward clearance was let stand by RA, “customer waits; goes as it is”; so in 0 of 40 builds.',
      ]),
    );
  });

  test('what was never read though the others have it', () => {
    const flow = (index: number) =>
      recorded('Cooler flow in 30 s', index < 4 ? null : { amount: 1_200_000 + index * 1000 });
    const siblings = builds(40, (index) => ({ checks: [flow(index)] }));
    const odd = build(99, { checks: [recorded('Cooler flow in 30 s', null)] });
    expect(sentences(odd, siblings)[0]).toBe('Cooler flow in 30 s was never read; 36 of 40 builds have it.');
  });

  test('a count that is off, a line not answered, a fluid nobody else has', () => {
    const filled = (count: number | null, fluid: string) => [
      answered('Forward before the snap ring', 'Frictions', count === null ? null : { kind: 'counted', count }),
      answered('Final', 'Fluid', { kind: 'written', words: fluid }),
    ];
    const siblings = builds(30, () => ({ lines: filled(4, 'Type 3') }));
    expect(sentences(build(99, { lines: filled(3, 'type 6') }), siblings)).toEqual([
      'Forward before the snap ring, Frictions: 3 in, 4 asked for, which is off; so in 0 of 30 builds.',
      'Final, Fluid: type 6; 0 of 30 so, 30 type 3.',
      expect.stringContaining('as 30 of 30'),
    ]);
    expect(sentences(build(99, { lines: filled(null, 'type 3') }), siblings)[0]).toBe(
      'Forward before the snap ring, Frictions: not answered; so in 0 of 30 builds.',
    );
  });

  test('what nobody answered is one line while there are too few builds to hold each of them beside', () => {
    const odd = build(99, {
      lines: [
        answered('Forward before the snap ring', 'Frictions', null),
        answered('Final', 'Fluid', null),
        answered('Cooler', 'Cooler and lines', { kind: 'chosen', option: 'flushed' }),
      ],
    });
    expect(
      sentences(
        odd,
        builds(7, () => ({ lines: odd.lines })),
      ),
    ).toContain('2 of 3 lines of its lists were not answered, on 2 of them.');
    expect(sentences(odd, []).filter((each) => each.includes('not answered'))).toHaveLength(1);
  });

  test('plates used again, and a batch that came back three times of four', () => {
    const batch = { batchId: 7, partId: 2, name: 'KX3-FR-80, batch L5' };
    const siblings = builds(40, (index) => ({
      batches: index < 4 ? [batch] : [],
      hasComeBack: index < 3 || index === 20,
    }));
    const odd = build(99, {
      batches: [batch],
      packs: [{ packId: 1, name: 'Forward', reusedPlates: 2 }],
    });
    const [first, second] = traceBuild(odd, siblings, words).findings;
    // Of 40 builds 4 came back. Three or four of those within four: (4·36 + 1) / C(40, 4) = 145 / 91 390, and no table
    // of the other side is as unlikely.
    expect(first?.p).toBeCloseTo(145 / 91_390, 12);
    expect(first?.sentence).toBe('KX3-FR-80, batch L5: 3 of 4 other builds with it came back, 1 of 36 without.');
    expect(second?.sentence).toBe('Forward: 2 plates of an earlier job; some in 0 of 40 builds.');
  });
});

describe('too few siblings', () => {
  test('facts are told and not ranked, the outside ones first', () => {
    const siblings = builds(3, (index) => ({
      checks: [clearance('Direct clearance', 44 + index), clearance('Forward clearance', 25 + index)],
    }));
    const odd = build(99, {
      checks: [
        clearance('Direct clearance', 45),
        clearance('Forward clearance', 21, { lowest: 19 * thou, verdict: 'tight', outsideBy: thou }),
      ],
    });
    const { findings, looks } = traceBuild(odd, siblings, words);
    expect(findings.every(({ p }) => p === null)).toBe(true);
    expect(findings.map(({ sentence }) => sentence).slice(0, 2)).toEqual([
      'Forward clearance: tightest spot 19.0 thou, under the limit of 20.0; not enough yet, 3 of 8 siblings.',
      'Forward clearance went out tight by 1.0 thou; not enough yet, 3 of 8 siblings.',
    ]);
    expect(looks.sentence).toBe('Nothing is ranked yet: that takes 8 siblings.');
  });

  test('a check is held beside checks of the same name and limits only', () => {
    const other = clearance('Forward clearance', 26);
    const moved = { ...other, check: { ...other.check, limits: { kind: 'maximum' as const, high: 40 * thou } } };
    const siblings = builds(12, (index) => ({ checks: [index < 9 ? other : moved] }));
    const [first] = traceBuild(build(99, { checks: [clearance('Forward clearance', 21)] }), siblings, words).findings;
    expect(first?.siblings).toBe(9);
  });
});

describe('one is never unusual because many things were looked at', () => {
  const shop = fc.array(
    fc.record({
      forward: fc.integer({ min: 40, max: 60 }),
      spread: fc.integer({ min: 0, max: 6 }),
      leak: fc.integer({ min: 1, max: 9 }),
      method: fc.constantFrom('air' as const, 'air' as const, 'feeler' as const),
      isRead: fc.boolean(),
      fluid: fc.constantFrom('type 3', 'type 3', 'type 6', 'type 9'),
      reused: fc.integer({ min: 0, max: 1 }),
    }),
    { minLength: 10, maxLength: 50 },
  );

  test('over a whole shop, as many are called unusual as the trace says chance calls', () => {
    fc.assert(
      fc.property(shop, (rows) => {
        const all = builds(rows.length, (index) => {
          const row = rows[index]!;
          const half = (row.spread * thou) / 2;
          const amount = (row.forward / 2) * thou;
          return {
            checks: [
              recorded('Forward clearance', {
                amount,
                lowest: amount - half,
                highest: amount + half,
                method: row.method,
              }),
              recorded('Port A, Forward', row.isRead ? { amount: row.leak * psi } : null),
            ],
            lines: [answered('Final', 'Fluid', { kind: 'written', words: row.fluid })],
            packs: [{ packId: 1, name: 'Forward', reusedPlates: row.reused }],
          };
        });
        const looks = all.map((each, index) => traceBuild(each, all.toSpliced(index, 1), words).looks);
        const unusual = looks.reduce((sum, { unusual: count }) => sum + count, 0);
        const expected = looks.reduce((sum, { byChance }) => sum + byChance, 0);
        expect(unusual).toBeCloseTo(expected, 6);
        expect(unusual).toBeLessThanOrEqual(0.05 * looks.reduce((sum, { ranked }) => sum + ranked, 0) + 1e-9);
      }),
      { numRuns: 40 },
    );
  });

  test('the order of the siblings does not matter', () => {
    const siblings = builds(30, (index) => ({
      checks: [clearance('Forward clearance', usual(index)), clearance('Direct clearance', 44 + (index % 6))],
      batches: index % 3 === 0 ? [{ batchId: 1, partId: 1, name: 'A' }] : [],
      hasComeBack: index % 6 === 0,
    }));
    const of = build(99, {
      checks: [clearance('Forward clearance', 22), clearance('Direct clearance', 47)],
      batches: [{ batchId: 1, partId: 1, name: 'A' }],
    });
    const told = (among: readonly RecordedBuild[]) => sentences(of, among);
    expect(told(siblings.toReversed())).toEqual(told(siblings));
  });
});
