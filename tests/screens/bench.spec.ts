// Reading at the bench: the pack brought into its band by keyboard alone, what is asked instead of guessed, and nothing
// lost when the window closes in the middle.
import type { Page } from '@playwright/test';
import { type Call, expect, expectNoAxeComplaints, test } from './book.ts';

const thou = 25_400;

/** The second unit of the demo shop came in today and nothing of it was read yet. */
async function openForwardOfUnit2(page: Page): Promise<void> {
  await goTo(page, '/bench?unit=2');
  await expectPrompt(page, '30 of 30 checks are open.');
  await page.keyboard.press('1');
  await expectPrompt(page, 'How does the dial stand?');
}

async function goToFirstSpot(page: Page): Promise<void> {
  await openForwardOfUnit2(page);
  await page.keyboard.press('Enter');
  await expectPrompt(page, /^Ring seated all round\?\s*Last friction down\?$/);
  await page.keyboard.press('Enter');
  await expectPrompt(page, /^Hand off\./);
  await page.keyboard.press('Enter');
  await expectPrompt(page, 'Spot 1, at the mark. Zero the dial.');
}

async function goTo(page: Page, place: string): Promise<void> {
  await page.goto(new URL(`/#${place}`, page.url()).href);
}

async function expectPrompt(page: Page, words: string | RegExp): Promise<void> {
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(words, { useInnerText: true });
}

async function enter(page: Page, typed: string): Promise<void> {
  await page.keyboard.type(typed);
  await page.keyboard.press('Enter');
}

function entry(page: Page) {
  return page.getByRole('textbox', { name: 'push-down and air travel, thou' });
}

test('a loose pack is read as found, swapped as planned and read final, on a number pad', async ({ page, call }) => {
  await goToFirstSpot(page);
  await enter(page, '4+27');
  await expectPrompt(page, 'Spot 2. Turn the drum to 90°.');
  await enter(page, '5+27');
  await expectPrompt(page, 'Spot 3. Turn the drum to 180°.');
  await enter(page, '5+28');
  await expectPrompt(page, 'Spot 4. Turn the drum to 270°.');
  await enter(page, '4+28');
  await expectPrompt(page, '32.0 ± 1.5, 31 to 33. Loose by 2.0.');

  // What sits in it: the four steels typed, the frictions and the backing plate at their nominal heights.
  await page.keyboard.press('Enter');
  await expectPrompt(page, 'What sits in the pack? Steel 1, nearest the piston.');
  for (const [typed, sentence] of [
    ['78 mm', /too large for a steel/],
    ['72 74', '“74” looks like another height: give tags a letter.'],
  ] as const) {
    await enter(page, typed);
    await expect(page.getByRole('alert')).toContainText(sentence);
    await page.getByRole('textbox').fill('');
  }
  for (const [slot, height] of [
    ['Steel 1, nearest the piston', '77.0'],
    ['Steel 2', '76.5'],
    ['Steel 3', '78.0'],
    ['Steel 4', '77.5'],
  ] as const) {
    await expectPrompt(page, `What sits in the pack? ${slot}.`);
    await enter(page, height);
  }
  await expectPrompt(page, '879.0 in the pack, all told. Is that what sits in it?');
  await page.keyboard.press('Enter');

  // 911.0 − 879.0 = 32.0; the one swap that comes nearest to 25 is 76.5 for 83.0, which leaves 25.5.
  await expectPrompt(page, /^One swap will do/);
  await page.keyboard.press('Enter');
  await expectPrompt(page, 'Ring off. Swap steel 2. Ring on.');
  await expect(page.getByText('then it should read').locator('..')).toContainText('25.5');
  await page.keyboard.press('Enter');

  await expectPrompt(page, /^Ring seated all round\?\s*Plates counted 4 \+ 4\?\s*Last friction down\?$/);
  await page.keyboard.press('Enter');
  await expectPrompt(page, /^Hand off\./);
  await page.keyboard.press('Enter');
  await expectPrompt(page, 'At the mark. Zero the dial.');
  await enter(page, '4+21');
  await expectPrompt(page, 'Once more, at the mark. Zero the dial.');
  await enter(page, '4+22');
  await expectPrompt(page, /^25\.5 ± \d\.\d\. In\.$/);
  await expect(page.getByText(/^Predicted 25\.5 ± \d\.\d, read 25\.5\.$/)).toBeVisible();

  await page.keyboard.press('Enter');
  await expectPrompt(page, 'Spot 1, at the mark. Zero the dial.');
  for (const [typed, next] of [
    ['4 21', 'Spot 2. Turn the drum to 90°.'],
    ['4 22', 'Spot 3. Turn the drum to 180°.'],
    ['5 22', 'Spot 4. Turn the drum to 270°.'],
    ['5 21', '26.0 ± 1.5, 25 to 27. In.'],
  ] as const) {
    await enter(page, typed);
    await expectPrompt(page, next);
  }
  await page.keyboard.press('Enter');
  await expectPrompt(page, '29 of 30 checks are open.');

  const { checks } = await call('jobs.getJob', { jobId: 2 });
  const forward = checks.find((check) => check.name === 'Forward clearance');
  expect(forward?.latest).toMatchObject({ phase: 'final', value: 26 * thou, verdict: { word: 'in' } });
  expect(forward?.asFound).toMatchObject({ value: 32 * thou, verdict: { word: 'loose' } });
});

