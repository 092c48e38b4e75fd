import type { Drawing, FigureSpec, FrameMaker, Ink, Mark, SignName } from '../../figures/index.js';
import type { Fonts } from '../../text/index.js';

/** What the deck asks of fonts and figures. */
export interface SlideTools {
  readonly fonts: Fonts;
  readonly frames: FrameMaker;
  readonly ink: Ink;
  /** Draws a figure for a stage of this size. */
  readonly draw: (spec: FigureSpec, width: number, height: number) => Drawing;
  /** The vessel of a form, its left edge at 0 and its foot on y = 0. */
  readonly sign: (sign: SignName, size: number) => readonly Mark[];
  /** A vessel or food picture by name, in its own box; nothing when there is none. */
  readonly picture: (name: string) => Drawing | undefined;
  /** ISO day of the build. */
  readonly date: string;
}
