import type { Point } from '../geometry.js';
import type { Pen } from '../pen.js';
import type { DishShape } from '../spec.js';
import { ROWS } from './places.js';

/** Lengths of a dish: a counter's radius and pitch, and what lies around the counters. */
export interface DishSize {
  readonly radius: number;
  readonly pitch: number;
  /** From the counters to the wall. */
  readonly margin: number;
  /** Width of the rim: of bowls and all others, of plates. */
  readonly rim: number;
  readonly plateRim: number;
  /** Lines: outline, and what is inside of it. */
  readonly outline: number;
  readonly inner: number;
}

/** Half the width and height of the whole dish. */
export interface Reach {
  readonly x: number;
  readonly y: number;
}

/** The eight outer counters of rows 2, 4, 4, 2 lie on one circle of so many pitches. */
const RING = 1.5811;

/** How far a dish of this size reaches from its middle, handles and all. */
export function reachOf(shape: DishShape, size: DishSize): Reach {
  if (ROWS[shape][0] === 2) {
    const rim =
      RING * size.pitch + size.radius + size.margin + (shape === 'plate' ? size.plateRim : size.rim);
    return { x: rim, y: rim };
  }
  const well = wellOf(size);
  const edge = shape === 'shared-pot' ? size.rim * 1.5 : size.rim;
  const x =
    well.x + edge + (shape === 'shared-pot' ? handle(size) : shape === 'lunch-box' ? size.rim * 0.5 : 0);
  return { x, y: well.y + edge };
}

/** Half of the box around three columns and four rows. */
function wellOf({ pitch, radius, margin }: DishSize): Reach {
  return { x: pitch + radius + margin, y: 1.5 * pitch + radius + margin };
}

const handle = ({ rim }: DishSize) => rim * 1.5;

/** Draws the empty dish from above, its middle at x, y. */
export function drawVessel(pen: Pen, shape: DishShape, x: number, y: number, size: DishSize): void {
  const { palette } = pen;
  const outer = { fill: palette.tint, edge: palette.ink, width: size.outline };
  const well = { fill: palette.paper, edge: palette.ink, width: size.inner };
  const line = { edge: palette.ink, width: size.inner };
  const reach = reachOf(shape, size);
  const box = (half: Reach, radius: number, look: typeof line) =>
    pen.rect(x - half.x, y - half.y, 2 * half.x, 2 * half.y, { ...look, radius });
  switch (shape) {
    case 'bowl':
      pen.circle(x, y, reach.x, outer);
      pen.circle(x, y, reach.x - size.rim, well);
      // A second line: a wall, so a bowl.
      pen.circle(x, y, reach.x - size.rim * 0.34, line);
      return;
    case 'plate':
      pen.poly(soft(x, y, reach, 3.4), outer, true);
      pen.circle(x, y, reach.x - size.plateRim, well);
      return;
    case 'tray': {
      const radius = size.rim * 2.2;
      box(reach, radius, outer);
      // A trough for each row, so that no part of the tray belongs to a kind of food.
      const inside = wellOf(size);
      const high = 2 * (size.radius + (size.pitch / 2 - size.radius) * 0.7);
      for (const row of [-1.5, -0.5, 0.5, 1.5])
        pen.rect(x - inside.x, y + row * size.pitch - high / 2, 2 * inside.x, high, {
          ...well,
          radius: high / 2,
        });
      return;
    }
    case 'lunch-box': {
      const half = { x: reach.x - size.rim * 0.5, y: reach.y };
      // Two clips that hold the lid.
      for (const side of [-1, 1])
        pen.rect(x + side * half.x - size.rim * 0.5, y - size.pitch * 0.34, size.rim, size.pitch * 0.68, {
          ...outer,
          fill: palette.paper,
          radius: size.rim * 0.3,
        });
      box(half, size.rim * 1.9, outer);
      box({ x: half.x - size.rim * 0.36, y: half.y - size.rim * 0.36 }, size.rim * 1.6, line);
      box(wellOf(size), size.rim * 1.2, well);
      return;
    }
    case 'shared-pot': {
      const half = { x: reach.x - handle(size), y: reach.y };
      for (const side of [-1, 1])
        pen.rect(
          x + side * half.x - handle(size),
          y - size.pitch * 0.42,
          2 * handle(size),
          size.pitch * 0.84,
          {
            ...outer,
            radius: handle(size) * 0.8,
          },
        );
      pen.poly(soft(x, y, half, 4.2), outer, true);
      pen.poly(soft(x, y, { x: half.x - size.rim * 0.7, y: half.y - size.rim * 0.7 }, 4.2), well, true);
      return;
    }
  }
}

/** A soft square: between a circle (2) and a box. */
function soft(x: number, y: number, { x: a, y: b }: Reach, power: number): Point[] {
  return Array.from({ length: 144 }, (_, i): Point => {
    const turn = (i / 144) * 2 * Math.PI;
    const round = (value: number) => Math.sign(value) * Math.abs(value) ** (2 / power);
    return [x + a * round(Math.cos(turn)), y + b * round(Math.sin(turn))];
  });
}
