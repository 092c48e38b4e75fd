import { mm } from '../geometry.js';
import type { Pen } from '../pen.js';
import type { Sheet } from '../sheet.js';
import type { Stage } from '../stage.js';
import { paperLines, type Role, screenLines, screenType } from '../tokens.js';

/** Sizes of a band on one medium; the drawing is the same on both. */
export interface BandLook {
  readonly pen: Pen;
  /** Where the plot starts when the marks' words need no more room. */
  readonly axis: number;
  /** The plot's height, or the height that all of it may take. */
  readonly plot: number;
  readonly fixed?: number;
  /** Names of months stand on the line of today (a slide) or at the foot (paper). */
  readonly monthsOnTop: boolean;
  readonly type: {
    readonly mark: Role;
    readonly month: Role;
    readonly range: Role;
    readonly note: Role;
  };
  readonly lines: {
    readonly today: number;
    readonly edge: number;
    readonly post: number;
    readonly tick: number;
    readonly guide: number;
    readonly stop: number;
  };
  readonly ring: number;
  /** Posts are in the accent: on a slide they are what is looked at. */
  readonly accentPosts: boolean;
  readonly gap: number;
  readonly tick: number;
  readonly guide: readonly number[];
  readonly far: readonly number[];
}

export function onPaper(sheet: Sheet): BandLook {
  const { pen, type, big, slack } = sheet;
  const { label, note } = type;
  return {
    pen,
    axis: sheet.rail ? sheet.axis : 0,
    plot: big ? slack(58, 66) : slack(46, 52),
    monthsOnTop: false,
    type: { mark: { ...label, weight: 400 }, month: { ...label, weight: 400 }, range: label, note },
    lines: {
      today: paperLines.bold,
      edge: paperLines.firm,
      post: paperLines.bold,
      tick: paperLines.line,
      guide: paperLines.hair,
      stop: 3.2,
    },
    ring: mm(1.1),
    accentPosts: false,
    gap: mm(1.6),
    tick: mm(1.6),
    guide: [mm(0.3), mm(1.5)],
    far: [mm(1.6), mm(1.2)],
  };
}

export function onScreen({ pen, height }: Stage): BandLook {
  const { label, note } = screenType;
  return {
    pen,
    axis: 196,
    plot: 0,
    fixed: height,
    monthsOnTop: true,
    type: { mark: { ...label, weight: 500 }, month: note, range: { size: 44, weight: 800 }, note },
    lines: {
      today: screenLines.box,
      edge: screenLines.box,
      post: screenLines.post,
      tick: 4,
      guide: 3,
      stop: 9,
    },
    ring: 7,
    accentPosts: true,
    gap: 14,
    tick: 14,
    guide: [2, 10],
    far: [14, 12],
  };
}
