import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  ACTIVITY_LEVELS,
  type Adult,
  activityLevelOf,
  BMI_CLASSES,
  bmiClass,
  bodyMassIndex,
  CIRCUMSTANCES,
  type EnergyEstimate,
  energyNeed,
  energyNeed2005,
  LEVEL_STARTS,
  OXFORD_ROWS,
  oxfordEnergy,
  type Result,
  restingEnergy,
} from '../../src/nutrition/index.js';
import { adult, anyAdult } from './adults.js';
import { evaluate } from './evaluate.js';
import { refusalOf, valueIn } from './expect-result.js';

const EQUATIONS: Readonly<Record<string, (one: Adult) => Result<EnergyEstimate>>> = {
  'resting, simplified': (one) => restingEnergy(one, 'simplified'),
  'resting, regression': (one) => restingEnergy(one, 'regression'),
  'Oxford, weight and height': (one) => oxfordEnergy(one, 'weight and height'),
  'need 2023, low active': (one) => energyNeed(one, 'low active'),
  'need 2023, very active': (one) => energyNeed(one, 'very active'),
  'need 2005, active': (one) => energyNeed2005(one, 'active'),
};
const each = Object.entries(EQUATIONS);
const kcal = (result: Result<EnergyEstimate>) => Number(valueIn(result).quantity.value);

describe.each(each)('%s', (name, compute) => {
  it('gives what its working gives, in kcal, always as an estimate with a caution', () => {
    fc.assert(
      fc.property(anyAdult, (one) => {
        const result = valueIn(compute(one));
        expect(evaluate(result.working)).toBeCloseTo(Number(result.quantity.value), 6);
        expect(result.quantity.unit).toBe('kcal');
        expect(result.estimated).toBe(true);
        expect(result.cautions.length).toBeGreaterThan(0);
        expect(result.equation).toMatch(/\d{4}/);
        // No adult in the domain uses less than 600 or more than 8000 kcal a day.
        expect(result.quantity.value).toBeGreaterThan(600);
        expect(result.quantity.value).toBeLessThan(8000);
      }),
    );
  });

  it('gives the same in inches, feet and pounds', () => {
    fc.assert(
      fc.property(anyAdult, (one) => {
        const height = { value: Number(one.height.value) / 2.54, unit: 'in' } as const;
        const weight = { value: Number(one.weight.value) / 0.45359237, unit: 'lb' } as const;
        const result = valueIn(compute({ ...one, height, weight }));
        expect(result.quantity.value).toBeCloseTo(kcal(compute(one)), 6);
        expect(evaluate(result.working)).toBeCloseTo(kcal(compute(one)), 6);
        const feet = { value: Number(one.height.value) / 30.48, unit: 'ft' } as const;
        expect(kcal(compute({ ...one, height: feet }))).toBeCloseTo(kcal(compute(one)), 6);
      }),
    );
  });

  it('rises with weight', () => {
    fc.assert(
      fc.property(anyAdult, fc.integer({ min: 1, max: 20 }), (one, more) => {
        // The 2005 equations change rows at an index of 25, so both weights stay on one side of it.
        const kg = Number(one.weight.value) + (name.includes('2005') ? 60 : 0);
        const at = (value: number) => kcal(compute({ ...one, weight: { value, unit: 'kg' } }));
        expect(at(kg + more)).toBeGreaterThan(at(kg));
      }),
    );
  });

  it('knows nothing from what is not known', () => {
    const one = adult('male', 40, 175, 80);
    for (const unknown of [
      { ...one, weight: { value: null, unit: 'kg' } },
      { ...one, height: { value: null, unit: 'in' } },
    ] as const) {
      expect(valueIn(compute(unknown)).quantity).toEqual({ value: null, unit: 'kcal', atLeast: false });
    }
  });

  it('refuses pregnancy, breastfeeding and children, and nobody for the other circumstances', () => {
    const one = adult('female', 30, 165, 62);
    for (const circumstance of CIRCUMSTANCES) {
      const result = compute({ ...one, circumstances: [circumstance] });
      expect(result.ok).toBe(circumstance !== 'pregnant' && circumstance !== 'breastfeeding');
    }
    expect(refusalOf(compute({ ...one, circumstances: ['pregnant', 'breastfeeding'] })).reason).toContain(
      'pregnant and breastfeeding',
    );
    expect(refusalOf(compute({ ...one, age: 17 })).reason).toMatch(/is for ages 1[89] .*this example is 17/);
  });

  it.each([
    [{ age: -1 }, 'An age of -1 years is not between 0 and 120.'],
    [{ age: Number.NaN }, 'An age of NaN years is not between 0 and 120.'],
    [{ age: 121 }, 'An age of 121 years'],
    [{ height: { value: 1.78, unit: 'cm' } }, 'A height of 1.78 cm is outside 100 to 250 cm.'],
    [{ height: { value: 178, unit: 'in' } }, 'A height of 178 in is outside'],
    [{ weight: { value: -70, unit: 'kg' } }, 'A weight of -70 kg is outside 20 to 400 kg.'],
    [{ weight: { value: Number.POSITIVE_INFINITY, unit: 'kg' } }, 'A weight of Infinity kg'],
  ] as const)('refuses %j', (wrong, reason) => {
    expect(refusalOf(compute({ ...adult('female', 30, 165, 62), ...wrong })).reason).toContain(reason);
  });
});

