import { execFile } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { describe, expect, test, vi } from 'vitest';
import { deskIn, deskOver, shopWithKx3, temporaryFolder } from '../desk.ts';

const newShop = {
  shopName: 'Harrow Lane',
  lengthUnit: 'thou',
  paper: 'letter',
  personName: 'Rosa Aldane',
  personInitials: 'RA',
};

describe('what is open on the desk', () => {
  test('on the first day nothing is; afterwards the file that was open last is open again', async () => {
    const folder = temporaryFolder();
    const first = await deskIn(folder);
    expect(await first.call('shop.getShop', {})).toMatchObject({ open: false, hasShopFile: false });
    expect((await first.refusal('jobs.listStages', {})).message).toBe(
      'No shop is open: start one or open the demo first.',
    );
    await first.call('shop.createShop', newShop);
    await first.desk.close();
    const second = await deskIn(folder);
    expect(await second.call('shop.getShop', {})).toMatchObject({
      open: true,
      isDemo: false,
      settings: { shopName: 'Harrow Lane' },
    });
  });

  test('the demo is a file of its own and leaves the shop’s file alone', async () => {
    const at = await deskIn();
    await at.call('shop.createShop', newShop);
    await at.call('shop.openDemoShop', {});
    expect(await at.call('shop.getShop', {})).toMatchObject({
      isDemo: true,
      settings: { shopName: 'Harrow Lane Transmission' },
    });
    expect(await at.call('jobs.listJobs', { text: '', includeClosed: false })).toHaveLength(2);
    await at.call('shop.openOwnShop', {});
    expect(await at.call('shop.getShop', {})).toMatchObject({ isDemo: false });
    expect(await at.call('jobs.listJobs', { text: '', includeClosed: true })).toEqual([]);
  });

  test('a second shop in the same folder is refused, and one that cannot be made leaves nothing behind', async () => {
    const at = await deskIn();
    expect((await at.refusal('shop.createShop', { ...newShop, personInitials: 'TOOLONG' })).kind).toBe('refusal');
    expect(existsSync(join(at.folder, 'shop.thoubook'))).toBe(false);
    await at.call('shop.createShop', newShop);
    expect((await at.refusal('shop.createShop', newShop)).message).toContain('already a shop file');
    expect(readdirSync(at.folder).filter((name) => name.endsWith('.thoubook'))).toEqual(['shop.thoubook']);
  });
});

describe('people and settings', () => {
  test('initials are somebody’s alone, and the last person cannot leave', async () => {
    const at = await shopWithKx3();
    expect((await at.refusal('shop.retirePerson', { personId: 1 })).message).toContain('add another person first');
    expect((await at.refusal('shop.addPerson', { name: 'Rae Ames', initials: 'ra' })).message).toContain(
      'somebody else',
    );
    const { personId } = await at.call('shop.addPerson', { name: 'Ben Tolland', initials: 'BT' });
    await at.call('shop.retirePerson', { personId: 1 });
    expect((await at.refusal('specs.addFamily', { name: 'KX9', by: 1 })).message).toContain('no longer works here');
    await at.call('specs.addFamily', { name: 'KX9', by: personId });
  });

  test('a setting that is changed leaves the others as they are', async () => {
    const at = await shopWithKx3();
    await at.call('shop.changeSettings', { decisionRule: 'simple' });
    expect(await at.call('shop.getShop', {})).toMatchObject({
      settings: { decisionRule: 'simple', paper: 'letter', repeatability_nm: 17_780 },
    });
  });
});

describe('when something goes wrong inside', () => {
  test('a fault is written down beside the shop file under the number the person sees', async () => {
    const at = await shopWithKx3();
    const quiet = vi.spyOn(console, 'error').mockImplementation(() => undefined);
    // Closing the file under the desk makes the next call fail in a way nobody foresaw.
    const shop = at.desk.shop();
    await shop.close();
    const failure = await at.refusal('jobs.listStages', {});
    quiet.mockRestore();
    if (failure.kind !== 'fault') throw new Error(`a fault was expected, not ${failure.kind}`);
    expect(failure.message).toContain(failure.id);
    expect(readFileSync(join(at.folder, 'faults.log'), 'utf8')).toContain(`${failure.id} jobs.listStages`);
  });

  test('a shop file opened for reading cannot be written to, and says so', async () => {
    const at = await shopWithKx3();
    const reader = await deskOver(at.desk.shop().file, 'read');
    expect(await reader.call('specs.listFamilies', {})).toHaveLength(1);
    expect(await reader.refusal('specs.addFamily', { name: 'KX5', by: 1 })).toMatchObject({
      kind: 'storage',
      code: 'read-only',
    });
  });
});

const run = promisify(execFile);
const askScript = join(import.meta.dirname, '../../main/shells/headless/ask.ts');

describe('a second window on the same file', () => {
  test('hears what another process wrote, and both keep to one writer at a time', async () => {
    const at = await shopWithKx3();
    const { file } = at.desk.shop();
    const heard = vi.fn();
    at.desk.onChange(heard);
    const stop = at.desk.watchOthers(5);
    const elsewhere = (name: string) =>
      run(process.execPath, [askScript, '--shop', file, '--write', 'specs.addFamily', JSON.stringify({ name, by: 1 })]);
    const before = heard.mock.calls.length;
    await elsewhere('KX20');
    await vi.waitFor(() => expect(heard.mock.calls.length).toBeGreaterThan(before));
    stop();
    await Promise.all([
      elsewhere('KX21'),
      elsewhere('KX22'),
      ...['KX30', 'KX31', 'KX32', 'KX33'].map((name) => at.call('specs.addFamily', { name, by: 1 })),
    ]);
    expect(await at.call('specs.listFamilies', {})).toHaveLength(8);
  });
});
