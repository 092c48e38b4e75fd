import type { Problem } from '../../diagnostics/index.js';
import { figureProblem } from '../problems.js';
import type { BrickRow, BrickRows } from '../spec.js';

/** Bricks stand in fives, so that they can be counted at a glance. */
const GROUP = 5;

/** A line of bricks of one width. */
export interface BrickLine {
  readonly count: number;
  readonly width: number;
  /** Where brick i starts, from 0. */
  readonly x: (brick: number) => number;
  /**
   * Where an amount, counted in bricks, ends or starts. On the border of two bricks that is the end of
   * the first (`end`) or the start of the second.
   */
  readonly edge: (amount: number, side: 'start' | 'end') => number;
}

export interface BrickRoom {
  readonly from: number;
  readonly to: number;
  readonly gap: number;
  /** More room after each fifth brick. */
  readonly more: number;
  /** Bricks are never wider than this. */
  readonly widest?: number;
}

/** So many bricks side by side over the room there is. */
export function layBricks(count: number, { from, to, gap, more, widest }: BrickRoom): BrickLine {
  const groups = Math.floor((count - 1) / GROUP);
  const free = to - from - (count - 1) * gap - groups * more;
  const width = Math.min(widest ?? Number.POSITIVE_INFINITY, free / count);
  const x = (brick: number) => from + brick * (width + gap) + Math.floor(brick / GROUP) * more;
  return {
    count,
    width,
    x,
    edge: (amount, side) => {
      const whole = side === 'start' ? Math.floor(amount + 1e-9) : Math.ceil(amount - 1e-9) - 1;
      const brick = Math.min(count - 1, Math.max(0, whole));
      return x(brick) + Math.min(1, Math.max(0, amount - brick)) * width;
    },
  };
}

/** How one brick is parted, from 0 to 1 of its width; `whole` is where it ends, less than 1 for a cut one. */
export interface BrickParts {
  readonly sure: number;
  readonly possible: number;
  readonly whole: number;
}

export function partsOf(row: BrickRow, worth: number, brick: number): BrickParts {
  const share = (amount: number) => Math.min(1, Math.max(0, amount / worth - brick));
  return { sure: share(row.sure), possible: share(row.possible), whole: share(row.total) };
}

/** How many bricks the longest row needs; at least one. */
export function countBricks({ rows, worth }: BrickRows): number {
  return Math.max(1, ...rows.map(({ total }) => Math.ceil(total / worth - 1e-9)));
}

/** The same figure with amounts that can be drawn; each that cannot is a problem. */
export function drawableRows(spec: BrickRows, problems: Problem[]): BrickRows {
  const wrong = (message: string, actual: number) =>
    problems.push(
      figureProblem('figures/not-drawable', `In figure “${spec.id}”, ${message}.`, {
        hint: 'Bricks count from zero: what is sure, then what may be there, then the whole.',
        actual: String(actual),
      }),
    );
  const sound = (value: number) => Number.isFinite(value) && value >= 0;
  let { worth } = spec;
  if (!(Number.isFinite(worth) && worth > 0)) {
    wrong(`a brick is worth ${worth}`, worth);
    worth = 1;
  }
  const rows = spec.rows.filter((row) => {
    const inOrder = row.sure <= row.possible && row.possible <= row.total;
    if (sound(row.sure) && sound(row.possible) && sound(row.total) && inOrder) return true;
    wrong(`“${row.name}” has ${row.sure}, ${row.possible} and ${row.total}`, row.total);
    return false;
  });
  return { ...spec, worth, rows };
}

/** What a brick would have to be worth so that bricks are wide enough: the next of 1, 2, 5, 10 … */
export function worthThatFits(spec: BrickRows, most: number): number {
  const longest = Math.max(...spec.rows.map((r) => r.total));
  const least = longest / Math.max(1, most);
  const power = 10 ** Math.floor(Math.log10(least));
  return ([1, 2, 2.5, 5, 10].find((step) => step * power >= least - 1e-9) ?? 10) * power;
}

/** The first row of a blank sheet is what is given, when nothing of it is in doubt; the others are asked for. */
export function isGiven(row: BrickRow, index: number): boolean {
  return index === 0 && row.sure === row.total;
}
