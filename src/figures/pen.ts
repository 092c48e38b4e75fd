import {
  type Fonts,
  type Line,
  type MissingCharacter,
  type Paragraph,
  type SetLine,
  type Span,
  setLine,
  setParagraph,
} from '../text/index.js';
import type { Color, Ink, Mark, Medium, Stroke, TextInk } from './drawing.js';
import type { Box, Point } from './geometry.js';
import { hatchMark } from './hatch.js';
import { circlePath, linePath, polyPath, rectPath } from './shapes.js';
import { type Palette, paletteFor, paperLines, type Role } from './tokens.js';

/** How a shape looks. A shape with neither fill nor edge draws nothing. */
export interface Look {
  readonly fill?: Color;
  readonly edge?: Color;
  /** Of the edge. In one ink on paper it is never thinner than a line. */
  readonly width?: number;
  readonly dash?: readonly number[];
  readonly cap?: Stroke['cap'];
}

export interface Words extends Role {
  readonly color?: Color;
  /** Id of the number that the words show. */
  readonly number?: string;
  readonly tabular?: boolean;
}

export type Anchor = 'start' | 'middle' | 'end';

/** A place that words must keep away from, with what stands there. */
export interface Taken {
  readonly box: Box;
  readonly what: string;
}

export interface PenOptions {
  readonly fonts: Fonts;
  readonly width: number;
  readonly direction: 'ltr' | 'rtl';
  readonly language: string;
  readonly medium: Medium;
  readonly ink: Ink;
}

/**
 * Draws in coordinates that run with the reading: x is 0 at the start edge, so one way of drawing
 * serves both directions. Signs and pictures are placed by their middle and never mirrored.
 */
export interface Pen {
  readonly palette: Palette;
  readonly width: number;
  readonly rtl: boolean;
  readonly ink: Ink;
  /** The height is given and not found (slides). */
  readonly fixed: boolean;
  readonly marks: readonly Mark[];
  readonly taken: readonly Taken[];
  readonly missing: readonly MissingCharacter[];
  rect(x: number, y: number, width: number, height: number, look: Look & { readonly radius?: number }): void;
  circle(x: number, y: number, radius: number, look: Look): void;
  line(x1: number, y1: number, x2: number, y2: number, look?: Look): void;
  poly(points: readonly Point[], look: Look, closed?: boolean): void;
  hatch(x: number, y: number, width: number, height: number): void;
  /** The same inside a closed outline. */
  hatchInside(points: readonly Point[]): void;
  /** Marks made for a middle at 0, 0, put at a place. */
  place(x: number, y: number, marks: readonly Mark[]): void;
  /** Marks made for a left edge at 0 and a given width, put so that they start at x. */
  placeWide(x: number, width: number, y: number, marks: readonly Mark[]): void;
  set(text: string | readonly Span<TextInk>[], words: Words): SetLine<TextInk>;
  put(line: Line<TextInk>, x: number, baseline: number, anchor?: Anchor): void;
  paragraph(
    text: string | readonly Span<TextInk>[],
    words: Words,
    width: number,
    options?: ParagraphLook,
  ): Paragraph<TextInk>;
  /** Puts a paragraph into the box that starts at x, its first baseline at y; lines are `leading` apart. */
  putParagraph(paragraph: Paragraph<TextInk>, x: number, width: number, y: number, leading: number): void;
  /** Keeps a place free of words. */
  take(x: number, y: number, width: number, height: number, what: string): void;
}

export interface ParagraphLook {
  readonly align?: 'start' | 'center' | 'end';
  readonly balance?: boolean;
}

