import {
  type BasketRow,
  fillBasket,
  money,
  ok,
  type Result,
  readMoney,
  refuse,
  unitRatio,
} from '../../nutrition/index.js';
import { listOf } from './choices.js';
import { calculation, type Field } from './contract.js';
import { amount, number } from './fields.js';
import { ofNumber, ofReckoned } from './values.js';

const WEIGHT = amount(['g', 'kg', 'oz', 'lb'], 'a weight');
const FORM =
  'Write needed / package / price, as rice: 900 g / 1 kg / 2.40, and what is at home after it, as / 100 g.';

/** A line of the list: `rice: 900 g / 1 kg / 2.40`, with what is at home after it if there is any. */
const ROW: Field<BasketRow> = {
  help: 'food: needed / package / price / at home, as rice: 900 g / 1 kg / 2.40 / 100 g; the last may be left out',
  units: [],
  read: (text): Result<BasketRow> => {
    const [food = '', rest = ''] = text.split(/:(.*)/s);
    const [needs, size, price, home = '0 g', ...more] = rest.split('/').map((part) => part.trim());
    if (food.trim() === '' || needs === undefined || !size || !price || more.length > 0)
      return refuse(`"${text}" is no line of a list.`, FORM);
    const weights = [needs, size, home].map(grams);
    const wrong = weights.find((one) => !one.ok);
    if (wrong !== undefined && !wrong.ok) return wrong;
    const [need, packageGrams, onHand] = weights.map((one) => (one.ok ? one.value : Number.NaN));
    const sum = /^unknown$/i.test(price) ? ok(null) : readMoney(price, 'USD');
    if (!sum.ok) return sum;
    return ok({
      food: food.trim(),
      needs: Number(need),
      packageGrams: Number(packageGrams),
      onHand: Number(onHand),
      price: sum.value,
      eligible: null,
    });
  },
};

function grams(text: string): Result<number> {
  const read = WEIGHT.read(text);
  return read.ok ? ok(read.value.value * unitRatio(read.value.unit, 'g')) : read;
}

const BUDGET: Field<number> = {
  help: 'the sum that there is, such as 20.00',
  units: [],
  read: (text) => {
    const read = readMoney(text, 'USD');
    return read.ok ? ok(read.value.cents) : read;
  },
};

export const BASKETS = [
  calculation({
    name: 'basket',
    also: ['whole-packages'],
    what: 'a list in whole packages: what it costs, what carries over, a person and day',
    inputs: {
      list: listOf(ROW),
      budget: BUDGET,
      people: number('', 'people, whole'),
      days: number('days', 'days, whole'),
    },
    example: [
      'list=rice: 900 g / 1 kg / 2.40; beans: 1 kg / 450 g / 1.50',
      'budget=10.00',
      'people=2',
      'days=7',
    ],
    holdsFor: 'one currency and one shop; prices of one day',
    sources: [],
    compute: ({ list, budget, people, days }) => {
      const filled = fillBasket(list, { budget: money(budget, 'USD'), people, days });
      if (!filled.ok) return filled;
      const { lines, total, atLeast, left, over, perPersonDay } = filled.value;
      return ok({
        results: [
          ...lines.map(({ food, packages, carriesOver }) => ({
            ...ofNumber(food, packages, 'packages'),
            says: `${Number(carriesOver.toPrecision(6))} g carry over`,
          })),
          {
            ...ofNumber('total', total.cents, 'cents'),
            atLeast,
            ...(over ? { says: 'over the budget' } : {}),
          },
          ofNumber('left', left === null ? null : left.cents, 'cents'),
          ofReckoned('a person and day', perPersonDay),
        ],
      });
    },
  }),
];
