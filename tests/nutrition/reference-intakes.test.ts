import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  againstUpperLimit,
  averageRequirement,
  INTAKES,
  type IntakeName,
  isIntakeName,
  known,
  LIFE_STAGES,
  type LifeStage,
  lifeStageOf,
  meatlessIntake,
  notKnown,
  percentOfReferenceIntake,
  referenceIntake,
  type Someone,
  sodiumReductionLevel,
  upperLimit,
} from '../../src/nutrition/index.js';
import { evaluate } from './evaluate.js';
import { refusalOf, valueIn } from './expect-result.js';

const NAMES = Object.keys(INTAKES) as IntakeName[];
const KINDS = ['requirement', 'requirementPerKg', 'allowance', 'adequate', 'upper', 'reduction'] as const;

describe('life stages', () => {
  // Source: National Academies, DRI summary tables; bands end on the birthday.
  const cases: readonly (readonly [Someone, LifeStage])[] = [
    [{ years: 0 }, 'infants 0 to 6 months'],
    [{ years: 0.49, sex: 'male' }, 'infants 0 to 6 months'],
    [{ years: 0.5 }, 'infants 6 to 12 months'],
    [{ years: 1 }, 'children 1 to 3 years'],
    [{ years: 3.99 }, 'children 1 to 3 years'],
    [{ years: 8.99, sex: 'female' }, 'children 4 to 8 years'],
    [{ years: 9, sex: 'female' }, 'females 9 to 13 years'],
    [{ years: 18.99, sex: 'male' }, 'males 14 to 18 years'],
    [{ years: 19, sex: 'male' }, 'males 19 to 30 years'],
    [{ years: 50.99, sex: 'male' }, 'males 31 to 50 years'],
    [{ years: 51, sex: 'male' }, 'males 51 to 70 years'],
    [{ years: 70.99, sex: 'female' }, 'females 51 to 70 years'],
    [{ years: 71, sex: 'female' }, 'females over 70 years'],
    [{ years: 14, state: 'pregnancy' }, 'pregnancy 14 to 18 years'],
    [{ years: 19, state: 'pregnancy', sex: 'female' }, 'pregnancy 19 to 30 years'],
    [{ years: 50.99, state: 'lactation' }, 'lactation 31 to 50 years'],
  ];
  it.each(cases)('%o is %s', (someone, stage) => {
    expect(valueIn(lifeStageOf(someone))).toBe(stage);
  });

  it.each([
    [{ years: -1 }, 'An age of -1 years is not between 0 and 130.'],
    [{ years: 130 }, 'An age of 130 years is not between 0 and 130.'],
    [{ years: Number.NaN }, 'An age of NaN years is not between 0 and 130.'],
    [{ years: 9 }, 'From nine years on the reference intakes differ by sex.'],
    [
      { years: 51, state: 'pregnancy' },
      'There are no reference intakes for pregnancy of a female of 51 years.',
    ],
    [
      { years: 13, state: 'lactation' },
      'There are no reference intakes for lactation of a female of 13 years.',
    ],
    [
      { years: 30, sex: 'male', state: 'pregnancy' },
      'There are no reference intakes for pregnancy of a male of 30 years.',
    ],
  ] as const)('%o is refused', (someone, reason) => {
    expect(refusalOf(lifeStageOf(someone)).reason).toBe(reason);
  });

  it('are 22, and each of an age and a sex has one', () => {
    expect(new Set(LIFE_STAGES).size).toBe(22);
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 129, noNaN: true }),
        fc.constantFrom('female' as const, 'male' as const),
        (years, sex) => LIFE_STAGES.includes(valueIn(lifeStageOf({ years, sex }))),
      ),
    );
  });
});

