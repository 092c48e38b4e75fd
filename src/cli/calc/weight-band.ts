import { bandOn, constantChangeFor, dayOfMonth, ok, weightBand } from '../../nutrition/index.js';
import { choice } from './choices.js';
import { calculation } from './contract.js';
import { byDefault, measured, number } from './fields.js';
import { ofNumber, ofRange, ofWord, ofWorked } from './values.js';
import { CHANGE, EXAMPLE, exampleOf, FOR_WEIGHT, WOMAN } from './weight-inputs.js';

/** What the weight model is run many times for. */
export const WEIGHT_BANDS = [
  calculation({
    name: 'weight-band',
    what: 'the band of change that the model gives over activity, body fat and how far a change is kept to',
    inputs: {
      ...EXAMPLE,
      activity: byDefault(EXAMPLE.activity, 1.5, 'not used: the band runs over 1.4 and 1.8'),
      change: CHANGE,
      month: number('months', 'the month that is asked', { range: '1 to 36' }),
      unit: byDefault(choice(['lb', 'kg'], 'what the readers count in, for the fastest pace'), 'lb'),
    },
    example: [...WOMAN.slice(0, 4), 'change=-300kcal', 'month=12'],
    holdsFor: `${FOR_WEIGHT}; no change above zero, no intake below the guideline's range`,
    sources: ['hall-2011'],
    ofPeople: true,
    compute: (values) => {
      const { change, month, unit } = values;
      const band = weightBand(exampleOf(values).adult, [{ fromDay: 0, change }], month, unit);
      if (!band.ok) return band;
      const { pace } = band.value;
      const there = bandOn(band.value, dayOfMonth(month));
      if (!there.ok) return there;
      return ok({
        results: [
          ofRange('change of weight', there.value.range, 'kg', there.value.working),
          ofWord('pace of its fastest course', pace.flag),
          ofNumber('greatest mean loss over four weeks', pace.fourWeekMean, 'kg a week'),
        ],
      });
    },
  }),
  calculation({
    name: 'constant-change',
    what: 'the constant change of intake with which the model takes an invented adult to a weight',
    inputs: {
      ...EXAMPLE,
      goal: measured(['kg', 'lb'], 'the weight at the end, not a loss'),
      days: number('days', 'whole days until then', { range: '28 to 3650' }),
    },
    example: [...WOMAN, 'goal=73.19kg', 'days=365'],
    holdsFor: `${FOR_WEIGHT}; no pace that is too fast, no intake below the guideline's range`,
    sources: ['hall-2011'],
    ofPeople: true,
    compute: (values) => {
      const found = constantChangeFor(exampleOf(values), values.goal, values.days);
      if (!found.ok) return found;
      return ok({
        results: [
          ofWorked('change of intake', found.value.change, 'a day'),
          ofWorked('intake', found.value.intake, 'a day'),
        ],
      });
    },
  }),
];
