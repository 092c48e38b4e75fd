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
  LEVEL_MEANS,
  ok,
  oxfordEnergy,
  type Result,
  restingEnergy,
} from '../../nutrition/index.js';
import { choice, several } from './choices.js';
import { type Answer, calculation, type Values } from './contract.js';
import { byDefault, measured, number, numberOrUnknown, optional } from './fields.js';
import { ofReckoned, ofWord, ofWorked } from './values.js';

/** What formulas are told about an invented adult. */
export const ADULT = {
  sex: choice(['female', 'male'], 'the sex that the equation was fitted for'),
  age: numberOrUnknown('years', 'years since birth', { range: '19 and over; see what it holds for' }),
  height: measured(['cm', 'm', 'in', 'ft'], 'height, also as 5 ft 9 in', { range: '100 to 250 cm' }),
  weight: measured(['kg', 'lb'], 'body weight', { range: '20 to 400 kg' }),
  circumstances: several(CIRCUMSTANCES, 'what makes a formula wrong for somebody'),
};

export function adultOf(values: Values<typeof ADULT>): Adult {
  const { sex, age, height, weight, circumstances } = values;
  return { sex, age, height, weight, circumstances };
}

function estimate(name: string, result: Result<EnergyEstimate>): Result<Answer> {
  if (!result.ok) return result;
  const { equation, cautions, checked } = result.value;
  return ok({
    results: [ofWorked(name, result.value, 'a day'), ofWord('equation', equation)],
    cautions,
    checked,
  });
}

const PLAIN = 'not pregnant and not breastfeeding';

export const ENERGY = [
  calculation({
    name: 'resting-energy',
    also: ['mifflin-st-jeor', 'mifflin', 'ree', 'rmr'],
    what: 'resting energy of an adult by Mifflin and St Jeor',
    inputs: {
      ...ADULT,
      form: byDefault(
        choice(['simplified', 'regression'], 'the form in practice, or the unrounded one of the paper'),
        'simplified',
      ),
    },
    example: ['sex=male', 'age=45', 'height=178cm', 'weight=90kg'],
    holdsFor: `healthy adults of 19 to 78 years, ${PLAIN}`,
    sources: ['mifflin-1990'],
    ofPeople: true,
    compute: (values) => estimate('resting energy', restingEnergy(adultOf(values), values.form)),
  }),
  calculation({
    name: 'oxford-energy',
    also: ['henry', 'basal-energy', 'bmr'],
    what: 'basal energy of an adult by the Oxford equations of Henry',
    inputs: {
      ...ADULT,
      height: byDefault(ADULT.height, { value: null, unit: 'cm' }, 'unknown'),
      form: byDefault(choice(['weight', 'weight and height'], 'what the equation is told'), 'weight'),
    },
    example: ['sex=male', 'age=45', 'weight=90kg'],
    holdsFor: `adults of 18 years and over, ${PLAIN}; a band of ages ends on the birthday`,
    sources: ['henry-2005'],
    ofPeople: true,
    compute: (values) => estimate('basal energy', oxfordEnergy(adultOf(values), values.form)),
  }),
  calculation({
    name: 'energy-need',
    also: ['eer', 'energy-need-2023', 'estimated-energy-requirement'],
    what: 'energy that keeps the weight of an adult as it is, by the equations of 2023',
    inputs: { ...ADULT, activity: choice(ACTIVITY_LEVELS[2023], 'how active the whole day is') },
    example: ['sex=male', 'age=30', 'height=170cm', 'weight=70kg', 'activity=inactive'],
    holdsFor: `adults of 19 years and over, any body mass index, ${PLAIN}`,
    sources: ['dri-energy-2023'],
    ofPeople: true,
    compute: (values) => {
      const answer = estimate('energy need', energyNeed(adultOf(values), values.activity));
      if (!answer.ok) return answer;
      const means = `${values.activity}: ${LEVEL_MEANS[values.activity]}`;
      return ok({ ...answer.value, results: [...answer.value.results, ofWord('activity', means)] });
    },
  }),
  calculation({
    name: 'energy-need-2005',
    also: ['eer-2005'],
    what: 'energy that keeps the weight of an adult as it is, by the equations of 2002/2005',
    inputs: { ...ADULT, activity: choice(ACTIVITY_LEVELS[2005], 'how active the whole day is') },
    example: ['sex=female', 'age=30', 'height=1.5m', 'weight=41.625kg', 'activity=sedentary'],
    holdsFor: `adults of 19 years and over with a body mass index from 18.5, ${PLAIN}`,
    sources: ['dri-macronutrients-2005'],
    ofPeople: true,
    compute: (values) => estimate('energy need', energyNeed2005(adultOf(values), values.activity)),
  }),
  calculation({
    name: 'activity-level',
    also: ['pal', 'physical-activity-level'],
    what: 'the word for a physical activity level (energy of the day ÷ basal energy)',
    inputs: {
      level: number('', 'physical activity level', { range: '1.00 to below 2.50' }),
      edition: byDefault(choice(['2023', '2005'], 'the edition whose limits count'), '2023'),
    },
    example: ['level=1.68'],
    holdsFor: 'adults of 19 years and over',
    sources: ['dri-energy-2023', 'dri-macronutrients-2005'],
    ofPeople: true,
    compute: ({ level, edition }) => {
      const word = activityLevelOf(level, edition === '2023' ? 2023 : 2005);
      return word.ok ? ok({ results: [ofWord('activity', word.value)] }) : word;
    },
  }),
  calculation({
    name: 'body-mass-index',
    also: ['bmi'],
    what: 'body mass index and, for an adult, its class before any rounding',
    inputs: {
      height: ADULT.height,
      weight: ADULT.weight,
      age: optional(number('years', 'years since birth; needed for the class', { range: '20 and over' })),
    },
    example: ['height=65in', 'weight=180lb', 'age=40'],
    holdsFor: `heights of 100 to 250 cm and weights of 20 to 400 kg; classes from ${BMI_CLASSES.length} bands, 20 years and over`,
    sources: ['CDC and WHO cut points for adults (25 and 30 seen restated, the others from memory)'],
    ofPeople: true,
    compute: ({ height, weight, age }) => {
      const index = bodyMassIndex(height, weight);
      if (!index.ok) return index;
      const shown = ofReckoned('body mass index', index.value);
      const { value } = index.value;
      if (age === undefined || value === null) return ok({ results: [shown] });
      const named = bmiClass(value, age);
      return named.ok ? ok({ results: [shown, ofWord('class', named.value)] }) : named;
    },
  }),
];
