// Contract
import type { Mark } from '../figures/index.js';

/** Structure roles of PDF 1.7 that we use. */
export type Role =
  | 'Document'
  | 'Sect'
  | 'H1'
  | 'H2'
  | 'H3'
  | 'H4'
  | 'P'
  | 'L'
  | 'LI'
  | 'Lbl'
  | 'LBody'
  | 'Table'
  | 'THead'
  | 'TBody'
  | 'TR'
  | 'TH'
  | 'TD'
  | 'Caption'
  | 'Figure'
  | 'Note'
  | 'BlockQuote'
  | 'Link'
  | 'Span'
  | 'Form'
  | 'Div';

/** One element of the structure tree. Its content stands in the pages' items that name its id. */
export interface StructureNode {
  readonly id: string;
  readonly role: Role;
  readonly children: readonly StructureNode[];
  /** Required on Figure and Form. */
  readonly alt?: string;
  readonly language?: string;
  readonly title?: string;
  /** On TH. */
  readonly scope?: 'Row' | 'Column';
  /** On L with numbers. */
  readonly numbering?: 'None' | 'Disc' | 'Decimal' | 'UpperAlpha';
  /** On Figure: page index and box in points, y down. */
  readonly box?: {
    readonly page: number;
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
  };
}

/**
 * Something at a fixed place: real content that belongs to one structure element, or an artifact.
 * Always one of the two. Items stand in reading order; a node may have several items.
 */
export type Item =
  | { readonly kind: 'content'; readonly node: string; readonly marks: readonly Mark[] }
  | {
      readonly kind: 'artifact';
      readonly of: 'pagination' | 'layout' | 'background';
      readonly marks: readonly Mark[];
    }
  /** A clickable area; `node` is a Link element that also holds the link's text. */
  | {
      readonly kind: 'link';
      readonly node: string;
      readonly href: string;
      readonly words: string;
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
    };

/** Points, y down from the top edge. */
export interface Page {
  readonly width: number;
  readonly height: number;
  readonly items: readonly Item[];
}

/** Finished pages with their structure: what the writers turn to bytes. */
export interface Pages {
  readonly title: string;
  readonly language: string;
  readonly direction: 'ltr' | 'rtl';
  /** The program's subject line and keywords, if any. */
  readonly subject?: string;
  readonly pages: readonly Page[];
  readonly structure: StructureNode;
  /** Bookmarks: a page each (slides) or headings. */
  readonly outline: readonly { readonly title: string; readonly page: number }[];
  /** ISO day on which the build depends; the only date in the file. */
  readonly date: string;
}
