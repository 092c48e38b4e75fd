import type { CautionBlock, Inline, SourceLine, Stamp } from '../document/index.js';
import type { SlideFits, slideProblem } from '../outputs/slides/index.js';
import type { Viewer } from './viewer.js';

/** What a deck is put together from, beside the lesson's slides. */
export interface DeckTools {
  readonly viewer: Viewer;
  readonly fits: SlideFits;
  /** All boxes of the deck; they stand on slides of their own before the first figure. */
  readonly cautions: CautionBlock;
  /** Sentences of the register for the shelf. */
  readonly shelf: {
    /** Of the first slide. */
    readonly first: readonly Inline[];
    /** Of caution slides, one sentence group each. */
    readonly caution: readonly (readonly Inline[])[];
    /** Of a stop line that leads a figure: it stood on a caution slide before. */
    readonly stop: readonly Inline[];
    /**
     * Of a figure: its notes, and where its cautions stand; `here` when its stop lines stand on the shelf
     * too, so that nothing need point to them.
     */
    readonly figure: (id: string, cautionSlide: number, here: boolean) => readonly Inline[];
  };
  /** Stop lines of a figure, whole: they stand on the figure's own slide too. */
  readonly stops: (id: string) => CautionBlock | undefined;
  readonly stamp: Stamp;
  readonly draft?: string;
  /** Gives sources their numbers and lists those that were met. */
  readonly sources: {
    readonly number: (inlines: readonly Inline[]) => Inline[];
    readonly list: () => readonly SourceLine[];
  };
  /** Local notices, on a slide of their own before the sources. */
  readonly notices: readonly string[];
  /** Place and day of the talk, on the first slide. */
  readonly where: string;
  /** Whom the talk is for, on the first slide. */
  readonly audience: string;
  readonly problem: (slide: ReturnType<typeof slideProblem>) => void;
}
