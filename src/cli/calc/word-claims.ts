import {
  glutenFree,
  isSmallReference,
  noAddedSugars,
  noSaltAdded,
  ok,
  organicShare,
  organicWords,
  REFERENCE_KINDS,
  type Result,
  referenceAmountOf,
  type WordVerdict,
} from '../../nutrition/index.js';
import { choice } from './choices.js';
import { answer, US_LABELS } from './comparing-claims.js';
import { type Answer, calculation } from './contract.js';
import { amount, byDefault, numberOrUnknown } from './fields.js';
import { ofNumber, ofWord } from './values.js';

function verdict({ allowed, say, source, checked, note }: WordVerdict): Result<Answer> {
  return ok({
    results: [ofWord('allowed', allowed)],
    cautions: [...say, ...(note === undefined ? [] : [note])],
    sources: [source],
    checked,
  });
}

/** Claims that are words about the making of a food. */
export const WORD_CLAIMS = [
  calculation({
    name: 'no-added-sugars',
    what: 'whether a US label may say no added sugars',
    inputs: {
      'sugar-added': answer('whether sugar was added'),
      'sugary-ingredient': answer('jam, juice concentrate or another ingredient that brings sugar'),
      'process-raises-sugars': answer('a step that raises the sugars, such as enzymes on starch'),
      'usually-sweetened': answer('whether the food it stands in for is usually sweetened'),
      'low-calorie': byDefault(answer('whether the food is low in calories'), 'unknown'),
    },
    example: ['sugar-added=no', 'sugary-ingredient=no', 'process-raises-sugars=no', 'usually-sweetened=yes'],
    holdsFor: US_LABELS,
    sources: ['21 CFR 101.60(c)(2)'],
    compute: (of) =>
      verdict(
        noAddedSugars({
          sugarAdded: of['sugar-added'],
          sugaryIngredient: of['sugary-ingredient'],
          processRaisesSugars: of['process-raises-sugars'],
          usuallySweetened: of['usually-sweetened'],
          lowCalorie: of['low-calorie'],
        }),
      ),
  }),
  calculation({
    name: 'no-salt-added',
    what: 'whether a US label may say no salt added or unsalted',
    inputs: {
      'salt-added': answer('whether salt was added'),
      'usually-salted': answer('whether the food it stands in for is usually salted'),
      'sodium-free': byDefault(answer('whether it is sodium free'), 'unknown'),
    },
    example: ['salt-added=no', 'usually-salted=yes'],
    holdsFor: US_LABELS,
    sources: ['21 CFR 101.61(c)(2)'],
    compute: (of) =>
      verdict(
        noSaltAdded({
          saltAdded: of['salt-added'],
          usuallySalted: of['usually-salted'],
          sodiumFree: of['sodium-free'],
        }),
      ),
  }),
  calculation({
    name: 'gluten-free-claim',
    what: 'whether a US label may say gluten-free',
    inputs: {
      gluten: numberOrUnknown('ppm', 'measured gluten'),
      'gluten-grain': answer('wheat, rye, barley or a crossbreed of them'),
      'untreated-derivative': answer('an ingredient of such a grain with its gluten'),
      fermented: answer('fermented or hydrolyzed'),
      'gluten-free-before': byDefault(answer('whether it met the rule before that'), 'unknown'),
    },
    example: ['gluten=19.9ppm', 'gluten-grain=no', 'untreated-derivative=no', 'fermented=no'],
    holdsFor: US_LABELS,
    sources: ['21 CFR 101.91'],
    compute: (of) =>
      verdict(
        glutenFree({
          ppm: of.gluten,
          glutenGrain: of['gluten-grain'],
          untreatedDerivative: of['untreated-derivative'],
          fermented: of.fermented,
          glutenFreeBefore: of['gluten-free-before'],
        }),
      ),
  }),
  calculation({
    name: 'organic-claim',
    what: 'the wording for a share of organic ingredients',
    inputs: {
      organic: amount(['g'], 'organic ingredients'),
      all: amount(['g'], 'all ingredients'),
      'water-and-salt': byDefault(amount(['g'], 'water and salt among them'), { value: 0, unit: 'g' }, '0 g'),
    },
    example: ['organic=95g', 'all=100g'],
    holdsFor: 'US labels; organic is about farming and says nothing of nutrition',
    sources: ['7 CFR 205.301'],
    compute: (of) => {
      const grams = {
        organic: of.organic.value,
        all: of.all.value,
        waterAndSalt: of['water-and-salt'].value,
      };
      const share = organicShare(grams);
      if (!share.ok) return share;
      const named = organicWords(share.value.percent);
      if (!named.ok) return named;
      const shown = ofNumber('organic', share.value.percent, 'percent', share.value.working);
      return ok({ results: [shown, ofWord('wording', named.value.words)], checked: named.value.checked });
    },
  }),
  calculation({
    name: 'reference-amount',
    also: ['racc'],
    what: 'the reference amount of a kind of food, and whether it is small',
    inputs: { kind: choice(REFERENCE_KINDS, 'the kind of food, by its words in the table') },
    example: ['kind=pickles'],
    holdsFor: 'US labels',
    sources: ['21 CFR 101.12'],
    compute: ({ kind }) => {
      const row = referenceAmountOf(kind);
      if (!row.ok) return row;
      const { amount, unit, source, checked, note } = row.value;
      return ok({
        results: [
          ofNumber('reference amount', amount, unit),
          ofWord('small', isSmallReference(row.value) ? 'yes' : 'no'),
        ],
        sources: [source],
        checked,
        cautions: note === undefined ? [] : [note],
      });
    },
  }),
];
