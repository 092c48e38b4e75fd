import type { Report } from '../../diagnostics/index.js';
import { type Food, priceOn } from '../../nutrition/index.js';
import type { LocalPrice, LocalPrices } from '../../records/index.js';
import { readProblem } from '../problems.js';
import type { PriceState } from './schema.js';

/** The price of each food, all from one shop where one has them all. */
export interface Offer {
  readonly price?: LocalPrice;
  readonly state: PriceState;
}

/**
 * For each food the newest price that is not dated ahead: of the shop that is named, else of the first place of the
 * site that has a fresh one of every food, else of the first that has a fresh one of this food, else an old one.
 */
export function offersFor(
  foods: readonly Food[],
  prices: LocalPrices,
  shop: string | undefined,
  on: string,
  report: Report,
): readonly Offer[] {
  const known = foods.map((food) =>
    prices
      .of(food)
      .filter((price) => price.shelf.dated <= on && (shop === undefined || price.shop.id === shop)),
  );
  const isFresh = (price: LocalPrice) => priceOn(price.shelf, on, price.keepDays).ok;
  const at = (list: readonly LocalPrice[], id: string) => list.find((p) => p.shop.id === id && isFresh(p));
  const one = prices.shops.find(({ id }) => known.every((list) => at(list, id) !== undefined));
  return known.map((list): Offer => {
    const order = one ? [one] : prices.shops;
    const fresh = order.flatMap(({ id }) => at(list, id) ?? [])[0];
    if (fresh) return { price: fresh, state: 'fresh' };
    const [old] = list;
    if (!old) return { state: 'none' };
    const refused = priceOn(old.shelf, on, old.keepDays);
    if (!refused.ok)
      report.add(
        readProblem(
          'N13',
          {
            reason: `${refused.reason} It was read at ${old.shop.name} on ${old.shelf.dated}.`,
            hint: "Ask for this week's price and write it into prices.csv. Until then pages show no cents.",
          },
          old.place,
        ),
      );
    return { price: old, state: 'old' };
  });
}
