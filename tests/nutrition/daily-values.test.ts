import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  DAILY_VALUE_GROUPS,
  DAILY_VALUES,
  type DailyValueName,
  dailyValueOf,
  known,
  lowOrHigh,
  notKnown,
  percentOfDailyValue,
  REFERENCE_DIET,
} from '../../src/nutrition/index.js';
import { evaluate } from './evaluate.js';
import { refusalOf, valueIn } from './expect-result.js';

// Source: 21 CFR 101.9(c)(8)(iv) and (c)(9), 2016 rule, adults and children 4 years and over, typed again
// from two independent public copies of the table.
const PUBLISHED: Readonly<Record<DailyValueName, string>> = {
  fat: '78 g',
  'saturated fat': '20 g',
  cholesterol: '300 mg',
  sodium: '2300 mg',
  carbohydrate: '275 g',
  fiber: '28 g',
  'added sugars': '50 g',
  protein: '50 g',
  'vitamin D': '20 µg',
  calcium: '1300 mg',
  iron: '18 mg',
  potassium: '4700 mg',
  'vitamin A': '900 µg RAE',
  'vitamin C': '90 mg',
  'vitamin E': '15 mg alpha-tocopherol',
  'vitamin K': '120 µg',
  thiamin: '1.2 mg',
  riboflavin: '1.3 mg',
  niacin: '16 mg NE',
  'vitamin B6': '1.7 mg',
  folate: '400 µg DFE',
  'vitamin B12': '2.4 µg',
  biotin: '30 µg',
  'pantothenic acid': '5 mg',
  phosphorus: '1250 mg',
  iodine: '150 µg',
  magnesium: '420 mg',
  zinc: '11 mg',
  selenium: '55 µg',
  copper: '0.9 mg',
  manganese: '2.3 mg',
  chromium: '35 µg',
  molybdenum: '45 µg',
  chloride: '2300 mg',
  choline: '550 mg',
};

describe('the table of Daily Values', () => {
  it('is whole and equal to the published one', () => {
    const ours = Object.keys(DAILY_VALUES).map((name) => {
      const row = dailyValueOf(name as DailyValueName);
      return [name, `${row?.value} ${row?.unit}${row?.counts === undefined ? '' : ` ${row.counts}`}`];
    });
    expect(Object.fromEntries(ours)).toEqual(PUBLISHED);
  });

  it('is not the set of before 2016', () => {
    // Old values, still on many pages: 21 CFR 101.9 before 81 FR 33742.
    const old = { fat: 65, sodium: 2400, fiber: 25, carbohydrate: 300, potassium: 3500, calcium: 1000 };
    for (const [name, value] of Object.entries(old)) {
      expect(dailyValueOf(name as DailyValueName)?.value).not.toBe(value);
    }
  });
});

describe('percents of a Daily Value', () => {
  it.each([
    // 21 CFR 101.54(b), (c): 10 to 19 percent is a good source and 20 percent is high; 460 mg sodium is 20 percent.
    ['sodium', 460, 'mg', 20],
    ['sodium', 0.46, 'g', 20],
    ['fiber', 7, 'g', 25],
    ['fiber', 7000, 'mg', 25],
    ['vitamin B12', 1.2, 'µg', 50],
    ['calcium', 130, 'mg', 10],
  ] as const)('%s, %d %s', (name, value, unit, percent) => {
    const result = valueIn(percentOfDailyValue(name, known(value, unit)));
    expect(result.percent).toBeCloseTo(percent, 9);
    expect(evaluate(result.working)).toBeCloseTo(percent, 9);
    expect(result.of.value).toBe(DAILY_VALUES[name].value);
  });

  it('leaves what is not known not known, and at least at least', () => {
    expect(valueIn(percentOfDailyValue('iron', notKnown('mg')))).toMatchObject({
      percent: null,
      atLeast: false,
    });
    const some = { value: 9, unit: 'mg', atLeast: true } as const;
    expect(valueIn(percentOfDailyValue('iron', some))).toMatchObject({ percent: 50, atLeast: true });
  });

  it.each(['sugars', 'energy', 'water', 'monounsaturated fat'] as const)(
    'refuses %s, which has none',
    (name) => {
      expect(refusalOf(percentOfDailyValue(name, known(1, 'g'))).reason).toBe(
        `There is no Daily Value for ${name}.`,
      );
      expect(dailyValueOf(name)).toBeNull();
    },
  );

  it('takes in how the amount was got', () => {
    const working = {
      formula: 'per100 * grams / 100',
      inputs: [
        { name: 'per100', value: 212, unit: 'mg per 100 g', source: 'usda-sr28 16345' },
        { name: 'grams', value: 169, unit: 'g', source: 'usda-sr28' },
      ],
    };
    const result = valueIn(percentOfDailyValue('sodium', known(358.28, 'mg'), working));
    expect(result.working.formula).toBe('(per100 * grams / 100) / daily_value * 100');
    expect(evaluate(result.working)).toBeCloseTo(result.percent ?? Number.NaN, 9);
  });

  it('is linear in the amount', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1e4, noNaN: true }),
        fc.integer({ min: 1, max: 20 }),
        (value, times) => {
          const one = valueIn(percentOfDailyValue('sodium', known(value, 'mg'))).percent ?? Number.NaN;
          const many =
            valueIn(percentOfDailyValue('sodium', known(value * times, 'mg'))).percent ?? Number.NaN;
          expect(Math.abs(many - one * times)).toBeLessThanOrEqual(1e-9 * Math.max(1, many));
        },
      ),
    );
  });

  it.each([
    // FDA consumer pages: 5 percent or less is low, 20 percent or more is high.
    [5, 'low'],
    [5.01, 'between'],
    [6, 'between'],
    [19, 'between'],
    [20, 'high'],
  ] as const)('%d percent is %s', (percent, word) => {
    expect(lowOrHigh(percent)).toBe(word);
  });
});

