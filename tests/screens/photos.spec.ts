import { greyJpeg } from '../photos/small-jpeg.ts';
import { expect, expectNoAxeComplaints, test } from './book.ts';

const picture = { name: 'pan.jpg', mimeType: 'image/jpeg', buffer: greyJpeg };
const broken = { name: 'half.jpg', mimeType: 'image/jpeg', buffer: greyJpeg.subarray(0, 60) };

test('a photo taken in stands on the ticket, gets its caption, and the others go on when one is broken', async ({
  page,
  call,
}) => {
  await page.evaluate(() => {
    location.hash = '/jobs/1/photos';
  });
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Choose photos' }).click();
  await (await chooser).setFiles([broken, picture]);
  await expect(page.getByText('half.jpg cannot be read as a picture')).toBeVisible();
  await page.getByRole('link', { name: /No caption/ }).click();
  await expect(page.getByRole('img', { name: 'Photo without a caption' })).toBeVisible();
  await page.getByRole('textbox', { name: 'What it shows' }).fill('pan, dark, fines');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('img', { name: 'pan, dark, fines' })).toBeVisible();
  await page.getByRole('checkbox', { name: 'The build report carries it' }).press('Space');
  await expect(page.getByRole('checkbox', { name: 'The build report carries it' })).toBeChecked();
  await expectNoAxeComplaints(page);
  expect(await call('photos.listPhotos', { jobId: 1 })).toMatchObject([
    { caption: 'pan, dark, fines', isInReport: true },
  ]);
});
