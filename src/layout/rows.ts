import type { Mark, TextInk } from '../figures/index.js';
import type { GlyphRun, Line } from '../text/index.js';
import { addArtifact, addContent, type PageDraft, type Pen } from './pen.js';
import type { Draft } from './structure.js';

/** What a glyph run remembers: its ink, and which element of the structure it belongs to. */
export interface PartInk extends TextInk {
  readonly part: number;
  readonly struck?: boolean;
}

/** An element that a stretch of text belongs to, and where it leads if it is a link. */
export interface Target {
  readonly node: Draft;
  readonly href?: string;
}

interface Piece {
  readonly node: Draft;
  readonly line: Line<TextInk>;
  /** From the left edge of the row. */
  readonly dx: number;
  readonly href?: string;
  readonly struck: boolean;
}

/** One line of set text, in the pieces that belong to different elements. */
export interface Row {
  readonly width: number;
  readonly height: number;
  readonly baseline: number;
  readonly pieces: readonly Piece[];
}

export interface SetText {
  readonly rows: readonly Row[];
  readonly width: number;
  readonly height: number;
  readonly text: string;
}

/** Cuts a line where the element changes. Pieces stand in reading order. */
export function rowOf(line: Line<PartInk>, targets: readonly Target[]): Row {
  const pieces: Piece[] = [];
  const logical = [...line.runs].sort((a, b) => a.start - b.start);
  const place = new Map(line.runs.map((run, index) => [run, index]));
  let open: GlyphRun<PartInk>[] = [];
  const close = () => {
    const first = open[0];
    if (!first) return;
    const target = targets[first.span.data?.part ?? 0];
    if (!target) return;
    const visual = [...open].sort((a, b) => (place.get(a) ?? 0) - (place.get(b) ?? 0));
    pieces.push({
      node: target.node,
      ...pieceLine(line, visual),
      ...(target.href ? { href: target.href } : {}),
      struck: first.span.data?.struck ?? false,
    });
    open = [];
  };
  for (const run of logical) {
    const last = open.at(-1);
    const sameElement = last?.span.data?.part === run.span.data?.part;
    const together = last && sameElement && last.span.data?.struck === run.span.data?.struck;
    if (last && !(together && touches(open, run, place))) close();
    open.push(run);
  }
  close();
  return { width: line.width, height: line.height, baseline: line.baseline, pieces };
}

/** Whether the runs, with one more, still stand side by side: in mixed directions they may not. */
function touches<T>(open: readonly T[], next: T, place: ReadonlyMap<T, number>): boolean {
  const places = [...open, next].map((run) => place.get(run) ?? 0);
  return Math.max(...places) - Math.min(...places) === places.length - 1;
}

/** A line of only these runs, its left edge at 0. */
function pieceLine(
  line: Line<PartInk>,
  runs: readonly GlyphRun<PartInk>[],
): { readonly line: Line<TextInk>; readonly dx: number } {
  const left = runs[0]?.x ?? line.x;
  const from = Math.min(...runs.map((r) => r.start));
  const to = Math.max(...runs.map((r) => r.start + r.text.length));
  const width = runs.reduce((sum, r) => sum + r.width, 0);
  return {
    dx: left - line.x,
    line: {
      ...line,
      x: 0,
      width,
      text: line.text.slice(from, to),
      runs: runs.map((r) => ({ ...r, x: r.x - left, start: r.start - from })),
    },
  };
}

/** Puts a row on the page. `x` is its start edge, or its end edge or middle by `align`. */
export function paintRow(
  page: PageDraft,
  pen: Pen,
  row: Row,
  x: number,
  top: number,
  align: 'start' | 'end' | 'center' = 'start',
): void {
  const start = align === 'start' ? x : align === 'end' ? x - row.width : x - row.width / 2;
  const left = pen.left(start, row.width);
  for (const piece of row.pieces) {
    const mark: Mark = { kind: 'text', x: left + piece.dx, baseline: top + row.baseline, line: piece.line };
    addContent(page, piece.node, [mark]);
    const { width } = piece.line;
    if (piece.struck) addArtifact(page, 'layout', [strike(left + piece.dx, top + row.baseline, piece.line)]);
    if (piece.href) {
      page.items.push({
        kind: 'link',
        node: piece.node.id,
        href: piece.href,
        words: piece.line.text.trim(),
        x: left + piece.dx,
        y: top,
        width,
        height: row.height,
      });
    }
  }
}

/** A line through words, at half the height of small letters. */
function strike(left: number, baseline: number, line: Line<TextInk>): Mark {
  const size = line.runs[0]?.size ?? 12;
  const y = baseline - 0.26 * size;
  return {
    kind: 'shape',
    path: `M${left.toFixed(3)} ${y.toFixed(3)}L${(left + line.width).toFixed(3)} ${y.toFixed(3)}`,
    stroke: { color: line.runs[0]?.span.data?.color ?? '#000000', width: Math.max(1, 0.07 * size) },
  };
}

/** All rows of a text below each other; returns the y below the last. */
export function paintText(
  page: PageDraft,
  pen: Pen,
  text: SetText,
  x: number,
  top: number,
  align: 'start' | 'end' | 'center' = 'start',
): number {
  let y = top;
  for (const row of text.rows) {
    paintRow(page, pen, row, x, y, align);
    y += row.height;
  }
  return y;
}
