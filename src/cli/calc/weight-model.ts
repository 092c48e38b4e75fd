import {
  judgeCourse,
  ok,
  type Result,
  refuse,
  screen,
  type WeightCourse,
  weightBaseline,
  weightChangeOn,
  weightCourse,
  weightOn,
} from '../../nutrition/index.js';
import { type Answer, calculation } from './contract.js';
import { number, optional } from './fields.js';
import { ofNumber, ofReckoned, ofWord, ofWorked } from './values.js';
import { CHANGE, EXAMPLE, exampleOf, FOR_WEIGHT, WOMAN } from './weight-inputs.js';

export const WEIGHT_COURSES = [
  calculation({
    name: 'weight-baseline',
    what: 'the body of an invented adult at the start of the weight model, and the energy that keeps it',
    inputs: EXAMPLE,
    example: ['sex=male', 'age=23', 'height=180cm', 'weight=100kg', 'activity=1.5'],
    holdsFor: FOR_WEIGHT,
    sources: ['hall-2011'],
    ofPeople: true,
    compute: (values) => {
      const example = exampleOf(values);
      const may = screen(example.adult);
      if (!may.ok) return may;
      const start = weightBaseline(example);
      if (!start.ok) return start;
      const { fat, fluid, lean, intake, moving, rest } = start.value;
      return ok({
        results: [
          ofReckoned('fat', fat),
          ofNumber('extracellular fluid', fluid, 'kg'),
          ofNumber('lean tissue without fluid and glycogen', lean, 'kg'),
          ofWorked('intake that keeps the weight', intake, 'a day'),
          ofReckoned('moving about', moving),
          ofReckoned('rest of the day', rest),
        ],
      });
    },
  }),
  calculation({
    name: 'weight-course',
    also: ['hall-model', 'weight-model'],
    what: 'weight of an invented adult on a day after intake changed, by the dynamic model',
    inputs: {
      ...EXAMPLE,
      change: CHANGE,
      day: number('days', 'the day that is asked, whole', { range: '0 to 3650' }),
      'later-change': optional(CHANGE, 'the change is held'),
      'later-day': optional(
        number('days', 'the day from which the later change holds'),
        'the change is held',
      ),
    },
    example: [...WOMAN, 'change=-500kcal', 'day=365'],
    holdsFor: `${FOR_WEIGHT}; intake from 800 kcal a day to twice the start's`,
    sources: ['hall-2011'],
    ofPeople: true,
    compute: (values) => {
      const { change, day } = values;
      const [later, from] = [values['later-change'], values['later-day']];
      const example = exampleOf(values);
      const may = screen(example.adult);
      if (!may.ok) return may;
      const steps = [{ fromDay: 0, change }];
      if ((later === undefined) !== (from === undefined))
        return refuse(
          'A later change needs its day, and a day its change.',
          'Write later-change and later-day.',
        );
      if (later !== undefined && from !== undefined) steps.push({ fromDay: from, change: later });
      const course = weightCourse(example, steps, day);
      if (!course.ok) return course;
      return courseAnswer(course.value, day);
    },
  }),
];

function courseAnswer(course: WeightCourse, day: number): Result<Answer> {
  const weight = weightOn(course, day);
  if (!weight.ok) return weight;
  const change = weightChangeOn(course, day);
  if (!change.ok) return change;
  const pace = judgeCourse(course, 'lb');
  return ok({
    results: [
      ofWorked('weight', weight.value),
      ofWorked('change of weight', change.value),
      ofWorked('intake at the start', course.baseline.intake, 'a day'),
      ofWord('pace', pace.flag),
      ofNumber('greatest loss in any seven days', pace.greatestWeek, 'kg'),
    ],
    cautions: [
      'A single course promises too much; what is shown to people is a band.',
      ...(pace.flag === 'ok' ? [] : [`The pace is ${pace.flag}: it may not stand in group material.`]),
    ],
  });
}
