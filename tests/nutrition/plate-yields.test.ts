import { describe, expect, it } from 'vitest';
import { createReport } from '../../src/diagnostics/index.js';
import {
  costOf,
  edibleShare,
  type Food,
  gramsOf,
  parseAmount,
  platedAs,
  portionsIn,
  usuallyEaten,
} from '../../src/nutrition/index.js';
import { isFood, loadFoods } from '../../src/records/index.js';
import { ASSETS } from '../records/tables.js';
import { evaluate } from './evaluate.js';
import { food as makeFood } from './foods.js';

const foods = loadFoods(ASSETS, createReport());
function food(name: string): Food {
  const found = foods.find(name);
  if (!isFood(found)) throw new Error(`There is no ${name}.`);
  return found;
}
const plated = (name: string) => {
  const bought = food(name);
  return platedAs(bought, usuallyEaten(bought, foods.forms(bought.kind)));
};
const factor = (name: string) => {
  const found = plated(name);
  return found.ok ? found.value.yields.reduce((so, one) => so * one.factor, 1) : found.reason;
};

describe('from what is bought to what is eaten', () => {
  it.each([
    ['pinto beans, dry', 'pinto beans, dried, cooked at home'],
    ['pinto beans, canned, with the liquid', 'pinto beans, canned, drained'],
    ['green peas, canned, no salt added, with the liquid', 'green peas, canned, no salt added, drained'],
    ['brown rice, dry', 'brown rice, cooked'],
    ['white rice, dry', 'white rice, cooked'],
    ['carrots, raw', 'carrots, raw'],
    ['low-fat milk', 'low-fat milk'],
  ])('%s is eaten as %s', (name, eaten) => {
    expect(usuallyEaten(food(name), foods.forms(food(name).kind)).name).toBe(eaten);
  });

  // Common practice, no source: dry beans about 2.4 to 2.5 times their weight cooked, rice and quinoa about 3.
  it.each([
    ['pinto beans, dry', 2.3, 2.5],
    ['chickpeas, dry', 2.2, 2.5],
    ['brown rice, dry', 2.7, 3.1],
    ['white rice, dry', 2.7, 3.1],
    ['quinoa, dry', 2.7, 3.2],
    ['pasta, dry', 2.2, 2.5],
  ])('%s grows %s to %s times', (name, least, most) => {
    expect(factor(name)).toBeGreaterThan(least);
    expect(factor(name)).toBeLessThan(most);
  });

  it('works the water out from both records: USDA SR28, 16042 and 16043', () => {
    // Read by eye from ABBREV.txt: pinto beans, raw 11.33 g of water; boiled without salt 62.95 g.
    expect(factor('pinto beans, dry')).toBeCloseTo((100 - 11.33) / (100 - 62.95), 9);
  });

  it('takes the drained can and the cooked package from the household weights of USDA SR28', () => {
    expect(factor('pinto beans, canned, with the liquid')).toBeCloseTo(277 / 442, 9);
    // 11313: "1 package (10 oz) yields" 253 g.
    expect(factor('green peas, frozen, boiled, no salt')).toBeCloseTo(253 / (10 * 28.349523125), 9);
  });

  it('throws away what the record throws away: USDA SR28, FOOD_DES, read by eye', () => {
    expect(edibleShare(food('banana'))[0]?.factor).toBeCloseTo(0.64, 9);
    expect(edibleShare(food('apple'))[0]).toMatchObject({ factor: 0.9, what: 'Core and stem' });
    expect(edibleShare(food('cherries, raw'))[0]?.factor).toBeCloseTo(0.92, 9);
    expect(edibleShare(food('low-fat milk'))).toEqual([]);
    // An egg of the tables weighs 50 g without its shell.
    const egg = food('egg, raw');
    expect(platedAs(egg, egg, false)).toMatchObject({ ok: true, value: { yields: [] } });
  });

  it('gives the published cost of a cup of fresh cherries with the record’s own refuse', () => {
    // USDA Economic Research Service, 2022: 4.66 dollars a pound, 0.342 pound a cup, yield 0.92: 1.73 dollars.
    const cherries = food('cherries, raw');
    const found = platedAs(cherries, cherries);
    const amount = (words: string) => {
      const read = parseAmount(words);
      const weighed = read.ok && read.value.amount ? gramsOf(read.value.amount, cherries) : undefined;
      if (!weighed?.ok) throw new Error(words);
      return weighed.value;
    };
    if (!found.ok) throw new Error(found.reason);
    const size = { count: 1, unit: 'lb', measure: 'lb', size: null } as const;
    const money = { cents: 466, currency: 'USD' } as const;
    const price = {
      food: 'cherries',
      money,
      size,
      kind: 'shelf',
      shop: 'a shop',
      dated: '2022-12-31',
    } as const;
    const cost = costOf({
      price,
      bought: amount('1 lb'),
      eaten: amount('0.342 lb'),
      yields: found.value.yields,
    });
    expect(cost.ok && cost.value.value).toBeCloseTo(173, 0);
    if (cost.ok)
      expect(evaluate({ ...cost.value.working, value: cost.value.value } as never)).toBeCloseTo(
        cost.value.value,
        9,
      );
  });

  it.each(['black beans, canned, with the liquid', 'cornmeal, whole-grain'])('refuses %s', (name) => {
    expect(plated(name)).toMatchObject({ ok: false });
  });

  it('refuses animal foods bought raw, which lose fat, and two different foods', () => {
    expect(platedAs(food('egg, raw'), food('egg, hard-boiled'))).toMatchObject({ ok: false });
    expect(platedAs(food('pinto beans, dry'), food('brown rice, cooked'))).toMatchObject({ ok: false });
  });
});

