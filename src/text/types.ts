/** Weights that the families are drawn in. */
export type Weight = 400 | 500 | 600 | 700 | 800;

/** How text is set. `size` and `leading` are in the caller's unit (points or pixels); all results are too. */
export interface TextStyle {
  /** BCP 47 tag; it chooses the family and the forms of letters. */
  readonly language: string;
  /** Base direction of the paragraph. It is never guessed from the text. */
  readonly direction: 'ltr' | 'rtl';
  readonly size: number;
  /** Height of each line. */
  readonly leading: number;
  readonly weight: Weight;
  /** Space added after each letter, in em. Joined scripts (Arabic) take none: it would cut the joins. */
  readonly tracking?: number;
  /** Digits of one width, for columns. */
  readonly tabular?: boolean;
}

/** A stretch of text with one look. `data` is handed back untouched: color, link, number. */
export interface Span<T = unknown> {
  readonly text: string;
  /** Instead of the style's weight. */
  readonly weight?: Weight;
  /** Instead of the style's language. */
  readonly language?: string;
  readonly data?: T;
}

/** One font file, ready to use. Lengths are in its own units (`unitsPerEm` to the em), y up. */
export interface FontFace {
  /** Unique among the fonts and the same on every run, such as `atkinson-hyperlegible-next-600`. */
  readonly id: string;
  /** PostScript name, such as `AtkinsonHyperlegibleNext-SemiBold`. */
  readonly name: string;
  readonly weight: Weight;
  readonly unitsPerEm: number;
  /** From the baseline up. */
  readonly ascent: number;
  /** From the baseline down, positive. */
  readonly descent: number;
  readonly capHeight: number;
  /** Smallest box around all glyphs: left, bottom, right, top. */
  readonly box: readonly [number, number, number, number];
  /** The whole file, TrueType. */
  readonly bytes: Uint8Array;
  /** Width of a glyph as the font has it, before kerning. */
  advance(glyph: number): number;
  /** Whether the font has a drawing for the character. */
  covers(codePoint: number): boolean;
  /** Outline as SVG path data with M, L, Q, C and Z, in font units, y up; empty for spaces. */
  path(glyph: number): string;
  /** See `subsetFont`. */
  subset(glyphs: Iterable<number>): Uint8Array;
}

/** One glyph of a run, in visual order. Lengths are in the style's unit, y up. */
export interface Glyph {
  /** Number of the glyph in the font; 0 is the box for what is missing. */
  readonly id: number;
  /** Index in the run's text of the first UTF-16 unit that the glyph stands for. */
  readonly cluster: number;
  /** How far the pen moves, kerning and tracking included; 0 for marks and spaces at the end of a line. */
  readonly advance: number;
  /** Where the glyph is drawn from the pen: marks and their like. */
  readonly dx: number;
  readonly dy: number;
}

/** Glyphs of one font, one direction and one span. */
export interface GlyphRun<T = unknown> {
  readonly font: FontFace;
  readonly size: number;
  /** From left to right as they are drawn, also in right-to-left runs. */
  readonly glyphs: readonly Glyph[];
  /** What the run says, in reading order; clusters count in it. */
  readonly text: string;
  /** Where `text` starts in the line's text. */
  readonly start: number;
  /** Left edge of the run, from the left edge of the box in which the text was aligned. */
  readonly x: number;
  /** Sum of the advances. */
  readonly width: number;
  readonly rtl: boolean;
  readonly language: string;
  readonly span: Span<T>;
}

/** One line. Its runs touch each other and stand from left to right. */
export interface Line<T = unknown> {
  readonly runs: readonly GlyphRun<T>[];
  /** Left edge of the first run, from the left edge of the box in which the text was aligned. */
  readonly x: number;
  /** Spaces at the end do not count. */
  readonly width: number;
  /** Tallest font of the line, up from the baseline. */
  readonly ascent: number;
  /** Deepest font of the line, down from the baseline, positive. */
  readonly descent: number;
  /** From the line's top. The same in every line of a style, whatever other fonts a line holds. */
  readonly baseline: number;
  /** The style's leading. */
  readonly height: number;
  /** What the line says in reading order, with the spaces and line breaks at its end. */
  readonly text: string;
}

/** A character that no font has; the box glyph was drawn for it. */
export interface MissingCharacter {
  readonly character: string;
  readonly codePoint: number;
}

export interface SetLine<T = unknown> extends Line<T> {
  /** Each character once, in the order of the text. */
  readonly missing: readonly MissingCharacter[];
}

export interface Paragraph<T = unknown> {
  /** No lines for no text. The texts of the lines, joined, are the text that was given. */
  readonly lines: readonly Line<T>[];
  /** Widest line. */
  readonly width: number;
  readonly height: number;
  /** True when a word is wider than the measure. It stands alone on its line and sticks out. */
  readonly overflow: boolean;
  /** Lines beyond `maxLines`. They are set all the same: no text is dropped. */
  readonly excess: number;
  readonly missing: readonly MissingCharacter[];
}

export interface ParagraphOptions {
  /** The measure: width of the box. */
  readonly width: number;
  /** Default `start`. */
  readonly align?: 'start' | 'center' | 'end';
  /** Makes lines of even length without needing one more line. */
  readonly balance?: boolean;
  readonly maxLines?: number;
}
