import type { Point } from '../geometry.js';
import type { MeasureVessel } from '../spec.js';

/** A measure seen from the side, in millimeters of the thing itself: its inside, and where a part of it is filled to. */
export interface VesselShape {
  readonly width: number;
  readonly height: number;
  /** The inside from the rim at the start edge around to the rim at the end edge; y down from the rim. */
  readonly outline: readonly Point[];
  /** From the rim down to the level of a share of the whole, and the ends of that level. */
  level(share: number): { readonly y: number; readonly from: number; readonly to: number };
}

/** Inside width of a cup: low enough to look into, wide enough for a spoon. Our own. */
const CUP_WIDTH = 72;
const CUP_CORNER = 3;
const CUBIC_MM = 1000;

/** The inside of a measure that holds so many milliliters: a cup is a cylinder, a spoon half a ball. */
export function shapeOf({ shape, milliliters }: Pick<MeasureVessel, 'shape' | 'milliliters'>): VesselShape {
  const volume = milliliters * CUBIC_MM;
  return shape === 'cup' ? cup(volume) : spoon(volume);
}

function cup(volume: number): VesselShape {
  const height = volume / (Math.PI * (CUP_WIDTH / 2) ** 2);
  const r = Math.min(CUP_CORNER, height / 2);
  const arc = (cx: number, from: number) =>
    steps(8).map((t): Point => {
      const angle = from - (t * Math.PI) / 2;
      return [cx + r * Math.cos(angle), height - r + r * Math.sin(angle)];
    });
  return {
    width: CUP_WIDTH,
    height,
    outline: [[0, 0], ...arc(r, Math.PI), ...arc(CUP_WIDTH - r, Math.PI / 2), [CUP_WIDTH, 0]],
    level: (share) => ({ y: height * (1 - share), from: 0, to: CUP_WIDTH }),
  };
}

function spoon(volume: number): VesselShape {
  const r = ((3 * volume) / (2 * Math.PI)) ** (1 / 3);
  return {
    width: 2 * r,
    height: r,
    outline: steps(36).map((t): Point => {
      const angle = Math.PI * (1 - t);
      return [r + r * Math.cos(angle), r * Math.sin(angle)];
    }),
    level: (share) => {
      const depth = capDepth(r, volume * share);
      const half = Math.sqrt(Math.max(0, 2 * r * depth - depth ** 2));
      return { y: r - depth, from: r - half, to: r + half };
    },
  };
}

/** How deep a round bowl is filled by a volume: π h² (3 r − h) / 3 grows with h, so halving finds it. */
function capDepth(r: number, volume: number): number {
  let [low, high] = [0, r];
  for (let i = 0; i < 50; i++) {
    const h = (low + high) / 2;
    if ((Math.PI * h ** 2 * (3 * r - h)) / 3 < volume) low = h;
    else high = h;
  }
  return (low + high) / 2;
}

function steps(count: number): number[] {
  return Array.from({ length: count + 1 }, (_, i) => i / count);
}
