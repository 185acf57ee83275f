// Every act is stamped: each write of the contract says by whom, and refuses somebody who no longer works here.

import { expect, test } from 'vitest';
import { z } from 'zod';
import { contract, type MethodName } from '../../app/contract/contract.ts';
import { shopWithKx3 } from '../desk.ts';
import { greyJpeg } from '../photos/small-jpeg.ts';

// Acts on the file, before there is anybody, and on what this shop and its machine are set to.
const actsOnTheShopItself: readonly string[] = [
  'shop.createShop',
  'shop.openDemoShop',
  'shop.openOwnShop',
  'backups.makeBackup',
  'backups.chooseSecondPlace',
  'backups.makeWholeBackup',
  'backups.restore',
  'backups.salvage',
  'updates.nameFeed',
  'updates.look',
  'updates.fetchVersion',
  'shop.changeSettings',
  'shop.addPerson',
  'shop.retirePerson',
  'indicators.addLine',
  'indicators.changeLine',
  'indicators.retireLine',
];

// What a shape cannot say of itself.
const jpeg = greyJpeg.toString('base64');
const more: { readonly [name: string]: object } = {
  'photos.addPhoto': { jpegBase64: jpeg, smallBase64: jpeg },
  'specs.keepPicture': { of: { jpegBase64: jpeg } },
  'stock.moveInCan': { change: 1 },
};

const writes = (Object.keys(contract) as MethodName[]).filter((name) => contract[name].kind === 'write');
const stamped = writes.filter((name) => !actsOnTheShopItself.includes(name));

type Shape = {
  type?: string | string[];
  const?: unknown;
  enum?: unknown[];
  anyOf?: Shape[];
  oneOf?: Shape[];
  properties?: Record<string, Shape>;
  required?: string[];
  items?: Shape;
  prefixItems?: Shape[];
  minItems?: number;
  minimum?: number;
  exclusiveMinimum?: number;
  minLength?: number;
  format?: string;
  $ref?: string;
};

function shapeOf(name: MethodName): Shape {
  return z.toJSONSchema(contract[name].input, { io: 'input', unrepresentable: 'any' }) as Shape;
}

function takesBy({ anyOf, oneOf, required }: Shape): boolean {
  const choices = anyOf ?? oneOf;
  return choices ? choices.every(takesBy) : required?.includes('by') === true;
}

/** The smallest value a shape takes. */
function sampleOf(shape: Shape): unknown {
  const [choice] = shape.anyOf ?? shape.oneOf ?? [];
  if (choice) return sampleOf(choice);
  if ('const' in shape) return shape.const;
  if (shape.enum) return shape.enum[0];
  switch (shape.type) {
    case 'object':
      return Object.fromEntries((shape.required ?? []).map((key) => [key, sampleOf(shape.properties?.[key] ?? {})]));
    case 'array':
      return Array.from({ length: shape.minItems ?? 0 }, () => sampleOf(shape.items ?? {}));
    case 'integer':
    case 'number':
      return shape.exclusiveMinimum !== undefined && shape.exclusiveMinimum >= 0
        ? shape.exclusiveMinimum + 1
        : Math.max(0, shape.minimum ?? 0);
    case 'boolean':
      return false;
    case 'string':
      if (shape.format === 'date') return '2026-11-23';
      if (shape.format === 'date-time') return '2026-11-23T08:00:00.000Z';
      return 'a'.repeat(Math.max(1, shape.minLength ?? 0));
    default:
      return null;
  }
}

test('every write of the contract takes by whom it is done', () => {
  expect(stamped.length).toBeGreaterThan(40);
  const without = stamped.filter((name) => !takesBy(shapeOf(name)));
  expect(without).toEqual([]);
});

test('every one of them is refused to a person who was retired, and to nobody’s number', async () => {
  const { call, refusal } = await shopWithKx3();
  const { personId } = await call('shop.addPerson', { name: 'Noor Vey', initials: 'NV' });
  await call('shop.retirePerson', { personId });
  const left = 'Noor Vey no longer works here: choose who is at the bench.';
  const answers: unknown[] = [];
  for (const name of stamped) {
    const input = { ...(sampleOf(shapeOf(name)) as object), ...more[name], by: personId };
    const retired = await refusal(name, input);
    const nobody = await refusal(name, { ...input, by: 999 });
    if (retired.message !== left || nobody.message !== 'There is no such person.')
      answers.push([name, retired.message, nobody.message]);
  }
  expect(answers).toEqual([]);
});
