import type { Weight } from '../../text/index.js';

/** All lengths of a slide are in its own pixels, 96 to the inch: 24 pt = 32 px. */
export const SLIDE = { width: 1280, height: 720, side: 56, top: 44, pointsPerPixel: 0.75 } as const;
/** Width of the stage. */
export const STAGE_WIDTH = SLIDE.width - 2 * SLIDE.side;
/** The shelf's top line is part of it. Two lines of words are the rule, three and four what notes may need. */
export const SHELF = { line: 6, least: 2, most: 4 } as const;
/** Of edges. A frame says "look here". */
export const LINES = { thin: 2, disc: 4, box: 5, rule: 5, under: 6, frame: 9 } as const;

export interface SlideType {
  readonly size: number;
  readonly leading: number;
  readonly weight: Weight;
  readonly tracking?: number;
}

/** The kinds of text on a slide, in pixels; where there are several, the largest that fits is taken. */
export interface SlideTypes {
  /** Of the first slide. */
  readonly open: SlideType;
  /** One sentence that fills the stage. */
  readonly sentence: readonly SlideType[];
  /** Of an activity or a few words. */
  readonly head: readonly SlideType[];
  readonly title: readonly SlideType[];
  readonly text: readonly SlideType[];
  readonly step: readonly SlideType[];
  /** The shelf and everything else. Nothing on a slide is smaller. */
  readonly small: SlideType;
  readonly minutes: SlideType;
  readonly cautionHead: SlideType;
  readonly caution: readonly SlideType[];
  readonly option: readonly SlideType[];
  /** In the disc of an option. */
  readonly letter: SlideType;
  /** Values of an answered question, and of the option that is right. */
  readonly value: SlideType;
  readonly rightValue: SlideType;
  readonly sourceNumber: SlideType;
  readonly source: SlideType;
  readonly sourceState: SlideType;
  readonly draft: SlideType;
}

const type = (size: number, leading: number, weight: Weight, tracking?: number): SlideType => ({
  size,
  leading,
  weight,
  ...(tracking === undefined ? {} : { tracking }),
});
const steps = (weight: Weight, sizes: readonly (readonly [number, number])[], tracking?: number) =>
  sizes.map(([size, leading]) => type(size, leading, weight, tracking));

const LATIN: SlideTypes = {
  open: type(88, 92, 800, -0.012),
  sentence: steps(
    800,
    [
      [80, 86],
      [72, 78],
      [64, 70],
    ],
    -0.015,
  ),
  head: steps(
    800,
    [
      [80, 84],
      [72, 76],
    ],
    -0.012,
  ),
  title: steps(
    800,
    [
      [56, 62],
      [50, 55],
      [44, 49],
    ],
    -0.012,
  ),
  text: steps(500, [
    [40, 50],
    [36, 45],
  ]),
  step: steps(500, [
    [40, 48],
    [36, 44],
  ]),
  small: type(32, 40, 500),
  minutes: type(40, 48, 800),
  cautionHead: type(48, 52, 800),
  caution: steps(500, [
    [52, 62],
    [48, 58],
    [42, 51],
    [40, 50],
    [38, 47],
    [36, 44],
    [34, 42],
    [32, 40],
  ]),
  option: steps(700, [
    [36, 42],
    [32, 40],
  ]),
  letter: type(42, 50, 800),
  value: type(56, 60, 800),
  rightValue: type(72, 76, 800),
  sourceNumber: type(36, 40, 800),
  source: type(36, 40, 700),
  sourceState: type(32, 36, 500),
  draft: type(32, 42, 800),
};

/** Arabic letters reach higher and lower and are never tracked; their lines stand further apart. */
const ARABIC: SlideTypes = {
  open: type(78, 100, 800),
  sentence: steps(800, [
    [70, 96],
    [62, 85],
    [56, 77],
  ]),
  head: steps(800, [
    [70, 96],
    [62, 85],
  ]),
  title: steps(800, [
    [50, 70],
    [46, 64],
    [44, 61],
  ]),
  text: steps(500, [
    [38, 52],
    [36, 49],
  ]),
  step: steps(500, [
    [38, 52],
    [36, 49],
  ]),
  small: type(32, 42, 500),
  minutes: type(38, 52, 800),
  cautionHead: type(44, 58, 800),
  caution: steps(500, [
    [50, 67],
    [46, 62],
    [42, 56],
    [40, 54],
    [38, 52],
    [36, 48],
    [34, 45],
    [32, 42],
  ]),
  option: steps(700, [
    [36, 48],
    [32, 42],
  ]),
  letter: type(38, 50, 800),
  value: type(52, 66, 800),
  rightValue: type(66, 84, 800),
  sourceNumber: type(36, 46, 800),
  source: type(36, 46, 700),
  sourceState: type(32, 42, 500),
  draft: type(32, 42, 800),
};

/** The only languages from right to left that the program knows are in Arabic letters. */
export function typesFor(direction: 'ltr' | 'rtl'): SlideTypes {
  return direction === 'rtl' ? ARABIC : LATIN;
}
