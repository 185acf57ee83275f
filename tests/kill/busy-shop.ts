// A process that does one random act after another on a shop file, telling of each before it begins and when it was
// acknowledged, until it is killed.

import { writeSync } from 'node:fs';
import module from 'node:module';
import { dirname } from 'node:path';
import Sqlite from 'better-sqlite3';
import { openShop } from '../../main/database/open-shop.ts';
import { systemClock } from '../../main/ports/clock.ts';
import { dispatch } from '../../main/rpc/dispatch.ts';
import { Desk } from '../../main/shop/desk.ts';
import { seeded } from '../bench/seeded.ts';
import { fingerprintOf } from './fingerprint.ts';
import { nextAct } from './random-acts.ts';

// Killed, it would not keep what it compiled, and the next one would start as slowly.
module.flushCompileCache();
const [file = '', seed = '1'] = process.argv.slice(2);
const desk = Desk.over(await openShop(file, 'write', systemClock), dirname(file));
const onlooker = new Sqlite(file, { readonly: true });
const draw = seeded(Number(seed));
for (;;) {
  const { method, input, writes } = nextAct(onlooker, draw);
  tell({ method, writes });
  const reply = await dispatch(desk, method, input);
  if (!reply.ok && reply.error.kind !== 'refusal') throw new Error(`${method}: ${reply.error.message}`);
  tell(reply.ok ? { acknowledged: fingerprintOf(onlooker) } : { refused: reply.error.message });
}

/** Written in one go before the next step: a kill cannot lose what was told. */
function tell(what: object): void {
  writeSync(1, `${JSON.stringify(what)}\n`);
}
