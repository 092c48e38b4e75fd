import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Resvg } from '@resvg/resvg-js';
import { describe, expect, it } from 'vitest';
import { centeredPicture, isOneInk, loadPictures, textBoxes } from '../../src/figures/index.js';
import { marksBox } from '../../src/figures/marks-box.js';
import { writeSvg } from '../../src/writers/svg/index.js';
import { asset } from './samples.js';

const FOLDER = fileURLToPath(new URL('../../assets/pictures/', import.meta.url));
const files = readdirSync(FOLDER).filter((file) => file.endsWith('.svg'));
const pictures = loadPictures((path) => asset(path));

describe('the shipped pictures', () => {
  it('are the listed ones, each in color and in one ink, and no others', () => {
    expect(pictures.names.length).toBeGreaterThan(150);
    expect(new Set(pictures.names).size).toBe(pictures.names.length);
    const expected = pictures.names.flatMap((name) => [`${name}.svg`, `${name}.one.svg`]);
    expect([...files].sort()).toEqual(expected.sort());
  });

  it('hold every picture that the table of everyday foods names', () => {
    const rows = asset('foods/everyday.tsv')
      .split(/\r?\n/)
      .filter((row) => row !== '' && !row.startsWith('#'))
      .map((row) => row.split('\t'));
    const column = rows[0]?.indexOf('picture') ?? -1;
    expect(column).toBeGreaterThan(0);
    const named = new Set(rows.slice(1).map((row) => row[column] ?? ''));
    expect(named.size).toBeGreaterThan(100);
    expect([...named].filter((name) => !pictures.names.includes(name))).toEqual([]);
  });

  it('come with their licenses', () => {
    const licenses = readFileSync(`${FOLDER}LICENSES.md`, 'utf8');
    expect(licenses).toContain('MIT License');
    expect(licenses).toContain('Copyright (c) Microsoft Corporation');
  });

  it('stand on one grid, hold no words, and are black and white in one ink', () => {
    for (const name of pictures.names)
      for (const ink of ['color', 'one'] as const) {
        const picture = pictures.picture(name, ink);
        if (!picture) throw new Error(`${name} is missing.`);
        expect([picture.width, picture.height]).toEqual([32, 32]);
        expect(textBoxes(picture.marks)).toEqual([]);
        if (ink === 'one') expect(isOneInk(picture.marks), name).toBe(true);
      }
  });

  /** A hash-like number of the pixels: how far two pictures differ on average, of 255. */
  function difference(a: string, b: string): number {
    const pixels = (svg: string) =>
      new Resvg(svg, {
        fitTo: { mode: 'width', value: 48 },
        background: '#fff',
        font: { loadSystemFonts: false },
      }).render().pixels;
    const [p, q] = [pixels(a), pixels(b)];
    let sum = 0;
    for (let i = 0; i < p.length; i++) sum += Math.abs((p[i] ?? 0) - (q[i] ?? 0));
    return sum / p.length;
  }

  // Outside reference: resvg (@resvg/resvg-js 2.6.2) draws the file itself and what we read out of it.
  it('look after reading and writing as resvg draws the files', () => {
    for (const name of pictures.names) {
      const one = name.length % 2 === 0;
      const picture = pictures.picture(name, one ? 'one' : 'color');
      if (!picture) throw new Error(`${name} is missing.`);
      const ours = writeSvg(picture, { title: name, description: '', language: 'en' });
      expect(
        difference(readFileSync(`${FOLDER}${name}${one ? '.one' : ''}.svg`, 'utf8'), ours),
        name,
      ).toBeLessThan(0.5);
    }
  });

  it('are told apart by the comparison above', () => {
    const [a, b] = ['bean-can', 'bean-bag'].map((name) => readFileSync(`${FOLDER}${name}.svg`, 'utf8'));
    expect(difference(a ?? '', b ?? '')).toBeGreaterThan(10);
  });
});

describe('pictures by name', () => {
  it('are found, kept and centered', () => {
    const picture = pictures.picture('bean-bowl', 'color');
    expect(picture).toBe(pictures.picture('bean-bowl', 'color'));
    if (!picture) throw new Error('bean-bowl is missing.');
    const box = marksBox([centeredPicture(picture, 64)]);
    expect(box?.left).toBeGreaterThanOrEqual(-32);
    expect(box?.right).toBeLessThanOrEqual(32);
  });

  it('are suggested when a name is nearly right', () => {
    expect(pictures.picture('bean-bowel', 'color')).toBeUndefined();
    expect(pictures.problem('bean-bowel')).toMatchObject({
      code: 'figures/no-picture',
      expected: ['bean-bowl'],
    });
    expect(pictures.problem('bean-bowl')).toBeUndefined();
    expect(pictures.problem('__proto__')?.code).toBe('figures/no-picture');
    expect(pictures.picture('../foods/release', 'one')).toBeUndefined();
  });

  it('say when the list or a file is missing', () => {
    expect(() => loadPictures(() => undefined).picture('x', 'one')).toThrow('pictures.tsv is missing');
    const list = loadPictures((path) => (path.endsWith('.tsv') ? 'name\tfrom\na\ticon a\n' : '<svg/>'));
    expect(() => list.picture('a', 'one')).toThrow('a.one.svg cannot be drawn');
  });
});
