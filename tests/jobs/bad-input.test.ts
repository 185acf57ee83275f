// What must be asked or refused: one plain sentence each, nothing written.
import Sqlite from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { measureAsFound } from '../../main/shop/demo/kx3-as-found.ts';
import { checkNamed, openJob, packNamed, usualSetup } from '../../main/shop/demo/kx3-job.ts';
import { kx3Sheet } from '../../main/shop/demo/kx3-sheet.ts';
import { layOutLooseSteels } from '../../main/shop/demo/kx3-swaps.ts';
import { shopWithKx3 } from '../desk.ts';

const plainSentence = /^[“A-Z0-9][^\n]*[.?]$/u;

async function jobOnTheBench() {
  const at = await shopWithKx3();
  await layOutLooseSteels(at.call, at.by);
  const job = await openJob(at.call, at.familyId, at.by);
  return { ...at, job };
}

/** Everything in the file, to see that a refusal wrote nothing. */
function contentsOf(file: string): unknown {
  const connection = new Sqlite(file, { readonly: true });
  const tables = connection.prepare("select name from sqlite_schema where type = 'table'").pluck().all() as string[];
  const contents = tables.map((table) => [table, connection.prepare(`select * from ${table}`).all()]);
  connection.close();
  return contents;
}

async function startTake(at: Awaited<ReturnType<typeof jobOnTheBench>>, name: string): Promise<number> {
  const check = checkNamed(at.job.sheet, name);
  const { takeId } = await at.call('readings.startTake', {
    jobId: at.job.jobId,
    checkId: check.checkId,
    phase: 'as found',
    mode: 'final',
    setup: check.method === 'air' ? usualSetup : null,
    note: '',
    by: 1,
  });
  return takeId;
}

describe('a typed line that cannot be taken is asked about where the hand is', () => {
  test.each([
    ['Forward clearance', '.5 20', 'Is “.5” thou or inches? Type .5t or .5 in.'],
    ['Forward clearance', '45 in', 'too large for a clearance'],
    ['Forward clearance', '27', 'Is 27 the air travel alone, or the whole clearance?'],
    ['Forward clearance', 'four 23', 'is not a clearance'],
    ['Forward clearance', '4 2.3.1', 'two decimal marks'],
    ['Forward clearance', '4,5 23', 'has a comma'],
    ['Sealing-ring groove width', '104', 'neither 90 wide'],
    ['Stator bushing', '1.50 1.51 in', 'the shaft is larger than the bore'],
  ])('%s, “%s”', async (name, typed, sentence) => {
    const at = await jobOnTheBench();
    const takeId = await startTake(at, name);
    const before = contentsOf(at.desk.shop().file);
    const failure = await at.refusal('readings.recordReading', { takeId, spot: 1, typed, by: 1 });
    expect(failure).toMatchObject({ kind: 'refusal', field: 'typed' });
    expect(failure.message).toContain(sentence);
    expect(failure.message).toMatch(plainSentence);
    expect(contentsOf(at.desk.shop().file)).toEqual(before);
  });

  test.each([
    ['4-5 27', 31.5],
    ['96 23', 27],
    ['-4 23', 27],
  ])('“%s” is understood as %d', async (typed, clearance) => {
    const at = await jobOnTheBench();
    const takeId = await startTake(at, 'Forward clearance');
    const { take } = await at.call('readings.recordReading', { takeId, spot: 1, typed, by: 1 });
    expect((take.evaluation.mean ?? 0) / 25_400).toBeCloseTo(clearance, 9);
  });
});

type Bench = Awaited<ReturnType<typeof jobOnTheBench>>;

