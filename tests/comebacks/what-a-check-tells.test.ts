// What the checks of a sheet are taken to be about, read off the sheet of the invented family.
import { expect, test } from 'vitest';
import { packOfCheck, whatACheckTells } from '../../app/comebacks/what-a-check-tells.ts';
import { kx3Sheet } from '../../main/shop/demo/kx3-sheet.ts';

const expected: Readonly<Record<string, string>> = {
  'Forward clearance': 'clearance',
  'Direct clearance': 'clearance',
  'Low/reverse clearance': 'clearance',
  'Front end play': 'end play',
  'Rear end play': 'end play',
  'Pump gear side': 'bushing or ring',
  'Outer gear to pocket': 'bushing or ring',
  'Inner gear to crescent': 'bushing or ring',
  'Stator bushing': 'bushing or ring',
  'Converter hub to pump bushing': 'bushing or ring',
  'Sealing-ring groove width': 'bushing or ring',
  'Sealing ring side': 'bushing or ring',
  'Servo travel': 'travel',
  'Converter hub depth': 'converter',
  'Converter pull-out': 'converter',
  'Port A, Forward': 'leak-down',
  'Port B, Direct': 'leak-down',
  'Port C3, Low/reverse': 'leak-down',
  'Port C4, servo apply': 'leak-down',
  'Line, idle, P/N': 'line pressure',
  'Line, idle, D': 'line pressure',
  'Line, idle, R': 'line pressure',
  'Line, full throttle, D': 'line pressure',
  'Line, full throttle, R': 'line pressure',
  'Cooler flow in 30 s': 'cooler flow',
  'Pump bolts': 'torque',
  'Extension housing': 'torque',
  'Band locknut': 'torque',
  'Valve body': 'torque',
  Pan: 'torque',
};

test('every check of a sheet is about one thing, as a rebuilder would say it', () => {
  expect(Object.fromEntries(kx3Sheet.checks.map((check) => [check.name, whatACheckTells(check)]))).toEqual(expected);
});

test('a port is of the pack it names, and a clearance of its own', () => {
  const packOf = (name: string) =>
    packOfCheck(kx3Sheet.checks.find((check) => check.name === name)!, kx3Sheet.packs)?.name;
  expect(packOf('Port A, Forward')).toBe('Forward');
  expect(packOf('Port C3, Low/reverse')).toBe('Low/reverse');
  expect(packOf('Port C4, servo apply')).toBeUndefined();
  expect(packOf('Direct clearance')).toBe('Direct');
});

test('a name within a longer name means the longer one, and two packs in one name mean neither', () => {
  const packs = [{ name: 'Low' }, { name: 'Low/reverse' }, { name: 'Direct' }];
  const packOf = (name: string) => packOfCheck({ name, packName: null }, packs)?.name;
  expect(packOf('Port C, Low/reverse')).toBe('Low/reverse');
  expect(packOf('Port D, Low')).toBe('Low');
  expect(packOf('Feed of Low and Direct')).toBeUndefined();
  expect(packOf('Slow port')).toBeUndefined();
});

test('a pressure at the cooler is no line pressure, and an unknown length is other', () => {
  const words = { name: 'Pressure', group: 'Cooler', packName: null, method: 'direct', quantity: 'pressure' } as const;
  expect(whatACheckTells(words)).toBe('other');
  expect(whatACheckTells({ ...words, name: 'Width of the case', group: 'Case', quantity: 'length' })).toBe('other');
});
