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
 * below where they stand too near, with its word between the two values or under the lane; where one
 * of the two hangs, the word stands after its value. `bad` when there is no free place for the word.
 */
export interface LookPlan {
  readonly word: Line<TextInk>;
  readonly sign: 'arrow' | 'bracket' | 'none';
  readonly from: number;
  readonly to: number;
  readonly place: 'between' | 'under' | 'beside';
  /** Middle of the word. */
  readonly middle: number;
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
  const common = { word, from: from.x, to: to.x };
  const hung = [from, to].filter((p) => p.tier > 0);
  if (hung.length > 0)
    return { ...common, sign: 'none', place: 'beside', depth: 0, ...beside(hung, word, sizes, room) };
  const [a, b] = [Math.min(from.x, to.x), Math.max(from.x, to.x)];
  const arrow = b - a - 2 * sizes.radius - 2 * sizes.clear >= SHORTEST * sizes.head;
  const middle = arrow ? between(dots, a, b, word.width, sizes.gap) : undefined;
  if (middle !== undefined)
    return { ...common, sign: 'arrow', place: 'between', middle, depth: 0, bad: false };
  const sign = arrow ? 'arrow' : 'bracket';
  const low = Math.min(Math.max((a + b) / 2, word.width / 2), room.end - word.width / 2);
  const meets = dots.some((p) => {
    if (p.tier === 0) return false;
    const left = Math.min(p.x - sizes.radius, p.valueMiddle - p.valueWidth / 2);
    const right = Math.max(p.x + sizes.radius, p.valueMiddle + p.valueWidth / 2);
    return left < low + word.width / 2 + sizes.gap && low - word.width / 2 < right + sizes.gap;
  });
  return { ...common, sign, place: 'under', middle: low, depth: underDepth(sizes, sign), bad: meets };
}

/** After the lowest value of the pair, on the side away from its dot. */
function beside(
  hung: readonly AlongLane[],
  word: Line<TextInk>,
  { gap }: LookSizes,
  room: { start: number; end: number },
) {
  const last = hung.reduce((a, b) => (a.tier > b.tier ? a : b));
  const away = last.valueWidth / 2 + gap + word.width / 2;
  const middle = last.valueMiddle > last.x ? last.valueMiddle + away : last.valueMiddle - away;
  return { middle, bad: middle + word.width / 2 > room.end || middle - word.width / 2 < room.start };
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
  const under = edge + (plan.sign === 'bracket' ? bracketDepth(sizes) : line) + wordTop(sizes);
  const hung = dots.reduce((y, d) => (d.tier > 0 ? Math.max(y, d.baseline) : y), frame.valueBaseline);
  const baseline = { between: frame.valueBaseline, under, beside: hung }[plan.place];
  pen.put(plan.word, plan.middle, baseline, 'middle');
}