describe('the table of reference intakes', () => {
  it('has 22 cells in every list, each a number above zero or not set', () => {
    expect(NAMES).toHaveLength(39);
    for (const name of NAMES)
      for (const kind of KINDS) {
        const cells = INTAKES[name][kind]?.split(' ');
        if (cells === undefined) continue;
        expect(cells, `${name} ${kind}`).toHaveLength(22);
        for (const cell of cells)
          if (cell !== '-') expect(Number(cell), `${name} ${kind}`).toBeGreaterThan(0);
      }
  });

  it('sets an allowance or an adequate intake, never both, and orders what it sets', () => {
    for (const name of NAMES)
      for (const stage of LIFE_STAGES) {
        const index = LIFE_STAGES.indexOf(stage);
        const at = (kind: (typeof KINDS)[number]) => {
          const cell = INTAKES[name][kind]?.split(' ')[index];
          return cell === undefined || cell === '-' ? undefined : Number(cell);
        };
        const [requirement, allowance, adequate] = [at('requirement'), at('allowance'), at('adequate')];
        const where = `${name}, ${stage}`;
        expect(allowance !== undefined && adequate !== undefined, where).toBe(false);
        if (requirement !== undefined) expect(allowance, where).toBeGreaterThan(requirement);
        const [upper, reduction] = [at('upper'), at('reduction')];
        // Magnesium's level counts supplements only and may lie under the allowance; zinc of infants lies close.
        if (upper !== undefined && INTAKES[name].upperCounts === undefined)
          expect(upper, where).toBeGreaterThan(allowance ?? adequate ?? 0);
        if (reduction !== undefined) expect(reduction, where).toBeGreaterThan(adequate ?? 0);
      }
  });

  it('is not one of the superseded sets', () => {
    const at = (name: IntakeName, stage: LifeStage) => valueIn(referenceIntake(name, stage)).value;
    // Before 2011: vitamin D 5, 10, 15 µg and calcium 1200 mg for men of 51 to 70.
    expect(at('vitamin D', 'males 19 to 30 years')).toBe(15);
    expect(at('calcium', 'males 51 to 70 years')).toBe(1000);
    // Before 2019: potassium 4700 mg; sodium 1300 and 1200 mg for older adults.
    expect(at('potassium', 'males 31 to 50 years')).toBe(3400);
    expect(at('sodium', 'females over 70 years')).toBe(1500);
    // A medical manual keeps 1.3 mg of vitamin B6 to age 70.
    expect(at('vitamin B6', 'males 51 to 70 years')).toBe(1.7);
  });

  it.each([
    // DRI summary tables: elements (NCBI NBK545442, appendix J, table 3) and vitamins (a copy of the NAP table), read.
    ['iron', 'pregnancy 19 to 30 years', 27, 'mg'],
    ['iron', 'lactation 14 to 18 years', 10, 'mg'],
    ['folate', 'pregnancy 31 to 50 years', 600, 'µg'],
    ['vitamin A', 'lactation 19 to 30 years', 1300, 'µg'],
    ['choline', 'females 14 to 18 years', 400, 'mg'],
    ['calcium', 'females 9 to 13 years', 1300, 'mg'],
    ['magnesium', 'males 19 to 30 years', 400, 'mg'],
    ['magnesium', 'males 31 to 50 years', 420, 'mg'],
    ['zinc', 'infants 6 to 12 months', 3, 'mg'],
    ['iodine', 'lactation 31 to 50 years', 290, 'µg'],
    // From memory.
    ['water', 'males 19 to 30 years', 3.7, 'L'],
    ['fiber', 'females 51 to 70 years', 21, 'g'],
  ] as const)('%s, %s: %d %s', (name, stage, value, unit) => {
    expect(valueIn(referenceIntake(name, stage))).toMatchObject({ value, unit, nutrient: name, stage });
  });

  it('calls the vitamin D of infants an adequate intake', () => {
    // DRI for calcium and vitamin D, 2011, page 385: data do not suffice for an average requirement.
    expect(valueIn(referenceIntake('vitamin D', 'infants 0 to 6 months'))).toMatchObject({
      kind: 'adequate',
      value: 10,
      source: 'nasem-dri 2011',
    });
    expect(valueIn(referenceIntake('vitamin D', 'children 1 to 3 years')).kind).toBe('allowance');
  });

  it('gives protein per kg of body weight as a requirement and per day as an allowance', () => {
    expect(valueIn(averageRequirement('protein', 'males 19 to 30 years'))).toMatchObject({
      value: 0.66,
      unit: 'g per kg of body weight',
    });
    expect(valueIn(referenceIntake('protein', 'males 19 to 30 years'))).toMatchObject({
      value: 56,
      unit: 'g',
      note: 'the allowance is for the reference body weight',
    });
    expect(valueIn(averageRequirement('iron', 'males 19 to 30 years'))).toMatchObject({
      value: 6,
      unit: 'mg',
    });
  });

  it('knows its nutrients by name', () => {
    expect(isIntakeName('iodine')).toBe(true);
    expect(isIntakeName('toString')).toBe(false);
  });
});

