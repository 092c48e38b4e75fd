import { luminance, mixColors } from './color.js';
import type { Color, Mark, Paint } from './drawing.js';
import { middleOf } from './svg/gradients.js';
import type { VectorPicture } from './svg/read-svg.js';

/** Colors darker than this share of white's light become black: between the two, by the eye, lies 0.18. */
const DARK = 0.18;
const [BLACK, WHITE] = ['#000000', '#ffffff'] as const;

/**
 * A lesson's own colored picture as black lines on white, for the one-ink build: dark areas turn black
 * with a white edge, so that neighbors stay apart; pale areas turn white with a black edge; lines turn
 * black, or white where they are nearly white. Opacity is mixed into the color first. It is a makeshift:
 * a picture drawn in black lines is better, so the caller should say `figures/one-ink-converted`.
 */
export function toOneInk(picture: VectorPicture): VectorPicture {
  const edge = Math.max(picture.width, picture.height) / 48;
  return { ...picture, marks: picture.marks.map((mark) => convert(mark, edge, 1)) };
}

/** Whether a picture holds nothing but black and white already. */
export function isOneInk(marks: readonly Mark[]): boolean {
  return marks.every((mark) => {
    if (mark.kind === 'group') return (mark.opacity ?? 1) === 1 && isOneInk(mark.marks);
    if (mark.kind !== 'shape') return mark.kind === 'text';
    const pure = (paint: Paint | undefined) => paint === undefined || paint === BLACK || paint === WHITE;
    return pure(mark.fill) && (mark.fillOpacity ?? 1) === 1 && pure(mark.stroke?.color);
  });
}

function convert(mark: Mark, edge: number, opacity: number): Mark {
  if (mark.kind === 'group') {
    const { opacity: own = 1, at, ...rest } = mark;
    const scale = at ? Math.sqrt(Math.abs(at[0] * at[3] - at[1] * at[2])) || 1 : 1;
    return {
      ...rest,
      ...(at ? { at } : {}),
      marks: mark.marks.map((inside) => convert(inside, edge / scale, opacity * own)),
    };
  }
  if (mark.kind !== 'shape') return mark;
  const { fill, fillOpacity = 1, stroke, ...rest } = mark;
  const inside = fill === undefined ? undefined : blackOrWhite(fill, opacity * fillOpacity, DARK);
  if (stroke) {
    const color = blackOrWhite(stroke.color, opacity, 0.8);
    return { ...rest, ...(inside ? { fill: inside } : {}), stroke: { ...stroke, color } };
  }
  if (inside === undefined) return mark;
  const around = {
    color: inside === BLACK ? WHITE : BLACK,
    width: inside === BLACK ? edge / 2 : edge,
    join: 'round',
  } as const;
  return { ...rest, fill: inside, stroke: around };
}

/** Black when what shows on white paper is darker than `limit`. */
function blackOrWhite(paint: Paint, opacity: number, limit: number): Color {
  const solid = typeof paint === 'string' ? { color: paint, opacity: 1 } : middleOf(paint);
  return luminance(mixColors(WHITE, solid.color, opacity * solid.opacity)) < limit ? BLACK : WHITE;
}
