import type { Place, Report } from '../../diagnostics/index.js';
import type { Inline } from '../../document/index.js';
import type { Color, Ink, Mark, TextInk } from '../../figures/index.js';
import { type Palette, paletteFor } from '../../figures/index.js';
import type { Item } from '../../layout/index.js';
import type { Draft, Tree } from '../../layout/structure.js';
import { isolateNumbers } from '../../layout/typeset.js';
import { type Fonts, type Line, noGlyph, type Paragraph, type Span, setParagraph } from '../../text/index.js';
import { glueNumbers } from './glue.js';
import { type SlideCode, slideProblem } from './problems.js';
import { LINES, SLIDE, type SlideType, type SlideTypes, typesFor } from './tokens.js';

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
  /** Where the slide stands in the lesson. */
  readonly place?: Place;
}

/** What a glyph run of a slide remembers. */
export interface SlideInk extends TextInk {
  /** Looked at: petrol, and underlined where there is one ink only. */
  readonly looked?: boolean;
  /** Which of several elements the run belongs to. */
  readonly part: number;
}

/** Set words with the width of the box that they are aligned in. */
export interface SetWords extends Paragraph<SlideInk> {
  readonly measure: number;
  readonly align: 'start' | 'center' | 'end';
}

export interface Look {
  readonly color?: Color;
  /** Numbers and strong words in petrol. */
  readonly lookHere?: boolean;
  readonly balance?: boolean;
  readonly align?: 'start' | 'center' | 'end';
  /** So many stretches from the first belong to element 0, the rest to element 1. */
  readonly first?: number;
}

/** Paints one slide. Places count from the reading start, so that right-to-left slides are mirrored. */
export interface Easel extends EaselOptions {
  readonly palette: Palette;
  readonly types: SlideTypes;
  readonly items: readonly Item[];
  /** Where words stand: nothing else may be put there. */
  readonly taken: readonly Box[];
  /** Sets words without painting them. */
  readonly set: (inlines: readonly Inline[], type: SlideType, width: number, look?: Look) => SetWords;
  /** Paints set words at a place as content of an element. */
  readonly words: (node: Draft, words: SetWords, x: number, y: number) => void;
  /** Says what is wrong with words that are painted by others. */
  readonly check: (words: SetWords) => void;
  readonly content: (node: Draft, marks: readonly Mark[]) => void;
  readonly backdrop: (marks: readonly Mark[]) => void;
  /** From the reading start to the left edge. */
  readonly left: (x: number, width: number) => number;
  readonly rect: (
    box: Box,
    look: { readonly fill?: Color; readonly line?: number; readonly color?: Color },
  ) => Mark;
  /** Marks of a drawing scaled and put with its upper left corner at a place; never mirrored. */
  readonly drawing: (marks: readonly Mark[], box: Box, scale: number) => Mark;
  readonly problem: (code: SlideCode, message: string, hint: string) => void;
}

export function createEasel(options: EaselOptions): Easel {
  const { fonts, language, direction, ink, name, place, report } = options;
  const palette = paletteFor('screen', ink);
  const items: Item[] = [];
  const taken: Box[] = [];
  const scaled = (marks: readonly Mark[]): Mark[] => [
    { kind: 'group', at: [SLIDE.pointsPerPixel, 0, 0, SLIDE.pointsPerPixel, 0, 0], marks },
  ];
  const left = (x: number, width: number) => (direction === 'rtl' ? SLIDE.width - x - width : x);
  const content = (node: Draft, marks: readonly Mark[]) => {
    if (marks.length > 0) items.push({ kind: 'content', node: node.id, marks: scaled(marks) });
  };
  const problem = (code: SlideCode, message: string, hint: string) =>
    report.add(slideProblem(code, `${name}: ${message}`, { hint, ...(place ? { place } : {}) }));
  const check = (words: SetWords) => {
    const missing = noGlyph(words.missing, place);
    if (missing) report.add(missing);
    if (!words.overflow) return;
    const wide = words.lines.find((line) => line.width > words.measure)?.text.trim() ?? '';
    problem('slides/wide-word', `“${wide}” is wider than its place.`, 'Use a shorter word.');
  };
  return {
    ...options,
    palette,
    types: typesFor(direction),
    items,
    taken,
    left,
    content,
    check,
    problem,
    set(inlines, type, width, look = {}) {
      const spans = glueNumbers(inlines).map((inline, index) =>
        spanOf(inline, type, look, palette, direction, index < (look.first ?? inlines.length) ? 0 : 1),
      );
      const { balance = false, align = 'start' } = look;
      const style = { language, direction, ...type };
      return { ...setParagraph(fonts, spans, style, { width, balance, align }), measure: width, align };
    },
    words(node, words, x, y) {
      check(words);
      let top = y;
      const marks = words.lines.flatMap((line): Mark[] => {
        const baseline = top + line.baseline;
        top += line.height;
        const at = left(x, words.measure);
        return [
          { kind: 'text', x: at, baseline, line },
          ...(ink === 'one' ? underlines(line, at, baseline, palette.ink) : []),
        ];
      });
      content(node, marks);
      if (words.lines.length === 0) return;
      const rest = words.measure - words.width;
      const before = words.align === 'start' ? 0 : words.align === 'end' ? rest : rest / 2;
      taken.push({ x: x + before, y, width: words.width, height: words.height });
    },
    backdrop(marks) {
      if (marks.length > 0) items.push({ kind: 'artifact', of: 'background', marks: scaled(marks) });
    },
    rect(box, look) {
      // Edges stand inside the box.
      const inset = (look.line ?? 0) / 2;
      const x = left(box.x, box.width) + inset;
      const y = box.y + inset;
      const [right, bottom] = [x + box.width - 2 * inset, y + box.height - 2 * inset];
      return {
        kind: 'shape',
        path: `M${x} ${y}L${right} ${y}L${right} ${bottom}L${x} ${bottom}Z`,
        ...(look.fill ? { fill: look.fill } : {}),
        ...(look.line ? { stroke: { color: look.color ?? palette.ink, width: look.line } } : {}),
      };
    },
    drawing(marks, box, scale) {
      return { kind: 'group', at: [scale, 0, 0, scale, left(box.x, box.width), box.y], marks };
    },
  };
}

function spanOf(
  inline: Inline,
  type: SlideType,
  look: Look,
  palette: Palette,
  direction: 'ltr' | 'rtl',
  part: number,
): Span<SlideInk> {
  const looked = look.lookHere === true && (inline.number !== undefined || inline.strong === true);
  const text = `${inline.breakBefore ? '\n' : ''}${inline.text}`;
  return {
    text: direction === 'rtl' ? isolateNumbers(text) : text,
    weight: inline.strong ? 800 : type.weight,
    ...(inline.language ? { language: inline.language } : {}),
    data: {
      part,
      color: looked ? palette.accent : (look.color ?? palette.ink),
      ...(looked ? { looked } : {}),
      ...(inline.number ? { number: inline.number } : {}),
    },
  };
}

/** Where there is no petrol, a line under the words says "look here". */
function underlines(line: Line<SlideInk>, x: number, baseline: number, color: Color): Mark[] {
  return line.runs.flatMap((run): Mark[] => {
    if (!run.span.data?.looked || run.text.trim() === '') return [];
    const y = baseline + 0.25 * run.size;
    return [
      {
        kind: 'shape',
        path: `M${x + run.x} ${y}L${x + run.x + run.width} ${y}`,
        stroke: { color, width: LINES.under },
      },
    ];
  });
}
