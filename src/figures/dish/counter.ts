import { contrast } from '../color.js';
import type { Color, Drawing, Ink } from '../drawing.js';
import { mm } from '../geometry.js';
import type { Pen } from '../pen.js';
import { centeredPicture } from '../pictures.js';
import type { DishTexture } from '../spec.js';
import { rimTexture } from '../textures.js';
import { CAP_HEIGHT } from '../tokens.js';

/** Looks up a picture; reports one that is not there. */
export type PictureOf = (name: string) => Drawing | undefined;

export interface CounterLook {
  readonly texture?: DishTexture;
  readonly letter?: string;
  readonly picture?: string;
  /** Ringed, or on a slide filled with the accent: look here. */
  readonly marked?: boolean;
  /** Not there yet. */
  readonly waiting?: boolean;
  /** To be lettered by the learner. */
  readonly empty?: boolean;
}

/** A counter on paper: outline, rim, picture, and the letter of its kind on a badge at the reading end. */
export function paperCounter(
  pen: Pen,
  x: number,
  y: number,
  radius: number,
  look: CounterLook,
  pictureOf: PictureOf,
): void {
  const { palette, ink } = pen;
  const inner = radius - Math.max(mm(1.45), radius * 0.225);
  pen.circle(x, y, radius, { fill: palette.paper, edge: palette.ink, width: 1 });
  if (look.empty) return;
  if (look.texture)
    pen.place(x, y, [rimTexture(look.texture, radius, inner, { medium: 'paper', color: palette.ink })]);
  if (look.marked) pen.circle(x, y, radius + mm(0.3), { edge: palette.accent, width: 2.7 });
  placePicture(pen, x, y, radius * (look.texture ? 1.26 : 1.3), look.picture, pictureOf);
  if (look.letter !== undefined && look.letter !== '') {
    const [bx, by] = [x + radius * 0.7, y + radius * 0.7];
    pen.circle(bx, by, mm(2.05), { fill: palette.paper, edge: palette.ink, width: ink === 'one' ? 1 : 0.75 });
    badgeLetter(pen, look.letter, bx, by, { size: 9, weight: 700, color: palette.ink });
  }
}

/** A counter on a slide; one that has just come is filled with the accent at its letter and edge. */
export function screenCounter(
  pen: Pen,
  x: number,
  y: number,
  radius: number,
  look: CounterLook,
  pictureOf: PictureOf,
): void {
  const { palette } = pen;
  if (look.waiting) {
    pen.circle(x, y, radius, { edge: palette.hair, width: 3, dash: [7, 8] });
    return;
  }
  const color = look.marked ? palette.accent : palette.ink;
  pen.circle(x, y, radius, { fill: palette.paper, edge: color, width: look.marked ? 7 : 4 });
  if (look.empty) return;
  if (look.texture) {
    const outer = radius - (look.marked ? 3.5 : 2);
    pen.place(x, y, [
      rimTexture(look.texture, outer, radius * 0.72, { medium: 'screen', color: palette.ink }),
    ]);
  }
  placePicture(pen, x, y, radius * 1.08, look.picture, pictureOf);
  if (look.letter === undefined || look.letter === '') return;
  const size = Math.max(19, radius * 0.44);
  const [bx, by] = [x + radius * 0.66, y + radius * 0.64];
  pen.circle(bx, by, size, { fill: look.marked ? palette.accent : palette.paper, edge: color, width: 3 });
  const on = look.marked && contrast(palette.accent, palette.paper) > 4.5 ? palette.paper : palette.ink;
  badgeLetter(pen, look.letter, bx, by, { size: 32, weight: 800, color: on });
}

function badgeLetter(
  pen: Pen,
  letter: string,
  x: number,
  y: number,
  words: { readonly size: number; readonly weight: 700 | 800; readonly color: Color },
): void {
  pen.put(pen.set(letter, words), x, y + (words.size * CAP_HEIGHT) / 2, 'middle');
}

function placePicture(
  pen: Pen,
  x: number,
  y: number,
  size: number,
  name: string | undefined,
  pictureOf: PictureOf,
): void {
  const picture = name === undefined || name === '' ? undefined : pictureOf(name);
  if (picture) pen.place(x, y, [centeredPicture(picture, size)]);
}

/** Finds pictures in the ink of the drawing; each that is missing is told once. */
export function pictureFinder(
  picture: ((name: string, ink: Ink) => Drawing | undefined) | undefined,
  ink: Ink,
  missing: (name: string) => void,
): PictureOf {
  const told = new Set<string>();
  return (name) => {
    const found = picture?.(name, ink);
    if (picture && !found && !told.has(name)) {
      told.add(name);
      missing(name);
    }
    return found;
  };
}
