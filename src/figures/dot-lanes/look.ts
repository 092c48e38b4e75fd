import type { Line } from '../../text/index.js';
import { drawArrow } from '../arrow.js';
import type { TextInk } from '../drawing.js';
import type { Pen } from '../pen.js';
import type { Lane } from '../spec.js';
import { CAP_HEIGHT } from '../tokens.js';
import type { AlongLane, LaneFrame, LookSizes, PlacedDot } from './lane.js';

/** Arrows shorter than so many heads have no shaft to speak of. */
const SHORTEST = 1.4;

/**
 * How the one move worth seeing is shown: an arrow in the lane from dot to dot, or a bracket from
 * below where they stand too near, with its word between the two values, after the bracket or under the
 * lane; where one of the two hangs, the word stands after its value. `bad` when there is no free place for the word.
 */
export interface LookPlan {
  readonly word: Line<TextInk>;
  readonly sign: 'arrow' | 'bracket' | 'none';
  readonly from: number;
  readonly to: number;
  readonly place: 'between' | 'under' | 'beside' | 'side';
  /** Middle of the word. */
  readonly middle: number;
  /** Under the lane: room that hanging dots take before the word. */
  readonly below: number;
  /** How far it all reaches below the edge of the track. */
  readonly depth: number;
  readonly bad: boolean;
}

export function planLook(
  pen: Pen,
  lane: Lane,
  dots: readonly AlongLane[],
  sizes: LookSizes,
  room: { readonly start: number; readonly end: number },
): LookPlan | undefined {
  const look = lane.look;
  const from = dots.find((p) => p.dot.letter === look?.from);
  const to = dots.find((p) => p.dot.letter === look?.to);
  if (!look || !from || !to || from === to) return undefined;
  const word = pen.set(look.word, { ...sizes.label, weight: 700, color: pen.palette.accent });
  const common = {
    word,
    from: from.x,
    to: to.x,
    below: 0,
    depth: 0,
    bad: word.width > room.end - room.start,
  };
  const hung = [from, to].filter((p) => p.tier > 0);
  const after = hung.length > 0 ? beside(hung, dots, word, sizes, room) : undefined;
  if (after !== undefined) return { ...common, sign: 'none', place: 'beside', middle: after };
  const [a, b] = [Math.min(from.x, to.x), Math.max(from.x, to.x)];
  const arrow = hung.length === 0 && b - a - 2 * sizes.radius - 2 * sizes.clear >= SHORTEST * sizes.head;
  const above = arrow ? between(dots, a, b, word.width, sizes.gap) : undefined;
  if (above !== undefined) return { ...common, sign: 'arrow', place: 'between', middle: above };
  const sign = arrow ? 'arrow' : hung.length > 0 ? 'none' : 'bracket';
  const side = sign === 'bracket' ? b + sizes.gap + word.width / 2 : undefined;
  if (side !== undefined && side + word.width / 2 <= room.end && !dots.some((p) => p.tier > 0)) {
    return { ...common, sign, place: 'side', middle: side, depth: sideDepth(sizes) };
  }
  const middle = Math.min(Math.max((a + b) / 2, room.start + word.width / 2), room.end - word.width / 2);
  const met = dots.filter((p) => p.tier > 0 && meets(p, middle, word.width, sizes));
  const below = Math.max(0, ...met.map((p) => p.tier)) * sizes.hang;
  return { ...common, sign, place: 'under', middle, below, depth: below + underDepth(sizes, sign) };
}

/** Whether a dot that hangs, or its value, stands over a word of this width. */
function meets(p: AlongLane, middle: number, width: number, { radius, gap }: LookSizes): boolean {
  const left = Math.min(p.x - radius, p.valueMiddle - p.valueWidth / 2);
  const right = Math.max(p.x + radius, p.valueMiddle + p.valueWidth / 2);
  return left < middle + width / 2 + gap && middle - width / 2 < right + gap;
}

/** After the lowest value of the pair, on the side away from its dot, where that is free. */
function beside(
  hung: readonly AlongLane[],
  dots: readonly AlongLane[],
  word: Line<TextInk>,
  sizes: LookSizes,
  room: { readonly start: number; readonly end: number },
): number | undefined {
  const last = hung.reduce((a, b) => (a.tier > b.tier ? a : b));
  const away = last.valueWidth / 2 + sizes.gap + word.width / 2;
  const middle = last.valueMiddle > last.x ? last.valueMiddle + away : last.valueMiddle - away;
  const others = dots.filter((p) => p !== last && p.tier === last.tier);
  const free = !others.some((p) => meets(p, middle, word.width, sizes));
  const inside = middle + word.width / 2 <= room.end && middle - word.width / 2 >= room.start;
  return free && inside ? middle : undefined;
}

/** The middle of the free stretch of the value line over the arrow, when the word fits into it. */
function between(
  dots: readonly AlongLane[],
  a: number,
  b: number,
  width: number,
  gap: number,
): number | undefined {
  let [low, high] = [a, b];
  for (const { tier, valueMiddle, valueWidth } of dots) {
    if (tier > 0) continue;
    if (valueMiddle <= (a + b) / 2) low = Math.max(low, valueMiddle + valueWidth / 2 + gap);
    else high = Math.min(high, valueMiddle - valueWidth / 2 - gap);
  }
  return high - low >= width ? (low + high) / 2 : undefined;
}

const bracketDepth = ({ head, line }: LookSizes) => 2 * line + head * 0.5;
const wordTop = ({ label }: LookSizes) => label.size * (CAP_HEIGHT + 0.14);

/** A word after a bracket stands on the bracket's own line. */
const sideBaseline = (sizes: LookSizes) => bracketDepth(sizes) + sizes.label.size * 0.34;
const sideDepth = (sizes: LookSizes) => sideBaseline(sizes) + sizes.label.size * 0.22;

function underDepth(sizes: LookSizes, sign: LookPlan['sign']): number {
  const top = sign === 'bracket' ? bracketDepth(sizes) : sizes.line;
  return top + wordTop(sizes) + sizes.label.size * 0.22;
}

/** Draws what was planned; the dots come on top of it. */
export function drawLook(plan: LookPlan, frame: LaneFrame, dots: readonly PlacedDot[]): void {
  const { pen, sizes, trackY, edge } = frame;
  const { radius, clear, head, line } = sizes;
  const [a, b] = [Math.min(plan.from, plan.to), Math.max(plan.from, plan.to)];
  if (plan.sign === 'arrow') {
    const half = line * 0.8;
    pen.rect(a + radius, trackY - half, b - a - 2 * radius, 2 * half, { fill: frame.ground });
    const reach = (radius + clear) * Math.sign(plan.to - plan.from);
    drawArrow(pen, { from: plan.from + reach, to: plan.to - reach, y: trackY, head, width: line });
  }
  if (plan.sign === 'bracket') {
    const [top, foot] = [edge + line, edge + line + head * 0.5];
    pen.poly(
      [
        [a, top],
        [a, foot],
        [b, foot],
        [b, top],
      ],
      { edge: pen.palette.accent, width: line },
    );
  }
  const under = edge + plan.below + (plan.sign === 'bracket' ? bracketDepth(sizes) : line) + wordTop(sizes);
  const pair = dots.filter((d) => d.tier > 0 && (d.x === plan.from || d.x === plan.to));
  const hung = pair.reduce((y, d) => Math.max(y, d.baseline), frame.valueBaseline);
  const side = edge + sideBaseline(sizes);
  const baseline = { between: frame.valueBaseline, under, beside: hung, side }[plan.place];
  pen.put(plan.word, plan.middle, baseline, 'middle');
}
