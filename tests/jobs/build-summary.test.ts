// Where the build stands in one line, on the real sheet of the example unit.
import { expect, test } from 'vitest';
import { sayBuild } from '../../app/jobs/build-summary.ts';
import { openJob } from '../../main/shop/demo/kx3-job.ts';
import { answerLists } from '../../main/shop/demo/kx3-lists.ts';
import { shopWithKx3 } from '../desk.ts';

test('what is open, off and outside the limits is said, and what was let stand is not', async () => {
  const { call, familyId, by } = await shopWithKx3();
  const job = await openJob(call, familyId, by);
  const { jobId } = job;
  const ofBuild = async (...names: readonly string[]) => {
    const { checks } = await call('jobs.getJob', { jobId });
    const lists = await call('jobs.listListsOfJob', { jobId, when: 'build' });
    return sayBuild(
      checks.filter(({ name }) => names.includes(name)),
      lists,
    );
  };
  // Counted on the sheet: 4 + 5 + 5 lines of the packs, 10 of the valve body, 1 of the converter.
  expect(await ofBuild('Servo travel', 'Rear end play')).toBe('Open: 25 lines, 2 checks.');
  await answerLists(job, 'build');
  const lines = (await call('jobs.listListsOfJob', { jobId, when: 'build' })).flatMap((list) => list.lines);
  const lineId = lines.find(({ words }) => words === 'Check balls')?.lineId;
  const answer = { jobId, lineId, answer: { kind: 'counted', count: 4 }, by };
  await call('jobs.answerLine', answer);
  const { checks } = await call('jobs.getJob', { jobId });
  const checkId = checks.find(({ name }) => name === 'Servo travel')?.checkId;
  const take = { jobId, checkId, phase: 'final', mode: 'final', setup: null, note: '', by };
  const { takeId } = await call('readings.startTake', take);
  // 200 is well over the limit of 150.
  await call('readings.recordReading', { takeId, spot: 1, typed: '200', by });
  expect(await ofBuild('Servo travel')).toBe('Off: Check balls. Outside the limits: Servo travel (loose).');
  await call('jobs.answerLine', { ...answer, reason: 'one left out on purpose' });
  await call('jobs.overrideCheck', { jobId, checkId, reason: 'known good', by });
  expect(await ofBuild('Servo travel')).toBe('Everything is answered, read and in.');
});
