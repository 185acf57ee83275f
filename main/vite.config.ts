// Builds what main runs: the desktop's main module, its preload, and the loopback host, into dist/main.
// One file per entry with everything in it but Electron and the database binary.
import { copyFileSync, cpSync, mkdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { defineConfig, type Plugin } from 'vite';
import packageJson from '../package.json' with { type: 'json' };
import { licencesBeside, listOfBundled } from './licences/licences-beside.ts';
import { fontFiles } from './papers/fonts.ts';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** Papers embed their fonts, so the font files travel beside the bundle. */
function fontsBeside(folder: string): Plugin {
  return {
    name: 'fonts-beside',
    closeBundle() {
      mkdirSync(folder, { recursive: true });
      const { resolve } = createRequire(import.meta.url);
      for (const { specifier, name } of Object.values(fontFiles)) copyFileSync(resolve(specifier), `${folder}/${name}`);
    },
  };
}

/** The demo's drawings are read from beside the module that fills it. */
function picturesBeside(folder: string): Plugin {
  return {
    name: 'pictures-beside',
    closeBundle() {
      cpSync(here('shop/demo/pictures'), folder, { recursive: true });
    },
  };
}

const travelling = Object.keys(packageJson.dependencies);
const fonts = ['@expo-google-fonts/fira-sans', '@expo-google-fonts/fira-mono'];

export default defineConfig({
  root: here('.'),
  publicDir: false,
  ssr: { noExternal: true, external: ['electron', ...travelling] },
  build: {
    ssr: true,
    outDir: here('../dist/main'),
    emptyOutDir: true,
    target: 'node22',
    minify: false,
    license: { fileName: listOfBundled },
    rolldownOptions: {
      input: {
        'electron-main': here('shells/electron/electron-main.ts'),
        serve: here('shells/headless/serve.ts'),
        'backups.worker': here('workers/backups.worker.ts'),
        'paint-paper.worker': here('workers/paint-paper.worker.ts'),
        'fleet.worker': here('workers/fleet.worker.ts'),
        'plan-unit.worker': here('workers/plan-unit.worker.ts'),
      },
      output: { entryFileNames: '[name].js', chunkFileNames: '[name].js' },
    },
  },
  plugins: [
    fontsBeside(here('../dist/main/fonts')),
    picturesBeside(here('../dist/main/pictures')),
    // The renderer is built before.
    licencesBeside(here('../dist'), ['renderer', 'main'], travelling, fonts),
  ],
});
