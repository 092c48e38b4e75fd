import type { CautionLine, Deck, Inline, Slide, SourceLine, Stage } from '../../../src/document/index.js';
import type { FigureSpec } from '../../../src/figures/index.js';
import { bricks, lanes } from '../../figures/samples.js';

export const words = (text: string): readonly Inline[] => [{ text }];

/** Words with numbers between bars: `Rinsed, a cup has |360 mg| of sodium`. */
export const withNumber = (text: string): readonly Inline[] =>
  text
    .split('|')
    .map((part, index) => (index % 2 === 1 ? { text: part, number: `n${index}` } : { text: part }));

export function slide(number: number, title: string, stage: Stage, more: Partial<Slide> = {}): Slide {
  return {
    id: `s${number}-${title}`,
    number,
    title: withNumber(title),
    stage,
    shelf: [],
    minutes: 2,
    say: [],
    do: [],
    ...more,
  };
}

export function deck(slides: readonly Slide[], more: Partial<Deck> = {}): Deck {
  return {
    language: 'en',
    direction: 'ltr',
    title: 'Beans and peas, three ways',
    slides,
    stamp: {
      version: 'BEANS3 · D-EN · 4F7C',
      dataDate: 'Food data: September 2015.',
      review: 'Not yet reviewed.',
      page: 'Page {page} of {pages}',
      expired: false,
    },
    ...more,
  };
}

const alternative = {
  label: 'Sodium and fiber in 1 cup of pinto beans, three ways.',
  reading: 'A has 2 mg of sodium, B 640 mg, C 360 mg.',
  table: {
    caption: 'One cup of pinto beans',
    head: ['Form', 'Sodium', 'Fiber'],
    rows: [
      ['Dried, cooked at home', '2 mg', '15 g'],
      ['Canned, drained', '640 mg', '9 g'],
      ['Canned, drained and rinsed', '360 mg', 'not known'],
    ],
  },
};

export const show = (figure: FigureSpec): Stage => ({ kind: 'show', block: { kind: 'figure', figure } });
export const lanesStage = show({ ...lanes, alternative });
export const bricksStage = show({ ...bricks, alternative });

export const paragraph = (text: string) => ({ kind: 'paragraph', inlines: words(text) }) as const;
export const list = (ordered: boolean, ...items: readonly string[]) =>
  ({ kind: 'list', ordered, items: items.map((item) => [paragraph(item)]) }) as const;

export interface Option {
  readonly words: string;
  readonly value: string;
  readonly right?: boolean;
}

export const PINTO: readonly Option[] = [
  { words: 'Pinto beans, canned, drained', value: '200 mg' },
  { words: 'Pinto beans, canned, drained and rinsed', value: '180 mg' },
  { words: 'Pinto beans, dried, cooked at home', value: '1 mg', right: true },
];

/** The question and its answer as stages. */
export function asking(prompt: string, options: readonly Option[], letters = 'ABCDEF') {
  const make = (withKey: boolean) => ({
    kind: 'question' as const,
    id: 'least',
    prompt: words(prompt),
    choices: options.map((option, index) => ({
      letter: letters[index] ?? '?',
      inlines: words(option.words),
      sign: 'can' as const,
      ...(withKey
        ? {
            key: {
              right: option.right === true,
              value: option.value,
              why: 'Some salt stays',
              number: `least.${index}`,
            },
          }
        : {}),
    })),
  });
  return [
    { kind: 'ask', question: make(false) },
    { kind: 'answer', question: make(true) },
  ] as const satisfies readonly Stage[];
}

/** A caution whose first sentence is strong, as the register's are. */
export function caution(id: string, word: string, condition: string, rest: string): CautionLine {
  return {
    id,
    heading: word === 'Stop' ? 'Stop' : 'Ask first',
    word,
    inlines: [{ text: condition, strong: true }, { text: ` ${rest}` }],
  };
}

export const cautions = (lines: readonly CautionLine[]): Stage => ({
  kind: 'caution',
  block: { lines, whoToAsk: 'your doctor, nurse or pharmacist' },
});

