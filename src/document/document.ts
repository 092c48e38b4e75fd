// Contract
import type { Place } from '../diagnostics/index.js';
import type { Level } from '../reading/index.js';
import type { Block, Inline } from './blocks.js';

/** The word on a caution box, as the register has it. */
export type CautionHeading = 'Stop' | 'Every time' | 'Ask first';

/** One caution, whole: never shortened, merged with another, split or set smaller. */
export interface CautionLine {
  /** Id in the register, or the lesson's own. */
  readonly id: string;
  readonly heading: CautionHeading;
  /** The heading's word in the reader's language. */
  readonly word: string;
  readonly inlines: readonly Inline[];
}

/** The single caution block of a sheet, in the order it prints: Stop, Every time, Ask first. */
export interface CautionBlock {
  readonly lines: readonly CautionLine[];
  /** "your doctor, nurse or pharmacist", under the word Ask first. */
  readonly whoToAsk: string;
  /** Standard lines that are for everybody (what the page is for, when to call for help), at the foot of the block. */
  readonly standing?: { readonly inlines: readonly Inline[]; readonly cautions: readonly string[] };
}

/** What every page prints about itself. */
export interface Stamp {
  /** Such as `BEANS3 · P-EN · 4F7C`. */
  readonly version: string;
  /** Such as `Food data: 28 September 2015` (the newest edition used). */
  readonly dataDate: string;
  /** `Not yet reviewed.` or who reviewed it, when, and when to check again. */
  readonly review: string;
  /** `Page {page} of {pages}` in the reader's language. */
  readonly page: string;
  /** True past the review date: the middle part turns white on ink. */
  readonly expired: boolean;
  /** Present while a Stop stands: `Draft, do not hand out`. */
  readonly draft?: string;
}

/** One numbered source of a sheet. */
export interface SourceLine {
  readonly id: string;
  readonly number: number;
  readonly words: string;
  /** Its date, or how it was seen, for the slides: `Data of September 2015.` */
  readonly state?: string;
  readonly href?: string;
}

/** A line of words in several languages (the interpreter line), each in its own font. */
export interface MixedLine {
  readonly parts: readonly { readonly text: string; readonly language: string; readonly strong?: boolean }[];
}

export type SheetKind = 'handout' | 'worksheet' | 'key' | 'staff' | 'review' | 'notes' | 'cards' | 'prices';

/** A sheet of paper before it is laid out: the hub that the paper outputs read. */
export interface Sheet {
  readonly kind: SheetKind;
  readonly language: string;
  readonly direction: 'ltr' | 'rtl';
  readonly level: Level;
  /** The same sheet without weight: no number, unit or word of it. */
  readonly weightFree?: true;
  readonly title: string;
  /** Site at the start of the strip, talk and place at its end. */
  readonly strip: { readonly start: string; readonly end: string };
  /** Picture name in the emblem. */
  readonly emblem: string;
  /** Main message; empty on a worksheet. */
  readonly message: readonly Inline[];
  readonly cautions: CautionBlock;
  readonly blocks: readonly Block[];
  readonly sources: readonly SourceLine[];
  /** Local notices, after the lines for everybody; they are no cautions. */
  readonly notices?: readonly (readonly Inline[])[];
  readonly interpreter?: MixedLine;
  readonly stamp: Stamp;
  /** Printed terms that the layout itself needs. */
  readonly words: { readonly sources: string; readonly key: string };
}

/** What stands on a slide's stage. */
export type Stage =
  | { readonly kind: 'open'; readonly audience: string; readonly pictures: readonly string[] }
  | { readonly kind: 'say'; readonly sentence: readonly Inline[]; readonly picture?: string }
  | { readonly kind: 'words'; readonly blocks: readonly Block[]; readonly picture?: string }
  | {
      readonly kind: 'show';
      readonly block: Block & { readonly kind: 'figure' };
      /** The slide's title at this step, where the figure fills step by step. */
      readonly title?: readonly Inline[];
      /** The question that the figure is about; it is the slide's title, or stands below it. */
      readonly prompt?: readonly Inline[];
    }
  | { readonly kind: 'ask'; readonly question: Block & { readonly kind: 'question' } }
  | { readonly kind: 'answer'; readonly question: Block & { readonly kind: 'question' } }
  | {
      readonly kind: 'do';
      readonly minutes: number;
      /** `8 minutes`, as printed. */
      readonly said?: string;
      readonly steps: readonly (readonly Inline[])[];
      readonly pictures: readonly string[];
    }
  | { readonly kind: 'caution'; readonly block: CautionBlock }
  | { readonly kind: 'sources'; readonly sources: readonly SourceLine[] };

/** One slide: one idea. */
export interface Slide {
  readonly id: string;
  /** The number that is printed; steps of one slide share it. */
  readonly number: number;
  readonly title: readonly Inline[];
  readonly stage: Stage;
  /** The shelf's sentences in order: notes, pointers, basis, sources. */
  readonly shelf: readonly Inline[];
  /** So many stretches of the shelf, from the first, are notes and pointers: they are read before the figure. */
  readonly notes?: number;
  readonly minutes: number;
  readonly say: readonly Block[];
  readonly do: readonly Block[];
  /** The talk length that drops this slide, if any. */
  readonly cut?: number;
  /** Where it stands in the lesson. */
  readonly place?: Place;
}

/** A deck before it is laid out. */
export interface Deck {
  readonly language: string;
  readonly direction: 'ltr' | 'rtl';
  readonly title: string;
  readonly slides: readonly Slide[];
  readonly draft?: string;
  readonly stamp: Stamp;
}
