// Contract
import type { Line } from '../text/index.js';

/** Black and tints, or black only (its own pictures, no greys). */
export type Ink = 'color' | 'one';
/** Paper is drawn in points, y down; the screen in pixels of a 1280 × 720 (or 960 × 720) stage, y down. */
export type Medium = 'paper' | 'screen';

/** A resolved color, `#rrggbb`. */
export type Color = string;

export interface GradientStop {
  readonly offset: number;
  readonly color: Color;
  readonly opacity?: number;
}

/** A flat color or a gradient (only pictures have gradients). Coordinates are the mark's own. */
export type Paint =
  | Color
  | {
      readonly kind: 'linear';
      readonly from: readonly [number, number];
      readonly to: readonly [number, number];
      readonly stops: readonly GradientStop[];
    }
  | {
      readonly kind: 'radial';
      readonly center: readonly [number, number];
      readonly radius: number;
      readonly stops: readonly GradientStop[];
      /** Applied to the gradient's own circle. */
      readonly at?: Matrix;
    };

export interface Stroke {
  readonly color: Color;
  readonly width: number;
  readonly dash?: readonly number[];
  readonly cap?: 'butt' | 'round' | 'square';
  readonly join?: 'miter' | 'round' | 'bevel';
}

/** `[a b c d e f]` as in SVG and PDF: x' = a x + c y + e, y' = b x + d y + f. */
export type Matrix = readonly [number, number, number, number, number, number];

/** What a text span carries through the text engine. */
export interface TextInk {
  readonly color: Color;
  /** Id of the number that this text shows, for tracing. */
  readonly number?: string;
  readonly href?: string;
  readonly underline?: boolean;
}

/** A raster picture of the lesson's own, already checked; `turn` is the EXIF orientation 1 to 8. */
export interface Raster {
  readonly id: string;
  readonly format: 'png' | 'jpeg';
  readonly bytes: Uint8Array;
  /** Pixels as stored, before the turn. */
  readonly width: number;
  readonly height: number;
  readonly turn: number;
}

/** One thing on a drawing. Paths are absolute SVG path data with only M, L, C and Z. */
export type Mark =
  | {
      readonly kind: 'shape';
      readonly path: string;
      readonly fill?: Paint;
      readonly fillOpacity?: number;
      readonly evenOdd?: boolean;
      readonly stroke?: Stroke;
    }
  /**
   * `x` is the left edge of the box in which the line was aligned: each run is drawn at `x + run.x`
   * (a line from `setLine` starts at 0). `baseline` is y.
   */
  | {
      readonly kind: 'text';
      readonly x: number;
      readonly baseline: number;
      readonly line: Line<TextInk>;
      readonly hidden?: boolean;
    }
  | {
      readonly kind: 'group';
      readonly at?: Matrix;
      readonly clip?: string;
      readonly opacity?: number;
      readonly marks: readonly Mark[];
    }
  | {
      readonly kind: 'raster';
      readonly raster: Raster;
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
    };

/** A finished drawing: its size and what is on it, back to front. */
export interface Drawing {
  readonly width: number;
  readonly height: number;
  readonly marks: readonly Mark[];
}