describe('what is not set', () => {
  it('is refused and never zero', () => {
    expect(refusalOf(referenceIntake('fiber', 'infants 0 to 6 months')).reason).toBe(
      'No intake of fiber is set for infants 0 to 6 months.',
    );
    expect(refusalOf(averageRequirement('potassium', 'males 19 to 30 years')).reason).toBe(
      'No average requirement of potassium is set for males 19 to 30 years.',
    );
    expect(refusalOf(upperLimit('vitamin B12', 'males 19 to 30 years'))).toMatchObject({
      reason: 'No upper level of vitamin B12 is set for males 19 to 30 years.',
      hint: 'Say that none is set; that does not make every amount safe.',
    });
    expect(refusalOf(sodiumReductionLevel('infants 0 to 6 months')).reason).toContain('No reduction level');
    expect(refusalOf(referenceIntake('boron', 'males 19 to 30 years')).reason).toContain(
      'No intake of boron',
    );
  });

  it('keeps the reduction level of sodium apart from upper levels', () => {
    // 2019 report: 1200, 1500, 1800 and 2300 mg; no upper level.
    const levels = (
      [
        'children 1 to 3 years',
        'children 4 to 8 years',
        'males 9 to 13 years',
        'males 14 to 18 years',
        'females over 70 years',
      ] as const
    ).map((stage) => valueIn(sodiumReductionLevel(stage)).value);
    expect(levels).toEqual([1200, 1500, 1800, 2300, 2300]);
    for (const stage of LIFE_STAGES)
      for (const name of ['sodium', 'potassium'] as const)
        expect(refusalOf(upperLimit(name, stage)).reason).toContain('No upper level');
    expect(NAMES.filter((name) => INTAKES[name].reduction !== undefined)).toEqual(['sodium']);
  });
});

