// Who may import whom. Type-only imports count: a type is a dependency too.
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';
import { describe, expect, test } from 'vitest';

const root = join(import.meta.dirname, '../..');
const rooms = [
  'backups',
  'customers',
  'units',
  'specs',
  'jobs',
  'readings',
  'packs',
  'photos',
  'stock',
  'shop',
  'clutch',
  'gauges',
  'comebacks',
  'indicators',
  'updates',
];

type Import = { readonly from: string; readonly to: string };

function sourceFiles(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .map((name) => join(folder, name).split(sep).join('/'))
    .filter((name) => /\.tsx?$/.test(name));
}

const files = ['app', 'main', 'renderer', 'migrations'].flatMap(sourceFiles);

/** Every import and re-export of a file; a path inside the project comes out as a path from its root. */
function importsOf(file: string): Import[] {
  const text = readFileSync(join(root, file), 'utf8');
  const pattern =
    /(?:^|\n)\s*(?:import|export)\s+(?:type\s)?(?:[^'"`;]*?\sfrom\s+)?['"]([^'"]+)['"]|import\(\s*['"]([^'"]+)['"]/g;
  return [...text.matchAll(pattern)].map(([, fixed, dynamic]) => {
    const target = fixed ?? dynamic ?? '';
    const to = target.startsWith('.')
      ? relative(root, join(root, dirname(file), target))
          .split(sep)
          .join('/')
      : target;
    return { from: file, to };
  });
}

const imports = files.flatMap(importsOf);
const isOurs = ({ to }: Import) => /^(app|main|renderer|migrations|tests)\//.test(to);
const folderOf = (path: string, depth: number) => path.split('/').slice(0, depth).join('/');

function offenders(from: (file: string) => boolean, allows: (each: Import) => boolean): string[] {
  return imports.filter((each) => from(each.from) && !allows(each)).map(({ from: file, to }) => `${file} → ${to}`);
}

const under =
  (...folders: string[]) =>
  (path: string) =>
    folders.some((folder) => path === folder || path.startsWith(`${folder}/`));

describe('the arrows between the folders point one way', () => {
  test('the imports were found at all', () => {
    expect(imports.filter(isOurs).length).toBeGreaterThan(200);
    expect(importsOf('main/rpc/dispatch.ts').map(({ to }) => to)).toContain('app/contract/contract.ts');
  });

  test('app imports only itself, zod and d3', () => {
    expect(offenders(under('app'), ({ to }) => under('app')(to) || /^(zod|d3-(scale|shape|array))$/.test(to))).toEqual(
      [],
    );
  });

  test('only contracts and the shapes they are made of know zod', () => {
    const knowsZod = (file: string) =>
      under('app')(file) && !/\.contract\.ts$|^app\/contract\/|^app\/specs\/spec-(sheet|list)\.ts$/.test(file);
    expect(offenders(knowsZod, ({ to }) => to !== 'zod')).toEqual([]);
  });

  test('base imports nothing, quantities only base', () => {
    expect(offenders(under('app/base'), ({ to }) => under('app/base')(to))).toEqual([]);
    expect(offenders(under('app/quantities'), ({ to }) => under('app/base', 'app/quantities')(to))).toEqual([]);
  });

  test.each(['statistics', 'selection', 'charts'])(
    '%s knows base and quantities, no room and no other of its kind',
    (name) => {
      const allowed = under('app/base', 'app/quantities', `app/${name}`);
      expect(offenders(under(`app/${name}`), (each) => allowed(each.to) || !isOurs(each))).toEqual([]);
    },
  );

  test('main never imports the renderer, and nobody imports the shells', () => {
    expect(offenders(under('main'), (each) => !isOurs(each) || under('app', 'main', 'migrations')(each.to))).toEqual(
      [],
    );
    expect(
      offenders(
        (file) => !under('main/shells')(file),
        ({ to }) => !under('main/shells')(to),
      ),
    ).toEqual([]);
  });

  test('Electron is known in main/shells/electron alone', () => {
    expect(
      offenders(
        (file) => !under('main/shells/electron')(file),
        ({ to }) => !/^electron/.test(to),
      ),
    ).toEqual([]);
  });

  test('a room of main reaches another only through its service, its tables or its rows', () => {
    const isRoom = (path: string) => rooms.some((room) => under(`main/${room}`)(path));
    const crosses = ({ from, to }: Import) => isRoom(from) && isRoom(to) && folderOf(from, 2) !== folderOf(to, 2);
    const allowed = /\.(service|repository|handlers)\.ts$|main\/shop\/desk\.ts$/;
    expect(
      imports.filter((each) => crosses(each) && !allowed.test(each.to)).map(({ from, to }) => `${from} → ${to}`),
    ).toEqual([]);
  });

  test('the renderer imports app and itself, never main, Node or Electron', () => {
    const forbidden = (to: string) =>
      under('main', 'migrations')(to) || /^(node:|electron$|kysely|better-sqlite3)/.test(to);
    const isConfig = (file: string) => file === 'renderer/vite.config.ts';
    expect(
      offenders(
        (file) => under('renderer')(file) && !isConfig(file),
        ({ to }) => !forbidden(to),
      ),
    ).toEqual([]);
  });

  test('components know no screen and no call', () => {
    expect(
      offenders(
        under('renderer/components'),
        ({ to }) => !under('renderer/screens', 'renderer/rpc', 'renderer/frame')(to),
      ),
    ).toEqual([]);
  });

  test('a screen room imports no other screen room', () => {
    const crosses = ({ from, to }: Import) =>
      under('renderer/screens')(from) && under('renderer/screens')(to) && folderOf(from, 3) !== folderOf(to, 3);
    expect(imports.filter(crosses).map(({ from, to }) => `${from} → ${to}`)).toEqual([]);
  });

  test('migrations import kysely and each other only', () => {
    expect(offenders(under('migrations'), ({ to }) => under('migrations')(to) || /^kysely/.test(to))).toEqual([]);
  });

  test('no import of the house runs in a circle', () => {
    const next = new Map<string, string[]>();
    for (const { from, to } of imports) next.set(from, [...(next.get(from) ?? []), to]);
    const circles: string[] = [];
    const done = new Set<string>();
    const walk = (file: string, path: string[]): void => {
      if (path.includes(file)) circles.push([...path.slice(path.indexOf(file)), file].join(' → '));
      if (path.includes(file) || done.has(file)) return;
      for (const to of next.get(file) ?? []) walk(to, [...path, file]);
      done.add(file);
    };
    for (const file of files) walk(file, []);
    expect(circles).toEqual([]);
  });
});

describe('the house stays small and named', () => {
  test('the top level holds what the map says and nothing else', () => {
    const allowed = new Set(
      'package.json tsconfig.json electron-builder.yml README.md DEVELOPERS.md app main renderer migrations tests package-lock.json LICENSE'.split(
        ' ',
      ),
    );
    const unbidden = readdirSync(root).filter(
      (name) => !name.startsWith('.') && !allowed.has(name) && !['node_modules', 'dist', 'test-results'].includes(name),
    );
    expect(unbidden).toEqual([]);
  });

  test('no file says in its name that it holds a bit of everything', () => {
    expect(
      files.filter(
        (file) =>
          /(^|\/)(utils?|helpers?|common|misc|manager|types|index)(\/|\.tsx?$)/.test(file) &&
          file !== 'migrations/index.ts',
      ),
    ).toEqual([]);
  });

  test('no typed reading goes through parseFloat', () => {
    expect(files.filter((file) => /\bparseFloat\(/.test(readFileSync(join(root, file), 'utf8')))).toEqual([]);
  });
});