describe('resting energy', () => {
  it('keeps its two forms apart', () => {
    const one = adult('male', 45, 178, 90);
    expect(kcal(restingEnergy(one, 'regression')) - kcal(restingEnergy(one, 'simplified'))).toBeCloseTo(
      2.7,
      9,
    );
    expect(valueIn(restingEnergy(one, 'regression')).equation).toBe('Mifflin-St Jeor 1990, regression form');
  });

  // Mifflin 1990: the people were 19 to 78 years old; a band ends on the birthday.
  it.each([
    [18.99, false],
    [19, true],
    [78.99, true],
    [79, false],
  ])('at age %d: %s', (age, may) => {
    expect(restingEnergy(adult('female', age, 165, 62), 'simplified').ok).toBe(may);
  });

  it('says which ages it is for', () => {
    const refused = refusalOf(restingEnergy(adult('female', 84, 165, 62), 'simplified'));
    expect(refused.reason).toBe('This equation is for ages 19 to 78; this example is 84.');
    expect(refused.hint).toContain('2023');
  });

  it('falls with age', () => {
    expect(valueIn(restingEnergy(adult('male', null, 178, 90), 'simplified')).quantity.value).toBeNull();
    expect(kcal(restingEnergy(adult('male', 46, 178, 90), 'simplified'))).toBe(1787.5);
  });
});

describe('the Oxford equations', () => {
  // Henry 2005 bands: 18–30, 30–60, 60 and over; that a shared end belongs to the older band is common practice.
  it.each([
    [18, 'male 18-30'],
    [29.9, 'male 18-30'],
    [30, 'male 30-60'],
    [59.9, 'male 30-60'],
    [60, 'male 60+'],
    [95, 'male 60+'],
  ])('at age %d take the row %s', (age, row) => {
    expect(valueIn(oxfordEnergy(adult('male', age, 175, 80), 'weight')).equation).toContain(row);
  });

  it('refuse an age that is not known, because it chooses the row', () => {
    expect(refusalOf(oxfordEnergy(adult('male', null, 175, 80), 'weight')).reason).toContain(
      'age is not known',
    );
  });

  it('mark every row of women as unsettled, and say so with the number', () => {
    for (const form of ['weight', 'weight and height'] as const)
      for (const row of Object.values(OXFORD_ROWS[form].female)) expect(row.checked).toBe('unsettled');
    const result = valueIn(oxfordEnergy(adult('female', 40, 165, 62), 'weight'));
    expect(result.checked).toBe('unsettled');
    expect(result.cautions.at(-1)).toContain('Unverified row (another public copy has 10.9');
    expect(valueIn(oxfordEnergy(adult('male', 40, 165, 62), 'weight')).cautions).toHaveLength(1);
  });
});

describe('energy needs', () => {
  it('rise with the level of activity, in both editions', () => {
    // The 2023 lines of men cross for short and light ones, so people of ordinary height are taken.
    fc.assert(
      fc.property(anyAdult, (one) => {
        const at2005 = ACTIVITY_LEVELS[2005].map((level) => kcal(energyNeed2005(one, level)));
        expect(at2005).toEqual([...at2005].sort((a, b) => a - b));
      }),
    );
    for (const sex of ['female', 'male'] as const) {
      const at2023 = ACTIVITY_LEVELS[2023].map((level) => kcal(energyNeed(adult(sex, 40, 172, 75), level)));
      expect(at2023).toEqual([...at2023].sort((a, b) => a - b));
    }
  });

  it('hold from 19 years on without an end', () => {
    expect(energyNeed(adult('male', 19, 175, 70), 'active').ok).toBe(true);
    expect(energyNeed(adult('male', 100, 165, 60), 'inactive').ok).toBe(true);
    expect(refusalOf(energyNeed(adult('male', 18.9, 175, 70), 'active')).reason).toContain('19 and over');
    expect(valueIn(energyNeed(adult('male', null, 175, 70), 'active')).quantity.value).toBeNull();
  });

  it('of 2005 refuse a low index and take a row from memory, and say so, from 25', () => {
    const by = (kg: number) => energyNeed2005(adult('male', 30, 180, kg), 'sedentary');
    expect(refusalOf(by(59)).reason).toContain('this example has 18.21');
    const over = valueIn(by(81));
    expect(over).toMatchObject({ checked: 'memory', equation: expect.stringContaining('overweight') });
    expect(over.cautions.at(-1)).toContain('from memory');
    // 1086 − 10.1 × 30 + 13.7 × 81 + 416 × 1.8, by hand; the row itself is from memory.
    expect(over.quantity.value).toBeCloseTo(2641.5, 9);
    expect(valueIn(by(80.9)).equation).toContain('normal weight');
  });
});

