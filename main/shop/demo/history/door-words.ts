// Who comes to the invented shop, with what, and what they say of it.
import type { Use } from '../../../../app/units/units.contract.ts';
import type { Draw } from './draw.ts';

const firstNames = ['Arlo', 'Bea', 'Cass', 'Dov', 'Edda', 'Fenn', 'Gita', 'Hollis', 'Inge', 'Joss', 'Kaia', 'Lorne'];
const lastNames = [
  'Abernast',
  'Brindle',
  'Castellow',
  'Dorrance',
  'Ekberg',
  'Farrowmere',
  'Gantry',
  'Hallworth',
  'Ivarsen',
  'Jessamy',
  'Kestle',
  'Lindqvist-Moe',
  'Marrowby',
  'Nordahl',
  'Osterly',
  'Penhallow',
  'Quillan',
  'Rastall',
  'Sundmark',
  'Tolliver',
];
const trade = ['Quarry Road Garage', 'Millpond Motors', 'Eastgate Fleet', 'Tanner Hill Towing'];

const vehicles: Readonly<Record<Use, readonly string[]>> = {
  street: ['sedan', 'delivery van', 'hatchback', 'estate car', 'half-ton pickup'],
  tow: ['one-ton pickup', 'three-quarter-ton pickup', 'motor home'],
  competition: ['drag car', 'hill-climb coupé'],
};

const faults = ['Slips when hot.', 'Late into third.', 'No reverse in the morning.', 'Flares 2–3.', 'Shudders uphill.'];

export type Customer = { readonly key: number; readonly name: string; readonly phone: string };

/** The trade sends one unit in four; everybody else is somebody new. `newKey` is for the latter. */
export function drawCustomer(draw: Draw, newKey: number): Customer {
  if (draw.happens(0.25)) {
    const key = draw.whole(1, trade.length);
    return { key, name: trade[key - 1] ?? '', phone: `555 090${key}` };
  }
  const key = trade.length + newKey;
  return {
    key,
    name: `${draw.oneOf(firstNames)} ${draw.oneOf(lastNames)}`,
    phone: `555 0${String(200 + (key % 800))}`,
  };
}

export function drawUse(draw: Draw): Use {
  const of100 = draw.whole(1, 100);
  return of100 <= 70 ? 'street' : of100 <= 95 ? 'tow' : 'competition';
}

export function drawVehicle(draw: Draw, use: Use): string {
  return draw.oneOf(vehicles[use]);
}

export function drawFault(draw: Draw): string {
  return draw.oneOf(faults);
}
