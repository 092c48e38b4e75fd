import type { Place, Report } from '../diagnostics/index.js';
import type { Inline } from '../document/index.js';
import type { Color, Mark, TextInk } from '../figures/index.js';
import { type Fonts, type GlyphRun, type Line, noGlyph, type Span, setParagraph } from '../text/index.js';
import { addArtifact, addContent, type PageDraft, type Pen } from './pen.js';
import { layoutProblem } from './problems.js';
import type { Draft, Tree } from './structure.js';
import { mm } from './tokens.js';
import type { TypeRole } from './type.js';

/** What a glyph run remembers: its ink, and which element of the structure it belongs to. */
interface PartInk extends TextInk {
  readonly part: number;
  readonly struck?: boolean;
}

/** A stretch of text that belongs to one element of the structure. */
export interface Part {
  readonly node: Draft;
  readonly inlines: readonly Inline[];
  /** Instead of the role's. */
  readonly weight?: TypeRole['weight'];
}

export interface TextOptions {
  readonly width: number;
  readonly role: TypeRole;
  readonly color?: Color;
  /** Lines of even length: heads and legend words. */
  readonly balance?: boolean;
  /** Digits of one width, for columns. */
  readonly tabular?: boolean;
  readonly place?: Place | undefined;
  /** Instead of the sheet's, for words of another language. */
  readonly language?: string;
  readonly direction?: 'ltr' | 'rtl';
}

interface Piece {
  readonly node: Draft;
  readonly line: Line<TextInk>;
  /** From the left edge of the row. */
  readonly dx: number;
  readonly href?: string;
  readonly struck: boolean;
}

/** One line of set text, in the pieces that belong to different elements. */
export interface Row {
  readonly width: number;
  readonly height: number;
  readonly baseline: number;
  readonly pieces: readonly Piece[];
}

export interface SetText {
  readonly rows: readonly Row[];
  readonly width: number;
  readonly height: number;
  readonly text: string;
}

/** Turns words into rows and reports what cannot be set. */
export interface Typesetter {
  /** Words of one element; stretches in another language and links become elements below it. */
  inlines(node: Draft, inlines: readonly Inline[], options: TextOptions): SetText;
  /** Several elements that run on in one paragraph. */
  parts(parts: readonly Part[], options: TextOptions): SetText;
  /** Plain words of one element. */
  words(node: Draft, text: string, options: TextOptions): SetText;
  /** Width of words on one line. */
  measure(inlines: readonly Inline[], role: TypeRole, tabular?: boolean): number;
}

export interface TypesetterOptions {
  readonly fonts: Fonts;
  readonly tree: Tree;
  readonly language: string;
  readonly direction: 'ltr' | 'rtl';
  readonly ink: Color;
  readonly report: Report;
}

const NO_LIMIT = 1e6;
/**
 * A last line shorter than this share of the measure gets a word from the line above; in narrow
 * columns a larger share, since a word alone looks lost there.
 */
function shortLine(width: number): number {
  return (width < mm(60) ? 0.42 : 0.16) * width;
}

