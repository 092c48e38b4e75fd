import {
  asGiven,
  FROM_LESSON,
  input,
  KITCHENS,
  type Kitchen,
  kitchenOf,
  ok,
  pourable,
  sizeOf,
  tryConvert,
  unitRatio,
  writeCount,
} from '../../nutrition/index.js';
import { choice } from './choices.js';
import { calculation } from './contract.js';
import { amount, byDefault, words } from './fields.js';
import { ofNumber, ofWord } from './values.js';

export const UNITS = [
  'g',
  'mg',
  'µg',
  'kg',
  'oz',
  'lb',
  'mL',
  'L',
  'cup',
  'tbsp',
  'tsp',
  'fl oz',
  'kcal',
  'kJ',
] as const;
const VOLUMES = ['mL', 'L', 'cup', 'tbsp', 'tsp', 'fl oz'] as const;

/** Whose cup and spoons. */
export const KITCHEN = byDefault(
  choice(Object.keys(KITCHENS) as Kitchen[], 'whose cup, spoons and ounces'),
  'us exact',
);

export const MEASURES = [
  calculation({
    name: 'convert',
    what: 'an amount in another unit of the same kind, by kitchen',
    inputs: {
      amount: amount(UNITS, 'the amount', { signed: true }),
      to: choice(UNITS, 'the unit wanted'),
      kitchen: KITCHEN,
    },
    example: ['amount=1 cup', 'to=mL'],
    holdsFor: 'units of one kind: weights, volumes or energy; a weight is no volume without a food',
    sources: [],
    compute: ({ amount, to, kitchen }) => {
      const found = tryConvert(amount, to, kitchen);
      if (!found.ok) return found;
      const ratio = unitRatio(amount.unit, to, kitchen);
      return ok({
        results: [
          ofNumber('amount', found.value.value, to, {
            formula: 'amount * ratio',
            inputs: [
              input('amount', amount.value, amount.unit, FROM_LESSON),
              input('ratio', ratio, `${to} per ${amount.unit}`, KITCHENS[kitchen].source),
            ],
          }),
        ],
      });
    },
  }),
  calculation({
    name: 'kitchen',
    also: ['cup-size'],
    what: 'the cup and spoons of a region',
    inputs: { region: words('two letters, such as US, GB or AU') },
    example: ['region=AU'],
    holdsFor: 'common practice of the region; US labels count with 240 mL',
    sources: ['common practice, no source'],
    compute: ({ region }) => {
      const found = kitchenOf(region);
      if (!found.ok) return found;
      const size = (unit: 'cup' | 'tbsp' | 'tsp') => ofNumber(unit, sizeOf(unit, found.value), 'mL');
      return ok({
        results: [ofWord('kitchen', found.value), size('cup'), size('tbsp'), size('tsp')],
        sources: [KITCHENS[found.value].source],
      });
    },
  }),
  calculation({
    name: 'pourable',
    what: 'the nearest amount that people can measure with cups and spoons',
    inputs: { volume: amount(VOLUMES, 'the volume'), kitchen: KITCHEN },
    example: ['volume=80mL'],
    holdsFor: 'cups by quarters and thirds, tablespoons by halves, teaspoons by eighths and quarters',
    sources: ['house rule'],
    compute: ({ volume, kitchen }) => {
      const milliliters = volume.value * unitRatio(volume.unit, 'mL', kitchen);
      const found = pourable(milliliters, kitchen);
      if (!found.ok) return found;
      const { count, unit } = found.value;
      return ok({
        results: [
          ofWord('pour', `${writeCount(count)} ${unit}`),
          ofNumber('that is', found.value.milliliters, 'mL'),
          ofNumber('asked', milliliters, 'mL', asGiven(input('volume', milliliters, 'mL', FROM_LESSON))),
        ],
      });
    },
  }),
];
