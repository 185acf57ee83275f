// Gates: no path of moves leads past what was never there, except over a reason that stays on record.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Need, needs } from '../../app/jobs/needs.ts';
import { missingForMove, type StageOnTheWay, sayMissing } from '../../app/jobs/stage-moves.ts';
import type { NeedFacts } from '../../app/jobs/unmet-needs.ts';
import { measureAsFound } from '../../main/shop/demo/kx3-as-found.ts';
import { openJob } from '../../main/shop/demo/kx3-job.ts';
import { answerLists } from '../../main/shop/demo/kx3-lists.ts';
import { shopWithKx3 } from '../desk.ts';

// Five needs that can be met and lost by one fact each; what the others test is looked at below, on a real job.
const plain: readonly Need[] = ['complaint said', 'date promised', 'estimate approved', 'signed off', 'cores settled'];

const nothing: NeedFacts = {
  complaint: '',
  packs: [],
  checks: [],
  promisedOn: null,
  estimate: 'to give',
  isSignedOff: false,
  isDelivered: false,
  openCores: ['converter'],
  unmeasuredPlates: [],
  undecided: [],
  lists: [],
};

function factsWith(met: ReadonlySet<Need>): NeedFacts {
  return {
    ...nothing,
    complaint: met.has('complaint said') ? 'Slips.' : ' ',
    promisedOn: met.has('date promised') ? '2026-11-27' : null,
    estimate: met.has('estimate approved') ? 'approved' : 'to give',
    isSignedOff: met.has('signed off'),
    openCores: met.has('cores settled') ? [] : ['converter'],
  };
}

const stagesOf = fc
  .array(fc.uniqueArray(fc.constantFrom(...plain), { maxLength: 3 }), { minLength: 2, maxLength: 7 })
  .map((asked) =>
    asked.map((each, index): StageOnTheWay => ({ stageId: index + 1, name: `Stage ${index + 1}`, needs: each })),
  );

const moves = fc.array(fc.record({ to: fc.nat(6), met: fc.subarray([...plain]), hasReason: fc.boolean() }), {
  maxLength: 30,
});

describe('moves', () => {
  test('reach no stage whose needs were never met, unless it was said why', () => {
    fc.assert(
      fc.property(stagesOf, moves, (stages, wanted) => {
        let at = 0;
        // The slow way: for every need of every stage, whether it was met or passed over while the job stood before it.
        const granted = new Set<string>();
        for (const { to, met, hasReason } of wanted) {
          const target = to % stages.length;
          const facts = factsWith(new Set(met));
          const missing = missingForMove(stages, { fromId: at + 1, toId: target + 1 }, facts);
          if (missing.length > 0 && !hasReason) continue;
          for (let each = at; each < target; each += 1) {
            for (const need of stages[each]!.needs) if (met.includes(need)) granted.add(`${each} ${need}`);
          }
          for (const each of missing) granted.add(`${each.stageId - 1} ${each.need}`);
          at = target;
          for (let before = 0; before < at; before += 1) {
            for (const need of stages[before]!.needs) expect(granted).toContain(`${before} ${need}`);
          }
        }
      }),
    );
  });

  test('back ask for nothing', () => {
    fc.assert(
      fc.property(stagesOf, fc.nat(6), fc.nat(6), (stages, one, other) => {
        const [low = 0, high = 0] = [one % stages.length, other % stages.length].toSorted((a, b) => a - b);
        expect(missingForMove(stages, { fromId: high + 1, toId: low + 1 }, nothing)).toEqual([]);
      }),
    );
  });

  test('say once what is missing in two stages', () => {
    const missing = [1, 2].map((stageId) => ({
      stageId,
      stageName: '',
      need: 'date promised' as const,
      what: 'no day is promised',
    }));
    expect(sayMissing('Build', missing)).toBe('Before Build: no day is promised.');
  });
});