export function createTypesetter({
  fonts,
  tree,
  language,
  direction,
  ink,
  report,
}: TypesetterOptions): Typesetter {
  function set(parts: readonly Part[], options: TextOptions): SetText {
    const { role, width, place } = options;
    const targets: { node: Draft; href?: string }[] = [];
    const spans: Span<PartInk>[] = [];
    const base = options.direction ?? direction;
    for (const part of parts) {
      for (const run of runsOf(part, tree, language, targets)) {
        const span = spanOf(run.inline, run.part, part.weight ?? role.weight, options.color ?? ink);
        spans.push(base === 'rtl' ? { ...span, text: isolateNumbers(span.text) } : span);
      }
    }
    const style = {
      language: options.language ?? language,
      direction: base,
      size: role.size,
      leading: role.leading,
      weight: role.weight,
      ...(role.tracking === undefined ? {} : { tracking: role.tracking }),
      ...(options.tabular ? { tabular: true } : {}),
    };
    const attempt = (measure: number) =>
      setParagraph(fonts, spans, style, { width: measure, balance: options.balance ?? false });
    let paragraph = attempt(width);
    const broken = paragraph.lines.at(-2)?.text.endsWith('\n') ?? true;
    if (!options.balance && !broken) {
      for (const share of [0.97, 0.94, 0.91, 0.88, 0.82, 0.76]) {
        if ((paragraph.lines.at(-1)?.width ?? width) > shortLine(width)) break;
        const narrower = attempt(width * share);
        if (narrower.lines.length === paragraph.lines.length && !narrower.overflow) paragraph = narrower;
      }
    }
    const missing = noGlyph(paragraph.missing, place);
    if (missing) report.add(missing);
    if (paragraph.lines.some((line) => line.width > width + 0.1)) {
      const wide = paragraph.lines.find((line) => line.width > width + 0.1)?.text.trim() ?? '';
      report.add(
        layoutProblem('layout/wide-word', `“${wide}” is wider than its place.`, {
          hint: 'Use a shorter word, or fewer columns beside it.',
          ...(place ? { place } : {}),
        }),
      );
    }
    return {
      rows: paragraph.lines.map((line) => rowOf(line, targets)),
      width: paragraph.width,
      height: paragraph.height,
      text: parts.flatMap((part) => part.inlines.map((inline) => inline.text)).join(''),
    };
  }
  return {
    parts: set,
    inlines: (node, inlines, options) => set([{ node, inlines }], options),
    words: (node, text, options) => set([{ node, inlines: [{ text }] }], options),
    measure(inlines, role, tabular = false) {
      const spans = inlines.map((i) => spanOf(i, 0, role.weight, ink));
      const style = { language, direction, ...role, tabular };
      return setParagraph(fonts, spans, style, { width: NO_LIMIT }).width;
    },
  };
}

/**
 * Digits joined by hyphens or dashes stay in their order in right-to-left text (Unicode isolates,
 * UAX #9): a phone number must not come out with its halves exchanged.
 */
function isolateNumbers(text: string): string {
  return text.replace(/\d+(?:[-‐‑–]\d+)+/g, (number) => `\u2066${number}\u2069`);
}

/** Stretches of a part with the element that each belongs to; new elements are made as needed. */
function runsOf(
  part: Part,
  tree: Tree,
  language: string,
  targets: { node: Draft; href?: string }[],
): { inline: Inline; part: number }[] {
  const inlines = part.inlines.filter((i) => i.text !== '' || i.breakBefore);
  const keyOf = (i: Inline) =>
    i.href ? `>${i.href}` : i.language && i.language !== language ? i.language : '';
  if (inlines.every((i) => keyOf(i) === '')) {
    targets.push({ node: part.node });
    return inlines.map((inline) => ({ inline, part: targets.length - 1 }));
  }
  // Once one stretch has an element of its own, all do: then their order is the order of the tree.
  let key: string | undefined;
  return inlines.map((inline) => {
    if (keyOf(inline) !== key) {
      key = keyOf(inline);
      const lang = inline.language && inline.language !== language ? { language: inline.language } : {};
      const node = tree.add(part.node, inline.href ? 'Link' : 'Span', lang);
      targets.push({ node, ...(inline.href ? { href: inline.href } : {}) });
    }
    return { inline, part: targets.length - 1 };
  });
}

/** No italics and no typewriter letters: emphasis and code differ by weight. */
function spanOf(inline: Inline, part: number, base: TypeRole['weight'], color: Color): Span<PartInk> {
  const weight = inline.strong
    ? Math.max(700, base)
    : inline.emphasis || inline.code
      ? Math.max(600, base)
      : base;
  return {
    text: `${inline.breakBefore ? '\n' : ''}${inline.text}`,
    weight: weight as TypeRole['weight'],
    ...(inline.language ? { language: inline.language } : {}),
    data: {
      part,
      color,
      ...(inline.number === undefined ? {} : { number: inline.number }),
      ...(inline.href === undefined ? {} : { href: inline.href, underline: true }),
      ...(inline.struck ? { struck: true } : {}),
    },
  };
}

