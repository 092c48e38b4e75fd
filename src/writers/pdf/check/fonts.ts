import type { PDFObject } from 'pdf-lib';
import type { Findings } from './finding.js';
import { readFontProgram } from './font-program.js';
import { bytesOf, entry, type File, listOf, nameOf, numberOf, resolve } from './objects.js';
import { readToUnicode } from './to-unicode.js';

/** What a font makes of its codes. */
export interface FontReader {
  /** The text of a code; `undefined` when the font does not tell. */
  text(code: number): string | undefined;
  /** Reports what is wrong with a code that is shown. */
  check(code: number): void;
}

/** Opens a font of the file and reports what is wrong with it as a whole. */
export function openFont(file: File, font: PDFObject | undefined, findings: Findings): FontReader {
  const name = nameOf(entry(file, font, 'BaseFont')) ?? 'unknown';
  const map = bytesOf(entry(file, font, 'ToUnicode'));
  const texts = map ? readToUnicode(map) : new Map<number, string>();
  if (!map) findings.add('7.21.7', `The font ${name} does not say which letters it shows.`);
  const composite = nameOf(entry(file, font, 'Subtype')) === 'Type0';
  const descendant = resolve(file, listOf(entry(file, font, 'DescendantFonts'))[0]);
  const descriptor = entry(file, composite ? descendant : font, 'FontDescriptor');
  const program = ['FontFile2', 'FontFile3', 'FontFile']
    .map((key) => bytesOf(entry(file, descriptor, key)))
    .find((bytes) => bytes !== undefined);
  if (!program) findings.add('7.21.4.1', `The font ${name} is not embedded.`);
  if (!composite || !program) return { text: (code) => texts.get(code), check: () => undefined };

  const outlines = readFontProgram(program);
  if (!outlines) findings.add('7.21.4.1', `The font ${name} is embedded, but cannot be read.`);
  const toGlyph = glyphReader(file, descendant);
  if (!toGlyph) findings.add('7.21.3.2', `The font ${name} has no map from codes to glyphs.`);
  const widths = readWidths(file, descendant);
  const checked = new Set<number>();
  return {
    text: (code) => texts.get(code),
    check(code) {
      if (checked.has(code)) return;
      checked.add(code);
      const text = texts.get(code);
      if (map && !text) findings.add('7.21.7', `The font ${name} shows glyphs without saying their letters.`);
      if (text && /[\0\ufffe\ufeff]/.test(text))
        findings.add('7.21.7', `The font ${name} gives a letter that cannot be one.`);
      const glyph = toGlyph?.(code);
      if (glyph === undefined) return;
      if (glyph === 0) findings.add('7.21.8', `The font ${name} shows the box for a missing letter.`);
      if (!outlines) return;
      if (glyph >= outlines.glyphs) findings.add('7.21.4.1', `The font ${name} lacks a glyph that is shown.`);
      else if (Math.abs(outlines.width(glyph) - (widths.get(code) ?? 0)) > 1)
        findings.add('7.21.5', `The font ${name} gives a glyph another width than the file.`);
    },
  };
}

function glyphReader(file: File, descendant: PDFObject | undefined): ((code: number) => number) | undefined {
  const map = entry(file, descendant, 'CIDToGIDMap');
  if (nameOf(map) === 'Identity') return (code) => code;
  const bytes = bytesOf(map);
  return bytes && ((code) => ((bytes[code * 2] ?? 0) << 8) | (bytes[code * 2 + 1] ?? 0));
}

/** Widths by code, in both forms that the W array knows (ISO 32000-1, 9.7.4.3). */
function readWidths(file: File, descendant: PDFObject | undefined): ReadonlyMap<number, number> {
  const widths = new Map<number, number>();
  const items = listOf(entry(file, descendant, 'W')).map((item) => resolve(file, item));
  for (let i = 0; i < items.length; ) {
    const first = numberOf(items[i]) ?? 0;
    const last = numberOf(items[i + 1]);
    if (last === undefined) {
      for (const [offset, width] of listOf(items[i + 1]).entries())
        widths.set(first + offset, numberOf(resolve(file, width)) ?? 0);
      i += 2;
    } else {
      for (let code = first; code <= Math.min(last, 0xffff); code++)
        widths.set(code, numberOf(items[i + 2]) ?? 0);
      i += 3;
    }
  }
  return widths;
}
