import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createReport } from '../../src/diagnostics/index.js';
import { TOPICS } from '../../src/directives/safe-food/schema.js';
import type { ShownNumber } from '../../src/document/index.js';
import { NUTRIENTS } from '../../src/nutrition/index.js';
import { evaluate, evaluateParts } from '../nutrition/evaluate.js';
import { AUDIENCES, computeParts, foods, viewOf } from './desk.js';
import { part } from './parts.js';
import { blocksOf, figuresOf } from './strings.js';

const hostile = fc.oneof(
  fc.constantFrom(
    '',
    ' ',
    ';',
    '=',
    '; = ;',
    '{food}',
    '{basis} {x}',
    '__proto__',
    'constructor',
    'toString',
    '<script>',
    '$&',
    '\u0000\u0001',
    '\u202e dlo',
    'A'.repeat(3000),
    '1e309 cup',
    '-1 cup',
    '0/0 cup',
    '99999999999999999999 cups, ready to eat',
    '𝔘𝔫',
    '\ud800',
    'no number mg',
  ),
  fc.string({ unit: 'grapheme', maxLength: 30 }),
);
const mostly = (good: fc.Arbitrary<string>) =>
  fc.oneof({ weight: 6, arbitrary: good }, { weight: 1, arbitrary: hostile });

const kind = fc.constantFrom(...foods.kinds);
const name = fc.constantFrom(...foods.names);
const nutrient = fc.constantFrom(...Object.keys(NUTRIENTS));
const basis = mostly(
  fc
    .tuple(
      fc.constantFrom(
        '1 cup',
        '1/2 cup',
        '100 g',
        '3 oz',
        '1 can',
        '1 can (15 oz)',
        '1 tbsp',
        '250 mL',
        '2 medium',
      ),
      fc.constantFrom('', ', ready to eat', ', with liquid', ', drained', ', cooked', ', dry', ', raw'),
    )
    .map((words) => words.join('')),
);
const show = mostly(
  fc.uniqueArray(nutrient, { minLength: 1, maxLength: 7 }).map((names) => names.join('; ')),
);
const tail = fc.oneof(
  { weight: 5, arbitrary: fc.constant('') },
  hostile.map((words) => ` ; choose = ${words}`),
  hostile.map((words) => ` ; ${words}`),
  fc.tuple(hostile, hostile).map(([a, b]) => ` ; from = ${a} ; word = ${b}`),
);

const compare = kind.chain((food) =>
  fc
    .record({
      food: mostly(fc.constant(food)),
      basis,
      show,
      rows: fc.array(
        fc
          .tuple(mostly(fc.constantFrom(...foods.forms(food).map((form) => form.form))), tail)
          .map((words) => words.join('')),
        { maxLength: 5 },
      ),
    })
    .map(({ rows, ...attributes }) => part('form-compare', { id: 'x', ...attributes }, rows)),
);

const label = mostly(
  fc
    .oneof(fc.integer({ min: 0, max: 6000 }), fc.double({ min: 0.01, max: 3000, noNaN: true }))
    .map((mg) => `${mg} mg`),
);
const rinse = fc
  .record({
    food: mostly(
      fc.oneof(
        name,
        kind,
        kind.map((k) => `${k}, canned`),
      ),
    ),
    'label-sodium': label,
    'label-basis': mostly(
      fc.constantFrom('1/2 cup, with liquid', '130 g, with liquid', '1/2 cup', '1 cup, drained'),
    ),
    treatment: mostly(fc.constantFrom('drained', 'drained and rinsed')),
    'no-salt-added': mostly(fc.constantFrom('yes', 'no')),
  })
  .map((attributes) => part('rinse-drop', { id: 'x', ...attributes }));

const cost = fc
  .record({
    foods: mostly(fc.array(mostly(name), { minLength: 1, maxLength: 5 }).map((names) => names.join('; '))),
    shop: mostly(fc.constantFrom('ferry-hill-grocery', 'hilltop-corner-shop', 'tuesday-wharf-market')),
    sort: mostly(fc.constantFrom('cost', 'written')),
    handout: mostly(fc.constantFrom('ladder', 'line')),
  })
  .map((attributes) => part('cup-cost', { id: 'x', ...attributes }));

