import { expect, it } from 'vitest';
import { evaluate } from '../../nutrition/evaluate.js';
import { readSnippet } from '../desk.js';

const HANDS = `:::hands-up{id=room}
Do you rinse canned beans?
- always ; count = 12
- sometimes ; count = 25
- never ; count = 0
:::
`;

it('counts, adds up and gives shares as worked by hand', () => {
  const { computed, problems } = readSnippet(HANDS);
  const value = (id: string) => computed?.numbers.get(`room.${id}`)?.value;
  expect(problems).toEqual([]);
  // 12 + 25 + 0 = 37; 12 / 37 = 0.3243; 25 / 37 = 0.6757.
  expect([value('all'), value('always.count'), value('never.count')]).toEqual([37, 12, 0]);
  expect(value('always.percent')).toBeCloseTo(32.432, 3);
  expect(value('sometimes.percent')).toBeCloseTo(67.568, 3);
  expect(value('never.percent')).toBe(0);
  for (const number of computed?.numbers.all ?? []) expect(evaluate(number)).toBe(number.value);
});

it('names no food and no nutrient, and keeps no count of its own before somebody has counted', () => {
  const { computed } = readSnippet(HANDS.replace(/ ; count = \d+/g, ''));
  expect(computed?.numbers.all).toEqual([]);
  expect(computed?.entries[0]?.computed?.facts).toEqual({ foods: [], nutrients: [] });
});