test('what is ambiguous is asked where the hand is, and what was typed stays', async ({ page }) => {
  await goToFirstSpot(page);
  for (const [typed, question] of [
    ['.5 27', /thou or inches\?/],
    ['45 in', /too large for a clearance/],
    ['4 23 5', /holds 3 numbers/],
    ['4,5 23', /writes decimals with a point/],
  ] as const) {
    await enter(page, typed);
    await expect(page.getByRole('alert')).toContainText(question);
    await expect(entry(page)).toHaveValue(typed);
    await entry(page).fill('');
  }
  // A dial that ran backwards, a minus for the same, and a wavering needle: 4 + 23 = 27, 4.5 + 27 = 31.5.
  for (const [typed, saidBack] of [
    ['96 23', '27.0 thou'],
    ['-4 23', '27.0 thou'],
    ['4-5 27', '31.5 thou'],
  ] as const) {
    await entry(page).fill(typed);
    await expect(page.getByText(saidBack)).toBeVisible();
  }
  await entry(page).fill('');
  await enter(page, '27');
  await expect(page.getByRole('alert')).toContainText('Is 27 the air travel alone, or the whole clearance?');
  await page.keyboard.press('a');
  await expectPrompt(page, 'Spot 2. Turn the drum to 90°.');
  await expect(page.getByRole('cell', { name: 'air only' })).toBeVisible();
});

test('a misread line is replaced with a reason, and the first one is kept', async ({ page, call }) => {
  await goToFirstSpot(page);
  await enter(page, '4 72');
  await expectPrompt(page, 'Spot 2. Turn the drum to 90°.');
  await page.keyboard.press('r');
  await expectPrompt(page, /^What was wrong with 4 72/);
  await page.keyboard.press('2');
  await expectPrompt(page, /^In place of 4 72/);
  await enter(page, '4 27');
  await expectPrompt(page, 'Spot 2. Turn the drum to 90°.');
  const take = await call('readings.latestTake', { jobId: 2, checkId: await forwardOf(call) });
  expect(take?.readings.map(({ typed, reason }) => [typed, reason])).toEqual([
    ['4 72', ''],
    ['4 27', 'typed it wrong'],
  ]);
});

test('a slip is asked about while the hand is there, and any earlier line can be put right', async ({ page, call }) => {
  await goToFirstSpot(page);
  await enter(page, '4 27');
  await expectPrompt(page, 'Spot 2. Turn the drum to 90°.');
  await enter(page, '4 270');
  await expect(page.getByText('274.0 thou, where the other spots read 31.0? Enter: it is so.')).toBeVisible();
  // What is meant is taken as it is.
  await page.keyboard.press('Enter');
  await expectPrompt(page, 'Spot 3. Turn the drum to 180°.');
  await page.keyboard.press('r');
  await expectPrompt(page, 'What was wrong with 4 270 at spot 2, 90°?');
  await page.keyboard.press('o');
  await expectPrompt(page, 'What was wrong with 4 27 at spot 1, mark?');
  await page.keyboard.press('b');
  await page.keyboard.press('r');
  await page.keyboard.press('2');
  await enter(page, '4 28');
  await expectPrompt(page, 'Spot 3. Turn the drum to 180°.');
  const take = await call('readings.latestTake', { jobId: 2, checkId: await forwardOf(call) });
  expect(take?.evaluation.mean).toBe(31.5 * thou);
});

test('zeroed again on the pressed plate, the air travel is the whole clearance', async ({ page }) => {
  await goToFirstSpot(page);
  await page.keyboard.press('z');
  // Push 5, then 38 from there: 38, not 43.
  await page.keyboard.type('5 38');
  await expect(page.getByText('38.0 thou')).toBeVisible();
  // A lone number is then the whole: nothing is left to ask.
  await page.getByRole('textbox').fill('');
  await enter(page, '38');
  await expectPrompt(page, 'Spot 2. Turn the drum to 90°.');
});

test('a window that closes in the middle comes back to the same spot with what was typed', async ({ page }) => {
  await goToFirstSpot(page);
  await enter(page, '4 27');
  await expectPrompt(page, 'Spot 2. Turn the drum to 90°.');
  await page.keyboard.type('5 2');
  await page.reload();
  await expectPrompt(page, 'Did the drum move since?');
  await page.keyboard.press('Enter');
  await expectPrompt(page, 'Spot 2. Turn the drum to 90°.');
  await expect(entry(page)).toHaveValue('5 2');
  await enter(page, '7');
  await expectPrompt(page, 'Spot 3. Turn the drum to 180°.');
});

