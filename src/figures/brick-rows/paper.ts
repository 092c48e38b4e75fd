import type { Problem } from '../../diagnostics/index.js';
import { mm } from '../geometry.js';
import type { Drawn, DrawOptions } from '../options.js';
import { figureProblem } from '../problems.js';
import { drawNames } from '../row-names.js';
import { createSheet, finish, outside, type Sheet } from '../sheet.js';
import type { BrickRow, BrickRows } from '../spec.js';
import { CAP_HEIGHT, dashes, paperLines } from '../tokens.js';
import {
  type BrickLine,
  countBricks,
  drawableRows,
  isGiven,
  layBricks,
  partsOf,
  worthThatFits,
} from './bricks.js';
import { drawKey, type WordPlace } from './key.js';

const ROUND = mm(0.5);
const NARROWEST = mm(3.6);
const GAP = mm(0.8);
const MORE = mm(1.2);
/** Narrower parts of a brick are drawn solid: their outline would fill them anyway. */
const SLIVER = mm(0.6);
const ASIDE = mm(1.4);

/** An amount counted in bricks, before and after, on paper. */
export function drawBricksOnPaper(given: BrickRows, options: DrawOptions): Drawn {
  const sheet = createSheet(options);
  const { pen, type, big } = sheet;
  const problems: Problem[] = [];
  const reject = (words: string) => problems.push(outside(given.id, words));
  const spec = drawableRows(given, problems);
  const blank = spec.mode === 'blank';
  const height = big ? sheet.slack(11, 13) : sheet.slack(8, 9.2);
  const count = countBricks(spec);
  const line = layBricks(count, { from: sheet.axis, to: pen.width, gap: GAP, more: MORE });
  if (line.width < NARROWEST) problems.push(narrow(spec, pen.width - sheet.axis));
  const noteLook = { ...type.label, weight: 400 } as const;
  let y = 0;
  let beside: WordPlace | undefined;
  for (const [index, row] of spec.rows.entries()) {
    const note = blank ? '' : row.note;
    const names = drawNames(sheet, { name: row.name, note }, reject, noteLook);
    const ends = !blank && row.ends && row.sure < row.possible ? row.ends : undefined;
    const gap = index === 0 && !ends ? 0.5 : rowGap(sheet, ends !== undefined);
    const endsTop = y;
    const top = sheet.rail ? Math.max(y + gap, y + names.above - height / 2) : y + gap + names.height;
    names.put(sheet.rail ? top + height / 2 : y + gap);
    drawRow(sheet, line, row, spec, top, height, blank && !isGiven(row, index));
    pen.take(line.x(0), top, line.edge(row.total / spec.worth, 'end') - line.x(0), height, 'the bricks');
    if (ends) drawEnds(sheet, line, row, spec.worth, ends, endsTop, sheet.rail ? top : y + gap);
    y = top + height;
    const word = !blank && row.look !== undefined && row.sure < row.possible ? row.look : undefined;
    beside = word === undefined ? undefined : drawBracket(sheet, line, row, spec.worth, y, word);
    y = beside?.bottom ?? y;
    if (sheet.rail) y = Math.max(y, top + height / 2 + names.below);
  }
  if (!blank) y = drawKey(sheet, spec, y, beside, reject);
  return finish(pen, spec.id, y + mm(0.5), problems);
}

/** Room above a row: for its two ends, or just to keep rows apart. */
function rowGap({ type, big, rail, slack }: Sheet, ends: boolean): number {
  if (!ends) return slack(3, big ? 5 : 4);
  return rail ? slack(8, big ? 10 : 9.4) : type.label.size * 1.6 + mm(1.5);
}

function narrow(spec: BrickRows, room: number): Problem {
  const most = Math.floor((room + GAP) / (NARROWEST + GAP + MORE / 5));
  const worth = worthThatFits(spec, most);
  return figureProblem(
    'figures/bricks-too-narrow',
    `In figure “${spec.id}”, ${countBricks(spec)} bricks are too narrow to count; ${most} fit.`,
    {
      hint: `Let one brick be worth ${worth} or more.`,
      actual: String(spec.worth),
      expected: [String(worth)],
    },
  );
}

