import { suitabilityBand, tallyPasses, tallyShare, webRuleFor } from '../../src/checks/index.js';
import { contrast } from '../../src/figures/index.js';
import { aboveGrade } from '../../src/reading/index.js';
import { BY_HAND, BY_HAND_RECALLED, PRINTED, type PublishedCase, RECALLED, row } from './published-case.js';

/** WCAG 2.2: 1.4.3 text and large text (18 pt, or 14 pt bold), 1.4.6 enhanced, 1.4.11 graphics. */
const LEAST = { text: 4.5, large: 3, enhanced: 7, graphic: 3 } as const;

export const PAGES: readonly PublishedCase[] = [
  row({
    id: 'I-CON-01',
    what: 'contrast ratios of grays on white, and of white on them',
    given: ['#000000', '#767676', '#777777', '#595959', '#949494'],
    expected: { on: [21, 4.54, 4.48, 7, 3.03], below: [21, 4.54, 4.48, 7, 3.03] },
    tolerance: 0.01,
    source: 'WCAG 2.2, success criterion 1.4.3 and definition of relative luminance',
    status: BY_HAND,
    find: (grays) => ({
      on: grays.map((gray) => contrast(gray, '#ffffff')),
      below: grays.map((gray) => contrast('#ffffff', gray)),
    }),
  }),
  row({
    id: 'I-CON-03',
    what: 'what passes and what fails, never rounded up: 4.48, 4.54, 3.03, 7.00 and 2.99',
    given: [
      ['#777777', 'text'],
      ['#767676', 'text'],
      ['#949494', 'large'],
      ['#595959', 'enhanced'],
      ['#959595', 'graphic'],
    ],
    expected: [false, true, true, true, false],
    source: 'WCAG 2.2, success criteria 1.4.3, 1.4.6 and 1.4.11',
    status: BY_HAND,
    find: (given) => given.map(([gray, use]) => contrast(gray, '#ffffff') >= LEAST[use]),
  }),
  row({
    id: 'I-GRD-01',
    what: 'grade 6 runs from 6.0 to under 7',
    given: [5.9, 6, 6.9, 7, 8.2],
    expected: [false, false, false, true, true],
    source: 'American Medical Association: sixth grade; NIH: sixth to eighth',
    status: RECALLED,
    find: (grades) => grades.map((grade) => aboveGrade(grade, 6)),
  }),
  row({
    id: 'I-PEM-01',
    what: 'understandability of a text: agreed of what applies, in percent',
    given: { agree: 12, disagree: 3, doesNotApply: 2 },
    expected: 80,
    tolerance: 0.05,
    source: 'AHRQ, user’s guide of the PEMAT: sum of points / items that apply × 100; 17 items in print',
    status: BY_HAND,
    find: ({ agree, disagree }) => tallyShare({ points: agree, of: agree + disagree }),
  }),
  row({
    id: 'I-CCI-01',
    what: 'clear communication: parts that do not apply are left out, and 90 passes',
    given: { points: [10, 2], items: [11, 3, 0, 0] },
    expected: { percent: 85.7, passes: false },
    tolerance: { percent: 0.05 },
    source: 'CDC Clear Communication Index: points / points that apply × 100; 90 or more passes',
    status: BY_HAND,
    find: ({ points, items }) => {
      const tally = { measure: 'clear-communication', points: sum(points), of: sum(items) } as const;
      return { percent: tallyShare(tally), passes: tallyPasses(tally) };
    },
  }),
  row({
    id: 'I-SAM-01',
    what: 'suitability of a material: 22 items of 0 to 2 points',
    given: { points: 31, items: 22 },
    expected: { percent: 70.5, band: 'superior' },
    tolerance: { percent: 0.05 },
    source: 'Doak, Doak & Root 1996: 70 to 100 percent superior, 40 to 69 adequate, below not suitable',
    status: BY_HAND_RECALLED,
    find: ({ points, items }) => {
      const percent = tallyShare({ points, of: items * 2 });
      return { percent, band: suitabilityBand(percent) };
    },
  }),
  row({
    id: 'I-DATE-01',
    what: 'days from which the web rule of Section 504 binds, by number of employees',
    given: { employees: [15, 14] },
    expected: {
      binds: ['2027-05-11', '2028-05-10'],
      before: ['2026-05-11', '2027-05-10'],
      standard: ['WCAG 2.1, level AA', 'WCAG 2.1, level AA'],
    },
    source: '91 FR 25496 (2026-05-11); 45 CFR 84.84',
    status: PRINTED,
    find: ({ employees }) => {
      const days = employees.map(webRuleFor);
      return {
        binds: days.map((day) => day?.binds),
        before: days.map((day) => day?.before),
        standard: days.map((day) => day?.standard),
      };
    },
  }),
];

function sum(list: readonly number[]): number {
  return list.reduce((so, one) => so + one, 0);
}
