import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  DAILY_GROUPS,
  GUIDANCE_ACTIVITIES,
  GUIDANCE_EDITIONS,
  GUIDANCE_TOPICS,
  guidanceEnergyNeed,
  guidanceLimit,
  oneEdition,
  PATTERN_LEVELS,
  type PatternAmount,
  patternAt,
  WEEKLY_GROUPS,
} from '../../src/nutrition/index.js';
import { refusalOf, valueIn } from './expect-result.js';

const say = ({ low, high, unit, per }: PatternAmount) =>
  low === null ? 'not known' : `${low === high ? low : `${low} to ${high}`} ${unit} a ${per}`;
const at = (kcal: number, edition: 'us-2020' | 'us-2025' = 'us-2020') =>
  Object.fromEntries(valueIn(patternAt(edition, kcal)).map((amount) => [amount.group, say(amount)]));

describe('the 2020 pattern', () => {
  it('has twelve levels, each whole', () => {
    expect(PATTERN_LEVELS).toEqual([1000, 1200, 1400, 1600, 1800, 2000, 2200, 2400, 2600, 2800, 3000, 3200]);
    for (const kcal of PATTERN_LEVELS) {
      const amounts = valueIn(patternAt('us-2020', kcal));
      expect(amounts.map(({ group }) => group)).toEqual([
        ...DAILY_GROUPS,
        ...WEEKLY_GROUPS,
        'seafood',
        'other uses',
      ]);
      for (const { low, high, group } of amounts) {
        expect(low, group).toBeGreaterThan(0);
        expect(high, group).toBeGreaterThanOrEqual(low ?? Number.NaN);
      }
    }
  });

  it('is the published one at 2000 kcal', () => {
    // Dietary Guidelines for Americans, 2020-2025, table A3-2, typed again from a public copy.
    expect(at(2000)).toEqual({
      vegetables: '2.5 cup-equivalent a day',
      fruit: '2 cup-equivalent a day',
      grains: '6 ounce-equivalent a day',
      'whole grains': '3 ounce-equivalent a day',
      'refined grains': '3 ounce-equivalent a day',
      dairy: '3 cup-equivalent a day',
      'protein foods': '5.5 ounce-equivalent a day',
      oils: '27 g a day',
      'dark green vegetables': '1.5 cup-equivalent a week',
      'red and orange vegetables': '5.5 cup-equivalent a week',
      'beans, peas and lentils': '1.5 cup-equivalent a week',
      'starchy vegetables': '5 cup-equivalent a week',
      'other vegetables': '4 cup-equivalent a week',
      'meats, poultry and eggs': '26 ounce-equivalent a week',
      'nuts, seeds and soy': '5 ounce-equivalent a week',
      seafood: '8 ounce-equivalent a week',
      'other uses': '240 kcal a day',
    });
  });

  it('keeps the range of seafood at 1000 kcal and the cells that copies disagree on', () => {
    expect(at(1000).seafood).toBe('2 to 3 ounce-equivalent a week');
    expect(at(1200)['other uses']).toBe('80 kcal a day');
    expect(at(2600)['other uses']).toBe('350 kcal a day');
    expect(at(2800).vegetables).toBe('3.5 cup-equivalent a day');
    expect(at(2400).fruit).toBe('2 cup-equivalent a day');
  });

  it('adds up: grains of two kinds, and vegetables and protein foods over a week', () => {
    for (const kcal of PATTERN_LEVELS) {
      const of = (group: string) =>
        valueIn(patternAt('us-2020', kcal)).find((amount) => amount.group === group)?.low ?? Number.NaN;
      expect(of('whole grains') + of('refined grains')).toBe(of('grains'));
      const vegetables = WEEKLY_GROUPS.slice(0, 5).reduce((so, group) => so + of(group), 0);
      // The published subgroups are rounded to half cups.
      expect(Math.abs(vegetables - of('vegetables') * 7)).toBeLessThanOrEqual(3);
      const protein = of('meats, poultry and eggs') + of('nuts, seeds and soy') + of('seafood');
      expect(Math.abs(protein - of('protein foods') * 7)).toBeLessThanOrEqual(2);
    }
  });

  it('never shrinks with energy', () => {
    for (const group of DAILY_GROUPS) {
      const amounts = PATTERN_LEVELS.map(
        (kcal) => valueIn(patternAt('us-2020', kcal)).find((amount) => amount.group === group)?.low,
      );
      // Refined grains fall from 2.5 to 2 between 1400 and 1600, as published.
      if (group !== 'refined grains')
        expect(amounts).toEqual([...amounts].sort((a, b) => (a ?? 0) - (b ?? 0)));
    }
  });

  it('is not drawn between levels', () => {
    expect(refusalOf(patternAt('us-2020', 1500))).toMatchObject({
      reason: 'There is no pattern at 1500 kcal.',
      near: ['1400', '1600'],
    });
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 5000 }),
        fc.constantFrom(...GUIDANCE_EDITIONS),
        (kcal, edition) => {
          expect(patternAt(edition, kcal).ok).toBe(PATTERN_LEVELS.includes(kcal));
        },
      ),
    );
  });
});

