import {
  linearChange,
  linearWeight,
  ok,
  refuse,
  ruleOfThumb,
  staticRule,
  unitRatio,
} from '../../nutrition/index.js';
import { calculation } from './contract.js';
import { amount, byDefault, number, numberOrUnknown, optional } from './fields.js';
import { ofReckoned, ofWorked } from './values.js';
import { CHANGE } from './weight-inputs.js';

/** What is quicker than the weight model: its straight form, and rules of thumb. */
export const WEIGHT_RULES = [
  calculation({
    name: 'linear-weight',
    what: 'the weight model made straight around the start: how much, and how fast, a change of intake moves weight',
    inputs: {
      fat: amount(['kg', 'lb'], 'fat at the start'),
      moving: byDefault(numberOrUnknown('', 'energy of moving about, kJ per kg a day'), 30, '30 (sedentary)'),
      change: optional(CHANGE),
      days: optional(number('days', 'days after the change; needed with it')),
    },
    example: ['fat=30kg', 'moving=30'],
    holdsFor: 'small changes around the start',
    sources: ['hall-2011'],
    ofPeople: true,
    compute: ({ fat, moving, change, days }) => {
      const form = linearWeight(fat.value * unitRatio(fat.unit, 'kg'), moving);
      if (!form.ok) return form;
      const { energyDensity, following, time, halfTime } = form.value;
      const results = [
        ofReckoned('energy density', energyDensity),
        ofReckoned('expenditure follows each kg by', following),
        ofReckoned('time in which 63 percent comes', time),
        ofReckoned('half time', halfTime),
      ];
      if (change === undefined) return ok({ results });
      if (days === undefined) return refuse('The days after the change are missing.', 'Write days=365.');
      const moved = linearChange(form.value, change, days);
      return moved.ok ? ok({ results: [...results, ofWorked('change of weight', moved.value)] }) : moved;
    },
  }),
  calculation({
    name: 'weight-rule-of-thumb',
    what: 'what the published rules of thumb say of a change of intake that is held for good',
    inputs: { change: CHANGE },
    example: ['change=-500kJ'],
    holdsFor: 'an average overweight adult; a rule for groups',
    sources: ['hall-2011'],
    ofPeople: true,
    compute: ({ change }) => {
      const { eventual, afterOneYear, afterThreeYears } = ruleOfThumb(change);
      return ok({
        results: [
          ofWorked('in the end', eventual),
          ofWorked('after about one year', afterOneYear),
          ofWorked('after about three years', afterThreeYears),
        ],
        cautions: ['By body fat the equations give 0.8 to 1.5 kg for each 100 kJ a day.'],
      });
    },
  }),
  calculation({
    name: 'static-rule',
    also: ['3500-rule'],
    what: 'what the rule of 3500 kcal a pound would say; only to show that it misleads',
    inputs: { change: CHANGE, days: number('days', 'days from the start') },
    example: ['change=500kcal', 'days=7'],
    holdsFor: 'nobody: it leaves out that the body uses less as it gets lighter',
    sources: ['wishnofsky-1958'],
    ofPeople: true,
    compute: ({ change, days }) => {
      const said = staticRule(change, days);
      if (!said.ok) return said;
      return ok({ results: [ofWorked('change of weight', said.value)], cautions: [said.value.warning] });
    },
  }),
];
