import type { Color, Ink } from '../../figures/index.js';
import type { Weight } from '../../text/index.js';

/** All lengths of a slide are in its own pixels, 96 to the inch: 24 pt = 32 px. */
export const SLIDE = { width: 1280, height: 720, side: 56, top: 44, pointsPerPixel: 0.75 } as const;
/** Width of the stage and of the shelf's words. */
export const STAGE_WIDTH = SLIDE.width - 2 * SLIDE.side;
/** The shelf's top line is part of it. Two lines of words are the rule, three and four what notes may need. */
export const SHELF = { line: 6, most: 4, leading: 40, clear: 48, number: 60 } as const;

export interface SlideColors {
  readonly ink: Color;
  /** Look here. */
  readonly petrol: Color;
  readonly slate: Color;
  readonly edge: Color;
  /** The wall. */
  readonly screen: Color;
  readonly tint: Color;
  readonly white: Color;
}

const COLOR: SlideColors = {
  ink: '#14212b',
  petrol: '#1f4e5f',
  slate: '#4a5a64',
  edge: '#75838b',
  screen: '#fbf7ee',
  tint: '#dfeaec',
  white: '#ffffff',
};
const ONE: SlideColors = {
  ink: '#000000',
  petrol: '#000000',
  slate: '#000000',
  edge: '#000000',
  screen: '#ffffff',
  tint: '#ffffff',
  white: '#ffffff',
};

export function slideColors(ink: Ink): SlideColors {
  return ink === 'one' ? ONE : COLOR;
}

export interface SlideType {
  readonly size: number;
  readonly leading: number;
  readonly weight: Weight;
  readonly tracking?: number;
}

/** Type of the screen; nothing is smaller than 32 px. */
export const TYPE = {
  open: { size: 88, leading: 92, weight: 800, tracking: -0.012 },
  sentence: { size: 80, leading: 86, weight: 800, tracking: -0.015 },
  head: { size: 80, leading: 84, weight: 800, tracking: -0.012 },
  text: { size: 40, leading: 50, weight: 500 },
  strong: { size: 40, leading: 50, weight: 800 },
  small: { size: 32, leading: 40, weight: 500 },
  source: { size: 36, leading: 40, weight: 700 },
  option: { size: 34, leading: 40, weight: 700 },
  value: { size: 52, leading: 56, weight: 800 },
} as const satisfies Record<string, SlideType>;

/** Sizes tried for a title, the largest first. */
export const TITLES: readonly SlideType[] = [56, 50, 44].map((size) => ({
  size,
  leading: Math.round(size * 1.107),
  weight: 800,
  tracking: -0.012,
}));
/** Sizes tried for caution lines, the largest first; a step at which none fits is a problem. */
export const CAUTION_SIZES: readonly (readonly [number, number])[] = [
  [52, 62],
  [48, 58],
  [42, 51],
  [40, 50],
  [38, 47],
  [36, 44],
  [34, 42],
  [32, 40],
];
