// What to swap in all packs of a unit, walked by keyboard from the bench to the pull list.
import { packNamed, readCheck } from '../../main/shop/demo/kx3-job.ts';
import { expect, expectNoAxeComplaints, test } from './book.ts';

test('from the bench to the plates to pull', async ({ page, call }) => {
  // The second unit of the demo shop with the Direct pack of the example: 91.0 out for 84.0 reads 45.0.
  const { familyId } = await call('jobs.getJob', { jobId: 2 }).then(({ unit }) => unit);
  const job = { call, jobId: 2, sheet: await call('specs.getRevision', { familyId }), by: 1 };
  await call('stock.addPiece', { kind: 'steel', outline: 'KX3 direct', tag: 'Z1', typed: '84.0', by: 1 });
  await readCheck(job, 'Direct clearance', 'as found', ['5 32', '5 33', '6 33', '5 33']);
  const pack = packNamed(job.sheet, 'Direct');
  const steels = ['92.0', '91.0', '92.5', '91.5'];
  const pieces = pack.slots
    .filter(({ kind }) => kind === 'steel')
    .map(({ slotId }, index) => ({ slotId, from: { typed: steels[index] } }));
  await call('packs.recordMockUp', { jobId: 2, packId: pack.packId, pieces, note: '', by: 1 });

  await page.goto(new URL('/#/bench?unit=2', page.url()).href);
  await expect(page.getByRole('list', { name: 'Packs' })).toBeVisible();
  await page.keyboard.press('s');
  const packs = page.getByRole('table', { name: 'Every open pack' });
  await expect(packs.getByRole('row', { name: /Direct/ })).toContainText('45.0');
  const pull = page.getByRole('table', { name: 'Plates to pull' });
  await expect(pull.getByRole('row', { name: /84\.0/ })).toContainText(/Direct, steel [23]/);
  await expectNoAxeComplaints(page);
  await page.keyboard.press('b');
  await expect(page.getByRole('list', { name: 'Packs' })).toBeVisible();
});
