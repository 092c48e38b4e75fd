import { describe, expect, it } from 'vitest';
import { checkRuleDays, checkTallies, RULE_DAYS } from '../../src/checks/index.js';
import { found, place } from './fixtures.js';

describe('P10, what people counted by hand', () => {
  const tally = (
    measure: 'understandability' | 'clear-communication' | 'suitability',
    points: number,
    of: number,
  ) => ({
    measure,
    points,
    of,
    role: 'editor',
    date: '2026-11-25',
    place: place(9, 5),
  });
  it.each([
    ['understandability', 10, 15, true],
    ['understandability', 21, 30, false],
    ['clear-communication', 12, 14, true],
    ['clear-communication', 18, 20, false],
    ['suitability', 17, 44, true],
    ['suitability', 18, 44, false],
  ] as const)('%s with %i of %i points is asked about: %s', (measure, points, of, asked) => {
    const problems = found((r) => checkTallies({ tallies: [tally(measure, points, of)] }, r));
    expect(problems).toHaveLength(asked ? 1 : 0);
    if (asked)
      expect(problems[0]).toMatch(new RegExp(`^P10 @9 Tallied on 2026-11-25 .editor., ${measure}: `));
  });
});

describe('E09, rules that bind later', () => {
  const check = (text: string, on: string) =>
    found((r) =>
      checkRuleDays(
        {
          passages: [
            { text, where: 'text', place: { ...place(4, 3), endLine: 4, endColumn: 3 + text.length } },
          ],
          language: 'en',
          on,
        },
        r,
      ),
    );
  const web = 'Section 504 now requires readable web pages.';

  it('are asked about until their day, and not from it on', () => {
    const last =
      RULE_DAYS.map(({ binds }) => binds)
        .toSorted()
        .at(-1) ?? '';
    expect(check(web, '2026-11-25')).toHaveLength(1);
    expect(check(web, '2027-06-01')[0]).toMatch(/^E09 @4 .*2028-05-10/);
    expect(check(web, last)).toEqual([]);
  });

  it.each([
    ['Section 504 will bind small clinics from May 2028.', 0],
    ['The FDA rule now means that healthy on a label is a test.', 1],
    ['A healthy meal must now and then be a treat.', 0],
    ['You must now drain the beans.', 0],
  ])('%s', (text, count) => {
    expect(check(text, '2026-11-25')).toHaveLength(count);
  });
});
