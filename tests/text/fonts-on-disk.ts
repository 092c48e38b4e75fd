import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Fonts, loadFonts, SUBSET_ENGINE, type TextStyle } from '../../src/text/index.js';

const FOLDER = fileURLToPath(new URL('../../assets/fonts/', import.meta.url));

/** The project's fonts, read from disk as the program reads them. */
export function fontsOnDisk(): Fonts {
  return loadFonts(
    (path) => readFileSync(join(FOLDER, path)),
    () => readFileSync(createRequire(import.meta.url).resolve(SUBSET_ENGINE)),
  );
}

/** Body text of a plain handout; change what a test needs. */
export function style(change: Partial<TextStyle> = {}): TextStyle {
  return { language: 'en', direction: 'ltr', size: 12.5, leading: 17, weight: 400, ...change };
}
