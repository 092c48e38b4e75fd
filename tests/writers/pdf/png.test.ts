import { Resvg } from '@resvg/resvg-js';
import { describe, expect, it } from 'vitest';
import type { ImageParts } from '../../../src/writers/pdf/resources/image-parts.js';
import { readPng } from '../../../src/writers/pdf/resources/png.js';
import { makePng, type PngPlan } from './pngs.js';

/** The picture as red, green, blue and alpha, from our parts. */
function rgba(parts: ImageParts, width: number, height: number): number[] {
  const out: number[] = [];
  const colors = parts.space === 'DeviceRGB' ? 3 : 1;
  for (let i = 0; i < width * height; i++) {
    const at = (c: number) => parts.data[i * colors + (colors === 3 ? c : 0)] ?? 0;
    out.push(at(0), at(1), at(2), parts.alpha?.[i] ?? 255);
  }
  return out;
}

/** The same from resvg, which knows the PNG by a library of its own; undone from its clear pixels. */
function byResvg(bytes: Uint8Array, width: number, height: number): number[] {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}"><image width="${width}" height="${height}" style="image-rendering:optimizeSpeed" href="data:image/png;base64,${Buffer.from(bytes).toString('base64')}"/></svg>`;
  return [...new Resvg(svg).render().pixels];
}

const noise = (x: number, y: number, c: number) => (x * 73 + y * 151 + c * 37 + x * y * 11) >>> 0;

describe('a PNG that must be unpacked', () => {
  const plans: readonly (readonly [string, Omit<PngPlan, 'width' | 'height'>])[] = [];
  const add = (what: string, plan: Omit<PngPlan, 'width' | 'height'>) =>
    (plans as [string, typeof plan][]).push([what, plan]);
  for (const bits of [1, 2, 4, 8, 16] as const)
    add(`interlaced gray of ${bits} bits`, {
      colorType: 0,
      bits,
      interlaced: true,
      sample: (x, y) => noise(x, y, 0) % 2 ** bits,
    });
  for (const bits of [1, 2, 4, 8] as const)
    add(`palette of ${bits} bits with clear colors`, {
      colorType: 3,
      bits,
      interlaced: bits > 2,
      palette: Array.from({ length: 3 * 2 ** bits }, (_, i) => (i * 67) % 256),
      // Colors beyond these are solid. Half-clear colors are held by the test of alpha below.
      transparency: [0, 255],
      sample: (x, y) => noise(x, y, 0) % 2 ** bits,
    });
  for (const bits of [8, 16] as const) {
    add(`interlaced RGB of ${bits} bits`, {
      colorType: 2,
      bits,
      interlaced: true,
      sample: (x, y, c) => noise(x, y, c) % 2 ** bits,
    });
    add(`RGB of ${bits} bits with one clear color`, {
      colorType: 2,
      bits,
      transparency: [0, 0, 0, 37, 0, 74],
      sample: (x, y, c) => (x === y ? c * 37 : noise(x, y, c) % 2 ** bits),
    });
    for (const [colorType, kind, alphaAt] of [
      [4, 'gray', 1],
      [6, 'RGB', 3],
    ] as const)
      for (const interlaced of [false, true])
        add(`${interlaced ? 'interlaced ' : ''}${kind} of ${bits} bits with alpha`, {
          colorType,
          bits,
          interlaced,
          sample: (x, y, c) => (c === alphaAt ? ((x + y) % 2) * (2 ** bits - 1) : noise(x, y, c) % 2 ** bits),
        });
  }

  it.each(plans)('%s has the samples that resvg sees', (_, plan) => {
    const [width, height] = [13, 11];
    const bytes = makePng({ width, height, ...plan });
    const ours = rgba(readPng(bytes), width, height);
    const theirs = byResvg(bytes, width, height);
    expect(ours.length).toBe(theirs.length);
    for (let i = 0; i < ours.length; i += 4) {
      const alpha = theirs[i + 3] ?? 0;
      expect(ours[i + 3]).toBe(alpha);
      // What is quite clear has no color. 16 bits may be rounded either way.
      if (alpha === 255)
        for (let c = 0; c < 3; c++)
          expect(Math.abs((ours[i + c] ?? 0) - (theirs[i + c] ?? 0))).toBeLessThanOrEqual(1);
    }
  });

  it('keeps every shade of alpha', () => {
    const bytes = makePng({
      width: 16,
      height: 16,
      colorType: 4,
      bits: 8,
      sample: (x, y, c) => (c ? y * 16 + x : 9),
    });
    const { alpha, space, data } = readPng(bytes);
    expect([...(alpha ?? [])]).toEqual(Array.from({ length: 256 }, (_, i) => i));
    expect(space).toBe('DeviceGray');
    expect(new Set(data)).toEqual(new Set([9]));
  });

  it('has no alpha when nothing is clear', () => {
    const bytes = makePng({ width: 4, height: 4, colorType: 6, bits: 8, sample: () => 255 });
    expect(readPng(bytes).alpha).toBeUndefined();
  });
});

describe('a PNG that passes through', () => {
  it.each([
    ['gray of 1 bit', { colorType: 0, bits: 1 }, 'DeviceGray', 1],
    ['gray of 16 bits', { colorType: 0, bits: 16 }, 'DeviceGray', 1],
    ['RGB of 8 bits', { colorType: 2, bits: 8 }, 'DeviceRGB', 3],
  ] as const)('%s stays packed as it was', (_, kind, space, colors) => {
    const parts = readPng(makePng({ width: 5, height: 4, ...kind, sample: (x) => x % 2 }));
    expect(parts).toMatchObject({ space, bits: kind.bits });
    expect(parts.packed).toEqual({
      Filter: 'FlateDecode',
      DecodeParms: { Predictor: 15, Colors: colors, BitsPerComponent: kind.bits, Columns: 5 },
    });
  });
});
