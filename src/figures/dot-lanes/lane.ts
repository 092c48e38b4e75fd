import type { Sheet } from '../sheet.js';
import type { LaneDot } from '../spec.js';

/** A dot with its place. `end` marks the value's last edge, for a word that follows it. */
export interface PlacedDot {
  readonly dot: LaneDot;
  readonly x: number;
  readonly y: number;
  readonly tier: number;
  readonly valueMiddle: number;
  readonly valueWidth: number;
  readonly baseline: number;
}

/** One lane's fixed places. */
export interface LaneFrame {
  readonly sheet: Sheet;
  readonly radius: number;
  readonly trackY: number;
  readonly trackHeight: number;
  readonly start: number;
  readonly end: number;
  readonly valueBaseline: number;
}
