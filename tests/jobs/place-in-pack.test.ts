// Which end of a pack a slot lies at, counted by hand on the packs of the example unit.
import { expect, test } from 'vitest';
import { placeInPack } from '../../app/jobs/place-in-pack.ts';

const slots = (kinds: string) => kinds.split(' ').map((kind) => ({ kind }));

test('plates are placed among their own kind, a single one among all', () => {
  const forward = slots('steel friction steel friction steel friction steel friction backing');
  expect(forward.map((_, index) => placeInPack(forward, index))).toEqual([
    'piston end',
    'piston end',
    'middle',
    'middle',
    'middle',
    'middle',
    'ring end',
    'ring end',
    'ring end',
  ]);
  const lowReverse = slots('wave steel friction steel friction ring');
  expect(lowReverse.map((_, index) => placeInPack(lowReverse, index))).toEqual([
    'piston end',
    'piston end',
    'piston end',
    'ring end',
    'ring end',
    'ring end',
  ]);
});
