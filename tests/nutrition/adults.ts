import fc from 'fast-check';
import type { Adult, Sex, WeightExample } from '../../src/nutrition/index.js';

/** An invented adult in metric units. */
export function adult(sex: Sex, age: number | null, cm: number | null, kg: number | null): Adult {
  return { sex, age, height: { value: cm, unit: 'cm' }, weight: { value: kg, unit: 'kg' } };
}

/** The same for the weight model, at activity 1.5. */
export function example(sex: Sex, age: number, cm: number, kg: number, activity = 1.5): WeightExample {
  return { adult: adult(sex, age, cm, kg), activity };
}

/** Invented adults in the domain of every equation, with an index from 18.6 to 45. */
export const anyAdult: fc.Arbitrary<Adult> = fc
  .record({
    sex: fc.constantFrom<Sex>('female', 'male'),
    age: fc.integer({ min: 19, max: 78 }),
    cm: fc.integer({ min: 145, max: 200 }),
    bmi: fc.integer({ min: 186, max: 450 }),
  })
  .map(({ sex, age, cm, bmi }) => adult(sex, age, cm, (bmi / 10) * (cm / 100) ** 2));
