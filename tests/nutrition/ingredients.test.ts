import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  findIngredients,
  INGREDIENT_GROUPS,
  INGREDIENT_WORDS,
  type IngredientGroup,
  testIngredients,
  unknownIngredients,
} from '../../src/nutrition/index.js';

const sure = (text: string, group: IngredientGroup) => {
  const hits = findIngredients(text).filter((hit) => hit.group === group);
  return hits.some((hit) => hit.sure === 'is') ? 'is' : hits.length > 0 ? 'maybe' : 'no';
};

describe('ingredient words', () => {
  // From common knowledge of foods and of label words; no source but where named.
  it.each([
    ['buckwheat', 'wheat', 'no'],
    ['buckwheat', 'gluten', 'no'],
    ['buckwheat flour', 'wheat', 'no'],
    ['whole wheat flour', 'wheat', 'is'],
    ['whole wheat flour', 'gluten', 'is'],
    ['enriched flour', 'wheat', 'maybe'],
    ['rice flour', 'wheat', 'no'],
    ['malt syrup', 'gluten', 'is'],
    ['barley malt', 'gluten', 'is'],
    ['malt vinegar', 'gluten', 'is'],
    ['maltodextrin', 'gluten', 'no'],
    ['rice malt', 'gluten', 'no'],
    ['malt', 'wheat', 'no'],
    ['rye bread', 'gluten', 'is'],
    ['corn gluten', 'gluten', 'no'],
    ['peanut butter', 'milk', 'no'],
    ['peanut butter', 'peanut', 'is'],
    ['butter', 'milk', 'is'],
    ['Butter beans', 'milk', 'no'],
    ['butternut squash', 'tree nut', 'no'],
    ['butternut squash', 'milk', 'no'],
    ['nutmeg', 'tree nut', 'no'],
    ['doughnut', 'peanut', 'no'],
    ['coconut milk', 'milk', 'no'],
    ['coconut milk', 'coconut', 'is'],
    ['coconut', 'tree nut', 'no'],
    ['water chestnuts', 'tree nut', 'no'],
    ['walnuts', 'tree nut', 'is'],
    ['walnuts', 'peanut', 'no'],
    ['mixed nuts', 'peanut', 'maybe'],
    ['almond milk', 'milk', 'no'],
    ['almond milk', 'tree nut', 'is'],
    ['cream of tartar', 'milk', 'no'],
    ['crème fraîche', 'milk', 'is'],
    ['creme fraiche', 'milk', 'is'],
    ['sodium caseinate', 'milk', 'is'],
    ['non-dairy creamer', 'milk', 'maybe'],
    ['eggplant', 'egg', 'no'],
    ['egg whites', 'egg', 'is'],
    ['dried egg-white', 'egg', 'is'],
    ['Worcestershire sauce', 'fish', 'is'],
    ['anchovies', 'fish', 'is'],
    ['oyster mushrooms', 'shellfish', 'no'],
    ['prawns', 'shellfish', 'is'],
    ['beefsteak tomatoes', 'meat', 'no'],
    ["lamb's lettuce", 'meat', 'no'],
    ['lamb’s lettuce', 'meat', 'no'],
    ['soy lecithin', 'soy', 'is'],
    ['soy lecithin', 'egg', 'no'],
    ['lecithin', 'soy', 'maybe'],
    ['tahini', 'sesame', 'is'],
    ['honeydew melon', 'honey', 'no'],
    ['wine vinegar', 'alcohol', 'no'],
    ['root beer', 'alcohol', 'no'],
    ['sugar alcohols', 'alcohol', 'no'],
    ['rum', 'alcohol', 'is'],
    ['lactose-free milk', 'milk', 'is'],
    ['fat-free milk', 'milk', 'is'],
    ['cage-free eggs', 'egg', 'is'],
    ['turkey bacon', 'pork', 'no'],
    ['sausage', 'pork', 'maybe'],
    ['royal jelly', 'gelatin', 'no'],
    ['shallots', 'meat', 'no'],
    ['hamburger', 'meat', 'no'],
  ] as const)('%s: %s %s', (text, group, expected) => {
    expect(sure(text, group)).toBe(expected);
  });

  it.each([
    ['dairy-free spread with butter flavor', 'milk'],
    ['vegan cheese', 'milk'],
    ['plant-based sausage', 'meat'],
    ['no egg', 'egg'],
    ['free from milk', 'milk'],
    ['free of sesame', 'sesame'],
    ['sesame-free', 'sesame'],
    ['wheat-free bread', 'wheat'],
    ['gluten-free bread', 'wheat'],
    ['sugar, salt. May contain almonds, walnuts', 'tree nut'],
    ['made with traces of peanut', 'peanut'],
  ] as const)('"%s" leaves %s open', (text, group) => {
    expect(sure(text, group)).toBe('maybe');
  });

  it('takes gluten-free at its word, and ends a precaution with its sentence', () => {
    expect(sure('gluten-free bread', 'gluten')).toBe('no');
    expect(sure('gluten-free oats, barley', 'gluten')).toBe('is');
    expect(sure('May contain milk. Contains egg', 'egg')).toBe('is');
    expect(sure('May contain milk\negg', 'egg')).toBe('is');
    expect(sure('from milk', 'milk')).toBe('is');
  });

  it('gives the words and their place', () => {
    const text = 'Enriched flour, malt syrup, whey powder, cane juice, salt, natural flavour';
    const hits = findIngredients(text);
    expect(
      hits
        .filter(({ group }) => ['gluten', 'milk', 'wheat'].includes(group))
        .map((hit) => [hit.group, hit.sure, hit.words]),
    ).toEqual([
      ['wheat', 'maybe', 'flour'],
      ['gluten', 'maybe', 'flour'],
      ['gluten', 'is', 'malt syrup'],
      ['milk', 'is', 'whey'],
    ]);
    for (const { words, start, end } of hits) expect(text.slice(start, end)).toBe(words);
  });

  it('reports what it does not know', () => {
    expect(unknownIngredients('water, xylo-gum, salt (iodized), whey, red lentils')).toEqual([
      'xylo-gum',
      'iodized',
    ]);
    expect(unknownIngredients('')).toEqual([]);
    expect(unknownIngredients(' , ; ')).toEqual([]);
  });

  it('is not led astray by its own words: each word of each list is found in itself', () => {
    for (const group of INGREDIENT_GROUPS) {
      for (const words of INGREDIENT_WORDS[group].is.split('; '))
        expect([words, sure(words, group)]).toEqual([words, 'is']);
      for (const words of INGREDIENT_WORDS[group].not.split('; '))
        expect([words, sure(words, group)]).toEqual([words, 'no']);
    }
  });

  it('does not depend on case, spaces or the other ingredients', () => {
    const words = fc.constantFrom(
      'buckwheat',
      'malt',
      'butter',
      'peanut butter',
      'coconut milk',
      'egg white',
      'rice',
      'oats',
    );
    fc.assert(
      fc.property(fc.array(words, { minLength: 1, maxLength: 5 }), (list) => {
        const alone = new Set(list.flatMap((one) => findIngredients(one).map(({ group }) => group)));
        const groups = (text: string) => new Set(findIngredients(text).map(({ group }) => group));
        expect(groups(list.join(', '))).toEqual(alone);
        expect(groups(list.join('; ').toUpperCase())).toEqual(alone);
        expect(groups(list.toReversed().join(' ,  '))).toEqual(alone);
      }),
    );
  });

  it('survives any text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        for (const { start, end } of findIngredients(text)) expect(end).toBeGreaterThan(start);
        expect(Array.isArray(unknownIngredients(text))).toBe(true);
      }),
    );
  });
});

