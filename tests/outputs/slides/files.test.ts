import { beforeAll, describe, expect, it } from 'vitest';
import { createReport } from '../../../src/diagnostics/index.js';
import { checkPdf, writePdf } from '../../../src/writers/pdf/index.js';
import { writePng } from '../../../src/writers/png/index.js';
import { writeSvg } from '../../../src/writers/svg/index.js';
import { readPdf } from '../../lessons/pdf-text.js';
import { deck, EVERY_KIND } from './decks.js';
import { type Laid, layOut, marksOf, outlineOf } from './look.js';

const hash = (bytes: Uint8Array) => Buffer.from(bytes).toString('base64');
const pdfOf = ({ pages }: Laid) => writePdf(pages, { name: 'slides.pdf' }, createReport());
const svgOf = (laid: Laid, index: number) => {
  const page = laid.pages.pages[index];
  const size = { width: page?.width ?? 0, height: page?.height ?? 0 };
  return writeSvg(
    { ...size, marks: marksOf(page) },
    { title: 'Slide', description: '', language: 'en', unit: 'pt' },
  );
};

let laid: Laid;
let pdf: Uint8Array;
beforeAll(async () => {
  laid = await layOut(deck(EVERY_KIND));
  pdf = await pdfOf(laid);
}, 60_000);

describe('the deck as PDF', () => {
  it('passes our own check of the finished file', async () => {
    expect(await checkPdf(pdf)).toEqual([]);
  });

  it('says to another library what stands on the slides, in the same order', async () => {
    const read = await readPdf(pdf);
    expect(read.pages).toBe(EVERY_KIND.length);
    const heads = read.outline
      .filter((line) => /^H[12] /.test(line))
      .map((line) => line.replaceAll('\u00a0', ' '));
    const ours = EVERY_KIND.map((_, index) => outlineOf(laid.pages, index)[0]);
    expect(heads.map((line) => line.trim())).toEqual(ours);
    expect(read.alternatives).toHaveLength(2);
    expect(read.alternatives[0]).toContain('A has 2 mg of sodium');
  });

  it('reads notes before the figure that they guard, and the basis after it', async () => {
    const { outline } = await readPdf(pdf);
    const order = ['Brands differ', 'Figure', 'Pinto beans: 1'].map((start) =>
      outline.findIndex((line) => line.replaceAll('\u00a0', ' ').replace(/^P /, '').startsWith(start)),
    );
    expect(order.every((at) => at >= 0)).toBe(true);
    expect(order).toEqual([...order].sort((a, b) => a - b));
  });

  it('is the same each time', async () => {
    expect(hash(await pdfOf(await layOut(deck(EVERY_KIND)))) === hash(pdf)).toBe(true);
  });
});

describe('slides as pictures', () => {
  it('are SVG without text, scripts or references outward, the same each time', async () => {
    const again = await layOut(deck(EVERY_KIND));
    for (const index of EVERY_KIND.keys()) {
      const svg = svgOf(laid, index);
      expect([svg.includes('<svg '), /<text|<script|<image|href="(?!#)/.test(svg)]).toEqual([true, false]);
      expect(svg === svgOf(again, index)).toBe(true);
    }
  });

  it('are PNG of 1920 by 1080', () => {
    const png = writePng(svgOf(laid, 5), { width: 1920 });
    const view = new DataView(png.buffer, png.byteOffset);
    // PNG, 11.2.2: width and height stand at bytes 16 and 20.
    expect([view.getUint32(16), view.getUint32(20)]).toEqual([1920, 1080]);
    expect(hash(writePng(svgOf(laid, 5), { width: 1920 })) === hash(png)).toBe(true);
  });
});
