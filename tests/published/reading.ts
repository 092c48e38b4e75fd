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
import { measured, scoreOf, workedAgain } from '../reading/scores.js';
import {
  BY_HAND,
  BY_HAND_RECALLED,
  hold,
  PRINTED,
  type PublishedCase,
  RECALLED,
  row,
} from './published-case.js';

/** A score, once its own written formula has given it again. */
function again(score: Score): number | null {
  hold(workedAgain(score), score.value, 1e-9);
  return score.value;
}

export const READING: readonly PublishedCase[] = [
  row({
    id: 'H-EN-01',
    what: 'a plain English text: counts and Flesch; "canned" is one syllable',
    given: 'Eat more beans. Rinse canned beans to cut salt. Drink water, not soda.',
    expected: { words: 13, sentences: 3, syllables: 15, letters: 54, flesch: 104.82, grade: -0.28 },
    tolerance: { flesch: 0.05, grade: 0.05 },
    source: 'formula in several public transcriptions; counted by hand',
    status: BY_HAND,
    find: (text) => {
      const found = measured(text, 'en');
      const { words, sentences, syllables, letters } = found.counts;
      return {
        words,
        sentences,
        syllables,
        letters,
        flesch: scoreOf(found, 'flesch'),
        grade: scoreOf(found, 'flesch-kincaid'),
      };
    },
  }),
  row({
    id: 'H-EN-03',
    what: 'six words of one syllable',
    given: { words: 6, sentences: 1, syllables: 6 },
    expected: { flesch: 116.145, grade: -1.45 },
    tolerance: 0.05,
    source: 'worked example in an encyclopedia',
    status: RECALLED,
    find: (counts) => ({ flesch: again(flesch.score(counts)), grade: again(fleschKincaid.score(counts)) }),
  }),
  row({
    id: 'H-EN-05',
    what: 'the worked example of Coleman and Liau',
    given: { words: 119, sentences: 5, letters: 639 },
    expected: 14.53,
    tolerance: 0.1,
    source: 'Coleman & Liau 1975',
    status: RECALLED,
    find: (counts) => again(colemanLiau.score(counts)),
  }),
  row({
    id: 'H-EN-06',
    what: 'short forms, decimals and thousands end no sentence',
    given: 'Limit sodium to 1.5 g (1,500 mg) a day. Dr. visits can help.',
    expected: 2,
    source: 'counted by hand',
    status: BY_HAND,
    find: (text) => measured(text, 'en').counts.sentences,
  }),
  row({
    id: 'H-SMOG-01',
    what: 'SMOG on 30 sentences, and its quick form',
    given: { polysyllables: 24, sentences: 30 },
    expected: { grade: 8.24, warnings: [], quick: 8 },
    tolerance: { grade: 0.05 },
    source: 'McLaughlin 1969',
    status: BY_HAND,
    find: (counts) => {
      const score = smog.score(counts);
      return { grade: again(score), warnings: score.warnings, quick: smogQuick(counts) };
    },
  }),
  row({
    id: 'H-SMOG-03',
    what: 'SMOG below ten sentences is marked unreliable',
    given: { polysyllables: 0, sentences: 3 },
    expected: { grade: 3.13, warnings: ['unreliable'] },
    tolerance: { grade: 0.01 },
    source: 'norming of SMOG',
    status: BY_HAND,
    find: (counts) => {
      const score = smog.score(counts);
      return { grade: again(score), warnings: score.warnings.map(({ code }) => code) };
    },
  }),
  row({
    id: 'H-DC-01',
    what: 'Dale-Chall above 5 percent difficult words',
    given: { words: 100, sentences: 5, difficultWords: 10 },
    expected: 6.2075,
    tolerance: 0.005,
    source: 'Dale & Chall; printed in a public unit test',
    status: PRINTED,
    find: (counts) => again(daleChall.score(counts)),
  }),
  row({
    id: 'H-SP-01',
    what: 'Spache revised and of 1953, at 8 words a sentence and 10 percent unfamiliar',
    given: { words: 200, sentences: 25, unfamiliarWords: 20 },
    expected: { revised: 2.447, of1953: 2.827 },
    tolerance: 0.005,
    source: 'Spache 1974 and 1953',
    status: BY_HAND_RECALLED,
    find: (counts) => ({ revised: again(spache.score(counts)), of1953: again(spache1953.score(counts)) }),
  }),
  row({
    id: 'H-ES-01',
    what: 'a Spanish text: counts, both formulas and the band',
    given: 'Coma más frutas y verduras. Lave los frijoles de lata para quitar la sal.',
    expected: {
      words: 14,
      sentences: 2,
      syllables: 24,
      fernandezHuerta: 96.84,
      szigriszt: 93.04,
      band: 'muy fácil',
    },
    tolerance: { fernandezHuerta: 0.05, szigriszt: 0.05 },
    source: 'Fernández Huerta 1959 as corrected; Szigriszt 1993; Barrio-Cantalejo 2008',
    status: BY_HAND,
    find: (text) => {
      const found = measured(text, 'es');
      const { words, sentences, syllables } = found.counts;
      return {
        words,
        sentences,
        syllables,
        fernandezHuerta: scoreOf(found, 'fernandez-huerta'),
        szigriszt: scoreOf(found, 'szigriszt-pazos'),
        band: found.scores.find(({ id }) => id === 'szigriszt-pazos')?.band,
      };
    },
  }),
  row({
    id: 'H-ES-03',
    what: 'bands of INFLESZ, and scores on their borders',
    given: [85, 70, 60, 50, 30, 80, 65, 55, 40],
    expected: [
      'muy fácil',
      'bastante fácil',
      'normal',
      'algo difícil',
      'muy difícil',
      'bastante fácil',
      'normal',
      'algo difícil',
      'algo difícil',
    ],
    source: 'Barrio-Cantalejo 2008',
    status: PRINTED,
    find: (given) => given.map(inflesz),
  }),
  row({
    id: 'H-FR-01',
    what: 'French from counts',
    given: { words: 120, sentences: 8, syllables: 200 },
    expected: 69.11,
    tolerance: 0.05,
    source: 'Kandel & Moles 1958',
    status: BY_HAND,
    find: (counts) => again(kandelMoles.score(counts)),
  }),
  row({
    id: 'H-DE-02',
    what: 'German at 12 words a sentence and 1.7 syllables a word',
    given: { words: 120, sentences: 10, syllables: 204 },
    expected: 68.55,
    tolerance: 0.05,
    source: 'Amstad 1978',
    status: BY_HAND,
    find: (counts) => again(amstad.score(counts)),
  }),
  row({
    id: 'H-PT-01',
    what: 'Portuguese at 15 words a sentence and 1.5 syllables a word',
    given: { words: 150, sentences: 10, syllables: 225 },
    expected: 106.71,
    tolerance: 0.01,
    source: 'Martins 1996; printed in a public unit test',
    status: PRINTED,
    find: (counts) => again(martins.score(counts)),
  }),
  row({
    id: 'H-SV-01',
    what: 'LIX and RIX',
    given: { words: 200, sentences: 16, longWords: 44 },
    expected: { lix: 34.5, rix: 2.75 },
    tolerance: 0.01,
    source: 'Björnsson 1968',
    status: BY_HAND,
    find: (counts) => ({ lix: again(lix.score(counts)), rix: again(rix.score(counts)) }),
  }),
  row({
    id: 'H-AR-01',
    what: 'Arabic from counts',
    given: {
      words: 100,
      sentences: 5,
      hardWords: 20,
      syllables: 250,
      complexWords: 5,
      highStyleWords: 2,
    },
    expected: 113.51,
    tolerance: 0.05,
    source: 'El-Haj & Rayson 2016',
    status: BY_HAND,
    find: (counts) => again(osman.score(counts)),
  }),
];
