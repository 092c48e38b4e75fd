import { bandOf, defineFormula } from '../formula.js';

const INPUTS = ['words', 'sentences', 'syllables'] as const;

/**
 * Fernández Huerta J. Medidas sencillas de lecturabilidad. Consigna 1959;214:29-32. Syllables and words per
 * sentence; the paper is often quoted with sentences per 100 words in the last place, which is a misprint.
 */
export const fernandezHuerta = defineFormula({
  id: 'fernandez-huerta',
  name: 'Fernández Huerta reading ease',
  scale: 'ease',
  source: 'Fernández Huerta J. Consigna 1959;214:29-32, as corrected',
  checked: 'copies',
  madeFor: 'running Spanish text',
  inputs: INPUTS,
  formula: '206.84 - 60 * syllables / words - 1.02 * words / sentences',
  work: (c) => 206.84 - (60 * c.syllables) / c.words - (1.02 * c.words) / c.sentences,
});

const INFLESZ = [
  [80, 'muy fácil'],
  [65, 'bastante fácil'],
  [55, 'normal'],
  [39.9999, 'algo difícil'],
  [Number.NEGATIVE_INFINITY, 'muy difícil'],
] as const;

/** Band of the INFLESZ scale. On a bound that two bands share, the harder one, except 40, which is not below 40. */
export const inflesz = (value: number): string => bandOf(value, INFLESZ);

/**
 * Szigriszt Pazos F. Sistemas predictivos de legilibilidad del mensaje escrito. Thesis, Madrid 1993. Bands:
 * Barrio-Cantalejo IM et al. An Sist Sanit Navar 2008;31:135-52.
 */
export const szigrisztPazos = defineFormula({
  id: 'szigriszt-pazos',
  name: 'Szigriszt-Pazos perspicuity',
  scale: 'ease',
  source:
    'Szigriszt Pazos F. Thesis, Madrid 1993; bands Barrio-Cantalejo IM et al. An Sist Sanit Navar 2008;31:135-52',
  checked: 'copies',
  madeFor: 'running Spanish text; the bands for health leaflets',
  inputs: INPUTS,
  formula: '206.835 - 62.3 * syllables / words - words / sentences',
  work: (c) => 206.835 - (62.3 * c.syllables) / c.words - c.words / c.sentences,
  band: inflesz,
});

/** Kandel L, Moles A. Application de l'indice de Flesch à la langue française. Cahiers Études Radio-Télévision 1958;19:253-74. */
export const kandelMoles = defineFormula({
  id: 'kandel-moles',
  name: 'Kandel-Moles reading ease',
  scale: 'ease',
  source: 'Kandel L, Moles A. Cahiers Études Radio-Télévision 1958;19:253-74',
  checked: 'copies',
  madeFor: 'running French text, with syllables as spoken',
  inputs: INPUTS,
  formula: '207 - 1.015 * words / sentences - 73.6 * syllables / words',
  work: (c) => 207 - (1.015 * c.words) / c.sentences - (73.6 * c.syllables) / c.words,
});

/** Martins TBF et al. Readability formulas applied to textbooks in Brazilian Portuguese. ICMC-USP, Notas 28, 1996. */
export const martins = defineFormula({
  id: 'martins',
  name: 'Martins reading ease',
  scale: 'ease',
  source: 'Martins TBF, Ghiraldelo CM, Nunes MGV, Oliveira ON. Notas do ICMSC-USP 28, 1996',
  checked: 'copies',
  madeFor: 'Brazilian Portuguese schoolbooks',
  inputs: INPUTS,
  formula: '248.835 - 1.015 * words / sentences - 84.6 * syllables / words',
  work: (c) => 248.835 - (1.015 * c.words) / c.sentences - (84.6 * c.syllables) / c.words,
});

const GULPEASE = [
  [79.9999, 'easy for readers who finished primary school'],
  [59.9999, 'hard for readers who finished primary school'],
  [39.9999, 'hard for readers who finished lower secondary school'],
  [Number.NEGATIVE_INFINITY, 'hard for readers who finished upper secondary school'],
] as const;

/** Lucisano P, Piemontese ME. GULPEASE. Scuola e città 1988;39(3):110-24. Letters alone; no syllables. */
export const gulpease = defineFormula({
  id: 'gulpease',
  name: 'Gulpease index',
  scale: 'ease',
  source: 'Lucisano P, Piemontese ME. Scuola e città 1988;39(3):110-24',
  checked: 'copies',
  madeFor: 'running Italian text',
  inputs: ['letters', 'words', 'sentences'],
  formula: '89 + (300 * sentences - 10 * letters) / words',
  work: (c) => 89 + (300 * c.sentences - 10 * c.letters) / c.words,
  band: (value) => bandOf(value, GULPEASE),
});
