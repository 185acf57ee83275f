// `npm run --silent walk -- --out DIR`: the whole job of the example unit without a window. It makes a new shop file,
// calls the contract as the renderer does, says in a few lines what was read, planned and decided, and leaves the shop
// file and both copies of the build report in DIR.
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import type { MethodName, Output } from '../../../app/contract/contract.ts';
import { dayAfter } from '../../../app/jobs/calendar-days.ts';
import { formatAmount } from '../../../app/quantities/format-amount.ts';
import { unitNamed } from '../../../app/quantities/units.ts';
import { verdictWords } from '../../../app/readings/verdict-words.ts';
import { systemClock } from '../../ports/clock.ts';
import { dispatch } from '../../rpc/dispatch.ts';
import { measureAsFound } from '../../shop/demo/kx3-as-found.ts';
import { buildKx3 } from '../../shop/demo/kx3-build.ts';
import { type Caller, moveTo, openJob } from '../../shop/demo/kx3-job.ts';
import { answerLists } from '../../shop/demo/kx3-lists.ts';
import { kx3Sheet } from '../../shop/demo/kx3-sheet.ts';
import { layOutLooseSteels } from '../../shop/demo/kx3-swaps.ts';
import { Desk } from '../../shop/desk.ts';

const { values } = parseArgs({ options: { out: { type: 'string' } } });
if (values.out === undefined) {
  console.error('npm run --silent walk -- --out DIR');
  process.exit(2);
}
const folder = resolve(values.out);
if (existsSync(join(folder, 'shop.thoubook'))) {
  console.error(`There is a shop file in ${folder} already: name another folder.`);
  process.exit(2);
}
mkdirSync(folder, { recursive: true });
const desk = await Desk.at(folder, systemClock);

const call: Caller = async <M extends MethodName>(method: M, input: unknown): Promise<Output<M>> => {
  const reply = await dispatch(desk, method, input);
  if (!reply.ok) throw new Error(`${method}: ${reply.error.message}`);
  return reply.value;
};

await call('shop.createShop', {
  shopName: 'Harrow Lane Transmission',
  lengthUnit: 'thou',
  paper: 'letter',
  personName: 'Rosa Aldane',
  personInitials: 'RA',
});
await call('shop.changeSettings', { warranty: '12 months or 12,000 miles from the day in service' });
const by = 1;
const { familyId } = await call('specs.addFamily', { name: 'KX3', by });
await call('specs.saveSheet', { familyId, sheet: kx3Sheet, sourceNote: 'invented example', by });
await layOutLooseSteels(call, by);
const job = await openJob(call, familyId, by);
const { jobId } = job;
await moveTo(job, 'As found');
await measureAsFound(job);
await answerLists(job, 'teardown');
await moveTo(job, 'Waiting');
const toBuild = {
  jobId,
  stageId: (await call('jobs.listStages', {})).find(({ name }) => name === 'Build')?.stageId,
  by,
};
console.log(await dispatchRefused('jobs.moveToStage', toBuild));
await call('jobs.promiseDay', { jobId, on: dayAfter(desk.clock().slice(0, 10), 3), reason: '', by });
await moveTo(job, 'Build');
await buildKx3(job, (line) => console.log(line), dispatchRefused);
await moveTo(job, 'Final check');
await call('jobs.signOff', { jobId, place: 'on stand', note: '', by });
await moveTo(job, 'Ready');

const ticket = await call('jobs.getJob', { jobId });
for (const check of ticket.checks) {
  const { latest } = check;
  if (!latest || latest.value === null) continue;
  const unit = unitNamed(check.unit);
  const plusMinus = latest.expanded === null ? '' : ` ± ${formatAmount(latest.expanded, unit)}`;
  console.log(
    `${check.name}: ${formatAmount(latest.value, unit)}${plusMinus} ${check.unit}, ${verdictWords(latest.verdict, check)}`,
  );
}
console.log(ticket.missing.length === 0 ? 'Nothing is missing.' : `${ticket.missing.length} checks are open.`);

for (const copy of ['shop', 'customer'] as const) {
  const { fileName, pdfBase64 } = await call('jobs.printBuildReport', { jobId, copy });
  writeFileSync(join(folder, fileName), Buffer.from(pdfBase64, 'base64'));
  console.log(`Wrote ${fileName}.`);
}
await desk.close();
console.log('Wrote shop.thoubook.');

/** Makes a call that must be refused and answers its sentence. */
async function dispatchRefused(method: MethodName, input: unknown): Promise<string> {
  const reply = await dispatch(desk, method, input);
  if (reply.ok || reply.error.kind !== 'refusal') throw new Error(`${method} should have been refused`);
  return reply.error.message;
}
