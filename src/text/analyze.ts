import { bidiLevels } from './bidi.js';
import { type Break, breaksOf } from './breaks.js';
import { type Family, familiesFor } from './catalog.js';
import { chooseFamilies, type Part } from './choose.js';
import type { Face, ShapedGlyph, Stretch } from './face.js';
import type { Fonts } from './fonts.js';
import type { MissingCharacter, Span, TextStyle } from './types.js';

/** A stretch of one span, font, direction and script: what is shaped at once. */
export interface Item {
  readonly start: number;
  readonly end: number;
  readonly span: number;
  readonly face: Face;
  readonly level: number;
  readonly script: string;
  readonly language: string;
}

/** Everything about a text that does not depend on where its lines end. Lengths are in the style's unit. */
export interface Analysis {
  readonly text: string;
  readonly items: readonly Item[];
  readonly breaks: readonly Break[];
  /** Width of the text before each UTF-16 unit, as set on one endless line. */
  readonly widths: Float64Array;
  readonly missing: readonly MissingCharacter[];
  /** The face of the language and weight of the style: it places the baseline. */
  readonly primary: Face;
  /** Level of the paragraph itself: 0 or 1. */
  readonly base: number;
}

export function analyze(fonts: Fonts, spans: readonly Span[], style: TextStyle): Analysis {
  const text = spans.map((span) => span.text).join('');
  const parts = partsOf(spans, style);
  const { families, missing } = chooseFamilies(text, parts, fonts);
  const levels = bidiLevels(text, style.direction);
  const scripts = scriptsOf(text, families, fonts);
  const items: Item[] = [];
  parts.forEach((part, span) => {
    for (let at = part.start; at < part.end; ) {
      const start = at;
      const family = families[at] ?? 'atkinson';
      const same = () =>
        families[at] === family && levels[at] === levels[start] && scripts[at] === scripts[start];
      while (at < part.end && same()) at++;
      items.push({
        start,
        end: at,
        span,
        face: fonts.face(family, part.weight),
        level: levels[start] ?? 0,
        script: scripts[start] ?? nativeScript(part.language),
        language: part.language,
      });
    }
  });
  return {
    text,
    items,
    breaks: breaksOf(text),
    widths: widthsOf(text, items, fonts, style),
    missing,
    primary: fonts.face(familiesFor(style.language, 'signs')[0] ?? 'atkinson', style.weight),
    base: style.direction === 'rtl' ? 1 : 0,
  };
}

function partsOf(spans: readonly Span[], style: TextStyle): Part[] {
  let start = 0;
  return spans.map((span) => {
    const part = {
      start,
      end: start + span.text.length,
      weight: span.weight ?? style.weight,
      language: span.language ?? style.language,
    };
    start = part.end;
    return part;
  });
}

/**
 * Digits, signs and spaces belong to the letters before them in the same family; at the start of a
 * stretch of one family to the first letters in it, and where it has none to those before it.
 */
function scriptsOf(text: string, families: readonly Family[], fonts: Fonts): (string | undefined)[] {
  const scripts = new Array<string | undefined>(text.length).fill(undefined);
  let last: string | undefined;
  for (let at = 0; at < text.length; ) {
    const start = at;
    const family = families[at];
    let first: string | undefined;
    while (at < text.length && families[at] === family) {
      const code = text.codePointAt(at) ?? 0;
      const size = code > 0xffff ? 2 : 1;
      const script = fonts.facts(code).script;
      if (script !== undefined && first === undefined) {
        first = script;
        scripts.fill(script, start, at);
        last = script;
      }
      last = script ?? last;
      scripts.fill(last, at, at + size);
      at += size;
    }
  }
  return scripts;
}

function nativeScript(language: string): string {
  const family = familiesFor(language, 'signs')[0];
  return family === 'vazirmatn' ? 'Arab' : family === 'chinese' ? 'Hani' : 'Latn';
}

function widthsOf(text: string, items: readonly Item[], fonts: Fonts, style: TextStyle): Float64Array {
  const widths = new Float64Array(text.length + 1);
  for (const item of items) {
    const scale = style.size / item.face.unitsPerEm;
    const tracking = trackingOf(item, style);
    for (const glyph of shapePiece(fonts, text, item, item.start, item.end, style)) {
      const at = item.start + glyph.cluster + 1;
      widths[at] = (widths[at] ?? 0) + advanceOf(glyph, scale, tracking);
    }
  }
  for (let at = 1; at <= text.length; at++) widths[at] = (widths[at] ?? 0) + (widths[at - 1] ?? 0);
  return widths;
}

/** Glyphs of an item, or of the piece of it that stands on one line. */
export function shapePiece(
  fonts: Fonts,
  text: string,
  item: Item,
  start: number,
  end: number,
  style: TextStyle,
): readonly ShapedGlyph[] {
  const joins = item.script === 'Arab';
  const stretch: Stretch = {
    before: joins ? (ARABIC_AT_END.exec(text.slice(Math.max(0, start - 4), start))?.[0] ?? '') : '',
    text: text.slice(start, end),
    after: joins ? (ARABIC_AT_START.exec(text.slice(end, end + 4))?.[0] ?? '') : '',
    rtl: item.level % 2 === 1,
    script: item.script,
    language: item.language,
    tabular: style.tabular === true,
    ligatures: trackingOf(item, style) === 0,
  };
  return fonts.shape(item.face, stretch);
}

const ARABIC_AT_END = /[\p{Script=Arabic}\p{M}\u200d]+$/u;
const ARABIC_AT_START = /^[\p{Script=Arabic}\p{M}\u200d]+/u;

/** Joined letters are never tracked. */
export function trackingOf(item: Item, style: TextStyle): number {
  return item.script === 'Arab' ? 0 : (style.tracking ?? 0) * style.size;
}

/** Marks and formatting characters take no room, so they take no tracking either. */
export function advanceOf(glyph: ShapedGlyph, scale: number, tracking: number): number {
  return glyph.advance === 0 ? 0 : glyph.advance * scale + tracking;
}
