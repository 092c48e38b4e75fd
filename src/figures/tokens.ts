import type { Weight } from '../text/index.js';
import type { Color, Ink, Medium } from './drawing.js';
import { mm } from './geometry.js';

/** The reading levels as figures know them; `large` is large print, whatever the words' level. */
export type FigureLevel = 'short' | 'plain' | 'fuller' | 'large';

/** Colors by what they are for. `accent` says "look here" and never stands alone as a sign. */
export interface Palette {
  /** Text, bricks, dots, outlines. */
  readonly ink: Color;
  /** Notes and second-rank words. */
  readonly slate: Color;
  /** Lane lines, dashed and empty slots; never text. */
  readonly hair: Color;
  readonly accent: Color;
  /** Tracks, answers, bands; never the only edge of anything that matters. */
  readonly tint: Color;
  /** Inside of things. */
  readonly paper: Color;
  /** What everything stands on: the sheet, or the wall behind the shelf. */
  readonly ground: Color;
}

const PALETTES: Readonly<Record<`${Medium} ${Ink}`, Palette>> = {
  'paper color': {
    ink: '#14212b',
    slate: '#4a5a64',
    hair: '#7b8a93',
    accent: '#1f4e5f',
    tint: '#e4eef1',
    paper: '#ffffff',
    ground: '#ffffff',
  },
  // A wall of pure white glares in a dark hall; projectors wash a pale tint out.
  'screen color': {
    ink: '#14212b',
    slate: '#4a5a64',
    hair: '#75838b',
    accent: '#1f4e5f',
    tint: '#dfeaec',
    paper: '#ffffff',
    ground: '#fbf7ee',
  },
  'paper one': oneInk(),
  'screen one': oneInk(),
};

function oneInk(): Palette {
  const [black, white] = ['#000000', '#ffffff'];
  return {
    ink: black,
    slate: black,
    hair: black,
    accent: black,
    tint: white,
    paper: white,
    ground: white,
  };
}

export function paletteFor(medium: Medium, ink: Ink): Palette {
  return PALETTES[`${medium} ${ink}`];
}

/** Line widths on paper, in points. In one ink nothing is thinner than `line`: thinner lines break on a copier. */
export const paperLines = { hair: 0.75, line: 1, sign: 1.25, firm: 1.5, bold: 2.25 } as const;

/** Line widths on a slide, in pixels. */
export const screenLines = { track: 3, disc: 4, box: 5, shelf: 6, post: 8, frame: 9 } as const;

/** A kind of text: its size (points or pixels) and weight. */
export interface Role {
  readonly size: number;
  readonly weight: Weight;
}

/** The four kinds of text in a figure. */
export interface FigureType {
  readonly name: Role;
  readonly value: Role;
  readonly label: Role;
  readonly note: Role;
}

function figureType(name: number, value: number, label: number, note: number): FigureType {
  return {
    name: { size: name, weight: 700 },
    // The zero has a stroke: at 700 it fills on a second photocopy and looks like 8.
    value: { size: value, weight: 600 },
    label: { size: label, weight: 600 },
    note: { size: note, weight: 400 },
  };
}

/** Text in figures on paper, in points. */
export const paperType: Readonly<Record<FigureLevel, FigureType>> = {
  short: figureType(14, 15, 13, 11),
  plain: figureType(11.5, 12, 10.5, 9.5),
  fuller: figureType(11, 11.5, 10.5, 9.5),
  large: figureType(18, 20, 18, 18),
};

/** Text in figures on a slide, in pixels; 32 px is 24 pt, the least that a back row reads. */
export const screenType = {
  name: { size: 40, weight: 600 },
  value: { size: 36, weight: 700 },
  valueLooked: { size: 40, weight: 700 },
  label: { size: 32, weight: 600 },
  note: { size: 32, weight: 500 },
  result: { size: 56, weight: 800 },
} as const satisfies Readonly<Record<string, Role>>;

/** Height of a capital letter or digit, in em, of the family for Latin letters. */
export const CAP_HEIGHT = 0.668;
/** From the middle of a disc down to the baseline of the letter in it, in em. */
export const DISC_BASELINE = 0.334;

/** The grid of paper, in points: the narrow rail at the start edge and where the column begins. */
export const RAIL = mm(36);
export const AXIS = mm(42);

/** Room between two values on one line: on paper, on a slide. */
export const VALUE_GAP = { paper: mm(2.8), screen: 16 } as const;

/** Dashes: bricks that are gone, and the ring of what is not known. */
export const dashes = {
  gone: { color: [mm(0.9), mm(0.8)], one: [mm(1.3), mm(0.9)] },
  goneOnScreen: [5, 6],
  notKnown: [mm(1), mm(0.8)],
  notKnownOnScreen: [6, 6],
} as const;

/** The hatching of what is not sure: the only diagonal there is. */
export const hatching = {
  paper: { pitch: mm(1.4), width: mm(0.5) },
  screen: { pitch: 10, width: 3.4 },
} as const;
