import type { RoomGroup } from '../../cautions/index.js';
import type { Place } from '../../diagnostics/index.js';
import type { KnownDirective } from '../../lesson/index.js';
import { type Food, NEED_NAMES, type NeedName, type NutrientName } from '../../nutrition/index.js';
import type { LocalPrice, LocalPrices } from '../../records/index.js';
import type { FoodRow } from '../food-row.js';

export const schema: KnownDirective = {
  name: 'swap-board',
  forms: ['container'],
  id: 'required',
  attributes: {
    need: {
      kind: { is: 'list', of: NEED_NAMES, commas: true },
      help: 'what every new food has to fit, such as vegan,nut-free; without it only what changes is shown',
    },
    basis: {
      kind: { is: 'text' },
      help: 'the amount of foods that are written without one, such as 1 cup',
    },
  },
  body: ['rows'],
};

/** What a board tells of a swap, in this order; iodine is told in words, because no table holds it. */
export const SWAP_NUTRIENTS = [
  'protein',
  'calcium',
  'iron',
  'zinc',
  'vitamin B12',
  'vitamin D',
  'fiber',
  'sodium',
  'saturated fat',
  'added sugars',
] as const satisfies readonly NutrientName[];
export type SwapNutrient = (typeof SWAP_NUTRIENTS)[number];

/** One side of a swap: a food with its amount. */
export type SwapSide = FoodRow;
/** The price that stands for a food. */
export type SwapPrice = LocalPrice;

/** Fresh shelf prices of both foods in one shop. */
export interface PricePair {
  readonly old: LocalPrice;
  readonly fresh: LocalPrice;
}

export interface SwapRow {
  readonly old: FoodRow;
  readonly fresh: FoodRow;
  /** The work that the food does, as written, part by part. */
  readonly job: readonly string[];
  /** The parts of the job that are nutrients: the new food has to bring them. */
  readonly brings: readonly SwapNutrient[];
  /** The dish, season or rule of faith that the swap is for. */
  readonly use?: string;
  /** A food for the worksheet that does not fit. */
  readonly trap?: Food;
  readonly prices?: PricePair;
  readonly place: Place;
}

export interface Values {
  readonly id: string;
  readonly needs: readonly NeedName[];
  readonly rows: readonly SwapRow[];
  /** Foods that may be offered where one is refused, and that may be traps. */
  readonly offers: readonly Food[];
  /** Who in the audience has to be kept from some foods. */
  readonly rooms: ReadonlySet<RoomGroup>;
  readonly currency: LocalPrices['currency'];
  readonly place: Place;
}

/** More rows than that do not fit on a sheet. */
export const MOST_ROWS = 4;
