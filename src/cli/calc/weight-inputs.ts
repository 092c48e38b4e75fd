import type { WeightExample } from '../../nutrition/index.js';
import type { Values } from './contract.js';
import { ADULT, adultOf } from './energy.js';
import { amount, byDefault, number } from './fields.js';

/** An invented adult as the weight model sees one. */
export const EXAMPLE = {
  ...ADULT,
  activity: number('', 'physical activity level', { range: '1.2 to below 2.5' }),
  carbohydrate: byDefault(number('', 'share of the energy from carbohydrate', { range: '0 to 1' }), 0.5),
  'fat-points': byDefault(
    number('', 'points of fat more or less than the regression gives', { range: '-5 to 5', signed: true }),
    0,
  ),
};

export function exampleOf(values: Values<typeof EXAMPLE>): WeightExample {
  const { activity, carbohydrate } = values;
  return { adult: adultOf(values), activity, carbohydrate, fatPoints: values['fat-points'] };
}

/** A change of intake a day that is held. */
export const CHANGE = amount(['kcal', 'kJ'], 'change of intake a day; below zero is less food', {
  signed: true,
});

/** Whom the weight model and everything around it turns away. */
export const FOR_WEIGHT =
  'adults of 19 to 78 years with a body mass index from 18.5 whom nothing turns away; group means, never one person';

/** The words of an example that many tests of the model use. */
export const WOMAN = ['sex=female', 'age=40', 'height=165cm', 'weight=80kg', 'activity=1.5'];
