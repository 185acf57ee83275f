import { existsSync, mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { _electron, expect, test } from '@playwright/test';

const root = join(import.meta.dirname, '../..');
const folder = join(root, 'node_modules/electron');
// Judged by its files: requiring the package from Node would start a download.
const pathFile = join(folder, 'path.txt');
const executablePath = existsSync(pathFile) ? join(folder, 'dist', readFileSync(pathFile, 'utf8').trim()) : '';

test('the real desktop window opens on the first steps', async () => {
  test.skip(!existsSync(executablePath), 'the desktop runtime is not installed here');
  const app = await _electron.launch({
    executablePath,
    args: [root],
    env: { ...process.env, THOUBOOK_FOLDER: mkdtempSync(join(tmpdir(), 'thoubook-')) } as Record<string, string>,
  });
  const window = await app.firstWindow();
  await expect(window.getByRole('main')).toBeVisible();
  await app.close();
});
