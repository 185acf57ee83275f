// Where the fonts of the papers are: in their packages while running from source, beside the bundle once built.
import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';

/** A font's bytes, or the path of its file. */
export type FontSource = string | Uint8Array;

export type Fonts = { readonly regular: FontSource; readonly semibold: FontSource; readonly mono: FontSource };

/** What each face is called as a module, and as a file beside the bundle. */
export const fontFiles = {
  regular: {
    specifier: '@expo-google-fonts/fira-sans/400Regular/FiraSans_400Regular.ttf',
    name: 'FiraSans_400Regular.ttf',
  },
  semibold: {
    specifier: '@expo-google-fonts/fira-sans/600SemiBold/FiraSans_600SemiBold.ttf',
    name: 'FiraSans_600SemiBold.ttf',
  },
  mono: {
    specifier: '@expo-google-fonts/fira-mono/400Regular/FiraMono_400Regular.ttf',
    name: 'FiraMono_400Regular.ttf',
  },
} as const;

/** The fonts in a folder, under the names the build gives them. */
export function fontsIn(folder: string): Fonts {
  return {
    regular: join(folder, fontFiles.regular.name),
    semibold: join(folder, fontFiles.semibold.name),
    mono: join(folder, fontFiles.mono.name),
  };
}

/** The fonts beside the running module if the build put them there, else those of the installed packages. */
export function findFonts(): Fonts {
  const beside = join(import.meta.dirname, 'fonts');
  if (existsSync(join(beside, fontFiles.regular.name))) return fontsIn(beside);
  const { resolve } = createRequire(import.meta.url);
  return {
    regular: resolve(fontFiles.regular.specifier),
    semibold: resolve(fontFiles.semibold.specifier),
    mono: resolve(fontFiles.mono.specifier),
  };
}
