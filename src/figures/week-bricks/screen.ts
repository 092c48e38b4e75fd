import type { Problem } from '../../diagnostics/index.js';
import { layBricks } from '../brick-rows/bricks.js';
import { letterDot } from '../disc.js';
import type { Drawn, DrawOptions } from '../options.js';
import { finish, outside } from '../sheet.js';
import type { WeekBricks } from '../spec.js';
import { createStage, type Stage, tooHigh } from '../stage.js';
import { CAP_HEIGHT, screenLines, screenType } from '../tokens.js';
import { type BrickLines, drawStretch } from './brick.js';
import { BRICK_MINUTES, drawableWeek, emptyBricks, highest, SUM_BRICKS, stretchesOf } from './minutes.js';

const DAYS = 7;
const BRICK = { widest: 120, highest: 36, lowest: 10, gap: 6 } as const;
/** Room for the names of the days under the columns, and for the sum: its words, its row and its key. */
const NAMES = 58;
const SUM = { words: 62, row: 52, foot: 8 } as const;
const VALUE = 44;

/** Seven columns of ten-minute bricks with their sum under them, on a slide. */
export function drawWeekOnScreen(given: WeekBricks, options: DrawOptions): Drawn {
  const stage = createStage(options);
  const { pen, height } = stage;
  const problems: Problem[] = [];
  const reject = (words: string) => problems.push(outside(given.id, words));
  const spec = drawableWeek(given, problems);
  const blank = spec.mode === 'blank';
  const lines: BrickLines = {
    edge: screenLines.track,
    inner: screenLines.track,
    inset: 6,
    radius: 0,
    waiting: blank,
  };
  const floor = height - SUM.foot - SUM.row - SUM.words - NAMES;
  const room = floor - (blank ? 0 : VALUE);
  const each = room / highest(spec) - BRICK.gap;
  if (each < BRICK.lowest) problems.push(tooHigh(spec.id, (BRICK.lowest - each) * highest(spec)));
  const high = Math.max(BRICK.lowest, Math.min(BRICK.highest, each));
  drawDays(stage, spec, lines, floor, high, reject);
  drawSum(stage, spec, lines, height - SUM.foot - SUM.row);
  return finish(pen, spec.id, height, problems);
}

function drawDays(
  { pen, width }: Stage,
  spec: WeekBricks,
  lines: BrickLines,
  floor: number,
  high: number,
  reject: (words: string) => void,
): void {
  const blank = spec.mode === 'blank';
  const most = highest(spec);
  const pitch = width / DAYS;
  const wide = Math.min(BRICK.widest, pitch - 24);
  const tight = { ...lines, inset: Math.min(lines.inset, high / 4) };
  for (const [i, day] of spec.days.slice(0, DAYS).entries()) {
    const middle = (i + 0.5) * pitch;
    const x = middle - wide / 2;
    for (const stretch of blank ? emptyBricks(most) : stretchesOf(day, most)) {
      const y = floor - (stretch.brick + 1) * (high + BRICK.gap);
      drawStretch(pen, stretch, { x, y, width: wide, height: high, fills: 'up' }, tight);
    }
    const bricks = Math.ceil((day.moderate + day.vigorous) / BRICK_MINUTES - 1e-9);
    if (!blank && bricks > 0) {
      const top = floor - bricks * (high + BRICK.gap);
      pen.take(x, top, wide, floor - top, 'the bricks');
      const said = pen.set(day.text, { ...screenType.value, number: day.number });
      if (said.width > pitch) reject(day.text);
      pen.put(said, middle, top - 8, 'middle');
    }
    drawDayName(pen, spec, day, middle, floor + NAMES / 2 + 3, pitch, reject);
  }
  pen.line(0, floor, width, floor, { width: screenLines.disc });
}

function drawDayName(
  pen: Stage['pen'],
  { mode, words }: WeekBricks,
  day: WeekBricks['days'][number],
  x: number,
  y: number,
  pitch: number,
  reject: (words: string) => void,
): void {
  const shown = mode !== 'blank';
  const said = pen.set(day.name, screenType.label);
  if (said.width > pitch - 20) reject(day.name);
  const balance = shown && day.balance;
  const disc = 21;
  const left = balance ? x - disc - 4 : x;
  pen.put(said, left, y + (screenType.label.size * CAP_HEIGHT) / 2, 'middle');
  if (shown && day.strength)
    pen.rect(left - said.width / 2 - 16, y - 22, said.width + 32, 44, {
      edge: pen.palette.ink,
      width: screenLines.disc,
      radius: 22,
    });
  if (balance)
    letterDot(pen, {
      x: left + said.width / 2 + (day.strength ? 22 : 8) + disc,
      y,
      radius: disc,
      letter: words.balanceLetter,
      size: 32,
      fill: pen.palette.paper,
      edge: { edge: pen.palette.ink, width: screenLines.track },
    });
}

/** The week in one row up to 300 minutes; its name and sum stand over it, and so do the goals. */
function drawSum({ pen, width }: Stage, spec: WeekBricks, lines: BrickLines, top: number): void {
  const blank = spec.mode === 'blank';
  const line = layBricks(SUM_BRICKS, { from: 0, to: width, gap: 4, more: 8 });
  const stretches = blank ? [] : stretchesOf(spec.sum, SUM_BRICKS);
  const full = new Set(stretches.map(({ brick }) => brick));
  for (const stretch of [...emptyBricks(SUM_BRICKS).filter(({ brick }) => !full.has(brick)), ...stretches])
    drawStretch(
      pen,
      stretch,
      { x: line.x(stretch.brick), y: top, width: line.width, height: SUM.row, fills: 'along' },
      lines,
    );
  pen.take(0, top, width, SUM.row, 'the bricks');
  const baseline = top - 18;
  const name = pen.set(spec.words.sum, screenType.name);
  pen.put(name, 0, baseline);
  if (!blank) {
    const said = pen.set(spec.sum.text, { ...screenType.name, weight: 800, number: spec.sum.number });
    pen.put(said, name.width + 16, baseline);
  }
  for (const [i, goal] of spec.goals.entries()) {
    const at = goal.at / BRICK_MINUTES;
    const x = at >= SUM_BRICKS ? width : (line.edge(at, 'end') + line.edge(at, 'start')) / 2;
    const wide = i === 0 ? screenLines.post : screenLines.shelf;
    const inside = Math.min(x, width - wide / 2);
    pen.line(inside, top - 10, inside, top + SUM.row + 6, { width: wide });
    const said = pen.set(goal.words, screenType.label);
    pen.put(said, Math.min(inside, width - said.width / 2), baseline, 'middle');
  }
}
