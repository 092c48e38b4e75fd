import * as hb from 'harfbuzzjs';
import { describe, expect, it } from 'vitest';
import { glyphPath, loadFonts, setLine, subsetFont } from '../../src/text/index.js';
import { fontsOnDisk, style } from './fonts-on-disk.js';

const fonts = fontsOnDisk();

/** The font and glyphs of a word. */
function used(text: string, language: string, direction: 'ltr' | 'rtl' = 'ltr') {
  const [run] = setLine(fonts, text, style({ language, direction })).runs;
  if (!run) throw new Error('no run');
  return { font: run.font, glyphs: run.glyphs.map((glyph) => glyph.id) };
}

function opened(bytes: Uint8Array): hb.Font {
  return new hb.Font(new hb.Face(new hb.Blob(bytes)));
}

describe('a font that was cut', () => {
  it.each([
    ['brûlée', 'es', 'ltr'],
    ['phở gà ệ', 'vi', 'ltr'],
    ['الفاصولياء', 'ar', 'rtl'],
    ['毫克钠', 'zh-Hans', 'ltr'],
  ] as const)('keeps the glyphs of %s under their numbers', (text, language, direction) => {
    const { font, glyphs } = used(text, language, direction);
    const bytes = subsetFont(font, glyphs);
    const cut = opened(bytes);
    expect(glyphs.length).toBeGreaterThan(2);
    for (const glyph of glyphs) {
      expect(cut.glyphToPath(glyph)).toBe(glyphPath(font, glyph));
      expect(cut.glyphHAdvance(glyph)).toBe(font.advance(glyph));
    }
    expect(bytes.length).toBeLessThan(font.bytes.length / 5);
  });

  it('keeps the box for what is missing, and loses all else', () => {
    const { font, glyphs } = used('ab', 'en');
    const cut = opened(subsetFont(font, glyphs));
    expect(cut.glyphToPath(0)).toBe(glyphPath(font, 0));
    const [a = 0, b = 0] = glyphs;
    const others = Array.from({ length: Math.max(a, b) }, (_, glyph) => glyph).filter(
      (glyph) => glyph !== 0 && !glyphs.includes(glyph),
    );
    expect(others.filter((glyph) => cut.glyphToPath(glyph) !== '')).toEqual([]);
  });

  it('has what a PDF reader needs and nothing of layout', () => {
    const { font, glyphs } = used('ab', 'en');
    const bytes = subsetFont(font, glyphs);
    const count = new DataView(bytes.buffer).getUint16(4);
    const tables = Array.from({ length: count }, (_, i) =>
      String.fromCharCode(...bytes.subarray(12 + 16 * i, 16 + 16 * i)),
    );
    // ISO 32000-1, 9.9, table 126: glyf, head, hhea, hmtx, loca and maxp must be there.
    expect(tables.sort()).toEqual(['glyf', 'head', 'hhea', 'hmtx', 'loca', 'maxp']);
  });

  it('adds up to the checksum that the format asks for', () => {
    // OpenType specification, head, checksumAdjustment: the file sums to 0xB1B0AFBA.
    const { font, glyphs } = used('sodium', 'en');
    const bytes = subsetFont(font, glyphs);
    const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    let sum = 0;
    for (let at = 0; at < bytes.length; at += 4) sum = (sum + view.getUint32(at)) >>> 0;
    expect(sum.toString(16)).toBe('b1b0afba');
  });

  it('is the same file whatever the order of the glyphs', () => {
    const { font, glyphs } = used('sodium', 'en');
    expect(subsetFont(font, [...glyphs, ...glyphs].reverse())).toEqual(subsetFont(font, new Set(glyphs)));
  });

  it('does not disturb the font it was cut from', () => {
    const { font, glyphs } = used('sodium', 'en');
    const before = new Uint8Array(font.bytes);
    subsetFont(font, glyphs);
    expect(new Uint8Array(font.bytes)).toEqual(before);
  });

  it('needs its engine, and says so', () => {
    const { font } = used('a', 'en');
    const without = loadFonts(() => font.bytes);
    expect(() => subsetFont(without.face('atkinson', 400), [1])).toThrow(
      'give loadFonts a second argument that reads harfbuzzjs/dist/harfbuzz-subset.wasm',
    );
  });
});
