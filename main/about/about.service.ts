// What this program is made of and runs on, and a file of it for whoever helps.
import { existsSync, readFileSync } from 'node:fs';
import { arch, cpus, release, totalmem, type } from 'node:os';
import { basename, join } from 'node:path';
import type { Part } from '../../app/about/about.contract.ts';
import { type Diagnostics, diagnosticsText, faultsIn } from '../../app/about/diagnostics.ts';
import packageJson from '../../package.json' with { type: 'json' };
import { listBackups } from '../backups/backup-files.ts';
import { chosenPlace } from '../backups/second-place.ts';
import { backupFolderOf } from '../database/back-up.ts';
import { found } from '../database/errors.ts';
import type { OpenShop } from '../database/open-shop.ts';
import type { Licence } from '../licences/licences-beside.ts';
import { writeWhole } from '../ports/disk.ts';
import { readLog } from '../ports/log-file.ts';
import type { Desk } from '../shop/desk.ts';
import { getSettings } from '../shop/shop.service.ts';
import { fileFacts } from './file-facts.repository.ts';

export function getAbout(desk: Desk) {
  return {
    version: packageJson.version,
    runsOn: runsOn(),
    folder: desk.folder,
    faultLog: { file: desk.faultLog(), faults: faultsIn(readLog(desk.faultLog())).length },
    parts: licences().map(({ name, version, licence }): Part => ({ name, version, licence })),
  };
}

export function getLicence({ name, version }: { name: string; version: string }) {
  const licence = licences().find((each) => each.name === name && each.version === version);
  return { text: found(licence, 'licence').text };
}

/** Writes it anew each time, whole or not at all. */
export async function writeDiagnostics(desk: Desk): Promise<{ file: string }> {
  const file = join(desk.folder, 'diagnostics.txt');
  writeWhole(file, diagnosticsText(await diagnosticsOf(desk)));
  return { file };
}

async function diagnosticsOf(desk: Desk): Promise<Diagnostics> {
  const shop = desk.openShopOrNone();
  const shopFile = shop?.file ?? desk.ownFile();
  const backups = listBackups(backupFolderOf(shopFile), basename(shopFile));
  return {
    writtenAt: desk.clock(),
    version: packageJson.version,
    runsOn: runsOn(),
    cores: cpus().length,
    memory_bytes: totalmem(),
    shop: shop ? await shopFacts(shop) : null,
    trouble: desk.trouble()?.code ?? null,
    backups: { count: backups.length, newestAt: backups[0]?.at ?? null, hasSecondPlace: chosenPlace(desk) !== null },
    faults: faultsIn(readLog(desk.faultLog())),
  };
}

async function shopFacts(shop: OpenShop): Promise<Diagnostics['shop']> {
  const { isDemo, lengthUnit, decimalMark, paper, decisionRule } = await shop.read(getSettings);
  return { ...fileFacts(shop.file), isDemo, set: { lengthUnit, decimalMark, paper, decisionRule } };
}

function runsOn(): string {
  const { electron, node } = process.versions;
  return `${electron ? `Electron ${electron}` : `Node ${node}`}, ${type()} ${release()} ${arch()}`;
}

/** Written beside the bundle by the build. */
function licences(): Licence[] {
  const file = join(import.meta.dirname, 'licences.json');
  return existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : [];
}
