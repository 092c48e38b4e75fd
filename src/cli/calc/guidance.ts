import {
  GUIDANCE_ACTIVITIES,
  GUIDANCE_EDITIONS,
  GUIDANCE_TOPICS,
  guidanceEnergyNeed,
  guidanceLimit,
  ok,
  PATTERN_LEVELS,
  patternAt,
} from '../../nutrition/index.js';
import { choice } from './choices.js';
import { calculation } from './contract.js';
import { number } from './fields.js';
import { ofNumber, ofRange, ofWord } from './values.js';

const EDITION = choice(GUIDANCE_EDITIONS, 'the edition; there is no default');
const ONE_EDITION = 'material that follows that edition; numbers of two editions never stand together';

/** What the editions of the US dietary guidelines print. */
export const GUIDANCE = [
  calculation({
    name: 'guidance-pattern',
    also: ['dietary-pattern'],
    what: 'food groups of an edition of the US dietary guidelines at an energy level',
    inputs: {
      edition: EDITION,
      energy: number('kcal', 'a level that the edition prints', { range: PATTERN_LEVELS.join(', ') }),
    },
    example: ['edition=us-2020', 'energy=2000kcal'],
    holdsFor: `${ONE_EDITION}; up to 1400 kcal for children of 2 to 8 years`,
    sources: [],
    compute: ({ edition, energy }) => {
      const pattern = patternAt(edition, energy);
      if (!pattern.ok) return pattern;
      return ok({
        results: pattern.value.map((row) => ({
          ...ofRange(row.group, row, `${row.unit} a ${row.per}`),
          ...(row.note === undefined ? {} : { says: row.note }),
        })),
        sources: [...new Set(pattern.value.map(({ source }) => source))],
        ...(pattern.value[0] === undefined ? {} : { checked: pattern.value[0].checked }),
      });
    },
  }),
  calculation({
    name: 'guidance-limit',
    what: 'what an edition of the US dietary guidelines says on a topic',
    inputs: { edition: EDITION, topic: choice(GUIDANCE_TOPICS, 'the topic') },
    example: ['edition=us-2025', 'topic=added sugars'],
    holdsFor: ONE_EDITION,
    sources: [],
    compute: ({ edition, topic }) => {
      const { says, low, high, under, unit, source, checked, note } = guidanceLimit(edition, topic);
      const shown =
        says === 'none' || high === null
          ? ofWord(topic, 'no figure, on purpose')
          : low === null
            ? { ...ofNumber(topic, high, unit), says: under ? 'below that' : 'at most' }
            : ofRange(topic, { low, high }, unit);
      return ok({
        results: [shown],
        sources: [source],
        checked,
        cautions: note === undefined ? [] : [note],
      });
    },
  }),
  calculation({
    name: 'guidance-energy-need',
    what: 'the energy level that an edition prints for an age, a sex and an activity',
    inputs: {
      edition: EDITION,
      sex: choice(['female', 'male'], 'the sex that the table names'),
      age: number('years', 'years since birth', { range: 'from 2' }),
      activity: choice(GUIDANCE_ACTIVITIES, "how active, in the edition's words"),
    },
    example: ['edition=us-2020', 'sex=female', 'age=30', 'activity=moderately active'],
    holdsFor: `${ONE_EDITION}; a level for choosing a pattern, not a measurement`,
    sources: ['dga-2020-2025'],
    ofPeople: true,
    compute: ({ edition, sex, age, activity }) => {
      const need = guidanceEnergyNeed(edition, sex, age, activity);
      return need.ok ? ok({ results: [ofNumber('energy level', need.value, 'kcal a day')] }) : need;
    },
  }),
];
