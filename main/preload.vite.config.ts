// Builds the preload into dist/preload. A sandboxed preload must be CommonJS, so it has a build of its own.
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

export default defineConfig({
  root: here('.'),
  publicDir: false,
  build: {
    outDir: here('../dist/preload'),
    emptyOutDir: true,
    target: 'node22',
    minify: false,
    lib: { entry: here('shells/electron/preload.ts'), formats: ['cjs'], fileName: () => 'preload.cjs' },
    rolldownOptions: { external: ['electron'] },
  },
});
