import {
  againstUpperLimit,
  MEATLESS_FACTORS,
  meatlessIntake,
  ok,
  percentOfReferenceIntake,
} from '../../nutrition/index.js';
import { choice } from './choices.js';
import { calculation } from './contract.js';
import { measured } from './fields.js';
import { FOR_GROUPS, KINDS, NUTRIENT, SOMEONE, stageOf } from './intakes.js';
import { ofNumber, ofWord, quantityOf } from './values.js';

/** Amounts held against reference intakes. */
export const INTAKE_SHARES = [
  calculation({
    name: 'reference-intake-percent',
    what: 'an amount as percent of the intake to reach',
    inputs: {
      nutrient: NUTRIENT,
      amount: measured(['g', 'mg', 'µg', 'L', 'mL'], 'the amount a day, counted as the row counts it'),
      ...SOMEONE,
    },
    example: ['nutrient=potassium', 'amount=1300mg', 'age=30', 'sex=female'],
    holdsFor: FOR_GROUPS,
    sources: ['nasem-dri'],
    compute: ({ nutrient, amount, ...who }) => {
      const stage = stageOf(who);
      if (!stage.ok) return stage;
      const share = percentOfReferenceIntake(nutrient, stage.value, quantityOf(amount));
      if (!share.ok) return share;
      const { percent, of, working } = share.value;
      const whole = ofNumber(KINDS[of.kind], of.value, `${of.unit} a day`);
      return ok({ results: [ofNumber('percent of the intake', percent, 'percent', working), whole] });
    },
  }),
  calculation({
    name: 'against-upper-limit',
    what: 'how an amount a day stands to the upper level',
    inputs: {
      nutrient: NUTRIENT,
      amount: measured(['g', 'mg', 'µg'], 'the amount a day'),
      counted: choice(['all food', 'what the level counts'], 'what the amount counts'),
      ...SOMEONE,
    },
    example: ['nutrient=calcium', 'amount=2600mg', 'counted=all food', 'age=40', 'sex=male'],
    holdsFor: FOR_GROUPS,
    sources: ['nasem-dri'],
    compute: ({ nutrient, amount, counted, ...who }) => {
      const stage = stageOf(who);
      if (!stage.ok) return stage;
      const stands = againstUpperLimit(nutrient, stage.value, quantityOf(amount), counted);
      return stands.ok ? ok({ results: [ofWord('the amount is', stands.value)] }) : stands;
    },
  }),
  calculation({
    name: 'meatless-intake',
    what: 'the allowance of iron or zinc for those who eat no meat',
    inputs: {
      nutrient: choice(Object.keys(MEATLESS_FACTORS) as (keyof typeof MEATLESS_FACTORS)[], 'the nutrient'),
      ...SOMEONE,
    },
    example: ['nutrient=iron', 'age=30', 'sex=female'],
    holdsFor: FOR_GROUPS,
    sources: ['DRI for micronutrients, 2001, chapters on iron and zinc, factors from memory'],
    compute: ({ nutrient, ...who }) => {
      const stage = stageOf(who);
      if (!stage.ok) return stage;
      const intake = meatlessIntake(nutrient, stage.value);
      if (!intake.ok) return intake;
      const { value, unit, upTo, working } = intake.value;
      return ok({ results: [ofNumber(upTo ? 'up to' : 'allowance', value, `${unit} a day`, working)] });
    },
  }),
];
