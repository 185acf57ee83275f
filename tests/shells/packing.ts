// The packing itself, with a runtime stood in for: electron-builder wants its folder, the place of its fuses and, for
// macOS, its bundles, and no more.
import { spawn } from 'node:child_process';
import { chmodSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import packageJson from '../../package.json' with { type: 'json' };

const root = join(import.meta.dirname, '../..');

/** As the real one carries them: a mark, the version, how many, and every fuse as it comes, most of them on. */
const fuses = Buffer.concat([
  Buffer.from('dL7pKGdnNz796PbbjQWNKmHXBZaB9tsX'),
  Buffer.from([1, 9]),
  Buffer.from('101101011'),
]);

/** Makes a stand-in for the runtime of Linux, Windows and macOS at once in `folder`. */
function standInForRuntime(folder: string): void {
  mkdirSync(join(folder, 'resources'), { recursive: true });
  writeFileSync(join(folder, 'version'), packageJson.devDependencies.electron);
  writeFileSync(join(folder, 'electron'), Buffer.concat([Buffer.from('#!/bin/sh\nexit\n'), fuses]));
  chmodSync(join(folder, 'electron'), 0o755);
  writeFileSync(join(folder, 'electron.exe'), fuses);
  const contents = join(folder, 'Electron.app/Contents');
  const bundle = (at: string, name: string) => {
    mkdirSync(join(at, 'MacOS'), { recursive: true });
    writeFileSync(join(at, 'MacOS', name), '');
    writeFileSync(
      join(at, 'Info.plist'),
      `<plist version="1.0"><dict><key>CFBundleExecutable</key><string>${name}</string></dict></plist>`,
    );
  };
  bundle(contents, 'Electron');
  mkdirSync(join(contents, 'Resources'));
  for (const kind of ['', ' (Renderer)', ' (Plugin)', ' (GPU)'])
    bundle(join(contents, `Frameworks/Electron Helper${kind}.app/Contents`), `Electron Helper${kind}`);
  const framework = join(contents, 'Frameworks/Electron Framework.framework');
  mkdirSync(framework);
  writeFileSync(join(framework, 'Electron Framework'), fuses);
}

/** Packs for these systems into `out`, as `npm run pack` does up to the installers; answers what was said when it failed. */
export async function pack(systems: readonly string[], out: string, runtime: string): Promise<string | null> {
  standInForRuntime(runtime);
  const packing = spawn(
    process.execPath,
    [
      join(root, 'node_modules/electron-builder/cli.js'),
      '--config=electron-builder.yml',
      '--dir',
      ...systems,
      '--publish=never',
      `-c.electronDist=${runtime}`,
      `-c.directories.output=${out}`,
      // A stand-in is no real Windows program whose resources could be edited, and nothing signs here.
      '-c.win.signAndEditExecutable=false',
      '-c.disableAsarIntegrity=true',
      '-c.mac.identity=null',
    ],
    { cwd: root, stdio: ['ignore', 'pipe', 'pipe'] },
  );
  let said = '';
  for (const stream of [packing.stdout, packing.stderr])
    stream.on('data', (part) => {
      said += part;
    });
  const status = await new Promise((exited) => packing.once('exit', exited));
  return status === 0 ? null : said;
}
