// Ten thousand calls of nonsense over every method there is: the book answers each with a result or one plain sentence,
// writes nothing of what it refuses, and stands afterwards.
import { existsSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { expect, test } from 'vitest';
import { contract, type MethodName } from '../../app/contract/contract.ts';
import { dispatch } from '../../main/rpc/dispatch.ts';
import { seeded } from '../bench/seeded.ts';
import { deskIn, temporaryFolder, tickingClock } from '../desk.ts';
import { Nonsense } from './nonsense.ts';

const calls = 10_000;
/** Long acts of a worker and papers: a few calls each say as much. */
const isLong = (name: string) => /^backups\.(make|rehearse|restore|salvage)|\.print|xport|askFleet/.test(name);

/** What no person is to read: a trace, a type, a query, a place in the program. */
const programmersWords = /SqliteError|SQLITE_|TypeError|\n\s+at |node_modules|\[object |undefined|constraint failed/;

test('ten thousand calls of nonsense over every method are answered in words, and none that is refused writes', async () => {
  const seed = process.env.CI ? 20_261_201 : Date.now() % 1_000_000;
  console.log(`nonsense, seed ${seed}`);
  const folder = temporaryFolder();
  const elsewhere = join(folder, 'elsewhere');
  mkdirSync(elsewhere);
  const { desk, call } = await deskIn(folder, tickingClock());
  await call('shop.openDemoShop', {});
  const nonsense = new Nonsense(seeded(seed), elsewhere);
  const names = Object.keys(contract) as MethodName[];
  const onlookers = new Map<string, Sqlite.Database>();
  const versions = () =>
    ['shop', 'demo'].map((name) => {
      const file = join(folder, `${name}.thoubook`);
      if (!existsSync(file)) return 0;
      const onlooker = onlookers.get(file) ?? new Sqlite(file, { readonly: true });
      onlookers.set(file, onlooker);
      return onlooker.pragma('data_version', { simple: true });
    });
  const wrong: string[] = [];
  const answered = new Map<string, { taken: number; refused: number }>();
  const each = new Map(names.map((name) => [name, isLong(name) ? 2 : 0]));
  const short = names.filter((name) => !isLong(name));
  const rest = calls - 2 * (names.length - short.length);
  for (const [index, name] of short.entries()) {
    each.set(name, Math.floor(rest / short.length) + (index < rest % short.length ? 1 : 0));
  }
  // Round after round, so that what one call writes the next ones meet.
  for (let round = 0; [...each.values()].some((most) => most > round); round += 1) {
    for (const name of names.filter((every) => (each.get(every) ?? 0) > round)) {
      const input = nonsense.inputFor(name);
      const before = versions();
      const reply = await dispatch(desk, name, input);
      const sum = answered.get(name) ?? { taken: 0, refused: 0 };
      answered.set(name, reply.ok ? { ...sum, taken: sum.taken + 1 } : { ...sum, refused: sum.refused + 1 });
      if (reply.ok) continue;
      const { kind, message } = reply.error;
      const told = `${name} ${(JSON.stringify(input) ?? 'undefined').slice(0, 400)}: ${message.slice(0, 300)}`;
      if (kind === 'fault') wrong.push(`fault: ${told}`);
      else if (message.trim() === '' || message.length > 600 || programmersWords.test(message))
        wrong.push(`words: ${told}`);
      const after = versions();
      if (String(after) !== String(before)) wrong.push(`wrote: ${told}`);
    }
  }
  for (const onlooker of onlookers.values()) onlooker.close();
  expect(wrong).toEqual([]);
  const total = [...answered.values()].reduce((sum, { taken, refused }) => sum + taken + refused, 0);
  expect(total).toBe(calls);
  expect(names.filter((name) => !answered.has(name))).toEqual([]);
  // Nonsense that is always refused at the door tests nothing behind it.
  const taken = [...answered.values()].filter((sum) => sum.taken > 0).length;
  console.log(`${taken} of ${names.length} methods took some of it`);
  expect(taken).toBeGreaterThan(names.length / 3);
  await desk.close();
  const file = new Sqlite(join(folder, 'demo.thoubook'));
  expect(file.pragma('integrity_check', { simple: true })).toBe('ok');
  expect(file.pragma('foreign_key_check')).toEqual([]);
  expect(file.prepare('select batch_id from movements group by batch_id having sum(change) < 0').all()).toEqual([]);
  file.close();
}, 300_000);
