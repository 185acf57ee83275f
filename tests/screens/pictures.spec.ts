// Pictures by keyboard: taken in on a sheet, points placed and moved, the newest number on the ticket, a lost file said.
import { readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { greyJpeg } from '../photos/small-jpeg.ts';
import { expect, expectNoAxeComplaints, test } from './book.ts';

test('the shop’s own picture gets its points by keyboard, and the ticket shows their numbers on it', async ({
  page,
  call,
  book,
}) => {
  await page.evaluate(() => {
    location.hash = '/specs/1/edit';
  });
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Choose a picture' }).click();
  await (await chooser).setFiles({ name: 'servo bore.jpg', mimeType: 'image/jpeg', buffer: greyJpeg });
  await expect(page.getByRole('textbox', { name: 'Title' })).toHaveValue('servo bore');
  await page.getByRole('button', { name: 'Add a point' }).press('Enter');
  await expect(page.getByRole('textbox', { name: 'Label' })).toBeFocused();
  await page.keyboard.press('Control+A');
  await page.keyboard.type('S');
  await page.getByRole('button', { name: 'Names' }).press('Enter');
  await page.getByRole('option', { name: 'Servo travel' }).press('Enter');
  await page.getByRole('button', { name: 'Move S on the picture' }).press('Enter');
  await expect(page.getByRole('button', { name: /^Point S/ })).toBeFocused();
  await page.keyboard.press('Shift+ArrowLeft');
  await page.keyboard.press('ArrowUp');
  await expect(page.getByRole('button', { name: /^Point S/ })).toHaveAccessibleName(
    /45 % from the left, 50 % from the top/,
  );
  await expectNoAxeComplaints(page);
  await page.keyboard.press('Control+S');
  await expect(page.getByText('Revision 2 is saved.')).toBeVisible();
  const { pictures } = await call('specs.getRevision', { familyId: 1 });
  expect(pictures.map(({ title }) => title)).toEqual(['Pump face', 'Case', 'Valve body', 'servo bore']);
  // Half of the way, one large step to the left, one small step up.
  expect(pictures[3]?.points).toMatchObject([
    { label: 'S', x_permille: 450, y_permille: 495, checkName: 'Servo travel' },
  ]);

  // The job came in under revision 1 and keeps its pictures; a leak-down of port A stands on both of them.
  const { checks } = await call('jobs.getJob', { jobId: 1 });
  const port = checks.find(({ name }) => name === 'Port A, Forward');
  const take = { jobId: 1, checkId: port?.checkId, phase: 'as found', mode: 'final', setup: null, note: '', by: 1 };
  const { takeId } = await call('readings.startTake', take);
  await call('readings.recordReading', { takeId, spot: 1, typed: '3', by: 1 });
  await page.evaluate(() => {
    location.hash = '/jobs/1';
  });
  const face = page.getByRole('table', { name: 'Pump face' });
  await expect(face.getByRole('row', { name: /Port A, Forward/ })).toContainText('3.0 psi');
  await expect(
    page.getByText(
      'Port A, Forward lies left on Pump face (A) and right on Case (C2); Port B, Direct the other way round.',
    ),
  ).toBeVisible();
  await expectNoAxeComplaints(page);
  await face.getByRole('link', { name: 'Port B, Direct' }).press('Enter');
  await expect(page.getByText('Rag over the other ports')).toBeVisible();

  const folder = readdirSync(book.folder, { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.jpg'),
  );
  for (const name of folder) rmSync(join(book.folder, name));
  await page.reload();
  await page.evaluate(() => {
    location.hash = '/jobs/1';
  });
  await expect(page.getByText('The file of this photo is not in the photos folder any more.').first()).toBeVisible();
  await expect(face.getByRole('row', { name: /Port A, Forward/ })).toContainText('3.0 psi');
});
