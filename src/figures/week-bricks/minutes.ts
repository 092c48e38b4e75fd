import type { Problem } from '../../diagnostics/index.js';
import { figureProblem } from '../problems.js';
import type { CountedMinutes, WeekBricks } from '../spec.js';

/** One brick is ten minutes that count. */
export const BRICK_MINUTES = 10;
/** The sum's row ends at 300 minutes. */
export const SUM_BRICKS = 30;
/** Empty bricks a day on a sheet to fill in. */
export const BLANK_BRICKS = 6;
/** A day of more than four hours that count has no room in a column. */
const MOST_BRICKS = 24;

/** How a brick looks: of moderate minutes, of vigorous ones, or to be filled. */
export type BrickKind = 'moderate' | 'vigorous' | 'empty';

/** A stretch of one brick in one look: from where to where, as shares of the brick from 0 to 1. */
export interface Stretch {
  readonly brick: number;
  readonly from: number;
  readonly to: number;
  readonly kind: BrickKind;
}

/** Minutes as stretches of bricks, moderate ones first, at most so many bricks. */
export function stretchesOf({ moderate, vigorous }: CountedMinutes, most: number): Stretch[] {
  const ends = [
    { kind: 'moderate', from: 0, to: moderate },
    { kind: 'vigorous', from: moderate, to: moderate + vigorous },
  ] as const;
  return ends.flatMap(({ kind, from, to }) => {
    const [start, end] = [from / BRICK_MINUTES, Math.min(most, to / BRICK_MINUTES)];
    const first = Math.floor(start + 1e-9);
    const count = Math.max(0, Math.ceil(end - 1e-9) - first);
    return Array.from({ length: count }, (_, i): Stretch => {
      const brick = first + i;
      return { brick, from: Math.max(0, start - brick), to: Math.min(1, end - brick), kind };
    });
  });
}

export function emptyBricks(count: number): Stretch[] {
  return Array.from({ length: count }, (_, brick) => ({ brick, from: 0, to: 1, kind: 'empty' as const }));
}

/** Bricks of the highest column. */
export function highest({ mode, days }: WeekBricks): number {
  if (mode === 'blank') return BLANK_BRICKS;
  return Math.max(
    1,
    ...days.map(({ moderate, vigorous }) => Math.ceil((moderate + vigorous) / BRICK_MINUTES - 1e-9)),
  );
}

/** The same figure with minutes that can be drawn; each that cannot is a problem. */
export function drawableWeek(spec: WeekBricks, problems: Problem[]): WeekBricks {
  const sound = (value: number) => Number.isFinite(value) && value >= 0;
  const days = spec.days.map((day) => {
    if (sound(day.moderate) && sound(day.vigorous)) {
      if (day.moderate + day.vigorous <= MOST_BRICKS * BRICK_MINUTES) return day;
      problems.push(
        figureProblem(
          'figures/too-many',
          `In figure “${spec.id}”, ${day.text} on ${day.name} are too many bricks.`,
          {
            hint: `A day shows at most ${MOST_BRICKS * BRICK_MINUTES} minutes that count; spread them over the week.`,
            actual: String(day.moderate + day.vigorous),
          },
        ),
      );
    } else
      problems.push(
        figureProblem(
          'figures/not-drawable',
          `In figure “${spec.id}”, ${day.name} has ${day.moderate} and ${day.vigorous} minutes.`,
          {
            hint: 'Minutes are numbers from zero up.',
            actual: `${day.moderate} ${day.vigorous}`,
          },
        ),
      );
    return { ...day, moderate: 0, vigorous: 0 };
  });
  return { ...spec, days };
}
