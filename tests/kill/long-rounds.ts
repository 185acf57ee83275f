// Rounds of a real process that migrates, backs up or restores and is killed somewhere in the middle; after each, the
// folder is looked over: there is a shop file, it is the one before or the one after and whole, and so is every backup.
import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { createInterface } from 'node:readline';
import Sqlite from 'better-sqlite3';
import { photosNamedBy, readCard } from '../../main/backups/backup-files.ts';
import { sha256Of } from '../../main/database/back-up.ts';
import { systemClock } from '../../main/ports/clock.ts';
import { Desk } from '../../main/shop/desk.ts';
import type { seeded } from '../bench/seeded.ts';
import { thaw } from '../database/thaw.ts';
import { greyJpeg } from '../photos/small-jpeg.ts';
import { fingerprintOf } from './fingerprint.ts';
import { elsewhere, type LongAct } from './one-act.ts';
import { callerOn } from './shop-to-kill.ts';

export type LongSum = {
  readonly act: LongAct;
  readonly kills: number;
  /** Kills that came after the act was done. */
  readonly tooLate: number;
  /** After so many kills the act had already taken effect, though it was not yet done. */
  readonly tookEffect: number;
  /** What was wrong, one sentence each. */
  readonly losses: readonly string[];
};

type Stage = {
  /** A folder as it is before the act. */
  readonly folder: string;
  /** What is brought back. */
  readonly backup: string;
  /** What the shop file may hold after a kill. */
  readonly before: string;
  readonly after: string;
};

export async function longRounds(
  act: LongAct,
  rounds: number,
  draw: ReturnType<typeof seeded>,
  say: (line: string) => void,
): Promise<LongSum> {
  const place = mkdtempSync(join(tmpdir(), 'thoubook-kill-'));
  const losses: string[] = [];
  let [kills, tooLate, tookEffect] = [0, 0, 0];
  try {
    const stage = await setStage(act, place);
    // Once to its end, to know how long it takes.
    let usual_ms = (await runAndKill(act, stage, place, Number.POSITIVE_INFINITY)).took_ms;
    for (let round = 0; round < rounds; round += 1) {
      const after_ms = (draw.whole(0, 1000) / 1000) * usual_ms;
      const { folder, wasDone, took_ms } = await runAndKill(act, stage, place, after_ms);
      kills += 1;
      if (wasDone) {
        tooLate += 1;
        usual_ms = Math.min(usual_ms, took_ms);
      }
      const { wrong, hasTakenEffect } = await lookOverFolder(act, stage, folder, wasDone);
      if (hasTakenEffect && !wasDone) tookEffect += 1;
      losses.push(...wrong.map((each) => `${act}, round ${round}, killed after ${after_ms.toFixed(1)} ms: ${each}`));
      say(`${act} ${round + 1}: ${losses.length} losses so far${losses.length > 0 ? ` (${losses.at(-1)})` : ''}`);
      rmSync(folder, { recursive: true, force: true });
    }
  } finally {
    rmSync(place, { recursive: true, force: true });
  }
  return { act, kills, tooLate, tookEffect, losses };
}

async function setStage(act: LongAct, place: string): Promise<Stage> {
  const folder = join(place, 'before');
  mkdirSync(join(folder, elsewhere), { recursive: true });
  const file = join(folder, 'shop.thoubook');
  thaw(act === 'migration' ? '0006' : '0015', file);
  if (act === 'migration') {
    const migrated = join(place, 'migrated');
    mkdirSync(migrated);
    cpSync(file, join(migrated, 'shop.thoubook'));
    await (await Desk.at(migrated, systemClock)).close();
    const [before, after] = [shapeOf(file), shapeOf(join(migrated, 'shop.thoubook'))];
    return { folder, backup: '', before, after };
  }
  const desk = await Desk.at(folder, systemClock);
  const call = callerOn(desk);
  const jpegBase64 = greyJpeg.toString('base64');
  await call('photos.addPhoto', {
    jobId: 1,
    jpegBase64,
    smallBase64: jpegBase64,
    caption: '',
    folderName: null,
    by: 1,
  });
  const made = await call('backups.makeWholeBackup', { folder: join(folder, elsewhere) });
  const backedUp = shapeOf(file);
  await call('specs.addFamily', { name: 'QR7', by: 1 });
  await desk.close();
  const now = shapeOf(file);
  return { folder, backup: made.file, before: now, after: act === 'restore' ? backedUp : now };
}

/**
 * All rows in one word. Of a file that is brought up to date, their numbers by table: the migrator writes down when it
 * did its work.
 */
function shapeOf(file: string): string {
  const connection = new Sqlite(file);
  try {
    const verdict = connection.pragma('integrity_check', { simple: true });
    if (verdict !== 'ok') return `damaged: ${String(verdict)}`;
    const { hash, rows } = fingerprintOf(connection);
    const readings = connection.prepare('select * from readings order by reading_id').raw().all();
    return rows.photos_within === undefined && rows.jobs !== undefined
      ? `${connection.pragma('user_version', { simple: true })} ${createHash('sha256')
          .update(JSON.stringify([Object.entries(rows), readings]))
          .digest('hex')} ${hash.length}`
      : 'no shop file';
  } finally {
    connection.close();
  }
}

