// Contract

import type { Place } from '../diagnostics/index.js';
import type { FigureSpec, Mark, Raster, SignName } from '../figures/index.js';

/** A stretch of text with one look. Flat on purpose: no nesting, so that no output can lose a part. */
export interface Inline {
  readonly text: string;
  readonly strong?: boolean;
  readonly emphasis?: boolean;
  readonly struck?: boolean;
  readonly code?: boolean;
  /** A line break stands before this stretch. */
  readonly breakBefore?: boolean;
  /** Id of the number that this text shows. */
  readonly number?: string;
  /** Id of the source that this text points to; its text is the source's number on the sheet. */
  readonly cite?: string;
  readonly href?: string;
  readonly language?: string;
}

/** A box to write in. */
export interface Field {
  /** What the field is for; the name that readers hear. Gives no answer away. */
  readonly label: string;
  /** Printed outside the box. */
  readonly unit?: string;
  /** A narrow box: for a price or a day, where many stand side by side. */
  readonly narrow?: boolean;
  /** The answer on the key. */
  readonly answer?: string;
}

export interface Cell {
  readonly inlines: readonly Inline[];
  readonly field?: Field;
  readonly align?: 'start' | 'end';
}

/** A lesson's own picture, read and checked. Vector pictures are marks in a box of `width` × `height`. */
export type Picture =
  | {
      readonly kind: 'vector';
      readonly width: number;
      readonly height: number;
      readonly marks: readonly Mark[];
    }
  | { readonly kind: 'raster'; readonly width: number; readonly height: number; readonly raster: Raster };

export interface Choice {
  readonly letter: string;
  readonly inlines: readonly Inline[];
  /** Drawing of the option's form, for the screen. */
  readonly sign?: SignName;
  /** On the key: whether this is the answer, its value as printed, the value's number, and why. */
  readonly key?: {
    readonly right: boolean;
    readonly value: string;
    readonly number?: string;
    readonly why: string;
  };
}

/** A caution on a goal card: whole, with the word of its heading where it has one. */
export interface CardCaution {
  readonly id: string;
  readonly word?: string;
  readonly inlines: readonly Inline[];
}

/** A card for one thing that its owner will do. */
export interface GoalCard {
  readonly title: string;
  /** Each a line to write on; with an answer on a sample. */
  readonly fields: readonly Field[];
  /** Words to ring; `picked` on a sample. */
  readonly sure?: {
    readonly label: string;
    readonly words: readonly { readonly text: string; readonly picked: boolean }[];
    /** What to do when one is not sure. */
    readonly hint: string;
  };
}

/**
 * What every output reads. The union is closed: an output that does not handle a kind does not
 * compile, so nothing is dropped in silence.
 */
export type Block = { readonly place?: Place } & (
  | { readonly kind: 'heading'; readonly level: 2 | 3 | 4; readonly inlines: readonly Inline[] }
  | { readonly kind: 'paragraph'; readonly inlines: readonly Inline[] }
  /** Portion, state, place, date and sources of a figure, in small slate type. */
  | { readonly kind: 'basis'; readonly inlines: readonly Inline[] }
  /** A `note` caution or a pointer to the caution block, beside its figure. */
  | {
      readonly kind: 'figure-caution';
      readonly inlines: readonly Inline[];
      readonly cautions: readonly string[];
    }
  | {
      readonly kind: 'list';
      readonly ordered: boolean;
      readonly start?: number;
      readonly items: readonly (readonly Block[])[];
    }
  | {
      readonly kind: 'table';
      readonly caption?: string;
      readonly head: readonly Cell[];
      readonly rows: readonly (readonly Cell[])[];
      readonly rowHeads: boolean;
    }
  | { readonly kind: 'quote'; readonly blocks: readonly Block[] }
  | { readonly kind: 'figure'; readonly figure: FigureSpec }
  /** "A when you have time to soak and cook": a column for each row of the figure before. */
  | {
      readonly kind: 'choose';
      readonly items: readonly { readonly letter: string; readonly inlines: readonly Inline[] }[];
    }
  | { readonly kind: 'picture'; readonly picture: Picture; readonly alt: string }
  /** One question with boxes to check. On the key each choice says whether it is right and why. */
  | {
      readonly kind: 'question';
      readonly id: string;
      readonly prompt: readonly Inline[];
      readonly choices: readonly Choice[];
      readonly answer?: readonly Inline[];
    }
  | { readonly kind: 'write'; readonly label: string; readonly lines: number }
  /** A goal card in the column, or `cut` over the whole page so many times. */
  | {
      readonly kind: 'card';
      readonly id: string;
      readonly card: GoalCard;
      readonly copies: 2 | 4;
      readonly cut?: boolean;
      /** Put there when the sheet is put together; they stand on every copy. */
      readonly cautions: readonly CardCaution[];
      /** For beginning readers a pencil stands beside the lines. */
      readonly pictures: boolean;
    }
  /** Only on keys: the reason or the worked line, on tint. */
  | { readonly kind: 'why'; readonly inlines: readonly Inline[] }
);
export type BlockKind = Block['kind'];