describe('the 2025 pattern', () => {
  it('says what is known at 2000 kcal, in servings, and that the rest is not known', () => {
    // Press and professional summaries of January 2026.
    expect(at(2000, 'us-2025')).toEqual({
      vegetables: '3 serving a day',
      fruit: '2 serving a day',
      grains: 'not known',
      'whole grains': '2 to 4 serving a day',
      'refined grains': 'not known',
      dairy: '3 serving a day',
      'protein foods': 'not known',
      oils: 'not known',
    });
    expect(new Set(Object.values(at(1800, 'us-2025')))).toEqual(new Set(['not known']));
  });
});

describe('energy needs', () => {
  it.each([
    // 2020-2025, table A2-2, typed again from one public copy.
    ['female', 2, 'active', 1000],
    ['female', 40, 'sedentary', 1800],
    ['female', 51, 'moderately active', 1800],
    ['male', 15.99, 'active', 3000],
    ['male', 20, 'sedentary', 2600],
    ['male', 21, 'sedentary', 2400],
    ['male', 90, 'active', 2400],
  ] as const)('%s of %d, %s: %d', (sex, years, activity, kcal) => {
    expect(valueIn(guidanceEnergyNeed('us-2020', sex, years, activity))).toBe(kcal);
  });

  it('rise with activity, and land on a level of the pattern', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('female' as const, 'male' as const),
        fc.double({ min: 2, max: 129, noNaN: true }),
        (sex, years) => {
          const needs = GUIDANCE_ACTIVITIES.map((how) =>
            valueIn(guidanceEnergyNeed('us-2020', sex, years, how)),
          );
          expect(needs).toEqual([...needs].sort((a, b) => a - b));
          for (const kcal of needs) expect(PATTERN_LEVELS).toContain(kcal);
        },
      ),
    );
  });

  it('are refused under two years, at no age, and in the 2025 edition', () => {
    for (const years of [1.99, -1, 130, Number.NaN])
      expect(refusalOf(guidanceEnergyNeed('us-2020', 'female', years, 'active')).reason).toBe(
        `The edition gives no energy need at ${years} years.`,
      );
    expect(refusalOf(guidanceEnergyNeed('us-2025', 'female', 30, 'active')).reason).toBe(
      'The energy needs of dga-2025-2030 are not known.',
    );
  });
});

describe('limits of the editions', () => {
  it.each([
    // 2020-2025 as copies give it; 2025-2030 as summaries of January 2026 give it.
    ['us-2020', 'added sugars', 'below 10 percent of energy'],
    ['us-2025', 'added sugars', '10 g a meal'],
    ['us-2020', 'sodium', 'below 2300 mg a day'],
    ['us-2025', 'sodium', 'below 2300 mg a day'],
    ['us-2020', 'protein', 'none'],
    ['us-2025', 'protein', '1.2 to 1.6 g per kg of body weight a day'],
    ['us-2020', 'alcohol, men', '2 drinks a day'],
    ['us-2020', 'alcohol, women', '1 drinks a day'],
    ['us-2025', 'alcohol, men', 'none'],
    ['us-2025', 'saturated fat', '10 percent of energy'],
  ] as const)('%s, %s: %s', (edition, topic, said) => {
    const { says, low, high, under, unit } = guidanceLimit(edition, topic);
    const range = `${low === null ? '' : `${low} to `}${high} ${unit}`;
    expect(says === 'none' ? 'none' : `${under ? 'below ' : ''}${range}`).toBe(said);
  });

  it('name their edition, its source and how it was checked', () => {
    for (const edition of GUIDANCE_EDITIONS)
      for (const topic of GUIDANCE_TOPICS) {
        const limit = guidanceLimit(edition, topic);
        expect([limit.edition, limit.topic, limit.checked]).toEqual([edition, topic, 'copies']);
        expect(limit.source).toMatch(/^dga-20\d\d-20\d\d$/);
        expect(limit.high === null).toBe(limit.says === 'none');
      }
  });

  it('are never mixed, and have no default', () => {
    const old = guidanceLimit('us-2020', 'sodium');
    const fresh = guidanceLimit('us-2025', 'sodium');
    expect(valueIn(oneEdition([old, old]))).toBe('us-2020');
    expect(refusalOf(oneEdition([old, fresh])).reason).toBe('Numbers of us-2020 and us-2025 stand together.');
    expect(refusalOf(oneEdition([])).hint).toContain('there is no default');
  });
});
