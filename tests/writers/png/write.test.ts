import { imageSize } from 'image-size';
import { describe, expect, it } from 'vitest';
import { draw, isOneInk } from '../../../src/figures/index.js';
import { writePng } from '../../../src/writers/png/index.js';
import { writeSvg } from '../../../src/writers/svg/index.js';
import { bricks, paper } from '../../figures/samples.js';

describe('a drawing as PNG', () => {
  const { drawing } = draw(bricks, paper({ ink: 'one' }));
  const svg = writeSvg(drawing, { title: 'x', description: '', language: 'en', background: '#ffffff' });

  it('is as wide as asked and in proportion', () => {
    const size = imageSize(writePng(svg, { width: 600 }));
    expect(size.type).toBe('png');
    expect(size.width).toBe(600);
    expect(Math.abs(size.height - (600 * drawing.height) / drawing.width)).toBeLessThan(1.5);
  });

  it('has the same bytes every time', () => {
    expect(
      Buffer.from(writePng(svg, { width: 300 })).equals(Buffer.from(writePng(svg, { width: 300 }))),
    ).toBe(true);
  });

  it('holds only black, white and their mixtures at the edges in one ink', async () => {
    expect(isOneInk(drawing.marks)).toBe(true);
    const { Resvg } = await import('@resvg/resvg-js');
    const { pixels } = new Resvg(svg, { fitTo: { mode: 'width', value: 1200 } }).render();
    for (let i = 0; i < pixels.length; i += 4)
      if (pixels[i] !== pixels[i + 1] || pixels[i] !== pixels[i + 2])
        throw new Error(`Pixel ${i / 4} has a color.`);
  });

  it('refuses sizes beyond sense', () => {
    for (const width of [0, -1, Number.NaN, 1e9])
      expect(() => writePng(svg, { width })).toThrow('pixels wide');
  });
});
