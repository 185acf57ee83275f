// A unit that came back, by keyboard: from the rail to a decided cause, on a ticket that is opened for it.
import { expect, expectNoAxeComplaints, test } from './book.ts';

test('a comeback is logged from the rail, decided, given its cause, and told on both tickets', async ({
  page,
  call,
}) => {
  const [family] = await call('specs.listFamilies', {});
  const built = await call('jobs.checkIn', {
    customer: { name: 'Henrike Vos', phone: '555 0177', email: '' },
    unit: { familyId: family?.familyId, serial: 'RET-7', vehicle: 'camper', use: 'tow' },
    complaint: 'Slips in third.',
    caseTag: 'BLUE 7',
    distance: { amount: 80_000, unit: 'miles' },
    by: 1,
  });
  const today = (await call('jobs.getJob', { jobId: built.jobId })).openedAt.slice(0, 10);
  await call('jobs.deliver', {
    reason: 'they know what is open',
    jobId: built.jobId,
    deliveredTo: 'Henrike Vos',
    deliveredOn: today,
    distance: { amount: 80_010, unit: 'miles' },
    handedOverById: 1,
    warranty: {
      terms: { months: 12, distance: { amount: 12_000, unit: 'miles' }, passes: null },
      inServiceOn: today,
    },
    by: 1,
  });

  await page.getByRole('link', { name: 'Comebacks', exact: true }).press('Enter');
  await page.getByRole('heading', { name: 'Came back' }).waitFor();
  await page.keyboard.press('n');
  // As a scanner types the tag; the one build that carries it is meant.
  await page.getByRole('combobox', { name: 'Case tag, serial, job number or customer' }).pressSequentially('blue 7');
  await expect(page.getByText('Henrike Vos, 555 0177')).toBeVisible();
  await expect(page.getByRole('textbox', { name: 'What the customer says' })).toBeFocused();
  await page.keyboard.type('Slips again when hot.');
  await page.getByRole('textbox', { name: 'Odometer' }).fill('84,510');
  await expect(page.getByText('4,500 of 12,000 miles used')).toBeVisible();
  await page.getByRole('radio', { name: 'not decided yet' }).focus();
  await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('radio', { name: 'in warranty' })).toBeChecked();
  await page.keyboard.press('Control+Enter');

  await expect(page.getByRole('heading', { name: /^Came back as job/ })).toBeVisible();
  await page.getByRole('button', { name: 'Say what it was' }).press('Enter');
  await page.getByRole('radio', { name: 'not known yet' }).focus();
  await page.keyboard.press('ArrowRight');
  await page.getByRole('textbox', { name: 'What it cost the shop' }).fill('412.50');
  await page.keyboard.press('Control+Enter');
  await expect(page.getByRole('region', { name: 'What it was' })).toContainText('412.50');

  await page.getByRole('button', { name: 'Say a cause' }).press('Enter');
  await page.getByRole('radio', { name: 'too tight' }).press('Space');
  await page.getByRole('radio', { name: 'Forward', exact: true }).press('Space');
  await page.getByRole('radio', { name: 'known', exact: true }).press('Space');
  await page.keyboard.press('Control+Enter');
  const cause = page.getByRole('table', { name: 'Causes' }).getByRole('row').filter({ hasText: 'too tight' });
  await expect(cause).toContainText('Forward');
  await expect(cause).toContainText('known');
  await expectNoAxeComplaints(page);

  await page.getByRole('link', { name: `As built, job ${built.number}` }).press('Enter');
  await expect(page.getByText(/Came back on .* as/)).toBeVisible();
  const [line] = await call('comebacks.listComebacks', { only: 'ours' });
  expect(line).toMatchObject({ builtNumber: built.number, causes: ['too tight'], cost_cents: 412_50 });
});
