import type { EnergyShare } from '../../nutrition/index.js';
import type { ComputeContext, Computed } from '../contract.js';
import { readProblem } from '../problems.js';
import type { Grams } from './compute-grams.js';
import type { Values } from './schema.js';

/** What a day holds, as far as it is known. */
export interface Totals {
  readonly grams: Grams;
  /** Shares of the energy, when everything is known. */
  readonly percent: Readonly<Record<EnergyShare, number>> | undefined;
  /** The known energy. */
  readonly kcal: number | null;
}

/** Lines of the register; energy in kcal, shares in percent, weights in g. */
const LINE = {
  usualCarbohydrate: 45,
  lowCarbohydrate: 26,
  veryLowCarbohydrate: 10,
  lowGrams: 130,
  veryLowGrams: 50,
  mealGrams: 15,
  highProtein: 20,
  ketogenicFat: 80,
  lowEnergy: 1500,
  leastEnergy: 1200,
  clinicEnergy: 800,
} as const;

/** What very little carbohydrate usually leaves short, as the register's box on gaps names it. */
export const SHORT_WITH_LITTLE_CARBOHYDRATE = 'fiber, folate and magnesium';

/**
 * What conditions of the register look at, with everything refused that is not to be made. A part that is not known
 * silences nothing: a low line holds on the known sum, and shares that are not known count as beyond every line.
 */
export function settingsOf(
  values: Values,
  totals: Totals,
  { report, refuse }: Pick<ComputeContext, 'report' | 'refuse'>,
): NonNullable<Computed['facts']['settings']> {
  const { of, as, person, guarded, place, meals } = values;
  const { grams, percent, kcal } = totals;
  const day = of === 'day';
  const carbohydrate = grams.carbohydrate.quantity.value ?? 0;
  const below = (line: number) => percent === undefined || percent.carbohydrate < line;
  const veryLow = below(LINE.veryLowCarbohydrate) || (day && carbohydrate < LINE.veryLowGrams);
  // Energy of which nothing is known lies below no line and above none.
  const less = (line: number) => day && kcal !== null && kcal < line;
  if (as === 'plan' && less(LINE.clinicEnergy)) refuse('R12', place);
  else if (as !== 'what is missing' && less(LINE.leastEnergy)) refuse('R11', place);
  else if (as !== 'what is missing' && person === 'man' && less(LINE.lowEnergy))
    report.add(
      readProblem(
        'directives/low-day',
        {
          reason: 'This day of a man is below 1,500 kcal.',
          hint: 'Add foods, or write as="what is missing" so that the page says that it is no plan.',
        },
        place,
      ),
    );
  // What is refused is known: shares that are not known are not shown either.
  const known = percent !== undefined;
  if (known && ((as === 'plan' && veryLow) || (guarded && below(LINE.lowCarbohydrate)))) refuse('R27', place);
  const smallMeal = meals.some(({ foods }) => {
    const known = foods.map(
      ({ food, portion }) => ((food.per100g.carbohydrate ?? 0) * portion.grams.value) / 100,
    );
    return known.reduce((sum, one) => sum + one, 0) < LINE.mealGrams;
  });
  const drink = grams.alcohol.quantity;
  const when = (holds: boolean, value: string) => (holds ? [value] : []);
  return {
    carbohydrate: [
      ...when(below(LINE.usualCarbohydrate), 'below 45 percent'),
      ...when(below(LINE.lowCarbohydrate), 'below 26 percent'),
      ...when(day && carbohydrate < LINE.lowGrams, 'below 130 g'),
      ...when(smallMeal, 'a meal below 15 g'),
    ],
    protein: when(percent === undefined || percent.protein > LINE.highProtein, 'above 20 percent'),
    energy: when(less(LINE.lowEnergy), 'below 1500 kcal'),
    alcohol: when(drink.value === null || drink.atLeast || drink.value > 0, 'yes'),
    subject: values.show.length === 1 ? values.show : [],
    diet: [
      ...when((percent?.fat ?? 0) >= LINE.ketogenicFat, 'ketogenic'),
      ...when(veryLow, 'very-low-carbohydrate'),
    ],
  };
}
