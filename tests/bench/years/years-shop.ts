// The shop files the benchmark asks: one, five and twenty years of a real shop, and one far beyond it. Growing them takes
// minutes, so they are kept in the system's folder for temporary files and used again.
import { copyFileSync, cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openShop } from '../../../main/database/open-shop.ts';
import { growHistory } from '../../../main/shop/demo/history/grow-history.ts';
import type { Planted } from '../../../main/shop/demo/history/plant.ts';
import { addPerson, changeSettings, fillShop } from '../../../main/shop/shop.service.ts';
import { migrations } from '../../../migrations/index.ts';
import { writeTheRest } from './years-rest.ts';

export type Size = {
  readonly name: string;
  readonly years: number;
  /** A third as many tickets again are units that came back. */
  readonly builds: number;
  /** How often more than once each check of a ticket is gone at. */
  readonly moreGoes: number;
  readonly parts: number;
  readonly looseSteels: number;
  readonly pullsOfTicket: number;
  readonly photosOfTicket: number;
};

const aYear = { builds: 205, moreGoes: 2, pullsOfTicket: 6, photosOfTicket: 4 } as const;

export const sizes: readonly Size[] = [
  { ...aYear, name: '1 year', years: 1, parts: 300, looseSteels: 150 },
  { ...aYear, name: '5 years', years: 5, builds: aYear.builds * 5, parts: 600, looseSteels: 300 },
  { ...aYear, name: '20 years', years: 20, builds: aYear.builds * 20, parts: 1200, looseSteels: 600 },
  {
    name: 'stress',
    years: 20,
    builds: 36_500,
    moreGoes: 0.15,
    parts: 4000,
    looseSteels: 20_000,
    pullsOfTicket: 0.4,
    photosOfTicket: 1,
  },
];

/** Counted up whenever what is put into the files changes. */
const form = 1;
const kept = join(tmpdir(), 'thoubook-bench-years');

/** A copy of the file of this size in a folder of its own that may be written to; made now if it was not kept. */
export async function shopOf(size: Size): Promise<{ readonly folder: string; readonly file: string }> {
  const folder = join(kept, `${size.name.replace(' ', '-')}-${form}-${Object.keys(migrations).length}`);
  if (!existsSync(join(folder, 'whole'))) await grow(size, folder);
  const copy = mkdtempSync(join(tmpdir(), 'thoubook-bench-'));
  const file = join(copy, 'shop.thoubook');
  copyFileSync(join(folder, 'shop.thoubook'), file);
  cpSync(join(folder, 'photos'), join(copy, 'photos'), { recursive: true });
  return { folder: copy, file };
}

async function grow(size: Size, folder: string): Promise<void> {
  const began = performance.now();
  mkdirSync(kept, { recursive: true });
  for (const name of readdirSync(kept)) {
    if (name.startsWith(size.name.replace(' ', '-'))) rmSync(join(kept, name), { recursive: true, force: true });
  }
  mkdirSync(folder, { recursive: true });
  await growShop(size, folder);
  writeFileSync(join(folder, 'whole'), '');
  console.log(`  ${size.name}: grown in ${((performance.now() - began) / 1000).toFixed(0)} s.`);
}

/** A shop file of this size in `folder`, made now. */
export async function growShop(size: Size, folder: string): Promise<string> {
  const file = join(folder, 'shop.thoubook');
  const clock = () => new Date().toISOString();
  const shop = await openShop(file, 'write', clock);
  await shop.write((writing) =>
    fillShop(writing, {
      shopName: 'Harrow Lane Transmission',
      lengthUnit: 'thou',
      paper: 'letter',
      personName: 'Rosa Aldane',
      personInitials: 'RA',
      isDemo: false,
    }),
  );
  await shop.write((writing) => changeSettings(writing, { warrantyMonths: 24, warrantyDistance: 24_000 }));
  const { personId: second } = await shop.write((writing) =>
    addPerson(writing, { name: 'Jonas Hale', initials: 'JH' }),
  );
  const { personId: third } = await shop.write((writing) =>
    addPerson(writing, { name: 'Mira Tolland', initials: 'MT' }),
  );
  const planting = {
    builds: size.builds,
    seed: 1,
    effects: 'planted',
    families: 'all',
    until: clock().slice(0, 10),
    over_days: size.years * 365,
  } as const;
  await growHistory(shop, planting, [1, second, third], (planted) => goneAtMoreOften(planted, size.moreGoes));
  await shop.close();
  writeTheRest(file, size);
  return file;
}

/** Every check of a ticket so many times more on the average, as found first; the takes that were planted stay the newest. */
function goneAtMoreOften({ ticket, ...rest }: Planted, more: number): Planted {
  const goes = Math.floor(ticket.key * more) - Math.floor((ticket.key - 1) * more);
  const earlier = Array.from({ length: goes }, (_, go) =>
    ticket.takes.map((take) => ({
      ...take,
      phase: go === 0 ? ('as found' as const) : ('mock-up' as const),
      mockUp: null,
    })),
  );
  return { ...rest, ticket: { ...ticket, takes: [...earlier.flat(), ...ticket.takes] } };
}
