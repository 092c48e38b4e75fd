import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  measureName,
  parseAmount,
  type WrittenAmount,
  writeAmount,
  writeCount,
} from '../../src/nutrition/index.js';
import { MEASURE_WORDS, PACKAGES, SIZE_WORDS, UNIT_WORDS } from '../../src/nutrition/measure-words.js';
import { refusalOf, valueIn } from './expect-result.js';

const read = (text: string) => {
  const { amount, rest } = valueIn(parseAmount(text));
  return [amount === null ? null : writeAmount(amount), rest];
};

describe('amounts as recipes write them', () => {
  it.each([
    // Text, the amount written plainly, the food. How recipes write is common practice, no source.
    ['1 1/2 cups brown rice, cooked', '1 1/2 cups', 'brown rice, cooked'],
    ['½ cup pinto beans', '1/2 cup', 'pinto beans'],
    ['1½ cups milk', '1 1/2 cups', 'milk'],
    ['1 ½ cups milk', '1 1/2 cups', 'milk'],
    ['1-1/2 cups milk', '1 1/2 cups', 'milk'],
    ['1⁄3 cup milk', '1/3 cup', 'milk'],
    ['2⅔ cups milk', '2 2/3 cups', 'milk'],
    ['3 oz salmon, baked', '3 oz', 'salmon, baked'],
    ['3oz salmon', '3 oz', 'salmon'],
    ['3 oz. salmon', '3 oz', 'salmon'],
    ['1.5 lb beef', '1 1/2 lb', 'beef'],
    ['.5 lbs beef', '1/2 lb', 'beef'],
    ['12 fl oz cola (local label)', '12 fl oz', 'cola (local label)'],
    ['12 fl. oz. cola', '12 fl oz', 'cola'],
    ['8 fluid ounces milk', '8 fl oz', 'milk'],
    ['2 Tablespoons oil', '2 tbsp', 'oil'],
    ['1 TSP salt', '1 tsp', 'salt'],
    ['250 ml milk', '250 mL', 'milk'],
    ['1 litre milk', '1 L', 'milk'],
    ['100 g', '100 g', ''],
    ['100g', '100 g', ''],
    ['460 mg', '460 mg', ''],
    ['20 mcg', '20 µg', ''],
    ['2 medium onions', '2 medium', 'onions'],
    ['1 medium orange', '1 medium', 'orange'],
    ['1 med. orange', '1 medium', 'orange'],
    ['2 extra large eggs', '2 extra large', 'eggs'],
    ['2 extra-large eggs', '2 extra large', 'eggs'],
    ['2 large slices bread', '2 large slices', 'bread'],
    ['2 slices bread', '2 slices', 'bread'],
    ['3 leaves lettuce', '3 leaves', 'lettuce'],
    ['1 can (15 oz) pinto beans', '1 can (15 oz)', 'pinto beans'],
    ['2 cans (15-oz) pinto beans', '2 cans (15 oz)', 'pinto beans'],
    ['2 cans (425 g each) pinto beans', '2 cans (425 g)', 'pinto beans'],
    ['1 (15 oz) can pinto beans', '1 can (15 oz)', 'pinto beans'],
    ['1 cup (245 g) tomato soup', '1 cup (245 g)', 'tomato soup'],
    ['1 cup (packed) spinach', '1 cup', '(packed) spinach'],
    ['1 cup of rice', '1 cup', 'rice'],
    ['1 cup half-and-half', '1 cup', 'half-and-half'],
    ['3 eggs', '3', 'eggs'],
    ['1/2 avocado', '1/2', 'avocado'],
    ['2 pears', '2', 'pears'],
    ['2 cut carrots', '2', 'cut carrots'],
    ['2 ground beef patties', '2', 'ground beef patties'],
    ['2 olives, green', '2', 'olives, green'],
    ['12', '12', ''],
    ['2 constructor', '2', 'constructor'],
    ['  1\u00a0cup\u2009rice  ', '1 cup', 'rice'],
    // Rows without an amount; a number may belong to the name.
    ['pinto beans, dry', null, 'pinto beans, dry'],
    ['2% milk', null, '2% milk'],
    ['7-grain bread', null, '7-grain bread'],
    ['half-and-half', null, 'half-and-half'],
    ['one-pot stew', null, 'one-pot stew'],
    ['a pear', null, 'a pear'],
    ['__proto__', null, '__proto__'],
    ['constructor salad', null, 'constructor salad'],
    ['', null, ''],
  ])('%s', (text, amount, rest) => {
    expect(read(text)).toEqual([amount, rest]);
  });

  it('says where the food starts, so that a mistake in it has a place', () => {
    for (const text of ['  1 1/2 cups of brown rice', '1 can (15 oz) beans', '3 eggs', 'beans']) {
      const { rest, length } = valueIn(parseAmount(text));
      expect(text.slice(length)).toBe(rest);
    }
  });

  it('names a measure as food tables do', () => {
    const name = (text: string) => {
      const { amount } = valueIn(parseAmount(text));
      return amount === null ? null : measureName(amount);
    };
    expect(name('2 cans (15 oz)')).toBe('can (15 oz)');
    expect(name('2 large slices')).toBe('large slice');
    expect(name('2 cups (490 g)')).toBe('cup');
    expect(name('2')).toBeNull();
  });
});

