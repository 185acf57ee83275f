// `npm run --silent demo-shop -- --builds N --seed S --out DIR [--effects planted|none] [--until DAY]`: an invented
// shop with a history of so many builds, and beside it what is true of it.
import { existsSync, mkdirSync, statSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { openShop } from '../../database/open-shop.ts';
import { systemClock } from '../../ports/clock.ts';
import { growHistory } from '../../shop/demo/history/grow-history.ts';
import type { Planting } from '../../shop/demo/history/plant.ts';
import { addPerson, changeSettings, fillShop } from '../../shop/shop.service.ts';

const usage = 'npm run --silent demo-shop -- --builds N --seed S --out DIR [--effects planted|none] [--until DAY]';

const { values } = parseArgs({
  options: {
    builds: { type: 'string' },
    seed: { type: 'string' },
    out: { type: 'string' },
    effects: { type: 'string', default: 'planted' },
    until: { type: 'string', default: systemClock().slice(0, 10) },
  },
});
const { out, until } = values;
const effects = values.effects === 'planted' || values.effects === 'none' ? values.effects : undefined;
const builds = Number(values.builds);
const seed = Number(values.seed);
const isCount = (value: number) => Number.isSafeInteger(value) && value > 0;
const isDay = /^\d{4}-\d\d-\d\d$/.test(until) && !Number.isNaN(Date.parse(until));
if (out === undefined || effects === undefined || !isCount(builds) || !isCount(seed) || !isDay) {
  console.error(usage);
  process.exit(2);
}
const file = join(resolve(out), 'shop.thoubook');
if (existsSync(file)) {
  console.error(`There is a shop file in ${out} already: name another folder.`);
  process.exit(2);
}
mkdirSync(resolve(out), { recursive: true });

const hands = [
  { name: 'Rosa Aldane', initials: 'RA' },
  { name: 'Jonas Hale', initials: 'JH' },
  { name: 'Mira Tolland', initials: 'MT' },
] as const;
const began = performance.now();
const shop = await openShop(file, 'write', systemClock);
await shop.write((writing) =>
  fillShop(writing, {
    shopName: 'Harrow Lane Transmission',
    lengthUnit: 'thou',
    paper: 'letter',
    personName: hands[0].name,
    personInitials: hands[0].initials,
    isDemo: false,
  }),
);
await shop.write((writing) => changeSettings(writing, { warrantyMonths: 24, warrantyDistance: 24_000 }));
const { personId: second } = await shop.write((writing) => addPerson(writing, hands[1]));
const { personId: third } = await shop.write((writing) => addPerson(writing, hands[2]));
const planting: Planting = { builds, seed, effects, until, families: 'all' };
const { rows, counts } = await growHistory(shop, planting, [1, second, third]);
await shop.close();
const truth = counts.truth(
  planting,
  hands.map(({ name }) => name),
);
writeFileSync(join(resolve(out), 'truth.json'), `${JSON.stringify(truth, null, 2)}\n`);

for (const [table, count] of rows) console.log(`${String(count).padStart(9)} ${table.replaceAll('_', ' ')}`);
const seconds = ((performance.now() - began) / 1000).toFixed(1);
const megabytes = (statSync(file).size / 1e6).toFixed(0);
console.log(`Wrote shop.thoubook (${megabytes} MB) and truth.json in ${seconds} s.`);
