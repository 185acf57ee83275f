// One search for everything: every noun by a piece of it, the exact one first, labels straight to what they name.
import { expect, test } from 'vitest';
import type { Noun } from '../../app/shop/find.contract.ts';
import { deskIn, shopWithKx3 } from '../desk.ts';

async function demo() {
  const shop = await deskIn();
  await shop.call('shop.openDemoShop', {});
  const find = (text: string) => shop.call('shop.findAnything', { text });
  const titles = async (noun: Noun, text: string) =>
    (await find(text)).find((group) => group.noun === noun)?.found.map(({ title }) => title) ?? [];
  return { ...shop, find, titles };
}

test('every noun is found by a piece of it, and what is held nowhere finds nothing', async () => {
  const { find, titles } = await demo();
  // The demo: Tam Okoro brought KX3-19-2214 in as job 1 and Ilse Brandvold KX3-20-0417 as job 2.
  expect(await titles('job', 'slips 2–3')).toEqual(['Job 1']);
  expect(await titles('customer', 'brand')).toEqual(['Ilse Brandvold']);
  expect(await titles('customer', '555 014')).toEqual(['Ilse Brandvold']);
  expect(await titles('customer', '555 011')).toEqual(['Tam Okoro']);
  expect(await titles('unit', 'kx3 0417')).toEqual(['KX3 KX3-20-0417']);
  expect(await titles('unit', '2214')).toEqual(['KX3 KX3-19-2214']);
  expect(await titles('part', 'sr-086')).toEqual(['KX3-SR-086']);
  expect(await titles('batch', 'bw-340')).toEqual(['BW-340']);
  expect(await titles('plate', 'A31')).toEqual(['A31']);
  expect(await titles('family', 'kx')).toEqual(['KX3']);
  // Every word has to be held, and none is taken for a pattern.
  expect(await titles('customer', 'tam brandvold')).toEqual([]);
  for (const text of ['%', '_', 'no such thing', '"', '*', '']) expect(await find(text)).toEqual([]);
});

test('a job’s number, a part’s whole number and a label lead straight to what they name', async () => {
  const { call, find } = await demo();
  const [first] = await find('2');
  expect(first).toMatchObject({ noun: 'job' });
  expect(first?.found[0]).toMatchObject({ title: 'Job 2', place: { kind: 'job', jobId: 2 } });
  const whole = await find('KX3-BU-01');
  expect(whole.map(({ noun }) => noun)).toEqual(['code', 'job', 'part']);
  const { parts } = await call('stock.listParts', {
    text: 'KX3-BU-01',
    kind: null,
    familyId: null,
    only: 'in use',
    offset: 0,
    limit: 1,
  });
  const partId = parts[0]?.partId;
  expect(await find(`thou-p${partId}`)).toEqual([
    { noun: 'code', found: [{ place: { kind: 'part', partId }, title: `thou-p${partId}`, more: 'this very part' }] },
  ]);
  expect(await find('THOU-J1')).toMatchObject([{ noun: 'code', found: [{ place: { kind: 'job', jobId: 1 } }] }]);
  expect(await find('THOU-P999999')).toEqual([]);
});

test('no more than eight of a noun, the newest', async () => {
  const { call, familyId, by } = await shopWithKx3();
  const titles = async (noun: Noun) =>
    (await call('shop.findAnything', { text: 'haug' }))
      .find((group) => group.noun === noun)
      ?.found.map(({ title }) => title);
  for (let number = 1; number <= 10; number += 1) {
    await call('jobs.checkIn', {
      customer: { name: `Odile Haug ${number}`, phone: '', email: '' },
      unit: { familyId, serial: `HAUG-${number}`, vehicle: '', use: 'street' },
      complaint: '',
      caseTag: '',
      distance: null,
      by,
    });
  }
  const newest = [10, 9, 8, 7, 6, 5, 4, 3];
  expect(await titles('customer')).toEqual(newest.map((number) => `Odile Haug ${number}`));
  expect(await titles('unit')).toEqual(newest.map((number) => `KX3 HAUG-${number}`));
  expect(await titles('job')).toEqual(newest.map((number) => `Job ${number}`));
});
