import type { Color, Ink } from '../figures/index.js';

/** Millimeters as points. */
export function mm(length: number): number {
  return (length * 72) / 25.4;
}

export type Paper = 'letter' | 'a4';

/** Where things stand on a page. Points; x counts from the start edge (right in right-to-left sheets). */
export interface Grid {
  readonly width: number;
  readonly height: number;
  /** Margin at both sides; the rail starts here. */
  readonly side: number;
  readonly rail: number;
  readonly gutter: number;
  /** Where every line of text, every zero and every first brick starts. */
  readonly axis: number;
  /** Width from the axis to the end margin. */
  readonly column: number;
  /** Rail, gutter and column. */
  readonly measure: number;
  /** Where the body starts. */
  readonly top: number;
  /** Nothing but cut marks comes nearer to an edge. */
  readonly safe: number;
  /** Free space between the body and the footer. */
  readonly clear: number;
}

const SIZES: Readonly<Record<Paper, readonly [width: number, height: number]>> = {
  letter: [215.9, 279.4],
  a4: [210, 297],
};

/** The page grid: rail 36, gutter 6 and side margins 16 mm on both papers; the column takes the rest. */
export function gridFor(paper: Paper): Grid {
  const [width, height] = SIZES[paper];
  const side = 16;
  const rail = 36;
  const gutter = 6;
  const axis = side + rail + gutter;
  return {
    width: mm(width),
    height: mm(height),
    side: mm(side),
    rail: mm(rail),
    gutter: mm(gutter),
    axis: mm(axis),
    column: mm(width - axis - side),
    measure: mm(width - 2 * side),
    top: mm(11),
    safe: mm(8.5),
    clear: mm(1.1),
  };
}

export interface Colors {
  readonly ink: Color;
  /** Notes and basis. */
  readonly slate: Color;
  /** Table lines and tracks; never text. */
  readonly hair: Color;
  /** Look here. */
  readonly accent: Color;
  /** Message band, answers; never the only edge of anything that matters. */
  readonly tint: Color;
  readonly paper: Color;
}

const COLOR: Colors = {
  ink: '#14212b',
  slate: '#4a5a64',
  hair: '#7b8a93',
  accent: '#1f4e5f',
  tint: '#e4eef1',
  paper: '#ffffff',
};
const ONE: Colors = {
  ink: '#000000',
  slate: '#000000',
  hair: '#000000',
  accent: '#000000',
  tint: '#ffffff',
  paper: '#ffffff',
};

export function colorsFor(ink: Ink): Colors {
  return ink === 'one' ? ONE : COLOR;
}

/** Line widths in points. In one ink nothing is thinner than 1 pt: thinner lines vanish on a copy. */
export interface Strokes {
  readonly hair: number;
  readonly line: number;
  readonly firm: number;
  readonly bold: number;
}

export function strokesFor(ink: Ink): Strokes {
  return { hair: ink === 'one' ? 1 : 0.75, line: 1, firm: 1.5, bold: 2.25 };
}

/** Distances in points. One body line at `plain` is 6 mm, so the beat is 6 and its parts 3 and 1.5. */
export const SPACE = {
  ruleHeight: mm(0.8),
  ruleToStrip: mm(1.6),
  ruleToHead: mm(1.4),
  stripToTitle: mm(3.4),
  paragraph: mm(1.5),
  subhead: mm(3),
  textToFigure: mm(3),
  figureToChoose: mm(2.8),
  figureToBasis: mm(1.8),
  basisToCaution: mm(1.6),
  messageToCaution: mm(4),
  titleToCaution: mm(3),
  betweenCautions: mm(1),
  listItem: mm(1),
  listIndent: mm(5),
  tableRow: mm(1.5),
  tableCell: mm(2),
  columnGap: mm(6),
} as const;

/** Space above a section, before and after the slack is used. */
export const SECTION_SPACE = { loose: mm(5.2), tight: mm(4.5) } as const;
