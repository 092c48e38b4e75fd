import { type Cost, combine, costOf, gramsOf, platedAs } from '../../nutrition/index.js';
import type { ComputedNumber, PriceNeed } from '../contract.js';
import type { PricePair, SwapPrice, SwapRow, SwapSide, Values } from './schema.js';

/** Ids of what both foods cost, and where and when their prices were read. */
export interface Costs {
  readonly before: string;
  readonly after: string;
  readonly shop: string;
  /** The older of the two days. */
  readonly day: string;
}

/** What the amounts of both foods cost, of foods that are sold as they are eaten; nothing where it cannot be told. */
export function costsOf(
  at: string,
  { old, fresh, prices }: SwapRow,
  currency: Values['currency'],
  numbers: ComputedNumber[],
): Costs | undefined {
  if (!prices) return undefined;
  const [before, after] = [costIn(old, prices.old), costIn(fresh, prices.fresh)];
  if (!before || !after) return undefined;
  const unit = `${currency} cents`;
  const number = (name: string, cost: Cost, { food, portion }: SwapSide): ComputedNumber => ({
    id: `${at}.cost-${name}`,
    value: cost.value,
    unit,
    ...cost.working,
    sources: [food.record.source],
    what: `cost of ${portion.words} of ${food.name}, shelf price`,
    food: { id: food.id, ...food.record },
  });
  numbers.push(number('before', before, old), number('after', after, fresh), {
    id: `${at}.cost-change`,
    value: after.value - before.value,
    unit,
    ...combine('after - before', [
      { name: 'after', item: after.working },
      { name: 'before', item: before.working },
    ]),
    sources: [...new Set([old, fresh].map(({ food }) => food.record.source))],
    what: `change of cost from ${old.food.name} to ${fresh.food.name}`,
  });
  return {
    before: `${at}.cost-before`,
    after: `${at}.cost-after`,
    shop: prices.old.shop.name,
    day: [prices.old.shelf.dated, prices.fresh.shelf.dated].sort()[0] ?? '',
  };
}

function costIn({ food, portion }: SwapSide, { shelf }: SwapPrice): Cost | undefined {
  const bought = gramsOf(shelf.size, food);
  const plated = platedAs(food, food, shelf.size.unit !== null);
  if (!bought.ok || !plated.ok) return undefined;
  const cost = costOf({ price: shelf, bought: bought.value, eaten: portion, yields: plated.value.yields });
  return cost.ok ? cost.value : undefined;
}

/** The prices that a printed cost stands on, for the form on which they are written down. */
export function needsOf({ old, fresh }: PricePair): PriceNeed[] {
  return [old, fresh].map(({ food, packageWords, shelf }) => ({
    food,
    packageWords,
    last: shelf.dated,
    fresh: true,
  }));
}
