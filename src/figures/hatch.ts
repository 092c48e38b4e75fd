import type { Color, Mark, Medium } from './drawing.js';
import type { Box } from './geometry.js';
import { coordinate, rectPath } from './shapes.js';
import { hatching } from './tokens.js';

export interface HatchLook {
  readonly medium: Medium;
  readonly color: Color;
  /** Leans the other way, for reading from right to left. */
  readonly mirrored?: boolean;
  /** The path that the lines keep to inside the box; the box itself when left out. */
  readonly clip?: string;
}

/**
 * Lines at 45° over a box: amounts that are not sure. They are lines in a clip and not a tile, since
 * viewers show seams between tiles, and they start at the box's own corner, so each part looks alike.
 */
export function hatchMark(box: Box, { medium, color, mirrored = false, clip }: HatchLook): Mark {
  const { pitch, width } = hatching[medium];
  const { left, top, right, bottom } = box;
  const high = bottom - top;
  const step = pitch * Math.SQRT2;
  let path = '';
  // Each line leans by as much as the box is high; half the line's width hangs over at both corners.
  for (let x = left - high + step / 2; x < right + width; x += step) {
    const [from, to] = [x - width, x + high + width];
    const [low, up] = mirrored ? [left + right - from, left + right - to] : [from, to];
    path += `M${coordinate(low)} ${coordinate(bottom + width)}L${coordinate(up)} ${coordinate(top - width)}`;
  }
  return {
    kind: 'group',
    clip: clip ?? rectPath(left, top, right - left, high),
    marks: path === '' ? [] : [{ kind: 'shape', path, stroke: { color, width } }],
  };
}
