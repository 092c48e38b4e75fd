import type { Problem } from '../diagnostics/index.js';
import type { Fonts } from '../text/index.js';
import type { Drawing, Ink, Medium } from './drawing.js';
import type { FigureLevel } from './tokens.js';

export interface DrawOptions {
  readonly fonts: Fonts;
  readonly medium: Medium;
  readonly ink: Ink;
  readonly level: FigureLevel;
  /** The pictures of foods; without them a counter is empty but for its letter. */
  readonly picture?: (name: string, ink: Ink) => Drawing | undefined;
  /** BCP 47 tag of the words. */
  readonly language: string;
  readonly direction: 'ltr' | 'rtl';
  /** On paper the whole measure, rail included, in points; on a slide the stage's width in pixels. */
  readonly width: number;
  /**
   * Paper: where zeros and first bricks stand, from the start edge. 0 means no rail: then row names
   * stand above the rows. Default: the page's axis, and 0 in large print.
   */
  readonly axis?: number;
  /** Paper: from 1 (airy, the default) to 0 (all slack in the figure is taken out). */
  readonly slack?: number;
  /** Slide: the height the figure may take; its foot stands on the shelf. Default 468. */
  readonly height?: number;
}

export interface Drawn {
  readonly drawing: Drawing;
  readonly problems: readonly Problem[];
}
