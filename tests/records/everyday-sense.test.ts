import { describe, expect, it } from 'vitest';
import { parts, plainRows } from './tables.js';

// Everyday foods against what holds for food in general. A slip in a number, a description or a measure shows
// here even where the release has the same slip. Nothing here uses the program's reader or its arithmetic.

type Row = Record<string, string>;
const foods = plainRows('foods/everyday.tsv');
const release = new Map(plainRows('foods/release.tsv').map((row) => [row.number ?? '', row]));
/** A value per 100 g; `NaN` where the release has none, so that whatever is held of it fails. */
const value = (food: Row, heading: string) => {
  const cell = release.get(food.number ?? '')?.[heading] ?? '';
  return cell === '' ? Number.NaN : Number(cell);
};
/** A value per 100 g; zero where the release has none. */
const orNone = (food: Row, heading: string) => value(food, heading) || 0;
const sum = (food: Row, ...headings: string[]) =>
  headings.reduce((so, heading) => so + value(food, heading), 0);
/** Grams of one of a measure, `NaN` where the food has none of that name. */
function grams(food: Row, name: string): number {
  const found = parts(food.measures === 'none' ? '' : food.measures)
    .map((part) => /^(.+) ([\d.]+) \[.+\]$/.exec(part))
    .find((part) => part?.[1] === name);
  return found === undefined ? Number.NaN : Number(found?.[2]);
}
/** Foods for which something is not so, but for those with a reason; and no reason that is not needed. */
function expectOf(holds: (food: Row) => boolean, but: Readonly<Record<string, string>> = {}) {
  const wrong = foods.filter((food) => !holds(food)).map((food) => food.name);
  expect(wrong.filter((name) => !Object.hasOwn(but, name ?? ''))).toEqual([]);
  expect(Object.keys(but).filter((name) => !wrong.includes(name))).toEqual([]);
}

describe('100 g of a food', () => {
  it('has the energy of its protein, fat and carbohydrate, by factors of 4, 9 and 4', () => {
    // The release uses factors of each food, down to what fiber does not give; general factors differ by a tenth or so.
    expectOf(
      (food) => {
        const most = 4 * sum(food, 'protein (g)', 'carbohydrate (g)') + 9 * value(food, 'fat (g)');
        const least = most - 4 * orNone(food, 'fiber (g)');
        const energy = value(food, 'energy (kcal)');
        return energy >= 0.85 * least - 6 && energy <= 1.1 * most + 6;
      },
      {
        beer: 'alcohol gives energy and has no column',
        'red wine': 'alcohol gives energy and has no column',
        'cider vinegar': 'acetic acid gives energy and has no column',
        'distilled vinegar': 'acetic acid gives energy and has no column',
        'cocoa powder': 'its own factors are far lower: 1.83, 8.37 and 1.33 kcal a gram',
        'oat bran, cooked': 'its own factors, for bran',
      },
    );
  });

  it('is water, protein, fat, carbohydrate and ash, within 4 g', () => {
    expectOf(
      (food) =>
        Math.abs(sum(food, 'water (g)', 'protein (g)', 'fat (g)', 'ash (g)', 'carbohydrate (g)') - 100) < 4,
      {
        'red wine': 'alcohol has no column',
        'cider vinegar': 'acetic acid has no column',
        'distilled vinegar': 'acetic acid has no column',
        'black pepper': 'the release leaves 5 g of it without a name',
      },
    );
  });

  it('has no more of a part than of the whole', () => {
    // Parts are measured on other samples than the whole, so they may pass it by a little.
    expectOf(
      (food) =>
        orNone(food, 'fiber (g)') + orNone(food, 'sugars (g)') <= value(food, 'carbohydrate (g)') + 1.3,
    );
    expectOf((food) => {
      const kinds = ['saturated fat (g)', 'monounsaturated fat (g)', 'polyunsaturated fat (g)'];
      const all = kinds.reduce((so, heading) => so + orNone(food, heading), 0);
      return all <= 1.06 * value(food, 'fat (g)') + 0.15;
    });
    expectOf((food) => !(orNone(food, 'retinol (µg)') > orNone(food, 'vitamin A (µg RAE)') + 1));
    expectOf((food) => !(orNone(food, 'food folate (µg)') > orNone(food, 'folate, total (µg)') + 1));
  });

  it('has its sodium in its ash', () => {
    // Salt is ash; sodium of 1 g makes 2.5 g of it.
    expectOf((food) => 2.5 * (orNone(food, 'sodium (mg)') / 1000) <= 1.15 * value(food, 'ash (g)') + 0.1, {
      'smoked salmon': 'ash and sodium of the release are of different samples',
      'grape leaves, canned': 'ash and sodium of the release are of different samples',
    });
  });
});

