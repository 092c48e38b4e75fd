import { mm } from '../geometry.js';
import type { Pen } from '../pen.js';
import type { Lane } from '../spec.js';
import { CAP_HEIGHT, paperLines, VALUE_GAP } from '../tokens.js';
import type { LaneFrame, PlacedDot } from './lane.js';

const CLEAR = mm(1);
const HEAD = mm(2.8);
const SHORTEST = HEAD + mm(1.2);

/** An arrow with a solid head, its point at `to`. */
export function drawArrow(pen: Pen, from: number, to: number, y: number, head: number, width: number): void {
  const d = to > from ? 1 : -1;
  const color = pen.palette.accent;
  pen.line(from, y, to - d * head * 0.8, y, { edge: color, width });
  pen.poly(
    [
      [to, y],
      [to - d * head, y - head * 0.62],
      [to - d * head, y + head * 0.62],
    ],
    { fill: color },
    true,
  );
}

/**
 * The one move worth seeing: an arrow in the lane from dot to dot with its word. Where the dots are
 * too near for an arrow, a bracket joins them from below. The word stands between the two values, or
 * under the lane. Returns the y of the lane's lower edge.
 */
export function drawLook(
  lane: Lane,
  placed: readonly PlacedDot[],
  frame: LaneFrame,
  reject: (words: string) => void,
): number {
  const { sheet, radius, trackY, trackHeight } = frame;
  const edge = trackY + trackHeight / 2;
  const look = lane.look;
  const from = placed.find((p) => p.dot.letter === look?.from);
  const to = placed.find((p) => p.dot.letter === look?.to);
  if (!look || !from || !to) return edge;
  const { pen, type } = sheet;
  const word = pen.set(look.word, { ...type.label, weight: 700, color: pen.palette.accent });
  const hung = [from, to].filter((p) => p.tier > 0);
  if (hung.length > 0) {
    // The pair hangs; the word follows the value that hangs lowest.
    const last = hung.reduce((a, b) => (a.tier > b.tier ? a : b));
    const start = last.valueMiddle + last.valueWidth / 2 + VALUE_GAP.paper;
    if (last.valueMiddle > last.x && start + word.width <= frame.end) {
      pen.put(word, start, last.baseline);
      return edge;
    }
  } else {
    const [a, b] = [Math.min(from.x, to.x), Math.max(from.x, to.x)];
    const room = b - a - 2 * radius - 2 * CLEAR;
    const d = to.x > from.x ? 1 : -1;
    const arrow = room >= SHORTEST;
    if (arrow) {
      const reach = radius + CLEAR;
      pen.rect(a + radius, trackY - mm(2.3), b - a - 2 * radius, mm(4.6), { fill: pen.palette.tint });
      drawArrow(pen, from.x + d * reach, to.x - d * reach, trackY, HEAD, paperLines.bold);
      const middle = between(placed, a, b, word.width);
      if (middle !== undefined) {
        pen.put(word, middle, frame.valueBaseline, 'middle');
        return edge;
      }
    }
    return under(lane, placed, frame, word, arrow, reject);
  }
  reject(look.word);
  return edge;
}

/** The middle of the free stretch of the value line over the arrow, when the word fits into it. */
function between(placed: readonly PlacedDot[], a: number, b: number, width: number): number | undefined {
  let [low, high] = [a, b];
  for (const { tier, valueMiddle, valueWidth } of placed) {
    if (tier > 0) continue;
    const [left, right] = [valueMiddle - valueWidth / 2, valueMiddle + valueWidth / 2];
    if ((left + right) / 2 <= (a + b) / 2) low = Math.max(low, right + VALUE_GAP.paper);
    else high = Math.min(high, left - VALUE_GAP.paper);
  }
  return high - low >= width ? (low + high) / 2 : undefined;
}

/** The word under the lane: below the arrow, or below a bracket where there is no room for an arrow. */
function under(
  lane: Lane,
  placed: readonly PlacedDot[],
  frame: LaneFrame,
  word: ReturnType<Pen['set']>,
  arrow: boolean,
  reject: (words: string) => void,
): number {
  const { sheet, trackY, trackHeight } = frame;
  const { pen, type } = sheet;
  const xs = placed
    .filter((p) => p.dot.letter === lane.look?.from || p.dot.letter === lane.look?.to)
    .map((p) => p.x);
  const [a, b] = [Math.min(...xs), Math.max(...xs)];
  let y = trackY + trackHeight / 2 + mm(0.8);
  const middle = Math.min(Math.max((a + b) / 2, word.width / 2), frame.end - word.width / 2);
  const stands = placed.some((p) => p.tier > 0 && Math.abs(p.x - middle) < word.width + p.valueWidth);
  if (stands) reject(lane.look?.word ?? '');
  if (!arrow) {
    pen.poly(
      [
        [a, y],
        [a, y + mm(1.6)],
        [b, y + mm(1.6)],
        [b, y],
      ],
      { edge: pen.palette.accent, width: paperLines.bold },
    );
    y += mm(2.6);
  }
  const baseline = y + mm(0.6) + type.label.size * CAP_HEIGHT;
  pen.put(word, middle, baseline, 'middle');
  return baseline + type.label.size * 0.22;
}
