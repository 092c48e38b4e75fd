import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createReport } from '../../../src/diagnostics/index.js';
import { draw } from '../../../src/figures/index.js';
import { DISH_FORMS, NEED_NAMES, type NeedName, passesAll } from '../../../src/nutrition/index.js';
import { picture } from '../../figures/dish/samples.js';
import { paper, screen } from '../../figures/samples.js';
import { AUDIENCES, computeParts, foods, viewOf } from '../desk.js';
import { part } from '../parts.js';
import { figuresOf, stringsIn } from '../strings.js';

const DISH = [
  '1 cup couscous, cooked',
  '1 cup carrots, raw',
  '1/2 cup tofu, firm, calcium-set',
  'calcium = 1 cup whole milk',
];
const OLD = ['couscous, cooked', 'carrots, raw', 'tofu, firm, calcium-set', 'whole milk', 'salmon, baked'];
const hostile = fc.oneof(
  fc.constantFrom(
    '',
    '->',
    '-> ->',
    'a -> b',
    '→',
    '; = ;',
    '{old}',
    '__proto__ -> constructor',
    '\u202e -> dlo',
  ),
  fc.constant(`${'A'.repeat(2000)} -> ${'B'.repeat(2000)}`),
  fc.string({ unit: 'grapheme', maxLength: 40 }),
);
const swap = fc
  .tuple(
    fc.constantFrom(...OLD),
    fc.constantFrom('1 cup ', '1/2 cup ', '3 oz ', ''),
    fc.constantFrom(...foods.names),
    fc.constantFrom('', ' ; counts = protein', ' ; counts = grain', ' ; volume = 1 cup'),
  )
  .map(([old, amount, fresh, fact]) => `${old} -> ${amount}${fresh}${fact}`);
const needs = fc.uniqueArray(fc.constantFrom(...NEED_NAMES), { minLength: 1, maxLength: 3 });
const written = fc.record({
  form: fc.constantFrom(...DISH_FORMS),
  needs,
  rows: fc.array(fc.oneof({ weight: 6, arbitrary: swap }, { weight: 1, arbitrary: hostile }), {
    maxLength: 5,
  }),
});

/** Where figures are drawn too, which takes its time. */
const DRAWN = ['handout short', 'handout plain', 'slide plain'];

/** A turned dish passes every need in force, or there is a problem at a place. */
function check({ form, needs: asked, rows }: { form: string; needs: NeedName[]; rows: string[] }): boolean {
  const report = createReport();
  const map = part('plate-map', { id: 'd', dish: form }, DISH);
  const turn = part('plate-turn', { id: 'x', of: 'd', need: asked.join(',') }, rows);
  const computed = computeParts([map, turn], report);
  const entry = computed.entries[1];
  const done = entry?.computed !== undefined;
  if (!done) expect(report.problems.length).toBeGreaterThan(0);
  for (const problem of report.problems) {
    expect(problem.place).toBeDefined();
    expect(problem.message.length + (problem.hint?.length ?? 0)).toBeLessThan(900);
  }
  if (!done) return false;
  const dish = entry?.computed?.publishes;
  if (dish?.kind !== 'dish') throw new Error('no dish');
  for (const { food } of dish.foods) {
    // Nothing that breaks a need or may break it is ever let through; a labeled condition is printed.
    const open = asked.filter((need) => !passesAll(food, [need], { coconut: 'not said' }));
    if (open.length > 0) expect(JSON.stringify(entry?.computed)).toContain(`${food.name}: only if`);
  }
  for (const { where, level } of AUDIENCES) {
    const view = viewOf(computed, turn, where, level);
    if (!view) throw new Error('no view');
    const strings = stringsIn(view).map(({ text }) => text);
    for (const text of strings) expect(text).not.toMatch(/undefined|NaN|\[object|\{[a-z-]+\}/);
    // The worksheet tells neither what goes nor what comes.
    if (where === 'worksheet')
      expect(strings.join(' ')).not.toMatch(/\b(?:Swapped|Lost|it is wheat|it is milk)\b/);
    for (const figure of figuresOf(view)) {
      if (figure.kind !== 'dish-turn') continue;
      if (where === 'worksheet')
        expect([figure.after, ...figure.swaps, ...figure.lanes]).toEqual([undefined]);
      if (!DRAWN.includes(`${where} ${level}`)) continue;
      const options =
        where === 'slide'
          ? screen({ picture })
          : paper({ picture, level: level === 'staff' ? 'fuller' : level });
      for (const { code } of draw(figure, options).problems)
        expect(['figures/does-not-fit', 'figures/too-many', 'figures/too-high']).toContain(code);
    }
  }
  return true;
}

describe('whatever an author writes', () => {
  it('a turned dish passes every need in force, or there is a problem', () => {
    fc.assert(
      fc.property(written, (one) => void check(one)),
      { numRuns: 60 },
    );
  });

  it('whole turns hold together', () => {
    const rows = [
      'couscous, cooked -> 1 cup quinoa, cooked',
      'whole milk -> 1 cup orange juice, calcium added',
    ];
    for (const form of DISH_FORMS) {
      expect(check({ form, needs: ['vegetarian'], rows: [] })).toBe(true);
      expect(check({ form, needs: ['gluten-free'], rows: rows.slice(0, 1) })).toBe(true);
      expect(check({ form, needs: ['dairy-free', 'gluten-free'], rows })).toBe(true);
    }
  });
});
