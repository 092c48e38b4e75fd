import type { Place } from '../diagnostics/index.js';

/**
 * Boxes down the page. A section's head stands in the rail beside the first boxes of its text, so a
 * page has two depths: how far the column is filled, and how far the rail is.
 */
export interface Box<Page> {
  readonly height: number;
  /** Space above; left out at the top of a page. */
  readonly before: number;
  /**
   * Whether the next box stands on the same page: `must` for a head or a line that would be left
   * alone, `wish` for what is read as one thing and is parted only if no page can hold it.
   */
  readonly keep: false | 'wish' | 'must';
  /** How much a page break right above this box hurts; 0 above a section, more inside it. */
  readonly cost: number;
  /** Starts a section with a rule of its own, also at the top of a page. */
  readonly opens?: boolean;
  /** A head in the rail: how far down from the box's top it reaches. */
  readonly railUntil?: number;
  /** From where down, counted from the box's top, this box needs the rail. Absent: it never does. */
  readonly railFrom?: number;
  /** What stands above this box once more when a page starts with it: a table's header row. */
  readonly again?: { readonly height: number; paint(page: Page, top: number): void };
  /** Where what it shows stands in the source, for problems. */
  readonly place?: Place;
  paint(page: Page, top: number): void;
}

/** Height of each page's body in points, the space below a continued page's opening included. */
export interface Room<Page> {
  readonly height: number;
  /** Drawn at the top of a page that starts in the middle of a section. */
  readonly opening: { readonly height: number; paint(page: Page, top: number): void };
}

export interface Placed<Page> {
  readonly box: Box<Page>;
  /** From the top of the body. */
  readonly top: number;
}

export interface PlacedPage<Page> {
  readonly boxes: readonly Placed<Page>[];
  readonly openings: readonly { readonly top: number; paint(page: Page, top: number): void }[];
  /** How deep the page is filled, column or rail. */
  readonly depth: number;
  /** True when what may not be split is taller than the page. */
  readonly over: boolean;
}

export interface Flow<Page> {
  readonly pages: readonly PlacedPage<Page>[];
  /** How far from even and whole the pages are; their number does not count. */
  readonly cost: number;
}

/** A page costs more than any break, so breaks never add a page. */
const PAGE_COST = 1e6;
const OVER_COST = 1e15;
/** Parting what is kept together is worth any number of pages. */
const FORCED_COST = 1e12;
/** Three eighths of a page left empty hurt as much as a break between two paragraphs. */
const EMPTY_COST = 200;

/**
 * Breaks boxes into pages: the fewest pages first, then the least cost of breaks and of empty space
 * on all pages but the last. Kept boxes that are taller than a page together are parted all the same;
 * a single box that is stands on a page that says so. Nothing is dropped.
 */
export function breakPages<Page>(boxes: readonly Box<Page>[], room: Room<Page>): Flow<Page> {
  if (boxes.length === 0) return { pages: [], cost: 0 };
  const best: Choice[] = new Array(boxes.length + 1);
  best[boxes.length] = { cost: 0, end: boxes.length };
  for (let start = boxes.length - 1; start >= 0; start -= 1) {
    best[start] = bestEnd(start);
  }
  const pages: PlacedPage<Page>[] = [];
  for (let start = 0; start < boxes.length; ) {
    const end = best[start]?.end ?? boxes.length;
    pages.push(fill(boxes, start, end, room));
    start = end;
  }
  return { pages, cost: (best[0]?.cost ?? 0) - pages.length * PAGE_COST };

  function bestEnd(start: number): Choice {
    let choice: Choice | undefined;
    let forced: Choice | undefined;
    for (const { index, depth } of walk(boxes, start, room)) {
      const end = index + 1;
      const after = best[end]?.cost ?? 0;
      if (depth > room.height + 0.01) {
        // Not even the first box fits: it stands here alone.
        if (index === start) return { cost: OVER_COST + PAGE_COST + after, end };
        break;
      }
      const breakCost = boxes[end]?.cost ?? 0;
      const empty = end === boxes.length ? 0 : 1 - depth / room.height;
      const cost = PAGE_COST + breakCost + EMPTY_COST * empty ** 2 + after;
      if (boxes[index]?.keep && end < boxes.length) {
        // Kept boxes that are more than a page holds are parted at a wish, as late as can be.
        const atMust = boxes[(forced?.end ?? 0) - 1]?.keep === 'must';
        if (!forced || atMust || boxes[index]?.keep === 'wish') forced = { cost: cost + FORCED_COST, end };
      } else if (!choice || cost <= choice.cost) choice = { cost, end };
    }
    return choice ?? forced ?? { cost: OVER_COST, end: boxes.length };
  }
}

/** The best end of a page that starts at a box, and what it and all pages after it cost. */
interface Choice {
  readonly cost: number;
  readonly end: number;
}

interface Step {
  readonly index: number;
  readonly top: number;
  /** Column or rail, whichever is deeper. */
  readonly depth: number;
}

/** Sets boxes one below the other from the top of a page, as long as somebody asks. */
function* walk<Page>(boxes: readonly Box<Page>[], start: number, room: Room<Page>): Generator<Step> {
  let column = openingHeight(boxes, start, room);
  let rail = 0;
  for (let index = start; index < boxes.length; index += 1) {
    const box = boxes[index];
    if (!box) return;
    const before = index === start ? 0 : box.before;
    let top = column + before;
    if (box.railFrom !== undefined && rail > 0) top = Math.max(top, rail + before - box.railFrom);
    column = top + box.height;
    if (box.railFrom !== undefined) rail = 0;
    if (box.railUntil !== undefined) rail = top + box.railUntil;
    yield { index, top, depth: Math.max(column, rail) };
  }
}

function openingHeight<Page>(boxes: readonly Box<Page>[], start: number, room: Room<Page>): number {
  const first = boxes[start];
  if (start === 0) return 0;
  return (first?.opens ? 0 : room.opening.height) + (first?.again?.height ?? 0);
}

function fill<Page>(
  boxes: readonly Box<Page>[],
  start: number,
  end: number,
  room: Room<Page>,
): PlacedPage<Page> {
  const placed: Placed<Page>[] = [];
  const openings: { top: number; paint(page: Page, top: number): void }[] = [];
  const first = boxes[start];
  if (start > 0) {
    let top = 0;
    if (!first?.opens) {
      openings.push({ top, paint: room.opening.paint });
      top += room.opening.height;
    }
    if (first?.again) openings.push({ top, paint: first.again.paint });
  }
  let depth = 0;
  for (const step of walk(boxes, start, room)) {
    if (step.index >= end) break;
    const box = boxes[step.index];
    if (box) placed.push({ box, top: step.top });
    depth = step.depth;
  }
  return { boxes: placed, openings, depth, over: depth > room.height + 0.01 };
}
