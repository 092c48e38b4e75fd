import type { Problem } from '../../diagnostics/index.js';
import type { Drawn, DrawOptions } from '../options.js';
import { figureProblem } from '../problems.js';
import { finish } from '../sheet.js';
import type { BrickRow, BrickRows } from '../spec.js';
import { createStage, type Stage, tooHigh, tooMany } from '../stage.js';
import { dashes, screenLines, screenType } from '../tokens.js';
import { shelfMarks } from '../vessels.js';
import {
  type BrickLine,
  countBricks,
  drawableRows,
  isGiven,
  layBricks,
  partsOf,
  worthThatFits,
} from './bricks.js';

const MOST_ROWS = 4;
const BRICK = { high: 72, widest: 38, narrowest: 28, gap: 4, more: 8 } as const;
/** Bricks stand a little above their shelf, so that both show. */
const LIFT = 5;
const VESSEL = 148;
const AFTER_VESSEL = 24;
/** From a row's shelf up to the baseline of its name, and to the top of what it holds. */
const NAME_UP = 98;
const ROW_UP = 130;
const ROW_UP_WITH_RANGE = 164;
const ROW_APART = 232;

/** An amount counted in bricks, before and after, on a slide: each row on a shelf of its own. */
export function drawBricksOnScreen(given: BrickRows, options: DrawOptions): Drawn {
  const stage = createStage(options);
  const { pen, width, height } = stage;
  const problems: Problem[] = [];
  const spec = drawableRows(given, problems);
  if (spec.rows.length > MOST_ROWS)
    problems.push(tooMany(spec.id, 'rows', spec.rows.length, MOST_ROWS, 'rows='));
  const blank = spec.mode === 'blank';
  const needs = spec.rows.map((row) => (!blank && rangeOf(row) ? ROW_UP_WITH_RANGE : ROW_UP));
  const needed = needs.reduce((sum, n) => sum + n, 0);
  if (needed > height) problems.push(tooHigh(spec.id, needed - height));
  const spare = spec.rows.length === 0 ? 0 : Math.max(0, height - needed) / spec.rows.length;
  const steps = needs.map((need) => Math.min(Math.max(need, ROW_APART), need + spare));
  const { line, vessel } = layLine(spec, stage, Math.min(...steps), problems);
  // The last row stands on the slide's own shelf, so rows are placed from the foot up.
  let y = height;
  for (let i = spec.rows.length - 1; i >= 0; i--) {
    const row = spec.rows[i];
    if (!row) continue;
    const foot = y === height ? height : y - screenLines.disc / 2;
    if (y < height) pen.line(0, y, width, y, { width: screenLines.disc });
    if (vessel > 0) {
      pen.placeWide(0, vessel, foot, shelfMarks(row.sign, vessel, pen.ink));
      pen.take(0, foot - vessel, vessel, vessel, 'the vessel');
    }
    drawRow(stage, line, row, spec, y - LIFT - BRICK.high, blank && !isGiven(row, i));
    drawWords(stage, line, row, spec, y, blank);
    y -= steps[i] ?? ROW_APART;
  }
  return finish(pen, spec.id, height, problems);
}

/** Bricks beside vessels, or over the whole width where bricks would be too narrow beside them. */
function layLine(
  spec: BrickRows,
  { width }: Stage,
  rowHeight: number,
  problems: Problem[],
): { readonly line: BrickLine; readonly vessel: number } {
  const count = countBricks(spec);
  const { gap, more, widest, narrowest } = BRICK;
  const vessel = Math.min(VESSEL, rowHeight - 8);
  const beside = layBricks(count, { from: vessel + AFTER_VESSEL, to: width, gap, more, widest });
  if (beside.width >= narrowest) return { line: beside, vessel };
  const alone = layBricks(count, { from: 0, to: width, gap, more, widest });
  if (alone.width < narrowest) {
    const most = Math.floor((width + gap) / (narrowest + gap + more / 5));
    const worth = worthThatFits(spec, most);
    problems.push(
      figureProblem(
        'figures/bricks-too-narrow',
        `On the slide, ${count} bricks of figure “${spec.id}” are too narrow to count; ${most} fit.`,
        {
          hint: `Let one brick be worth ${worth} or more.`,
          actual: String(spec.worth),
          expected: [String(worth)],
        },
      ),
    );
  }
  return { line: alone, vessel: 0 };
}

/** The range as printed, when there is one. */
function rangeOf(row: BrickRow): string | undefined {
  return row.sure < row.possible ? (row.ends?.words ?? row.look) : undefined;
}

function drawRow(
  { pen }: Stage,
  line: BrickLine,
  row: BrickRow,
  { worth }: BrickRows,
  y: number,
  empty: boolean,
): void {
  const { palette } = pen;
  const edge = screenLines.track;
  const half = edge / 2;
  const box = (x: number, width: number, look: Parameters<typeof pen.rect>[4]) =>
    pen.rect(x + half, y + half, Math.max(0.1, width - edge), BRICK.high - edge, { width: edge, ...look });
  for (let i = 0; i < line.count; i++) {
    const { sure, possible, whole } = partsOf(row, worth, i);
    if (whole <= 0) continue;
    const [x, w] = [line.x(i), line.width];
    if (empty) {
      box(x, w * whole, { fill: palette.paper, edge: palette.ink });
      continue;
    }
    if (possible < whole && (whole - possible) * w > edge)
      box(x + w * possible, w * (whole - possible), { edge: palette.hair, dash: dashes.goneOnScreen });
    if (possible > sure) {
      const [from, wide] = [x + w * sure, w * (possible - sure)];
      pen.rect(from, y, wide, BRICK.high, { fill: wide > edge ? palette.paper : palette.ink });
      if (wide > edge) {
        pen.hatch(from, y, wide, BRICK.high);
        box(from, wide, { edge: palette.ink });
      }
    }
    if (sure > 0) pen.rect(x, y, w * sure, BRICK.high, { fill: palette.ink });
  }
  pen.take(line.x(0), y, line.edge(row.total / worth, 'end') - line.x(0), BRICK.high, 'the bricks');
}

/** The row's name with its amount, or with the range over the bracket of what is not sure. */
function drawWords(
  { pen, width }: Stage,
  line: BrickLine,
  row: BrickRow,
  { worth }: BrickRows,
  y: number,
  blank: boolean,
): void {
  const start = line.x(0);
  const name = pen.set(row.name, screenType.name);
  pen.put(name, start, y - NAME_UP);
  const nameEnd = start + name.width;
  const range = blank ? undefined : rangeOf(row);
  if (range === undefined) {
    if (blank || row.note === '') return;
    const note = pen.set(row.note, { ...screenType.name, weight: 800 });
    pen.put(note, nameEnd + 16, y - NAME_UP);
    return;
  }
  const low = line.edge(row.sure / worth, 'start');
  const high = line.edge(row.possible / worth, 'end');
  const color = row.look === undefined ? pen.palette.ink : pen.palette.accent;
  const top = y - LIFT - BRICK.high - 25;
  pen.poly(
    [
      [low, top + 18],
      [low, top],
      [high, top],
      [high, top + 18],
    ],
    { edge: color, width: screenLines.shelf },
  );
  const words = pen.set(range, { ...screenType.result, color });
  // Over the middle of the bracket, unless the stage ends or the name stands there.
  const least = nameEnd + 28 + words.width / 2;
  const middle = Math.min(Math.max((low + high) / 2, least), width - words.width / 2);
  pen.put(words, middle, top - 18, 'middle');
}
