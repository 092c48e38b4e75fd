import type { ComputedNumber } from '../contract.js';

/** Bricks are worth a round sum of coins, and a rung has at most so many. House rules. */
const WORTHS = [5, 10, 25, 50, 100, 200, 500, 1000] as const;
const MOST_BRICKS = 6;
const USUAL = 25;
/** Round amounts along the foot: at every brick while there are two, else at every second or third. */
const MOST_MARKS = 3;

/** What one brick stands for; a quarter while nothing has a price. */
export function brickWorth(costs: readonly number[]): number {
  if (costs.length === 0) return USUAL;
  const highest = Math.max(...costs);
  return (
    WORTHS.find((worth) => highest / worth <= MOST_BRICKS) ?? Math.ceil(highest / MOST_BRICKS / 1000) * 1000
  );
}

export function brickNumber(id: string, worth: number, currency: string): ComputedNumber {
  const note = `the smallest of ${WORTHS.join(', ')} cents with at most ${MOST_BRICKS} bricks a rung`;
  return {
    id: `${id}.brick`,
    value: worth,
    unit: `${currency} cents`,
    formula: 'brick',
    inputs: [{ name: 'brick', value: worth, unit: 'cents', source: 'house', note }],
    sources: [],
    what: 'cost that one brick stands for',
  };
}

/** The amounts at which the foot of the ladder is marked, from zero. */
export function markNumbers(
  id: string,
  worth: number,
  highest: number,
  currency: string,
): { readonly at: number; readonly number: ComputedNumber }[] {
  const bricks = Math.max(1, Math.ceil(highest / worth - 1e-9));
  const step = bricks <= 2 ? 1 : Math.ceil(bricks / MOST_MARKS);
  const counts = Array.from({ length: Math.floor(bricks / step) + 1 }, (_, i) => i * step);
  return counts.map((count) => ({
    at: count * worth,
    number: {
      id: `${id}.mark-${count}`,
      value: count * worth,
      unit: `${currency} cents`,
      formula: 'count * brick',
      inputs: [
        { name: 'count', value: count, unit: 'bricks', source: 'house' },
        { name: 'brick', value: worth, unit: 'cents', source: 'house' },
      ],
      sources: [],
      what: 'a round amount at the foot of the ladder',
    },
  }));
}

/** Sums that come out even, for the worked line. One more than a figure has foods, so that one is no answer. */
const EXAMPLES = [
  { cents: 240, cups: 8 },
  { cents: 360, cups: 8 },
  { cents: 330, cups: 6 },
  { cents: 520, cups: 8 },
  { cents: 480, cups: 6 },
] as const;

/** The worked line of a worksheet, about no food and no shop, with a cost that is none of the answers. */
export function exampleNumbers(id: string, currency: string, costs: readonly number[]): ComputedNumber[] {
  const unit = `${currency} cents`;
  const told = (cents: number, cups: number) => costs.some((cost) => Math.abs(cost - cents / cups) < 1);
  const example = EXAMPLES.find(({ cents, cups }) => !told(cents, cups)) ?? EXAMPLES[0];
  const price = { name: 'price', value: example.cents, unit: 'cents', source: 'house', note: 'an example' };
  const cups = { name: 'cups', value: example.cups, unit: 'cup', source: 'house', note: 'an example' };
  const number = (
    name: string,
    value: number,
    of: string,
    formula: string,
    inputs: ComputedNumber['inputs'],
  ) => ({
    id: `${id}.example-${name}`,
    value,
    unit: of,
    formula,
    inputs,
    sources: [],
    what: `${name} of the worked example`,
  });
  return [
    number('price', price.value, unit, 'price', [price]),
    number('cups', cups.value, 'cup', 'cups', [cups]),
    number('cost', price.value / cups.value, unit, 'price / cups', [price, cups]),
  ];
}
