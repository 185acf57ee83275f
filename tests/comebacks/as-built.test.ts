// The shelf of delivered builds says what their tickets say, and is emptied by whatever is put right under a build.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { missingBuilds, reckonBuilds } from '../../main/comebacks/as-built.service.ts';
import { openJob, packNamed, usualSetup } from '../../main/shop/demo/kx3-job.ts';
import { type DeskForTest, shopWithKx3 } from '../desk.ts';

async function deliver({ call }: Pick<DeskForTest, 'call'>, jobId: number) {
  await call('jobs.deliver', {
    reason: 'they know what is open',
    jobId,
    deliveredTo: 'Tam Okoro',
    deliveredOn: '2026-11-23',
    distance: null,
    handedOverById: 1,
    warranty: { terms: { months: 12, distance: null, passes: null }, inServiceOn: null },
    by: 1,
  });
}

const missing = ({ desk }: DeskForTest) => desk.shop().read(missingBuilds);

async function reckonAll(at: DeskForTest) {
  const jobIds = await missing(at);
  await at.desk.shop().write((writing) => reckonBuilds(writing, jobIds));
}

const rowsOf = (at: DeskForTest, jobId: number) =>
  at.desk
    .shop()
    .read((reading) => reading.selectFrom('as_built_checks').selectAll().where('job_id', '=', jobId).execute());

const packsOf = (at: DeskForTest, jobId: number) =>
  at.desk
    .shop()
    .read((reading) =>
      reading
        .selectFrom('as_built_packs')
        .innerJoin('packs', 'packs.pack_id', 'as_built_packs.pack_id')
        .select(['packs.name', 'mock_ups', 'reused_plates'])
        .where('job_id', '=', jobId)
        .execute(),
    );

/** Lines a person might type for each way of reading; the first of "air" is no clearance. */
const lines = {
  air: ['only 24', '4 21', '5 22', '12 60', '3 38'],
  feeler: ['24 25', '44 46', '58 60'],
  dial: ['18', '9', '120'],
  direct: ['2', '45', '80'],
  count: ['3'],
  drop: ['3', '12'],
} as const;

const takeToMake = fc.record({
  check: fc.nat({ max: 10 }),
  otherWay: fc.constantFrom(null, null, 'feeler', 'direct'),
  phase: fc.constantFrom('as found', 'mock-up', 'final'),
  by: fc.constantFrom(1, 2),
  setup: fc.record({
    dialBase: fc.constantFrom('drum', 'pump or lower drum'),
    plates: fc.constantFrom('soaked', 'dry'),
  }),
  lines: fc.array(fc.record({ spot: fc.integer({ min: 1, max: 4 }), line: fc.nat({ max: 4 }) }), { maxLength: 5 }),
  misread: fc.boolean(),
  willNotHold: fc.constantFrom(false, false, false, true),
});

const watched = ['Forward clearance', 'Direct clearance', 'Front end play', 'Stator bushing', 'Port A, Forward'];

test('what stands on the shelf is what the ticket says of each check', async () => {
  const at = await shopWithKx3();
  const { call, familyId, by } = at;
  await call('shop.addPerson', { name: 'Ines Marsh', initials: 'IM' });
  const property = fc.asyncProperty(fc.array(takeToMake, { maxLength: 8 }), async (takes) => {
    const { jobId, sheet } = await openJob(call, familyId, by);
    for (const take of takes) {
      const check = sheet.checks.find(({ name }) => name === watched[take.check % watched.length])!;
      const method = check.quantity === 'length' && take.otherWay !== null ? take.otherWay : check.method;
      const { takeId } = await call('readings.startTake', {
        jobId,
        checkId: check.checkId,
        phase: take.phase,
        mode: 'final',
        method,
        setup: method === 'air' ? { ...usualSetup, ...take.setup } : null,
        note: '',
        by: take.by,
      });
      const typed = lines[method];
      let readingId = 0;
      for (const { spot, line } of take.lines) {
        const words = typed[line % typed.length]!;
        const isAirOnly = words.startsWith('only ');
        const said = isAirOnly ? words.slice('only '.length) : words;
        const meaning = isAirOnly ? 'air only' : null;
        ({ readingId } = await call('readings.recordReading', { takeId, spot, typed: said, meaning, by }));
      }
      if (take.misread && readingId > 0) {
        await call('readings.supersedeReading', { readingId, typed: typed.at(-1), reason: 'misread', by });
      }
      if (take.willNotHold) await call('readings.noteAtSpot', { takeId, spot: 1, what: 'will not hold air', by });
    }
    await deliver(at, jobId);
    await reckonAll(at);
    const { checks } = await call('jobs.getJob', { jobId });
    const told = checks.flatMap(({ checkId, latest }) =>
      latest === null
        ? []
        : [
            {
              job_id: jobId,
              check_id: checkId,
              take_id: latest.takeId,
              amount: latest.value,
              lowest: latest.min,
              highest: latest.max,
              expanded: latest.expanded,
              verdict: latest.verdict.word,
              outside_by: latest.verdict.by,
            },
          ],
    );
    expect(await rowsOf(at, jobId)).toEqual(told.toSorted((a, b) => a.check_id - b.check_id));
  });
  await fc.assert(property, { numRuns: 12 });
});

