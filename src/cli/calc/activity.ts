import {
  type AerobicWeek,
  activityEnergy,
  activityWeek,
  aerobicWeek,
  childWeek,
  intensityOf,
  MET_ROWS,
  type Move,
  type MoveKind,
  metOf,
  ok,
  type Result,
  refuse,
} from '../../nutrition/index.js';
import { choice, listOf } from './choices.js';
import { calculation, type Field, type Shown } from './contract.js';
import { ADULT } from './energy.js';
import { byDefault, number, numberOrUnknown, optional } from './fields.js';
import { ofNumber, ofReckoned, ofWord, ofWorked } from './values.js';

const MINUTES = numberOrUnknown('min', 'minutes');
const NAMES = [
  ...new Set(MET_ROWS.flatMap(({ code, activity }) => [activity, ...(code === null ? [] : [code])])),
];
const GUIDELINES = 'activity-guidelines-2018';

/** One thing on one day, as `1 moderate 30` or `2 strength`. */
const MOVES: Field<Move> = {
  help: 'day (1 to 7), kind and minutes, such as 1 moderate 30; kinds: light, moderate, vigorous, strength, balance',
  units: [],
  read: (text): Result<Move> => {
    const found = /^([1-7])\s+(light|moderate|vigorous|strength|balance)(?:\s+(.+))?$/i.exec(text.trim());
    if (found === null)
      return refuse(`"${text}" is no activity of a day.`, 'Write day, kind and minutes: 1 moderate 30.');
    const minutes = found[3] === undefined ? ok(null) : MINUTES.read(found[3]);
    if (!minutes.ok) return minutes;
    const kind = String(found[2]).toLowerCase() as MoveKind;
    return ok({ day: Number(found[1]), kind, minutes: minutes.value });
  },
};

function aerobic(week: AerobicWeek): Shown[] {
  return [
    { ...ofReckoned('moderate equivalents', week.equivalent), atLeast: week.atLeast },
    ofWord('150 minutes reached', week.meetsAerobic),
    ofNumber('missing to 150', week.missing, 'min'),
  ];
}

export const ACTIVITY = [
  calculation({
    name: 'activity-energy',
    also: ['met', 'met-energy'],
    what: 'energy of an activity by its metabolic equivalents',
    inputs: {
      activity: choice(NAMES, 'five-digit code or name'),
      edition: choice(['2024', '2011'], 'edition of the compendium; editions are not mixed'),
      weight: ADULT.weight,
      minutes: MINUTES,
      form: byDefault(
        choice(['by kilogram', 'by oxygen'], 'what 1 MET is; the oxygen form gives 5 percent more'),
        'by kilogram',
      ),
      net: byDefault(choice(['yes', 'no'], 'without what sitting quietly would have used'), 'no'),
      age: optional(number('years', 'years since birth; the 2024 edition is for 19 to 59'), 'not said'),
    },
    example: ['activity=walking, 2.5 mph', 'edition=2024', 'weight=70kg', 'minutes=30'],
    holdsFor:
      'clinicians who check the tool: material for learners shows no energy burned; to the nearest 10 kcal at best',
    sources: [],
    ofPeople: true,
    compute: ({ activity, edition, weight, minutes, form, net, age }) => {
      const row = metOf(activity, edition === '2024' ? 2024 : 2011);
      if (!row.ok) return row;
      const options = { form, net: net === 'yes', ...(age === undefined ? {} : { age }) };
      const energy = activityEnergy(row.value, weight, minutes, options);
      if (!energy.ok) return energy;
      const { met, activity: name, checked } = row.value;
      return ok({
        results: [
          ofWorked('energy', energy.value),
          { ...ofNumber('metabolic equivalent', met, 'MET'), says: `${name}: ${intensityOf(met)}` },
        ],
        checked,
      });
    },
  }),
  calculation({
    name: 'aerobic-week',
    what: 'aerobic minutes of a week in moderate equivalents',
    inputs: {
      moderate: byDefault(listOf(MINUTES), [], 'none'),
      vigorous: byDefault(listOf(MINUTES), [], 'none'),
    },
    example: ['moderate=30; 30; 30', 'vigorous=30'],
    holdsFor: 'adults; seated and chair forms count like others',
    sources: [GUIDELINES],
    compute: ({ moderate, vigorous }) => {
      const week = aerobicWeek(moderate, vigorous);
      return week.ok ? ok({ results: aerobic(week.value) }) : week;
    },
  }),
  calculation({
    name: 'activity-week',
    what: 'a week against the guidelines: aerobic minutes, days of strength, balance',
    inputs: {
      moves: listOf(MOVES),
      group: byDefault(choice(['adult', 'older adult'], 'from 65 years balance is asked for'), 'adult'),
    },
    example: ['moves=1 moderate 50; 3 moderate 50; 5 moderate 50; 2 strength; 4 strength'],
    holdsFor: 'adults; children have minutes by the day',
    sources: [GUIDELINES],
    compute: ({ moves, group }) => {
      const week = activityWeek(moves, group);
      if (!week.ok) return week;
      const { strengthDays, meetsStrength, meetsBalance } = week.value;
      return ok({
        results: [
          ...aerobic(week.value),
          {
            ...ofNumber('days with strength work', strengthDays, 'days'),
            says: meetsStrength ? 'enough' : 'two are asked for',
          },
          ...(meetsBalance === null ? [] : [ofWord('balance work', meetsBalance ? 'yes' : 'no')]),
        ],
      });
    },
  }),
  calculation({
    name: 'child-week',
    what: 'on how many days a child or teenager reaches 60 minutes',
    inputs: { minutes: listOf(MINUTES) },
    example: ['minutes=60; 75; 20; 60; 45; 90; 60'],
    holdsFor: 'children and teenagers of 6 to 17 years',
    sources: [GUIDELINES],
    compute: ({ minutes }) => {
      const week = childWeek(minutes);
      if (!week.ok) return week;
      const { reached, notKnown, days } = week.value;
      return ok({
        results: [
          { ...ofNumber('days with 60 minutes', reached, 'days'), says: `of ${days}` },
          ofNumber('days not known', notKnown, 'days'),
        ],
      });
    },
  }),
];
