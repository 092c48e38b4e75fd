import { decodePDFRawStream, PDFName, PDFRawStream } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import type { Mark, Raster } from '../../../src/figures/index.js';
import { readJpeg } from '../../../src/writers/pdf/resources/jpeg.js';
import { readPng } from '../../../src/writers/pdf/resources/png.js';
import { apart, pdfOf } from './compare.js';
import { JPEGS } from './jpegs.js';
import { dictionariesWith, load } from './objects.js';
import { makePng } from './pngs.js';
import { ask, describeWith, drawn } from './tools.js';

const RED = [208, 0, 0] as const;
const GREEN = [0, 160, 0] as const;
const BLUE = [0, 0, 208] as const;
const YELLOW = [224, 192, 0] as const;

/** 24 by 16 pixels: red and green above, blue and yellow below. */
const QUARTERS = makePng({
  width: 24,
  height: 16,
  colorType: 2,
  bits: 8,
  sample: (x, y, c) => (y < 8 ? (x < 12 ? RED : GREEN) : x < 12 ? BLUE : YELLOW)[c] ?? 0,
});

function raster(bytes: Uint8Array, turn = 1, format: Raster['format'] = 'png'): Raster {
  return { id: 'quarters', format, bytes, width: 24, height: 16, turn };
}

/** The picture in a box that stands upright for turns that lay it on its side. */
function placed(picture: Raster): Mark {
  const [width, height] = picture.turn > 4 ? [80, 120] : [120, 80];
  return { kind: 'raster', raster: picture, x: 60, y: 20, width, height };
}

const jpeg = (name: keyof typeof JPEGS) => new Uint8Array(Buffer.from(JPEGS[name], 'base64'));

/** What stands at top left, top right, bottom left and bottom right after each turn (EXIF 2.32). */
const TURNED: Readonly<Record<number, readonly (readonly number[])[]>> = {
  1: [RED, GREEN, BLUE, YELLOW],
  2: [GREEN, RED, YELLOW, BLUE],
  3: [YELLOW, BLUE, GREEN, RED],
  4: [BLUE, YELLOW, RED, GREEN],
  5: [RED, BLUE, GREEN, YELLOW],
  6: [BLUE, RED, YELLOW, GREEN],
  7: [YELLOW, GREEN, BLUE, RED],
  8: [GREEN, YELLOW, RED, BLUE],
};

describeWith(['pdftoppm'], 'pictures, as poppler draws them', () => {
  it.each([1, 2, 3, 4, 5, 6, 7, 8])('stand upright with turn %i', async (turn) => {
    for (const picture of [raster(QUARTERS, turn), raster(jpeg('baseline'), turn, 'jpeg')]) {
      const page = drawn(await pdfOf([placed(picture)]));
      const [width, height] = turn > 4 ? [80, 120] : [120, 80];
      const corners = [
        [0.25, 0.25],
        [0.75, 0.25],
        [0.25, 0.75],
        [0.75, 0.75],
      ].map(([x = 0, y = 0]) => page.at(60 + x * width, 20 + y * height));
      for (const [index, corner] of corners.entries())
        for (const [c, value] of corner.entries())
          expect(Math.abs(value - (TURNED[turn]?.[index]?.[c] ?? -99))).toBeLessThan(12);
      // Nothing stands outside of the box.
      expect(page.at(58, 18)).toEqual([255, 255, 255]);
      expect(page.at(62 + width, 22 + height)).toEqual([255, 255, 255]);
    }
  });

  it.each([1, 2, 3, 4, 5, 6, 7, 8])('are where the SVG has them with turn %i', async (turn) => {
    const { wrong } = await apart([placed(raster(QUARTERS, turn))]);
    expect(wrong).toBeLessThan(0.02);
  });

  it.each(['baseline', 'progressive'] as const)('show a %s JPEG', async (kind) => {
    const page = drawn(await pdfOf([placed(raster(jpeg(kind), 1, 'jpeg'))]));
    const [red] = page.at(90, 40);
    expect(red).toBeGreaterThan(190);
  });

  it('show a JPEG of one gray and of four inks', async () => {
    const gray = drawn(await pdfOf([placed(raster(jpeg('gray'), 1, 'jpeg'))])).at(90, 40);
    expect(gray[0]).toBe(gray[1]);
    const [red, green] = drawn(await pdfOf([placed(raster(jpeg('fourInks'), 1, 'jpeg'))])).at(90, 40);
    expect(red).toBeGreaterThan(150);
    expect(green).toBeLessThan(90);
  });

  it('show a PNG with a palette', async () => {
    const bytes = makePng({
      width: 24,
      height: 16,
      colorType: 3,
      bits: 2,
      palette: [...RED, ...GREEN, ...BLUE],
      sample: (x) => (x % 12 === 0 ? 2 : x < 12 ? 0 : 1),
    });
    const page = drawn(await pdfOf([placed(raster(bytes))]));
    expect([page.at(100, 60), page.at(160, 60), page.at(62, 60)]).toEqual([RED, GREEN, BLUE]);
  });

  it('let the ground through where they are clear', async () => {
    const clear = makePng({
      width: 24,
      height: 16,
      colorType: 6,
      bits: 8,
      sample: (x, _, c) => (c === 3 ? (x < 12 ? 0 : 128) : 0),
    });
    const ground: Mark = { kind: 'shape', path: 'M0 0L240 0L240 160L0 160Z', fill: '#ffc000' };
    const page = drawn(await pdfOf([ground, placed(raster(clear))]));
    expect(page.at(80, 60)).toEqual([255, 192, 0]);
    expect(Math.abs(page.at(160, 60)[0] - 127)).toBeLessThan(4);
  });
});

