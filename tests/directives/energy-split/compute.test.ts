import { describe, expect, it } from 'vitest';
import { createReport } from '../../../src/diagnostics/index.js';
import type { Computed } from '../../../src/directives/contract.js';
import { computeParts } from '../desk.js';
import { part } from '../parts.js';

function split(rows: readonly string[], attributes: Readonly<Record<string, string>> = {}) {
  const report = createReport();
  const computed = computeParts([part('energy-split', { id: 'x', of: 'meal', ...attributes }, rows)], report);
  const result: Computed | undefined = computed.entries[0]?.computed;
  const value = (name: string) => computed.numbers.get(`x.${name}`)?.value;
  return { report, result, value, settings: result?.facts.settings ?? {} };
}

describe('energy', () => {
  // Records of SR28 that hold nothing but what 4-4-9 counts; their own energy stands beside ours.
  it.each([
    ['100 g whole milk', 61],
    ['100 g butter, salted', 717],
    ['100 g oats, cooked', 71],
  ])('of %s is close to the %d kcal of its record', (row, kcal) => {
    expect(Math.abs(Number(split([`snack: ${row}`]).value('energy')) / kcal - 1)).toBeLessThan(0.04);
  });

  it('shares add up to the whole', () => {
    const { value } = split(['lunch: 1 cup brown rice, cooked ; 3 oz salmon, baked ; alcohol = 7 g']);
    const sum = ['carbohydrate', 'protein', 'fat', 'alcohol'].map((one) => Number(value(`${one}.share`)));
    expect(sum.reduce((a, b) => a + b, 0)).toBeCloseTo(100, 9);
  });

  it('of one drink of 14 g of alcohol is 98 kcal', () => {
    // 14 g is the US standard drink; 7 kcal a gram (USDA Agriculture Handbook 74).
    expect(split(['snack: 12 fl oz beer ; alcohol = 14 g']).value('alcohol.energy')).toBe(98);
  });

  it('a ratio of 1.3 is no treatment: such eating takes 80 to 90 percent from fat', () => {
    // A ratio of 4 gives 90 percent, of 3 gives 87.1, of 2 gives 81.8 (published tables of ketogenic ratios, from memory).
    const { value } = split(['lunch: 40 g olive oil ; 100 g whole milk']);
    expect(value('ratio')).toBeCloseTo((40 + 3.25) / (4.8 + 3.15), 9);
    expect(Number(value('fat.share'))).toBeGreaterThan(90);
  });
});

describe('what cautions and refusals look at', () => {
  it('tells low shares, many grams of protein, and alcohol', () => {
    const { settings } = split(['lunch: 3 oz salmon, baked ; 5 fl oz red wine ; alcohol = 15 g']);
    expect(settings.carbohydrate).toEqual(['below 45 percent', 'below 26 percent', 'a meal below 15 g']);
    expect(settings.protein).toEqual(['above 20 percent']);
    expect(settings.alcohol).toEqual(['yes']);
  });

  it('is silent about a usual meal', () => {
    const { settings } = split(['lunch: 2 cups brown rice, cooked ; 1 tbsp olive oil']);
    expect(Object.values(settings).flat()).toEqual([]);
  });

  it('is silenced by nothing that is not known', () => {
    const { settings } = split(['lunch: 2 cups brown rice, cooked ; 5 fl oz red wine']);
    expect(settings.carbohydrate).toContain('below 26 percent');
    expect(settings.alcohol).toEqual(['yes']);
  });

  it('names the diet by what it holds', () => {
    const { settings } = split(['lunch: 3 tbsp olive oil ; 1 oz walnuts']);
    expect(settings.diet).toEqual(['ketogenic', 'very-low-carbohydrate']);
  });

  it('names protein as the subject only where it stands alone', () => {
    const rows = ['lunch: 1 cup brown rice, cooked'];
    expect(split(rows).settings.subject).toEqual([]);
    expect(split(rows, { show: 'protein' }).settings.subject).toEqual(['protein']);
  });
});

describe('what is refused', () => {
  const milk = (grams: number) => [`day: ${grams} g whole milk`];
  const codes = (rows: readonly string[], attributes: Readonly<Record<string, string>>) =>
    split(rows, { of: 'day', ...attributes }).report.problems.map(({ code, message }) => [
      code,
      /\((R\d+)/.exec(message)?.[1],
    ]);

  // 100 g of whole milk are 61.05 kcal.
  it.each([
    [1960, {}, [['cautions/withheld', 'R11']]],
    [1970, {}, []],
    [1960, { as: 'what is missing' }, []],
    [1300, { as: 'plan' }, [['cautions/refused', 'R12']]],
    [1320, { as: 'plan' }, [['cautions/withheld', 'R11']]],
    [2400, { person: 'man' }, [['directives/low-day', undefined]]],
    [2460, { person: 'man' }, []],
  ] as const)('%d g of milk in a day, %j', (grams, attributes, expected) => {
    expect(codes(milk(grams), attributes)).toEqual(expected);
  });

  it('a plan with next to no carbohydrate, and not an example of one', () => {
    const rows = ['day: 200 g olive oil ; 100 g whole milk'];
    expect(codes(rows, { as: 'plan' })).toEqual([['cautions/refused', 'R27']]);
    expect(codes(rows, {})).toEqual([]);
  });
});
