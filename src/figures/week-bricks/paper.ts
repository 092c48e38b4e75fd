import type { Problem } from '../../diagnostics/index.js';
import { layBricks } from '../brick-rows/bricks.js';
import { letterDot } from '../disc.js';
import { mm } from '../geometry.js';
import type { Drawn, DrawOptions } from '../options.js';
import { drawNames } from '../row-names.js';
import { createSheet, finish, outside, type Sheet } from '../sheet.js';
import type { WeekBricks, WeekDay } from '../spec.js';
import { CAP_HEIGHT, paperLines } from '../tokens.js';
import { type BrickLines, drawStretch } from './brick.js';
import { drawWeekKey } from './key.js';
import { BRICK_MINUTES, drawableWeek, emptyBricks, highest, SUM_BRICKS, stretchesOf } from './minutes.js';

const DAYS = 7;
const GAP = mm(0.7);

/** Seven columns of ten-minute bricks with their sum under them, on paper. */
export function drawWeekOnPaper(given: WeekBricks, options: DrawOptions): Drawn {
  const sheet = createSheet(options);
  const problems: Problem[] = [];
  const reject = (words: string) => problems.push(outside(given.id, words));
  const spec = drawableWeek(given, problems);
  const lines: BrickLines = {
    edge: spec.mode === 'blank' ? paperLines.line : paperLines.hair,
    inner: sheet.one ? paperLines.line : paperLines.hair,
    inset: mm(0.95),
    radius: mm(0.5),
    waiting: spec.mode === 'blank',
  };
  const afterDays = drawDays(sheet, spec, lines, reject);
  const afterSum = drawSum(sheet, spec, lines, afterDays + sheet.slack(4, 6), reject);
  const y = drawWeekKey(sheet, spec, lines, afterSum, reject);
  return finish(sheet.pen, spec.id, y + mm(0.5), problems);
}

/** The columns, standing on one line, with the names of the days under it. Returns the y below the names. */
function drawDays(
  sheet: Sheet,
  spec: WeekBricks,
  lines: BrickLines,
  reject: (words: string) => void,
): number {
  const { pen, type, axis, big, rail, slack } = sheet;
  const blank = spec.mode === 'blank';
  const most = highest(spec);
  const height = most > 12 ? mm(2.4) : big ? slack(4, 5) : slack(3.4, 4.2);
  const pitch = (pen.width - axis) / DAYS;
  const width = Math.min(pitch - mm(3), mm(16));
  const names = drawNames(sheet, { name: spec.words.days }, reject);
  const above = (rail ? 0 : names.height + 0.5) + (blank ? mm(0.5) : type.value.size * 1.15);
  const floor = Math.max(above + most * (height + GAP), rail ? names.above * 2 : 0);
  names.put(rail ? Math.max(names.above, floor - (most * (height + GAP)) / 2) : 0.5);
  for (const [i, day] of spec.days.slice(0, DAYS).entries()) {
    const x = axis + i * pitch + (pitch - width) / 2;
    const stretches = blank ? emptyBricks(most) : stretchesOf(day, most);
    for (const stretch of stretches) {
      const y = floor - (stretch.brick + 1) * (height + GAP);
      drawStretch(pen, stretch, { x, y, width, height, fills: 'up' }, lines);
    }
    const bricks = Math.ceil((day.moderate + day.vigorous) / BRICK_MINUTES - 1e-9);
    if (!blank && bricks > 0) {
      const top = floor - bricks * (height + GAP);
      pen.take(x, top, width, floor - top, 'the bricks');
      const said = pen.set(day.text, { ...type.value, number: day.number });
      if (said.width > pitch) reject(day.text);
      pen.put(said, x + width / 2, top - mm(1), 'middle');
    }
  }
  pen.line(axis, floor, pen.width, floor, { width: paperLines.line });
  const middle = floor + mm(1.6) + type.label.size * 0.9;
  for (const [i, day] of spec.days.slice(0, DAYS).entries())
    drawDayName(sheet, spec, day, axis + (i + 0.5) * pitch, middle, pitch, reject);
  return middle + type.label.size * 0.9;
}

/** A day's name: ringed for strength work, with a lettered disc for balance work. */
function drawDayName(
  { pen, type }: Sheet,
  { mode, words }: WeekBricks,
  day: WeekDay,
  x: number,
  y: number,
  pitch: number,
  reject: (words: string) => void,
): void {
  const size = type.label.size;
  const shown = mode !== 'blank';
  const said = pen.set(day.name, { ...type.label, weight: 700 });
  if (said.width > pitch - mm(1)) reject(day.name);
  const balance = shown && day.balance;
  const disc = size * 0.62;
  const left = balance ? x - (disc * 2 + mm(1)) / 2 : x;
  pen.put(said, left, y + (size * CAP_HEIGHT) / 2, 'middle');
  if (shown && day.strength) {
    const [w, h] = [said.width + mm(3.4), size * 1.5];
    pen.rect(left - w / 2, y - h / 2, w, h, { edge: pen.palette.ink, width: paperLines.firm, radius: h / 2 });
  }
  if (balance)
    letterDot(pen, {
      x: left + said.width / 2 + mm(day.strength ? 2.6 : 1.2) + disc,
      y,
      radius: disc,
      letter: words.balanceLetter,
      size: Math.max(9, size * 0.86),
      fill: pen.palette.paper,
      edge: { edge: pen.palette.ink, width: paperLines.line },
    });
}

/** The week in one row up to 300 minutes, with a rule at each goal. Returns the y of its lower edge. */
function drawSum(
  sheet: Sheet,
  spec: WeekBricks,
  lines: BrickLines,
  from: number,
  reject: (words: string) => void,
): number {
  const { pen, type, axis, big, rail, slack } = sheet;
  const blank = spec.mode === 'blank';
  const height = big ? slack(8.5, 10) : slack(7, 8.4);
  const line = layBricks(SUM_BRICKS, { from: axis, to: pen.width, gap: mm(0.8), more: mm(1.2) });
  const names = drawNames(sheet, { name: spec.words.sum, note: blank ? '' : spec.sum.text }, reject, {
    ...type.value,
    number: spec.sum.number,
  });
  const over = type.label.size * 1.2 + mm(1.2);
  const top = rail ? Math.max(from + over, from + names.above - height / 2) : from + names.height + over;
  names.put(rail ? top + height / 2 : from);
  const stretches = blank ? [] : stretchesOf(spec.sum, SUM_BRICKS);
  const full = new Set(stretches.map(({ brick }) => brick));
  for (const stretch of [...emptyBricks(SUM_BRICKS).filter(({ brick }) => !full.has(brick)), ...stretches])
    drawStretch(
      pen,
      stretch,
      { x: line.x(stretch.brick), y: top, width: line.width, height, fills: 'along' },
      lines,
    );
  pen.take(axis, top, pen.width - axis, height, 'the bricks');
  for (const [i, goal] of spec.goals.entries()) {
    const at = goal.at / BRICK_MINUTES;
    const x = at >= SUM_BRICKS ? pen.width : (line.edge(at, 'end') + line.edge(at, 'start')) / 2;
    const width = i === 0 ? paperLines.bold : paperLines.firm;
    const inside = Math.min(x, pen.width - width / 2);
    pen.line(inside, top - mm(1.2), inside, top + height + mm(1.2), { width });
    const said = pen.set(goal.words, type.label);
    pen.put(said, Math.min(inside, pen.width - said.width / 2), top - mm(1.9), 'middle');
  }
  return Math.max(top + height + mm(1.2), rail ? top + height / 2 + names.below : 0);
}
