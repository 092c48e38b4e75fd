import { describe, expect, it } from 'vitest';
import { createReport } from '../../../src/diagnostics/index.js';
import { evaluate } from '../../nutrition/evaluate.js';
import { computeParts } from '../desk.js';
import { part } from '../parts.js';

function turned(rows: readonly string[], need: string, swaps: readonly string[]) {
  const report = createReport();
  const lesson = computeParts(
    [
      part('plate-map', { id: 'd', dish: 'plate' }, rows),
      part('plate-turn', { id: 't', of: 'd', need }, swaps),
    ],
    report,
  );
  return { lesson, report, entry: lesson.entries[1] };
}
const SALMON = ['3 oz salmon, baked', '1 cup couscous, cooked', '1 cup broccoli, boiled'];
const SWAPS = ['salmon, baked -> 3/4 cup lentils, cooked', 'couscous, cooked -> 1 cup quinoa, cooked'];

describe('a turned dish', () => {
  const { lesson, report, entry } = turned(SALMON, 'vegan,gluten-free', SWAPS);

  it('is computed like any plate', () => {
    expect(report.problems).toEqual([]);
    // 180 mL lentils, 240 quinoa, 240 broccoli of 660: 3.27, 4.36, 4.36; the part left over goes to quinoa, the earlier row.
    expect(
      ['protein', 'grain-or-starch', 'vegetables-and-fruit'].map(
        (kind) => lesson.numbers.get(`t.${kind}.parts`)?.value,
      ),
    ).toEqual([3, 5, 4]);
    for (const number of lesson.numbers.all)
      if (number.value !== null) expect(evaluate(number)).toBeCloseTo(number.value, 6);
  });

  it('loses what only fish brought, by the values of the release', () => {
    // USDA SR28, 15237: vitamin B12 2.80 µg and vitamin D 13.1 µg in 100 g of baked salmon; 3 oz is 85.05 g.
    expect(lesson.numbers.get('t.before.vitamin-b12')?.value).toBeCloseTo(2.8 * 0.8504856, 4);
    expect(lesson.numbers.get('t.before.vitamin-d')?.value).toBeCloseTo(13.1 * 0.8504856, 4);
    expect(lesson.numbers.get('t.after.vitamin-b12')?.value).toBe(0);
    // 2.38 µg of a Daily Value of 2.4 µg, 11.1 of 20 µg: both above a tenth before, and less than half of it after.
    expect(entry?.computed).toMatchObject({ lost: ['vitamin B12', 'vitamin D', 'selenium'] });
    expect(entry?.computed?.facts.settings).toMatchObject({ need: ['vegan', 'gluten-free'], lost: ['yes'] });
  });

  it('can be turned again by another', () => {
    expect(entry?.computed?.publishes).toMatchObject({ kind: 'dish', form: 'plate', serves: 1 });
  });
});

describe('safety', () => {
  it('names a food that has to go, with the nearest that pass', () => {
    const { report, entry } = turned(SALMON, 'vegan,gluten-free', SWAPS.slice(0, 1));
    expect(entry?.computed).toBeUndefined();
    expect(report.problems).toHaveLength(1);
    expect(report.problems[0]?.code).toBe('directives/need');
    expect(report.problems[0]?.message).toContain('couscous, cooked');
    expect(report.problems[0]?.expected?.length).toBeGreaterThan(0);
  });

  it('refuses a new food that breaks any need, not only the one that it was made for', () => {
    const { entry } = turned(SALMON, 'gluten-free,soy-free', [
      'couscous, cooked -> 1 cup tofu, firm, calcium-set',
    ]);
    expect(entry?.refused?.join(' ')).toContain('soy');
    expect(entry?.computed).toBeUndefined();
  });

  it('takes what is not known for no pass', () => {
    const { entry } = turned(
      ['1 cup couscous, cooked', 'calcium = 1 cup whole milk'],
      'dairy-free,gluten-free',
      ['couscous, cooked -> 1 cup quinoa, cooked', 'whole milk -> 1 cup soy drink, calcium added'],
    );
    expect(entry?.refused?.join(' ')).toContain('may be gluten');
  });

  it('tests words beside the dish too', () => {
    const { report, entry } = turned(['1 cup quinoa, cooked', 'fat = butter on top'], 'vegan', []);
    expect(entry?.computed).toBeUndefined();
    expect(report.problems.map(({ code }) => code)).toContain('directives/need');
  });
});
