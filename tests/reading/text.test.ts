import { describe, expect, it } from 'vitest';
import { type MeasuredLanguage, type Piece, piecesOf } from '../../src/reading/measures/index.js';
import { sentencesOf } from '../../src/reading/measures/sentences.js';
import { wordsOf } from '../../src/reading/measures/words.js';
import { measured } from './scores.js';

/** A text whose sentences are parted by ` | `. */
const SENTENCES: readonly (readonly [MeasuredLanguage, string])[] = [
  ['en', 'Dr. Lopez can help. | Mrs. Ruiz too.'],
  ['en', 'Use herbs, e.g. Basil. | Try it.'],
  ['en', 'Use about 1.5 g (1,500 mg) a day.'],
  ['en', 'Drain the beans. | 2 cups are left.'],
  ['en', 'Add 1 oz. 5 times a day.'],
  ['en', 'See No. 5 on the list.'],
  ['en', 'No. | Rinse them first.'],
  ['en', 'Get vitamin C. | Eat an orange.'],
  ['en', 'Eat at 8 a.m. every day.'],
  ['en', 'Eat at 8 a.m. | Drink water.'],
  ['en', '“Eat more beans!” she said. | He did.'],
  ['en', 'Which can? | This one! | Why … because it is cheap.'],
  ['en', '1. Wash your hands. | 2. Dry them.'],
  ['en', 'It costs $1.25. | That is cheap.'],
  ['en', 'Salt, pepper; oil: that is all.'],
  ['es', 'La Dra. Ruiz ayuda. | ¿Cuánta sal? | Use 1,5 g al día.'],
  ['es', 'Use hierbas, p. ej. Albahaca. | Pruebe.'],
  ['fr', 'M. Petit aide. | Prenez 1,5 g par jour. | Bien !'],
  ['pt', 'A Dra. Lima ajuda. | Use 1,5 g por dia.'],
  ['de', 'Am 3. Mai essen wir z. B. Bohnen. | Das macht satt.'],
  ['de', 'Dr. Klein hilft. | Nehmen Sie 1,5 g am Tag.'],
  ['it', 'La dott.ssa Riva aiuta. | Usate 1,5 g al giorno.'],
];

describe('sentences', () => {
  it.each(SENTENCES)('%s: %s', (language, marked) => {
    expect(sentencesOf(marked.replaceAll(' | ', ' '), language)).toEqual(marked.split(' | '));
  });
});

describe('words', () => {
  it.each([
    ['en', 'Low-sodium soup: don’t add salt.', 'Low-sodium soup don’t add salt'],
    ['en', 'About 1,500 mg, 1/2 cup or 1½ cups — 10-15 g.', 'About 1,500 mg 1/2 cup or 1½ cups 10-15 g'],
    ['en', 'salt -free low- and salt', 'salt free low and salt'],
    ['en', 'Vitamin B12 + 5% & more', 'Vitamin B12 5 more'],
    ['fr', 'L’eau, c’est bon aujourd’hui.', 'L’eau c’est bon aujourd’hui'],
    ['it', "l'acqua e il caffè", "l'acqua e il caffè"],
  ] as const)('%s: %s', (language, text, words) => {
    expect(wordsOf(text, language).map((word) => word.text)).toEqual(words.split(' '));
  });
});

describe('pieces of plain text', () => {
  it.each<[string, string, readonly Piece[]]>([
    [
      'a heading with a mark',
      '# Beans\nThey fill you up.',
      [
        { kind: 'heading', text: 'Beans' },
        { kind: 'text', text: 'They fill you up.' },
      ],
    ],
    [
      'a heading without one',
      'Beans for all\nThey fill you up.',
      [
        { kind: 'text', text: 'Beans for all' },
        { kind: 'text', text: 'They fill you up.' },
      ],
    ],
    [
      'lines that were wrapped',
      'They fill you up for little\nmoney, and last long.',
      [{ kind: 'text', text: 'They fill you up for little money, and last long.' }],
    ],
    [
      'bullets and list numbers',
      'You need:\n- one can\n• a strainer\n2) water\n\nRinse.',
      [
        { kind: 'text', text: 'You need:' },
        { kind: 'item', text: 'one can' },
        { kind: 'item', text: 'a strainer' },
        { kind: 'item', text: 'water' },
        { kind: 'text', text: 'Rinse.' },
      ],
    ],
    ['a decimal at the start of a line', 'Take\n1.5 cups.', [{ kind: 'text', text: 'Take 1.5 cups.' }]],
  ])('%s', (_, text, pieces) => {
    expect(piecesOf(text)).toEqual(pieces);
  });
});

describe('counts by hand', () => {
  it.each([
    // Headings are not counted; each item is a sentence, and its number is no word.
    [
      'en',
      '# Beans\n\nYou need:\n\n- one can\n- a strainer\n\nRinse for 2 minutes.',
      { sentences: 4, words: 10, syllables: 12, numerals: 1, polysyllables: 0 },
    ],
    // strainer, potassium, kidneys, medicine: long words; potassium, medicine: three syllables and more.
    [
      'en',
      'Salted beans have potassium. Ask Maria about medicine for kidneys.',
      { sentences: 2, words: 10, longWords: 3, polysyllables: 3, complexWords: 2 },
    ],
    // "created" has its third syllable from -ed, "salt-free" is joined from easy words.
    ['en', 'He created a salt-free dish.', { words: 5, polysyllables: 1, complexWords: 0 }],
    // "potassium" is on neither list; the plural and -ed of a listed word are familiar.
    ['en', 'Wash and cooked beans have potassium.', { words: 6, difficultWords: 1 }],
    [
      'es',
      'Lave el arroz. El agua fría quita sodio.',
      { sentences: 2, words: 8, syllables: 14, letters: 31 },
    ],
    ['fr', 'L’eau froide enlève le sel.', { sentences: 1, words: 5, syllables: 6 }],
    ['pt', 'Lave o feijão. A água fria tira o sal.', { sentences: 2, words: 9, syllables: 14 }],
    [
      'de',
      'Spülen Sie die Bohnen. Das Salz geht weg.',
      { sentences: 2, words: 8, syllables: 10, monosyllables: 6 },
    ],
    [
      'it',
      'Lavate il riso. L’acqua toglie il sale.',
      { sentences: 2, words: 7, letters: 30, syllables: null },
    ],
  ] as const)('%s: %j', (language, text, counts) => {
    expect(measured(text, language).counts).toMatchObject(counts);
  });
});