export function createPen(options: PenOptions): Pen {
  const { fonts, width, direction, language, medium, ink } = options;
  const rtl = direction === 'rtl';
  const palette = paletteFor(medium, ink);
  const marks: Mark[] = [];
  const taken: Taken[] = [];
  const missing: MissingCharacter[] = [];
  const at = (x: number) => (rtl ? width - x : x);
  /** Left edge of something that starts at x and is so wide. */
  const left = (x: number, wide: number) => (rtl ? width - x - wide : x);
  const strokeOf = (look: Look): { stroke?: Stroke } =>
    look.edge === undefined
      ? {}
      : {
          stroke: {
            color: look.edge,
            width:
              ink === 'one' && medium === 'paper'
                ? Math.max(paperLines.line, look.width ?? paperLines.line)
                : (look.width ?? paperLines.line),
            ...(look.dash ? { dash: look.dash } : {}),
            ...(look.cap ? { cap: look.cap } : {}),
            join: 'round',
          },
        };
  const shape = (path: string, look: Look) => {
    if (look.fill === undefined && look.edge === undefined) return;
    marks.push({
      kind: 'shape',
      path,
      ...(look.fill === undefined ? {} : { fill: look.fill }),
      ...strokeOf(look),
    });
  };
  const spanOf = (text: string, words: Words): Span<TextInk> => ({
    text,
    data: {
      color: words.color ?? palette.ink,
      ...(words.number === undefined ? {} : { number: words.number }),
    },
  });
  const styleOf = (words: Words) => ({
    language,
    direction,
    size: words.size,
    leading: words.size * 1.2,
    weight: words.weight,
    ...(words.tabular ? { tabular: true } : {}),
  });
  const put = (line: Line<TextInk>, from: number, baseline: number) => {
    if (line.runs.length > 0) marks.push({ kind: 'text', x: from, baseline, line });
  };

  return {
    palette,
    width,
    rtl,
    ink,
    fixed: medium === 'screen',
    marks,
    taken,
    missing,
    rect: (x, y, w, h, look) => shape(rectPath(left(x, w), y, w, h, look.radius), look),
    circle: (x, y, r, look) => shape(circlePath(at(x), y, r), look),
    line: (x1, y1, x2, y2, look = {}) =>
      shape(linePath(at(x1), y1, at(x2), y2), { edge: palette.ink, ...look }),
    poly: (points, look, closed = false) =>
      shape(
        polyPath(
          points.map(([x, y]): Point => [at(x), y]),
          closed,
        ),
        look,
      ),
    hatch: (x, y, w, h) => {
      const box = { left: left(x, w), top: y, right: left(x, w) + w, bottom: y + h };
      marks.push(hatchMark(box, { medium, color: palette.ink, mirrored: rtl }));
    },
    hatchInside: (points) => {
      const placed = points.map(([x, y]): Point => [at(x), y]);
      const [xs, ys] = [placed.map(([x]) => x), placed.map(([, y]) => y)];
      const box = {
        left: Math.min(...xs),
        top: Math.min(...ys),
        right: Math.max(...xs),
        bottom: Math.max(...ys),
      };
      const clip = polyPath(placed, true);
      marks.push(hatchMark(box, { medium, color: palette.ink, mirrored: rtl, clip }));
    },
    place: (x, y, placed) => void marks.push({ kind: 'group', at: [1, 0, 0, 1, at(x), y], marks: placed }),
    placeWide: (x, wide, y, placed) =>
      void marks.push({ kind: 'group', at: [1, 0, 0, 1, left(x, wide), y], marks: placed }),
    set: (text, words) => {
      const line = setLine(fonts, typeof text === 'string' ? [spanOf(text, words)] : text, styleOf(words));
      missing.push(...line.missing);
      return line;
    },
    put: (line, x, baseline, anchor = 'start') => {
      const start = anchor === 'start' ? x : anchor === 'middle' ? x - line.width / 2 : x - line.width;
      put(line, left(start, line.width), baseline);
    },
    paragraph: (text, words, measure, look = {}) => {
      const paragraph = setParagraph(
        fonts,
        typeof text === 'string' ? [spanOf(text, words)] : text,
        styleOf(words),
        {
          width: measure,
          ...look,
        },
      );
      missing.push(...paragraph.missing);
      return paragraph;
    },
    putParagraph: (paragraph, x, wide, y, leading) => {
      for (const [index, line] of paragraph.lines.entries()) put(line, left(x, wide), y + index * leading);
    },
    take: (x, y, w, h, what) =>
      void taken.push({ box: { left: left(x, w), top: y, right: left(x, w) + w, bottom: y + h }, what }),
  };
}
