// Contract
import type { Place } from '../diagnostics/index.js';
import type { FrontMatter } from './front-matter.js';

/**
 * What stands in running text. A `text` never spans lines of the source: each line is a text of its
 * own, with the blank that the line break stands for at its end, so that `place` is always right.
 * Whatever was refused (raw HTML, a link to a script) has been reported and stands as plain text.
 */
export type InlineNode = { readonly place: Place } & (
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'strong' | 'emphasis' | 'struck'; readonly children: readonly InlineNode[] }
  | { readonly kind: 'code'; readonly text: string }
  /** `href` begins with `http:`, `https:` or `mailto:`. */
  | {
      readonly kind: 'link';
      readonly href: string;
      readonly title?: string;
      readonly children: readonly InlineNode[];
    }
  /** The lesson's own picture: `src` is `pictures/…` with plain names, no `..`; `alt` may be empty only after a problem. */
  | { readonly kind: 'picture'; readonly src: string; readonly alt: string; readonly title?: string }
  | { readonly kind: 'break' }
  /** `:n[sodium]{of=pinto row="canned, drained" per=package}`; `of` is an id of the lesson, or a problem was reported. */
  | {
      readonly kind: 'number';
      readonly name: string;
      readonly of: string;
      readonly row?: string;
      readonly per?: string;
      readonly attributes: Attributes;
    }
  /** `:t[added sugars]`: a word of the term list. */
  | { readonly kind: 'term'; readonly text: string }
  /** `:cite[rickman-2007]`: the id of a source. */
  | { readonly kind: 'cite'; readonly source: string }
);

/** The value of an attribute, verbatim, and where it stands (the name's place when it has no value). */
export interface Attribute {
  readonly value: string;
  readonly place: Place;
}

/** Attributes in the order in which they were written. Only allowed names, each once. */
export type Attributes = ReadonlyMap<string, Attribute>;

/**
 * A line of words inside a directive. `text` is its source with escapes and character references
 * resolved and everything else as it was written (`2*3*4` keeps its stars), source lines joined by
 * one blank. `inlines` is the same as running text. `placeIn` finds the place of a stretch of `text`.
 */
export interface Line {
  readonly text: string;
  readonly inlines: readonly InlineNode[];
  /** The whole line, from its first character. */
  readonly place: Place;
  /** Where stretches of `text` begin in the source, in order; the first one is at 0. */
  readonly marks: readonly { readonly at: number; readonly line: number; readonly column: number }[];
}

/** A row of a directive's list, with the rows of the list inside it. */
export interface Row extends Line {
  readonly rows: readonly Row[];
}

export interface ListItem {
  readonly parts: readonly Part[];
  /** For `[ ]` and `[x]`. */
  readonly checked?: boolean;
  readonly place: Place;
}

export interface TableCell {
  readonly children: readonly InlineNode[];
  readonly place: Place;
}

/** A directive that computes or draws: what a folder of `directives/` reads. */
export interface DirectivePart {
  readonly kind: 'directive';
  readonly name: string;
  readonly form: 'container' | 'leaf';
  /** Unique in the lesson unless the directive's ids point to a register. */
  readonly id?: string;
  /** Every attribute as written, `id` too. */
  readonly attributes: Attributes;
  /** `::name[these words]`. */
  readonly label?: readonly InlineNode[];
  /** The lists of the body. */
  readonly rows: readonly Row[];
  /** The paragraphs of the body. */
  readonly text: readonly Line[];
  /** Directives that stand inside, for those that may hold some. */
  readonly parts: readonly DirectivePart[];
  /** From the first colon to the end of the opening line. */
  readonly place: Place;
  /** The first line of the body; the same as `place` for a leaf and for an empty body. */
  readonly bodyPlace: Place;
}

export const HOLDERS = ['slide', 'worksheet', 'staff', 'only', 'level', 'say', 'do'] as const;
export type HolderName = (typeof HOLDERS)[number];

/** A container that says where or for whom its parts are. */
export interface HolderPart {
  readonly kind: 'holder';
  readonly name: HolderName;
  readonly attributes: Attributes;
  readonly parts: readonly Part[];
  readonly place: Place;
}

export type HeadingLevel = 1 | 2 | 3 | 4 | 5 | 6;

export type Part =
  | {
      readonly kind: 'heading';
      readonly level: HeadingLevel;
      readonly children: readonly InlineNode[];
      readonly place: Place;
    }
  | { readonly kind: 'paragraph'; readonly children: readonly InlineNode[]; readonly place: Place }
  | {
      readonly kind: 'list';
      readonly ordered: boolean;
      readonly start?: number;
      readonly items: readonly ListItem[];
      readonly place: Place;
    }
  /** Every row has as many cells as the head. */
  | {
      readonly kind: 'table';
      readonly align: readonly ('left' | 'center' | 'right' | null)[];
      readonly head: readonly TableCell[];
      readonly rows: readonly (readonly TableCell[])[];
      readonly place: Place;
    }
  | { readonly kind: 'quote'; readonly parts: readonly Part[]; readonly place: Place }
  | { readonly kind: 'code'; readonly text: string; readonly place: Place }
  | DirectivePart
  | HolderPart;

export interface Lesson {
  readonly file: string;
  /** The lesson's folder name, such as `beans-three-ways`; missing when the file name tells none. */
  readonly slug?: string;
  readonly front: FrontMatter;
  readonly parts: readonly Part[];
  /** The text as it was read: lines end in `\n`, no byte order mark. For excerpts. */
  readonly text: string;
  /** The `# Title` of the body, or else the front matter's title. */
  readonly titlePlace: Place;
}
