import type { Place } from '../../diagnostics/index.js';
import type { KnownDirective } from '../../lesson/index.js';
import type { Food, Plated, Portion } from '../../nutrition/index.js';
import type { LocalPrice, LocalPrices } from '../../records/index.js';

export const schema: KnownDirective = {
  name: 'cup-cost',
  forms: ['leaf'],
  id: 'required',
  attributes: {
    foods: {
      kind: { is: 'list' },
      required: true,
      help: 'foods as they are bought or eaten, parted by semicolons: pinto beans, dry; pinto beans, canned',
    },
    prices: {
      kind: { is: 'choice', of: ['local'] },
      help: 'local: the prices of the site (the same when left out)',
    },
    shop: {
      kind: { is: 'text' },
      help: 'id of one shop of the site; when left out, the first that has a fresh price of every food',
    },
    sort: {
      kind: { is: 'choice', of: ['cost', 'written'] },
      help: 'cost: cheapest first (the same when left out); written: in the order of the foods',
    },
    handout: {
      kind: { is: 'choice', of: ['ladder', 'line'] },
      help: 'line: on handouts one sentence in place of the ladder, where room is short',
    },
  },
};

/** What is known of a price on the day of the build. */
export type PriceState = 'fresh' | 'old' | 'none';

/** The price that stands for a food. */
export type CupPrice = LocalPrice;

/** One food from the shop to the cup. */
export interface CupRow {
  /** The food in the author's words; the row's name in ids. */
  readonly words: string;
  readonly bought: Food;
  readonly plated: Plated;
  readonly cup: Portion;
  /** The price that stands for the food; it prints only when it is fresh. */
  readonly price?: CupPrice;
  readonly state: PriceState;
  readonly place: Place;
}

export interface Values {
  readonly id: string;
  readonly rows: readonly CupRow[];
  readonly sort: 'cost' | 'written';
  readonly handout: 'ladder' | 'line';
  readonly currency: LocalPrices['currency'];
  /** The day of the build: a sale that ended before it is none. */
  readonly on: string;
  readonly place: Place;
}

export const FEWEST_FOODS = 2;
export const MOST_FOODS = 4;
