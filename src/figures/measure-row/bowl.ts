import type { Point } from '../geometry.js';
import type { Pen } from '../pen.js';
import type { MeasureVessel } from '../spec.js';
import type { VesselShape } from './vessels.js';

export interface BowlLook {
  /** Units of the drawing for one millimeter of the thing. */
  readonly scale: number;
  readonly line: number;
  readonly fillLine: number;
  /** How far the handle reaches from the rim toward the start edge, and how thick it is. */
  readonly handle: number;
  readonly thick: number;
}

/** A measure in outline, its handle toward the start edge and a line for each share that is poured. */
export function drawBowl(
  pen: Pen,
  vessel: MeasureVessel,
  shape: VesselShape,
  x: number,
  y: number,
  look: BowlLook,
): void {
  const { scale, line, handle, thick } = look;
  const { palette } = pen;
  const at = ([px, py]: Point): Point => [x + px * scale, y + py * scale];
  const round = thick / 2;
  pen.rect(x - handle, y, handle, thick, {
    fill: palette.paper,
    edge: palette.ink,
    width: line,
    radius: round,
  });
  pen.circle(x - handle + round * 1.5, y + round, round * 0.42, { edge: palette.ink, width: line });
  pen.poly(shape.outline.map(at), { fill: palette.paper }, true);
  pen.poly(shape.outline.map(at), { edge: palette.ink, width: line });
  for (const share of new Set(vessel.pours.map((pour) => pour.share))) {
    const level = shape.level(share);
    const [from, to] = [at([level.from, level.y]), at([level.to, level.y])];
    pen.line(...from, ...to, { width: look.fillLine });
  }
}

/** Places blocks of words below one another, each as near below where it belongs as it can be. Returns their tops. */
export function stack(
  blocks: readonly { readonly wanted: number; readonly height: number }[],
  gap: number,
): number[] {
  let free = 0;
  return blocks.map(({ wanted, height }) => {
    const top = Math.max(free, wanted);
    free = top + height + gap;
    return top;
  });
}
