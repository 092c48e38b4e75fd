import { createHash } from 'node:crypto';
import { type PDFContext, type PDFRef, PDFString } from 'pdf-lib';
import type { FontFace } from '../../../text/index.js';
import { toUnicodeMap } from './to-unicode.js';

/** A font as a page uses it: every pair of glyph and text has a code of its own. */
export interface PdfFont {
  /** Name in the resources. */
  readonly name: string;
  /** Code of the glyph where it says `text`. The same pair has the same code. */
  code(glyph: number, text: string): number;
  /** Width that the file gives for the glyph, in thousandths of an em. */
  width(glyph: number): number;
}

export interface Fonts {
  use(face: FontFace): PdfFont;
  /** Embeds what was used: name in the resources → font. Call once, after all pages are drawn. */
  finish(): Record<string, PDFRef>;
}

interface Entry extends PdfFont {
  readonly face: FontFace;
  readonly pairs: { readonly glyph: number; readonly text: string }[];
}

/**
 * Fonts of a file, as Type 0 fonts with Identity-H. One code for each pair of glyph and text keeps
 * the way back from glyphs to text free of doubt, also where one glyph stands for different letters.
 */
export function createFonts(context: PDFContext): Fonts {
  const entries = new Map<string, Entry>();
  return {
    use(face) {
      const known = entries.get(face.id);
      if (known) return known;
      const entry = createEntry(face, `F${entries.size + 1}`);
      entries.set(face.id, entry);
      return entry;
    },
    finish() {
      const out: Record<string, PDFRef> = {};
      for (const entry of entries.values()) out[entry.name] = embed(context, entry);
      return out;
    },
  };
}

function createEntry(face: FontFace, name: string): Entry {
  const pairs: { glyph: number; text: string }[] = [];
  const codes = new Map<string, number>();
  return {
    face,
    name,
    pairs,
    code(glyph, text) {
      const key = `${glyph} ${text}`;
      const known = codes.get(key);
      if (known !== undefined) return known;
      if (pairs.length >= 0xfffe) throw new Error(`One file uses too many glyphs of ${face.name}.`);
      pairs.push({ glyph, text });
      // Code 0 stays free: it means a missing glyph.
      codes.set(key, pairs.length);
      return pairs.length;
    },
    width: (glyph) => Math.round((face.advance(glyph) * 1e5) / face.unitsPerEm) / 100,
  };
}

function embed(context: PDFContext, { face, pairs, width }: Entry): PDFRef {
  const glyphs = [...new Set(pairs.map((pair) => pair.glyph))].sort((a, b) => a - b);
  const name = `${subsetTag(face, glyphs)}+${face.name}`;
  const per1000 = (units: number) => Math.round((units * 1000) / face.unitsPerEm);
  const program = face.subset(glyphs);
  const descriptor = context.register(
    context.obj({
      Type: 'FontDescriptor',
      FontName: name,
      // Symbolic: codes are not those of a Latin alphabet.
      Flags: 4,
      FontBBox: face.box.map(per1000),
      ItalicAngle: 0,
      Ascent: per1000(face.ascent),
      Descent: -per1000(face.descent),
      CapHeight: per1000(face.capHeight),
      // Common practice, no source: stems widen with the square of the weight.
      StemV: Math.round(50 + (face.weight / 65) ** 2),
      FontFile2: context.register(context.flateStream(program, { Length1: program.length })),
    }),
  );
  const toGlyph = new Uint8Array((pairs.length + 1) * 2);
  for (const [index, { glyph }] of pairs.entries()) {
    toGlyph[index * 2 + 2] = glyph >> 8;
    toGlyph[index * 2 + 3] = glyph & 255;
  }
  const descendant = context.register(
    context.obj({
      Type: 'Font',
      Subtype: 'CIDFontType2',
      BaseFont: name,
      CIDSystemInfo: {
        Registry: PDFString.of('Adobe'),
        Ordering: PDFString.of('Identity'),
        Supplement: 0,
      },
      FontDescriptor: descriptor,
      DW: 0,
      W: [1, pairs.map((pair) => width(pair.glyph))],
      CIDToGIDMap: context.register(context.flateStream(toGlyph)),
    }),
  );
  return context.register(
    context.obj({
      Type: 'Font',
      Subtype: 'Type0',
      BaseFont: name,
      Encoding: 'Identity-H',
      DescendantFonts: [descendant],
      ToUnicode: context.register(context.flateStream(toUnicodeMap(pairs.map((pair) => pair.text)))),
    }),
  );
}

/** Six letters that differ when the font or its glyphs do, and are the same on every run. */
function subsetTag(face: FontFace, glyphs: readonly number[]): string {
  const hash = createHash('sha256').update(`${face.id}:${glyphs.join()}`).digest();
  return Array.from(hash.subarray(0, 6), (byte) => String.fromCharCode(65 + (byte % 26))).join('');
}
