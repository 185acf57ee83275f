// Build and Final by keyboard: ticks, a wrong count, a ball on the picture, a stall held too long.
import { expect, expectNoAxeComplaints, test } from './book.ts';

test('a build is gone through by keyboard, and what is off is said where it is and at the top', async ({
  page,
  call,
}) => {
  const goTo = (address: string) =>
    page.evaluate((hash) => {
      location.hash = hash;
    }, address);
  await goTo('/jobs/1/build');
  const line = (name: string) => page.getByRole('listitem', { name, exact: true });
  await line('Ring seated all round').first().getByRole('button', { name: 'Done' }).press('Enter');
  await expect(line('Ring seated all round').first()).toContainText('done');

  const count = line('Check balls').getByRole('textbox', { name: 'Check balls' });
  await count.focus();
  await page.keyboard.type('4');
  await page.keyboard.press('Enter');
  await expect(line('Check balls')).toContainText('4 in, 5 asked for');
  await expect(page.getByText(/Off: Check balls\./)).toBeVisible();
  await expect(page.getByRole('textbox', { name: 'Why Check balls stands as it is' })).toBeFocused();
  await expect(line('Direct feed hole, in')).toContainText('Old, then >, then new: .062 > .086');

  // By keyboard the ball is ticked in the table beside the picture, by mouse on the picture itself.
  const balls = page.getByRole('table', { name: 'Valve body' });
  await balls.getByRole('button', { name: 'Tick: 1, Ball 1' }).press('Enter');
  await expect(balls.getByRole('button', { name: 'Done: 1, Ball 1' })).toBeVisible();
  await expect(line('Ball 1')).toContainText('done');
  const onPicture = page.locator('[aria-hidden="true"]:has(> button[tabindex="-1"])').last();
  await onPicture.locator('button').nth(1).click();
  await expect(balls.getByRole('button', { name: 'Done: 2, Ball 2' })).toBeVisible();
  const lists = await call('jobs.listListsOfJob', { jobId: 1, when: 'build' });
  const standing = lists.flatMap(({ lines }) => lines).map(({ words, standing }) => `${words} ${standing}`);
  expect(standing).toEqual(expect.arrayContaining(['Ball 1 good', 'Ball 2 good', 'Ball 3 open', 'Check balls off']));
  await expectNoAxeComplaints(page);

  await goTo('/jobs/1/final');
  await line('Stall, D').getByRole('textbox', { name: 'Stall, D' }).focus();
  await page.keyboard.type('2250 7');
  await page.keyboard.press('Enter');
  await expect(line('Stall, D')).toContainText('2250 rpm for 7 s: over the cap of 5 s');
  await expect(page.getByRole('textbox', { name: 'Why Stall, D stands as it is' })).toBeFocused();
  await expectNoAxeComplaints(page);
});