export const EIGHT_CAUTIONS: readonly CautionLine[] = [
  caution('cans', 'Stop', 'Is the can swollen, leaking or badly dented? Do not open it.', 'Throw it out.'),
  caution(
    'boil',
    'Stop',
    'Soak dry kidney beans. Then boil them hard for 30 minutes.',
    'Slow cookers are not hot enough.',
  ),
  caution(
    'salt',
    'Ask first',
    'Potassium salt is not for children. Pregnant, kidney trouble, or daily pills?',
    'Ask your care team first.',
  ),
  caution('lithium', 'Ask first', 'Do you take lithium?', 'Ask your care team before you cut back on salt.'),
  caution(
    'heart',
    'Ask first',
    'Heart failure or water pills?',
    'Ask your care team before you change your salt.',
  ),
  caution(
    'adrenal',
    'Ask first',
    'Adrenal disease, low blood pressure, or told to eat salt?',
    'Ask your care team first.',
  ),
  caution(
    'fluids',
    'Ask first',
    'Told to limit fluids, or heart, liver or kidney trouble?',
    'Ask your care team before you drink more.',
  ),
  caution(
    'fiber',
    'Ask first',
    'Add fiber slowly and drink water. Gut trouble or surgery?',
    'Ask your care team first.',
  ),
];

export const sources = (count: number, name = 'Food composition table'): readonly SourceLine[] =>
  Array.from({ length: count }, (_, index) => ({
    id: `source-${index + 1}`,
    number: index + 1,
    words: `${name}, part ${index + 1}.`,
    state: 'Read on 4 January 2027',
  }));

const NOTES = [{ text: 'Brands differ. Check your own can. ' }, { text: 'Ask first: slide 4. ' }];
const BASIS = [
  { text: 'Pinto beans: 1 cup, ready to eat. ' },
  { text: 'Source ', strong: true },
  { text: '1', cite: 'usda-sr28', strong: true },
  { text: '.', strong: true },
];
export const figureShelf = { shelf: [...NOTES, ...BASIS], notes: NOTES.length };

const [ask, answer] = asking('Half a cup of pinto beans. Which has the least sodium?', PINTO);

/** A slide of each kind, as a talk has them. */
export const EVERY_KIND: readonly Slide[] = [
  slide(
    1,
    'Beans and peas, three ways',
    {
      kind: 'open',
      audience: 'A talk for adults who shop and cook',
      pictures: ['jar', 'can', 'bag'],
    },
    { shelf: words('It does not treat you. Ask your care team what fits you.') },
  ),
  slide(2, 'Who rinses?', {
    kind: 'words',
    blocks: [paragraph('Do you rinse beans from a can: always, sometimes, or never?')],
    picture: 'sieve',
  }),
  slide(3, 'One cup of beans brings |15 grams| of fiber.', {
    kind: 'say',
    sentence: withNumber('One cup of beans brings |15 grams| of fiber.'),
    picture: 'cup',
  }),
  slide(4, 'Before we start', cautions(EIGHT_CAUTIONS.slice(0, 4)), {
    shelf: words('Your care team can be your doctor, nurse or pharmacist.'),
  }),
  slide(4, 'Before we start, part 2', cautions(EIGHT_CAUTIONS.slice(4))),
  slide(5, 'Rinsed, a cup still has |360 mg| of sodium', lanesStage, figureShelf),
  slide(6, 'Rinsing sends |90 to 190 mg| down the drain', bricksStage, figureShelf),
  slide(7, 'Read two cans', {
    kind: 'do',
    minutes: 8,
    said: '8 minutes',
    steps: [
      'Take two cans from the table.',
      'Find the sodium line on each.',
      'Tell your neighbor which one you would buy, and why.',
    ].map(words),
    pictures: ['can', 'can'],
  }),
  slide(8, 'Drain, rinse, shake', {
    kind: 'words',
    blocks: [
      list(true, 'Tip the can into a strainer.', 'Rinse while you count to 30.', 'Shake, and let it drip.'),
    ],
    picture: 'sieve',
  }),
  slide(9, 'Half a cup of pinto beans. Which has the least sodium?', ask, figureShelf),
  slide(9, 'Answer: |C|. No salt went in.', answer, figureShelf),
  slide(
    10,
    'Where the numbers come from',
    { kind: 'sources', sources: sources(4) },
    {
      shelf: [{ text: 'Not yet reviewed. ' }, { text: 'BEANS3 · D-EN · 4F7C', strong: true }],
    },
  ),
];