describe('a picture that is broken', () => {
  const png = QUARTERS;
  it.each<[string, () => unknown, RegExp]>([
    ['no PNG', () => readPng(new Uint8Array(50)), /no PNG/],
    ['half a PNG', () => readPng(png.slice(0, 50)), /ends in the middle|no picture in it/],
    [
      'too few rows',
      () => {
        const bytes = makePng({ width: 4, height: 4, colorType: 6, bits: 8, sample: () => 7 });
        new DataView(bytes.buffer).setUint32(20, 400);
        return readPng(bytes);
      },
      /fewer rows/,
    ],
    [
      'more than its size says',
      () => {
        const bytes = makePng({ width: 4, height: 400, colorType: 6, bits: 8, sample: () => 7 });
        new DataView(bytes.buffer).setUint32(20, 4);
        return readPng(bytes);
      },
      /larger than|Cannot create a Buffer/,
    ],
    [
      'a filter that does not exist',
      () => readPng(makePng({ width: 4, height: 4, colorType: 6, bits: 8, filters: [9], sample: () => 7 })),
      /filter that does not exist: 9/,
    ],
    ['no JPEG', () => readJpeg(new Uint8Array(50)), /no JPEG/],
    ['half a JPEG', () => readJpeg(jpeg('baseline').slice(0, 100)), /ends in the middle/],
    ['a JPEG without a size', () => readJpeg(Uint8Array.of(0xff, 0xd8, 0xff, 0xd9)), /how large/],
  ])('%s throws', (_, read, message) => {
    expect(read).toThrow(message);
  });

  it.each([
    [
      'another size than it was checked with',
      { ...raster(QUARTERS), width: 25 },
      /is 24 × 16 pixels, not 25 × 16/,
    ],
    ['a turn that does not exist', raster(QUARTERS, 9), /turn 9; there are 1 to 8/],
  ])('%s is a bug', async (_, picture, message) => {
    await expect(pdfOf([placed(picture)])).rejects.toThrow(message);
  });
});

describe('a JPEG', () => {
  /** The picture with what cameras add: place and time, a comment, a small copy behind the end. */
  const spoken = () => {
    const plain = Buffer.from(jpeg('baseline'));
    const segment = (marker: number, text: string) =>
      Buffer.concat([Buffer.of(0xff, marker, 0, text.length + 2), Buffer.from(text, 'latin1')]);
    return new Uint8Array(
      Buffer.concat([
        plain.subarray(0, 2),
        segment(0xe1, 'Exif\0\0GPS 52.5 13.4'),
        segment(0xfe, 'taken at home'),
        plain.subarray(2),
        Buffer.from('small copy'),
      ]),
    );
  };

  it('goes in without what a camera says about place and time', () => {
    const { data, width, height } = readJpeg(spoken());
    expect([width, height]).toEqual([24, 16]);
    expect(Buffer.from(data).toString('latin1')).not.toMatch(/GPS|home|small copy|JFIF/);
    expect(Buffer.from(data)).toEqual(Buffer.from(readJpeg(jpeg('baseline')).data));
  });

  it('keeps all scans of a progressive picture', () => {
    const scans = (bytes: Uint8Array) => Buffer.from(bytes).toString('latin1').split('\xff\xda').length;
    expect(scans(readJpeg(jpeg('progressive')).data)).toBe(scans(jpeg('progressive')));
    expect(scans(jpeg('progressive'))).toBeGreaterThan(3);
  });
});

describe('a picture that stands on many pages', () => {
  it('goes in once', async () => {
    const picture = raster(QUARTERS);
    const document = await load(await pdfOf([placed(picture), placed(picture)]));
    expect(dictionariesWith(document, 'Subtype', 'Image')).toHaveLength(1);
  });

  it('goes in with the same bytes each time', async () => {
    const data = async () => {
      const document = await load(await pdfOf([placed(raster(QUARTERS))]));
      const found = document.context
        .enumerateIndirectObjects()
        .map(([, object]) => object)
        .find(
          (object) =>
            object instanceof PDFRawStream &&
            object.dict.lookup(PDFName.of('Subtype')) === PDFName.of('Image'),
        );
      return found instanceof PDFRawStream ? Buffer.from(decodePDFRawStream(found).decode()) : undefined;
    };
    const [a, b] = [await data(), await data()];
    expect(a?.length).toBeGreaterThan(1000);
    expect(a?.equals(b ?? Buffer.alloc(0))).toBe(true);
  });
});

describeWith(['pdfimages'], 'pictures, as poppler lists them', () => {
  it('are what went in', async () => {
    const list = ask('pdfimages', await pdfOf([placed(raster(jpeg('baseline'), 6, 'jpeg'))]), [
      '-list',
      '{}',
    ]);
    expect(list.toString()).toMatch(/image\s+24\s+16\s+rgb\s+3\s+8\s+jpeg/);
  });
});
