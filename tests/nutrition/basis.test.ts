import { describe, expect, it } from 'vitest';
import {
  type Food,
  formsOnBasis,
  inWords,
  parseBasis,
  portionOnBasis,
  valueOnBasis,
} from '../../src/nutrition/index.js';
import { evaluate } from './evaluate.js';
import { refusalOf, valueIn } from './expect-result.js';
import { food, PINTO } from './foods.js';

const basis = (text: string) => valueIn(parseBasis(text));

describe('reading a basis', () => {
  it.each([
    ['1 cup, ready to eat', 'volume', 'ready to eat'],
    ['1/2 cup', 'volume', 'not said'],
    [' 1/2 cup, with liquid ', 'volume', 'with liquid'],
    ['1/2 cup (130 g), with liquid', 'volume', 'with liquid'],
    ['½ cup drained', 'volume', 'drained'],
    ['1/2 cup, drained  and rinsed', 'volume', 'drained and rinsed'],
    ['1/2 cup, Rinsed', 'volume', 'drained and rinsed'],
    ['100 g', 'weight', 'not said'],
    ['3 oz, cooked', 'weight', 'cooked'],
    ['1 can (15 oz)', 'package', 'not said'],
    ['1 can', 'package', 'not said'],
    ['1 large jar, drained', 'package', 'drained'],
    ['1 can (15 oz), undrained', 'package', 'with liquid'],
    ['1 medium, raw', 'piece', 'raw'],
    ['1 lb, dry', 'weight', 'dry'],
  ] as const)('%s', (text, per, state) => {
    const read = basis(text);
    expect([read.per, read.state, read.words]).toEqual([per, state, text.trim()]);
  });

  it.each([
    ['', 'no measure'],
    ['cup', 'no measure'],
    ['2', 'no measure'],
    ['1 cup pinto beans', '"pinto beans", which is no state'],
    ['0 cups', 'zero'],
  ])('refuses "%s"', (text, reason) => {
    expect(refusalOf(parseBasis(text)).reason).toContain(reason);
  });

  it('offers the state that was meant', () => {
    expect(refusalOf(parseBasis('1 cup, ready to eta')).near).toEqual(['ready to eat']);
    expect(refusalOf(parseBasis('1 cup, draned')).near).toEqual(['drained']);
  });
});

describe('lists in messages', () => {
  it('read like a sentence', () => {
    expect([inWords([]), inWords(['a']), inWords(['a', 'b']), inWords(['a', 'b', 'c'])]).toEqual([
      '',
      'a',
      'a and b',
      'a, b and c',
    ]);
  });
});

