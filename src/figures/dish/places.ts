import type { DishCounters, DishShape } from '../spec.js';

/** Counters in each row, from the top. */
export const ROWS: Readonly<Record<DishShape, readonly number[]>> = {
  bowl: [2, 4, 4, 2],
  plate: [2, 4, 4, 2],
  tray: [3, 3, 3, 3],
  'lunch-box': [3, 3, 3, 3],
  'shared-pot': [3, 3, 3, 3],
};
export const COUNTERS = 12;

/** A counter's place: its row from the top, and its middle in pitches from the middle of the dish. */
export interface Place {
  readonly row: number;
  readonly x: number;
  readonly y: number;
  /** At which end of its row it stands. */
  readonly end?: 'start' | 'end';
}

/** A counter with the member (a food or a kind) that it belongs to; none when it is empty. */
export interface Placed extends Place {
  readonly member?: number;
}

/** The end of a row to which a member's words lead. */
export interface Lead {
  readonly member: number;
  readonly at: Place;
}

export interface Laid {
  readonly counters: readonly Placed[];
  /** One for each member that has a counter, or nothing when some would have no end of a row. */
  readonly leads?: readonly Lead[];
}

/** All twelve places, row by row from the top. */
export function placesOf(shape: DishShape): Place[] {
  return ROWS[shape].flatMap((count, row) =>
    Array.from({ length: count }, (_, i): Place => {
      const end = i === 0 ? 'start' : i === count - 1 ? 'end' : undefined;
      return { row, x: i - (count - 1) / 2, y: row - 1.5, ...(end ? { end } : {}) };
    }),
  );
}

/**
 * Fills the dish from the lowest row upward, each row from its reading end. Then each member gets an end of a row to
 * which its words lead, on the given sides; in a row shared by several the counters change places for it.
 */
export function layDish(
  shape: DishShape,
  parts: readonly number[],
  sides: readonly ('start' | 'end')[],
  rows: readonly number[] = [0, 1, 2, 3],
): Laid {
  const fill = parts
    .flatMap((count, member) => Array.from({ length: count }, () => member))
    .slice(0, COUNTERS);
  const held: number[][] = [];
  let from = 0;
  for (let row = 3; row >= 0; row--) {
    const count = ROWS[shape][row] ?? 0;
    held[row] = fill.slice(from, from + count);
    from += count;
  }
  const places = placesOf(shape);
  const members = parts.flatMap((count, member) => (count > 0 ? [member] : []));
  const ends = rows.flatMap((row) => sides.map((side) => ({ row, side })));
  const taken = match(members, ends, ({ row }, member) => held[row]?.includes(member) === true);
  const counters = places.map((place): Placed => {
    const row = ordered(place.row);
    const inRow = places.filter((one) => one.row === place.row);
    // Rows are filled from their reading end.
    const member = row[inRow.length - 1 - inRow.indexOf(place)];
    return member === undefined ? place : { ...place, member };
  });
  function ordered(row: number): readonly number[] {
    const has = held[row] ?? [];
    const at = (side: 'start' | 'end') =>
      taken?.find((one) => one.end.row === row && one.end.side === side)?.member;
    const [last, first] = [at('end'), at('start')];
    const rank = (member: number) => (member === last ? 0 : member === first ? 2 : 1);
    return has.toSorted((a, b) => rank(a) - rank(b));
  }
  const leads = taken?.flatMap(({ member, end }) => {
    const at = places.find((one) => one.row === end.row && one.end === end.side);
    return at ? [{ member, at }] : [];
  });
  return leads ? { counters, leads } : { counters };
}

interface End {
  readonly row: number;
  readonly side: 'start' | 'end';
}

/** An end for each member, none for two of them; nothing where there are too few. */
function match(
  members: readonly number[],
  ends: readonly End[],
  fits: (end: End, member: number) => boolean,
): { readonly member: number; readonly end: End }[] | undefined {
  const owner = new Map<End, number>();
  const place = (member: number, seen: Set<End>): boolean => {
    for (const end of ends) {
      if (seen.has(end) || !fits(end, member)) continue;
      seen.add(end);
      const before = owner.get(end);
      if (before === undefined || place(before, seen)) {
        owner.set(end, member);
        return true;
      }
    }
    return false;
  };
  if (!members.every((member) => place(member, new Set()))) return undefined;
  return [...owner].map(([end, member]) => ({ member, end })).toSorted((a, b) => a.member - b.member);
}

/** The foods of a dish as they lie in its counters, when no words lead to them. */
export function lieIn(shape: DishShape, foods: readonly DishCounters[]): readonly Placed[] {
  return layDish(
    shape,
    foods.map(({ parts }) => parts),
    [],
  ).counters;
}
