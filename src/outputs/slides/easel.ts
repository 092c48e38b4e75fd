import type { Report } from '../../diagnostics/index.js';
import type { Inline } from '../../document/index.js';
import type { Color, Ink, Mark, TextInk } from '../../figures/index.js';
import type { Item } from '../../layout/index.js';
import type { Draft, Tree } from '../../layout/structure.js';
import { type Fonts, noGlyph, type Paragraph, type Span, setParagraph } from '../../text/index.js';
import { slideProblem } from './problems.js';
import { SLIDE, type SlideColors, type SlideType, slideColors } from './tokens.js';

/** A place on the slide; x counts from the reading start. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface EaselOptions {
  readonly fonts: Fonts;
  readonly language: string;
  readonly direction: 'ltr' | 'rtl';
  readonly ink: Ink;
  readonly tree: Tree;
  readonly report: Report;
  /** Named in problems: `Slide 5`. */
  readonly name: string;
}

/** Paints one slide. Places count from the reading start, so that right-to-left slides are mirrored. */
export interface Easel extends EaselOptions {
  readonly colors: SlideColors;
  readonly items: readonly Item[];
  /** Sets words without painting them. */
  readonly set: (
    inlines: readonly Inline[],
    type: SlideType,
    width: number,
    look?: Look,
  ) => Paragraph<TextInk>;
  /** Paints set words at a place as content of an element. */
  readonly words: (node: Draft, paragraph: Paragraph<TextInk>, x: number, y: number, width: number) => void;
  readonly content: (node: Draft, marks: readonly Mark[]) => void;
  readonly backdrop: (marks: readonly Mark[]) => void;
  readonly left: (x: number, width: number) => number;
  readonly rect: (
    box: Box,
    look: { readonly fill?: Color; readonly line?: number; readonly color?: Color },
  ) => Mark;
  /** Marks of a drawing scaled into a square or box, never mirrored. */
  readonly drawing: (marks: readonly Mark[], box: Box, scale: number) => Mark;
}

export interface Look {
  readonly color?: Color;
  /** Numbers and strong words in petrol. */
  readonly lookHere?: boolean;
  readonly balance?: boolean;
  readonly align?: 'start' | 'center' | 'end';
}

export function createEasel(options: EaselOptions): Easel {
  const { fonts, language, direction, report } = options;
  const colors = slideColors(options.ink);
  const items: Item[] = [];
  const scaled = (marks: readonly Mark[]): Mark[] =>
    marks.length === 0
      ? []
      : [{ kind: 'group', at: [SLIDE.pointsPerPixel, 0, 0, SLIDE.pointsPerPixel, 0, 0], marks }];
  const left = (x: number, width: number) => (direction === 'rtl' ? SLIDE.width - x - width : x);
  return {
    ...options,
    colors,
    items,
    left,
    set(inlines, type, width, look = {}) {
      const spans = inlines.map((inline) => spanOf(inline, type, look, colors));
      const paragraph = setParagraph(
        fonts,
        spans,
        { language, direction, ...type },
        { width, balance: look.balance ?? false, align: look.align ?? 'start' },
      );
      const missing = noGlyph(paragraph.missing, undefined);
      if (missing) report.add(missing);
      if (paragraph.overflow)
        report.add(
          slideProblem('slides/wide-word', `${options.name}: a word is wider than its place.`, {
            hint: 'Use a shorter word.',
          }),
        );
      return paragraph;
    },
    words(node, paragraph, x, y, width) {
      let top = y;
      const marks = paragraph.lines.map((line): Mark => {
        const mark: Mark = { kind: 'text', x: left(x, width), baseline: top + line.baseline, line };
        top += line.height;
        return mark;
      });
      this.content(node, marks);
    },
    content(node, marks) {
      if (marks.length === 0) return;
      items.push({ kind: 'content', node: node.id, marks: scaled(marks) });
    },
    backdrop(marks) {
      items.push({ kind: 'artifact', of: 'background', marks: scaled(marks) });
    },
    rect(box, look) {
      const x = left(box.x, box.width);
      const path = `M${x} ${box.y}L${x + box.width} ${box.y}L${x + box.width} ${box.y + box.height}L${x} ${box.y + box.height}Z`;
      return {
        kind: 'shape',
        path,
        ...(look.fill ? { fill: look.fill } : {}),
        ...(look.line ? { stroke: { color: look.color ?? colors.ink, width: look.line } } : {}),
      };
    },
    drawing(marks, box, scale) {
      return { kind: 'group', at: [scale, 0, 0, scale, left(box.x, box.width), box.y], marks };
    },
  };
}

function spanOf(inline: Inline, type: SlideType, look: Look, colors: SlideColors): Span<TextInk> {
  const meant = look.lookHere === true && (inline.number !== undefined || inline.strong === true);
  const weight = inline.strong ? (800 as const) : type.weight;
  return {
    text: `${inline.breakBefore ? '\n' : ''}${inline.text}`,
    weight,
    ...(inline.language ? { language: inline.language } : {}),
    data: {
      color: meant ? colors.petrol : (look.color ?? colors.ink),
      ...(inline.number ? { number: inline.number } : {}),
    },
  };
}
