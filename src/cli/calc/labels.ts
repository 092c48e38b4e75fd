import {
  DAILY_VALUE_GROUPS,
  DAILY_VALUES,
  type DailyValueName,
  type Declared,
  declaredCholesterol,
  declaredFat,
  declaredGrams,
  declaredPercent,
  declaredSodium,
  lowOrHigh,
  ok,
  percentOfDailyValue,
  permittedCalories,
  saltFromSodium,
  sodiumFromSalt,
  tryConvert,
} from '../../nutrition/index.js';
import { choice } from './choices.js';
import { calculation } from './contract.js';
import { amount, byDefault, measured } from './fields.js';
import { ofNumber, ofWord, ofWorked, quantityOf } from './values.js';

/** The nutrients that have a Daily Value. */
export const VALUED = choice(Object.keys(DAILY_VALUES) as DailyValueName[], 'the nutrient');
export const MASS = ['g', 'mg', 'µg'] as const;

/** How each line of a label is rounded: its unit and the rule. */
const ROUNDED = {
  calories: { unit: 'kcal', declare: (kcal) => permittedCalories(kcal).join(' or ') },
  fat: { unit: 'g', declare: declaredFat },
  'saturated fat': { unit: 'g', declare: declaredFat },
  'trans fat': { unit: 'g', declare: declaredFat },
  cholesterol: { unit: 'mg', declare: declaredCholesterol },
  sodium: { unit: 'mg', declare: declaredSodium },
  carbohydrate: { unit: 'g', declare: declaredGrams },
  fiber: { unit: 'g', declare: declaredGrams },
  sugars: { unit: 'g', declare: declaredGrams },
  'added sugars': { unit: 'g', declare: declaredGrams },
  protein: { unit: 'g', declare: declaredGrams },
} as const satisfies Readonly<
  Record<string, { unit: 'kcal' | 'g' | 'mg'; declare: (value: number) => number | string | Declared }>
>;

function declaredWords(value: number | string | Declared, unit: string): string {
  if (typeof value !== 'object') return `${value} ${unit}`;
  return value.lessThan ? `less than ${value.value} ${unit}` : `${value.value} ${unit}`;
}

export const LABELS = [
  calculation({
    name: 'daily-value-percent',
    also: ['percent-daily-value', 'dv'],
    what: 'an amount as percent of the Daily Value of a US label, by group',
    inputs: {
      nutrient: VALUED,
      amount: measured(MASS, 'the amount, counted as the row counts it (RAE, DFE, NE)'),
      group: byDefault(choice(DAILY_VALUE_GROUPS, 'whose Daily Values'), DAILY_VALUE_GROUPS[0]),
    },
    example: ['nutrient=sodium', 'amount=160mg'],
    holdsFor: "comparing foods; a Daily Value is nobody's own target",
    sources: ['fda-daily-values'],
    compute: ({ nutrient, amount, group }) => {
      const share = percentOfDailyValue(nutrient, quantityOf(amount), undefined, group);
      if (!share.ok) return share;
      const { percent, of, row, working } = share.value;
      return ok({
        results: [
          ofNumber('percent of the Daily Value', percent, 'percent', working),
          {
            ...ofNumber('Daily Value', of.value, of.unit),
            says: [row.kind, row.counts, `value from: ${row.checked}`].filter((part) => part).join('; '),
          },
          ...(percent === null
            ? []
            : [
                ofNumber('a label declares', declaredPercent(nutrient, percent), 'percent'),
                ofWord('that is', lowOrHigh(percent)),
              ]),
        ],
        cautions: row.note === undefined ? [] : [row.note],
      });
    },
  }),
  calculation({
    name: 'label-rounding',
    what: 'an amount as a US label declares it',
    inputs: {
      nutrient: choice(Object.keys(ROUNDED) as (keyof typeof ROUNDED)[], 'the line of the label'),
      amount: amount(['kcal', 'g', 'mg'], 'the unrounded amount in a serving'),
    },
    example: ['nutrient=cholesterol', 'amount=3mg'],
    holdsFor: 'US labels; the rule does not settle ties, and here they go up',
    sources: ['21 CFR 101.9(c)(1) to (c)(7)'],
    compute: ({ nutrient, amount }) => {
      const { unit, declare } = ROUNDED[nutrient];
      const exact = tryConvert(amount, unit);
      return exact.ok
        ? ok({ results: [ofWord('a label declares', declaredWords(declare(exact.value.value), unit))] })
        : exact;
    },
  }),
  calculation({
    name: 'salt-from-sodium',
    also: ['salt'],
    what: 'sodium as salt, as labels of the EU count it',
    inputs: { sodium: measured(['mg', 'g'], 'sodium') },
    example: ['sodium=400mg'],
    holdsFor: 'labels of the EU: all sodium counts, whether it comes from salt or not',
    sources: ['Regulation (EU) 1169/2011, Annex I'],
    compute: ({ sodium }) => ok({ results: [ofWorked('salt', saltFromSodium(quantityOf(sodium)))] }),
  }),
  calculation({
    name: 'sodium-from-salt',
    also: ['sodium'],
    what: 'salt as sodium, by the same factor',
    inputs: { salt: measured(['g', 'mg'], 'salt') },
    example: ['salt=1g'],
    holdsFor: 'labels of the EU',
    sources: ['Regulation (EU) 1169/2011, Annex I'],
    compute: ({ salt }) => ok({ results: [ofWorked('sodium', sodiumFromSalt(quantityOf(salt)))] }),
  }),
];
