import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import * as hb from 'harfbuzzjs';
import { describe, expect, it } from 'vitest';
import { FAMILIES, type Family, fileOf, nearestWeight, postScriptName } from '../../src/text/catalog.js';
import { loadFonts } from '../../src/text/index.js';
import { fontsOnDisk } from './fonts-on-disk.js';

const FOLDER = fileURLToPath(new URL('../../assets/fonts/', import.meta.url));
const FILES = readdirSync(FOLDER);
const FONT_FILES = FILES.filter((file) => file.endsWith('.ttf'));
const ALL = (Object.keys(FAMILIES) as Family[]).flatMap((family) =>
  FAMILIES[family].weights.map((weight) => ({ family, weight, file: fileOf(family, weight) })),
);

function table(bytes: Uint8Array, wanted: string): DataView {
  // OpenType specification, "Organization of an OpenType font": read without any library.
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  for (let i = 0; i < view.getUint16(4); i++) {
    const record = 12 + 16 * i;
    if (String.fromCharCode(...bytes.subarray(record, record + 4)) === wanted)
      return new DataView(
        bytes.buffer,
        bytes.byteOffset + view.getUint32(record + 8),
        view.getUint32(record + 12),
      );
  }
  throw new Error(`no table ${wanted}`);
}

describe('the font files', () => {
  it('are those that the catalog names, and no others', () => {
    expect(ALL.map(({ file }) => file).sort()).toEqual([...FONT_FILES].sort());
  });

  it('are the files that the list beside them describes', () => {
    const list = readFileSync(`${FOLDER}README.md`, 'utf8');
    const rows = [...list.matchAll(/^\| (\S+\.ttf) \| (.+?) \| (whole|cut) \| ([0-9a-f]{64}) \|$/gm)];
    expect(rows.map(([, file]) => file).sort()).toEqual([...FONT_FILES].sort());
    for (const [, file, , , sum] of rows)
      expect([
        file,
        createHash('sha256')
          .update(readFileSync(FOLDER + file))
          .digest('hex'),
      ]).toEqual([file, sum]);
  });

  it('carry their licenses', () => {
    for (const { file } of Object.values(FAMILIES)) {
      const license = readFileSync(`${FOLDER}${file}.license.txt`, 'utf8');
      expect(license).toMatch(/^(Copyright|\(c\)) /);
      expect(license).toContain('SIL OPEN FONT LICENSE Version 1.1');
    }
    expect(FILES.filter((file) => file.endsWith('.license.txt'))).toHaveLength(Object.keys(FAMILIES).length);
  });

  it('weigh less than 8 MB together', () => {
    const sizes = FONT_FILES.map((file) => readFileSync(FOLDER + file).length);
    expect(sizes.reduce((sum, size) => sum + size, 0)).toBeLessThan(8_000_000);
  });

  const NAMES: Readonly<Record<Family, string>> = {
    atkinson: 'Atkinson Hyperlegible Next',
    noto: 'Noto Sans',
    vazirmatn: 'Vazirmatn',
    // Its maker left the name of the lightest weight in every file cut from the variable font.
    chinese: 'Noto Sans SC Thin',
    math: 'Noto Sans Math',
    symbols: 'Noto Sans Symbols 2',
  };
  it.each(ALL)('$file says the name, weight and license that we give it', ({ family, weight, file }) => {
    const bytes = new Uint8Array(readFileSync(FOLDER + file));
    const face = new hb.Face(new hb.Blob(bytes));
    const name = (id: number) => face.getName(id, 'en');
    // Names 1 and 16 are the family, without and with its weights (OpenType specification, name).
    expect(name(16) || name(1)).toBe(NAMES[family]);
    expect(table(bytes, 'OS/2').getUint16(4)).toBe(weight);
    if (family !== 'chinese') expect(name(6)).toBe(postScriptName(family, weight));
    expect(`${name(13)} ${name(14)}`).toMatch(/openfontlicense\.org|scripts\.sil\.org\/OFL/);
  });
});

