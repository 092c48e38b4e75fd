import { nearest } from '../../diagnostics/index.js';
import type { Attribute, DirectivePart } from '../../lesson/index.js';
import {
  type Food,
  gramsOf,
  type Plated,
  platedAs,
  type Result,
  usuallyEaten,
} from '../../nutrition/index.js';
import { type Foods, isFood } from '../../records/index.js';
import type { ReadContext } from '../contract.js';
import { foodProblem, quoted, readProblem } from '../problems.js';
import { written } from '../written.js';
import { offersFor } from './prices.js';
import { type CupRow, FEWEST_FOODS, MOST_FOODS, type Values } from './schema.js';

const CUP = { count: 1, unit: 'cup', measure: 'cup', size: null } as const;

/** A food on its way from the shop to the plate, before it has a price. */
type Unpriced = Omit<CupRow, 'price' | 'state'>;

/** Reads the foods and finds their prices. What cannot be read is reported at its place, and then nothing is shown. */
export function read(part: DirectivePart, context: ReadContext): Values | undefined {
  const { prices, report, on } = context;
  const list = written(part, 'foods');
  if (!part.id || !list) return undefined;
  const shop = readShop(part, context);
  const rows = readRows(list, context);
  if (!rows || shop === null) return undefined;
  const foods = rows.map(({ bought }) => bought);
  const offers = offersFor(foods, prices, shop, on, report);
  return {
    id: part.id,
    rows: rows.map((row, index): CupRow => ({ ...row, ...(offers[index] ?? { state: 'none' }) })),
    sort: part.attributes.get('sort')?.value === 'written' ? 'written' : 'cost',
    handout: part.attributes.get('handout')?.value === 'line' ? 'line' : 'ladder',
    currency: prices.currency,
    on,
    place: part.place,
  };
}

/** The shop that is named; `null` after a problem. */
function readShop(part: DirectivePart, { prices, report }: ReadContext): string | undefined | null {
  const fault = (
    reason: string,
    hint: string,
    place: Attribute['place'],
    near: readonly string[] = [],
  ): null => {
    report.add(readProblem('directives/prices', { reason, hint, near }, place));
    return null;
  };
  if (prices.site === '')
    return fault(
      'The lesson has no site, so no shop and no price.',
      'Name one with site: in the front matter or in platework.yaml.',
      part.place,
    );
  const shop = written(part, 'shop');
  if (!shop || prices.shops.some(({ id }) => id === shop.value.trim())) return shop?.value.trim();
  const ids = prices.shops.map(({ id }) => id);
  const near = nearest(shop.value, ids);
  return fault(
    `The site ${prices.site} has no shop ${quoted(shop.value)}.`,
    near.length > 0 ? `Did you mean ${near.join(' or ')}?` : 'Write the id of a place as site.yaml has it.',
    shop.place,
    near.length > 0 ? near : ids,
  );
}

function readRows(list: Attribute, context: ReadContext): readonly Unpriced[] | undefined {
  const { report } = context;
  const names = list.value
    .split(';')
    .map((name) => name.trim().replace(/\s+/g, ' '))
    .filter(Boolean);
  if (names.length < FEWEST_FOODS || names.length > MOST_FOODS) {
    report.add(
      readProblem(
        'directives/rows',
        {
          reason: `cup-cost takes ${FEWEST_FOODS} to ${MOST_FOODS} foods, and this one has ${names.length}.`,
          hint: 'Part foods with semicolons, since their names hold commas.',
        },
        list.place,
      ),
    );
    return undefined;
  }
  const rows = names.flatMap((name) => readFood(name, list, context) ?? []);
  if (rows.length < names.length) return undefined;
  const twice = rows.find((row, i) =>
    rows.slice(0, i).some((r) => r.plated.eaten.id === row.plated.eaten.id),
  );
  if (!twice) return rows;
  report.add(
    readProblem(
      'directives/same-row',
      {
        reason: `${quoted(twice.words)} comes to the plate as a food before it.`,
        hint: 'Take one of the two out.',
      },
      list.place,
    ),
  );
  return undefined;
}

function readFood(words: string, { place }: Attribute, context: ReadContext): Unpriced | undefined {
  const { report, foods, prices } = context;
  const named = findBought(words, foods);
  if (!isFood(named)) {
    report.add(foodProblem(words, named, place));
    return undefined;
  }
  const way = wayTo(named, foods, (food) => prices.of(food).length > 0);
  const cup = way.plated.ok ? gramsOf(CUP, way.plated.value.eaten) : way.plated;
  if (!way.plated.ok || !cup.ok) {
    const refused = way.plated.ok ? cup : way.plated;
    if (!refused.ok) report.add(readProblem('directives/amount', refused, place));
    return undefined;
  }
  return { words, bought: way.bought, plated: way.plated.value, cup: cup.value, place };
}

/** A food by its name; `pinto beans, canned` is the can as it stands in the shop. */
function findBought(words: string, foods: Foods): ReturnType<Foods['find']> {
  const found = foods.find(words);
  if (isFood(found)) return found;
  const kind = /^(.*?),? canned$/i.exec(words)?.[1];
  const can =
    kind === undefined ? undefined : foods.forms(kind).find(({ state }) => state === 'canned, with liquid');
  return can ?? found;
}

interface Way {
  readonly bought: Food;
  readonly plated: Result<Plated>;
}

/**
 * From the shop to the food that is named. A food as it is bought comes to the plate in its usual way; for one that
 * is named as it is eaten, the first form of its kind that becomes it is bought, best one that has a price.
 */
function wayTo(named: Food, foods: Foods, priced: (food: Food) => boolean): Way {
  const forms = foods.forms(named.kind);
  const usual = usuallyEaten(named, forms);
  const direct: Way = { bought: named, plated: platedAs(named, usual) };
  if (priced(named) || usual.id !== named.id) return direct;
  const ways = forms
    .filter(({ id }) => id !== named.id)
    .map((bought): Way => ({ bought, plated: platedAs(bought, named) }))
    .filter(({ plated }) => plated.ok);
  const cooked = named.state === 'cooked' || named.state.startsWith('canned, drained');
  return ways.find(({ bought }) => priced(bought)) ?? (cooked ? ways[0] : undefined) ?? direct;
}
