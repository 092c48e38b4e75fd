import { drawArrow } from '../arrow.js';
import { centered } from '../dish/labels.js';
import { mm } from '../geometry.js';
import type { Sheet } from '../sheet.js';
import type { DishTurn } from '../spec.js';
import { paperLines, RAIL } from '../tokens.js';

const DOT = mm(1.9);

/** A lane from zero for each nutrient that moved: an open dot before, a solid one after, both values at the end. */
export function drawTurnLanes(
  sheet: Sheet,
  { lanes }: DishTurn,
  y: number,
  reject: (words: string) => void,
): number {
  const { pen, type, axis, rail } = sheet;
  if (lanes.length === 0) return y;
  const { palette } = pen;
  const texts = lanes.map((lane) =>
    pen.set(lane.text, { ...type.label, ...(lane.numbers[0] ? { number: lane.numbers[0] } : {}) }),
  );
  const wide = Math.max(...texts.map(({ width }) => width));
  const to = pen.width - wide - mm(5);
  if (to - axis < mm(30)) reject(lanes[0]?.text ?? '');
  const step = rail ? Math.max(mm(7.4), type.label.size * 1.6) : type.label.size * 1.3 + mm(7);
  let top = y;
  for (const [i, lane] of lanes.entries()) {
    const name = pen.set(lane.name, { ...type.label, weight: 700 });
    if (name.width > (rail ? RAIL : pen.width)) reject(lane.name);
    const middle = top + (rail ? step / 2 : type.label.size * 1.3 + mm(3));
    pen.put(name, 0, rail ? centered(middle, type.label.size) : top + type.label.size);
    const most = Math.max(lane.before, lane.after, Number.MIN_VALUE) * 1.04;
    const at = (value: number) => axis + DOT + (to - axis - DOT) * (value / most);
    pen.line(axis, middle, to, middle, { edge: palette.hair, width: paperLines.hair });
    pen.line(axis, middle - DOT, axis, middle + DOT, { width: paperLines.line });
    const [a, b] = [at(lane.before), at(lane.after)];
    const side = b > a ? 1 : -1;
    if (Math.abs(b - a) > 2 * DOT + mm(2.6))
      drawArrow(pen, {
        from: a + side * (DOT + 0.5),
        to: b - side * (DOT + 0.5),
        y: middle,
        head: mm(2),
        width: paperLines.firm,
        color: palette.ink,
      });
    pen.circle(a, middle, DOT, { fill: palette.paper, edge: palette.ink, width: paperLines.line });
    // Two equal values would hide one another; then the open dot stays seen around the solid one.
    pen.circle(b, middle, Math.abs(b - a) < DOT ? DOT * 0.6 : DOT, { fill: palette.ink });
    const text = texts[i];
    if (text) pen.put(text, pen.width, centered(middle, type.label.size), 'end');
    top += step;
  }
  return top;
}

/** What open, solid and ringed mean. */
export function drawTurnKey(
  sheet: Sheet,
  { words, lanes }: DishTurn,
  y: number,
  reject: (words: string) => void,
): number {
  const { pen, type, axis } = sheet;
  const { palette } = pen;
  const size = type.note.size;
  const dot = mm(1.6);
  const items = [
    ...(lanes.length > 0
      ? ([
          ['before', words.before],
          ['after', words.after],
        ] as const)
      : []),
    ['changed', words.changed] as const,
  ];
  let middle = y + mm(2) + size * 0.5;
  let x = axis;
  for (const [look, said] of items) {
    const line = pen.set(said, type.note);
    const whole = 2 * dot + mm(2) + line.width;
    if (x > axis && x + whole > pen.width) {
      x = axis;
      middle += size * 1.7;
    }
    if (x + whole > pen.width) reject(said);
    if (look === 'after') pen.circle(x + dot, middle, dot, { fill: palette.ink });
    else {
      pen.circle(x + dot, middle, dot, { fill: palette.paper, edge: palette.ink, width: paperLines.line });
      if (look === 'changed')
        pen.circle(x + dot, middle, dot + mm(0.25), { edge: palette.accent, width: 2.25 });
    }
    pen.put(line, x + 2 * dot + mm(2), centered(middle, size));
    x += whole + mm(6);
  }
  return middle + size * 0.7;
}
