import type { Place, Report } from '../diagnostics/index.js';
import type { Inline } from '../document/index.js';
import type { Color } from '../figures/index.js';
import { type Fonts, noGlyph, type Span, setParagraph } from '../text/index.js';
import { layoutProblem } from './problems.js';
import { type PartInk, rowOf, type SetText, type Target } from './rows.js';
import type { Draft, Tree } from './structure.js';
import { mm } from './tokens.js';
import type { TypeRole } from './type.js';

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
    const targets: Target[] = [];
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
export function isolateNumbers(text: string): string {
  return text.replace(/\d+(?:[-‐‑–]\d+)+/g, (number) => `\u2066${number}\u2069`);
}

/** Stretches of a part with the element that each belongs to; new elements are made as needed. */
function runsOf(
  part: Part,
  tree: Tree,
  language: string,
  targets: Target[],
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
