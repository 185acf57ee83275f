// A unit leaves with its warranty, by keyboard; a small job has only what it takes; and who is at the bench changes.
import type { Page } from '@playwright/test';
import { expect, expectNoAxeComplaints, test } from './book.ts';

async function goTo(page: Page, address: string): Promise<void> {
  await page.evaluate((hash) => {
    location.hash = hash;
  }, address);
}

test('a unit is handed over, goes into service later, and shows its warranty when it is back', async ({
  page,
  call,
}) => {
  await call('shop.addPerson', { name: 'Noor Vey', initials: 'NV' });
  await goTo(page, '/jobs/1/delivery');
  const form = page.getByRole('form', { name: 'Hand it over' });
  // A letter changes who is at the bench only where nothing is being typed.
  await form.getByRole('textbox', { name: 'Handed to' }).fill('Mrs Okoro');
  await page.keyboard.press('i');
  await expect(form.getByRole('textbox', { name: 'Handed to' })).toHaveValue('Mrs Okoroi');
  await page.keyboard.press('Backspace');
  await page.getByRole('link', { name: 'Delivery' }).focus();
  await page.keyboard.press('i');
  await expect(page.getByRole('menuitem', { name: 'Noor Vey' })).toBeVisible();
  await page.keyboard.type('nv');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: 'NV: Noor Vey is at the bench' })).toBeVisible();

  await form.getByRole('textbox', { name: 'Odometer' }).fill('118,412');
  await expect(form.getByRole('status')).toContainText('or 12,000 miles after delivery, whichever comes first.');
  await form.getByRole('radio', { name: 'the day it leaves' }).focus();
  await page.keyboard.press('ArrowRight');
  await expect(form.getByRole('status')).toContainText('12 months from the day it goes into service');
  await expectNoAxeComplaints(page);
  await page.keyboard.press('Control+Enter');
  // The demo's ticket stands in the middle of its build.
  const why = form.getByRole('textbox', { name: 'Why it leaves all the same' });
  await expect(why).toBeFocused();
  await expect(form.getByText(/^Before Picked up:/)).toBeVisible();
  await page.keyboard.type('sold as it stands');
  await page.keyboard.press('Control+Enter');
  const warranty = page.getByRole('region', { name: 'Warranty' });
  await expect(page.getByRole('region', { name: 'Handed over' })).toContainText('to Mrs Okoro');
  await expect(warranty).toContainText('Not in service yet');

  const { delivery } = await call('jobs.getDelivery', { jobId: 1 });
  await warranty.getByRole('button', { name: 'It went into service' }).press('Enter');
  await page.getByLabel('In service since').fill(delivery?.deliveredOn ?? '');
  await page.keyboard.press('Control+Enter');
  await expect(warranty).toContainText('In service since');
  await expect(warranty.locator('s')).toHaveCount(1);
  expect(await call('jobs.getDelivery', { jobId: 1 })).toMatchObject({
    delivery: { deliveredTo: 'Mrs Okoro', distance: { amount: 118_412, unit: 'miles' }, handedOverBy: 'NV', by: 'NV' },
    warranty: { inServiceOn: delivery?.deliveredOn, by: 'NV' },
  });
  await expectNoAxeComplaints(page);

  await goTo(page, '/jobs/new');
  await page.getByRole('textbox', { name: 'Odometer' }).fill('130413');
  await page.getByRole('combobox', { name: 'Serial' }).fill('KX3-19-2214');
  await page.getByRole('option', { name: /KX3-19-2214/ }).waitFor();
  await page.keyboard.press('Escape');
  // 130,413 − 118,412 = 12,001 miles.
  await expect(page.getByRole('region', { name: 'Was here before' })).toContainText(
    'warranty ended at 12,000 miles: 12,001 miles since delivery',
  );
});

test('a reseal is chosen at check-in, shows only its checks, and grows to the whole rebuild', async ({
  page,
  call,
}) => {
  await goTo(page, '/specs/1/small-jobs');
  const reseal = page.getByRole('form', { name: 'Reseal', exact: true });
  await reseal.getByRole('checkbox', { name: 'Pan', exact: true }).press('Space');
  await reseal.getByRole('button', { name: 'Keep Reseal' }).press('Enter');
  await expect(reseal.getByText('Kept.')).toBeVisible();
  await expectNoAxeComplaints(page);
  await goTo(page, '/jobs/new');
  await page.getByRole('combobox', { name: 'Name or phone' }).fill('Ilse Brandvold');
  await page.getByRole('option', { name: 'Ilse Brandvold' }).waitFor();
  await page.keyboard.press('Escape');
  await page.getByRole('radio', { name: 'the whole rebuild' }).focus();
  await page.keyboard.press('ArrowRight');
  await expect(page.getByText('Takes Cooler flow in 30 s, Extension housing')).toBeVisible();
  await page.keyboard.press('Control+Enter');
  await expect(page.getByRole('heading', { name: /^Job \d{3}$/ })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Move to Teardown' })).toHaveCount(0);
  const [line] = await call('jobs.listJobs', { text: 'Brandvold', includeClosed: false });
  expect((await call('jobs.getJob', { jobId: line?.jobId })).checks).toHaveLength(4);
  await page.getByRole('button', { name: 'Make it the whole rebuild' }).press('Enter');
  await page.keyboard.type('brass in the pan');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: 'Move to Teardown' })).toBeVisible();
  await expect(page.getByText('Came in as Reseal, the whole rebuild since')).toBeVisible();
});