describe('Daily Values of the other groups', () => {
  it.each([
    // The FDA's list of Reference Daily Intakes for industry, read in a public copy.
    ['calcium', 'infants through 12 months', '260 mg RDI FDA document'],
    ['iron', 'children 1 through 3 years', '7 mg RDI FDA document'],
    ['folate', 'pregnant and lactating women', '600 µg RDI FDA document'],
    ['vitamin K', 'infants through 12 months', '2.5 µg RDI FDA document'],
    // 21 CFR 101.9(c)(8)(iv) and (c)(9), from memory.
    ['protein', 'infants through 12 months', '11 g RDI memory'],
    ['protein', 'children 1 through 3 years', '13 g DRV memory'],
    ['protein', 'pregnant and lactating women', '71 g RDI memory'],
    ['sodium', 'children 1 through 3 years', '1500 mg DRV memory'],
    ['potassium', 'pregnant and lactating women', '5100 mg RDI memory'],
    ['added sugars', 'children 1 through 3 years', '25 g DRV memory'],
  ] as const)('%s for %s', (name, group, said) => {
    const row = dailyValueOf(name, group);
    expect(`${row?.value} ${row?.unit} ${row?.kind} ${row?.checked}`).toBe(said);
  });

  it('are there for every vitamin and mineral, and missing for infants where the rule sets none', () => {
    const none = DAILY_VALUE_GROUPS.flatMap((group) =>
      Object.keys(DAILY_VALUES)
        .filter((name) => dailyValueOf(name as DailyValueName, group) === null)
        .map((name) => `${name}, ${group}`),
    );
    // 21 CFR 101.9(c)(9), from memory.
    expect(none).toEqual(
      ['saturated fat', 'cholesterol', 'sodium', 'fiber', 'added sugars'].map(
        (name) => `${name}, infants through 12 months`,
      ),
    );
  });

  it('are never zero, and keep the unit and the way of counting of the adults', () => {
    for (const group of DAILY_VALUE_GROUPS)
      for (const name of Object.keys(DAILY_VALUES) as DailyValueName[]) {
        const row = dailyValueOf(name, group);
        if (row === null) continue;
        expect(row.value).toBeGreaterThan(0);
        expect([row.unit, row.counts]).toEqual([dailyValueOf(name)?.unit, dailyValueOf(name)?.counts]);
      }
  });

  it('give their own percent, and say whom it is for and what rests on memory', () => {
    const child = valueIn(
      percentOfDailyValue('protein', known(6.5, 'g'), undefined, 'children 1 through 3 years'),
    );
    expect(child.percent).toBeCloseTo(50, 9);
    expect(evaluate(child.working)).toBeCloseTo(50, 9);
    expect(child.working.inputs[1]?.note).toBe(
      'children 1 through 3 years; a label corrects the protein for its quality first; this percent does not; value from memory',
    );
    const iron = valueIn(
      percentOfDailyValue('iron', known(7, 'mg'), undefined, 'children 1 through 3 years'),
    );
    expect(iron.percent).toBeCloseTo(100, 9);
    expect(iron.working.inputs[1]?.note).toBe('children 1 through 3 years');
  });

  it('are refused where a group has none', () => {
    const none = refusalOf(
      percentOfDailyValue('sodium', known(1, 'mg'), undefined, 'infants through 12 months'),
    );
    expect(none.reason).toBe('There is no Daily Value for sodium for infants through 12 months.');
    expect(REFERENCE_DIET['infants through 12 months']).toBeNull();
    expect(REFERENCE_DIET['children 1 through 3 years']).toBe(1000);
  });
});
