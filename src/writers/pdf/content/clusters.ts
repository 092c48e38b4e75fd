import type { Glyph, GlyphRun } from '../../../text/index.js';

/**
 * What one glyph does in the file: `letter` shows it and says its text, `said` says text and shows
 * nothing (the glyph has no width), `shape` draws its outline and says nothing.
 */
export type Piece =
  | { readonly kind: 'letter' | 'said'; readonly glyph: Glyph; readonly text: string }
  | { readonly kind: 'shape'; readonly glyph: Glyph };

/** Glyphs that stand for one piece of text together, from left to right. */
export interface Cluster {
  /** In reading order. */
  readonly text: string;
  readonly pieces: readonly Piece[];
  /** True when the pieces' texts, put together, are the cluster's text. */
  readonly exact: boolean;
}

/** Said by a second letter that has no text of its own: it never shows and searches pass over it. */
const SILENT = '\u034f';

const DIRECTION_MARK = /\p{Bidi_Control}/gu;
const LINE_BREAK_OR_TAB = /[\t-\r\u0085\u2028\u2029]/g;

/**
 * What a stretch of source text says in the file: marks that only steer direction are left out, since
 * the glyphs already stand where they belong, and a line break counts as a space.
 */
export function spokenText(text: string): string {
  return text.replace(DIRECTION_MARK, '').replace(LINE_BREAK_OR_TAB, ' ');
}

/**
 * A run's glyphs by cluster, in the order in which they stand from left to right. `after` is said by
 * the last piece in reading order.
 */
export function clustersOf(run: GlyphRun<unknown>, after = ''): Cluster[] {
  const groups = groupsOf(run);
  if (run.rtl) groups.reverse();
  const joined: { text: string; glyphs: Glyph[] }[] = [];
  for (const { text, glyphs } of groups) {
    const letter = joined.at(-1);
    // A mark on its own belongs to the letter before it, or readers of the file would part the two.
    if (letter && /^\p{M}+$/u.test(text)) {
      letter.text += text;
      if (run.rtl) letter.glyphs.unshift(...glyphs);
      else letter.glyphs.push(...glyphs);
    } else if (text !== '') joined.push({ text, glyphs });
  }
  const last = joined.at(-1);
  if (last) last.text += after;
  const clusters = joined.map(({ text, glyphs }) => share(run, glyphs, text));
  return run.rtl ? clusters.reverse() : clusters;
}

/** Neighboring glyphs of one cluster with its text, from left to right. */
function groupsOf(run: GlyphRun<unknown>): { readonly text: string; readonly glyphs: Glyph[] }[] {
  const starts = [...new Set(run.glyphs.map((glyph) => glyph.cluster))].sort((a, b) => a - b);
  const texts = new Map(
    starts.map((start, index) => [start, spokenText(run.text.slice(start, starts[index + 1]))]),
  );
  const groups: { text: string; glyphs: Glyph[] }[] = [];
  for (const glyph of run.glyphs) {
    const open = groups.at(-1);
    if (open?.glyphs[0]?.cluster === glyph.cluster) open.glyphs.push(glyph);
    else groups.push({ text: texts.get(glyph.cluster) ?? '', glyphs: [glyph] });
  }
  return groups;
}

/**
 * Gives glyphs their parts of the text. Marks over and under a letter become plain shapes: programs
 * that read text out would take a raised glyph for another line. Right-to-left runs go out from left
 * to right, so the letters of one glyph do too.
 */
function share(run: GlyphRun<unknown>, glyphs: readonly Glyph[], text: string): Cluster {
  const letters = glyphs.filter((glyph) => glyph.advance > 0);
  const characters = [...composed(text)];
  if (run.rtl) characters.reverse();
  if (letters.length > 1 && letters.length === glyphs.length && glyphs.length === characters.length)
    return {
      text,
      pieces: glyphs.map((glyph, i) => ({ kind: 'letter', glyph, text: characters[i] ?? '' })),
      exact: true,
    };
  const widest = glyphs.reduce((best, glyph) => (glyph.advance > best.advance ? glyph : best));
  const flat = glyphs.find((glyph) => glyph.advance === 0 && run.font.advance(glyph.id) === 0);
  const pieces = glyphs.flatMap((glyph): Piece[] => {
    if (glyph === widest) return say(glyph, flat, characters);
    return glyph.advance > 0 ? [{ kind: 'letter', glyph, text: SILENT }] : [{ kind: 'shape', glyph }];
  });
  return { text, pieces, exact: letters.length < 2 };
}

/**
 * The letter says the characters. Where marks are among them, letter and marks are said apart, since
 * some programs take all of a glyph that says a mark for a mark of no width.
 */
function say(letter: Glyph, flat: Glyph | undefined, characters: readonly string[]): Piece[] {
  const parts: string[] = [];
  for (const character of characters) {
    const last = parts.at(-1);
    if (last !== undefined && isMark(last) === isMark(character)) parts[parts.length - 1] = last + character;
    else parts.push(character);
  }
  const main = parts.findIndex((part) => !isMark(part));
  if (!flat || parts.length < 2 || main < 0)
    return [{ kind: 'letter', glyph: letter, text: characters.join('') }];
  return parts.map((text, index) =>
    index === main ? { kind: 'letter', glyph: letter, text } : { kind: 'said', glyph: flat, text },
  );
}

function isMark(text: string): boolean {
  return /^\p{M}/u.test(text);
}

/** A letter and its mark as the one character that means the same, where there is one. */
function composed(text: string): string {
  const short = text.normalize('NFC');
  return /\p{M}/u.test(short) ? text : short;
}
