import bidiFactory from 'bidi-js';

const bidi = bidiFactory();

/**
 * Embedding levels of a text (UAX #9), one for each UTF-16 unit; an odd level runs from right to left.
 * Each paragraph is asked for alone, as rule P1 allows: the library slows down with their number.
 */
export function bidiLevels(text: string, direction: 'ltr' | 'rtl'): Uint8Array {
  const levels = new Uint8Array(text.length);
  for (const { index, 0: paragraph } of text.matchAll(PARAGRAPHS))
    levels.set(bidi.getEmbeddingLevels(paragraph, direction).levels, index);
  return levels;
}

/** The usual characters of bidirectional class B; the library knows the rare ones. */
const PARAGRAPHS = /[^\n\r\u0085\u2029]*[\n\r\u0085\u2029]|[^\n\r\u0085\u2029]+/g;

/**
 * Visual order, from left to right, of stretches that each have one level (UAX #9, rule L2: from the
 * highest level to the lowest odd one, turn round every series of that level or higher).
 */
export function visualOrder<T extends { readonly level: number }>(stretches: readonly T[]): T[] {
  const order = [...stretches];
  const highest = order.reduce((most, s) => Math.max(most, s.level), 0);
  for (let level = highest; level > 0; level--) {
    for (let from = 0; from < order.length; from++) {
      let to = from;
      while ((order[to]?.level ?? -1) >= level) to++;
      if (to > from) order.splice(from, to - from, ...order.slice(from, to).reverse());
      from = to;
    }
  }
  return order;
}