const option = fc
  .tuple(mostly(name), mostly(fc.constant('so it is')))
  .map(([food, why]) => `${food} ; why = ${why}`);
const rule = mostly(
  fc.tuple(fc.constantFrom('min', 'max'), nutrient).map(([find, what]) => `answer = ${find}(${what})`),
);
const quiz = fc
  .record({
    basis,
    seed: mostly(fc.integer({ min: 0, max: 999_999 }).map(String)),
    questions: fc.array(
      fc.tuple(
        mostly(fc.constantFrom('Q: Which one?', 'Q: Which has the least?', 'Q: Which has the most?')),
        fc
          .array(fc.oneof({ weight: 4, arbitrary: option }, rule), { maxLength: 5 })
          .chain((rows) => rule.map((r) => [...rows, r])),
      ),
      { maxLength: 3 },
    ),
  })
  .map(({ basis: words, seed, questions }) => part('quiz', { id: 'x', basis: words, seed }, questions));

const guide = fc
  .record({
    foods: mostly(
      fc
        .array(
          fc.tuple(fc.constantFrom('', '', '1/2 cup ', '3 oz ', '2 tbsp ', '1 1/3 cups '), mostly(name)),
          {
            minLength: 1,
            maxLength: 2,
          },
        )
        .map((rows) => rows.map((row) => row.join('')).join('; ')),
    ),
    measures: mostly(fc.constantFrom('cup; spoon; gram', 'cup', 'spoon', 'gram', 'hand; cup; spoon')),
    'locale-cup': mostly(fc.constantFrom('auto', '240 mL', '250 mL', '200 mL')),
  })
  .map((attributes) => part('portion-guide', { id: 'x', ...attributes }));

const safe = fc
  .record({
    topics: mostly(
      fc.uniqueArray(fc.constantFrom(...TOPICS), { minLength: 1 }).map((topics) => topics.join(', ')),
    ),
    units: mostly(fc.constantFrom('auto', 'F', 'C')),
    tasting: mostly(fc.constantFrom('yes', 'no')),
  })
  .map((attributes) => part('safe-food', { id: 'x', ...attributes }));

const step = fc
  .tuple(
    mostly(fc.constantFrom('Jan', 'Feb', 'March', 'Apr', 'june', 'Dec')),
    mostly(
      fc.constantFrom(
        'swap one sweet drink a day for water',
        'eat two of them twice a week',
        'rinse and drain cans',
        'fast for 16 hours',
        'use a salt substitute',
      ),
    ),
    fc.oneof(
      fc.constant(''),
      fc
        .tuple(
          fc.constantFrom('less', 'more'),
          fc.constantFrom('', '1 cup ', '3 oz ', '2 tbsp ', '12 fl oz ', '1 medium ', '2 '),
          mostly(name),
        )
        .map(([way, amount, food]) => ` ; ${way} = ${amount}${food}`),
      hostile.map((words) => ` ; ${words}`),
      hostile.map((words) => ` ; rinse = @${words}`),
    ),
    fc.oneof(
      fc.constant(''),
      mostly(fc.constantFrom('7 a week', '2 a day')).map((one) => ` ; times = ${one}`),
    ),
    fc.oneof(
      fc.constant(''),
      mostly(fc.constantFrom('sodium', 'fiber')).map((one) => ` ; tells = ${one}`),
    ),
  )
  .map(([month, action, ...facts]) => `${month}: ${action}${facts.join('')}`);
const plan = fc
  .record({
    start: mostly(fc.constantFrom('2027-01', '2026-11')),
    months: mostly(fc.integer({ min: 0, max: 14 }).map(String)),
    rows: fc.array(step, { maxLength: 6 }),
  })
  .map(({ rows, ...attributes }) => part('step-plan', { id: 'x', ...attributes }, rows));

