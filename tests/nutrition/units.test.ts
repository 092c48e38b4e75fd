import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  convert,
  dimensionOf,
  fromInternationalUnits,
  isMassUnit,
  isVolumeUnit,
  KITCHENS,
  type Kitchen,
  sizeOf,
  tryConvert,
  type Unit,
  unitRatio,
} from '../../src/nutrition/index.js';
import { refusalOf, valueIn } from './expect-result.js';

const UNITS: readonly Unit[] = [
  'g',
  'mg',
  'µg',
  'kg',
  'oz',
  'lb',
  'mL',
  'L',
  'cup',
  'tbsp',
  'tsp',
  'fl oz',
  'kcal',
  'kJ',
];
const kitchens = Object.keys(KITCHENS) as Kitchen[];

describe('sizes of customary units', () => {
  it.each([
    // NIST Handbook 44, Appendix C.
    ['cup', 'us exact', 236.588],
    ['tbsp', 'us exact', 14.7868],
    ['tsp', 'us exact', 4.92892],
    ['fl oz', 'us exact', 29.5735],
    ['oz', 'us exact', 28.3495],
    ['lb', 'us exact', 453.592],
    // 21 CFR 101.9(b)(5)(viii): what a label may count with.
    ['cup', 'us label', 240],
    ['tbsp', 'us label', 15],
    ['tsp', 'us label', 5],
    ['fl oz', 'us label', 30],
    ['oz', 'us label', 28],
    // Common practice, no source.
    ['cup', 'metric', 250],
    ['tbsp', 'australian', 20],
    ['cup', 'cup of 200 mL', 200],
  ] as const)('1 %s, %s', (unit, kitchen, size) => {
    expect(sizeOf(unit, kitchen)).toBeCloseTo(size, 3);
  });

  it.each([
    // By definition of the units; exact, without the noise of binary fractions.
    ['cup', 'tbsp', 16],
    ['cup', 'tsp', 48],
    ['cup', 'fl oz', 8],
    ['tbsp', 'tsp', 3],
    ['lb', 'oz', 16],
    ['mg', 'µg', 1000],
    ['g', 'mg', 1000],
    ['kg', 'g', 1000],
    ['L', 'mL', 1000],
    ['kcal', 'kJ', 4.184],
  ] as const)('1 %s in %s', (from, to, count) => {
    expect(unitRatio(from, to)).toBe(count);
  });

  it('knows what each unit measures; an ounce is a weight and a fluid ounce a volume', () => {
    expect(UNITS.filter(isMassUnit)).toEqual(['g', 'mg', 'µg', 'kg', 'oz', 'lb']);
    expect(UNITS.filter(isVolumeUnit)).toEqual(['mL', 'L', 'cup', 'tbsp', 'tsp', 'fl oz']);
    expect(UNITS.filter((unit) => dimensionOf(unit) === 'energy')).toEqual(['kcal', 'kJ']);
  });
});

describe('converting', () => {
  it('turns a label cup and an exact cup into different milliliters', () => {
    expect(convert({ value: 2, unit: 'cup' }, 'mL', 'us label')).toEqual({ value: 480, unit: 'mL' });
    expect(convert({ value: 2, unit: 'cup' }, 'mL').value).toBeCloseTo(473.176, 3);
  });

  it('refuses another dimension when the unit is only known at run time', () => {
    expect(refusalOf(tryConvert({ value: 1, unit: 'cup' }, 'g'))).toEqual({
      ok: false,
      reason: 'cup measures volume and g measures mass; one cannot be turned into the other.',
      hint: 'Use a measure of the food with its weight.',
    });
    expect(refusalOf(tryConvert({ value: 1, unit: 'kcal' }, 'g')).hint).toBeUndefined();
    expect(refusalOf(tryConvert({ value: 1, unit: 'oz' }, 'fl oz')).reason).toMatch('oz measures mass');
  });

  it('throws when a wider type let a wrong unit through', () => {
    const hidden = { value: 1, unit: 'kcal' as Unit };
    expect(() => convert(hidden, 'g')).toThrow('kcal measures energy');
  });

  it('comes back to where it started, in every kitchen', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...UNITS),
        fc.constantFrom(...UNITS),
        fc.constantFrom(...kitchens),
        fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
        (from, to, kitchen, value) => {
          const there = tryConvert({ value, unit: from }, to, kitchen);
          expect(there.ok).toBe(dimensionOf(from) === dimensionOf(to));
          if (!there.ok) return;
          const back = valueIn(tryConvert(there.value, from, kitchen));
          expect(back.unit).toBe(from);
          expect(Math.abs(back.value - value)).toBeLessThanOrEqual(value * 1e-14);
        },
      ),
    );
  });

  it('is linear', () => {
    fc.assert(
      fc.property(
        fc.constantFrom<['lb', 'g'] | ['cup', 'mL'] | ['kcal', 'kJ']>(
          ['lb', 'g'],
          ['cup', 'mL'],
          ['kcal', 'kJ'],
        ),
        fc.double({ min: 0.001, max: 1e5, noNaN: true }),
        fc.integer({ min: 1, max: 50 }),
        ([from, to], value, times) => {
          const one = valueIn(tryConvert({ value, unit: from }, to)).value;
          const many = valueIn(tryConvert({ value: value * times, unit: from }, to)).value;
          expect(many).toBeCloseTo(one * times, -Math.floor(Math.log10(one * times)) + 10);
        },
      ),
    );
  });
});

describe('international units', () => {
  it.each([
    // 21 CFR 101.9(c)(8)(iv) footnotes and NIH Office of Dietary Supplements, figures from memory.
    ['vitamin D', 800, 20, 'µg'],
    ['vitamin A, retinol', 3000, 900, 'µg'],
    ['vitamin E, natural', 30, 20.1, 'mg'],
    ['vitamin E, synthetic', 30, 13.5, 'mg'],
  ] as const)('%s, %d IU', (form, units, value, unit) => {
    const amount = fromInternationalUnits(form, units);
    expect(amount.value).toBeCloseTo(value, 9);
    expect(amount.unit).toBe(unit);
  });
});
