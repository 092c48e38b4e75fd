import type { Place, Report } from '../diagnostics/index.js';
import type { Block, Sheet } from '../document/index.js';
import type { Drawing, FigureSpec, Ink } from '../figures/index.js';
import type { Box } from './flow.js';
import type { Outline } from './outline.js';
import type { PageDraft, Pen } from './pen.js';
import { paintRow, type SetText } from './rows.js';
import type { Draft, Tree } from './structure.js';
import type { Grid } from './tokens.js';
import type { TypeRoles } from './type.js';
import type { Typesetter } from './typeset.js';

export type PaperBox = Box<PageDraft>;

/** How a figure is to be drawn on this sheet. Lengths in points. */
export interface FigureRequest {
  /** The whole measure of the page, rail included. */
  readonly width: number;
  readonly ink: Ink;
  readonly level: Sheet['level'];
  readonly language: string;
  readonly direction: 'ltr' | 'rtl';
  /** How much of the space that may give is taken: 0 (as drawn) to 1. */
  readonly slack: number;
  readonly place?: Place;
}

/** What layout asks of the figures. */
export interface FigureTools {
  /** Draws a figure; labels that do not fit go to the report. */
  draw(spec: FigureSpec, request: FigureRequest, report: Report): Drawing;
  /** A picture by name; nothing when there is none of that name. */
  picture(name: string, ink: Ink): Drawing | undefined;
}

/** Everything that laying out one sheet has at hand. */
export interface Desk {
  readonly sheet: Sheet;
  readonly grid: Grid;
  readonly pen: Pen;
  readonly type: TypeRoles;
  readonly tree: Tree;
  readonly set: Typesetter;
  readonly figures: FigureTools;
  readonly report: Report;
  readonly outline: Outline;
  /** How much of the space in figures has been taken: 0 to 1. */
  readonly slack: number;
}

/** Where boxes stand: x from the start edge of the page. */
export interface Slot {
  readonly x: number;
  readonly width: number;
}

/** How much a page break above a box hurts, against three eighths of a page left empty (28). */
export const BREAK = {
  section: 0,
  subhead: 12,
  paragraph: 28,
  item: 36,
  row: 24,
  line: 60,
  part: 80,
} as const;

/** Blocks are laid out by one function that hands itself on to the blocks that hold others. */
export type LayBlocks = (desk: Desk, blocks: readonly Block[], at: Slot, parent: Draft) => PaperBox[];

/** A box for each row, so that a page may break between them but never leaves one row alone. */
export function rowBoxes(
  desk: Desk,
  text: SetText,
  at: Slot,
  options: { readonly before: number; readonly cost: number; readonly align?: 'start' | 'end' },
): PaperBox[] {
  const { pen } = desk;
  const count = text.rows.length;
  return text.rows.map((row, index) => ({
    height: row.height,
    before: index === 0 ? options.before : 0,
    keep: count > 1 && (index === 0 || index === count - 2) ? 'must' : false,
    cost: index === 0 ? options.cost : BREAK.line,
    paint(page, top) {
      const x = options.align === 'end' ? at.x + at.width : at.x;
      paintRow(page, pen, row, x, top, options.align);
    },
  }));
}

function bound(box: PaperBox): PaperBox {
  return box.keep ? box : { ...box, keep: 'wish' };
}

/** The boxes with the last one kept on the page of what follows. */
export function keptWithNext(boxes: readonly PaperBox[]): PaperBox[] {
  return boxes.map((box, index) => (index === boxes.length - 1 ? bound(box) : box));
}

/** The boxes as one group, not parted where a page can hold it. */
export function together(boxes: readonly PaperBox[]): PaperBox[] {
  return boxes.map((box, index) => (index < boxes.length - 1 ? bound(box) : box));
}

/** The boxes with other space above the first. */
export function withSpace(boxes: readonly PaperBox[], before: number): PaperBox[] {
  return boxes.map((box, index) => (index === 0 ? { ...box, before } : box));
}

/** Paints something more with a box, before it. */
export function under(box: PaperBox, paint: (page: PageDraft, top: number) => void): PaperBox {
  return {
    ...box,
    paint(page, top) {
      paint(page, top);
      box.paint(page, top);
    },
  };
}