/** One row: what is sure, what may be there, what is gone; or empty bricks to fill. */
function drawRow(
  { pen, one }: Sheet,
  line: BrickLine,
  row: BrickRow,
  { worth }: BrickRows,
  y: number,
  height: number,
  empty: boolean,
): void {
  const { palette } = pen;
  for (let i = 0; i < line.count; i++) {
    const { sure, possible, whole } = partsOf(row, worth, i);
    if (whole <= 0) continue;
    const x = line.x(i);
    const w = line.width;
    const inset = paperLines.line / 2;
    if (empty) {
      pen.rect(x + inset, y + inset, w * whole - 2 * inset, height - 2 * inset, {
        fill: palette.paper,
        edge: palette.ink,
        width: paperLines.line,
        radius: ROUND,
      });
      continue;
    }
    if (possible < whole && (whole - possible) * w > SLIVER) {
      const edge = paperLines.hair / 2;
      pen.rect(x + w * possible + edge, y + edge, w * (whole - possible) - 2 * edge, height - 2 * edge, {
        edge: palette.hair,
        width: paperLines.hair,
        dash: one ? dashes.gone.one : dashes.gone.color,
        radius: possible === 0 ? ROUND : 0,
      });
    }
    if (possible > sure) {
      const [from, wide] = [x + w * sure, w * (possible - sure)];
      if (wide > SLIVER) {
        pen.rect(from, y, wide, height, { fill: palette.paper });
        pen.hatch(from, y, wide, height);
        pen.rect(from + inset, y + inset, wide - 2 * inset, height - 2 * inset, {
          edge: palette.ink,
          width: paperLines.line,
        });
      } else pen.rect(from, y, wide, height, { fill: palette.ink });
    }
    if (sure > 0) pen.rect(x, y, w * sure, height, { fill: palette.ink, radius: sure === whole ? ROUND : 0 });
  }
}

/** Two lines down to where the unsure part begins and ends, each with its number beside it. */
function drawEnds(
  { pen, type }: Sheet,
  line: BrickLine,
  row: BrickRow,
  worth: number,
  ends: NonNullable<BrickRow['ends']>,
  top: number,
  bottom: number,
): void {
  const low = line.edge(row.sure / worth, 'start');
  const high = line.edge(row.possible / worth, 'end');
  for (const x of [low, high]) pen.line(x, top + mm(0.6), x, bottom - mm(0.6), { width: paperLines.line });
  const baseline = (top + bottom) / 2 + (type.label.size * CAP_HEIGHT) / 2;
  const lowest = pen.set(ends.low, type.label);
  const highest = pen.set(ends.high, type.label);
  const lowFits = low - ASIDE - lowest.width >= 0;
  pen.put(lowest, lowFits ? low - ASIDE : low + ASIDE, baseline, lowFits ? 'end' : 'start');
  const highFits = high + ASIDE + highest.width <= pen.width;
  pen.put(highest, highFits ? high + ASIDE : high - ASIDE, baseline, highFits ? 'start' : 'end');
}

/** Look here: a bracket under the unsure part and its word. Returns where its word stands. */
function drawBracket(
  { pen, type }: Sheet,
  line: BrickLine,
  row: BrickRow,
  worth: number,
  y: number,
  words: string,
): WordPlace {
  const low = line.edge(row.sure / worth, 'start');
  const high = line.edge(row.possible / worth, 'end');
  const [top, foot] = [y + mm(1.4), y + mm(3.8)];
  pen.poly(
    [
      [low, top],
      [low, foot],
      [high, foot],
      [high, top],
    ],
    { edge: pen.palette.accent, width: paperLines.bold },
  );
  const word = pen.set(words, { ...type.label, weight: 700, color: pen.palette.accent });
  const middle = Math.min(Math.max((low + high) / 2, word.width / 2), pen.width - word.width / 2);
  const baseline = foot + mm(1.6) + type.label.size * 0.74;
  pen.put(word, middle, baseline, 'middle');
  return { from: middle - word.width / 2, baseline, bottom: baseline + type.label.size * 0.22 };
}
