import type { Paint } from '../../figures/index.js';
import { type FontFace, glyphPath } from '../../text/index.js';
import { decimal, element } from './xml.js';

/** Things that are written once and referred to by id: outlines of letters, gradients, clips. */
export interface Definitions {
  /** Id of a letter's outline in font units; `undefined` when the letter has none (a space). */
  glyph(font: FontFace, glyph: number): string | undefined;
  /** Value for `fill`: a color or a reference to a gradient. */
  paint(paint: Paint): string;
  /** Value for `clip-path`. */
  clip(path: string): string;
  /** All of them, as the contents of `<defs>`, in the order of their first use. */
  written(): string;
}

const matrixText = (matrix: readonly number[]) => `matrix(${matrix.map((v) => decimal(v, 6)).join(' ')})`;

/** `prefix` starts every id, so that several drawings can stand in one page of HTML. */
export function createDefinitions(prefix: string): Definitions {
  const written: string[] = [];
  const ids = new Map<string, string>();
  /** The id of what `key` stands for; writes it when it is new. */
  const define = (kind: string, key: string, write: (id: string) => string): string => {
    const known = ids.get(key);
    if (known !== undefined) return known;
    const id = `${prefix}${kind}${ids.size + 1}`;
    ids.set(key, id);
    written.push(write(id));
    return id;
  };
  return {
    glyph(font, glyph) {
      const path = glyphPath(font, glyph);
      if (path === '') return undefined;
      return define('g', `glyph ${font.id} ${glyph}`, (id) => element('path', { id, d: path }));
    },
    paint(paint) {
      if (typeof paint === 'string') return paint;
      return `url(#${define('p', `paint ${JSON.stringify(paint)}`, (id) => gradient(id, paint))})`;
    },
    clip(path) {
      const id = define('c', `clip ${path}`, (name) =>
        // A clip without area hides all; an empty path would be left out by some viewers.
        element('clipPath', { id: name }, element('path', { d: path === '' ? 'M0 0Z' : path })),
      );
      return `url(#${id})`;
    },
    written: () => written.join(''),
  };
}

function gradient(id: string, paint: Exclude<Paint, string>): string {
  const stops = paint.stops
    .map((stop) =>
      element('stop', {
        offset: decimal(stop.offset, 4),
        'stop-color': stop.color,
        'stop-opacity': stop.opacity === undefined ? undefined : decimal(stop.opacity),
      }),
    )
    .join('');
  const place = (value: number) => decimal(value, 5);
  if (paint.kind === 'linear') {
    const [x1, y1] = paint.from;
    const [x2, y2] = paint.to;
    return element(
      'linearGradient',
      { id, gradientUnits: 'userSpaceOnUse', x1: place(x1), y1: place(y1), x2: place(x2), y2: place(y2) },
      stops,
    );
  }
  const [cx, cy] = paint.center;
  return element(
    'radialGradient',
    {
      id,
      gradientUnits: 'userSpaceOnUse',
      cx: place(cx),
      cy: place(cy),
      r: place(paint.radius),
      gradientTransform: paint.at ? matrixText(paint.at) : undefined,
    },
    stops,
  );
}
