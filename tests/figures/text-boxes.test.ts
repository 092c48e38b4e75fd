import { Resvg } from '@resvg/resvg-js';
import { describe, expect, it } from 'vitest';
import { type Drawing, type TextInk, textBoxes } from '../../src/figures/index.js';
import { setLine } from '../../src/text/index.js';
import { writeSvg } from '../../src/writers/svg/index.js';
import { fonts } from './samples.js';

/** The box around all dark pixels, told by resvg. */
function inkBox(drawing: Drawing) {
  const svg = writeSvg(drawing, { title: '', description: '', language: 'en' });
  const image = new Resvg(svg, { background: '#fff', font: { loadSystemFonts: false } }).render();
  // Each look at `pixels` copies them all.
  const { pixels } = image;
  let [left, top, right, bottom] = [image.width, image.height, 0, 0];
  for (let y = 0; y < image.height; y++)
    for (let x = 0; x < image.width; x++)
      if ((pixels[4 * (y * image.width + x)] ?? 255) < 200) {
        [left, top] = [Math.min(left, x), Math.min(top, y)];
        [right, bottom] = [Math.max(right, x + 1), Math.max(bottom, y + 1)];
      }
  return { left, top, right, bottom };
}

describe('boxes of words', () => {
  it.each([
    ['digits', '460', 'en', 'ltr'],
    ['tails', 'gjpqy', 'en', 'ltr'],
    ['Arabic', 'من 270 إلى 370 ملغ', 'ar', 'rtl'],
    ['stacked marks', 'ướng Ể', 'vi', 'ltr'],
  ] as const)('%s: agree with the ink that resvg draws', (_, text, language, direction) => {
    const line = setLine<TextInk>(fonts, text, { language, direction, size: 40, leading: 48, weight: 600 });
    const drawing: Drawing = {
      width: 500,
      height: 120,
      marks: [
        { kind: 'group', at: [1, 0, 0, 1, 20, 10], marks: [{ kind: 'text', x: 10, baseline: 60, line }] },
      ],
    };
    const [found] = textBoxes(drawing.marks);
    const ink = inkBox(drawing);
    for (const side of ['left', 'top', 'right', 'bottom'] as const)
      expect(Math.abs((found?.box[side] ?? 0) - ink[side]), side).toBeLessThan(2.5);
  });

  it('leave out hidden words and spaces', () => {
    const line = setLine<TextInk>(fonts, ' ', {
      language: 'en',
      direction: 'ltr',
      size: 40,
      leading: 48,
      weight: 400,
    });
    const word = setLine<TextInk>(fonts, 'x', {
      language: 'en',
      direction: 'ltr',
      size: 40,
      leading: 48,
      weight: 400,
    });
    expect(
      textBoxes([
        { kind: 'text', x: 0, baseline: 0, line },
        { kind: 'text', x: 0, baseline: 0, line: word, hidden: true },
      ]),
    ).toEqual([]);
  });
});
