import type { Problem } from '../../src/diagnostics/index.js';
import type { Sheet, ShownNumber } from '../../src/document/index.js';
import { type CautionForReview, type ReviewWords, reviewBlocks } from '../../src/outputs/review/index.js';
import { cautions, handout } from '../layout/sample.js';

export const WORDS: ReviewWords = {
  numbers: 'Numbers',
  cautions: 'Cautions',
  problems: 'Problems',
  number: 'Number',
  shown: 'Shown',
  how: 'How it is worked out',
  from: 'Where it comes from',
  caution: 'Caution',
  words: 'Words',
  pulledBy: 'Pulled by',
  toConfirm: 'To confirm',
  unconfirmed: 'unconfirmed',
  problem: 'Problem',
  toDo: 'What to do',
  place: 'Place',
  unrounded: 'unrounded',
  notKnown: 'not known',
  none: 'None.',
};

function number(index: number): ShownNumber {
  const forms = ['dried, cooked at home', 'canned, drained', 'canned, drained and rinsed'];
  const form = forms[index % 3] ?? '';
  return {
    id: `pinto.${form.replaceAll(/[ ,]+/g, '-')}.${index < 3 ? 'sodium' : `measure-${index}`}`,
    value: 180.4375 + index,
    text: `${180 + index} mg`,
    unit: 'mg',
    formula: 'value * grams / 100',
    inputs: [
      { name: 'value', value: 239 + index, unit: 'mg per 100 g', source: 'usda-sr28' },
      {
        name: 'grams',
        value: 75.5,
        unit: 'g',
        source: 'house',
        note: 'half a cup, weighed from the food’s own measure',
      },
    ],
    sources: ['usda-sr28'],
    what: `sodium in 1/2 cup of pinto beans, ${form}`,
    food: {
      id: 'pinto-canned',
      source: 'usda-sr28',
      number: '16044',
      description: 'Beans, pinto, mature seeds, canned, drained solids',
      date: '28 September 2015',
    },
  };
}

const CAUTIONS: readonly CautionForReview[] = cautions('plain').lines.map((line) => ({
  id: line.id,
  heading: line.word,
  wordings: [
    { level: 'short', text: line.inlines.map((i) => i.text).join('') },
    {
      level: 'fuller',
      text: `${line.inlines.map((i) => i.text).join('')} More is said here for those who want to know why.`,
    },
  ],
  pulledBy: ['topic: cans', 'food: pinto beans, canned, drained (lesson.md, line 18)'],
  toConfirm: 'Pharmacist: the list of medicines. Dietitian: the wording at short.',
}));

const PROBLEMS: readonly Problem[] = [
  {
    code: 'N18',
    severity: 'ask',
    message: 'The two canned forms differ by less than the data can tell.',
    hint: 'Ask about another pair, or say that they are about the same.',
    place: { file: 'lessons/beans-three-ways/lesson.md', line: 42, column: 1 },
  },
];

/** A review sheet of `count` numbers. */
export function review(count: number): Sheet {
  const numbers = Array.from({ length: count }, (_, index) => number(index));
  const { interpreter: _, ...plain } = handout('plain');
  return {
    ...plain,
    kind: 'review',
    level: 'staff',
    message: [],
    strip: { start: 'Pinewater Family Clinic', end: 'Review sheet · February talk' },
    cautions: cautions('staff'),
    blocks: reviewBlocks({
      numbers,
      cautions: CAUTIONS,
      problems: PROBLEMS,
      words: WORDS,
      sourceOf: (id) => (id === 'usda-sr28' ? 'USDA Standard Reference, release 28' : id),
    }),
  };
}
