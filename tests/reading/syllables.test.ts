import { dictionary } from 'cmu-pronouncing-dictionary';
import { daleChall } from 'dale-chall';
import { spache } from 'spache';
import { describe, expect, it } from 'vitest';
import { englishSyllables } from '../../src/reading/measures/syllables/english.js';
import { COUNTERS } from '../../src/reading/measures/syllables/index.js';
import { BY_HAND } from './spoken-words.js';

/** Syllables of every way in which the dictionary lets a word be spoken. */
function spoken(word: string): number[] {
  return [word, `${word}(1)`, `${word}(2)`, `${word}(3)`]
    .map((key) => dictionary[key])
    .filter((sounds) => sounds !== undefined)
    .map((sounds) => sounds.match(/\d/g)?.length ?? 0);
}

describe('English syllables', () => {
  it('agree with the dictionary for all but two of the familiar words', () => {
    const words = [...new Set([...daleChall, ...spache].map((word) => word.toLowerCase()))].filter((word) =>
      /^[a-z']+$/.test(word),
    );
    const known = words.filter((word) => spoken(word).length > 0);
    const otherwise = known.filter((word) => !spoken(word).includes(englishSyllables(word)));
    expect(known.length).toBeGreaterThan(2900);
    // The dictionary spells them out, one as letters.
    expect(otherwise).toEqual(['baa', 'w']);
  });

  it.each([
    ['1', 'canned baked drained rinsed beans dried salt'],
    ['2', 'added protein salted needed fiber oatmeal sugar frozen lentils'],
    ['3', 'calories sodium area nutrients FDA LDL mg nausea'],
    ['4', 'diabetes potassium dietitian USDA ingredients dietary edamame'],
    ['5', 'vegetarian refrigerator'],
  ])('%s: %s', (count, words) => {
    for (const word of words.split(' ')) expect(englishSyllables(word), word).toBe(Number(count));
  });
});

describe.each(Object.entries(BY_HAND))('syllables in %s', (language, hand) => {
  const counter = COUNTERS[language as keyof typeof BY_HAND];
  it.each(Object.entries(hand))('%s: %s', (count, words) => {
    const counted = words.split(' ').map((word) => `${word} ${counter?.(word)}`);
    expect(counted).toEqual(words.split(' ').map((word) => `${word} ${count}`));
  });
});
