import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createReport } from '../../../src/diagnostics/index.js';
import { draw } from '../../../src/figures/index.js';
import { DISH_FORMS, DISH_PARTS } from '../../../src/nutrition/index.js';
import { picture } from '../../figures/dish/samples.js';
import { paper, screen } from '../../figures/samples.js';
import { evaluate } from '../../nutrition/evaluate.js';
import { AUDIENCES, computeParts, foods, viewOf } from '../desk.js';
import { part } from '../parts.js';
import { figuresOf, stringsIn } from '../strings.js';

const hostile = fc.oneof(
  fc.constantFrom(
    '',
    ';',
    '= ;',
    '{foods}',
    '__proto__',
    '-1 cup',
    '1e309 cup',
    '1/0 cup rice',
    '\u202e dlo',
    '0 cups mango',
    '\ud800',
  ),
  fc.constant('A'.repeat(3000)),
  fc.string({ unit: 'grapheme', maxLength: 40 }),
);
const amount = fc.constantFrom(
  '1/16 cup ',
  '1/2 cup ',
  '1 cup ',
  '3 cups ',
  '1 tsp ',
  '40 cups ',
  '3 oz ',
  '250 g ',
  '1 medium ',
  '2 slices ',
  '',
);
const fact = fc.oneof(
  {
    weight: 5,
    arbitrary: fc.constantFrom('', '', ' ; counts = protein', ' ; counts = grain', ' ; volume = 1/2 cup'),
  },
  hostile.map((words) => ` ; ${words}`),
);
const food = fc.tuple(amount, fc.constantFrom(...foods.names), fact).map((words) => words.join(''));
const beside = fc
  .tuple(fc.constantFrom('drink', 'fat', 'calcium'), fc.oneof(food, hostile))
  .map((words) => words.join(' = '));
const row = fc.oneof(
  { weight: 8, arbitrary: food },
  { weight: 1, arbitrary: beside },
  { weight: 1, arbitrary: hostile },
);
const anyMap = fc
  .record({
    dish: fc.constantFrom(...DISH_FORMS),
    serves: fc.constantFrom('1', '4', '60'),
    rows: fc.array(row, { maxLength: 8 }),
  })
  .map(({ rows, ...attributes }) => part('plate-map', { id: 'x', ...attributes }, rows));

/** Foods that lie on a dish and have a cup, so that most of these are whole dishes. */
const laid = foods.names.filter((name) => {
  const found = foods.find(name);
  return (
    'plate' in found &&
    found.plate.some((kind) => kind !== 'drink' && kind !== 'fat') &&
    found.measures.some((one) => one.name === 'cup')
  );
});
const good = fc
  .record({
    dish: fc.constantFrom(...DISH_FORMS),
    serves: fc.constantFrom('1', '2', '6'),
    rows: fc.uniqueArray(fc.constantFrom(...laid), { minLength: 1, maxLength: 9 }).chain((names) =>
      fc.tuple(
        ...names.map((name) =>
          fc
            .tuple(
              fc.constantFrom('1/8 cup', '1/2 cup', '1 cup', '2 1/2 cups'),
              fc.constantFrom('protein', 'grain'),
            )
            .map(([cups, counts]) => {
              const found = foods.find(name);
              const two =
                'plate' in found &&
                found.plate.includes('protein') &&
                found.plate.includes('grain or starch');
              return `${cups} ${name}${two ? ` ; counts = ${counts}` : ''}`;
            }),
        ),
      ),
    ),
  })
  .map(({ rows, ...attributes }) => part('plate-map', { id: 'x', ...attributes }, rows));

/** Where figures are drawn too, which takes its time. */
const DRAWN = ['handout short', 'handout plain', 'slide plain'];

/** A problem or a whole page: twelve counters, figures that can be drawn, and a blank that tells nothing. */
function check(written: ReturnType<typeof part>): boolean {
  const report = createReport();
  const computed = computeParts([written], report);
  const done = computed.entries[0]?.computed !== undefined;
  if (!done) expect(report.problems.length).toBeGreaterThan(0);
  for (const problem of report.problems) {
    expect(problem.place).toBeDefined();
    expect(problem.message.length + (problem.hint?.length ?? 0)).toBeLessThan(700);
    expect(problem.message).not.toMatch(/undefined|NaN|\[object/);
  }
  if (!done) return false;
  const parts = computed.numbers.all.filter(({ id }) =>
    /^x\.(vegetables-and-fruit|protein|grain-or-starch)\.parts$/.test(id),
  );
  expect(parts.reduce((so, { value }) => so + (value ?? 0), 0)).toBe(DISH_PARTS);
  for (const number of computed.numbers.all)
    if (number.value !== null)
      expect(Math.abs(evaluate(number) - number.value)).toBeLessThanOrEqual(
        1e-9 * Math.max(1, Math.abs(number.value)),
      );
  for (const { where, level } of AUDIENCES) {
    const view = viewOf(computed, written, where, level);
    if (!view) throw new Error('no view');
    for (const { text, path } of stringsIn(view))
      expect(text, path).not.toMatch(/undefined|NaN|\[object|\{[a-z-]+\}/);
    for (const figure of figuresOf(view)) {
      expect(figure.alternative.label.length).toBeLessThanOrEqual(120);
      if (figure.kind !== 'dish') continue;
      if (where === 'worksheet') {
        expect(figure.foods).toEqual([]);
        expect(figure.kinds.map((kind) => kind.parts)).toEqual([0, 0, 0]);
        expect(
          stringsIn(view)
            .map(({ text }) => text)
            .join(' '),
        ).not.toMatch(/\d of 12|counters, twelve in all|%/);
      } else expect(figure.foods.reduce((so, one) => so + one.parts, 0)).toBe(DISH_PARTS);
      if (!DRAWN.includes(`${where} ${level}`)) continue;
      const options =
        where === 'slide'
          ? screen({ picture })
          : paper({ picture, level: level === 'staff' ? 'fuller' : level });
      for (const { code } of draw(figure, options).problems) expect(code).toBe('figures/does-not-fit');
    }
  }
  return true;
}

describe('whatever an author writes', () => {
  it('there is a page or a problem', () => {
    fc.assert(
      fc.property(anyMap, (written) => void check(written)),
      { numRuns: 70 },
    );
  });

  it('dishes of real foods hold together, and nothing lies on anything', () => {
    let shown = 0;
    fc.assert(
      fc.property(good, (written) => void (check(written) && shown++)),
      { numRuns: 16 },
    );
    expect(shown).toBeGreaterThan(10);
  });
});
