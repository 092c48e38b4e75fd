import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  CONTENTS,
  type Content,
  type DailyValueName,
  isLost,
  judgeSwap,
  known,
  LOW_SODIUM_MG,
  NEED_NAMES,
  NEEDS,
  type Need,
  type NeedName,
  type NeedSettings,
  NUTRIENTS_AT_RISK,
  nearestPassing,
  needNamed,
  notKnown,
  nutrientsAtRisk,
  onlyIfFortified,
  PATTERNS_AT_RISK,
  passesAll,
  swapChange,
  testDish,
  testFood,
  unsaidAtRisk,
  type Worked,
} from '../../src/nutrition/index.js';
import { evaluate } from './evaluate.js';
import { refusalOf, valueIn } from './expect-result.js';
import { food } from './foods.js';

const PLAIN: NeedSettings = { coconut: 'not said' };
const has = (name: string, ...contents: readonly Content[]) =>
  food({ name, contains: Object.fromEntries(contents.map((content) => [content, 'yes'])) });
const open = (name: string, ...contents: readonly Content[]) =>
  food({ name, contains: Object.fromEntries(contents.map((content) => [content, 'unknown'])) });
const all = Object.fromEntries(CONTENTS.map((content) => [content, 'unknown'])) as Record<Content, 'unknown'>;
const verdict = (of: ReturnType<typeof food>, need: NeedName, settings = PLAIN) =>
  testFood(of, need, settings).verdict;

const lentils = has('lentils');
const milk = has('whole milk', 'milk');
const cheese = has('cheddar cheese', 'milk');
const egg = has('egg', 'egg');
const chicken = has('chicken breast', 'meat');
const ham = has('ham, sliced', 'meat');
const lard = has('lard', 'meat');
const salmon = has('salmon', 'fish');
const catfish = has('catfish', 'fish');
const shrimp = has('shrimp', 'shellfish');
const honey = has('honey', 'honey');
const almonds = has('almonds', 'tree nut');
const peanuts = has('peanuts', 'peanut');
const bread = has('white bread', 'wheat', 'gluten');
const barley = has('barley', 'gluten');
const oats = open('oats', 'gluten');
const coconut = open('coconut milk', 'tree nut');
const mystery = food({ name: 'mystery', contains: all });

