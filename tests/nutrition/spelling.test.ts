import { expect, it } from 'vitest';
import { nearWords, slipsBetween } from '../../src/nutrition/spelling.js';

it.each([
  // Counted by hand.
  ['cup', 'cup', 0],
  ['cupp', 'cup', 1],
  ['cp', 'cup', 1],
  ['cop', 'cup', 1],
  ['tbps', 'tbsp', 1],
  ['tabelspoon', 'tablespoon', 1],
  ['kitten', 'sitting', 3],
  ['', 'cup', 3],
  ['cup', '', 3],
])('%s and %s', (one, other, slips) => {
  expect(slipsBetween(one, other)).toBe(slips);
  expect(slipsBetween(other, one)).toBe(slips);
});

it('lists the nearest first, then by the alphabet, and no more than asked', () => {
  expect(nearWords('CUPS', ['cups', 'cup', 'cap', 'tbsp'])).toEqual(['cups', 'cup']);
  expect(nearWords('bat', ['rat', 'cat', 'hat', 'bat'], 2)).toEqual(['bat', 'cat']);
  expect(nearWords('tabelspons', ['tablespoons', 'teaspoons'])).toEqual(['tablespoons']);
  expect(nearWords('rice', ['cup'])).toEqual([]);
});
