// The trace of a comeback by keyboard: what stands out, the figures beside its mark, the readings behind it, the causes.
import { expect, expectNoAxeComplaints, test } from './book.ts';

test('a comeback is traced to its build and to the readings behind it, and printed', async ({ page, call }) => {
  const [newest] = await call('comebacks.listComebacks', { only: 'all' });
  const { findings } = await call('comebacks.trace', { comebackId: newest!.comebackId });
  const place = findings.find((finding) => finding.kind === 'place')!;
  await page.getByRole('link', { name: 'Comebacks' }).focus();
  await page.keyboard.press('Enter');
  await page
    .getByRole('link', { name: `Job ${newest!.number}`, exact: true })
    .first()
    .focus();
  await page.keyboard.press('Enter');

  const standsOut = page.getByRole('region', { name: 'What stands out of the build' });
  await expect(standsOut).toContainText(/\d+ facts were looked at; .* by chance alone\./);
  const causes = page.getByRole('region', { name: 'What speaks for each cause' });
  await expect(causes).toContainText('Nothing here decides.');
  await expect(page.getByRole('region', { name: 'As found beside as built' })).toBeVisible();
  const rest = standsOut.getByRole('button', { name: /more that do not stand out/ });
  if (await rest.isVisible()) {
    await rest.focus();
    await page.keyboard.press('Enter');
  }
  await standsOut.getByRole('button', { name: `The other builds, ${place.subject}` }).focus();
  await page.keyboard.press('Enter');
  await expect(standsOut.getByRole('table', { name: `${place.subject} of this build` })).toContainText('this build');
  await expectNoAxeComplaints(page);

  await standsOut.getByRole('link', { name: `Readings, ${place.subject}` }).focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1, name: place.subject })).toBeVisible();
  await page.goBack();
  await page.getByRole('link', { name: 'For the customer' }).focus();
  await page.keyboard.press('Enter');
  await expect(page.getByTitle(/comeback report, customer copy/)).toBeVisible();
});
