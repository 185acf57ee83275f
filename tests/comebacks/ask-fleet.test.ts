// A question about the fleet runs off the event loop, tells how far it is, can be ended, and goes with its file.
import { expect, test } from 'vitest';
import type { FleetProgress } from '../../app/comebacks/fleet-progress.ts';
import { dispatch } from '../../main/rpc/dispatch.ts';
import { type BuildToMake, daysBefore, everything, shopWithBuilds, today } from './fleet-shop.ts';

/** So many that the shelf is filled in several lots. */
const many = Array.from({ length: 450 }, (_, i): BuildToMake => {
  const deliveredOn = daysBefore(today, 400 + i);
  const visits = i % 30 === 0 ? [{ on: daysBefore(deliveredOn, -(20 + i)), outcome: 'ours' }] : [];
  return { deliveredOn, read: { 'Stator bushing': 25_400 * (1 + (i % 7)) }, visits };
});

test('it tells how far it is, answers the same again, and the window hears when it is over', async () => {
  const { desk, ask } = await shopWithBuilds(many);
  const heard: FleetProgress[] = [];
  desk.fleet.onProgress((progress) => heard.push(progress));
  const first = await ask();
  expect(first).toMatchObject({ selected: 450, events: 15 });
  expect(heard).toEqual([
    ...[0, 100, 200, 300, 400].map((done) => ({ done, of: 450, isOver: false })),
    { done: 0, of: 0, isOver: true },
  ]);
  heard.length = 0;
  expect(await ask()).toEqual(first);
  expect(heard).toEqual([{ done: 0, of: 0, isOver: true }]);
});

test('a stop ends it between two lots, with nothing half written, and it goes on from there when asked again', async () => {
  const { desk, ask, familyId, call } = await shopWithBuilds(many);
  const onShelf = () => desk.shop().read((reading) => reading.selectFrom('as_built').select('job_id').execute());
  let isStopping = false;
  desk.fleet.onProgress(({ done }) => {
    if (done < 100 || isStopping) return;
    isStopping = true;
    void call('comebacks.stopAsking', {});
  });
  const stopped = await dispatch(desk, 'comebacks.askFleet', everything(familyId));
  expect(stopped).toMatchObject({ ok: false, error: { kind: 'refusal', code: 'stopped' } });
  // Whatever lot was being written is written whole.
  const kept = (await onShelf()).length;
  expect(kept).toBeGreaterThanOrEqual(100);
  expect(await ask()).toMatchObject({ selected: 450, events: 15 });
  expect(await onShelf()).toHaveLength(450);
  const checks = await desk.shop().read((reading) => reading.selectFrom('as_built_checks').selectAll().execute());
  expect(checks).toHaveLength(450);
});

test('a later question ends the one that runs', async () => {
  const { desk, familyId } = await shopWithBuilds(many);
  const asked = everything(familyId);
  const first = dispatch(desk, 'comebacks.askFleet', asked);
  const second = dispatch(desk, 'comebacks.askFleet', { ...asked, deliveredFrom: daysBefore(today, 600) });
  expect(await first).toMatchObject({ ok: false, error: { kind: 'refusal', code: 'overtaken' } });
  expect(await second).toMatchObject({ ok: true, value: { selected: 201 } });
});

test('closing the file ends the question and the worker, and what was written meanwhile is seen by the next', async () => {
  const { desk, call, ask, familyId, jobIds, by } = await shopWithBuilds(many);
  const running = dispatch(desk, 'comebacks.askFleet', everything(familyId));
  await call('shop.openOwnShop', {});
  expect(await running).toMatchObject({ ok: false, error: { kind: 'refusal', code: 'stopped' } });
  expect(await ask()).toMatchObject({ selected: 450 });
  await call('jobs.takeBackDelivery', { jobId: jobIds[1], reason: 'leaked in the yard', by });
  expect(await ask()).toMatchObject({ selected: 449 });
});
