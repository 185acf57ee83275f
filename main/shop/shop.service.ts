// The shop: its settings, its people, and who stands behind an act.
import type { Settings } from '../../app/shop/shop.contract.ts';
import { startingSettings } from '../../app/shop/starting-settings.ts';
import { found, Refused } from '../database/errors.ts';
import type { Reading, Writing } from '../database/tables.ts';
import * as repository from './shop.repository.ts';

export async function getSettings(reading: Reading): Promise<Settings & { isDemo: boolean }> {
  return repository.getSettings(reading);
}

export async function getShop(reading: Reading) {
  const { isDemo, ...settings } = await repository.getSettings(reading);
  return { isDemo, settings, people: await repository.listPeople(reading) };
}

/** The person whose number stamps an act; refused when unknown or no longer here. */
export async function personAtWork(reading: Reading, personId: number): Promise<{ initials: string }> {
  const people = await repository.listPeople(reading);
  const person = found(
    people.find((each) => each.personId === personId),
    'person',
  );
  if (person.isRetired)
    throw new Refused('retired', `${person.name} no longer works here: choose who is at the bench.`);
  return person;
}

/** Fills a new file: settings, and the first person. */
export async function fillShop(
  writing: Writing,
  shop: Pick<Settings, 'shopName' | 'lengthUnit' | 'paper'> & {
    personName: string;
    personInitials: string;
    isDemo: boolean;
  },
): Promise<void> {
  const { shopName, lengthUnit, paper } = shop;
  await repository.insertSettings(writing, startingSettings({ shopName, lengthUnit, paper }), shop.isDemo);
  await repository.insertPerson(writing, { name: shop.personName, initials: shop.personInitials });
}

export async function changeSettings(writing: Writing, changed: { [K in keyof Settings]?: Settings[K] | undefined }) {
  const { isDemo: _, ...current } = await repository.getSettings(writing);
  const given = Object.fromEntries(Object.entries(changed).filter(([, value]) => value !== undefined));
  await repository.replaceSettings(writing, { ...current, ...given });
  return {};
}

export async function addPerson(writing: Writing, person: { name: string; initials: string }) {
  const people = await repository.listPeople(writing);
  if (people.some((each) => each.initials.toLowerCase() === person.initials.toLowerCase())) {
    throw new Refused('initials-taken', `${person.initials} are somebody else's initials: choose others.`, 'initials');
  }
  return { personId: await repository.insertPerson(writing, person) };
}

export async function retirePerson(writing: Writing, now: string, { personId }: { personId: number }) {
  await personAtWork(writing, personId);
  const atWork = (await repository.listPeople(writing)).filter((each) => !each.isRetired);
  if (atWork.length === 1) throw new Refused('last-person', 'Somebody has to work here: add another person first.');
  await repository.retirePerson(writing, personId, now);
  return {};
}