// Source: USDA SR28, records 16043, 16044, 16146 and 16345.
describe('forms of pinto beans on one basis', () => {
  const sodium = (one: Food, text: string) =>
    valueIn(valueOnBasis(one, 'sodium', basis(text))).worked.quantity.value ?? Number.NaN;

  it.each([
    ['1 cup', PINTO.boiled, 1.71],
    ['1 cup', PINTO.withLiquid, 643.2],
    ['1 cup', PINTO.rinsed, 358.28],
    ['100 g', PINTO.drained, 239],
    ['1 can (15.5 oz)', PINTO.withLiquid, 1184.56],
    ['1 can (15.5 oz)', PINTO.drained, 662.03],
    ['1 can (15.5 oz)', PINTO.rinsed, 546.96],
  ] as const)('%s', (text, one, value) => {
    const { worked } = valueIn(valueOnBasis(one, 'sodium', basis(text)));
    expect(worked.quantity.value).toBeCloseTo(value, 6);
    expect(evaluate(worked.working)).toBeCloseTo(value, 6);
  });

  it('answers a different question per cup, per weight and per can', () => {
    // From the records by hand: 44% less per cup, about 20% less per 100 g, 54% less per can.
    const fall = (text: string) => 1 - sodium(PINTO.rinsed, text) / sodium(PINTO.withLiquid, text);
    expect(fall('1 cup')).toBeCloseTo(0.443, 3);
    expect(fall('100 g')).toBeCloseTo(0.209, 3);
    expect(fall('1 can (15.5 oz)')).toBeCloseTo(0.538, 3);
  });

  it('never calls a canned food with its liquid ready to eat', () => {
    const refusal = refusalOf(valueOnBasis(PINTO.withLiquid, 'sodium', basis('1 cup, ready to eat')));
    expect(refusal.reason).toBe(
      'pinto beans, canned, with liquid is "canned, with liquid" and the basis is "ready to eat".',
    );
    expect(refusal.hint).toContain('is not what is eaten');
  });

  it('keeps every row, in order, with its reason when it cannot stand there', () => {
    const rows = formsOnBasis(
      [PINTO.boiled, PINTO.withLiquid, PINTO.drained, PINTO.rinsed],
      'sodium',
      basis('1 cup, ready to eat'),
    );
    expect(rows.map((row) => [row.food.form, row.labelRow, row.value.ok])).toEqual([
      ['dried, cooked', false, true],
      ['canned, with liquid', true, false],
      ['canned, drained', false, false],
      ['canned, drained and rinsed', false, true],
    ]);
    const third = rows[2]?.value;
    expect(third && !third.ok && third.reason).toBe(
      'The weight of one cup of pinto beans, canned, drained is not known.',
    );
  });

  it('sees that all rows mean the same can when the basis gives no size', () => {
    const small = food({
      name: 'pinto beans, small can',
      state: 'canned, drained',
      measures: [{ name: 'can (8 oz)', grams: 140, source: 'test' }],
    });
    const rows = (text: string) =>
      formsOnBasis([PINTO.boiled, PINTO.drained, small, PINTO.rinsed], 'sodium', basis(text)).map(
        (row) => row.value,
      );
    expect(rows('1 can').map((value) => value.ok)).toEqual([false, true, false, true]);
    expect(refusalOf(rows('1 can')[2] ?? refusalOf(parseBasis(''))).reason).toBe(
      'pinto beans, small can is weighed by the can (8 oz) and the rows before it by the can (15.5 oz).',
    );
    expect(rows('1 can (8 oz)').map((value) => value.ok)).toEqual([false, false, true, false]);
  });

  it('keeps what is not known not known', () => {
    const fiber = valueIn(valueOnBasis(PINTO.rinsed, 'fiber', basis('1 cup, ready to eat')));
    expect(fiber.worked.quantity).toEqual({ value: null, unit: 'g', atLeast: false });
    expect(fiber.portion.grams.value).toBe(169);
  });
});

describe('the state of a basis', () => {
  const at = (state: Food['state'], text: string, contains: Food['contains'] | object = {}) =>
    portionOnBasis(food({ name: 'it', state, contains }), basis(text)).ok;

  it.each([
    [
      'ready to eat',
      ['ready to eat', 'raw', 'cooked', 'frozen, cooked', 'canned, drained', 'canned, drained and rinsed'],
    ],
    ['with liquid', ['canned, with liquid']],
    ['drained', ['canned, drained']],
    ['drained and rinsed', ['canned, drained and rinsed']],
    ['raw', ['raw']],
    ['dry', ['dry']],
    ['cooked', ['cooked', 'frozen, cooked']],
  ] as const)('%s', (state, fits) => {
    const all: readonly Food['state'][] = [
      'raw',
      'dry',
      'cooked',
      'canned, with liquid',
      'canned, drained',
      'canned, drained and rinsed',
      'frozen, unprepared',
      'frozen, cooked',
      'ready to eat',
    ];
    expect(all.filter((one) => at(one, `100 g, ${state}`)).sort()).toEqual([...fits].sort());
    expect(all.every((one) => at(one, '100 g'))).toBe(true);
  });

  it('does not serve raw meat, fish or egg, nor what may be', () => {
    expect(at('raw', '100 g, ready to eat', { egg: 'yes' })).toBe(false);
    const refusal = refusalOf(
      portionOnBasis(
        food({ name: 'it', state: 'raw', contains: { fish: 'unknown' } }),
        basis('100 g, ready to eat'),
      ),
    );
    expect(refusal.reason).toContain('may have fish in it, which is not known');
    expect(
      refusalOf(
        portionOnBasis(
          food({ name: 'it', state: 'raw', contains: { meat: 'yes' } }),
          basis('100 g, ready to eat'),
        ),
      ).reason,
    ).toContain('has meat in it');
    expect(at('raw', '100 g, raw', { meat: 'yes' })).toBe(true);
    expect(at('raw', '100 g, ready to eat', { milk: 'unknown' })).toBe(true);
  });
});
