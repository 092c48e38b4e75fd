import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  CUP_IN_PIECES,
  DISH_LOSSES,
  DISH_PARTS,
  type DishFood,
  type DishKindName,
  dishChanges,
  dishNutrient,
  gramsOf,
  type NutrientName,
  parseAmount,
  partsOf,
  partsWorking,
  volumeAsServed,
  volumeOf,
} from '../../src/nutrition/index.js';
import { evaluate } from './evaluate.js';
import { refusalOf, valueIn } from './expect-result.js';
import { food, PINTO } from './foods.js';

const amountOf = (text: string) => valueIn(parseAmount(text)).amount;
const portionOf = (text: string, of: ReturnType<typeof food>) => {
  const amount = amountOf(text);
  if (amount === null) throw new Error('no amount');
  return valueIn(gramsOf(amount, of));
};
const salmon = food({
  name: 'salmon, baked',
  plate: ['protein'],
  contains: { fish: 'yes' },
  // USDA SR28, 15237.
  per100g: { protein: 22.1, 'vitamin B12': 2.8, 'vitamin D': 13.1, iron: 0.34 },
});
const lentils = food({
  name: 'lentils, cooked',
  plate: ['protein', 'grain or starch'],
  // USDA SR28, 16070; the release has no vitamin B12 and no vitamin D in them.
  per100g: { protein: 9.02, 'vitamin B12': 0, 'vitamin D': 0, iron: 3.33 },
  measures: [{ name: 'cup', grams: 198, source: 'usda-sr28' }],
});

const dishOf = (of: ReturnType<typeof food>, text: string, kind: DishKindName | null): DishFood => {
  const portion = portionOf(text, of);
  const volume = kind === null ? null : valueIn(volumeAsServed(amountOf(text), portion, of));
  return { food: of, portion, fills: kind === null || volume === null ? null : { kind, volume } };
};

describe('volume as served', () => {
  it('is that of the amount, or through the cup of the food', () => {
    const volume = valueIn(volumeAsServed(amountOf('3/4 cup'), portionOf('3/4 cup', lentils), lentils));
    expect(volume).toEqual(valueIn(volumeOf(amountOf('3/4 cup'), portionOf('3/4 cup', lentils), lentils)));
  });

  // USDA SR28, 05064: chicken breast, roasted, 1 cup chopped or diced is 140 g.
  it('of fish without a cup goes through the cup of chopped chicken, and is an estimate', () => {
    const volume = valueIn(volumeAsServed(amountOf('140 g'), portionOf('140 g', salmon), salmon));
    expect(volume.milliliters).toBeCloseTo(236.5882365, 6);
    expect(volume.estimated).toBe(true);
    expect(evaluate(volume.working)).toBeCloseTo(volume.milliliters, 9);
    expect(CUP_IN_PIECES.grams).toBe(140);
  });

  it('is not known of other foods without a cup, and of fish that is no food of its own', () => {
    const bread = food({ name: 'bread', plate: ['grain or starch'] });
    const broth = food({ name: 'fish sauce', plate: ['seasoning'], contains: { fish: 'yes' } });
    for (const one of [bread, broth])
      expect(refusalOf(volumeAsServed(amountOf('60 g'), portionOf('60 g', one), one)).reason).toContain(
        'not known',
      );
  });
});

describe('parts of a dish', () => {
  it('leave out what stands beside it', () => {
    const shares = valueIn(partsOf([dishOf(lentils, '1 cup', 'protein'), dishOf(salmon, '10 g', null)]));
    expect(shares.rows).toEqual([DISH_PARTS]);
  });

  it('have a working that gives them', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 12 }),
        fc.integer({ min: 1, max: 900 }),
        fc.integer({ min: 1, max: 900 }),
        (parts, volume, rest) =>
          Math.abs(evaluate(partsWorking(parts, volume, volume + rest)) - parts) < 1e-9,
      ),
    );
  });
});

describe('what one person gets', () => {
  const dish = [dishOf(salmon, '200 g', 'protein'), dishOf(lentils, '1 cup', 'grain or starch')];

  it('is the sum of all foods, shared', () => {
    const whole = 2 * 22.1 + 1.98 * 9.02;
    expect(dishNutrient(dish, 'protein', 1).quantity.value).toBeCloseTo(whole, 9);
    const each = dishNutrient(dish, 'protein', 4);
    expect(each.quantity.value).toBeCloseTo(whole / 4, 9);
    expect(evaluate(each.working)).toBeCloseTo(whole / 4, 9);
  });

  it('is not known where no food is known, and the whole for servings that are none', () => {
    expect(dishNutrient(dish, 'zinc', 1).quantity.value).toBeNull();
    expect(dishNutrient(dish, 'protein', 0)).toEqual(dishNutrient(dish, 'protein', 1));
  });
});

describe('what a changed dish loses', () => {
  const change = (nutrient: NutrientName) =>
    dishChanges([dishOf(salmon, '85 g', 'protein')], [dishOf(lentils, '3/4 cup', 'protein')], 1).find(
      (one) => one.nutrient === nutrient,
    );

  it('is what gave a tenth of the Daily Value and gives less than half of that', () => {
    // 85 g of salmon: 2.38 µg of vitamin B12, of 2.4 µg; 11.1 µg of vitamin D, of 20 µg; 18.8 g of protein, of 50 g.
    expect(change('vitamin B12')).toMatchObject({ lost: true });
    expect(change('vitamin D')?.moved).toBeCloseTo((0.85 * 13.1) / 20, 9);
    // Lentils have 13.4 g of protein, more than half.
    expect(change('protein')).toMatchObject({ lost: false });
    // 0.29 mg of iron are 2 percent of 18 mg: nothing to lose.
    expect(change('iron')).toMatchObject({ lost: false });
  });

  it('cannot be told where a value is not known, and then nothing moved', () => {
    expect(change('zinc')).toMatchObject({ lost: null, moved: 0 });
    const known = dishChanges(
      [dishOf(PINTO.boiled, '1 cup', 'protein')],
      [dishOf(lentils, '1 cup', 'protein')],
      1,
    );
    expect(known.find(({ nutrient }) => nutrient === 'fiber')).toMatchObject({ lost: null, moved: 0 });
  });

  it('is told of every nutrient of the list, once', () => {
    expect(dishChanges([], [], 1).map(({ nutrient }) => nutrient)).toEqual([...DISH_LOSSES]);
    expect(new Set(DISH_LOSSES).size).toBe(DISH_LOSSES.length);
  });
});
