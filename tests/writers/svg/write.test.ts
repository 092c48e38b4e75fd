import { parseXml, XmlElement } from '@rgrove/parse-xml';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Drawing, draw, type Mark, readSvg, type TextInk } from '../../../src/figures/index.js';
import { setLine } from '../../../src/text/index.js';
import { writePng } from '../../../src/writers/png/index.js';
import { writeSvg } from '../../../src/writers/svg/index.js';
import { bricks, fonts, lanes, paper } from '../../figures/samples.js';

const OPTIONS = { title: 'Lanes', description: 'All values.', language: 'en' };
const style = { language: 'en', direction: 'ltr', size: 20, leading: 24, weight: 400 } as const;
const word = (text: string): Mark => ({
  kind: 'text',
  x: 5,
  baseline: 30,
  line: setLine<TextInk>(fonts, text, style),
});
const drawing = (...marks: Mark[]): Drawing => ({ width: 100, height: 50, marks });

function elements(node: XmlElement): XmlElement[] {
  return [node, ...node.children.flatMap((c) => (c instanceof XmlElement ? elements(c) : []))];
}
function parsed(svg: string): XmlElement[] {
  const { root } = parseXml(svg);
  return root ? elements(root) : [];
}

describe('a drawing as SVG', () => {
  it('says what it is: role, language, title and description', () => {
    const [root, title, about] = parsed(writeSvg(drawing(word('a')), OPTIONS));
    expect(root?.attributes).toMatchObject({
      role: 'img',
      'aria-labelledby': 'title',
      'aria-describedby': 'about',
      lang: 'en',
      viewBox: '0 0 100 50',
      width: '100px',
    });
    expect([title?.name, title?.text, about?.name, about?.text]).toEqual([
      'title',
      'Lanes',
      'desc',
      'All values.',
    ]);
  });

  it('holds outlines instead of text, nothing from outside and no scripts', () => {
    for (const spec of [lanes, bricks]) {
      const svg = writeSvg(draw(spec, paper()).drawing, OPTIONS);
      expect(svg).not.toMatch(
        /<text|<script|<style|<foreignObject|\son\w+=|https?:(?!\/\/www\.w3\.org\/2000\/svg)/,
      );
      const found = parsed(svg);
      const ids = found.flatMap((e) => (e.attributes.id === undefined ? [] : [e.attributes.id]));
      expect(new Set(ids).size).toBe(ids.length);
      const used = [...svg.matchAll(/(?:href="#|url\(#)([^")]+)/g)].map((m) => m[1]);
      expect(used.length).toBeGreaterThan(50);
      for (const id of used) expect(ids).toContain(id);
    }
  });

  it('writes each letter once, however often it is used', () => {
    const svg = writeSvg(drawing(word('noonoonoo')), OPTIONS);
    expect(parsed(svg).filter((e) => e.name === 'path')).toHaveLength(2);
    expect(parsed(svg).filter((e) => e.name === 'use')).toHaveLength(9);
  });

  it('keeps its ids apart in one page of HTML', () => {
    const svg = writeSvg(drawing(word('a')), { ...OPTIONS, idPrefix: 'f1-' });
    expect([...svg.matchAll(/id="([^"]+)"/g)].every(([, id]) => id?.startsWith('f1-'))).toBe(true);
  });

  it('can be read back by our own reader of pictures, shape for shape', () => {
    const marks: Mark[] = [
      { kind: 'shape', path: 'M1 1L9 1L9 9Z', fill: '#123456', fillOpacity: 0.5, evenOdd: true },
      {
        kind: 'group',
        at: [2, 0, 0, 2, 3, 4],
        clip: 'M0 0L5 0L5 5Z',
        opacity: 0.25,
        marks: [
          {
            kind: 'shape',
            path: 'M0 0L4 4',
            stroke: { color: '#ff0000', width: 1.5, dash: [2, 1], cap: 'round', join: 'bevel' },
          },
        ],
      },
    ];
    const { picture, problems } = readSvg(writeSvg(drawing(...marks), OPTIONS));
    expect(problems).toEqual([]);
    // The even-odd rule is kept by the writer; the reader hands it on.
    expect(picture?.marks).toEqual(marks);
  });

  it('writes gradients with their stops', () => {
    const svg = writeSvg(
      drawing({
        kind: 'shape',
        path: 'M0 0L9 0L9 9Z',
        fill: {
          kind: 'radial',
          center: [4, 5],
          radius: 3,
          at: [1, 0, 0, 2, 0, 0],
          stops: [
            { offset: 0, color: '#ffffff' },
            { offset: 1, color: '#000000', opacity: 0.5 },
          ],
        },
      }),
      OPTIONS,
    );
    expect(svg).toContain(
      '<radialGradient id="p1" gradientUnits="userSpaceOnUse" cx="4" cy="5" r="3" gradientTransform="matrix(1 0 0 2 0 0)">',
    );
    expect(svg).toContain('<stop offset="1" stop-color="#000000" stop-opacity="0.5"/>');
    expect(svg).toContain('fill="url(#p1)"');
  });

  it('leaves hidden words and empty things out', () => {
    const hidden: Mark = {
      kind: 'text',
      x: 5,
      baseline: 30,
      hidden: true,
      line: setLine<TextInk>(fonts, 'x', style),
    };
    const svg = writeSvg(drawing(hidden, { kind: 'group', marks: [] }, { kind: 'shape', path: '' }), OPTIONS);
    expect(parsed(svg).map((e) => e.name)).toEqual(['svg', 'title', 'desc']);
  });

  it('is well-formed whatever the title says', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), fc.string(), (title, description) => {
        const svg = writeSvg(drawing(), { title, description, language: 'en' });
        expect(parsed(svg)[1]?.name).toBe('title');
      }),
    );
  });

  it('is the same every time', () => {
    const once = () => writeSvg(draw(bricks, paper()).drawing, OPTIONS);
    expect(once()).toBe(once());
  });
});