describe('what does not fit the job or the pack is refused', () => {
  const slotsOf = (at: Bench, pack: string, kind: string) =>
    packNamed(at.job.sheet, pack).slots.filter((slot) => slot.kind === kind);
  const mockUp = (at: Bench, pack: string, pieces: unknown[]) => ({
    jobId: at.job.jobId,
    packId: packNamed(at.job.sheet, pack).packId,
    pieces,
    note: '',
    by: 1,
  });

  const cases: Array<[string, (at: Bench) => Promise<[method: string, input: unknown]>, RegExp]> = [
    [
      'a fifth friction',
      async (at) => ['packs.recordMockUp', mockUp(at, 'Forward', [{ slotId: 999_999, from: { typed: '80' } }])],
      /Forward has 9 slots and none left/,
    ],
    [
      'two plates in one slot',
      async (at) => {
        const slotId = slotsOf(at, 'Forward', 'steel')[0]?.slotId;
        return [
          'packs.recordMockUp',
          mockUp(at, 'Forward', [
            { slotId, from: { typed: '77' } },
            { slotId, from: { typed: '78' } },
          ]),
        ];
      },
      /one slot takes one piece/,
    ],
    [
      'one plate in two packs at once',
      async (at) => {
        await measureAsFound(at.job);
        const { mockUps } = await at.call('packs.getPack', {
          jobId: at.job.jobId,
          packId: packNamed(at.job.sheet, 'Forward').packId,
        });
        const taken = mockUps[0]?.pieces.find(({ piece }) => piece.tag === 'A32')?.piece;
        const slotId = slotsOf(at, 'Direct', 'steel')[0]?.slotId;
        return ['packs.recordMockUp', mockUp(at, 'Direct', [{ slotId, from: { pieceId: taken?.pieceId } }])];
      },
      /^A32 \(76.5 thou\) sits in Forward of job 1: a plate cannot be in two packs\.$/,
    ],
    [
      'a steel of another outline',
      async (at) => {
        const { pieces } = await at.call('stock.listLoose', { outline: 'KX3 direct' });
        const slotId = slotsOf(at, 'Forward', 'steel')[0]?.slotId;
        return ['packs.recordMockUp', mockUp(at, 'Forward', [{ slotId, from: { pieceId: pieces[0]?.pieceId } }])];
      },
      /this slot takes a steel for KX3 forward/,
    ],
    [
      'a steel of 78 mm',
      async () => ['stock.addPiece', { kind: 'steel', outline: 'KX3 forward', tag: '', typed: '78 mm', by: 1 }],
      /too large for a steel: check the unit/,
    ],
    [
      'a steel of 7 thou',
      async () => ['stock.addPiece', { kind: 'steel', outline: 'KX3 forward', tag: '', typed: '7.0', by: 1 }],
      /would be 7\.0 thou, too thin for a steel/,
    ],
    [
      'a steel of 720 thou',
      async () => ['stock.addPiece', { kind: 'steel', outline: 'KX3 forward', tag: '', typed: '720', by: 1 }],
      /too large for a steel/,
    ],
    [
      'a tag that is another height',
      async () => ['stock.addPiece', { kind: 'steel', outline: 'KX3 forward', tag: '74', typed: '72', by: 1 }],
      /looks like another height/,
    ],
    [
      'a plate thrown away while it sits in a pack',
      async (at) => {
        await measureAsFound(at.job);
        const { mockUps } = await at.call('packs.getPack', {
          jobId: at.job.jobId,
          packId: packNamed(at.job.sheet, 'Forward').packId,
        });
        return ['stock.discardPiece', { pieceId: mockUps[0]?.pieces[0]?.piece.pieceId, reason: 'worn', by: 1 }];
      },
      /sits in Forward of job 1: take it out first/,
    ],
    [
      'a tag that is taken',
      async () => ['stock.addPiece', { kind: 'steel', outline: 'KX3 forward', tag: 'A41', typed: '78', by: 1 }],
      /already a plate with the tag A41/,
    ],
    [
      'a ring that is not made',
      async (at) => {
        await measureAsFound(at.job);
        const slotId = slotsOf(at, 'Low/reverse', 'snap ring')[0]?.slotId;
        return ['packs.recordMockUp', mockUp(at, 'Low/reverse', [{ slotId, from: { catalogue_nm: 80 * 25_400 } }])];
      },
      /not made in that height/,
    ],
    [
      'a reading for a closed job',
      async (at) => {
        const takeId = await startTake(at, 'Forward clearance');
        const stages = await at.call('jobs.listStages', {});
        await at.call('jobs.moveToStage', {
          jobId: at.job.jobId,
          stageId: stages.at(-1)?.stageId,
          reason: 'given back as it is',
          by: 1,
        });
        return ['readings.recordReading', { takeId, spot: 1, typed: '4 23', by: 1 }];
      },
      /^Job 1 is closed/,
    ],
    [
      'a swap plan before anything was read',
      async (at) => {
        await at.call(
          'packs.recordMockUp',
          mockUp(
            at,
            'Forward',
            slotsOf(at, 'Forward', 'steel').map(({ slotId }) => ({ slotId, from: { typed: '77' } })),
          ),
        );
        return ['packs.planSwaps', { jobId: at.job.jobId, packId: packNamed(at.job.sheet, 'Forward').packId }];
      },
      /^Read Forward first/,
    ],
    [
      'air without a setup card',
      async (at) => [
        'readings.startTake',
        {
          jobId: at.job.jobId,
          checkId: checkNamed(at.job.sheet, 'Forward clearance').checkId,
          phase: 'final',
          mode: 'final',
          setup: null,
          note: '',
          by: 1,
        },
      ],
      /the setup card/,
    ],
    [
      'somebody who does not work here',
      async (at) => ['specs.addFamily', { name: 'KX4', by: at.by + 50 }],
      /no such person/,
    ],
    [
      'a spec with limits upside down',
      async (at) => {
        const checks = kx3Sheet.checks.map((check, i) =>
          i === 0 ? { ...check, limits: { kind: 'range', low: 762_000, high: 508_000 } } : check,
        );
        return ['specs.saveSheet', { familyId: at.familyId, sheet: { ...kx3Sheet, checks }, sourceNote: '', by: 1 }];
      },
      /^Forward clearance: the low limit 30.0 is not below the high limit 20.0\.$/,
    ],
    [
      'an unknown way of reading',
      async (at) => {
        const checks = kx3Sheet.checks.map((check, i) => (i === 0 ? { ...check, method: 'by ear' } : check));
        return ['specs.saveSheet', { familyId: at.familyId, sheet: { ...kx3Sheet, checks }, sourceNote: '', by: 1 }];
      },
      /method/,
    ],
    [
      'a method that is not in the contract',
      async () => ['jobs.eraseEverything', {}],
      /no method called jobs.eraseEverything/,
    ],
    ['a method named like a part of every object', async () => ['constructor', {}], /no method called constructor/],
    [
      'a payload that is not in the contract',
      async (at) => ['jobs.getJob', { jobId: at.job.jobId, also: 1 }],
      /“also” is not part of this call/,
    ],
    ['a number that is none', async () => ['jobs.getJob', { jobId: 'one' }], /jobId/],
    ['a job that is not there', async () => ['jobs.getJob', { jobId: 77 }], /no such job/],
  ];

  test.each(cases)('%s', async (_what, prepare, sentence) => {
    const at = await jobOnTheBench();
    const [method, input] = await prepare(at);
    const before = contentsOf(at.desk.shop().file);
    const failure = await at.refusal(method, input);
    expect(failure.kind).toBe('refusal');
    expect(failure.message).toMatch(sentence);
    expect(failure.message).not.toContain('\n');
    expect(contentsOf(at.desk.shop().file)).toEqual(before);
  });

  test('a reading misread is superseded with a reason, and cannot be superseded twice', async () => {
    const at = await jobOnTheBench();
    const takeId = await startTake(at, 'Front end play');
    const { readingId } = await at.call('readings.recordReading', { takeId, spot: 1, typed: '12', by: 1 });
    expect(
      (await at.refusal('readings.supersedeReading', { readingId, typed: '19', reason: '', by: 1 })).message,
    ).toContain('reason');
    const { take } = await at.call('readings.supersedeReading', { readingId, typed: '19', reason: 'misread', by: 1 });
    expect(take.readings.map(({ typed, supersededById }) => [typed, supersededById !== null])).toEqual([
      ['12', true],
      ['19', false],
    ]);
    expect((take.evaluation.mean ?? 0) / 25_400).toBe(19);
    expect(
      (await at.refusal('readings.supersedeReading', { readingId, typed: '20', reason: 'again', by: 1 })).message,
    ).toContain('superseded already');
  });
});