describe('what no record tells', () => {
  const made = (name: string, more: Parameters<typeof makeFood>[0] = {}) =>
    makeFood({ name, kind: 'greens', ...more });
  const reasonOf = (bought: Food, eaten: Food) => {
    const found = platedAs(bought, eaten);
    return found.ok ? undefined : found.reason;
  };

  it('is refused: water, drained weight and the yield of a package', () => {
    const raw = made('greens, raw', { state: 'raw' });
    const boiled = made('greens, boiled', { state: 'cooked', per100g: { water: 90 } });
    expect(reasonOf(raw, boiled)).toBe('The water of greens, raw is not known.');
    const wet = made('greens, wet', { state: 'raw', per100g: { water: 92 } });
    expect(reasonOf(wet, made('greens, boiled', { state: 'cooked' }))).toBe(
      'The water of greens, boiled is not known.',
    );
    const can = made('greens, canned', { state: 'canned, with liquid' });
    expect(reasonOf(can, made('greens, drained', { state: 'canned, drained' }))).toBeDefined();
    const frozen = made('greens, frozen', {
      state: 'frozen, cooked',
      measures: [{ name: 'cup', grams: 170, source: 'usda-sr28' }],
    });
    expect(reasonOf(frozen, frozen)).toBeDefined();
  });
});

describe('how many cups a package gives', () => {
  const grams = (value: number) => {
    const read = gramsOf({ count: value, unit: 'g', measure: 'g', size: null }, makeFood());
    if (!read.ok) throw new Error(read.reason);
    return read.value;
  };

  it('is bought × yield ÷ eaten', () => {
    // By hand: a pound of dry beans, 2.4 times as heavy cooked, in cups of 171 g.
    const yields = [{ factor: 2.4, source: 'house', what: 'cooking' }];
    const found = portionsIn({ bought: grams(453.592), eaten: grams(171), yields });
    expect(found.ok && found.value.value).toBeCloseTo((453.592 * 2.4) / 171, 9);
    if (found.ok) expect(evaluate(found.value.working)).toBeCloseTo(found.value.value, 9);
  });

  it('is refused for a portion that weighs nothing', () => {
    const none = { ...grams(1), grams: { value: 0, unit: 'g' } as const };
    expect(portionsIn({ bought: grams(400), eaten: none, yields: [] }).ok).toBe(false);
    expect(portionsIn({ bought: none, eaten: grams(100), yields: [] }).ok).toBe(false);
  });
});