describe('photos', () => {
  /** A picture of 2 × 1 pixels: red, then blue. */
  const bytes = writePng(
    '<svg xmlns="http://www.w3.org/2000/svg" width="2" height="1"><rect width="1" height="1" fill="#f00"/><rect x="1" width="1" height="1" fill="#00f"/></svg>',
    { width: 2 },
  );
  const photo = (turn: number): Drawing => {
    const sideways = turn >= 5;
    return {
      width: 20,
      height: 20,
      marks: [
        {
          kind: 'raster',
          raster: { id: 'a', format: 'png', bytes, width: 2, height: 1, turn },
          x: 0,
          y: 0,
          width: sideways ? 10 : 20,
          height: sideways ? 20 : 10,
        },
      ],
    };
  };

  /** Where red stands once the turn is applied (EXIF 2.32, Orientation: place of row 0 and column 0). */
  it.each([
    [1, 'left'],
    [2, 'right'],
    [3, 'right'],
    [4, 'left'],
    [5, 'top'],
    [6, 'top'],
    [7, 'bottom'],
    [8, 'bottom'],
  ] as const)('with turn %d have their first pixel %s', async (turn, side) => {
    const { Resvg } = await import('@resvg/resvg-js');
    const svg = writeSvg(photo(turn), OPTIONS);
    const { pixels } = new Resvg(svg, { font: { loadSystemFonts: false } }).render();
    const red = (x: number, y: number) =>
      (pixels[4 * (y * 20 + x)] ?? 0) > 200 && (pixels[4 * (y * 20 + x) + 2] ?? 0) < 100;
    const places = { left: [3, 5], right: [17, 5], top: [5, 3], bottom: [5, 17] } as const;
    const [x, y] = places[side];
    expect(red(x, y)).toBe(true);
    const opposite = { left: places.right, right: places.left, top: places.bottom, bottom: places.top }[side];
    expect(red(opposite[0], opposite[1])).toBe(false);
  });

  it('go in as they are', () => {
    expect(writeSvg(photo(1), OPTIONS)).toContain(
      `data:image/png;base64,${Buffer.from(bytes).toString('base64')}`,
    );
  });
});