describe('needs', () => {
  // By the definitions in common use; gluten-free by 21 CFR 101.91.
  it.each([
    ['vegan', [lentils, almonds, bread, oats], [milk, cheese, egg, chicken, lard, salmon, shrimp, honey]],
    ['vegetarian', [lentils, milk, egg, honey], [chicken, ham, lard, salmon, shrimp]],
    ['lacto-vegetarian', [lentils, milk, honey], [egg, chicken, salmon]],
    ['ovo-vegetarian', [lentils, egg], [milk, cheese, chicken, salmon]],
    ['pescatarian', [lentils, milk, egg, salmon, shrimp], [chicken, ham, lard]],
    ['gluten-free', [lentils, milk, has('buckwheat')], [bread, barley]],
    ['wheat-free', [lentils, barley], [bread]],
    ['dairy-free', [lentils, egg, peanuts], [milk, cheese]],
    ['egg-free', [milk], [egg]],
    ['nut-free', [lentils, milk], [almonds, peanuts]],
    ['peanut-free', [almonds], [peanuts]],
    ['tree-nut-free', [peanuts], [almonds]],
    ['fish-free', [shrimp, chicken], [salmon]],
    ['shellfish-free', [salmon], [shrimp]],
    ['soy-free', [lentils], [has('tofu', 'soy')]],
    ['sesame-free', [lentils], [has('tahini', 'sesame')]],
    ['halal-style', [lentils, milk, salmon, shrimp], [ham, lard, has('white wine'), has('lard')]],
    ['kosher-style', [lentils, milk, salmon], [ham, lard, shrimp, catfish]],
  ] as const)('%s', (need, pass, broken) => {
    for (const one of pass) expect([one.name, verdict(one, need)]).toEqual([one.name, 'passes']);
    for (const one of broken) expect([one.name, verdict(one, need)]).toEqual([one.name, 'breaks']);
    expect(verdict(mystery, need)).toBe('not known');
  });

  it('has conditions that are no pass', () => {
    expect(verdict(chicken, 'halal-style')).toBe('only if');
    expect(verdict(chicken, 'kosher-style')).toBe('only if');
    expect(verdict(has('red wine'), 'kosher-style')).toBe('only if');
    expect(verdict(cheese, 'vegetarian')).toBe('only if');
    expect(verdict(oats, 'gluten-free')).toBe('only if');
    expect(passesAll(oats, ['gluten-free'], PLAIN)).toBe(false);
    expect(testFood(oats, 'gluten-free', PLAIN).findings[0]?.reason).toBe(
      'oats: only if the oats are labeled gluten-free; oats pick up wheat and barley in field and mill.',
    );
    // Oats in a mixture of which the wheat is not known explain nothing.
    expect(verdict(open('oat bar', 'gluten', 'wheat'), 'gluten-free')).toBe('not known');
    expect(verdict(open('oats and barley', 'gluten'), 'gluten-free')).toBe('not known');
    expect(verdict(open('granola', 'gluten'), 'gluten-free')).toBe('not known');
  });

  it('lets a label lift a condition where its word is defined, and never what breaks', () => {
    const labeled = (need: NeedName): NeedSettings => ({ coconut: 'not said', labeled: [need] });
    expect(verdict(oats, 'gluten-free', labeled('gluten-free'))).toBe('passes');
    expect(verdict(oats, 'gluten-free', labeled('vegan'))).toBe('only if');
    expect(verdict(chicken, 'halal-style', labeled('halal-style'))).toBe('passes');
    expect(verdict(bread, 'gluten-free', labeled('gluten-free'))).toBe('breaks');
    expect(verdict(mystery, 'nut-free', labeled('nut-free'))).toBe('not known');
  });

  it('goes by the setting for coconut', () => {
    const at = (coconutRule: NeedSettings['coconut'], of = coconut) =>
      verdict(of, 'nut-free', { coconut: coconutRule });
    expect([at('not said'), at('a tree nut'), at('no tree nut')]).toEqual(['not known', 'breaks', 'passes']);
    expect(at('no tree nut', has('coconut and almond bar', 'tree nut'))).toBe('breaks');
    expect(at('a tree nut', open('oil', 'tree nut'))).toBe('not known');
    expect(at('no tree nut', open('coconut and almond bar', 'tree nut'))).toBe('not known');
    expect(verdict(coconut, 'peanut-free')).toBe('passes');
  });

  it('does not pass a food whose name says what its contents deny', () => {
    expect(testFood(has('almond bar'), 'nut-free', PLAIN)).toMatchObject({
      verdict: 'not known',
      findings: [{ reason: 'The name of almond bar says "almond", and its contents do not.' }],
    });
    expect(verdict(has('lecithin'), 'soy-free')).toBe('passes');
  });

  it('looks at groups that the food table does not hold', () => {
    expect(verdict(has('frankfurter', 'meat'), 'halal-style')).toBe('not known');
    expect(verdict(has('vegetable shortening'), 'vegan')).toBe('passes');
    expect(verdict(has('shortening'), 'vegan')).toBe('passes');
    expect(verdict(open('fish cake', 'fish'), 'kosher-style')).toBe('not known');
    expect(verdict(open('sauce', 'fish'), 'kosher-style')).toBe('not known');
    expect(verdict(has('fish sauce', 'fish'), 'kosher-style')).toBe('not known');
    expect(verdict(has('kombucha'), 'halal-style')).toBe('not known');
    expect(verdict(has('vitamin D drops'), 'vegan')).toBe('not known');
    expect(verdict(open('spread', 'milk'), 'vegetarian')).toBe('not known');
    expect(verdict(has('parmesan', 'milk'), 'vegan')).toBe('breaks');
  });

  it('holds low sodium to the usual portion', () => {
    // 21 CFR 101.61(b)(4): 140 mg; half a cup of 90 g here.
    const salty = (sodium: number | null) => food({ name: 'beans', per100g: { sodium } });
    expect(verdict(salty(LOW_SODIUM_MG / 0.9), 'low-sodium')).toBe('passes');
    expect(testFood(salty(160), 'low-sodium', PLAIN)).toMatchObject({
      verdict: 'breaks',
      findings: [{ reason: '1/2 cup of beans has more than 140 mg of sodium.' }],
    });
    expect(verdict(salty(null), 'low-sodium')).toBe('not known');
  });

  it('is named as it is written', () => {
    expect(valueIn(needNamed(' Vegan '))).toBe('vegan');
    expect(refusalOf(needNamed('nutfree')).near).toEqual(['nut-free']);
  });

  it('is a table that says why, and prescribes nothing', () => {
    for (const name of NEED_NAMES) {
      const need: Need = NEEDS[name];
      expect(need.notes.length, name).toBeGreaterThan(0);
      for (const rule of need.rules) expect(rule.why, name).not.toBe('');
      if (need.about === 'allergy or intolerance')
        expect(need.notes.join(' ')).toContain('Read the label every time');
    }
    expect(NEEDS['nut-free'].labelCounts).toBe(false);
  });

  it('never passes what is not known, and more contents never help', () => {
    const state = fc.constantFrom('yes', 'no', 'unknown');
    const contents = fc.record(
      Object.fromEntries(CONTENTS.map((one) => [one, state])) as Record<Content, typeof state>,
    );
    const ranks = ['passes', 'only if', 'not known', 'breaks'];
    fc.assert(
      fc.property(
        contents,
        fc.constantFrom(...NEED_NAMES),
        fc.constantFrom(...CONTENTS),
        (given, need, content) => {
          const of = (contains: typeof given) =>
            testFood(food({ name: 'thing', contains }), need, PLAIN).verdict;
          const rules: Need = NEEDS[need];
          const touched = rules.rules.filter(({ group }) => given[group as Content] === 'unknown');
          if (touched.length > 0) expect(of(given)).not.toBe('passes');
          if (rules.rules.some(({ group }) => group === content)) {
            const worse = ranks.indexOf(of({ ...given, [content]: 'yes' }));
            expect(worse).toBeGreaterThanOrEqual(ranks.indexOf(of({ ...given, [content]: 'no' })));
          }
        },
      ),
    );
  });
});

