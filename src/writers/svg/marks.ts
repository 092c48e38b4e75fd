import type { Mark, Matrix, Stroke } from '../../figures/index.js';
import type { Definitions } from './definitions.js';
import { textSvg } from './text.js';
import { decimal, element } from './xml.js';

type Kind<K extends Mark['kind']> = Extract<Mark, { readonly kind: K }>;

/** Marks as SVG elements, back to front. */
export function marksSvg(marks: readonly Mark[], definitions: Definitions): string {
  return marks.map((mark) => markSvg(mark, definitions)).join('');
}

function markSvg(mark: Mark, definitions: Definitions): string {
  switch (mark.kind) {
    case 'shape':
      return shape(mark, definitions);
    case 'text':
      // Hidden words are for readers of the structure; a drawing says them in its description.
      return mark.hidden ? '' : textSvg(mark.line, mark.x, mark.baseline, definitions);
    case 'group':
      return group(mark, definitions);
    case 'raster':
      return raster(mark);
  }
}

function strokeOf(stroke: Stroke | undefined): Readonly<Record<string, string | number | undefined>> {
  if (!stroke || !(stroke.width > 0)) return {};
  return {
    stroke: stroke.color,
    'stroke-width': stroke.width,
    'stroke-dasharray': stroke.dash?.map((d) => decimal(d)).join(' '),
    'stroke-linecap': stroke.cap,
    'stroke-linejoin': stroke.join,
    // The limit of PDF, so that corners are the same on a slide and on paper.
    'stroke-miterlimit': (stroke.join ?? 'miter') === 'miter' ? 10 : undefined,
  };
}

function shape(mark: Kind<'shape'>, definitions: Definitions): string {
  if (mark.path === '') return '';
  return element('path', {
    d: mark.path,
    fill: mark.fill === undefined ? 'none' : definitions.paint(mark.fill),
    'fill-opacity': mark.fillOpacity,
    'fill-rule': mark.evenOdd ? 'evenodd' : undefined,
    ...strokeOf(mark.stroke),
  });
}

const matrixText = (matrix: Matrix) => `matrix(${matrix.map((v) => decimal(v, 6)).join(' ')})`;

function group(mark: Kind<'group'>, definitions: Definitions): string {
  const inside = marksSvg(mark.marks, definitions);
  if (inside === '') return '';
  return element(
    'g',
    {
      transform: mark.at ? matrixText(mark.at) : undefined,
      'clip-path': mark.clip === undefined ? undefined : definitions.clip(mark.clip),
      opacity: mark.opacity,
    },
    inside,
  );
}

/**
 * From the unit square of the stored picture to that of the shown one, y down, for each EXIF turn
 * (EXIF 2.32, tag 0x0112): 2 and 4 mirror, 3 turns by 180°, 6 and 8 by 90°, 5 and 7 do both.
 */
const TURNS: readonly Matrix[] = [
  [1, 0, 0, 1, 0, 0],
  [-1, 0, 0, 1, 1, 0],
  [-1, 0, 0, -1, 1, 1],
  [1, 0, 0, -1, 0, 1],
  [0, 1, 1, 0, 0, 0],
  [0, 1, -1, 0, 1, 0],
  [0, -1, -1, 0, 1, 1],
  [0, -1, 1, 0, 0, 1],
];

/** The bytes go in as they are; the turn is a transform, so nothing is decoded and encoded again. */
function raster(mark: Kind<'raster'>): string {
  const [a, b, c, d, e, f] = TURNS[mark.raster.turn - 1] ?? [1, 0, 0, 1, 0, 0];
  const { x, y, width, height } = mark;
  const { format, bytes } = mark.raster;
  return element('image', {
    transform: matrixText([a * width, b * height, c * width, d * height, e * width + x, f * height + y]),
    width: 1,
    height: 1,
    preserveAspectRatio: 'none',
    href: `data:image/${format};base64,${Buffer.from(bytes).toString('base64')}`,
  });
}
