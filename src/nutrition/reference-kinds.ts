import type { Food } from './food.js';
import { REFERENCE_AMOUNTS, type ReferenceAmount } from './reference-amounts.js';

type Told = Pick<Food, 'kind' | 'form' | 'state' | 'plate'>;

const words = (pattern: string) => new RegExp(`\\b(?:${pattern})\\b`);
const dry = ({ state }: Told) => state === 'dry';
const inLiquid = ({ state }: Told) => state === 'canned, with liquid';
const isBean = ({ plate }: Told) => plate.includes('protein') && plate.includes('grain or starch');

/**
 * Which kind of the rule's table a food is, by the plain name of its kind and its state; the first that fits. Only
 * foods whose kind the rule names in so many words are here: everything else is not known.
 */
const RULES: readonly { readonly is: string; readonly when: (food: Told) => boolean }[] = [
  { is: 'nut and seed butters', when: named('(?:peanut|almond|cashew|sunflower seed) butter|tahini') },
  {
    is: 'butter, margarine, oil and shortening',
    when: named('[a-z]+ oil|butter|margarine|shortening|ghee|lard'),
  },
  { is: 'soup', when: named('soup|[a-z]+ broth') },
  { is: 'cottage cheese', when: named('cottage cheese') },
  { is: 'ricotta cheese', when: named('ricotta cheese') },
  {
    is: 'cheese, all others',
    when: named('(?:cheddar|swiss|monterey|mozzarella|feta|american) cheese|queso fresco'),
  },
  { is: 'sour cream', when: named('sour cream') },
  { is: 'yogurt', when: named('yogurt') },
  {
    is: 'milk and drinks in its place',
    when: named('milk|buttermilk|goat milk|(?:soy|almond|rice|coconut) drink'),
  },
  { is: 'juice of fruit or vegetables', when: named('(?:[a-z]+ )?juice') },
  { is: 'carbonated and other sweet drinks', when: named('cola|ginger ale|lemon-lime soda|lemonade') },
  { is: 'mayonnaise and sandwich spreads', when: named('mayonnaise') },
  { is: 'ketchup and soy sauce', when: named('ketchup|soy sauce') },
  { is: 'mustard and hot sauce', when: named('mustard|hot sauce') },
  { is: 'honey, jam and jelly', when: named('honey|jam') },
  { is: 'sugar', when: named('sugar') },
  { is: 'dips', when: named('hummus') },
  { is: 'tomato sauce for pasta', when: named('pasta sauce') },
  { is: 'flour and cornmeal', when: named('[a-z -]*flour|cornmeal') },
  { is: 'pasta, dry', when: (food) => named('[a-z -]*pasta')(food) && dry(food) },
  { is: 'pasta, cooked', when: (food) => named('[a-z -]*pasta')(food) && food.state === 'cooked' },
  { is: 'hot cereal, plain, dry', when: (food) => named('oats|farina|grits')(food) && dry(food) },
  { is: 'rice, barley and other grains, dry', when: (food) => named(GRAIN)(food) && dry(food) },
  {
    is: 'rice, barley and other grains, cooked',
    when: (food) => named(GRAIN)(food) && food.state === 'cooked',
  },
  { is: 'tofu and tempeh', when: named('tofu|tempeh') },
  {
    is: 'beans in sauce, canned in liquid or refried',
    when: (food) => named('refried beans|baked beans')(food) || (isBean(food) && inLiquid(food)),
  },
  { is: 'beans, dry', when: (food) => isBean(food) && dry(food) },
  {
    is: 'beans, all others, prepared',
    when: (food) => isBean(food) && /^(?:cooked|canned, drained|frozen, cooked)/.test(food.state),
  },
  {
    is: 'nuts and seeds',
    when: named(
      'almonds|brazil nuts|cashews|hazelnuts|macadamia nuts|peanuts|pecans|pine nuts|pistachios|walnuts|(?:chia|hemp|pumpkin|sesame|sunflower) seeds|flaxseed',
    ),
  },
  { is: 'eggs', when: named('egg') },
  { is: 'avocado', when: named('avocado') },
  { is: 'olives', when: named('(?:green|ripe) olives') },
  { is: 'pickles', when: named('dill pickles') },
  { is: 'potatoes, mashed or with sauce', when: named('mashed potatoes') },
  {
    is: 'fruit, dried',
    when: (food) =>
      named('raisins|prunes|dates')(food) || (food.plate.includes('fruit') && words('dried').test(food.form)),
  },
  { is: 'watermelon', when: named('watermelon') },
  { is: 'fruit, fresh, canned or frozen', when: (food) => food.plate.includes('fruit') && !inLiquid(food) },
  { is: 'vegetables, canned in liquid', when: (food) => food.plate.includes('vegetable') && inLiquid(food) },
  {
    is: 'vegetables, fresh or frozen, without sauce',
    when: (food) => food.plate.includes('vegetable') && /^(?:raw|cooked|frozen)/.test(food.state),
  },
];

const GRAIN =
  '(?:brown|white|wild|sticky) rice|barley|quinoa|bulgur|couscous|millet|buckwheat|amaranth grain|sorghum|spelt|teff';

/**
 * What a US label counts as customarily eaten at one time of a food. `null` when the rule does not name its kind: then
 * it is not known, and never guessed. Source: 21 CFR 101.12(b), which food belongs where is our reading of it.
 */
export function referenceAmountFor(food: Told): ReferenceAmount | null {
  const kind = RULES.find((rule) => rule.when(food))?.is;
  return REFERENCE_AMOUNTS.find((one) => one.kind === kind) ?? null;
}

/** A food whose kind is one of these words, from its first letter to its last. */
function named(kinds: string): (food: Told) => boolean {
  const pattern = new RegExp(`^(?:${kinds})$`);
  return ({ kind }) => pattern.test(kind);
}
