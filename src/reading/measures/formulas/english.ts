import { defineFormula, type Warning } from '../formula.js';

const ADULTS = 'running English text for adults';

/** Flesch R. A new readability yardstick. J Appl Psychol 1948;32:221-33. High is easy; it may pass 100. */
export const flesch = defineFormula({
  id: 'flesch',
  name: 'Flesch reading ease',
  scale: 'ease',
  source: 'Flesch R. J Appl Psychol 1948;32:221-33',
  checked: 'copies',
  madeFor: ADULTS,
  inputs: ['words', 'sentences', 'syllables'],
  formula: '206.835 - 1.015 * words / sentences - 84.6 * syllables / words',
  work: (c) => 206.835 - (1.015 * c.words) / c.sentences - (84.6 * c.syllables) / c.words,
});

/** Kincaid JP et al. Research Branch Report 8-75, Naval Technical Training, 1975. A US school grade. */
export const fleschKincaid = defineFormula({
  id: 'flesch-kincaid',
  name: 'Flesch-Kincaid grade',
  scale: 'grade',
  source: 'Kincaid JP, Fishburne RP, Rogers RL, Chissom BS. Research Branch Report 8-75, 1975',
  checked: 'copies',
  madeFor: 'running English text; normed on navy manuals for adults',
  inputs: ['words', 'sentences', 'syllables'],
  formula: '0.39 * words / sentences + 11.8 * syllables / words - 15.59',
  work: (c) => (0.39 * c.words) / c.sentences + (11.8 * c.syllables) / c.words - 15.59,
});

function fewSentences({ sentences }: { readonly sentences: number }): readonly Warning[] {
  if (sentences >= 30) return [];
  if (sentences < 10)
    return [{ code: 'unreliable', says: `SMOG on ${sentences} of its 30 sentences is unreliable.` }];
  return [
    { code: 'few-sentences', says: `SMOG was made on 30 sentences; here it is scaled up from ${sentences}.` },
  ];
}

const SMOG = 'McLaughlin GH. SMOG grading: a new readability formula. J Reading 1969;12:639-46';

/**
 * McLaughlin GH, J Reading 1969;12:639-46. Words of three syllables or more in 30 sentences. It predicts full
 * understanding and so stands one or two grades above Flesch-Kincaid.
 */
export const smog = defineFormula({
  id: 'smog',
  name: 'SMOG grade',
  scale: 'grade',
  source: SMOG,
  checked: 'copies',
  madeFor: 'English text of 30 sentences, ten each from start, middle and end',
  inputs: ['polysyllables', 'sentences'],
  formula: '1.043 * sqrt(polysyllables * 30 / sentences) + 3.1291',
  work: (c) => 1.043 * Math.sqrt((c.polysyllables * 30) / c.sentences) + 3.1291,
  warn: fewSentences,
});

/** The quick form in the same paper: 3 and the root of the nearest square number. A whole grade. */
export function smogQuick(counts: {
  readonly polysyllables: number;
  readonly sentences: number;
}): number | null {
  const scaled = (counts.polysyllables * 30) / counts.sentences;
  if (!Number.isFinite(scaled)) return null;
  const root = Math.floor(Math.sqrt(scaled));
  return 3 + (scaled - root * root <= (root + 1) ** 2 - scaled ? root : root + 1);
}

/** Gunning R. The Technique of Clear Writing. McGraw-Hill 1952. Complex words as he leaves names and -ed out. */
export const gunningFog = defineFormula({
  id: 'gunning-fog',
  name: 'Gunning fog index',
  scale: 'grade',
  source: 'Gunning R. The Technique of Clear Writing. McGraw-Hill 1952',
  checked: 'copies',
  madeFor: 'English text of 100 words or more',
  inputs: ['words', 'sentences', 'complexWords'],
  formula: '0.4 * (words / sentences + 100 * complex_words / words)',
  work: (c) => 0.4 * (c.words / c.sentences + (100 * c.complexWords) / c.words),
});

/** Coleman M, Liau TL. J Appl Psychol 1975;60:283-4. Letters, without digits and marks. */
export const colemanLiau = defineFormula({
  id: 'coleman-liau',
  name: 'Coleman-Liau index',
  scale: 'grade',
  source: 'Coleman M, Liau TL. J Appl Psychol 1975;60:283-4',
  checked: 'copies',
  madeFor: 'English text of 100 words or more',
  inputs: ['letters', 'words', 'sentences'],
  formula: '0.0588 * letters * 100 / words - 0.296 * sentences * 100 / words - 15.8',
  work: (c) => (5.88 * c.letters) / c.words - (29.6 * c.sentences) / c.words - 15.8,
});

/** Smith EA, Senter RJ. Automated readability index. AMRL-TR-66-220, 1967. Letters and digits. */
export const automated = defineFormula({
  id: 'automated',
  name: 'automated readability index',
  scale: 'grade',
  source: 'Smith EA, Senter RJ. AMRL-TR-66-220, 1967',
  checked: 'copies',
  madeFor: 'running English text',
  inputs: ['characters', 'words', 'sentences'],
  formula: '4.71 * characters / words + 0.5 * words / sentences - 21.43',
  work: (c) => (4.71 * c.characters) / c.words + (0.5 * c.words) / c.sentences - 21.43,
});
