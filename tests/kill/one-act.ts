// A process that does one long act on a shop's folder and tells when it begins and when it is done; it is killed somewhere
// between.
import { writeSync } from 'node:fs';
import { join } from 'node:path';
import { openShop } from '../../main/database/open-shop.ts';
import { systemClock } from '../../main/ports/clock.ts';
import { Desk } from '../../main/shop/desk.ts';
import { callerOn } from './shop-to-kill.ts';

export const longActs = ['migration', 'backup', 'whole backup', 'restore'] as const;
export type LongAct = (typeof longActs)[number];

/** Where `whole backup` puts its file and `restore` finds it. */
export const elsewhere = 'elsewhere';

async function doIt(act: LongAct, folder: string, backup: string): Promise<void> {
  if (act === 'migration') {
    tell('begins');
    await (await openShop(join(folder, 'shop.thoubook'), 'write', systemClock)).close();
    return;
  }
  const desk = await Desk.at(folder, systemClock);
  const call = callerOn(desk);
  tell('begins');
  if (act === 'backup') await call('backups.makeBackup', {});
  else if (act === 'whole backup') await call('backups.makeWholeBackup', { folder: join(folder, elsewhere) });
  else await call('backups.restore', { file: backup });
}

function tell(what: string): void {
  writeSync(1, `${what}\n`);
}

if (import.meta.main) {
  const [act = '', folder = '', backup = ''] = process.argv.slice(2);
  await doIt(act as LongAct, folder, backup);
  tell('done');
}
