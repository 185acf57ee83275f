// At the end of the build: the licence of everything that travels with the program, as one list beside the bundle and
// one text beside the program.
import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import type { Plugin } from 'vite';

export type Licence = {
  readonly name: string;
  readonly version: string;
  /** As its package says it, an SPDX expression. */
  readonly licence: string;
  readonly text: string;
};

/** How Vite lists what it put into a bundle. */
type Bundled = { name: string; version: string; identifier?: string; text?: string };

/** Where each bundle's own list lies until then. */
export const listOfBundled = 'licences.json';

/**
 * Joins what Vite listed in `bundles`, the packages of `travelling` with all they need, and the fonts of `fonts`; writes
 * `licences.json` into the last bundle and `licences.txt` into `folder`.
 */
export function licencesBeside(
  folder: string,
  bundles: readonly string[],
  travelling: readonly string[],
  fonts: readonly string[],
): Plugin {
  return {
    name: 'licences-beside',
    closeBundle() {
      const lists = bundles.map((bundle) => join(folder, bundle, listOfBundled));
      const all = [
        ...lists.flatMap(bundledIn),
        ...withAllTheyNeed(travelling).map((found) => licenceOf(found, /^licen[cs]e/i)),
        ...fonts.map((font) => licenceOf(packageFolder(font, import.meta.dirname), /^LICENSE_FONT$/)),
      ];
      const once = [...new Map(all.map((each) => [`${each.name} ${each.version}`, each])).values()];
      const sorted = once.toSorted((a, b) => a.name.localeCompare(b.name, 'en'));
      for (const list of lists) rmSync(list);
      writeFileSync(join(folder, bundles.at(-1) ?? '', 'licences.json'), JSON.stringify(sorted));
      writeFileSync(join(folder, 'licences.txt'), sorted.map(asText).join(`\n${'-'.repeat(72)}\n\n`));
    },
  };
}

function bundledIn(list: string): Licence[] {
  const bundled: Bundled[] = JSON.parse(readFileSync(list, 'utf8'));
  return bundled.map(({ name, version, identifier = '', text = '' }) => ({ name, version, licence: identifier, text }));
}

/** The folders of these packages and of every package they need in turn. */
function withAllTheyNeed(names: readonly string[]): string[] {
  const found = new Set<string>();
  const look = (name: string, from: string) => {
    const folder = packageFolder(name, from);
    if (found.has(folder)) return;
    found.add(folder);
    for (const needed of Object.keys(cardOf(folder).dependencies ?? {})) look(needed, folder);
  };
  for (const name of names) look(name, import.meta.dirname);
  return [...found];
}

/** Where Node would find the package from there; its own map of exports may hide its package.json. */
function packageFolder(name: string, from: string): string {
  const places = createRequire(join(from, 'here.js')).resolve.paths(name) ?? [];
  const folder = places.map((place) => join(place, name)).find((place) => existsIn(place));
  if (folder === undefined) throw new Error(`${name} is not installed`);
  return folder;
}

function existsIn(folder: string): boolean {
  try {
    return readdirSync(folder).includes('package.json');
  } catch {
    return false;
  }
}

function cardOf(folder: string): {
  name: string;
  version: string;
  license?: string;
  dependencies?: Record<string, string>;
} {
  return JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
}

function licenceOf(folder: string, called: RegExp): Licence {
  const { name, version, license = '' } = cardOf(folder);
  const file = readdirSync(folder).find((each) => called.test(each));
  return { name, version, licence: license, text: file ? readFileSync(join(folder, file), 'utf8').trim() : '' };
}

function asText({ name, version, licence, text }: Licence): string {
  return `${name} ${version}: ${licence}\n${text === '' ? '' : `\n${text}\n`}`;
}
