import type { Color, Mark, Medium } from './drawing.js';
import { mm, type Point } from './geometry.js';
import { circlePath, linePath, polyPath, rectPath } from './shapes.js';
import type { DishTexture } from './spec.js';

/** One repeat of each flat texture: its size, and the size of its mark. */
const FLAT = {
  paper: {
    dots: { width: mm(1.6), height: mm(2.77), mark: mm(0.36) },
    bars: { width: mm(1.5), height: mm(1.5), mark: mm(0.36) },
    waves: { width: mm(3), height: mm(1.5), mark: mm(0.34) },
  },
  screen: {
    dots: { width: 12, height: 20.8, mark: 2.7 },
    bars: { width: 11, height: 11, mark: 2.8 },
    waves: { width: 24, height: 11, mark: 2.6 },
  },
} as const;

/**
 * A box filled with a texture, from its own corner at 0, 0, so that the texture never drifts; cut at the edges. Lines,
 * not a pattern: viewers blur the seams of patterns.
 */
export function flatTexture(
  texture: DishTexture,
  width: number,
  height: number,
  { medium, color }: { readonly medium: Medium; readonly color: Color },
): Mark {
  const tile = FLAT[medium][texture];
  // A little tighter or wider, so that whole repeats fill the box.
  const across = width / Math.max(1, Math.round(width / tile.width));
  const down = height / Math.max(1, Math.round(height / tile.height));
  const marks: Mark[] = [];
  if (texture === 'dots') {
    const dots: string[] = [];
    for (let y = 0; y <= height + 0.01; y += tile.height / 2) {
      const odd = Math.round((y / tile.height) * 2) % 2 === 1;
      for (let x = odd ? 0 : tile.width / 2; x <= width + 0.01; x += tile.width)
        dots.push(circlePath(x, y + tile.height / 4, tile.mark));
    }
    marks.push({ kind: 'shape', path: dots.join(''), fill: color });
  } else if (texture === 'bars') {
    let path = '';
    for (let x = across / 2; x < width; x += across) path += linePath(x, 0, x, height);
    marks.push({ kind: 'shape', path, stroke: { color, width: tile.mark } });
  } else {
    let path = '';
    for (let y = down / 2; y < height; y += down) {
      const points: Point[] = [];
      for (let x = 0; x <= width + 0.01; x += across / 12)
        points.push([x, y + Math.sin((x / across) * 2 * Math.PI) * down * 0.3]);
      path += polyPath(points);
    }
    marks.push({ kind: 'shape', path, stroke: { color, width: tile.mark, join: 'round' } });
  }
  return { kind: 'group', clip: rectPath(0, 0, width, height), marks };
}

/** Sizes of the texture around a counter of radius 1 on a slide; on paper they are lengths of their own. */
const RIM = {
  paper: {
    bead: mm(0.4),
    beads: mm(1.55),
    tick: mm(0.36),
    ticks: mm(1.5),
    wave: mm(0.36),
    waves: mm(2.9),
    swing: 0.26,
  },
  screen: {
    bead: 3 / 44,
    beads: 12.5 / 44,
    tick: 2.9 / 44,
    ticks: 11.5 / 44,
    wave: 2.8 / 44,
    waves: 24 / 44,
    swing: 0.27,
  },
} as const;

/**
 * The texture laid around a counter whose middle is at 0, 0, between two radii: beads, ticks or a scallop. Only whole
 * repeats, the first at twelve o'clock.
 */
export function rimTexture(
  texture: DishTexture,
  outer: number,
  inner: number,
  { medium, color }: { readonly medium: Medium; readonly color: Color },
): Mark {
  const scale = medium === 'paper' ? 1 : outer;
  const size = RIM[medium];
  const middle = (outer + inner) / 2;
  const count = (pitch: number) => Math.max(1, Math.round((2 * Math.PI * middle) / (pitch * scale)));
  const at = (radius: number, turn: number): Point => {
    const angle = turn * 2 * Math.PI - Math.PI / 2;
    return [radius * Math.cos(angle), radius * Math.sin(angle)];
  };
  if (texture === 'dots') {
    const n = count(size.beads);
    const beads = Array.from({ length: n }, (_, i) => circlePath(...at(middle, i / n), size.bead * scale));
    return { kind: 'shape', path: beads.join(''), fill: color };
  }
  if (texture === 'bars') {
    const n = count(size.ticks);
    const ticks = Array.from({ length: n }, (_, i) => linePath(...at(inner, i / n), ...at(outer, i / n)));
    return { kind: 'shape', path: ticks.join(''), stroke: { color, width: size.tick * scale } };
  }
  const n = count(size.waves);
  const points = Array.from({ length: n * 16 }, (_, i): Point => {
    const turn = i / (n * 16);
    return at(middle + size.swing * (outer - inner) * Math.cos(turn * n * 2 * Math.PI), turn);
  });
  return {
    kind: 'shape',
    path: polyPath(points, true),
    stroke: { color, width: size.wave * scale, join: 'round' },
  };
}
