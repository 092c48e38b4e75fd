import type { Color, Ink, Mark, Matrix, Stroke, TextInk } from '../figures/index.js';
import type { Line } from '../text/index.js';
import type { Item } from './pages.js';
import type { Draft } from './structure.js';
import { type Colors, colorsFor, type Grid, type Strokes, strokesFor } from './tokens.js';

/** A page while it is filled. */
export interface PageDraft {
  readonly index: number;
  readonly items: Item[];
}

export interface Look {
  readonly fill?: Color;
  readonly stroke?: Stroke;
  readonly radius?: number;
}

/**
 * Draws in logical places: x counts from the start edge of the page, so that a right-to-left sheet
 * is the mirror image of a left-to-right one without anybody asking for the direction. Pictures,
 * digits and drawings are placed by their box and never turned round.
 */
export interface Pen {
  readonly grid: Grid;
  readonly direction: 'ltr' | 'rtl';
  readonly ink: Ink;
  readonly colors: Colors;
  readonly strokes: Strokes;
  /** Left edge of a box on the page. */
  left(x: number, width: number): number;
  rect(x: number, y: number, width: number, height: number, look: Look): Mark;
  line(x1: number, y1: number, x2: number, y2: number, stroke: Stroke): Mark;
  circle(x: number, y: number, radius: number, look: Look): Mark;
  /** A line whose start edge stands at `x`. */
  text(line: Line<TextInk>, x: number, top: number): Mark;
  /** Marks of a drawing whose box starts at `x`. */
  drawing(marks: readonly Mark[], x: number, top: number, width: number, scale?: number): Mark;
}

export function createPen(grid: Grid, direction: 'ltr' | 'rtl', ink: Ink): Pen {
  const left = (x: number, width: number) => (direction === 'rtl' ? grid.width - x - width : x);
  return {
    grid,
    direction,
    ink,
    colors: colorsFor(ink),
    strokes: strokesFor(ink),
    left,
    rect(x, y, width, height, look) {
      return shape(rectPath(left(x, width), y, width, height, look.radius ?? 0), look);
    },
    line(x1, y1, x2, y2, stroke) {
      return shape(`M${n(left(x1, 0))} ${n(y1)}L${n(left(x2, 0))} ${n(y2)}`, { stroke });
    },
    circle(x, y, radius, look) {
      return shape(rectPath(left(x, 0) - radius, y - radius, 2 * radius, 2 * radius, radius), look);
    },
    text(line, x, top) {
      return { kind: 'text', x: left(x, line.width), baseline: top + line.baseline, line };
    },
    drawing(marks, x, top, width, scale = 1) {
      const at: Matrix = [scale, 0, 0, scale, left(x, width), top];
      return { kind: 'group', at, marks };
    },
  };
}

function shape(path: string, { fill, stroke }: Look): Mark {
  return { kind: 'shape', path, ...(fill ? { fill } : {}), ...(stroke ? { stroke } : {}) };
}

/** Handle length of a Bézier quarter circle (common practice; error below 0.03 %). */
const KAPPA = 0.5523;

function rectPath(x: number, y: number, width: number, height: number, radius: number): string {
  const [r, b] = [x + width, y + height];
  if (radius <= 0) return `M${n(x)} ${n(y)}L${n(r)} ${n(y)}L${n(r)} ${n(b)}L${n(x)} ${n(b)}Z`;
  const q = Math.min(radius, width / 2, height / 2);
  const k = q * (1 - KAPPA);
  const corner = (...values: number[]) => `C${values.map(n).join(' ')}`;
  return [
    `M${n(x + q)} ${n(y)}L${n(r - q)} ${n(y)}`,
    corner(r - k, y, r, y + k, r, y + q),
    `L${n(r)} ${n(b - q)}`,
    corner(r, b - k, r - k, b, r - q, b),
    `L${n(x + q)} ${n(b)}`,
    corner(x + k, b, x, b - k, x, b - q),
    `L${n(x)} ${n(y + q)}`,
    corner(x, y + k, x + k, y, x + q, y),
    'Z',
  ].join('');
}

function n(value: number): string {
  return String(Math.round(value * 1000) / 1000);
}

/** Adds real content. Marks of one element that follow each other on a page become one item. */
export function addContent(page: PageDraft, node: Draft, marks: readonly Mark[]): void {
  if (marks.length === 0) return;
  const last = page.items.at(-1);
  if (last?.kind === 'content' && last.node === node.id) {
    page.items[page.items.length - 1] = { ...last, marks: [...last.marks, ...marks] };
  } else {
    page.items.push({ kind: 'content', node: node.id, marks });
  }
}

export function addArtifact(
  page: PageDraft,
  of: 'pagination' | 'layout' | 'background',
  marks: readonly Mark[],
): void {
  if (marks.length > 0) page.items.push({ kind: 'artifact', of, marks });
}