describe('an ingredient list and a need', () => {
  const verdict = (
    text: string,
    need: Parameters<typeof testIngredients>[1],
    coconut = 'not said' as const,
  ) => testIngredients(text, need, coconut).verdict;

  it('breaks, asks, or finds nothing; it never passes', () => {
    expect(verdict('water, salt, tofu', 'vegan')).toBe('nothing found');
    expect(verdict('water, salt, honey', 'vegan')).toBe('breaks');
    expect(verdict('water, natural flavor', 'vegan')).toBe('not known');
    expect(verdict('water, zzz', 'vegan')).toBe('not known');
    expect(verdict('rolled oats', 'gluten-free')).toBe('only if');
    expect(verdict('', 'vegan')).toBe('nothing found');
    expect(verdict('chicken', 'halal-style')).toBe('only if');
    expect(verdict('ham', 'halal-style')).toBe('breaks');
  });

  it('goes by the setting for coconut', () => {
    expect(testIngredients('coconut', 'tree-nut-free', 'not said')).toMatchObject({ verdict: 'not known' });
    expect(testIngredients('coconut', 'tree-nut-free', 'a tree nut')).toMatchObject({ verdict: 'breaks' });
    expect(testIngredients('coconut', 'tree-nut-free', 'no tree nut')).toMatchObject({
      verdict: 'nothing found',
    });
    expect(testIngredients('coconut', 'egg-free', 'a tree nut')).toMatchObject({ verdict: 'nothing found' });
  });

  it('says why, with the words', () => {
    const { findings } = testIngredients('barley malt, oats', 'gluten-free', 'not said');
    expect(findings.map(({ words, kind, reason }) => [words, kind, reason])).toEqual([
      ['barley', 'breaks', '"barley": it is wheat, rye, barley or made of them; malt is barley.'],
      ['malt', 'breaks', '"malt": it is wheat, rye, barley or made of them; malt is barley.'],
      [
        'oats',
        'only if',
        '"oats": only if the oats are labeled gluten-free; oats pick up wheat and barley in field and mill.',
      ],
    ]);
  });
});
