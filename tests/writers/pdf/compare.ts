import { Resvg } from '@resvg/resvg-js';
import { createReport } from '../../../src/diagnostics/index.js';
import type { Mark } from '../../../src/figures/index.js';
import { writePdf } from '../../../src/writers/pdf/index.js';
import { writeSvg } from '../../../src/writers/svg/index.js';
import { node, pagesOf } from './sheet.js';
import { drawn, type Picture } from './tools.js';

export const WIDTH = 240;
export const HEIGHT = 160;

/** A page of 240 by 160 points with nothing but these marks, as the only figure. */
export async function pdfOf(marks: readonly Mark[]): Promise<Uint8Array> {
  const figure = node('f', 'Figure', [], {
    alt: 'Marks.',
    box: { page: 0, x: 0, y: 0, width: WIDTH, height: HEIGHT },
  });
  const pages = pagesOf(
    [{ items: [{ kind: 'content', node: 'f', marks }] }],
    node('d', 'Document', [figure]),
  );
  const report = createReport();
  const small = { ...pages, pages: pages.pages.map((page) => ({ ...page, width: WIDTH, height: HEIGHT })) };
  const bytes = await writePdf(small, { name: 'marks.pdf' }, report);
  if (report.problems.length > 0) throw new Error(report.problems.map((p) => p.message).join('\n'));
  return bytes;
}

/** The marks as resvg draws our SVG of them, on white. */
export function svgPicture(marks: readonly Mark[], dpi: number): Picture {
  const svg = writeSvg(
    { width: WIDTH, height: HEIGHT, marks },
    { title: 'Marks', description: '', language: 'en', background: '#ffffff' },
  );
  const image = new Resvg(svg, {
    fitTo: { mode: 'width', value: (WIDTH * dpi) / 72 },
    font: { loadSystemFonts: false },
  }).render();
  const pixels = image.pixels;
  return {
    width: image.width,
    height: image.height,
    at(x, y) {
      const i = (Math.floor(y) * image.width + Math.floor(x)) * 4;
      return [pixels[i] ?? 0, pixels[i + 1] ?? 0, pixels[i + 2] ?? 0];
    },
  };
}

/**
 * How far two pictures are apart: the mean difference of a channel, of 255, and the share of pixels
 * that differ by more than a quarter. Edges always differ a little, for each program smooths its way.
 */
export function distance(a: Picture, b: Picture): { readonly mean: number; readonly wrong: number } {
  if (a.width !== b.width || a.height !== b.height)
    throw new Error(`${a.width} × ${a.height} is not ${b.width} × ${b.height}.`);
  let sum = 0;
  let wrong = 0;
  for (let y = 0; y < a.height; y++)
    for (let x = 0; x < a.width; x++) {
      const [p, q] = [a.at(x, y), b.at(x, y)];
      const apart = p.map((value, i) => Math.abs(value - (q[i] ?? 0)));
      sum += (apart[0] ?? 0) + (apart[1] ?? 0) + (apart[2] ?? 0);
      if (Math.max(...apart) > 64) wrong++;
    }
  const count = a.width * a.height;
  return { mean: sum / count / 3, wrong: wrong / count };
}

/** The distance between poppler's picture of the PDF and resvg's picture of the SVG. */
export async function apart(marks: readonly Mark[], dpi = 144) {
  return distance(drawn(await pdfOf(marks), 1, dpi), svgPicture(marks, dpi));
}
