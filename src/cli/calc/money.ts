import {
  asGiven,
  type Cost,
  CURRENCIES,
  type Currency,
  costOf,
  cupsFor,
  FROM_LESSON,
  input,
  type Money,
  matchMoney,
  money,
  ok,
  type PlateYield,
  readMatch,
  readMoney,
  toCents,
  writeMoney,
} from '../../nutrition/index.js';
import { foodAmount, weigh } from './amounts.js';
import { choice, listOf } from './choices.js';
import { calculation, type Field } from './contract.js';
import { byDefault, number, optional, words } from './fields.js';
import { KITCHEN } from './units.js';
import { ofNumber, ofReckoned } from './values.js';

const CURRENCY = byDefault(choice(Object.keys(CURRENCIES) as Currency[], 'the currency'), 'USD');

/** A sum as a shelf tag writes it; the currency is told apart from it. */
function sum(help: string): Field<Money> {
  return { help: `${help}, such as 4.66`, units: [], read: (text) => readMoney(text, 'USD') };
}

const MATCH: Field<{ readonly gives: number; readonly forEach: number }> = {
  help: 'given to own, such as 1 to 1',
  units: [],
  read: readMatch,
};

function inCurrency({ cents }: Money, currency: Currency): Money {
  return money(cents, currency);
}

/** The exact cents, and the sum as it would be paid. */
function costLine(cost: Cost) {
  const paid = writeMoney(money(toCents(cost.value), cost.currency));
  return { ...ofReckoned('cost', cost), says: `${paid} ${cost.currency}` };
}

export const MONEY = [
  calculation({
    name: 'cost-of-a-cup',
    also: ['edible-cost', 'cost'],
    what: 'what an edible amount costs',
    inputs: {
      price: sum('price of the package'),
      size: foodAmount('what the package holds, such as 2 lb'),
      eaten: foodAmount('the amount as eaten, such as 1 cup'),
      yields: byDefault(
        listOf(number('', 'weight after ÷ weight before: peeled, drained, cooked')),
        [],
        'none: eaten as bought',
      ),
      food: optional(words('the food as bought, for amounts that are no weights'), 'weights only'),
      'food-eaten': optional(
        words('the food as eaten, when it is another one, such as the cooked one'),
        'the same',
      ),
      kitchen: KITCHEN,
      currency: CURRENCY,
    },
    example: ['price=4.66', 'size=1 lb', 'eaten=0.342 lb', 'yields=0.92'],
    holdsFor: 'one price of one day; shelf and sale prices are never compared',
    sources: [],
    compute: ({ price, size, eaten, yields, food, kitchen, currency, ...other }, shelf) => {
      const bought = weigh(size, food, shelf, kitchen);
      if (!bought.ok) return bought;
      const portion = weigh(eaten, other['food-eaten'] ?? food, shelf, kitchen);
      if (!portion.ok) return portion;
      const cost = costOf({
        price: {
          food: food ?? 'the food',
          money: inCurrency(price, currency),
          size,
          kind: 'shelf',
          shop: 'given',
          dated: 'day not given',
        },
        bought: bought.value,
        eaten: portion.value,
        yields: yields.map((factor): PlateYield => ({ factor, source: FROM_LESSON, what: 'yield' })),
      });
      return cost.ok ? ok({ results: [costLine(cost.value)] }) : cost;
    },
  }),
  calculation({
    name: 'matched-tokens',
    also: ['tokens', 'match'],
    what: 'what own and matched money make, and how many cups they buy',
    inputs: {
      own: sum('own money'),
      match: byDefault(MATCH, { gives: 1, forEach: 1 }, '1 to 1'),
      cap: optional(sum('the most that is matched'), 'no cap'),
      token: byDefault(sum('tokens come in'), money(1, 'USD'), '0.01'),
      'cost-of-a-cup': optional(sum('what a cup costs'), 'cups are not counted'),
      currency: CURRENCY,
    },
    example: ['own=10.00', 'match=1 to 1', 'cap=8.00', 'token=1.00'],
    holdsFor: 'a rule that a market gives; what is given is rounded down to whole tokens',
    sources: [],
    compute: ({ own, match, cap, token, currency, 'cost-of-a-cup': cost }) => {
      const rule = {
        ...match,
        cap: cap === undefined ? null : inCurrency(cap, currency),
        token: token.cents,
      };
      const made = matchMoney(inCurrency(own, currency), rule);
      if (!made.ok) return made;
      const { matched, total, working, capped } = made.value;
      const results = [
        {
          ...ofNumber('matched', matched.cents, 'cents'),
          says: capped ? 'the cap kept part back' : 'in whole tokens',
        },
        { ...ofNumber('together', total.cents, 'cents', working), says: `${writeMoney(total)} ${currency}` },
      ];
      if (cost === undefined) return ok({ results });
      const each = {
        value: cost.cents,
        unit: 'cents' as const,
        working: asGiven(input('cost', cost.cents, 'cents', FROM_LESSON)),
      };
      const cups = cupsFor(total, each);
      if (!cups.ok) return cups;
      return ok({
        results: [
          ...results,
          ofReckoned('cups', cups.value),
          ofNumber('whole cups', cups.value.whole, 'cups'),
        ],
      });
    },
  }),
];
