// Newer versions, from the contract to the service.
import { Refused } from '../database/errors.ts';
import type { Handlers } from '../rpc/handler.ts';
import type { Desk } from '../shop/desk.ts';
import { type Updates, updatesOf } from './updates.service.ts';

export const updatesHandlers: Handlers<'updates'> = {
  'updates.getUpdates': async (desk) => updatesOf(desk)?.tell() ?? null,
  'updates.nameFeed': async (desk, { address }) => {
    await here(desk).nameFeed(address);
    return {};
  },
  'updates.look': async (desk) => {
    await here(desk).look();
    return {};
  },
  'updates.fetchVersion': async (desk, { version }) => {
    here(desk).fetch(version);
    return {};
  },
};

function here(desk: Desk): Updates {
  const updates = updatesOf(desk);
  if (!updates) throw new Refused('no-updates', 'Here Thoubook is updated the way it was installed.');
  return updates;
}
