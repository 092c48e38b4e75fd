/** A month of the model is a twelfth of 365 days. */
const DAYS_A_YEAR = 365;
const MONTHS_A_YEAR = 12;

export function monthOfDay(day: number): number {
  return (day / DAYS_A_YEAR) * MONTHS_A_YEAR;
}

/**
 * The months with a post: early, at a year, at the end, never so near each other that their words would meet. A band
 * that stops has its last post where it stops, which is not among these. House rule.
 */
export function postMonths(months: number, stopsAt?: number): number[] {
  const early = months <= 12 ? [3, 6] : months <= 24 ? [6, 12] : [12, 24];
  const end = stopsAt ?? months;
  const kept = early.filter((month) => month <= end - months / 3 && month >= months / 5);
  return stopsAt === undefined ? [...kept, months] : kept;
}

const STEPS = [1, 2, 5, 10, 20, 50, 100];
/** Room below the band for its words; more where words about the stop stand there. */
const ROOM = { plain: 1.18, stopped: 2 };
const MOST_MARKS = 5;

/** Round marks down the axis, of which the last lies clearly below the band. */
export function marksFor(most: number, stopped: boolean): number[] {
  const foot = Math.max(most, 0.5) * (stopped ? ROOM.stopped : ROOM.plain);
  const step = STEPS.find((one) => foot / one <= MOST_MARKS) ?? 100;
  return Array.from({ length: Math.ceil(foot / step) }, (_, index) => (index + 1) * step);
}
