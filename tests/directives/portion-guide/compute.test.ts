import { describe, expect, it } from 'vitest';
import { createReport } from '../../../src/diagnostics/index.js';
import { evaluate } from '../../nutrition/evaluate.js';
import { computeParts, viewOf } from '../desk.js';
import { part } from '../parts.js';
import { figuresOf } from '../strings.js';

function guide(foods: string, more: Readonly<Record<string, string>> = {}) {
  const report = createReport();
  const written = part('portion-guide', { id: 'x', foods, ...more });
  const computed = computeParts([written], report);
  return { computed, written, numbers: computed.numbers, codes: report.problems.map(({ code }) => code) };
}

describe('grams', () => {
  // USDA SR28 household weights: 20037 brown rice 202 g a cup; 04582 canola oil 14 g a tablespoon and 218 g a cup;
  // 16098 peanut butter 258 g a cup. A cup of the tables is 236.588 mL (NIST Handbook 44, Appendix C).
  it.each([
    ['brown rice, cooked', 'brown-rice-cooked', (202 * 120) / 236.5882365],
    ['canola oil', 'canola-oil', (218 * 15) / 236.5882365],
    ['peanut butter', 'peanut-butter', (258 * 30) / 236.5882365],
  ])('%s', (food, key, grams) => {
    const { numbers, codes } = guide(food);
    expect(codes).toEqual([]);
    const number = numbers.get(`x.${key}.grams`);
    expect(number?.value).toBeCloseTo(grams, 6);
    expect(number && evaluate(number)).toBeCloseTo(grams, 6);
  });

  it('grow with the cup', () => {
    const at = (cup: string) =>
      guide('brown rice, cooked', { 'locale-cup': cup }).numbers.get('x.brown-rice-cooked.grams')?.value ?? 0;
    expect(at('200 mL')).toBeLessThan(at('240 mL'));
    expect(at('240 mL')).toBeLessThan(at('250 mL'));
  });
});

it('a line for the share that is poured, and only weights are kept from a blank', () => {
  const { computed, written } = guide('brown rice, cooked; peanut butter');
  const view = viewOf(computed, written, 'worksheet', 'fuller');
  const [figure] = view ? figuresOf(view) : [];
  if (figure?.kind !== 'measure-row') throw new Error('no measures');
  expect(figure.vessels.map((v) => [v.shape, v.milliliters, ...v.pours.map((p) => p.share)])).toEqual([
    ['cup', 240, 0.5],
    ['spoon', 15, 1],
  ]);
  expect(figure.vessels.flatMap((v) => v.pours.flatMap((p) => p.under))).toEqual([]);
});
