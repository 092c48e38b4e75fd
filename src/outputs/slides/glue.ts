import type { Inline } from '../../document/index.js';

const NBSP = '\u00a0';
/** The blank between an amount and its unit, and the one before the number that ends a clause: "slide 4." */
const LOOSE = /(?<=(?:^|[\s(])(?:\d+(?:[.,]\d+)*|[½¼¾]|\d+\/\d+)) (?=\p{L})|(?<=\p{L}) (?=\d{1,3}[.,;:])/gu;

/** Keeps numbers on the line of the word that they belong to, also where the two are different stretches. */
export function glueNumbers(inlines: readonly Inline[]): readonly Inline[] {
  const text = inlines.map((inline) => inline.text).join('');
  const glued = text.replace(LOOSE, NBSP);
  if (glued === text) return inlines;
  let from = 0;
  return inlines.map((inline) => {
    const part = glued.slice(from, from + inline.text.length);
    from += inline.text.length;
    return { ...inline, text: part };
  });
}