describe('a dish', () => {
  const dish = (...foods: readonly ReturnType<typeof food>[]) =>
    foods.map((one) => ({ food: one, settings: PLAIN }));

  it('is as good as the worst of its foods', () => {
    expect(testDish(dish(lentils, milk), 'vegetarian').verdict).toBe('passes');
    expect(testDish(dish(lentils, mystery), 'vegan').verdict).toBe('not known');
    expect(testDish(dish(mystery, honey), 'vegan').verdict).toBe('breaks');
  });

  it('has no meat with milk, kosher-style', () => {
    const certified = [chicken, milk].map((one) => ({
      food: one,
      settings: { ...PLAIN, labeled: ['kosher-style' as const] },
    }));
    expect(testDish(certified, 'kosher-style').findings.map(({ reason }) => reason)).toEqual([
      'Meat and milk are in one dish.',
    ]);
    expect(testDish(dish(salmon, milk), 'kosher-style').verdict).toBe('passes');
    expect(testDish(dish(chicken, open('spread', 'milk')), 'kosher-style').verdict).toBe('not known');
    expect(testDish(dish(chicken, lentils), 'kosher-style').verdict).toBe('only if');
  });
});

describe('a swap', () => {
  const drink = (name: string, protein: number | null, ...contents: readonly Content[]) => ({
    ...has(name, ...contents),
    plate: ['dairy or calcium' as const],
    per100g: food({ per100g: { protein } }).per100g,
  });
  const almond = drink('almond drink', 0.5, 'tree nut');
  const soy = drink('soy drink', 3, 'soy');
  const oat = { ...drink('oat drink', 1), contains: food({ contains: { gluten: 'unknown' } }).contains };
  const rice = drink('rice drink', 0.3);
  const pea = drink('pea drink', null);

  it('is refused when it breaks any need in force', () => {
    const refusal = refusalOf(
      judgeSwap(almond, ['dairy-free', 'nut-free'], PLAIN, [soy, rice, pea, almond, lentils]),
    );
    expect(refusal.reason).toBe(
      'almond drink cannot be the swap. nut-free: almond drink: it is a nut or a peanut.',
    );
    expect(refusal.near).toEqual(['rice drink', 'soy drink', 'pea drink']);
    expect(judgeSwap(almond, ['dairy-free'], PLAIN).ok).toBe(true);
    expect(judgeSwap(mystery, ['dairy-free'], PLAIN).ok).toBe(false);
    expect(refusalOf(judgeSwap(almond, ['nut-free'], PLAIN)).near).toBeUndefined();
  });

  it('carries its conditions and notes', () => {
    const swap = valueIn(judgeSwap(oat, ['gluten-free', 'dairy-free'], PLAIN));
    expect(swap.conditions).toEqual([
      'oat drink: only if the oats are labeled gluten-free; oats pick up wheat and barley in field and mill.',
    ]);
    expect(swap.notes.filter((note) => note.startsWith('Read the label'))).toHaveLength(1);
    expect(valueIn(judgeSwap(oat, [], PLAIN))).toEqual({ conditions: [], notes: [] });
    // What breaks is told; a condition of the same food is not mixed in.
    expect(refusalOf(judgeSwap(has('ham', 'meat'), ['halal-style'], PLAIN)).reason).toBe(
      'ham cannot be the swap. halal-style: ham: it is from a pig.',
    );
  });

  it('offers the nearest, known protein first, then by name', () => {
    expect(
      nearestPassing(soy, [pea, rice, oat, almond, soy], ['nut-free'], PLAIN).map(({ name }) => name),
    ).toEqual(['oat drink', 'rice drink', 'pea drink']);
    expect(nearestPassing(pea, [rice, oat], [], PLAIN).map(({ name }) => name)).toEqual([
      'oat drink',
      'rice drink',
    ]);
    expect(nearestPassing(pea, [oat, rice], [], PLAIN, 1).map(({ name }) => name)).toEqual(['oat drink']);
  });

  const amount = (value: number | null, atLeast = false, unit: 'mg' | 'µg' = 'mg'): Worked<'mg' | 'µg'> => ({
    quantity: value === null ? notKnown(unit) : { ...known(value, unit), atLeast },
    working: { formula: 'amount', inputs: [{ name: 'amount', value, unit, source: 'lesson' }] },
    estimated: false,
  });

  it('changes by after - before, where both are known in full', () => {
    const change = swapChange(amount(300), amount(120));
    expect(change.value).toBe(-180);
    expect(evaluate(change.working)).toBe(-180);
    expect(swapChange(amount(null), amount(1)).value).toBeNull();
    expect(swapChange(amount(1), amount(null)).value).toBeNull();
    expect(swapChange(amount(1, true), amount(2)).value).toBeNull();
    expect(swapChange(amount(1), amount(2, true)).value).toBeNull();
    expect(() => swapChange(amount(1), amount(1, false, 'µg'))).toThrow('cannot be set against');
  });

  // Calcium: daily value 1300 mg, 21 CFR 101.9(c)(8)(iv); a tenth is 130 mg.
  it.each([
    [300, 149, true],
    [300, 150, false],
    [130, 64, true],
    [129, 0, false],
    [129, null, false],
    [null, 0, null],
    [300, null, null],
  ])('calcium from %s to %s mg: lost %s', (before, after, lost) => {
    expect(isLost(amount(before), amount(after), 'calcium')).toBe(lost);
  });

  it('cannot tell from sums that are not whole', () => {
    expect(isLost(amount(300, true), amount(149), 'calcium')).toBe(true);
    expect(isLost(amount(300, true), amount(150), 'calcium')).toBeNull();
    expect(isLost(amount(100, true), amount(10), 'calcium')).toBeNull();
    expect(isLost(amount(300), amount(149, true), 'calcium')).toBeNull();
    expect(isLost(amount(300), amount(150, true), 'calcium')).toBe(false);
  });

  it('does not call less sodium a loss', () => {
    const less: readonly DailyValueName[] = ['sodium', 'saturated fat', 'added sugars'];
    for (const nutrient of less) expect(isLost(amount(2000), amount(1), nutrient)).toBe(false);
  });

  it('says what comes only by fortifying', () => {
    expect(onlyIfFortified(food({ name: 'soy drink, calcium added' }), 'calcium')).toBe(true);
    expect(onlyIfFortified(food({ name: 'cereal, fortified' }), 'iron')).toBe(true);
    expect(onlyIfFortified(food({ name: 'soy drink, calcium added' }), 'zinc')).toBe(false);
    expect(onlyIfFortified(food({ name: 'beans, no salt added' }), 'iron')).toBe(false);
    expect(onlyIfFortified(food({ name: 'soy drink, not fortified' }), 'calcium')).toBe(false);
    expect(onlyIfFortified(food({ name: 'rice, unenriched' }), 'iron')).toBe(false);
    expect(onlyIfFortified(food({ name: 'juice, no sugar added, calcium added' }), 'calcium')).toBe(true);
  });
});

describe('nutrients at risk', () => {
  it('names the ones that a page must say first', () => {
    expect(nutrientsAtRisk('vegan')[0]).toMatchObject({
      nutrient: 'vitamin B12',
      weight: 'must say',
      checked: 'memory',
    });
    expect(unsaidAtRisk('vegan', ['iron'])).toEqual(['vitamin B12']);
    expect(unsaidAtRisk('vegan', ['Vitamin B12'])).toEqual([]);
    expect(unsaidAtRisk('vegetarian', [])).toEqual([]);
  });

  it('has a source for each row, and no row twice', () => {
    for (const pattern of PATTERNS_AT_RISK) {
      const { nutrients } = NUTRIENTS_AT_RISK[pattern];
      expect(new Set(nutrients.map(({ nutrient }) => nutrient)).size).toBe(nutrients.length);
      for (const { source } of nutrients) expect(source).not.toBe('');
    }
  });
});