describe('percent of a reference intake', () => {
  it('shows how it was got', () => {
    const share = valueIn(percentOfReferenceIntake('calcium', 'males 19 to 30 years', known(250, 'mg')));
    expect(share.percent).toBeCloseTo(25, 9);
    expect(evaluate(share.working)).toBeCloseTo(25, 9);
    expect(share.working.inputs[1]).toMatchObject({ source: 'nasem-dri 2011', note: 'males 19 to 30 years' });
    const copper = valueIn(percentOfReferenceIntake('copper', 'males 19 to 30 years', known(0.45, 'mg')));
    expect(copper.percent).toBeCloseTo(50, 9);
    expect(evaluate(copper.working)).toBeCloseTo(50, 9);
    const water = valueIn(percentOfReferenceIntake('water', 'males 19 to 30 years', known(370, 'mL')));
    expect(water.percent).toBeCloseTo(10, 9);
  });

  it('keeps what is not known, and how the amount was got', () => {
    expect(
      valueIn(percentOfReferenceIntake('iron', 'males 19 to 30 years', notKnown('mg'))).percent,
    ).toBeNull();
    const some = { value: 4, unit: 'mg', atLeast: true } as const;
    const working = { formula: 'a', inputs: [{ name: 'a', value: 4, unit: 'mg', source: 'lesson' }] };
    const share = valueIn(percentOfReferenceIntake('iron', 'males 19 to 30 years', some, working));
    expect(share).toMatchObject({ percent: 50, atLeast: true });
    expect(share.working.formula).toBe('a / reference_intake * 100');
  });

  it('is refused where none is set or the unit measures something else', () => {
    expect(
      refusalOf(percentOfReferenceIntake('nickel', 'males 19 to 30 years', known(1, 'mg'))).reason,
    ).toContain('No intake of nickel');
    expect(refusalOf(percentOfReferenceIntake('water', 'males 19 to 30 years', known(1, 'g'))).reason).toBe(
      'The intake of water is set in L, not in g.',
    );
  });

  it('is linear', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...NAMES),
        fc.constantFrom(...LIFE_STAGES),
        fc.integer({ min: 1, max: 9 }),
        (name, stage, times) => {
          const intake = referenceIntake(name, stage);
          if (!intake.ok || name === 'water') return;
          const unit = INTAKES[name].unit as 'g' | 'mg' | 'µg';
          const share = valueIn(
            percentOfReferenceIntake(name, stage, known(intake.value.value * times, unit)),
          );
          expect(share.percent).toBeCloseTo(100 * times, 6);
        },
      ),
    );
  });
});

describe('against an upper level', () => {
  it.each([
    ['calcium', 2500, 'within'],
    ['calcium', 2501, 'above'],
    ['iodine', 1.2, 'above'],
  ] as const)('%s %d', (name, value, how) => {
    const stage = 'males 19 to 30 years';
    expect(valueIn(againstUpperLimit(name, stage, known(value, 'mg'), 'all food'))).toBe(how);
  });

  it('does not know what it cannot know', () => {
    const stage = 'males 19 to 30 years';
    expect(valueIn(againstUpperLimit('calcium', stage, notKnown('mg'), 'all food'))).toBe('not known');
    const some = { value: 2000, unit: 'mg', atLeast: true } as const;
    expect(valueIn(againstUpperLimit('calcium', stage, some, 'all food'))).toBe('not known');
    expect(valueIn(againstUpperLimit('calcium', stage, { ...some, value: 2600 }, 'all food'))).toBe('above');
  });

  it('refuses food against a level that counts only supplements or one form', () => {
    const stage = 'males 19 to 30 years';
    expect(refusalOf(againstUpperLimit('magnesium', stage, known(400, 'mg'), 'all food')).reason).toBe(
      'The upper level of magnesium counts supplements and medicines only.',
    );
    expect(valueIn(againstUpperLimit('magnesium', stage, known(400, 'mg'), 'what the level counts'))).toBe(
      'above',
    );
    expect(refusalOf(againstUpperLimit('sodium', stage, known(9000, 'mg'), 'all food')).reason).toContain(
      'No upper level of sodium',
    );
  });
});

describe('allowances without meat', () => {
  it('are raised by the factor', () => {
    const iron = valueIn(meatlessIntake('iron', 'males 19 to 30 years'));
    // DRI 2001, iron chapter, from memory: 14 mg for men (8 × 1.8 = 14.4).
    expect(iron.value).toBeCloseTo(14.4, 9);
    expect(evaluate(iron.working)).toBeCloseTo(14.4, 9);
    expect(iron.upTo).toBe(false);
    expect(valueIn(meatlessIntake('zinc', 'females 19 to 30 years'))).toMatchObject({
      value: 12,
      upTo: true,
    });
  });

  it('are refused in the first half year, which has no allowance', () => {
    expect(refusalOf(meatlessIntake('iron', 'infants 0 to 6 months')).reason).toBe(
      'No allowance of iron is set for infants 0 to 6 months.',
    );
  });
});