test('an end play that is loose gets the washer that brings it to its target', async ({ page, call }) => {
  const { checks } = await call('jobs.getJob', { jobId: 1 });
  const endPlay = checks.find((check) => check.name === 'Front end play');
  await goTo(page, `/bench/1/${endPlay?.checkId}`);
  await expectPrompt(page, /^31\.0 ± \d\.\d\. Loose by 7\.0\.$/);
  await page.keyboard.press('Enter');
  await expectPrompt(page, 'Which washer is in?');
  await enter(page, '66');
  // 66 + 31 = 97; 97 − 78 = 19, one from the target of 18.
  await expectPrompt(page, 'Washer 66.0 in, end play 31.0: fit 78.0, it should read 19.0.');
  await page.keyboard.press('Enter');
  await expectPrompt(page, 'Front end play.');
  await enter(page, '19');
  await expectPrompt(page, /^19\.0 ± \d\.\d\. In\.$/);
});

test('nothing is out of reach while a pack is read', async ({ page }) => {
  await openForwardOfUnit2(page);
  await expectNoAxeComplaints(page);
  await page.keyboard.press('c');
  await goToFirstSpot(page);
  await enter(page, '4 27');
  await expectPrompt(page, 'Spot 2. Turn the drum to 90°.');
  await expectNoAxeComplaints(page);
});

test('nothing is out of reach while a swap is chosen', async ({ page, call }) => {
  await goTo(page, `/bench/1/${await forwardOf(call)}`);
  await expectPrompt(page, '32.0 ± 1.5, 31 to 33. Loose by 2.0.');
  await page.keyboard.press('?');
  await expect(page.getByRole('heading', { name: 'Why' })).toBeVisible();
  await expectNoAxeComplaints(page);
  await page.keyboard.press('Escape');
  await expect(page.getByRole('heading', { name: 'Why' })).toBeHidden();
  await page.keyboard.press('Enter');
  await expectPrompt(page, /^One swap will do/);
  await expectNoAxeComplaints(page);
  await page.keyboard.press('1');
  await expectPrompt(page, 'Ring off. Swap steel 2. Ring on.');
  await expectNoAxeComplaints(page);
});

test('a height written down wrong is put right, and a loose plate is taken off the list', async ({ page, call }) => {
  await goTo(page, `/bench/1/${await forwardOf(call)}`);
  await expectPrompt(page, '32.0 ± 1.5, 31 to 33. Loose by 2.0.');
  await page.keyboard.press('h');
  await expectPrompt(page, 'Which height is wrong?');
  // Piston below: the last row is steel 1.
  await page.keyboard.press('ArrowUp');
  await expectPrompt(page, 'Steel 1 A31: 77.0 was written down wrong. What is right?');
  await enter(page, '78 mm');
  await expect(page.getByRole('alert')).toContainText('too large for a steel');
  await page.getByRole('textbox').fill('');
  await enter(page, '77.5');
  await expect(page.getByRole('row', { name: 'Steel 1 A31' })).toContainText('77.5');
  const { packId } = (await call('jobs.getJob', { jobId: 1 })).checks.find(
    ({ name }) => name === 'Forward clearance',
  ) ?? { packId: null };
  const { mockUps } = await call('packs.getPack', { jobId: 1, packId });
  expect(mockUps.at(-1)?.pieces.find(({ piece }) => piece.tag === 'A31')?.piece.height_nm).toBe(77.5 * thou);

  await page.keyboard.press('Enter');
  await expectPrompt(page, /Loose by 2\.0\.$/);
  await page.keyboard.press('Enter');
  await expectPrompt(page, /^One swap will do/);
  await page.keyboard.press('l');
  await expectPrompt(page, /^A loose steel/);
  await page.keyboard.press('h');
  await expectPrompt(page, 'Which height is wrong?');
  const before = (await call('stock.listLoose', { outline: '' })).pieces.length;
  await expect(page.getByRole('row').nth(1)).toBeVisible();
  await page.keyboard.press('ArrowDown');
  await expectPrompt(page, /^Steel A\d+: /);
  await page.keyboard.press('x');
  await expectPrompt(page, 'Which height is wrong?');
  expect((await call('stock.listLoose', { outline: '' })).pieces).toHaveLength(before - 1);
});

test('the list of what is open is within reach, and U turns to the other unit', async ({ page }) => {
  await goTo(page, '/bench?unit=1');
  await expectPrompt(page, '29 of 30 checks are open.');
  await expectNoAxeComplaints(page);
  await page.keyboard.press('u');
  await expectPrompt(page, '30 of 30 checks are open.');
});

async function forwardOf(call: Call): Promise<number> {
  const { checks } = await call('jobs.getJob', { jobId: 2 });
  return checks.find((check) => check.name === 'Forward clearance')?.checkId ?? 0;
}
