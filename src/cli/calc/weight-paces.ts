import { easedPace, intakeFlag, ok, paceAt, paceFlag, unitRatio, usefulLoss } from '../../nutrition/index.js';
import { choice } from './choices.js';
import { calculation } from './contract.js';
import { ADULT, adultOf } from './energy.js';
import { amount, byDefault, measured, number } from './fields.js';
import { ofNumber, ofRange, ofWord, ofWorked } from './values.js';
import { FOR_WEIGHT } from './weight-inputs.js';

const LB_KG = ['lb', 'kg'] as const;

export const WEIGHT_PACES = [
  calculation({
    name: 'eased-pace',
    what: 'a slow loss that eases as less is left: whole weeks to each milestone',
    inputs: {
      age: ADULT.age,
      height: ADULT.height,
      weight: ADULT.weight,
      circumstances: ADULT.circumstances,
      lose: amount(LB_KG, 'how much is to be lost'),
      every: byDefault(amount(LB_KG, 'distance of the milestones'), { value: 10, unit: 'lb' }, '10 lb'),
    },
    example: ['age=40', 'height=165cm', 'weight=200lb', 'lose=20lb'],
    holdsFor: FOR_WEIGHT,
    sources: ['common practice, no source'],
    ofPeople: true,
    compute: (values) => {
      const { sex: _, ...example } = adultOf({ ...values, sex: 'female' });
      const paced = easedPace(example, values.lose, values.every);
      if (!paced.ok) return paced;
      return ok({
        results: paced.value.milestones.map(({ lost, weeks }) =>
          ofNumber(`${lost} lb lost after`, weeks, 'weeks'),
        ),
      });
    },
  }),
  calculation({
    name: 'pace-at',
    what: 'the eased pace at one point: lb a week by what is left to lose',
    inputs: { left: amount(LB_KG, 'left to lose'), weight: amount(LB_KG, 'body weight at that point') },
    example: ['left=57.5lb', 'weight=200lb'],
    holdsFor: FOR_WEIGHT,
    sources: ['common practice, no source'],
    ofPeople: true,
    compute: ({ left, weight }) => {
      const inLb = (one: typeof left) => one.value * unitRatio(one.unit, 'lb');
      return ok({ results: [ofWorked('pace', paceAt(inLb(left), inLb(weight)), 'a week')] });
    },
  }),
  calculation({
    name: 'weekly-pace',
    what: 'whether a loss a week may stand in group material',
    inputs: { loss: amount(LB_KG, 'loss a week') },
    example: ['loss=2.5lb'],
    holdsFor: 'group material for adults',
    sources: ['CDC, 1 to 2 lb a week, from memory'],
    ofPeople: true,
    compute: ({ loss }) => ok({ results: [ofWord('pace', paceFlag(loss))] }),
  }),
  calculation({
    name: 'intake-floor',
    what: "where a day's intake stands against the guideline's lowest prescriptions",
    inputs: {
      sex: choice(['female', 'male'], 'the sex that the guideline names'),
      intake: number('kcal', 'energy a day'),
    },
    example: ['sex=female', 'intake=1150kcal'],
    holdsFor: 'adults; below 800 kcal is for trained staff in a medical setting only',
    sources: ['aha-acc-tos-2013'],
    ofPeople: true,
    compute: ({ sex, intake }) => ok({ results: [ofWord('intake', intakeFlag(sex, intake))] }),
  }),
  calculation({
    name: 'useful-loss',
    what: 'the loss from which health gains begin, 3 to 5 percent of weight',
    inputs: { weight: measured(['kg', 'lb'], 'body weight', { range: '20 to 400 kg' }) },
    example: ['weight=90kg'],
    holdsFor: 'adults with overweight',
    sources: ['aha-acc-tos-2013'],
    ofPeople: true,
    compute: ({ weight }) => {
      const loss = usefulLoss(weight);
      if (!loss.ok) return loss;
      const { unit, working } = loss.value;
      return ok({ results: [ofRange('useful loss', loss.value, unit, working)] });
    },
  }),
];
