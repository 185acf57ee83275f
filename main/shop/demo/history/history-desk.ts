// What a shop file has to say before old tickets can be put into it.
import type { Settings } from '../../../../app/shop/shop.contract.ts';
import type { FamilyOnFile } from './family-on-file.ts';

export type HistoryDesk = {
  readonly settings: Settings;
  readonly families: ReadonlyMap<string, FamilyOnFile>;
  readonly stages: ReadonlyMap<string, number>;
  /** By hand. */
  readonly people: readonly number[];
  readonly nextNumber: number;
};

export function personOf({ people }: HistoryDesk, hand: number): number {
  const personId = people[hand];
  if (personId === undefined) throw new Error(`nobody is hand ${hand}`);
  return personId;
}

/** The number a key has, or the one it is given now. */
export function numbered<K>(known: Map<K, number>, key: K, give: () => number): number {
  const number = known.get(key) ?? give();
  known.set(key, number);
  return number;
}
