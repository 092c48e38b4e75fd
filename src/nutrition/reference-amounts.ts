import type { Published } from './published.js';
import { ok, type Result, refuse } from './result.js';

/** What somebody customarily eats at one time, as the rules on labels fix it for a kind of food. */
export interface ReferenceAmount extends Published {
  readonly kind: string;
  readonly amount: number;
  readonly unit: 'g' | 'mL' | 'tbsp' | 'tsp' | 'cup';
}

const RULE = '21 CFR 101.12(b)';

/**
 * Reference amounts of everyday kinds of food, for eaters of 4 years and over. All rows are from memory of the table
 * as amended in 2016 (81 FR 34000), and of 9 CFR for meat; they have to be read again in the rule before a label
 * leans on them. Nobody should eat so much because of it: they say what is usual, not what is good.
 */
export const REFERENCE_AMOUNTS: readonly ReferenceAmount[] = [
  row('bagels, muffins and toaster pastries', 110, 'g'),
  row('biscuits, croissants, tortillas and corn bread', 55, 'g'),
  row('English muffins, scones and soft pretzels', 55, 'g'),
  row('bread and rolls', 50, 'g'),
  row('brownies', 40, 'g'),
  row('cookies', 30, 'g'),
  row('crackers', 30, 'g'),
  row('hard taco shells', 30, 'g'),
  row('pancakes and French toast', 110, 'g'),
  row('waffles', 85, 'g'),
  row('pies and cobblers', 125, 'g'),
  row('carbonated and other sweet drinks', 360, 'mL'),
  row('water', 360, 'mL'),
  row('coffee and tea, sweetened or flavored', 360, 'mL', { note: 'as prepared' }),
  row('hot cereal, plain, dry', 40, 'g'),
  row('ready-to-eat cereal under 20 g a cup', 15, 'g'),
  row('ready-to-eat cereal from 20 to 43 g a cup', 40, 'g'),
  row('ready-to-eat cereal of 43 g or more a cup', 60, 'g'),
  row('flour and cornmeal', 30, 'g'),
  row('rice, barley and other grains, cooked', 140, 'g'),
  row('rice, barley and other grains, dry', 45, 'g'),
  row('pasta, cooked', 140, 'g'),
  row('pasta, dry', 55, 'g'),
  row('cottage cheese', 110, 'g'),
  row('ricotta cheese', 55, 'g'),
  row('hard cheese, grated', 5, 'g'),
  row('cheese, all others', 30, 'g'),
  row('milk and drinks in its place', 240, 'mL'),
  row('yogurt', 170, 'g'),
  row('sour cream', 30, 'g'),
  row('ice cream and frozen desserts', 2 / 3, 'cup'),
  row('eggs', 50, 'g'),
  row('butter, margarine, oil and shortening', 1, 'tbsp'),
  row('salad dressing', 30, 'g'),
  row('mayonnaise and sandwich spreads', 15, 'g'),
  row('fish and shellfish, plain, cooked', 85, 'g'),
  row('fish and shellfish, canned', 85, 'g'),
  row('fish and shellfish, smoked or pickled', 55, 'g'),
  row('meat and poultry, plain, cooked', 85, 'g', { source: '9 CFR 317.312 and 381.412' }),
  row('luncheon meat', 55, 'g', { source: '9 CFR 317.312 and 381.412' }),
  row('fruit, fresh, canned or frozen', 140, 'g'),
  row('fruit, dried', 40, 'g'),
  row('watermelon', 280, 'g'),
  row('avocado', 50, 'g'),
  row('juice of fruit or vegetables', 240, 'mL'),
  row('tofu and tempeh', 85, 'g'),
  row('beans in sauce, canned in liquid or refried', 130, 'g'),
  row('beans, all others, prepared', 90, 'g'),
  row('beans, dry', 35, 'g'),
  row('nuts and seeds', 30, 'g'),
  row('nut and seed butters', 2, 'tbsp'),
  row('French fries and hash browns', 70, 'g', { note: 'prepared' }),
  row('potatoes, mashed or with sauce', 140, 'g'),
  row('potatoes, plain, fresh or frozen', 110, 'g'),
  row('potatoes, plain, canned in liquid', 160, 'g'),
  row('potato and pasta salad', 140, 'g'),
  row('egg, fish, bean and vegetable salad', 100, 'g'),
  row('tomato sauce for pasta', 125, 'g'),
  row('dips', 2, 'tbsp'),
  row('ketchup and soy sauce', 1, 'tbsp'),
  row('mustard and hot sauce', 1, 'tsp'),
  row('chips, pretzels and popcorn', 30, 'g'),
  row('soup', 245, 'g'),
  row('honey, jam and jelly', 1, 'tbsp'),
  row('sugar', 8, 'g'),
  row('hard candy', 15, 'g'),
  row('candy, all others', 30, 'g'),
  row('vegetables, fresh or frozen, without sauce', 85, 'g'),
  row('vegetables, canned in liquid', 130, 'g'),
  row('pickles', 30, 'g'),
  row('olives', 15, 'g'),
];

/** The kinds of food, for lists and messages. */
export const REFERENCE_KINDS: readonly string[] = REFERENCE_AMOUNTS.map(({ kind }) => kind);

/** The reference amount of a kind of food, by its words in the table. Refuses other words, with kinds that share one. */
export function referenceAmountOf(kind: string): Result<ReferenceAmount> {
  const wanted = kind.trim().toLowerCase();
  const found = REFERENCE_AMOUNTS.find((one) => one.kind.toLowerCase() === wanted);
  if (found !== undefined) return ok(found);
  const words = wanted.match(/[a-z]{3,}/g) ?? [];
  return refuse(
    `There is no reference amount for "${kind}".`,
    'Take one of the kinds in the table, or read the amount in 21 CFR 101.12.',
    REFERENCE_KINDS.filter((one) => words.some((word) => one.toLowerCase().includes(word))).slice(0, 5),
  );
}

/**
 * Whether a reference amount is small: 30 g or less, or 2 tablespoons or less. Then "low" must hold per 50 g too.
 * A volume is small up to 30 mL, which is 2 tablespoons on a label. Source: 21 CFR 101.60 to 101.62.
 */
export function isSmallReference({ amount, unit }: Pick<ReferenceAmount, 'amount' | 'unit'>): boolean {
  switch (unit) {
    case 'g':
    case 'mL':
      return amount <= 30;
    case 'tbsp':
      return amount <= 2;
    case 'tsp':
      return amount <= 6;
    case 'cup':
      return amount <= 1 / 8;
  }
}

function row(
  kind: string,
  amount: number,
  unit: ReferenceAmount['unit'],
  also: { readonly source?: string; readonly note?: string } = {},
): ReferenceAmount {
  return { kind, amount, unit, source: RULE, checked: 'memory', ...also };
}
