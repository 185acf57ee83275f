// Builds what a person sees into dist/renderer, for both shells: local files only, nothing inlined.
import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

export default defineConfig({
  root: fileURLToPath(new URL('.', import.meta.url)),
  base: './',
  plugins: [react()],
  build: {
    outDir: '../dist/renderer',
    emptyOutDir: true,
    // The shells serve fonts and images from 'self' only, so no file may become a data: address.
    assetsInlineLimit: 0,
    // Joined with the others' when main is built.
    license: { fileName: 'licences.json' },
    // The only browser is the one of the desktop window, or one of the same age.
    target: 'chrome140',
    modulePreload: { polyfill: false },
    chunkSizeWarningLimit: 1700,
  },
});
