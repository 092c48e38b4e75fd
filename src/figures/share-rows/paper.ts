import type { Problem } from '../../diagnostics/index.js';
import { type BrickLine, layBricks } from '../brick-rows/bricks.js';
import { mm } from '../geometry.js';
import type { Drawn, DrawOptions } from '../options.js';
import { drawNames } from '../row-names.js';
import { createSheet, finish, outside, type Sheet } from '../sheet.js';
import type { ShareRow, ShareRows } from '../spec.js';
import { dashes, paperLines } from '../tokens.js';
import { BRICK_PERCENT, BRICKS, drawableShares, filled } from './shares.js';

const ROUND = mm(0.5);
/** A bracket's depth, and how far it stays off the bricks. */
const BRACKET = { deep: mm(1.9), off: mm(0.9) } as const;

/** Parts of a whole in bricks of 5 percent, on paper. */
export function drawSharesOnPaper(given: ShareRows, options: DrawOptions): Drawn {
  const sheet = createSheet(options);
  const { pen, type, big, slack } = sheet;
  const problems: Problem[] = [];
  const reject = (words: string) => problems.push(outside(given.id, words));
  const spec = drawableShares(given, problems);
  const blank = spec.mode === 'blank';
  const height = big ? slack(8.5, 10) : slack(6.8, 8);
  const line = layBricks(BRICKS, { from: sheet.axis, to: pen.width, gap: mm(0.8), more: mm(1.2) });
  let y = 0;
  for (const [index, row] of spec.rows.entries()) {
    const names = drawNames(sheet, { name: row.name, note: blank ? '' : row.text }, reject, type.value);
    const over = row.range ? type.label.size * 1.12 + BRACKET.deep + BRACKET.off : 0;
    const start = y + (index === 0 ? 0.5 : sheet.rail ? slack(2, big ? 4 : 3) : slack(4, 6));
    const top = sheet.rail
      ? Math.max(start + over, y + names.above - height / 2)
      : start + names.height + over;
    names.put(sheet.rail ? top + height / 2 : start);
    drawRow(sheet, line, row, top, height, blank);
    if (row.range) drawBracket(sheet, line, row.range, top);
    y = Math.max(top + height, sheet.rail ? top + height / 2 + names.below : 0);
  }
  y = drawKey(sheet, spec, y, reject);
  return finish(pen, spec.id, y + mm(0.5), problems);
}

/** Twenty bricks: solid up to the share and cut at its true place, in outline beyond; dashed when not known. */
function drawRow(
  { pen, one }: Sheet,
  line: BrickLine,
  row: ShareRow,
  y: number,
  height: number,
  blank: boolean,
): void {
  const { palette } = pen;
  const unknown = row.share === null && !blank;
  const width = blank ? paperLines.line : paperLines.hair;
  const inset = width / 2;
  for (let i = 0; i < BRICKS; i++) {
    const x = line.x(i);
    const part = blank ? 0 : filled(row, i);
    if (part < 1)
      pen.rect(x + inset, y + inset, line.width - width, height - width, {
        edge: blank ? palette.ink : palette.hair,
        width,
        radius: ROUND,
        ...(unknown ? { dash: one ? dashes.gone.one : dashes.gone.color } : {}),
      });
    if (part > 0)
      pen.rect(x, y, line.width * part, height, { fill: palette.ink, radius: part === 1 ? ROUND : 0 });
  }
  pen.take(line.x(0), y, pen.width - line.x(0), height, 'the bricks');
}

/** The span to hold the row against: a bracket over it with both ends in words. */
function drawBracket(
  { pen, type, axis }: Sheet,
  line: BrickLine,
  { low, high, words }: NonNullable<ShareRow['range']>,
  bricksTop: number,
): void {
  const [from, to] = [line.edge(low / BRICK_PERCENT, 'start'), line.edge(high / BRICK_PERCENT, 'end')];
  const foot = bricksTop - BRACKET.off;
  const top = foot - BRACKET.deep;
  pen.poly(
    [
      [from, foot],
      [from, top],
      [to, top],
      [to, foot],
    ],
    { edge: pen.palette.ink, width: paperLines.firm },
  );
  const said = pen.set(words, type.label);
  const middle = Math.max(axis + said.width / 2, Math.min((from + to) / 2, pen.width - said.width / 2));
  pen.put(said, middle, top - type.label.size * 0.3, 'middle');
}

/** What a brick is worth and what the bracket is: one line, or two where they do not fit side by side. */
function drawKey(sheet: Sheet, spec: ShareRows, y: number, reject: (words: string) => void): number {
  const { pen, type, axis, big } = sheet;
  const size = type.note.size;
  const after = mm(1.8);
  const items: { readonly words: string; readonly wide: number; readonly bracket: boolean }[] = [
    { words: spec.words.brick, wide: size * 0.8, bracket: false },
    ...(spec.rows.some((row) => row.range) ? [{ words: spec.words.range, wide: mm(6), bracket: true }] : []),
  ];
  let baseline = y + mm(big ? 3.6 : 3) + size * 0.8;
  let x = axis;
  for (const { words, wide, bracket } of items) {
    const said = pen.set(words, type.note);
    const whole = wide + after + said.width;
    if (x > axis && x + whole > pen.width) {
      x = axis;
      baseline += size * 1.6;
    }
    if (x + whole > pen.width) reject(words);
    if (bracket) {
      const [top, foot] = [baseline - size * 0.55, baseline - size * 0.55 + BRACKET.deep];
      pen.poly(
        [
          [x, foot],
          [x, top],
          [x + wide, top],
          [x + wide, foot],
        ],
        { edge: pen.palette.ink, width: paperLines.firm },
      );
    } else if (spec.mode === 'blank')
      pen.rect(x + 0.5, baseline - size * 0.8 + 0.5, wide - 1, size - 1, {
        edge: pen.palette.ink,
        width: paperLines.line,
        radius: mm(0.4),
      });
    else pen.rect(x, baseline - size * 0.8, wide, size, { fill: pen.palette.ink, radius: mm(0.4) });
    pen.put(said, x + wide + after, baseline);
    x += whole + mm(6.5);
  }
  return baseline + size * 0.25;
}
