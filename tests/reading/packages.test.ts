import { automatedReadability } from 'automated-readability';
import { colemanLiau } from 'coleman-liau';
import { daleChallFormula } from 'dale-chall-formula';
import { flesch } from 'flesch';
import { fleschKincaid } from 'flesch-kincaid';
import { gunningFog } from 'gunning-fog';
import { smogFormula } from 'smog-formula';
import { spacheFormula } from 'spache-formula';
import { describe, expect, it } from 'vitest';
import { ENGLISH } from './passages.js';
import { measured, scoreOf } from './scores.js';

describe('English formulas give what packages by other hands give for the same counts', () => {
  it.each(ENGLISH.map((text) => [text.slice(0, 40), text] as const))('%s…', (_, text) => {
    const found = measured(text, 'en');
    const { words: word, sentences: sentence, letters: letter, characters: character } = found.counts;
    const counted = (name: keyof typeof found.counts) => found.counts[name] ?? Number.NaN;
    const theirs = {
      flesch: flesch({ word, sentence, syllable: counted('syllables') }),
      'flesch-kincaid': fleschKincaid({ word, sentence, syllable: counted('syllables') }),
      smog: smogFormula({ sentence, polysillabicWord: counted('polysyllables') }),
      'gunning-fog': gunningFog({ word, sentence, complexPolysillabicWord: counted('complexWords') }),
      'coleman-liau': colemanLiau({ word, sentence, letter }),
      automated: automatedReadability({ word, sentence, character }),
      'dale-chall': daleChallFormula({ word, sentence, difficultWord: counted('difficultWords') }),
      spache: spacheFormula({ word, sentence, unfamiliarWord: counted('unfamiliarWords') }),
    };
    for (const [id, value] of Object.entries(theirs)) expect(scoreOf(found, id), id).toBeCloseTo(value, 9);
  });
});
