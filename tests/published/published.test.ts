import { describe, expect, it } from 'vitest';
import { ACTIVITY } from './activity.js';
import { ENERGY } from './energy.js';
import { FOOD } from './food.js';
import { FOOD_ENERGY } from './food-energy.js';
import { INTAKES } from './intakes.js';
import { LABELS } from './labels.js';
import { PAGES } from './pages.js';
import { hold } from './published-case.js';
import { READING } from './reading.js';
import { WEIGHT } from './weight.js';

const CASES = [
  ...ENERGY,
  ...WEIGHT,
  ...LABELS,
  ...FOOD_ENERGY,
  ...FOOD,
  ...INTAKES,
  ...ACTIVITY,
  ...READING,
  ...PAGES,
];

/** How many cases each area has; single values of a printed table (T) come on top. */
const AREAS: Readonly<Record<string, number>> = { A: 20, B: 19, C: 19, D: 6, E: 13, F: 8, G: 5, H: 15, I: 7 };

describe('published values', () => {
  it.each(CASES)('$id $what [$status; $source]', ({ find, expected, tolerance }) => {
    hold(find(), expected, tolerance);
  });

  it('stand once each, and none was left out', () => {
    const ids = CASES.map(({ id }) => id);
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
    expect(ids.filter((id) => !/^[A-I]-(?:[A-Z]+\d*-)?T?\d+$/.test(id))).toEqual([]);
    const counts: Record<string, number> = {};
    for (const id of ids.filter((one) => !/T\d+$/.test(one))) {
      const area = id.charAt(0);
      counts[area] = (counts[area] ?? 0) + 1;
    }
    expect(counts).toEqual(AREAS);
  });

  it('name what they are, their source and how it is known', () => {
    for (const { id, what, source } of CASES) {
      expect(
        [id, what, source].every((words) => words.length > 3),
        id,
      ).toBe(true);
    }
  });
});

describe('a case has been seen to fail', () => {
  it.each([
    ['just beyond its tolerance', 1.02, 1, 0.01],
    ['exact, and a little off', 1.001, 1, undefined],
    ['not known, where a number is due', null, 0, 0.5],
    ['with a part missing', { low: 1 }, { low: 1, high: 2 }, 0.1],
    ['with a part too many', [1, 2], [1], 0.1],
    ['off in a part that has no tolerance', { kcal: 1, days: 2 }, { kcal: 1.1, days: 3 }, { kcal: 0.2 }],
    ['with another word', { words: 'high' }, { words: 'low' }, 0.1],
  ])('%s', (_, found, expected, tolerance) => {
    expect(() => hold(found, expected, tolerance)).toThrow();
  });
});