describe('a face', () => {
  const fonts = fontsOnDisk();

  it.each(ALL)('$file has the lengths that its tables hold', ({ family, weight }) => {
    const face = fonts.face(family, weight);
    const { bytes } = face;
    expect(face.unitsPerEm).toBe(table(bytes, 'head').getUint16(18));
    expect(face.ascent).toBe(table(bytes, 'hhea').getInt16(4));
    expect(face.descent).toBe(-table(bytes, 'hhea').getInt16(6));
    expect(face.capHeight).toBe(table(bytes, 'OS/2').getInt16(88));
    expect(face.box).toEqual([36, 38, 40, 42].map((at) => table(bytes, 'head').getInt16(at)));
    const metrics = table(bytes, 'hmtx');
    for (let glyph = 0; glyph < Math.min(200, table(bytes, 'hhea').getUint16(34)); glyph++)
      expect(face.advance(glyph)).toBe(metrics.getUint16(4 * glyph));
  });

  it('has an outline for a letter and none for a space', () => {
    const face = fonts.face('atkinson', 400);
    const font = new hb.Font(new hb.Face(new hb.Blob(face.bytes)));
    expect(face.path(font.nominalGlyph(0x48) ?? 0)).toMatch(/^M[-\d.,]+[MLQZ\d.,-]+Z$/);
    expect(face.path(font.nominalGlyph(0x20) ?? 0)).toBe('');
  });

  // The design rests on these: what each family has and lacks.
  it.each([
    ['atkinson', '½¼¾×÷−¢°≤≥áéíóúüñ¿¡àèòéê–—‘’“”…•', true],
    ['atkinson', '⅓⅔µ→←✓ơưệắ', false],
    ['noto', 'ơưệắựữĐđ⅓⅔⅛µαβ½', true],
    ['vazirmatn', 'ابتثجحخدذرزسشصضطظعغفقكلمنهويءأإآةىپچژگک،؛؟٪٫٬٠١٢٣۰۱۲۴0123456789', true],
    ['chinese', '罐装豆子含钠毫克冲洗请先问医生，。、：；“”（）', true],
    ['math', '→←↑↓≤≥≠≈○●△', true],
    ['symbols', '☐☑☒✓✗', true],
  ] as const)('of %s: %s is %s', (family, characters, expected) => {
    const face = fonts.face(family, 400);
    const differ = [...characters].filter((c) => face.covers(c.codePointAt(0) ?? 0) !== expected);
    expect(differ).toEqual([]);
  });
});

describe('loading', () => {
  it('reads a file when it is first needed, and once', () => {
    const read: string[] = [];
    const fonts = loadFonts((path) => {
      read.push(path);
      return readFileSync(FOLDER + path);
    });
    expect(read).toEqual([]);
    fonts.face('atkinson', 400);
    fonts.face('atkinson', 400);
    expect(read).toEqual(['atkinson-hyperlegible-next-400.ttf']);
  });

  it('refuses a file that is no font', () => {
    const fonts = loadFonts(() => new TextEncoder().encode('not a font'));
    expect(() => fonts.face('noto', 400)).toThrow('noto-sans-400 is not a TrueType font.');
  });

  it('gives each face its own id', () => {
    const fonts = fontsOnDisk();
    const ids = ALL.map(({ family, weight }) => fonts.face(family, weight).id);
    expect(new Set(ids).size).toBe(ALL.length);
  });

  // CSS Fonts Module Level 4, section 5.2, step 4.
  it.each([
    ['chinese', 500, 400],
    ['chinese', 600, 700],
    ['chinese', 800, 700],
    ['math', 800, 400],
    ['noto', 600, 600],
  ] as const)('stands in for a weight that %s lacks: %i by %i', (family, wanted, found) => {
    expect(nearestWeight(family, wanted)).toBe(found);
    expect(fontsOnDisk().face(family, wanted).weight).toBe(found);
  });
});
