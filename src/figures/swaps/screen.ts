import type { Problem } from '../../diagnostics/index.js';
import { drawArrow } from '../arrow.js';
import { pictureFinder, screenCounter } from '../dish/counter.js';
import { noPicture } from '../dish/sound.js';
import type { Drawn, DrawOptions } from '../options.js';
import type { Pen } from '../pen.js';
import { finish, outside } from '../sheet.js';
import type { SwapPair, Swaps, TurnLane } from '../spec.js';
import { createStage, tooHigh, tooMany } from '../stage.js';
import { screenLines, screenType } from '../tokens.js';

const RADIUS = 66;
const STEP = 42;
const LANE = { usual: 52, least: 44 } as const;
const DOT = 13;
const NAMES = 250;
const MOST = 3;

/** One swap: two foods with the job between them, and under them what changes most. */
export function drawSwapOnScreen(spec: Swaps, options: DrawOptions): Drawn {
  const { pen, width, height } = createStage(options);
  const problems: Problem[] = [];
  const reject = (words: string) => problems.push(outside(spec.id, words));
  const pictureOf = pictureFinder(options.picture, options.ink, (name) =>
    problems.push(noPicture(spec.id, name)),
  );
  const [row] = spec.rows;
  if (!row || spec.rows.length > 1) problems.push(tooMany(spec.id, 'swaps', spec.rows.length, 1, 'show'));
  if (!row) return finish(pen, spec.id, height, problems);
  if (row.lanes.length > MOST) problems.push(tooMany(spec.id, 'nutrients', row.lanes.length, MOST, 'level'));
  const foot = drawPair(pen, row, width, pictureOf, reject);
  const lost = pen.paragraph(row.lost, { ...screenType.label, weight: 700 }, width);
  if (lost.overflow) reject(row.lost);
  const room = (height - foot - lost.lines.length * STEP) / Math.max(1, row.lanes.length);
  const lane = Math.min(LANE.usual, Math.max(LANE.least, room));
  const whole = row.lanes.length * lane + lost.lines.length * STEP;
  if (foot + whole > height) problems.push(tooHigh(spec.id, foot + whole - height));
  // What is left over stands above the lanes and below them alike.
  let y = foot + Math.min(24, Math.max(0, (height - foot - whole) / 2));
  y = drawLanes(pen, row.lanes, lane, y, width, reject);
  pen.putParagraph(lost, 0, width, y + 32, STEP);
  return finish(pen, spec.id, height, problems);
}

function drawPair(
  pen: Pen,
  { old, fresh, job }: SwapPair,
  width: number,
  pictureOf: Parameters<typeof screenCounter>[5],
  reject: (words: string) => void,
): number {
  const gap = 300;
  const half = (width - gap) / 2;
  const room = half - 2 * RADIUS - 28;
  const sides = [old, fresh].map((side) => ({
    side,
    name: pen.paragraph(side.name, screenType.name, room),
    note: pen.paragraph(side.note, screenType.note, room),
  }));
  const work = pen.paragraph(job, { ...screenType.name, color: pen.palette.accent }, gap - 24, {
    align: 'center',
    balance: true,
  });
  if (work.overflow) reject(job);
  const over = work.lines.length * STEP + 22;
  const highs = sides.map(({ name, note }) => ((name.lines.length + note.lines.length) * STEP) / 2);
  const center = Math.max(RADIUS + 6, over, ...highs);
  for (const [i, { side, name, note }] of sides.entries()) {
    const x = i * (half + gap) + RADIUS + 4;
    if (name.overflow) reject(side.name);
    if (note.overflow) reject(side.note);
    screenCounter(pen, x, center, RADIUS, { picture: side.picture }, pictureOf);
    const [left, first] = [x + RADIUS + 20, center - (highs[i] ?? 0) + 33];
    pen.putParagraph(name, left, room, first, STEP);
    pen.putParagraph(note, left, room, first + name.lines.length * STEP, STEP);
  }
  pen.putParagraph(work, half + 12, gap - 24, center - over + 36, STEP);
  drawArrow(pen, { from: half + 14, to: half + gap - 14, y: center, head: 26, width: screenLines.post });
  return center + Math.max(RADIUS + 6, ...highs);
}

/** From zero: an open disc before, a solid one after, both values at the end edge. */
function drawLanes(
  pen: Pen,
  lanes: readonly TurnLane[],
  pitch: number,
  y: number,
  width: number,
  reject: (words: string) => void,
): number {
  const { palette } = pen;
  const texts = lanes.map(({ text, numbers: [number] }) =>
    pen.set(text, { ...screenType.label, ...(number ? { number } : {}) }),
  );
  const to = width - Math.max(0, ...texts.map((text) => text.width)) - 28;
  if (lanes[0] && to - NAMES < 140) reject(lanes[0].text);
  let middle = y + pitch / 2;
  for (const [i, lane] of lanes.entries()) {
    const name = pen.set(lane.name, { ...screenType.label, weight: 700 });
    if (name.width > NAMES - 16) reject(lane.name);
    pen.put(name, 0, middle + 11);
    const most = Math.max(lane.before, lane.after, Number.MIN_VALUE);
    const at = (value: number) => NAMES + DOT + (to - NAMES - 2 * DOT) * (value / most);
    pen.line(NAMES, middle, to, middle, { edge: palette.hair, width: screenLines.track });
    pen.line(NAMES, middle - DOT, NAMES, middle + DOT, { edge: palette.ink, width: screenLines.track });
    const [a, b] = [at(lane.before), at(lane.after)];
    const side = b > a ? 1 : -1;
    if (Math.abs(b - a) > 2 * DOT + 26)
      drawArrow(pen, { from: a + side * (DOT + 3), to: b - side * (DOT + 3), y: middle, head: 18, width: 6 });
    pen.circle(a, middle, DOT, { fill: palette.paper, edge: palette.ink, width: screenLines.disc });
    // Two equal values would hide one another; then the open disc stays seen around the solid one.
    pen.circle(b, middle, Math.abs(b - a) < DOT ? DOT * 0.55 : DOT, { fill: palette.ink });
    const text = texts[i];
    if (text) pen.put(text, width, middle + 11, 'end');
    middle += pitch;
  }
  return middle - pitch / 2;
}