const person = fc
  .tuple(
    fc.constantFrom('woman', 'man', 'adult', 'you'),
    fc.integer({ min: 15, max: 90 }),
    fc.oneof(
      fc.integer({ min: 140, max: 210 }).map((cm) => `${cm} cm`),
      fc.integer({ min: 0, max: 11 }).map((inches) => `5 ft ${inches} in`),
    ),
    fc.oneof(
      fc.integer({ min: 40, max: 200 }).map((kg) => `${kg} kg`),
      fc.integer({ min: 90, max: 440 }).map((lb) => `${lb} lb`),
    ),
    fc.constantFrom('', ', mostly sitting', ', some walking', ', pregnant'),
  )
  .map(([who, age, height, weight, more]) => `${who}, ${age}, ${height}, ${weight}${more}`);
const change = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 1, max: 9 })), {
    minLength: 1,
    maxLength: 4,
  })
  .map((steps) => {
    let [kcal, month] = [0, 1];
    return steps
      .map(([more, later], index) => {
        kcal += more;
        if (index > 0) month += later;
        return `${kcal} kcal a day${index === 0 ? '' : ` from month ${month}`}`;
      })
      .join('; ');
  });
const pace = fc
  .record({
    example: mostly(person),
    change: mostly(change),
    months: mostly(fc.integer({ min: 1, max: 36 }).map(String)),
    seed: mostly(fc.integer({ min: 0, max: 9 }).map(String)),
  })
  .map((attributes) => part('pace-chart', { id: 'x', show: 'band', ...attributes }));
const eased = fc
  .record({
    example: mostly(person),
    'to-lose': mostly(
      fc.tuple(fc.integer({ min: 1, max: 200 }), fc.constantFrom('lb', 'kg')).map((p) => p.join(' ')),
    ),
  })
  .map((attributes) => part('pace-chart', { id: 'x', show: 'pace', ...attributes }));

const write = fc
  .record({ label: hostile, lines: mostly(fc.integer({ min: -3, max: 30 }).map(String)) })
  .map((attributes) => part('write', attributes));

const amount = fc.constantFrom('1 cup', '1/2 cup', '100 g', '3 oz', '2 tbsp', '1 medium', '1', '');
const eaten = mostly(fc.tuple(amount, name).map((words) => words.join(' ').trim()));
const meal = mostly(
  fc
    .tuple(
      fc.constantFrom('breakfast', 'lunch', 'supper'),
      fc.array(eaten, { minLength: 1, maxLength: 2 }),
      fc.oneof(
        { weight: 4, arbitrary: fc.constant('') },
        mostly(fc.constant('14 g')).map((g) => ` ; alcohol = ${g}`),
      ),
    )
    .map(([when, foodsOf, alcohol]) => `${when}: ${foodsOf.join(' ; ')}${alcohol}`),
);
const energy = fc
  .record({
    show: mostly(fc.constantFrom('carbohydrate,protein,fat', 'fat', 'protein; alcohol')),
    beside: mostly(fc.constantFrom('usual range', 'nothing')),
    of: mostly(fc.constantFrom('day', 'meal')),
    as: mostly(fc.constantFrom('example', 'plan', 'what is missing')),
    person: mostly(fc.constantFrom('adult', 'man')),
    rows: fc.array(meal, { maxLength: 2 }),
  })
  .map(({ rows, ...attributes }) => part('energy-split', { id: 'x', ...attributes }, rows));

const move = fc
  .tuple(
    mostly(fc.constantFrom('walk', 'chair dance', 'run')),
    mostly(fc.integer({ min: -5, max: 300 }).map(String)),
    mostly(fc.constantFrom('moderate', 'vigorous', 'light', 'strength', 'balance seated')),
  )
  .map(([what, minutes, how]) => `${what} = ${minutes} min ${how}`);
const moves = fc
  .record({
    for: mostly(fc.constantFrom('adult', 'older-adult')),
    rows: fc.array(
      mostly(
        fc
          .tuple(fc.constantFrom('Mon', 'Tuesday', 'sat'), fc.array(move, { minLength: 1, maxLength: 3 }))
          .map(([day, all]) => `${day}: ${all.join(' ; ')}`),
      ),
      { maxLength: 4 },
    ),
  })
  .map(({ rows, ...attributes }) => part('week-of-moves', { id: 'x', ...attributes }, rows));

