import type { Color } from '../drawing.js';
import type { Pen } from '../pen.js';
import type { LaneDot } from '../spec.js';
import type { Role } from '../tokens.js';

/** Where a dot and its value stand along the lane. */
export interface AlongLane {
  readonly dot: LaneDot;
  readonly x: number;
  /** 0 on the track, 1 and more below it. */
  readonly tier: number;
  readonly valueMiddle: number;
  readonly valueWidth: number;
}

export interface PlacedDot extends AlongLane {
  readonly y: number;
  /** Of the value. */
  readonly baseline: number;
}

/** Sizes in which "look here" is drawn. */
export interface LookSizes {
  readonly radius: number;
  /** Of the word. */
  readonly label: Role;
  /** Least room between two values. */
  readonly gap: number;
  /** From a dot to the arrow. */
  readonly clear: number;
  readonly head: number;
  readonly line: number;
  /** From one hanging dot down to the next. */
  readonly hang: number;
}

/** One lane's fixed places. */
export interface LaneFrame {
  readonly pen: Pen;
  readonly sizes: LookSizes;
  readonly trackY: number;
  /** Lower edge of the track and of the dots on it. */
  readonly edge: number;
  readonly start: number;
  readonly end: number;
  readonly valueBaseline: number;
  /** What the lane's line is drawn on; the arrow clears the line away. */
  readonly ground: Color;
}
