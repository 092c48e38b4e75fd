import fc from 'fast-check';
import { expect, it } from 'vitest';
import { createReport } from '../../../src/diagnostics/index.js';
import { draw } from '../../../src/figures/index.js';
import { NEED_NAMES, passesAll } from '../../../src/nutrition/index.js';
import { picture } from '../../figures/dish/samples.js';
import { paper, screen } from '../../figures/samples.js';
import { AUDIENCES, computeParts, foods, viewOf } from '../desk.js';
import { part } from '../parts.js';
import { figuresOf, stringsIn } from '../strings.js';

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
const amount = fc.constantFrom('1 cup ', '1/2 cup ', '3 oz ', '100 g ', '', '1e309 cup ', '-1 cup ', '0 g ');
const name = fc.constantFrom(...foods.names);
const fact = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.constantFrom('', ' ; job = pouring', ' ; job = calcium, protein', ' ; use = soup'),
  },
  hostile.map((words) => ` ; job = ${words}`),
  name.map((food) => ` ; trap = ${food}`),
);
const row = fc
  .tuple(amount, name, amount, name, fact)
  .map(([a, old, b, fresh, more]) => `${a}${old} -> ${b}${fresh}${more}`);
const written = fc.record({
  needs: fc.uniqueArray(fc.constantFrom(...NEED_NAMES), { maxLength: 2 }),
  basis: fc.constantFrom('100 g', '1 cup', '1 tbsp', 'much'),
  rows: fc.array(fc.oneof({ weight: 8, arbitrary: row }, { weight: 1, arbitrary: hostile }), {
    maxLength: 3,
  }),
});

interface Written {
  readonly needs: readonly (typeof NEED_NAMES)[number][];
  readonly basis: string;
  readonly rows: readonly string[];
}

/** A board whose new foods pass every need in force, or a problem at a place. */
function check({ needs, basis, rows }: Written): boolean {
  const report = createReport();
  const one = part(
    'swap-board',
    { id: 'x', ...(needs.length > 0 ? { need: needs.join(',') } : {}), basis },
    rows,
  );
  const computed = computeParts([one], report);
  const done = computed.entries[0]?.computed;
  if (!done) expect(report.problems.length).toBeGreaterThan(0);
  for (const problem of report.problems) {
    expect(problem.place).toBeDefined();
    expect(problem.message.length + (problem.hint?.length ?? 0)).toBeLessThan(900);
    expect(problem.message).not.toMatch(/undefined|NaN|\[object/);
  }
  if (!done) return false;
  for (const { food, side } of done.facts.foods) {
    if (side !== 'new') continue;
    // Nothing that breaks a need or may break it is ever let through; a labeled condition is printed.
    if (!passesAll(food, needs, { coconut: 'not said' }))
      expect(JSON.stringify(done)).toContain(`${food.name}: only if`);
  }
  for (const { where, level } of AUDIENCES) {
    const view = viewOf(computed, one, where, level);
    if (!view) throw new Error('no view');
    const strings = stringsIn(view).map(({ text }) => text);
    for (const text of strings) expect(text).not.toMatch(/undefined|NaN|\[object|\{[a-z-]+\}/);
    if (where === 'worksheet') expect(figuresOf(view)).toEqual([]);
    for (const figure of figuresOf(view)) {
      const options =
        where === 'slide'
          ? screen({ picture })
          : paper({ picture, level: level === 'staff' ? 'fuller' : level });
      for (const { code } of draw(figure, options).problems)
        expect(['figures/does-not-fit', 'figures/too-high', 'text/no-glyph']).toContain(code);
    }
  }
  return true;
}

it('whatever an author writes, there is a board or a problem', () => {
  fc.assert(
    fc.property(written, (one) => void check(one)),
    { numRuns: 80 },
  );
});

it('boards of any two foods hold together', () => {
  let shown = 0;
  const pairs = fc.uniqueArray(name, { minLength: 2, maxLength: 6 }).map((names) => ({
    needs: [],
    basis: '100 g',
    rows: names
      .slice(0, names.length - (names.length % 2))
      .flatMap((old, i) => (i % 2 === 0 ? [`${old} -> ${names[i + 1]}`] : [])),
  }));
  fc.assert(
    fc.property(pairs, (one) => void (check(one) && shown++)),
    { numRuns: 60 },
  );
  expect(shown).toBeGreaterThan(10);
});
