/** Something of a row that reaches above or below its middle line, over a stretch of it. */
export interface Reach {
  readonly from: number;
  readonly to: number;
  readonly by: number;
}

export interface Skyline {
  readonly up: readonly Reach[];
  readonly down: readonly Reach[];
}

/** Room that is kept between things of two rows; sideways and up and down. */
export interface Clearance {
  readonly across: number;
  readonly down: number;
}

/**
 * The least distance between the middle lines of two rows at which nothing of one comes near the other:
 * what hangs below the first may stand beside what stands above the second.
 */
export function leastDistance(first: Skyline, second: Skyline, { across, down }: Clearance): number {
  const alone = [...first.down, ...second.up].reduce((most, r) => Math.max(most, r.by), 0);
  let least = alone + down;
  for (const a of first.down)
    for (const b of second.up)
      if (a.from < b.to + across && b.from < a.to + across) least = Math.max(least, a.by + b.by + down);
  return least;
}

export const tallest = (reaches: readonly Reach[]): number =>
  reaches.reduce((most, r) => Math.max(most, r.by), 0);