describe('household measures', () => {
  it.each([
    ['cup', 'tbsp', 16],
    ['cup', 'tsp', 48],
    ['tbsp', 'tsp', 3],
    ['cup', 'fl oz', 8],
  ])('have one %s weigh as %s by the number of them', (large, small, count) => {
    const has = foods.filter((food) => grams(food, large) > 0 && grams(food, small) > 0);
    expect(has.length).toBeGreaterThan(3);
    // Pieces pack otherwise in a spoon than in a cup.
    const off = has.filter((food) => {
      const ratio = grams(food, large) / (grams(food, small) * count);
      return !(ratio > 0.72 && ratio < 1.36);
    });
    expect(off.map((food) => food.name)).toEqual([]);
    const near = has.filter((food) => {
      const ratio = grams(food, large) / (grams(food, small) * count);
      return ratio > 0.9 && ratio < 1.1;
    });
    expect(near.length / has.length).toBeGreaterThan(0.85);
  });

  it.each([
    // Leaves and popped grains at one end, honey at the other: a gram or so a mL is the most for food.
    ['cup', 5, 345],
    ['tbsp', 0.5, 22],
    ['tsp', 0.2, 7.5],
    ['fl oz', 28, 43],
    ['can', 80, 500],
    ['slice', 4, 150],
    ['medium', 10, 300],
  ])('have a %s of %d to %d g', (name, least, most) => {
    const has = foods.filter((food) => grams(food, name) > 0);
    expect(has.length).toBeGreaterThan(15);
    const off = has.filter((food) => grams(food, name) < least || grams(food, name) > most);
    expect(off.map((food) => `${food.name}: ${grams(food, name)}`)).toEqual([]);
  });

  it('make a usual portion of 0.4 to 400 g and at most 450 kcal', () => {
    expectOf((food) => {
      const [, amount = '', unit = ''] = /^((?:\d+ )?[\d./]+) (.+)$/.exec(food.usual ?? '') ?? [];
      const count = amount.split(' ').reduce((so, part) => {
        const [top, bottom = '1'] = part.split('/');
        return so + Number(top) / Number(bottom);
      }, 0);
      const one = unit === 'oz' ? 28.349523125 : grams(food, unit) || grams(food, unit.replace(/s$/, ''));
      const all = count * one;
      return all >= 0.4 && all <= 400 && (all * value(food, 'energy (kcal)')) / 100 <= 450;
    });
  });
});

describe('one kind in two forms', () => {
  const kinds = [...new Set(foods.map((food) => food.kind ?? ''))];
  const both = (one: string, other: string) =>
    kinds.flatMap((kind) => {
      const [a, b] = [one, other].map((form) =>
        foods.find((food) => food.kind === kind && food.form === form),
      );
      return a && b ? [{ kind, a, b }] : [];
    });

  it.each([
    ['canned, with the liquid', 'canned, drained', 6],
    ['canned, no salt added, with the liquid', 'canned, no salt added, drained', 2],
  ])('has less water and more of the food drained: %s', (whole, drained, least) => {
    const pairs = both(whole, drained);
    expect(pairs.length).toBeGreaterThanOrEqual(least);
    for (const { kind, a, b } of pairs) {
      expect(value(b, 'water (g)'), kind).toBeLessThan(value(a, 'water (g)'));
      for (const more of ['protein (g)', 'carbohydrate (g)', 'energy (kcal)'])
        expect(value(b, more), `${kind}: ${more}`).toBeGreaterThan(value(a, more));
    }
  });

  it('has less sodium in a drained can than in the whole can', () => {
    const pairs = both('canned, with the liquid', 'canned, drained').filter(
      ({ a, b }) => grams(a, 'can') > 0 && grams(b, 'can') > 0,
    );
    expect(pairs.length).toBeGreaterThanOrEqual(6);
    for (const { kind, a, b } of pairs)
      expect(value(b, 'sodium (mg)') * grams(b, 'can'), kind).toBeLessThan(
        value(a, 'sodium (mg)') * grams(a, 'can'),
      );
  });

  it.each([
    ['canned, with the liquid', 'canned, low sodium, with the liquid', 4, 0.6],
    // Carrots hold sodium of their own, 69 mg in 100 g raw by the release; the others stay under a tenth.
    ['canned, with the liquid', 'canned, no salt added, with the liquid', 4, 0.15],
    ['canned, drained', 'canned, no salt added, drained', 4, 0.2],
  ])('has less sodium where the form says so: %s and %s', (salted, less, least, share) => {
    const pairs = both(salted, less);
    expect(pairs.length).toBeGreaterThanOrEqual(least);
    for (const { kind, a, b } of pairs)
      expect(value(b, 'sodium (mg)'), kind).toBeLessThan(share * value(a, 'sodium (mg)'));
  });

  it('takes up one to two and a half times its weight in water when dry beans are cooked', () => {
    const pairs = both('dry', 'dried, cooked at home').filter(({ a }) => value(a, 'water (g)') < 15);
    expect(pairs.length).toBeGreaterThan(20);
    for (const { kind, a, b } of pairs) {
      // Protein stays in the pot, so its share tells how much the beans grew.
      const grew = value(a, 'protein (g)') / value(b, 'protein (g)');
      expect(grew, kind).toBeGreaterThan(1.9);
      expect(grew, kind).toBeLessThan(3.6);
      expect(value(b, 'energy (kcal)') * grew, kind).toBeGreaterThan(0.75 * value(a, 'energy (kcal)'));
      expect(value(b, 'energy (kcal)') * grew, kind).toBeLessThan(1.25 * value(a, 'energy (kcal)'));
    }
  });
});
