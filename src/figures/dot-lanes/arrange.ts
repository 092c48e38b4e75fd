// Where things stand along a lane. Pure arithmetic; all lengths are in the drawing's unit.

/** Ends of scales, times a power of ten: round enough to be found by eye, close enough to waste no room. */
const ROUND = [1, 1.2, 1.5, 1.8, 2, 2.5, 3, 3.5, 4, 4.5, 5, 6, 7, 8, 9, 10];

/** The end of a lane's scale, which starts at zero: the next round number above all values; 1 if all are zero. */
export function scaleEnd(values: readonly number[]): number {
  const highest = Math.max(0, ...values);
  if (!(highest > 0)) return 1;
  const power = 10 ** Math.floor(Math.log10(highest));
  const end = ROUND.find((r) => r * power >= highest * 1.02) ?? 12;
  return end * power;
}

/** Something with a middle and a width on a line. */
export interface Label {
  readonly middle: number;
  readonly width: number;
}

/**
 * Middles of labels, in the order given, moved as little as possible (least squares, so that two that
 * collide move apart equally) until all are `gap` apart and within `low` and `high`. The labels must
 * come in the order of their middles. `undefined` when they are wider together than the room.
 */
export function spread(
  labels: readonly Label[],
  gap: number,
  low: number,
  high: number,
): readonly number[] | undefined {
  let before = 0;
  // With what stands before each label taken off, "apart" means "not falling": a monotone regression.
  const offsets = labels.map(({ width }) => {
    const offset = before + width / 2;
    before += width + gap;
    return offset;
  });
  const highest = high - (before - gap);
  if (labels.length > 0 && highest < low - 1e-9) return undefined;
  const blocks: { sum: number; count: number }[] = [];
  for (const [i, { middle }] of labels.entries()) {
    let block = { sum: middle - (offsets[i] ?? 0), count: 1 };
    for (
      let last = blocks.at(-1);
      last && last.sum / last.count > block.sum / block.count;
      last = blocks.at(-1)
    ) {
      blocks.pop();
      block = { sum: last.sum + block.sum, count: last.count + block.count };
    }
    blocks.push(block);
  }
  const levels = blocks.flatMap(({ sum, count }) =>
    Array.from({ length: count }, () => Math.min(highest, Math.max(low, sum / count))),
  );
  return levels.map((level, i) => level + (offsets[i] ?? 0));
}

/** A dot on a lane, in the order of the values. */
export interface LanePoint {
  readonly x: number;
  /** Of its value as printed. */
  readonly width: number;
  /** Half of what stands there, where that is not one dot of the usual radius. */
  readonly half?: number;
}

export interface LaneRoom {
  readonly radius: number;
  /** Least room between two dots on the track. */
  readonly apart: number;
  /** Least room between two values. */
  readonly gap: number;
  /** From a hanging dot's edge to its value. */
  readonly beside: number;
  /** Where values may start and end. */
  readonly low: number;
  readonly high: number;
}

export interface LanePlace {
  /** 0 stands on the track; 1, 2 … hang below it on a stem. */
  readonly tier: number;
  /** Middle of the value: above the dot at tier 0, beside it below. */
  readonly middle: number;
}

/**
 * Places dots and their values. Dots too near to their neighbor hang below it, each in the first tier
 * where it touches nothing; a value that would have to leave its dot behind to stay clear of others
 * makes its dot hang as well. `undefined` when there is no room at all.
 */
export function arrangeLane(points: readonly LanePoint[], room: LaneRoom): readonly LanePlace[] | undefined {
  const hung = new Set<number>();
  let edge = Number.NEGATIVE_INFINITY;
  for (const [i, { x, half = room.radius }] of points.entries()) {
    if (x - half < edge + room.apart) hung.add(i);
    else edge = x + half;
  }
  for (;;) {
    const top = points.map((p, i) => ({ ...p, i })).filter(({ i }) => !hung.has(i));
    const labels = top.map(({ x, width }) => ({ middle: x, width }));
    const middles = spread(labels, room.gap, room.low, room.high);
    // A value must still cover the middle of its dot; otherwise the second of the two next to each
    // other hangs, since the first has no neighbor before it to run into.
    const lost = middles ? labels.findIndex((l, k) => isLost(l, middles[k] ?? l.middle, room)) : 1;
    const out = top[lost < 0 ? -1 : Math.max(1, Math.min(lost, top.length - 1))] ?? undefined;
    if (middles && (lost < 0 || !out)) return hang(points, hung, top, middles, room);
    if (!out) return undefined;
    hung.add(out.i);
  }
}

function isLost({ middle, width }: Label, moved: number, { low, high, radius }: LaneRoom): boolean {
  // What the ends of the room push back is not lost: the dot itself stands at the end.
  const free = Math.min(high - width / 2, Math.max(low + width / 2, middle));
  return Math.abs(moved - free) > Math.max(width / 2, radius);
}

interface Span {
  readonly from: number;
  readonly to: number;
}

/**
 * Hangs dots with their values all on one side. Those farther to that side hang higher, so that no
 * stem runs through a value. `undefined` when a value would leave the room or meet a stem.
 */
function hangAt(
  side: 'end' | 'start',
  points: readonly LanePoint[],
  hung: readonly number[],
  room: LaneRoom,
): ReadonlyMap<number, LanePlace> | undefined {
  const { beside, gap, low, high } = room;
  const places = new Map<number, LanePlace>();
  const dots: Span[][] = [];
  const values: Span[][] = [];
  const clash = (spans: readonly Span[] | undefined, from: number, to: number, keep: number) =>
    (spans ?? []).some((s) => from < s.to + keep && s.from < to + keep);
  for (const i of side === 'end' ? [...hung].reverse() : hung) {
    const point = points[i];
    if (!point) continue;
    const { x, width } = point;
    const radius = point.half ?? room.radius;
    const from = side === 'end' ? x + radius + beside : x - radius - beside - width;
    const to = from + width;
    if (from < low || to > high) return undefined;
    let tier = 1;
    const meets = () =>
      clash(dots[tier], x - radius, x + radius, room.apart) ||
      clash(values[tier], x - radius, x + radius, beside) ||
      clash(dots[tier], from, to, beside) ||
      clash(values[tier], from, to, gap);
    while (meets()) {
      // The stem goes on down; it may pass behind a dot, never through a value.
      if (clash(values[tier], x, x, beside)) return undefined;
      tier++;
    }
    dots[tier] = [...(dots[tier] ?? []), { from: x - radius, to: x + radius }];
    values[tier] = [...(values[tier] ?? []), { from, to }];
    places.set(i, { tier, middle: (from + to) / 2 });
  }
  return places;
}

function hang(
  points: readonly LanePoint[],
  hung: ReadonlySet<number>,
  top: readonly { readonly i: number }[],
  middles: readonly number[],
  room: LaneRoom,
): readonly LanePlace[] | undefined {
  const order = [...hung].sort((a, b) => a - b);
  const below = hangAt('end', points, order, room) ?? hangAt('start', points, order, room);
  if (!below) return undefined;
  const above = new Map(
    top.map(({ i }, k): [number, LanePlace] => [i, { tier: 0, middle: middles[k] ?? 0 }]),
  );
  return points.map((_, i) => below.get(i) ?? above.get(i) ?? { tier: 0, middle: 0 });
}