test('only delivered builds are asked for, each until it is filled, and again when a reading under it is put right', async () => {
  const at = await shopWithKx3();
  const { call, familyId, by } = at;
  const { jobId, sheet } = await openJob(call, familyId, by);
  await openJob(call, familyId, by);
  const { checkId } = sheet.checks.find(({ name }) => name === 'Stator bushing')!;
  const take = { jobId, checkId, phase: 'final', mode: 'final', setup: null, note: '', by };
  const { takeId } = await call('readings.startTake', take);
  const { readingId } = await call('readings.recordReading', { takeId, spot: 1, typed: '2.5', by });
  expect(await missing(at)).toEqual([]);
  await deliver(at, jobId);
  expect(await missing(at)).toEqual([jobId]);
  await reckonAll(at);
  expect(await missing(at)).toEqual([]);
  expect(await rowsOf(at, jobId)).toMatchObject([{ amount: 2.5 * 25_400 }]);
  await call('readings.supersedeReading', { readingId, typed: '2.0', reason: 'misread', by });
  expect([await missing(at), await rowsOf(at, jobId)]).toEqual([[jobId], []]);
  await reckonAll(at);
  expect(await rowsOf(at, jobId)).toMatchObject([{ amount: 2 * 25_400 }]);
  await call('jobs.takeBackDelivery', { jobId, reason: 'leaked in the yard', by });
  expect(await missing(at)).toEqual([]);
});

test('whoever read most of the final takes built it', async () => {
  const at = await shopWithKx3();
  const { call, familyId } = at;
  const { personId } = await call('shop.addPerson', { name: 'Ines Marsh', initials: 'IM' });
  const { jobId, sheet } = await openJob(call, familyId, 1);
  const { checkId } = sheet.checks.find(({ name }) => name === 'Stator bushing')!;
  const read = async (phase: string, by: number) => {
    const take = { jobId, checkId, phase, mode: 'final', setup: null, note: '', by };
    const { takeId } = await call('readings.startTake', take);
    await call('readings.recordReading', { takeId, spot: 1, typed: '2.5', by });
  };
  const builder = async () => {
    await reckonAll(at);
    const rows = await at.desk.shop().read((reading) => reading.selectFrom('as_built').selectAll().execute());
    return rows[0]?.builder;
  };
  await read('as found', 1);
  await read('as found', 1);
  await read('final', personId);
  await deliver(at, jobId);
  expect(await builder()).toBe(personId);
  await call('jobs.takeBackDelivery', { jobId, reason: 'back on the bench', by: 1 });
  await read('final', 1);
  await deliver(at, jobId);
  // One each: whoever read the last.
  expect(await builder()).toBe(1);
});

test('a plate is reused when the last mock-up of an earlier job held it, not when it was only tried there', async () => {
  const at = await shopWithKx3();
  const { call, familyId, by } = at;
  const { jobId, sheet } = await openJob(call, familyId, by);
  const pack = packNamed(sheet, 'Forward');
  const steels = pack.slots.filter(({ kind }) => kind === 'steel');
  const typed = (place: number, tag: string) => ({ slotId: steels[place]!.slotId, from: { typed: '77.0', tag } });
  const mockUp = (job: number, pieces: readonly object[]) =>
    call('packs.recordMockUp', { jobId: job, packId: pack.packId, pieces, note: '', by });
  await mockUp(jobId, [typed(0, 'A1'), typed(1, 'A2'), typed(2, 'A3'), typed(3, 'A4')]);
  await mockUp(jobId, [typed(0, 'A5')]);
  await deliver(at, jobId);
  const closed = (await call('jobs.listStages', {})).at(-1)!;
  await call('jobs.moveToStage', { jobId, stageId: closed.stageId, reason: 'gone', by });
  const { mockUps } = await call('packs.getPack', { jobId, packId: pack.packId });
  const plate = (tag: string) => ({
    pieceId: mockUps.flatMap((each) => each.pieces).find((each) => each.piece.tag === tag)!.piece.pieceId,
  });
  const { unit, customer } = await call('jobs.getJob', { jobId });
  const again = await call('jobs.checkIn', {
    customer: { customerId: customer.customerId },
    unit: { unitId: unit.unitId },
    complaint: '',
    caseTag: '',
    distance: null,
    by,
  });
  // A5 and A2 sat in the unit; A1 was tried, came out and lay on the bench; A9 is new.
  const tried = plate('A1');
  await call('stock.remeasurePiece', { ...tried, typed: '77.0', reason: 'out of the pack', by });
  await mockUp(again.jobId, [
    { slotId: steels[0]!.slotId, from: plate('A5') },
    { slotId: steels[1]!.slotId, from: plate('A2') },
    { slotId: steels[2]!.slotId, from: tried },
    typed(3, 'A9'),
  ]);
  await deliver(at, again.jobId);
  await reckonAll(at);
  expect(await packsOf(at, jobId)).toEqual([{ name: 'Forward', mock_ups: 2, reused_plates: 0 }]);
  expect(await packsOf(at, again.jobId)).toEqual([{ name: 'Forward', mock_ups: 1, reused_plates: 2 }]);
});
