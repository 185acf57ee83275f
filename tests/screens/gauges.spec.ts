// The Gauges place by keyboard: a gauge written down and checked, a repeat test read to its end, and its other sides.
import { expect, expectNoAxeComplaints, test } from './book.ts';

test('a gauge is written down, checked and found out, and a repeat test is read blind to its end', async ({
  page,
  call,
}) => {
  await page.getByRole('link', { name: 'Gauges' }).press('Enter');
  await expect(page.getByRole('row').filter({ hasText: 'Lever 2' })).toContainText('overdue since');
  await page.keyboard.press('n');
  await page.getByRole('textbox', { name: 'Tag or name' }).fill('Dial 9');
  await page.getByRole('textbox', { name: 'Reads to' }).fill('1');
  await page.getByRole('textbox', { name: 'Permitted error' }).fill('0.5');
  await page.keyboard.press('Control+Enter');
  await expect(page.getByRole('heading', { name: 'Dial 9' })).toBeVisible();
  await page.keyboard.press('c');
  await page.getByRole('textbox', { name: 'It should say, point 1' }).fill('50');
  await page.getByRole('textbox', { name: 'It says, point 1' }).fill('52');
  await page.keyboard.press('Control+Enter');
  await expect(page.getByText('found out, +2 thou at the worst, permitted ± 0.5.')).toBeVisible();
  await page.getByRole('link', { name: 'What it read since it was good' }).press('Enter');
  await expect(page.getByText('It read nothing in that time.')).toBeVisible();

  await page.getByRole('link', { name: 'Repeat tests' }).press('Enter');
  await page.keyboard.press('n');
  await page.getByRole('textbox', { name: 'Name of the test' }).fill('Dial 9 on two packs');
  await page.getByRole('textbox', { name: 'Parts, one a line' }).fill('a\nb');
  for (const name of ['Rosa Aldane', 'Jonas Hale']) await page.getByRole('checkbox', { name }).press('Space');
  await page.getByRole('radio', { name: '2', exact: true }).press('Space');
  await page.getByRole('button', { name: 'Draw the order and begin' }).press('Enter');
  await expect(page.getByText('0 of 8 read')).toBeVisible();
  const [begun] = await call('gauges.listStudies', {});
  const studyId = begun?.studyId ?? 0;
  for (let taken = 0; taken < 8; taken += 1) {
    await expect(page.getByText(`${taken} of 8 read`)).toBeVisible();
    // Packs of 27 and 31, each read a thou further in the second round.
    const { next } = await call('gauges.getStudy', { studyId });
    await page.keyboard.type(`4 ${(next?.part === 'a' ? 23 : 27) + (next?.round === 2 ? 1 : 0)}`);
    await page.keyboard.press('Enter');
  }
  await expect(page.getByText('of 100 of what differs')).toBeVisible();
  await page.getByRole('button', { name: 'Why' }).press('Enter');
  await expect(page.getByText('distinct categor')).toBeVisible();
  expect(await call('gauges.getStudy', { studyId })).toMatchObject({
    name: 'Dial 9 on two packs',
    taken: 8,
    next: null,
  });
  await expectNoAxeComplaints(page);

  await page.getByRole('link', { name: 'Two methods' }).press('Enter');
  for (const [feeler, air] of [
    ['25 26', '4 23'],
    ['28 29', '4 26'],
    ['30 32', '5 27'],
  ] as const) {
    await page.keyboard.press('p');
    await page.getByRole('textbox', { name: 'What was read' }).fill('Forward');
    await page.getByRole('textbox', { name: 'By feeler' }).fill(feeler);
    await page.getByRole('textbox', { name: 'By air' }).fill(air);
    await page.keyboard.press('Enter');
    await expect(page.getByRole('form', { name: 'Enter a pair' })).toBeHidden();
  }
  // 25.5, 28.5 and 31 less 27, 30 and 32: −1.5, −1.5 and −1, on average −1.33.
  await expect(page.getByText('Feeler reads 1.3 thou below air on average')).toBeVisible();
  await page.getByRole('link', { name: 'Over the builds' }).press('Enter');
  // A hundred old builds stand behind the demo.
  await expect(page.getByRole('region', { name: 'Over the builds' }).getByRole('img')).toBeVisible();
});