async function runAndKill(act: LongAct, stage: Stage, place: string, after_ms: number) {
  const folder = join(place, 'killed');
  cpSync(stage.folder, folder, { recursive: true });
  const backup = stage.backup === '' ? '' : join(folder, elsewhere, basename(stage.backup));
  const busy = spawn(process.execPath, [join(import.meta.dirname, 'one-act.ts'), act, folder, backup], {
    stdio: ['ignore', 'pipe', 'inherit'],
    env: { ...process.env, NODE_COMPILE_CACHE: join(place, 'compiled') },
  });
  const ended = new Promise<void>((exited) => busy.once('exit', () => exited()));
  let wasDone = false;
  let began = 0;
  let took_ms = 0;
  for await (const line of createInterface({ input: busy.stdout })) {
    if (line === 'begins') {
      began = performance.now();
      if (Number.isFinite(after_ms)) setTimeout(() => busy.kill('SIGKILL'), after_ms);
    } else if (line === 'done') {
      wasDone = true;
      took_ms = performance.now() - began;
    }
  }
  await ended;
  if (began === 0) throw new Error(`${act} ended before it began`);
  if (!Number.isFinite(after_ms)) rmSync(folder, { recursive: true });
  return { folder, wasDone, took_ms };
}

async function lookOverFolder(act: LongAct, stage: Stage, folder: string, wasDone: boolean) {
  const file = join(folder, 'shop.thoubook');
  if (!existsSync(file)) return { wrong: ['there is no shop file'], hasTakenEffect: false };
  const wrong: string[] = [];
  const found = shapeOf(file);
  const hasTakenEffect = found === stage.after && stage.after !== stage.before;
  if (found !== stage.before && found !== stage.after)
    wrong.push(`the shop file is neither before nor after: ${found}`);
  if (wasDone && found !== stage.after) wrong.push('the act was done and is not in the file');
  for (const name of [join(folder, 'backups'), join(folder, elsewhere)].flatMap(copiesIn)) {
    const why = await whyNotWhole(name);
    if (why !== '') wrong.push(`${basename(name)} ${why}`);
  }
  const setAside = asideOf(folder);
  for (const each of setAside) {
    if (shapeOf(each) !== stage.before) wrong.push('what was set aside is not the file before');
  }
  if (act === 'restore' && hasTakenEffect && setAside.length !== 1) wrong.push('the file before was not set aside');
  if (act === 'migration' && hasTakenEffect && copiesIn(join(folder, 'backups')).length === 0) {
    wrong.push('it was brought up to date without a backup');
  }
  if (act !== 'migration') {
    // The frozen shop names pictures that were not frozen with it.
    const missing = photosNamedBy(file)
      .filter((name) => existsSync(join(stage.folder, 'photos', `${name}.jpg`)))
      .filter((name) => !isPhoto(join(folder, 'photos', `${name}.jpg`), name));
    if (missing.length > 0) wrong.push(`${missing.length} photos are missing`);
  }
  // And the book goes on: it opens, and the act can be done again.
  const desk = await Desk.at(folder, systemClock);
  try {
    if (desk.trouble()) wrong.push(`it does not open: ${desk.trouble()?.message}`);
    else await callerOn(desk)('backups.makeBackup', {});
  } finally {
    await desk.close();
  }
  return { wrong, hasTakenEffect };
}

const copiesIn = (folder: string) =>
  (existsSync(folder) ? readdirSync(folder) : [])
    .filter((name) => name.endsWith('.thoubook'))
    .map((name) => join(folder, name));

const asideOf = (folder: string) => {
  const aside = join(folder, 'set aside');
  return (existsSync(aside) ? readdirSync(aside) : [])
    .filter((name) => !name.endsWith('.unfinished'))
    .map((name) => join(aside, name, 'shop.thoubook'));
};

async function whyNotWhole(copy: string): Promise<string> {
  const card = readCard(copy);
  if (card) return card.sha256 === (await sha256Of(copy)) ? '' : 'is not what its card says';
  if (!basename(copy).includes(' whole ')) return 'has no card';
  const connection = new Sqlite(copy, { readonly: true });
  try {
    return connection.pragma('integrity_check', { simple: true }) === 'ok' &&
      Number(connection.prepare('select count(*) from photos_within').pluck().get()) > 0
      ? ''
      : 'is not whole';
  } catch (thrown) {
    return `cannot be read: ${String(thrown)}`;
  } finally {
    connection.close();
  }
}

function isPhoto(file: string, name: string): boolean {
  return existsSync(file) && createHash('sha256').update(readFileSync(file)).digest('hex') === name;
}
