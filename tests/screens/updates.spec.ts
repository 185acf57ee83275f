// A newer version of the program, as the desktop window shows it: the host here stands where the desktop would.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test as base, expect } from '@playwright/test';
import { systemClock } from '../../main/ports/clock.ts';
import { startHost } from '../../main/shells/headless/host.ts';
import { Desk } from '../../main/shop/desk.ts';
import { offerUpdates, type UpdateSource } from '../../main/updates/updates.service.ts';
import { callOn, expectNoAxeComplaints } from './book.ts';

const source: UpdateSource = {
  version: '0.1.0',
  look: async () => ({ version: '0.2.0', notes: 'Reads faster.\n<b>Plain</b> text.' }),
  fetch: async () => undefined,
  putInPlace: () => undefined,
};

/** A new shop on a desk whose program can be updated from that source. */
const test = base.extend({
  page: async ({ page }, use) => {
    const folder = mkdtempSync(join(tmpdir(), 'thoubook-'));
    const desk = await Desk.at(folder, systemClock);
    offerUpdates(desk, source);
    const host = await startHost(desk, join(import.meta.dirname, '../../dist/renderer'));
    await page.goto(host.address);
    await callOn(page)('shop.createShop', {
      shopName: 'Quarry Street Gearbox',
      lengthUnit: 'thou',
      paper: 'letter',
      personName: 'Nell Ibarra',
      personInitials: 'NI',
    });
    await use(page);
    await host.close();
    await desk.close();
    rmSync(folder, { recursive: true, force: true });
  },
});

test('an address is named, a newer version read about, and fetched after a yes, by the keyboard alone', async ({
  page,
}) => {
  const places = page.getByRole('navigation', { name: 'Places' });
  await places.getByRole('link', { name: 'Shop', exact: true }).press('Enter');
  const version = page.getByRole('region', { name: 'Version' });
  await expect(version.getByText('Version 0.1.0 — updates: no address is named, none is looked for.')).toBeVisible();
  await version.getByRole('button', { name: 'Where updates come from' }).press('Enter');
  const address = version.getByRole('textbox', { name: 'Address' });
  await address.fill('http://shop.example');
  await address.press('Enter');
  await expect(version.getByText('An address begins with https://')).toBeVisible();
  await address.fill('https://shop.example/thoubook');
  await address.press('Enter');
  await expect(version.getByText('updates: version 0.2.0 is there.')).toBeVisible();
  await expect(version.getByText('<b>Plain</b> text.')).toBeVisible();
  await expect(places.getByRole('link', { name: 'Version 0.2.0: see Shop' })).toBeVisible();
  await expectNoAxeComplaints(page);
  await version.getByRole('button', { name: 'Fetch version 0.2.0' }).press('Enter');
  await expect(version.getByText('takes its place when this window is closed, after a backup.')).toBeVisible();
});
