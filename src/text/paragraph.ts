import { type Analysis, analyze } from './analyze.js';
import { countUpTo } from './bisect.js';
import { endWithoutSpaces } from './characters.js';
import type { Fonts } from './fonts.js';
import { moved, setRange } from './line.js';
import type { Line, Paragraph, ParagraphOptions, SetLine, Span, TextStyle } from './types.js';

/** Rounding of sums; no reader sees a hundredth of a unit. */
const NEARLY = 0.01;

/**
 * Sets text in lines of at most `width` (UAX #14 for the places, as many words on each line as fit)
 * and orders each line for reading (UAX #9). Line breaks in the text end a line. A word that is
 * wider than the measure is never cut: see `Paragraph.overflow`.
 */
export function setParagraph<T>(
  fonts: Fonts,
  spans: readonly Span<T>[],
  style: TextStyle,
  options: ParagraphOptions,
): Paragraph<T> {
  const analysis = analyze(fonts, spans, style);
  const set = (width: number) => setLines(fonts, spans, style, analysis, width);
  let lines = set(options.width);
  if (options.balance && lines.length > 1) {
    const even = set(evenWidth(analysis, options.width, lines.length));
    if (even.length === lines.length) lines = even;
  }
  const most = options.maxLines ?? lines.length;
  return {
    lines: lines.map((line) => moved(line, shiftOf(line.width, style, options))),
    width: lines.reduce((widest, line) => Math.max(widest, line.width), 0),
    height: lines.length * style.leading,
    overflow: lines.some((line) => line.width > options.width + NEARLY),
    excess: Math.max(0, lines.length - most),
    missing: analysis.missing,
  };
}

/** Sets text on one line, however long. Line breaks in it become spaces. Its left edge is at 0. */
export function setLine<T>(fonts: Fonts, text: string | readonly Span<T>[], style: TextStyle): SetLine<T> {
  const spans: readonly Span<T>[] = typeof text === 'string' ? [{ text }] : text;
  const analysis = analyze(fonts, spans, style);
  const line = setRange(fonts, spans, style, analysis, 0, analysis.text.length);
  return { ...line, missing: analysis.missing };
}

/** Width of text on one line, without spaces at its end. */
export function measure(fonts: Fonts, text: string, style: TextStyle): number {
  return setLine(fonts, text, style).width;
}

function shiftOf(width: number, style: TextStyle, options: ParagraphOptions): number {
  const rest = options.width - width;
  const align = options.align ?? 'start';
  if (align === 'center') return rest / 2;
  return (align === 'start') === (style.direction === 'ltr') ? 0 : rest;
}

type Range = readonly [start: number, end: number];

/** Lines as they would stand by the widths of the endless line; each is then set and checked. */
function setLines<T>(
  fonts: Fonts,
  spans: readonly Span<T>[],
  style: TextStyle,
  analysis: Analysis,
  width: number,
): Line<T>[] {
  const lines: Line<T>[] = [];
  for (let start = 0; start < analysis.text.length; ) {
    let end = endOfLine(analysis, start, width);
    let line = setRange(fonts, spans, style, analysis, start, end);
    // Letters shaped at the end of a line can be wider than in mid-line; then one word less fits.
    while (line.width > width + NEARLY) {
      const shorter = breakBefore(analysis, start, end);
      if (shorter === undefined) break;
      end = shorter;
      line = setRange(fonts, spans, style, analysis, start, end);
    }
    lines.push(line);
    start = end;
  }
  return lines;
}

function widthOf({ text, widths }: Analysis, start: number, end: number): number {
  return (widths[endWithoutSpaces(text, start, end)] ?? 0) - (widths[start] ?? 0);
}

/** The last break at which the line still fits, or the first one when none does. */
function endOfLine(analysis: Analysis, start: number, width: number): number {
  let end: number | undefined;
  for (let i = firstBreakAfter(analysis, start); i < analysis.breaks.length; i++) {
    const { position, required } = analysis.breaks[i] ?? { position: analysis.text.length, required: true };
    if (end !== undefined && widthOf(analysis, start, position) > width + NEARLY) return end;
    end = position;
    if (required) return end;
  }
  return end ?? analysis.text.length;
}

function firstBreakAfter({ breaks }: Analysis, position: number): number {
  return countUpTo(breaks, position, (b) => b.position);
}

function breakBefore(analysis: Analysis, start: number, end: number): number | undefined {
  const before = analysis.breaks[firstBreakAfter(analysis, end - 1) - 1]?.position;
  return before !== undefined && before > start ? before : undefined;
}

function rangesAt(analysis: Analysis, width: number): Range[] {
  const ranges: Range[] = [];
  for (let start = 0; start < analysis.text.length; ) {
    const end = endOfLine(analysis, start, width);
    ranges.push([start, end]);
    start = end;
  }
  return ranges;
}

/** The narrowest measure, to a hundredth of the whole, at which the text takes no more lines. */
function evenWidth(analysis: Analysis, width: number, lines: number): number {
  let low = 0;
  let high = width;
  while (high - low > width / 256) {
    const middle = (low + high) / 2;
    if (rangesAt(analysis, middle).length > lines) low = middle;
    else high = middle;
  }
  return high;
}
