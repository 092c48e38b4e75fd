import { daysBetween, PRICE_SHELF_LIFE } from './days.js';
import type { Currency } from './money.js';
import type { Portion } from './portion.js';
import type { Price, PriceKind } from './price.js';
import type { Reckoned } from './reckoned.js';
import { ok, type Result, refuse } from './result.js';
import type { CookingYield } from './retention.js';
import { input, substitute, type Working } from './working.js';

/** A share of what was bought that is left, or a gain, on the way to the plate: peeled, drained, cooked. */
export interface PlateYield extends CookingYield {
  /** What it is for, such as `stones and stems` or `boiling`. */
  readonly what: string;
  /** How the factor was got, where it was worked out. */
  readonly working?: Working;
}

/** What has to be known of a weight to price it. */
export type Weighed = Pick<Portion, 'grams' | 'working' | 'estimated'>;

/** What to work a cost out from. */
export interface CostQuestion {
  readonly price: Price;
  /** What the package weighs as sold. */
  readonly bought: Weighed;
  /** The amount as eaten, such as one cup. */
  readonly eaten: Weighed;
  /** All losses and gains between the two; none when the package is eaten as it is. */
  readonly yields: readonly PlateYield[];
}

/** What an eaten amount costs, in cents, unrounded. */
export interface Cost extends Reckoned<'cents'> {
  readonly value: number;
  readonly currency: Currency;
  /** Shelf and sale prices are never compared with one another. */
  readonly kind: PriceKind;
  readonly food: string;
  readonly shop: string;
  readonly dated: string;
  readonly estimated: boolean;
}

/**
 * The cost of an edible amount: `price / bought * eaten / yield`. Published checks, from the fruit and vegetable
 * prices of USDA's Economic Research Service (`usda-ers-prices-2022`): fresh cherries 4.66 dollars a pound × 0.342
 * pound a cup ÷ 0.92 = 1.73; canned 5.24 × 0.441 ÷ 0.65 = 3.56. Refuses weights and yields that are not above zero.
 */
export function costOf({ price, bought, eaten, yields }: CostQuestion): Result<Cost> {
  if (!(bought.grams.value > 0 && eaten.grams.value > 0)) {
    return refuse(
      `The package and the portion of ${price.food} have to weigh something.`,
      'Write both amounts.',
    );
  }
  const wrong = yields.find(({ factor }) => !(factor > 0) || !Number.isFinite(factor));
  if (wrong !== undefined) {
    return refuse(
      `A yield of ${wrong.factor} for ${wrong.what} is not above zero.`,
      'Write weight after ÷ weight before.',
    );
  }
  const { names, inputs, left, through } = yieldsOf(yields);
  const outer: Working = {
    formula: ['price / bought * eaten', ...names].join(' / '),
    inputs: [
      input('price', price.money.cents, 'cents', `${price.shop}, ${price.dated}`, `${price.kind} price`),
      input('bought', null, '', ''),
      input('eaten', null, '', ''),
      ...inputs,
    ],
  };
  return ok({
    value: ((price.money.cents / bought.grams.value) * eaten.grams.value) / left,
    unit: 'cents',
    working: substitute(substitute(through(outer), 'bought', bought.working), 'eaten', eaten.working),
    currency: price.money.currency,
    kind: price.kind,
    food: price.food,
    shop: price.shop,
    dated: price.dated,
    estimated: bought.estimated || eaten.estimated,
  });
}

/**
 * How many of the eaten amounts one package gives: `bought * yield / eaten`, the divisor that a worksheet asks for.
 * Refused as `costOf` refuses.
 */
export function portionsIn({
  bought,
  eaten,
  yields,
}: Omit<CostQuestion, 'price'>): Result<Reckoned<'cup'> & { readonly value: number }> {
  if (!(bought.grams.value > 0 && eaten.grams.value > 0))
    return refuse('The package and the portion have to weigh something.', 'Write both amounts.');
  const { names, inputs, left, through } = yieldsOf(yields);
  const outer: Working = {
    formula: [['bought', ...names].join(' * '), 'eaten'].join(' / '),
    inputs: [input('bought', null, '', ''), ...inputs, input('eaten', null, '', '')],
  };
  return ok({
    value: (bought.grams.value * left) / eaten.grams.value,
    unit: 'cup',
    working: substitute(substitute(through(outer), 'bought', bought.working), 'eaten', eaten.working),
  });
}

/** The yields as inputs of a formula, their product, and how each was worked out put in its place. */
function yieldsOf(yields: readonly PlateYield[]) {
  const inputs = yields.map(({ factor, what, source }, i) =>
    input(`yield_${i + 1}`, factor, 'g as eaten per g as bought', source, what),
  );
  return {
    names: inputs.map(({ name }) => name),
    inputs,
    left: inputs.reduce((so, { value }) => so * value, 1),
    through: (outer: Working): Working =>
      yields.reduce(
        (so, { working }, i) => (working === undefined ? so : substitute(so, `yield_${i + 1}`, working)),
        outer,
      ),
  };
}

/** Costs in order, shelf prices apart from sale prices. */
export interface CostLadder {
  readonly shelf: readonly Cost[];
  readonly sale: readonly Cost[];
}

/**
 * Puts costs in order, cheapest first; equal ones keep their order. Refused: two currencies, and prices whose days
 * lie further apart than a price keeps, because prices of different years say nothing about each other.
 */
export function costLadder(costs: readonly Cost[], shelfLife = PRICE_SHELF_LIFE): Result<CostLadder> {
  const [first] = costs;
  if (first === undefined)
    return refuse('There are no prices to put in order.', 'Name foods that have a price.');
  if (costs.some(({ currency }) => currency !== first.currency)) {
    return refuse('The prices are in two currencies.', 'Take prices of one place.');
  }
  const days = costs.map(({ dated }) => dated).sort();
  const apart = daysBetween(String(days[0]), String(days.at(-1)));
  if (!apart.ok) return apart;
  if (apart.value > shelfLife) {
    return refuse(
      `The prices are up to ${apart.value} days apart, so they cannot stand beside each other.`,
      'Take prices read in the same weeks.',
    );
  }
  const sorted = [...costs].sort((a, b) => a.value - b.value);
  return ok({
    shelf: sorted.filter(({ kind }) => kind === 'shelf'),
    sale: sorted.filter(({ kind }) => kind === 'sale'),
  });
}