describe('on a real job', () => {
  test('every need of the closed list is one the file knows', async () => {
    const { call, by } = await shopWithKx3();
    const [first] = await call('jobs.listStages', {});
    await call('jobs.changeStageNeeds', { stageId: first?.stageId, needs, by });
    expect(new Set((await call('jobs.listStages', {}))[0]?.needs)).toEqual(new Set(needs));
  });

  test('what is missing is named, met by doing it, and passed over only with a reason that stays', async () => {
    const { call, refusal, familyId, by } = await shopWithKx3();
    const { jobId, ...job } = await openJob(call, familyId, by);
    const stages = await call('jobs.listStages', {});
    const idOf = (name: string) => stages.find((stage) => stage.name === name)?.stageId;
    const move = (name: string, reason = '') => ({ jobId, stageId: idOf(name), reason, by });
    await call('jobs.moveToStage', move('As found'));
    expect(await refusal('jobs.moveToStage', move('Teardown'))).toMatchObject({
      code: 'missing',
      field: 'reason',
      message: 'Before Teardown: Forward clearance, Direct clearance, Low/reverse clearance: not read as found.',
    });
    expect(await call('jobs.listMissing', { jobIds: [jobId] })).toMatchObject([
      { nextStageId: idOf('Teardown'), missing: [{ need: 'as-found clearances read' }] },
    ]);
    await measureAsFound({ jobId, ...job });
    await answerLists({ jobId, ...job }, 'teardown');
    await call('jobs.moveToStage', move('Waiting'));
    expect((await refusal('jobs.moveToStage', move('Build'))).message).toBe('Before Build: no day is promised.');
    await call('jobs.moveToStage', move('Build', 'rush: the customer waits here'));
    await call('jobs.moveToStage', move('Teardown'));
    const ticket = await call('jobs.getJob', { jobId });
    expect(ticket.passedOver).toMatchObject([
      {
        stageName: 'Waiting',
        need: 'date promised',
        what: 'no day is promised',
        reason: 'rush: the customer waits here',
        by: 'RA',
      },
    ]);
    // Passed over once is not passed over for good.
    expect(await refusal('jobs.moveToStage', move('Build'))).toMatchObject({ code: 'missing' });
    await call('jobs.promiseDay', { jobId, on: '2026-11-30', reason: '', by });
    await call('jobs.moveToStage', move('Build'));
    expect((await call('jobs.getJob', { jobId })).stageId).toBe(idOf('Build'));
  });

  test('a sign-off counts until something is read again', async () => {
    const { call, familyId, by } = await shopWithKx3();
    const job = await openJob(call, familyId, by);
    const { jobId } = job;
    const isMissing = async () => {
      const { stages } = await call('jobs.getJob', { jobId });
      return stages.find(({ name }) => name === 'Final check')?.missing.some(({ need }) => need === 'signed off');
    };
    expect(await isMissing()).toBe(true);
    await call('jobs.signOff', { jobId, place: 'on stand', note: 'shifts clean', by });
    expect(await isMissing()).toBe(false);
    await measureAsFound(job);
    expect(await isMissing()).toBe(true);
    expect((await call('jobs.getJob', { jobId })).signOff).toMatchObject({
      place: 'on stand',
      by: 'RA',
      isOutdated: true,
    });
  });

  test('before it is closed a job names the cores and the plates it leaves open', async () => {
    const { call, refusal, familyId, by } = await shopWithKx3();
    const job = await openJob(call, familyId, by);
    const { jobId, sheet } = job;
    await measureAsFound(job);
    const { coreId } = await call('stock.openCore', {
      direction: 'due to us',
      what: 'converter',
      quantity: 1,
      charge: '',
      dueOn: null,
      jobId,
      by,
    });
    const pack = sheet.packs.find(({ name }) => name === 'Forward');
    const [slot] = pack?.slots.filter(({ kind }) => kind === 'steel') ?? [];
    const pieces = [{ slotId: slot?.slotId, from: { typed: '79.0', tag: 'A90' } }];
    await call('packs.recordMockUp', { jobId, packId: pack?.packId, pieces, note: '', by });
    const open = await call('jobs.listWithStock', { jobId });
    expect(open).toEqual({
      cores: [{ coreId, direction: 'due to us', what: 'converter' }],
      plates: [{ pieceId: expect.any(Number), what: 'steel A31, 77.0 out of Forward' }],
    });
    const stages = await call('jobs.listStages', {});
    const close = { jobId, stageId: stages.at(-1)?.stageId, by };
    await call('jobs.moveToStage', { jobId, stageId: stages.at(-2)?.stageId, reason: 'sold as a core', by });
    expect((await refusal('jobs.moveToStage', close)).message).toBe(
      'Before Closed: converter: core not settled; steel A31, 77.0 out of Forward: came out and not measured again.',
    );
    await call('stock.settleCore', { coreId, how: 'came back', note: '', by });
    await call('stock.remeasurePiece', { pieceId: open.plates[0]?.pieceId, typed: '77.0', reason: 'came out', by });
    await call('jobs.moveToStage', close);
    expect((await call('jobs.getJob', { jobId })).isClosed).toBe(true);
  });
});

test('a stage that asks for an approved estimate holds the job until somebody said yes to it', async () => {
  const { call, refusal, familyId, by } = await shopWithKx3();
  const { jobId } = await openJob(call, familyId, by);
  const stages = await call('jobs.listStages', {});
  const [first, second] = stages;
  await call('jobs.changeStageNeeds', { stageId: first?.stageId, needs: ['estimate approved'], by });
  const move = { jobId, stageId: second?.stageId, by };
  expect((await refusal('jobs.moveToStage', move)).message).toContain('no estimate is written');
  const line = {
    kind: 'labour',
    description: 'Rebuild',
    quantity: '10',
    unitPrice: '95',
    unitCost: '',
    isTaxable: false,
    batchId: null,
  };
  await call('jobs.addLine', { jobId, line, by });
  expect((await refusal('jobs.moveToStage', move)).message).toContain('the estimate is not given');
  const { estimateId } = await call('jobs.giveEstimate', { jobId, whatWasFound: '', by });
  expect((await refusal('jobs.moveToStage', move)).message).toContain('the estimate is not approved');
  const yes = { estimateId, approvedBy: 'Tam Okoro', how: 'phone', upTo: '', approvedOn: null, note: '', by };
  await call('jobs.approveEstimate', yes);
  await call('jobs.moveToStage', move);
  expect((await call('jobs.getJob', { jobId })).stageId).toBe(second?.stageId);
});
