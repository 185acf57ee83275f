// Backups, from the contract to the service.
import type { Handlers } from '../rpc/handler.ts';
import { keeperOf } from './backup-keeper.ts';
import { chooseSecondPlace, getBackups, makeWholeBackup, rehearse, restore, salvageOwn } from './backups.service.ts';

export const backupsHandlers: Handlers<'backups'> = {
  'backups.getBackups': (desk) => getBackups(desk),
  'backups.makeBackup': async (desk) => ({ file: (await keeperOf(desk).make()).file }),
  'backups.chooseSecondPlace': async (desk, input) => {
    await chooseSecondPlace(desk, input);
    return {};
  },
  'backups.makeWholeBackup': (desk, input) => makeWholeBackup(desk, input),
  'backups.rehearse': (desk, input) => rehearse(desk, input),
  'backups.restore': (desk, input) => restore(desk, input),
  'backups.salvage': (desk) => salvageOwn(desk),
};
