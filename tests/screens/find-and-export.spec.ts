import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, expectNoAxeComplaints, test } from './book.ts';

test('anything is found from anywhere by keyboard, and a job and the shop leave as folders', async ({ page, book }) => {
  await page.getByRole('heading', { level: 1, name: 'Jobs' }).waitFor();
  await page.keyboard.press('/');
  const box = page.getByRole('dialog', { name: /Find anything/ });
  await page.keyboard.type('okoro');
  await expect(box.getByRole('option', { name: /^Tam Okoro/ })).toBeVisible();
  await expect(box.getByRole('group', { name: 'Customers' })).toBeVisible();
  await expectNoAxeComplaints(page);
  await page.keyboard.press('Control+a');
  await page.keyboard.type('nobody');
  await expect(box.getByText('Nothing in this book is called “nobody”.')).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(box).toBeHidden();

  // As a scanner does: Enter comes before the answer.
  await page.keyboard.press('Control+k');
  await page.keyboard.type('THOU-J2');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1, name: 'Job 2' })).toBeVisible();

  await page.keyboard.press('/');
  await page.keyboard.type('kx3-19-2214');
  await expect(box.getByRole('option', { name: /^KX3 KX3-19-2214/ })).toBeVisible();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1, name: 'Job 1' })).toBeVisible();

  await page.getByRole('link', { name: 'Papers' }).press('Enter');
  await page.getByRole('textbox', { name: 'Into the folder' }).fill('/no such folder');
  await page.keyboard.press('Enter');
  await expect(page.getByText('There is no folder /no such folder')).toBeVisible();
  await page.getByRole('textbox', { name: 'Into the folder' }).fill(book.folder);
  await page.keyboard.press('Enter');
  await expect(page.getByText(/^The job is in/)).toBeVisible({ timeout: 60_000 });

  await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Shop' }).press('Enter');
  // The folder is remembered.
  await page.getByRole('button', { name: 'Export everything' }).press('Enter');
  await expect(page.getByText(/^Everything is in/)).toBeVisible({ timeout: 60_000 });
  const folders = readdirSync(book.folder).filter((name) => name.includes(', '));
  expect(folders).toHaveLength(2);
  expect(folders.flatMap((name) => readdirSync(join(book.folder, name)))).toEqual(
    expect.arrayContaining(['README.txt', 'readings.csv', 'job 1 build sheet.pdf']),
  );
});
