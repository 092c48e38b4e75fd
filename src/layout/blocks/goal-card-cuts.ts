import { paletteFor, signMarks } from '../../figures/index.js';
import type { Desk } from '../desk.js';
import { addArtifact, type PageDraft } from '../pen.js';
import { mm } from '../tokens.js';

/** Cards of one size in columns and rows. */
export interface CutArea {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly columns: number;
  readonly rows: number;
}

const DASH = [mm(1.8), mm(1.6)];
/** Solid marks outside the cards, so that a ruler finds the line. */
const MARK = { length: mm(3.6), off: mm(1.4) } as const;
const SCISSORS = { size: mm(5), at: mm(11) } as const;

/** Dashed lines where to cut, solid marks beyond their ends, and scissors on the first line. */
export function paintCuts(
  desk: Desk,
  page: PageDraft,
  { x, y, width, height, columns, rows }: CutArea,
): void {
  const { pen } = desk;
  const solid = { color: pen.colors.ink, width: pen.strokes.line };
  const dashed = { ...solid, dash: DASH };
  const [right, bottom] = [x + columns * width, y + rows * height];
  const across = Array.from({ length: rows + 1 }, (_, index) => y + index * height);
  const down = Array.from({ length: columns + 1 }, (_, index) => x + index * width);
  const end = MARK.off + MARK.length;
  addArtifact(page, 'layout', [
    // The first line begins after the scissors.
    ...across.map((at, index) =>
      pen.line(index === 0 ? x + SCISSORS.at + SCISSORS.size : x, at, right, at, dashed),
    ),
    pen.line(x, y, x + SCISSORS.at - mm(1), y, dashed),
    ...down.map((at) => pen.line(at, y, at, bottom, dashed)),
    ...across.flatMap((at) => [
      pen.line(x - end, at, x - MARK.off, at, solid),
      pen.line(right + MARK.off, at, right + end, at, solid),
    ]),
    ...down.flatMap((at) => [
      pen.line(at, y - end, at, y - MARK.off, solid),
      pen.line(at, bottom + MARK.off, at, bottom + end, solid),
    ]),
  ]);
  const marks = signMarks('scissors', paletteFor('paper', pen.ink), { size: SCISSORS.size });
  addArtifact(page, 'layout', [
    { kind: 'group', at: [1, 0, 0, 1, pen.left(x + SCISSORS.at + SCISSORS.size / 2, 0), y], marks },
  ]);
}