describe('amounts that cannot be used', () => {
  it.each([
    ['-1 cup rice', 'less than zero', 'minus'],
    ['− ½ cup rice', 'less than zero', 'minus'],
    ['0 cups rice', 'zero', 'how much'],
    ['0/4 cup rice', 'zero', 'how much'],
    ['0.0 g', 'zero', 'how much'],
    ['1/0 cup rice', 'divided by zero', '1/2'],
    ['1 1/0 cups rice', 'divided by zero', '1/2'],
    ['1,5 cups rice', 'comma stands in the number "1,5"', '1.5'],
    [',5 cups rice', 'comma stands', '.5'],
    ['1,500 g rice', 'comma in "1,500" can be read two ways', '1500'],
    ['1-2 cups rice', 'span', 'one amount'],
    ['1–2 cups rice', 'span', 'one amount'],
    ['1 to 2 cups rice', 'span', 'one amount'],
    ['1 or 2 eggs', 'span', 'one amount'],
    ['100001 g rice', 'too large', '100000'],
    ['99999999999999999999999 g rice', 'too large', '100000'],
    ['0.0001 g rice', 'too small', '0.001'],
    ['1.5.2 cups rice', '"1.5." is not a number', '1.5'],
    ['1/2/3 cups rice', '"1/2/" is not a number', '1/2'],
    ['2, large eggs', '"2," is not a number', '1/2'],
    ['1 3/2 cups rice', '"1 3/2" is not less than one', '1 1/2'],
    ['2 x 15 oz cans beans', 'two numbers', '1 can (15 oz)'],
    ['1 15-oz can beans', 'two numbers', '1 can (15 oz)'],
    ['½½ cup rice', 'two numbers', 'one amount'],
    ['٣ cups rice', 'digits', '0 to 9'],
    ['² cups rice', '"²" is not read', '1 1/2'],
    ['1e5 g rice', '"e" is not a unit', '100 g rice'],
    ['100gr rice', '"gr" is not a unit', '100 g rice'],
    ['1 cupp rice', '"cupp" is not a unit', 'cup?'],
    ['2 tbps oil', '"tbps" is not a unit', 'tbsp?'],
    ['2 tabelspoons oil', '"tabelspoons" is not a unit', 'tablespoons?'],
    ['1 c rice', '"c" can stand for more', 'cup'],
    ['2 T oil', '"T" can stand for more', 'tbsp'],
    ['1 pint milk', '"pint" are not read', '2 cups'],
    ['200 kcal rice', '"kcal" are not read', 'Energy'],
    ['1 can (15) beans', '(15)" cannot be read', '1 can (15 oz)'],
    ['1 can (15 oz, 425 g) beans', '(15 oz, 425 g)" cannot be read', '1 can (15 oz)'],
    ['1 can (2%) milk', '(2%)" cannot be read', '1 can (15 oz)'],
    ['1 can (15 pt) beans', '(15 pt)" cannot be read', '1 can (15 oz)'],
    ['1 can (2 medium) beans', '(2 medium)" cannot be read', '1 can (15 oz)'],
    ['1 can (0 oz) beans', 'zero', 'how much'],
    ['1 (0 oz) can beans', 'zero', 'how much'],
    ['2 (4 oz) chicken breasts', 'no package', '8 oz'],
    ['2 (4 oz) c beans', 'no package', '8 oz'],
    ['2 (4 oz) slices bread', 'no package', '8 oz'],
    ['a cup of rice', '"a" is written in words', '1 cup'],
    ['two large eggs', '"two" is written in words', '2 large'],
    ['half a can of beans', '"half a" is written in words', '1/2 can'],
  ])('%s', (text, reason, hint) => {
    const refusal = refusalOf(parseAmount(text));
    expect(refusal.reason).toContain(reason);
    expect(refusal.hint).toContain(hint);
  });

  it('does not trip over numbers beyond all numbers', () => {
    const huge = '9'.repeat(400);
    expect(refusalOf(parseAmount(`${huge} g rice`)).reason).toContain('too large');
    expect(refusalOf(parseAmount(`${huge}/${huge} g rice`)).reason).toContain('too large');
    expect(refusalOf(parseAmount(`1/${huge} g rice`)).reason).toContain('zero');
  });

  it('offers units near to a misspelled one', () => {
    expect(refusalOf(parseAmount('1 cupp rice')).near).toEqual(['cup', 'cups']);
    expect(refusalOf(parseAmount('100gr rice')).near).toBeUndefined();
  });

  it('never throws, whatever the text', () => {
    const piece = fc.constantFrom(
      '1',
      '/',
      '½',
      ' ',
      '(',
      ')',
      'oz',
      '-',
      ',',
      '.',
      'can',
      'x',
      '\u0000',
      '😀',
      'fl',
    );
    const text = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.array(piece, { maxLength: 20 }).map((all) => all.join('')),
    );
    fc.assert(
      fc.property(text, (one) => {
        const result = parseAmount(one);
        if (!result.ok) expect(result.reason).not.toBe('');
        else if (result.value.amount !== null) {
          expect(result.value.amount.count).toBeGreaterThan(0);
          expect(result.value.amount.count).toBeLessThanOrEqual(100_000);
          expect(one.slice(result.value.length).trim()).toBe(result.value.rest);
        }
      }),
      { numRuns: 2000 },
    );
  });

  it('reads a very long text without a stall', () => {
    for (const text of [
      '1 '.repeat(50_000),
      '9'.repeat(100_000),
      `1 can (${'1'.repeat(100_000)}`,
      ' '.repeat(100_000),
    ]) {
      expect(parseAmount(text)).toHaveProperty('ok');
    }
  });
});

