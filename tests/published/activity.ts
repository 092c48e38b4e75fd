import { activityEnergy, activityWeek, aerobicWeek, type Move, metOf } from '../../src/nutrition/index.js';
import { valueIn } from '../nutrition/expect-result.js';
import { again, BY_HAND, PRINTED, type PublishedCase, RECALLED, row, worked } from './published-case.js';

const GUIDELINES = 'Physical Activity Guidelines for Americans 2018';

interface Walk {
  readonly code: string;
  readonly kg: number;
  readonly minutes: number;
}
const kcal =
  (form: 'by kilogram' | 'by oxygen') =>
  ({ code, kg, minutes }: Walk) =>
    worked(valueIn(activityEnergy(valueIn(metOf(code, 2024)), { value: kg, unit: 'kg' }, minutes, { form })));

export const ACTIVITY: readonly PublishedCase[] = [
  row({
    id: 'G-MET-01',
    what: 'MET × kg × hours, at 3.8 MET',
    given: { code: '17190', kg: 70, minutes: 30 },
    expected: 133,
    tolerance: 0.1,
    source: 'Compendium 2024: 1 MET = 1 kcal per kg and hour',
    status: BY_HAND,
    find: kcal('by kilogram'),
  }),
  row({
    id: 'G-MET-02',
    what: 'the oxygen form gives 5 percent more',
    given: { code: '17190', kg: 70, minutes: 30 },
    expected: 139.65,
    tolerance: 0.05,
    source: 'metabolic equations of exercise testing (ACSM)',
    status: BY_HAND,
    find: kcal('by oxygen'),
  }),
  row({
    id: 'G-MET-04',
    what: 'one code, two editions',
    given: { code: '17190', editions: [2011, 2024] },
    expected: [3.5, 3.8],
    source: 'Compendium 2011 (2.8-3.2 mph) and 2024 (2.8-3.4 mph)',
    status: PRINTED,
    find: ({ code, editions }) => editions.map((edition) => valueIn(metOf(code, edition)).met),
  }),
  row({
    id: 'G-PAG-01',
    what: 'minutes of a week in moderate equivalents',
    given: { moderate: 90, vigorous: 30 },
    expected: { equivalent: 150, meetsAerobic: 'yes', missing: 0, atLeast: false },
    source: `${GUIDELINES} (1 vigorous = 2 moderate)`,
    status: RECALLED,
    find: ({ moderate, vigorous }) => {
      const { equivalent, meetsAerobic, missing, atLeast } = valueIn(aerobicWeek([moderate], [vigorous]));
      return { equivalent: again(equivalent.value, equivalent.working), meetsAerobic, missing, atLeast };
    },
  }),
  row({
    id: 'G-PAG-02',
    what: 'just short, with strength on two days',
    given: [
      { day: 1, kind: 'moderate', minutes: 100 },
      { day: 3, kind: 'vigorous', minutes: 20 },
      { day: 2, kind: 'strength', minutes: 15 },
      { day: 5, kind: 'strength', minutes: 15 },
    ],
    expected: { equivalent: 140, meetsAerobic: 'no', missing: 10, strengthDays: 2, meetsStrength: true },
    source: GUIDELINES,
    status: RECALLED,
    find: (moves: readonly Move[]) => {
      const { equivalent, meetsAerobic, missing, strengthDays, meetsStrength } = valueIn(
        activityWeek(moves, 'adult'),
      );
      return {
        equivalent: again(equivalent.value, equivalent.working),
        meetsAerobic,
        missing,
        strengthDays,
        meetsStrength,
      };
    },
  }),
];
