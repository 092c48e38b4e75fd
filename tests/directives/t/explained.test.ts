import { describe, expect, it } from 'vitest';
import type { Where } from '../../../src/directives/contract.js';
import type { Level } from '../../../src/reading/index.js';
import { blocksOf, readSnippet } from '../desk.js';

const text = 'The :t[added sugars] first, then :t[Added sugar] again, and :t[sodium].\n';
const means = {
  sugars: ' (sugars put in when food is made or served)',
  sodium: ' (the part of salt that labels count)',
};

function printed(where: Where, level: Level): string {
  const { computed } = readSnippet(text);
  const blocks = computed ? blocksOf(computed, where, level) : [];
  return blocks.flatMap((b) => (b.kind === 'paragraph' ? b.inlines.map((i) => i.text) : [])).join('');
}

describe('a word of the term list', () => {
  it.each([
    ['handout', 'short'],
    ['handout', 'plain'],
    ['worksheet', 'plain'],
    ['key', 'short'],
  ] satisfies [Where, Level][])('is explained once on the %s at %s, in whatever form', (where, level) => {
    expect(printed(where, level)).toBe(
      `The added sugars${means.sugars} first, then Added sugar again, and sodium${means.sodium}.`,
    );
  });

  it.each([
    ['handout', 'fuller'],
    ['slide', 'plain'],
    ['staff', 'staff'],
  ] satisfies [Where, Level][])('prints as it stands on the %s at %s', (where, level) => {
    expect(printed(where, level)).toBe('The added sugars first, then Added sugar again, and sodium.');
  });
});
