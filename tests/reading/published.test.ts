import { describe, expect } from 'vitest';
import type { Score } from '../../src/reading/measures/formula.js';
import { lix, osman, rix } from '../../src/reading/measures/formulas/any-language.js';
import {
  colemanLiau,
  flesch,
  fleschKincaid,
  smog,
  smogQuick,
} from '../../src/reading/measures/formulas/english.js';
import { amstad } from '../../src/reading/measures/formulas/german.js';
import { inflesz, kandelMoles, martins } from '../../src/reading/measures/formulas/romance.js';
import { daleChall, spache, spache1953 } from '../../src/reading/measures/formulas/word-lists.js';
import { type PublishedCase, runCases, within } from '../nutrition/published-case.js';
import { measured, scoreOf, workedAgain } from './scores.js';

const BY_HAND = 'computed by hand, formula verified';
const FROM_MEMORY = 'value of the source, from memory';
const PRINTED = 'value printed in the source';

/** Holds a score to a value, and its written formula to the score. */
function holds(score: Score, value: number, off: number): void {
  within(score.value, value, off);
  expect(workedAgain(score)).toBeCloseTo(Number(score.value), 9);
}

const CASES: readonly PublishedCase[] = [
  {
    id: 'H-EN-01',
    title: 'a plain English text: counts and Flesch',
    source: 'formula in several public transcriptions; counted by hand',
    status: BY_HAND,
    holds: () => {
      const found = measured('Eat more beans. Rinse canned beans to cut salt. Drink water, not soda.', 'en');
      expect(found.counts).toMatchObject({ words: 13, sentences: 3, syllables: 15, letters: 54 });
      within(scoreOf(found, 'flesch'), 104.82, 0.05);
      within(scoreOf(found, 'flesch-kincaid'), -0.28, 0.05);
    },
  },
  {
    id: 'H-EN-03',
    title: 'six words of one syllable',
    source: 'worked example in an encyclopedia',
    status: FROM_MEMORY,
    holds: () => {
      const counts = { words: 6, sentences: 1, syllables: 6 };
      holds(flesch.score(counts), 116.145, 0.05);
      holds(fleschKincaid.score(counts), -1.45, 0.05);
    },
  },
  {
    id: 'H-EN-05',
    title: 'the worked example of Coleman and Liau',
    source: 'Coleman & Liau 1975',
    status: FROM_MEMORY,
    holds: () => holds(colemanLiau.score({ words: 119, sentences: 5, letters: 639 }), 14.53, 0.1),
  },
  {
    id: 'H-EN-06',
    title: 'short forms, decimals and thousands end no sentence',
    source: 'counted by hand',
    status: BY_HAND,
    holds: () => {
      const text = 'Limit sodium to 1.5 g (1,500 mg) a day. Dr. visits can help.';
      expect(measured(text, 'en').counts.sentences).toBe(2);
    },
  },
  {
    id: 'H-SMOG-01',
    title: 'SMOG on 30 sentences, and its quick form',
    source: 'McLaughlin 1969',
    status: BY_HAND,
    holds: () => {
      const counts = { polysyllables: 24, sentences: 30 };
      const score = smog.score(counts);
      holds(score, 8.24, 0.05);
      expect(score.warnings).toEqual([]);
      expect(smogQuick(counts)).toBe(8);
    },
  },
  {
    id: 'H-SMOG-03',
    title: 'SMOG below ten sentences is marked unreliable',
    source: 'norming of SMOG',
    status: BY_HAND,
    holds: () => {
      const score = smog.score({ polysyllables: 0, sentences: 3 });
      holds(score, 3.13, 0.01);
      expect(score.warnings.map(({ code }) => code)).toEqual(['unreliable']);
    },
  },
  {
    id: 'H-DC-01',
    title: 'Dale-Chall above 5 percent difficult words',
    source: 'Dale & Chall; printed in a public unit test',
    status: PRINTED,
    holds: () => holds(daleChall.score({ words: 100, sentences: 5, difficultWords: 10 }), 6.2075, 0.005),
  },
  {
    id: 'H-SP-01',
    title: 'Spache revised and of 1953',
    source: 'Spache 1974 and 1953',
    status: 'computed by hand, formula from memory',
    holds: () => {
      const counts = { words: 200, sentences: 25, unfamiliarWords: 20 };
      holds(spache.score(counts), 2.447, 0.005);
      holds(spache1953.score(counts), 2.827, 0.005);
    },
  },
  {
    id: 'H-ES-01',
    title: 'a Spanish text: counts and both formulas',
    source: 'Fernández Huerta 1959 as corrected; Szigriszt 1993; Barrio-Cantalejo 2008',
    status: BY_HAND,
    holds: () => {
      const text = 'Coma más frutas y verduras. Lave los frijoles de lata para quitar la sal.';
      const found = measured(text, 'es');
      expect(found.counts).toMatchObject({ words: 14, sentences: 2, syllables: 24 });
      within(scoreOf(found, 'fernandez-huerta'), 96.84, 0.05);
      within(scoreOf(found, 'szigriszt-pazos'), 93.04, 0.05);
      expect(found.scores.find(({ id }) => id === 'szigriszt-pazos')?.band).toBe('muy fácil');
    },
  },
  {
    id: 'H-ES-03',
    title: 'bands of INFLESZ',
    source: 'Barrio-Cantalejo 2008',
    status: PRINTED,
    holds: () => {
      expect([85, 70, 60, 50, 30].map(inflesz)).toEqual([
        'muy fácil',
        'bastante fácil',
        'normal',
        'algo difícil',
        'muy difícil',
      ]);
      expect([80, 65, 55, 40].map(inflesz)).toEqual([
        'bastante fácil',
        'normal',
        'algo difícil',
        'algo difícil',
      ]);
    },
  },
  {
    id: 'H-FR-01',
    title: 'French from counts',
    source: 'Kandel & Moles 1958',
    status: BY_HAND,
    holds: () => holds(kandelMoles.score({ words: 120, sentences: 8, syllables: 200 }), 69.11, 0.05),
  },
  {
    id: 'H-DE-02',
    title: 'German from means',
    source: 'Amstad 1978',
    status: BY_HAND,
    holds: () => holds(amstad.score({ words: 120, sentences: 10, syllables: 204 }), 68.55, 0.05),
  },
  {
    id: 'H-PT-01',
    title: 'Portuguese from means',
    source: 'Martins 1996; printed in a public unit test',
    status: PRINTED,
    holds: () => holds(martins.score({ words: 150, sentences: 10, syllables: 225 }), 106.71, 0.01),
  },
  {
    id: 'H-SV-01',
    title: 'LIX and RIX',
    source: 'Björnsson 1968',
    status: BY_HAND,
    holds: () => {
      holds(lix.score({ words: 200, sentences: 16, longWords: 44 }), 34.5, 0.01);
      holds(rix.score({ sentences: 16, longWords: 44 }), 2.75, 0.01);
    },
  },
  {
    id: 'H-AR-01',
    title: 'Arabic from counts',
    source: 'El-Haj & Rayson 2016',
    status: BY_HAND,
    holds: () => {
      const counts = {
        words: 100,
        sentences: 5,
        hardWords: 20,
        syllables: 250,
        complexWords: 5,
        highStyleWords: 2,
      };
      holds(osman.score(counts), 113.51, 0.05);
    },
  },
];

describe('published values of reading measures', () => {
  runCases(CASES);
});
