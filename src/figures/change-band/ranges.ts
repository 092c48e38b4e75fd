import type { ChangeBand } from '../spec.js';
import { CAP_HEIGHT } from '../tokens.js';
import type { BandLook } from './look.js';
import type { Plot } from './plot.js';

/**
 * The ranges at their posts. The band only falls, so what lies below it toward today and above it toward the far end
 * is free: the last range stands above, the others below and before their posts.
 */
export function putRanges(
  spec: ChangeBand,
  look: BandLook,
  plot: Plot,
  reject: (words: string) => void,
): void {
  const { pen, type, gap, ring, accentPosts } = look;
  const color = accentPosts ? pen.palette.accent : pen.palette.ink;
  const high = type.range.size * CAP_HEIGHT;
  const deep = type.range.size * 0.25;
  for (const [index, post] of spec.posts.entries()) {
    const said = pen.set(post.words, { ...type.range, color, number: post.number });
    const wide = said.width;
    const [x, last] = [plot.x(post.month), index === spec.posts.length - 1];
    if (wide > plot.right - plot.axis) reject(post.words);
    if (last && spec.stop) {
      putStop(spec.stop, said, x, look, plot, reject);
      continue;
    }
    const below = Math.max(plot.axis + gap, x - ring - wide - gap * 0.4);
    const under = plot.y(plot.at(Math.max(x, below + wide)).most) + ring + gap + high;
    if (!last && under + deep < plot.foot - gap * 0.5) {
      clear(look, below, under - high, wide, high + deep);
      pen.put(said, below, under);
      // Where the words had to move on, a line leads back to their post.
      if (below + wide > x + ring)
        pen.line(x, plot.y(post.most) + ring, x, under - high - gap * 0.3, {
          edge: color,
          width: look.lines.tick,
        });
      continue;
    }
    const over = last
      ? Math.max(plot.axis + gap, Math.min(x + ring, plot.right) - wide)
      : x + ring + gap * 0.4;
    const baseline = plot.y(plot.at(over).least) - ring - gap;
    const room = baseline - high > plot.top + gap * 0.4;
    clear(look, over, (room ? baseline : under) - high, wide, high + deep);
    pen.put(said, over, room ? baseline : under);
  }
}

/** White below the words, so that no guide runs through them. */
function clear({ pen, gap }: BandLook, x: number, y: number, wide: number, high: number): void {
  pen.rect(x - gap * 0.3, y - gap * 0.3, wide + gap * 0.6, high + gap * 0.6, { fill: pen.palette.ground });
}

/** Range, "Stops here." and why: beside the last post when there is room, else below the band before it. */
function putStop(
  { head, why }: NonNullable<ChangeBand['stop']>,
  range: ReturnType<BandLook['pen']['set']>,
  x: number,
  look: BandLook,
  plot: Plot,
  reject: (words: string) => void,
): void {
  const { pen, type, gap, ring } = look;
  const { accent } = pen.palette;
  const measure = type.note.size * 21;
  const beside = plot.right - x - ring * 2 - gap >= measure / 2;
  const start = beside ? x + ring * 2 + gap : Math.max(plot.axis + gap, x - measure - ring * 2);
  const wide = Math.min(measure, plot.right - start);
  const step = type.note.size * 1.3;
  const told = pen.paragraph(why, type.note, wide);
  if (told.overflow) reject(why);
  const high = (lines: number) => type.range.size * 1.2 + step * (1 + lines);
  const first = beside
    ? plot.y(plot.at(x).least) + type.range.size * 0.6
    : plot.y(plot.at(x).most) + ring * 3 + gap + type.range.size;
  const deepest = (lines: number) => plot.foot - gap - high(lines) + type.range.size;
  // Beside the post nothing is in the way, and above the band neither, where it is deep enough.
  const above = plot.top + gap + type.range.size;
  const clearAbove = above + high(told.lines.length) < plot.y(plot.at(start).least) - ring;
  const fits = first <= deepest(told.lines.length);
  const whole = fits || beside || clearAbove;
  const count = whole ? told.lines.length : 0;
  const top = fits ? first : !beside && clearAbove ? above : Math.min(first, deepest(count));
  clear(look, start, top - type.range.size * CAP_HEIGHT, wide, high(count) - step * 0.4);
  pen.put(range, start, top);
  pen.put(
    pen.set(head, { ...type.note, weight: 700, color: accent }),
    start,
    top + type.range.size * 0.2 + step,
  );
  // Where the reason finds no room, the words beside the figure tell it.
  if (whole) pen.putParagraph(told, start, wide, top + type.range.size * 0.2 + 2 * step, step);
}