describe('levels of activity', () => {
  // IOM 2002/2005: 1.0-<1.4, 1.4-<1.6, 1.6-<1.9, 1.9-<2.5.
  it.each([
    [1, 'sedentary'],
    [1.39, 'sedentary'],
    [1.4, 'low active'],
    [1.6, 'active'],
    [1.9, 'very active'],
    [2.49, 'very active'],
  ])('of 2005: %d is %s', (level, word) => {
    expect(valueIn(activityLevelOf(level, 2005))).toBe(word);
  });

  it.each([0.99, 2.5, -1, Number.NaN, Number.POSITIVE_INFINITY])('refuse %d', (level) => {
    const refused = refusalOf(activityLevelOf(level, 2023));
    expect(refused.reason).toBe(`A physical activity level of ${level} is not between 1.00 and 2.50.`);
    expect(refused.hint).toContain('inactive, low active, active and very active');
  });

  it('have a start for each word', () => {
    for (const edition of [2023, 2005] as const)
      expect(LEVEL_STARTS[edition].map((start) => valueIn(activityLevelOf(start, edition)))).toEqual([
        ...ACTIVITY_LEVELS[edition],
      ]);
  });
});

describe('body mass index', () => {
  // CDC and WHO cut points for adults.
  it.each([
    [18.499, 'underweight'],
    [18.5, 'neither under nor over'],
    [24.999, 'neither under nor over'],
    [25, 'overweight'],
    [29.999, 'overweight'],
    [30, 'obesity class 1'],
    [35, 'obesity class 2'],
    [39.99, 'obesity class 2'],
    [40, 'obesity class 3'],
    [70, 'obesity class 3'],
  ])('%d is %s', (index, name) => {
    expect(valueIn(bmiClass(index, 20))).toBe(name);
  });

  it('on a limit is not moved off it by binary fractions', () => {
    // 64 kg and 160 cm are exactly 25; in binary fractions 64 / 1.6² comes out below.
    const { value } = valueIn(bodyMassIndex({ value: 160, unit: 'cm' }, { value: 64, unit: 'kg' }));
    expect(value).toBeLessThan(25);
    expect(valueIn(bmiClass(Number(value), 30))).toBe('overweight');
  });

  it('has no class under 20 years and for what is no index', () => {
    expect(refusalOf(bmiClass(22, 19.9)).reason).toContain('ages 20 and over');
    expect(refusalOf(bmiClass(22, Number.NaN)).reason).toContain('ages 20 and over');
    for (const wrong of [0, -3, Number.NaN, Number.POSITIVE_INFINITY])
      expect(refusalOf(bmiClass(wrong, 40)).reason).toBe(`${wrong} is no body mass index.`);
  });

  it('is not known when height or weight is not, and refused when they are impossible', () => {
    const tall = { value: 170, unit: 'cm' } as const;
    expect(valueIn(bodyMassIndex(tall, { value: null, unit: 'lb' })).value).toBeNull();
    expect(valueIn(bodyMassIndex({ value: null, unit: 'm' }, { value: 70, unit: 'kg' })).value).toBeNull();
    expect(refusalOf(bodyMassIndex({ value: 17, unit: 'm' }, { value: 70, unit: 'kg' })).reason).toContain(
      'height',
    );
    expect(refusalOf(bodyMassIndex(tall, { value: 7, unit: 'kg' })).reason).toContain('weight');
  });

  it('is the same in any unit, rises with weight and never falls a class', () => {
    fc.assert(
      fc.property(anyAdult, (one) => {
        const cm = Number(one.height.value);
        const kg = Number(one.weight.value);
        const metric = Number(valueIn(bodyMassIndex(one.height, one.weight)).value);
        const feet = { value: cm / 30.48, unit: 'ft' } as const;
        const grams = { value: kg * 1000, unit: 'g' } as const;
        const other = valueIn(bodyMassIndex(feet, grams));
        expect(other.value).toBeCloseTo(metric, 9);
        expect(evaluate(other.working)).toBeCloseTo(metric, 9);
        expect(metric * (cm / 100) ** 2).toBeCloseTo(kg, 9);
        const names = BMI_CLASSES.map(({ name }) => name);
        const rank = (index: number) => names.indexOf(valueIn(bmiClass(index, 30)));
        expect(rank(metric + 1)).toBeGreaterThanOrEqual(rank(metric));
      }),
    );
  });
});