describe('writing and reading again', () => {
  const units = Object.keys(UNIT_WORDS) as (keyof typeof UNIT_WORDS)[];
  const count = fc.oneof(
    fc
      .tuple(fc.nat(40), fc.constantFrom(0, 1 / 2, 1 / 3, 2 / 3, 1 / 4, 3 / 4, 1 / 8, 4 / 5))
      .map(([n, part]) => n + part),
    fc.double({ min: 0.001, max: 100_000, noNaN: true }),
  );
  const positive = count.filter((n) => n > 0);
  const size = fc.record({ value: positive, unit: fc.constantFrom(...units) });
  const pieces = [
    ...Object.keys(MEASURE_WORDS),
    ...Object.keys(SIZE_WORDS),
    ...Object.keys(SIZE_WORDS).flatMap((word) =>
      Object.keys(MEASURE_WORDS).map((piece) => `${word} ${piece}`),
    ),
  ];
  const amount: fc.Arbitrary<WrittenAmount> = fc.oneof(
    fc
      .tuple(positive, fc.constantFrom(...units), fc.option(size))
      .map(([n, unit, one]) => ({ count: n, unit, measure: unit, size: one })),
    fc
      .tuple(positive, fc.constantFrom(...pieces), fc.option(size))
      .map(([n, measure, one]) => ({ count: n, unit: null, measure, size: one })),
    positive.map((n) => ({ count: n, unit: null, measure: null, size: null })),
  );

  it('gives the same amount', () => {
    fc.assert(
      fc.property(amount, fc.constantFrom('', 'brown rice, cooked', 'orange'), (one, words) => {
        const text = `${writeAmount(one)} ${words}`;
        expect(valueIn(parseAmount(text))).toEqual({
          amount: one,
          rest: words,
          length: text.length - words.length,
        });
      }),
      { numRuns: 500 },
    );
  });

  it('reads every word for a unit and a measure, one and many', () => {
    for (const unit of units) {
      for (const word of UNIT_WORDS[unit]) {
        expect(valueIn(parseAmount(`2 ${word.toUpperCase()} rice`)).amount).toMatchObject({ count: 2, unit });
      }
    }
    for (const [one, many] of Object.entries(MEASURE_WORDS)) {
      expect(valueIn(parseAmount(`2 ${many} rice`)).amount?.measure).toBe(one);
      expect(valueIn(parseAmount(`1 ${one} rice`)).amount?.measure).toBe(one);
    }
    for (const one of PACKAGES) expect(Object.keys(MEASURE_WORDS)).toContain(one);
  });

  it('writes counts as a kitchen does', () => {
    expect([0.5, 1.25, 2, 1 / 3, 0.8, 5 / 6, 7 / 8, 0.3, 1.1].map(writeCount)).toEqual([
      '1/2',
      '1 1/4',
      '2',
      '1/3',
      '4/5',
      '5/6',
      '7/8',
      '0.3',
      '1.1',
    ]);
  });
});
