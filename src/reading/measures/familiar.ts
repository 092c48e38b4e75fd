import { daleChall } from 'dale-chall';
import { spache } from 'spache';
import type { Word } from './words.js';

const LISTS = {
  'dale-chall': new Set(daleChall.map((word) => word.toLowerCase())),
  spache: new Set(spache.map((word) => word.toLowerCase())),
} as const;

/**
 * Whether an English word is familiar to the list, by the rules printed with the lists, from memory: a
 * numeral, a name and a possessive are familiar, and so is the plural, -ed, -ing, -er and -est of a familiar
 * word. A word with a hyphen is familiar when both parts are.
 */
export function isFamiliar(word: Word, list: keyof typeof LISTS): boolean {
  if (word.numeral || word.namelike) return true;
  const known = LISTS[list];
  if (known.has(word.text.toLowerCase())) return true;
  return word.parts.every((part) =>
    rootsOf(part.toLowerCase().replace(/’/gu, "'")).some((w) => known.has(w)),
  );
}

/** The word and what it may have been before an ending was added. */
function rootsOf(word: string): string[] {
  const plain = word.replace(/'s?$/u, '');
  const roots = [word, plain];
  for (const end of ['s', 'es', 'd', 'ed', 'ing', 'r', 'er', 'st', 'est', 'n']) {
    if (!plain.endsWith(end) || plain.length < end.length + 2) continue;
    const stem = plain.slice(0, -end.length);
    roots.push(stem);
    if (end === 'ing') roots.push(`${stem}e`);
    // berries, dried, easier: y turned into i.
    if (stem.endsWith('i')) roots.push(`${stem.slice(0, -1)}y`);
    // cutting, hotter: the last letter was doubled.
    if (/(.)\1$/u.test(stem) && /^(?:ed|ing|er|est)$/u.test(end)) roots.push(stem.slice(0, -1));
  }
  return roots;
}
