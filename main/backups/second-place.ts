// The folder elsewhere that takes every backup too. It is a matter of this machine, so it is kept beside the shop file.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { writeWhole } from '../ports/disk.ts';
import type { Desk } from '../shop/desk.ts';
import { getSettings } from '../shop/shop.service.ts';
import type { SecondPlace } from './make-backup.ts';

const noteFile = 'second-place.json';

export function chosenPlace(desk: Desk): string | null {
  const note = join(desk.folder, noteFile);
  if (!existsSync(note)) return null;
  return (JSON.parse(readFileSync(note, 'utf8')) as { folder: string | null }).folder;
}

export function choosePlace(desk: Desk, folder: string | null): void {
  writeWhole(join(desk.folder, noteFile), JSON.stringify({ folder }));
}

/** Two shops may share one stick, so the folder is called after the shop; null: no place was chosen. */
export async function secondPlaceOf(desk: Desk): Promise<SecondPlace | null> {
  const place = chosenPlace(desk);
  if (place === null) return null;
  const { shopName } = await desk.shop().read((reading) => getSettings(reading));
  const plain = shopName.replace(/[^\p{L}\p{N} -]/gu, '').trim();
  return { place, folder: join(place, `Thoubook backups ${plain}`.trim()) };
}