/** Real figures come out of chance often enough to make the rest mean something. */
const good = kind
  .filter((food) => foods.forms(food).length >= 2)
  .chain((food) =>
    fc
      .record({
        rows: fc.shuffledSubarray(
          foods.forms(food).map((form) => form.form),
          { minLength: 2, maxLength: Math.min(4, foods.forms(food).length) },
        ),
        show: fc.uniqueArray(nutrient, { minLength: 1, maxLength: 6 }).map((names) => names.join('; ')),
        basis: fc.constantFrom('100 g', '1/2 cup', '2 oz'),
      })
      .map(({ rows, ...attributes }) => part('form-compare', { id: 'x', food, ...attributes }, rows)),
  );
const beans = fc
  .record({
    food: fc.constantFrom('black beans, canned', 'corn, canned', 'green peas', 'chickpeas, canned, drained'),
    'label-sodium': fc.integer({ min: 1, max: 5000 }).map((mg) => `${mg} mg`),
    treatment: fc.constantFrom('drained', 'drained and rinsed'),
  })
  .map((attributes) => part('rinse-drop', { id: 'x', ...attributes, 'label-basis': '1/2 cup, with liquid' }));

/** The written formula, worked out by code that shares nothing with the core, gives the value. */
function holdsFormula(number: ShownNumber): void {
  const near = (a: number | undefined, b: number | undefined) =>
    expect(Math.abs((a ?? Number.NaN) - (b ?? Number.NaN))).toBeLessThanOrEqual(
      1e-9 * Math.max(1, Math.abs(b ?? 0)),
    );
  if (number.low !== undefined) {
    const parts = evaluateParts(number);
    near(parts.low, number.low);
    near(parts.high, number.high);
    expect(number.low).toBeLessThanOrEqual(number.high ?? Number.NaN);
  } else if (number.value === null) expect(evaluate(number)).toBeNaN();
  else near(evaluate(number), number.value);
}

