// The demo shop: an invented shop with the KX3 sheet, one unit half built and one just come in, filled by the same calls
// a person's hands make; and the cards of the years before, carried into the book in bulk.
import { contract, type MethodName, type Output } from '../../../app/contract/contract.ts';
import { dayAfter } from '../../../app/jobs/calendar-days.ts';
import type { OpenShop } from '../../database/open-shop.ts';
import { gaugesHandlers } from '../../gauges/gauges.handlers.ts';
import { indicatorsHandlers } from '../../indicators/indicators.handlers.ts';
import { jobsHandlers } from '../../jobs/jobs.handlers.ts';
import { packsHandlers } from '../../packs/packs.handlers.ts';
import { readingsHandlers } from '../../readings/readings.handlers.ts';
import { specsHandlers } from '../../specs/specs.handlers.ts';
import { stockHandlers } from '../../stock/stock.handlers.ts';
import { Desk } from '../desk.ts';
import { addPerson, changeSettings, fillShop, retirePerson } from '../shop.service.ts';
import { layOutGauges } from './demo-gauges.ts';
import { stockTheShelves } from './demo-parts.ts';
import { layOutOtherSteels } from './demo-plates.ts';
import { growHistory } from './history/grow-history.ts';
import { measureAsFound } from './kx3-as-found.ts';
import { writeFindings } from './kx3-findings.ts';
import { type Caller, moveTo, openJob } from './kx3-job.ts';
import { answerLists } from './kx3-lists.ts';
import { keepKx3Pictures } from './kx3-pictures.ts';
import { kx3Sheet } from './kx3-sheet.ts';
import { layOutLooseSteels } from './kx3-swaps.ts';
import { lowReverseOffTheLine } from './kx3-trace.ts';

const handlers = {
  ...specsHandlers,
  ...jobsHandlers,
  ...packsHandlers,
  ...readingsHandlers,
  ...stockHandlers,
  ...indicatorsHandlers,
  ...gaugesHandlers,
};

/** To practise reading by a gauge on a line; what it says is made up and marked. */
const practiceLine = {
  source: 'practice',
  name: 'Practice gauge',
  practice: 'steady',
  pattern: '{number}',
  unit: 'mm',
  isReversed: false,
  step_nm: 1000,
  stillWithin_steps: 5,
  stillFor_ms: 500,
  every_ms: 50,
} as const;

/** The years before the book: a hundred builds that left two weeks ago at the latest. */
const history = { builds: 100, seed: 3, effects: 'planted', families: 'the first', leftAgo_days: 14 } as const;

/** Calls the rooms as the dispatcher does, on a shop that no desk has open yet. */
function callerOn(shop: OpenShop): Caller {
  const desk = Desk.over(shop, '');
  return async <M extends MethodName>(name: M, input: unknown) => {
    if (!(name in handlers)) throw new Error(`the demo does not call ${name}`);
    const run = handlers[name as keyof typeof handlers] as (desk: Desk, input: unknown) => Promise<unknown>;
    return (await run(desk, contract[name].input.parse(input))) as Output<M>;
  };
}

/** What leaks at the front or the pan is sealed without touching a pack. */
async function keepReseal(call: Caller, familyId: number, by: number): Promise<void> {
  const through = ['Waiting', 'Build', 'Final check', 'Ready', 'Picked up'];
  const stages = (await call('jobs.listStages', {})).filter(({ name }) => through.includes(name));
  await call('specs.saveSmallJob', {
    familyId,
    smallJobId: null,
    name: 'Reseal',
    stageIds: stages.map(({ stageId }) => stageId),
    checkNames: ['Front end play', 'Pump bolts', 'Extension housing', 'Pan', 'Cooler flow in 30 s'],
    listNames: [],
    by,
  });
}

export async function fillDemoShop(shop: OpenShop): Promise<void> {
  await shop.write((writing) =>
    fillShop(writing, {
      shopName: 'Harrow Lane Transmission',
      lengthUnit: 'thou',
      paper: 'letter',
      personName: 'Rosa Aldane',
      personInitials: 'RA',
      isDemo: true,
    }),
  );
  await shop.write((writing) => changeSettings(writing, { warrantyMonths: 12, warrantyDistance: 12_000 }));
  const call = callerOn(shop);
  const by = 1;
  const { familyId } = await call('specs.addFamily', { name: 'KX3', by });
  const pictures = await keepKx3Pictures(call, by);
  await call('specs.saveSheet', {
    familyId,
    sheet: { ...kx3Sheet, pictures },
    sourceNote: 'invented, for the demo',
    by,
  });
  await keepReseal(call, familyId, by);
  await layOutLooseSteels(call, by);
  const { lineId } = await call('indicators.addLine', practiceLine);
  const job = await openJob(call, familyId, by);
  await moveTo(job, 'As found');
  await measureAsFound(job, lowReverseOffTheLine(lineId));
  await moveTo(job, 'Teardown');
  await answerLists(job, 'teardown');
  await writeFindings(job);
  const { jobId } = job;
  await call('jobs.promiseDay', { jobId, on: dayAfter(shop.clock().slice(0, 10), 3), reason: '', by });
  await call('jobs.logCall', {
    jobId,
    direction: 'we called',
    withWhom: 'Tam Okoro',
    said: 'Front end play is far out; told him a washer, not a case. Friday is fine with him.',
    by,
  });
  await layOutOtherSteels(call, by);
  const { personId: other } = await shop.write((writing) => addPerson(writing, { name: 'Jonas Hale', initials: 'JH' }));
  await layOutGauges(call, [by, other], by, shop.clock());
  const dial = (await call('gauges.listGauges', {})).find(({ kind }) => kind === 'dial plunger');
  await call('indicators.changeLine', { lineId, settings: { ...practiceLine, gaugeId: dial?.gaugeId } });
  await stockTheShelves({ call, familyId, jobId, now: shop.clock(), by });
  await call('jobs.checkIn', {
    customer: { name: 'Ilse Brandvold', phone: '555 0144', email: '' },
    unit: { familyId, serial: 'KX3-20-0417', vehicle: 'delivery van', use: 'street' },
    complaint: 'Late into third when cold.',
    caseTag: '2',
    distance: { amount: 91_250, unit: 'miles' },
    by,
  });
  await carryOldCardsIn(shop, by, other);
}

/** The third hand of those years works elsewhere now. */
async function carryOldCardsIn(shop: OpenShop, first: number, second: number): Promise<void> {
  const mira = { name: 'Mira Tolland', initials: 'MT' };
  const { personId: third } = await shop.write((writing) => addPerson(writing, mira));
  const { leftAgo_days, ...planting } = history;
  const until = dayAfter(shop.clock().slice(0, 10), -leftAgo_days);
  await growHistory(shop, { ...planting, until }, [first, second, third]);
  await shop.write((writing, now) => retirePerson(writing, now, { personId: third }));
}