/** Cuts a line where the element changes. Pieces stand in reading order. */
function rowOf(line: Line<PartInk>, targets: readonly { node: Draft; href?: string }[]): Row {
  const pieces: Piece[] = [];
  const logical = [...line.runs].sort((a, b) => a.start - b.start);
  const place = new Map(line.runs.map((run, index) => [run, index]));
  let open: GlyphRun<PartInk>[] = [];
  const close = () => {
    const first = open[0];
    if (!first) return;
    const target = targets[first.span.data?.part ?? 0];
    if (!target) return;
    const visual = [...open].sort((a, b) => (place.get(a) ?? 0) - (place.get(b) ?? 0));
    pieces.push({
      node: target.node,
      ...pieceLine(line, visual),
      ...(target.href ? { href: target.href } : {}),
      struck: first.span.data?.struck ?? false,
    });
    open = [];
  };
  for (const run of logical) {
    const last = open.at(-1);
    const sameElement = last?.span.data?.part === run.span.data?.part;
    const together = last && sameElement && last.span.data?.struck === run.span.data?.struck;
    if (last && !(together && touches(open, run, place))) close();
    open.push(run);
  }
  close();
  return { width: line.width, height: line.height, baseline: line.baseline, pieces };
}

/** Whether the runs, with one more, still stand side by side: in mixed directions they may not. */
function touches<T>(open: readonly T[], next: T, place: ReadonlyMap<T, number>): boolean {
  const places = [...open, next].map((run) => place.get(run) ?? 0);
  return Math.max(...places) - Math.min(...places) === places.length - 1;
}

/** A line of only these runs, its left edge at 0. */
function pieceLine(
  line: Line<PartInk>,
  runs: readonly GlyphRun<PartInk>[],
): { readonly line: Line<TextInk>; readonly dx: number } {
  const left = runs[0]?.x ?? line.x;
  const from = Math.min(...runs.map((r) => r.start));
  const to = Math.max(...runs.map((r) => r.start + r.text.length));
  const width = runs.reduce((sum, r) => sum + r.width, 0);
  return {
    dx: left - line.x,
    line: {
      ...line,
      x: 0,
      width,
      text: line.text.slice(from, to),
      runs: runs.map((r) => ({ ...r, x: r.x - left, start: r.start - from })),
    },
  };
}

/** Puts a row on the page. `x` is its start edge, or its end edge or middle by `align`. */
export function paintRow(
  page: PageDraft,
  pen: Pen,
  row: Row,
  x: number,
  top: number,
  align: 'start' | 'end' | 'center' = 'start',
): void {
  const start = align === 'start' ? x : align === 'end' ? x - row.width : x - row.width / 2;
  const left = pen.left(start, row.width);
  for (const piece of row.pieces) {
    const mark: Mark = { kind: 'text', x: left + piece.dx, baseline: top + row.baseline, line: piece.line };
    addContent(page, piece.node, [mark]);
    const { width } = piece.line;
    if (piece.struck) addArtifact(page, 'layout', [strike(left + piece.dx, top + row.baseline, piece.line)]);
    if (piece.href) {
      page.items.push({
        kind: 'link',
        node: piece.node.id,
        href: piece.href,
        words: piece.line.text.trim(),
        x: left + piece.dx,
        y: top,
        width,
        height: row.height,
      });
    }
  }
}

/** A line through words, at half the height of small letters. */
function strike(left: number, baseline: number, line: Line<TextInk>): Mark {
  const size = line.runs[0]?.size ?? 12;
  const y = baseline - 0.26 * size;
  return {
    kind: 'shape',
    path: `M${left.toFixed(3)} ${y.toFixed(3)}L${(left + line.width).toFixed(3)} ${y.toFixed(3)}`,
    stroke: { color: line.runs[0]?.span.data?.color ?? '#000000', width: Math.max(1, 0.07 * size) },
  };
}

/** All rows of a text below each other; returns the y below the last. */
export function paintText(
  page: PageDraft,
  pen: Pen,
  text: SetText,
  x: number,
  top: number,
  align: 'start' | 'end' | 'center' = 'start',
): number {
  let y = top;
  for (const row of text.rows) {
    paintRow(page, pen, row, x, y, align);
    y += row.height;
  }
  return y;
}
