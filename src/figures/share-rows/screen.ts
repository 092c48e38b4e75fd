import type { Problem } from '../../diagnostics/index.js';
import { type BrickLine, layBricks } from '../brick-rows/bricks.js';
import type { Drawn, DrawOptions } from '../options.js';
import { finish, outside } from '../sheet.js';
import type { ShareRow, ShareRows } from '../spec.js';
import { createStage, type Stage, tooHigh, tooMany } from '../stage.js';
import { CAP_HEIGHT, dashes, screenLines, screenType } from '../tokens.js';
import { BRICK_PERCENT, BRICKS, drawableShares, filled } from './shares.js';

const MOST_ROWS = 4;
/** Names and values stand before the bricks. */
const NAMES = 300;
const BRICK = { highest: 64, lowest: 40, gap: 4, more: 8 } as const;
const BRACKET = { deep: 14, off: 8 } as const;
/** Room over a row for the words of its bracket, and between rows. */
const WORDS = 36;
const APART = 14;

/** Parts of a whole in bricks of 5 percent, on a slide. */
export function drawSharesOnScreen(given: ShareRows, options: DrawOptions): Drawn {
  const stage = createStage(options);
  const { pen, width, height } = stage;
  const problems: Problem[] = [];
  const spec = drawableShares(given, problems);
  if (spec.rows.length > MOST_ROWS)
    problems.push(tooMany(spec.id, 'rows', spec.rows.length, MOST_ROWS, 'show='));
  const blank = spec.mode === 'blank';
  const over = spec.rows.map((row) => (row.range ? WORDS + BRACKET.deep + BRACKET.off : APART));
  const free = height - over.reduce((sum, one) => sum + one, 0) - APART * spec.rows.length;
  const high = Math.min(BRICK.highest, free / Math.max(1, spec.rows.length));
  if (high < BRICK.lowest) problems.push(tooHigh(spec.id, (BRICK.lowest - high) * spec.rows.length));
  const tall = Math.max(BRICK.lowest, high);
  const line = layBricks(BRICKS, { from: NAMES, to: width, gap: BRICK.gap, more: BRICK.more });
  const spare = Math.max(0, free - tall * spec.rows.length) / Math.max(1, spec.rows.length);
  let y = 0;
  for (const [index, row] of spec.rows.entries()) {
    const top = y + (over[index] ?? 0) + spare / 2;
    drawRow(stage, line, row, top, tall, blank);
    if (row.range) drawBracket(stage, line, row.range, top);
    drawWords(stage, row, top + tall / 2, blank, (words) => problems.push(outside(spec.id, words)));
    y = top + tall + APART + spare / 2;
  }
  return finish(pen, spec.id, height, problems);
}

function drawRow(
  { pen, width }: Stage,
  line: BrickLine,
  row: ShareRow,
  y: number,
  high: number,
  blank: boolean,
) {
  const { palette } = pen;
  const edge = screenLines.track;
  for (let i = 0; i < BRICKS; i++) {
    const x = line.x(i);
    const part = blank ? 0 : filled(row, i);
    if (part < 1)
      pen.rect(x + edge / 2, y + edge / 2, line.width - edge, high - edge, {
        edge: blank ? palette.ink : palette.hair,
        width: edge,
        ...(row.share === null && !blank ? { dash: dashes.goneOnScreen } : {}),
      });
    if (part > 0) pen.rect(x, y, line.width * part, high, { fill: palette.ink });
  }
  pen.take(line.x(0), y, width - line.x(0), high, 'the bricks');
}

function drawBracket(
  { pen, width }: Stage,
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
    { edge: pen.palette.ink, width: screenLines.disc },
  );
  const said = pen.set(words, screenType.label);
  pen.put(said, Math.min((from + to) / 2, width - said.width / 2), top - 10, 'middle');
}

/** Name and value in two lines, their middle on the row's middle. */
function drawWords(
  { pen }: Stage,
  row: ShareRow,
  middle: number,
  blank: boolean,
  reject: (words: string) => void,
): void {
  const name = pen.set(row.name, screenType.name);
  if (name.width > NAMES - 16) reject(row.name);
  const cap = screenType.name.size * CAP_HEIGHT;
  if (blank) {
    pen.put(name, 0, middle + cap / 2);
    return;
  }
  const value = pen.set(row.text, { ...screenType.name, weight: 800 });
  if (value.width > NAMES - 16) reject(row.text);
  pen.put(name, 0, middle - 8);
  pen.put(value, 0, middle + 8 + cap);
}
