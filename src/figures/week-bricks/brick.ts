import type { Pen } from '../pen.js';
import type { Stretch } from './minutes.js';

/** A brick's place on the page, and which way it fills. */
export interface BrickBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly fills: 'up' | 'along';
}

export interface BrickLines {
  readonly edge: number;
  readonly inner: number;
  /** How far the white line stands inside a vigorous brick. */
  readonly inset: number;
  readonly radius: number;
  /** Empty bricks wait for a pencil on a blank, and are only a scale elsewhere. */
  readonly waiting: boolean;
}

/** One stretch of a brick: solid, solid with a white line inside (vigorous, counted twice), or an outline. */
export function drawStretch(pen: Pen, stretch: Stretch, box: BrickBox, lines: BrickLines): void {
  const { palette } = pen;
  const share = stretch.to - stretch.from;
  const up = box.fills === 'up';
  const x = up ? box.x : box.x + box.width * stretch.from;
  const y = up ? box.y + box.height * (1 - stretch.to) : box.y;
  const width = up ? box.width : box.width * share;
  const height = up ? box.height * share : box.height;
  if (stretch.kind === 'empty') {
    const half = lines.edge / 2;
    pen.rect(x + half, y + half, width - lines.edge, height - lines.edge, {
      edge: lines.waiting ? palette.ink : palette.hair,
      width: lines.edge,
      radius: lines.radius,
    });
    return;
  }
  pen.rect(x, y, width, height, { fill: palette.ink, radius: share === 1 ? lines.radius : 0 });
  const inset = Math.min(lines.inset, width / 3.2, height / 3.2);
  const [w, h] = [width - 2 * inset, height - 2 * inset];
  if (stretch.kind === 'vigorous' && w > lines.inner && h > lines.inner)
    pen.rect(x + inset, y + inset, w, h, { edge: palette.paper, width: lines.inner });
}
