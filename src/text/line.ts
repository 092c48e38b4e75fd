import { type Analysis, advanceOf, type Item, shapePiece, trackingOf } from './analyze.js';
import { visualOrder } from './bidi.js';
import { countUpTo } from './bisect.js';
import { endWithoutSpaces, isHardBreak } from './characters.js';
import type { Fonts } from './fonts.js';
import type { Glyph, GlyphRun, Line, Span, TextStyle } from './types.js';

/** What of an item stands on a line. */
interface Piece {
  readonly item: Item;
  readonly start: number;
  readonly end: number;
  readonly level: number;
}

/** Sets the text from `start` to `end` as one line whose left edge is at 0. */
export function setRange<T>(
  fonts: Fonts,
  spans: readonly Span<T>[],
  style: TextStyle,
  analysis: Analysis,
  start: number,
  end: number,
): Line<T> {
  const { text, primary } = analysis;
  const counted = endWithoutSpaces(text, start, end);
  let x = 0;
  const runs: GlyphRun<T>[] = [];
  for (const piece of visualOrder(piecesOf(analysis, start, end, counted))) {
    const span = spans[piece.item.span];
    if (!span) continue;
    const glyphs = glyphsOf(fonts, style, analysis, piece, counted);
    const width = glyphs.reduce((sum, glyph) => sum + glyph.advance, 0);
    runs.push({
      font: piece.item.face,
      size: style.size,
      glyphs,
      text: text.slice(piece.start, piece.end),
      start: piece.start - start,
      x,
      width,
      rtl: piece.level % 2 === 1,
      language: piece.item.language,
      span,
    });
    x += width;
  }
  const up = (face: { readonly ascent: number; readonly unitsPerEm: number }) =>
    (face.ascent / face.unitsPerEm) * style.size;
  const down = (face: { readonly descent: number; readonly unitsPerEm: number }) =>
    (face.descent / face.unitsPerEm) * style.size;
  const fontsUsed = [primary, ...runs.map((run) => run.font)];
  return {
    runs,
    x: 0,
    width: x,
    ascent: Math.max(...fontsUsed.map(up)),
    descent: Math.max(...fontsUsed.map(down)),
    baseline: (style.leading - up(primary) - down(primary)) / 2 + up(primary),
    height: style.leading,
    text: text.slice(start, end),
  };
}

/**
 * Pieces in reading order. Spaces at the end of the line take the paragraph's own level, so that
 * they stand at the end of the line in either direction (UAX #9, rule L1); a line break is not drawn.
 */
function piecesOf(analysis: Analysis, start: number, end: number, counted: number): Piece[] {
  const { text, items, base } = analysis;
  let drawn = end;
  while (drawn > counted && isHardBreak(text, drawn - 1)) drawn--;
  const pieces: Piece[] = [];
  for (let i = countUpTo(items, start, (item) => item.end); i < items.length; i++) {
    const item = items[i];
    if (item === undefined || item.start >= drawn) break;
    const from = Math.max(start, item.start);
    const to = Math.min(drawn, item.end);
    if (from >= to) continue;
    if (item.level === base || to <= counted) {
      pieces.push({ item, start: from, end: to, level: item.level });
      continue;
    }
    const middle = Math.max(from, counted);
    if (from < middle) pieces.push({ item, start: from, end: middle, level: item.level });
    pieces.push({ item: { ...item, level: base }, start: middle, end: to, level: base });
  }
  return pieces;
}

function glyphsOf(
  fonts: Fonts,
  style: TextStyle,
  analysis: Analysis,
  piece: Piece,
  counted: number,
): Glyph[] {
  const scale = style.size / piece.item.face.unitsPerEm;
  const tracking = trackingOf(piece.item, style);
  return shapePiece(fonts, analysis.text, piece.item, piece.start, piece.end, style).map((glyph) => ({
    id: glyph.id,
    cluster: glyph.cluster,
    advance: piece.start + glyph.cluster >= counted ? 0 : advanceOf(glyph, scale, tracking),
    dx: glyph.dx * scale,
    dy: glyph.dy * scale,
  }));
}

/** The same line, moved to the right. */
export function moved<T>(line: Line<T>, by: number): Line<T> {
  if (by === 0) return line;
  return { ...line, x: line.x + by, runs: line.runs.map((run) => ({ ...run, x: run.x + by })) };
}
