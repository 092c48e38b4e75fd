import type { Mark, Matrix, Stroke } from '../../../figures/index.js';
import type { Gradient } from '../resources/gradients.js';
import type { Resources } from '../resources/resources.js';
import { colorOperator } from './color.js';
import { concat, multiply, pageBoxIn, scaleOf } from './matrix.js';
import { digitsFor, operand, operands } from './number.js';
import { pathOperators } from './path.js';
import { textOperators } from './text.js';

type Kind<K extends Mark['kind']> = Extract<Mark, { readonly kind: K }>;

/** Where marks are drawn. */
export interface Canvas {
  readonly resources: Resources;
  /** From the marks' coordinates to those of the page (points, y up). */
  readonly matrix: Matrix;
  readonly pageWidth: number;
  readonly pageHeight: number;
  /** Language of the element around; `undefined` in artifacts. */
  readonly language: string | undefined;
}

/** Marks as content stream operators, back to front. They leave the graphics state as it was. */
export function markOperators(marks: readonly Mark[], canvas: Canvas): string {
  return marks.map((mark) => one(mark, canvas)).join('');
}

function one(mark: Mark, canvas: Canvas): string {
  const digits = digitsFor(scaleOf(canvas.matrix));
  switch (mark.kind) {
    case 'shape':
      return shape(mark, canvas, digits);
    case 'text':
      return textOperators(
        mark.line,
        { ...mark, digits, hidden: mark.hidden ?? false, language: canvas.language },
        canvas.resources,
      );
    case 'group':
      return group(mark, canvas);
    case 'raster':
      return raster(mark, canvas.resources, digits);
  }
}

function shape(mark: Kind<'shape'>, { matrix, pageWidth, pageHeight, resources }: Canvas, digits: number) {
  const path = pathOperators(mark.path, digits);
  const stroke = mark.stroke && mark.stroke.width > 0 ? mark.stroke : undefined;
  if (path === '' || (mark.fill === undefined && !stroke)) return '';
  const evenOdd = mark.evenOdd ? '*' : '';
  const opacity = mark.fillOpacity ?? 1;
  let out = '';
  let wrapped = false;
  if (opacity < 1) {
    out += `/${resources.opacity(opacity, 1)} gs\n`;
    wrapped = true;
  }
  if (stroke) {
    out += strokeState(stroke, digits);
    wrapped ||= stroke.dash !== undefined;
  }
  if (mark.fill === undefined) out += `${path}S\n`;
  else if (typeof mark.fill === 'string')
    out += `${colorOperator(mark.fill, 'fill')}${path}${stroke ? 'B' : 'f'}${evenOdd}\n`;
  else {
    const { gradient, placed } = place(mark.fill);
    const box = pageBoxIn(matrix, pageWidth, pageHeight);
    const mask = resources.gradientMask(gradient, placed, roundOut(box));
    const masked = mask ? `/${mask} gs\n` : '';
    out += `q\n${path}W${evenOdd} n\n${masked}${placed}/${resources.gradient(gradient)} sh\nQ\n`;
    if (stroke) out += `${path}S\n`;
  }
  return wrapped ? `q\n${out}Q\n` : out;
}

/** A gradient without its own matrix, and the operator that puts the matrix in force. */
function place(gradient: Gradient): { readonly gradient: Gradient; readonly placed: string } {
  if (gradient.kind === 'linear' || !gradient.at) return { gradient, placed: '' };
  const { at, ...rest } = gradient;
  return { gradient: rest, placed: concat(at) };
}

function strokeState(stroke: Stroke, digits: number): string {
  const cap = { butt: 0, round: 1, square: 2 }[stroke.cap ?? 'butt'];
  const join = { miter: 0, round: 1, bevel: 2 }[stroke.join ?? 'miter'];
  const dash = stroke.dash ? `[${operands(stroke.dash, digits)}] 0 d\n` : '';
  return `${colorOperator(stroke.color, 'stroke')}${operand(stroke.width, digits)} w ${cap} J ${join} j\n${dash}`;
}

function group(mark: Kind<'group'>, canvas: Canvas): string {
  if (mark.marks.length === 0) return '';
  const matrix = mark.at ? multiply(canvas.matrix, mark.at) : canvas.matrix;
  const inside: Canvas = { ...canvas, matrix };
  const inner = markOperators(mark.marks, inside);
  if (inner === '') return '';
  const clipDigits = digitsFor(scaleOf(matrix));
  const clip = mark.clip === undefined ? '' : clipOperators(mark.clip, clipDigits);
  const opacity = mark.opacity ?? 1;
  const before = `${mark.at ? concat(mark.at) : ''}${clip}`;
  if (opacity >= 1) return before === '' ? inner : `q\n${before}${inner}Q\n`;
  const box = roundOut(pageBoxIn(matrix, canvas.pageWidth, canvas.pageHeight));
  const form = canvas.resources.form(inner, box);
  const state = canvas.resources.opacity(opacity, opacity);
  return `q\n${before}/${state} gs\n/${form} Do\nQ\n`;
}

function clipOperators(path: string, digits: number): string {
  // A clip of no area hides all.
  return `${pathOperators(path, digits) || '0 0 0 0 re\n'}W n\n`;
}

/** Whole numbers around a box: shorter, and the same for places that differ by a hair. */
function roundOut(box: readonly [number, number, number, number]): [number, number, number, number] {
  return [Math.floor(box[0]), Math.floor(box[1]), Math.ceil(box[2]), Math.ceil(box[3])];
}

/**
 * Where each EXIF turn puts a stored picture's columns (u) and rows (v, down): the matrix from stored
 * to shown, both as a unit square with y down (EXIF 2.32, tag 0x0112).
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

function raster(mark: Kind<'raster'>, resources: Resources, digits: number): string {
  const turn = TURNS[mark.raster.turn - 1];
  if (!turn) throw new Error(`Picture ${mark.raster.id} has the turn ${mark.raster.turn}; there are 1 to 8.`);
  const box: Matrix = [mark.width, 0, 0, mark.height, mark.x, mark.y];
  // PDF stands a picture on a unit square with y up.
  const flip: Matrix = [1, 0, 0, -1, 0, 1];
  const matrix = multiply(box, multiply(turn, flip));
  return `q\n${operands(matrix, Math.max(3, digits))} cm\n/${resources.image(mark.raster)} Do\nQ\n`;
}