function check(written: ReturnType<typeof part>): boolean {
  const report = createReport();
  const computed = computeParts([written], report);
  const done = computed.entries[0]?.computed !== undefined;
  // What is not shown has been explained, at a place, in words of some length and no more.
  // Values that are empty are told by the reading of the lesson, which has no part in this.
  const empty = [...written.attributes.values()].some(({ value }) => value.trim() === '');
  if (!done && !empty) expect(report.problems.length).toBeGreaterThan(0);
  for (const problem of report.problems) {
    expect(problem.place).toBeDefined();
    expect(problem.message.length + (problem.hint?.length ?? 0)).toBeLessThan(700);
    expect(problem.message).not.toMatch(/undefined|NaN|\[object/);
  }
  for (const number of computed.numbers.all) holdsFormula(number);
  for (const { where, level } of AUDIENCES) {
    const view = viewOf(computed, written, where, level);
    // What is refused says why on the draft, in its place.
    expect(view !== undefined).toBe(done || computed.entries[0]?.refused !== undefined);
    if (!view || !done) continue;
    for (const figure of figuresOf(view)) {
      expect(figure.alternative.label.length).toBeLessThanOrEqual(120);
      if (figure.kind === 'dot-lanes')
        for (const dot of figure.lanes.flatMap((lane) => lane.dots)) {
          const number = computed.numbers.get(dot.number);
          expect(dot.text).toBe(number?.text);
          expect(dot.value).toBe(number?.value);
        }
      else if (figure.kind === 'share-rows') {
        for (const row of figure.rows) {
          const blank = where === 'worksheet';
          expect(row.share).toBe(blank ? null : computed.numbers.get(row.number)?.value);
          if (!blank) expect(row.text).toBe(computed.numbers.get(row.number)?.text);
        }
      } else if (figure.kind === 'step-tiles') {
        for (const { text, number } of figure.tiles.flatMap(({ effect }) => effect))
          if (number !== undefined) expect(text).toBe(computed.numbers.get(number)?.text);
        expect(figure.tiles.some(({ action }) => action === '')).toBe(where === 'worksheet');
      } else if (figure.kind === 'week-bricks') {
        const total = figure.days.reduce((sum, { moderate, vigorous }) => sum + moderate + vigorous, 0);
        expect(total).toBeCloseTo(
          where === 'worksheet' ? 0 : Number(computed.numbers.get('x.total')?.value),
          9,
        );
        expect(figure.sum.moderate + figure.sum.vigorous).toBeCloseTo(total, 9);
      } else if (figure.kind === 'measure-row') {
        for (const pour of figure.vessels.flatMap((vessel) => vessel.pours)) {
          expect(pour.amount).toBe(computed.numbers.get(pour.number)?.text);
          expect(pour.share).toBeGreaterThan(0);
          expect(pour.share).toBeLessThanOrEqual(1);
        }
      } else if (figure.kind === 'brick-rows') {
        for (const row of figure.rows) {
          expect(row.sure).toBeGreaterThanOrEqual(0);
          expect(row.sure).toBeLessThanOrEqual(row.possible);
          expect(row.possible).toBeLessThanOrEqual(row.total);
        }
        expect(figure.rows[0]?.total ?? 0).toBeLessThanOrEqual(25 * figure.worth);
        if (where !== 'worksheet') {
          const after = computed.numbers.get('x.after');
          expect([figure.rows[1]?.sure, figure.rows[1]?.possible]).toEqual([after?.low, after?.high]);
        }
      }
    }
    for (const block of blocksOf(view)) {
      if (block.kind !== 'question') continue;
      const rights = block.choices.filter((choice) => choice.key?.right);
      const answered = where === 'key' || block.choices.some((choice) => choice.key);
      expect(rights).toHaveLength(answered ? 1 : 0);
      for (const { key } of block.choices)
        if (key?.number !== undefined) expect(key.value).toBe(computed.numbers.get(key.number)?.text);
    }
  }
  return done;
}

describe('whatever an author writes', () => {
  it.each([
    ['form-compare', compare],
    ['rinse-drop', rinse],
    ['cup-cost', cost],
    ['quiz', quiz],
    ['portion-guide', guide],
    ['safe-food', safe],
    ['write', write],
    ['energy-split', energy],
    ['step-plan', plan],
    ['week-of-moves', moves],
    ['pace-chart, band', pace],
    ['pace-chart, pace', eased],
  ])('%s gives a view or problems, and never throws', (_, any) => {
    fc.assert(
      fc.property(any, (written) => void check(written)),
      { numRuns: 250 },
    );
  });

  it('figures of real foods hold together', () => {
    let shown = 0;
    fc.assert(
      fc.property(good, (written) => void (check(written) && shown++)),
      { numRuns: 150 },
    );
    expect(shown).toBeGreaterThan(20);
  });

  it('brick rows of any label hold together', () => {
    fc.assert(
      fc.property(beans, (written) => check(written)),
      { numRuns: 150 },
    );
  });
});

describe('numbers', () => {
  it('grow with the basis', () => {
    const forms = fc.constantFrom('black beans', 'chickpeas', 'corn', 'carrots');
    fc.assert(
      fc.property(forms, fc.integer({ min: 1, max: 900 }), (food, grams) => {
        const value = (words: string) => {
          const rows = foods
            .forms(food)
            .slice(0, 3)
            .map((form) => form.form);
          const { numbers } = computeParts(
            [part('form-compare', { id: 'x', food, basis: words, show: 'sodium' }, rows)],
            createReport(),
          );
          return numbers.all.map((number) => number.value);
        };
        const [one, two] = [value(`${grams} g`), value(`${2 * grams} g`)];
        expect(one.length).toBeGreaterThan(0);
        one.forEach((v, i) => {
          if (v === null) expect(two[i]).toBeNull();
          else expect(two[i]).toBeCloseTo(2 * v, 6);
        });
      }),
      { numRuns: 60 },
    );
  });
});
