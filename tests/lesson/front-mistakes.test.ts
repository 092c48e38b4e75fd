import { describe, expect, it } from 'vitest';
import { FRONT, parse } from './known.js';

/** What a line of a good front matter is changed to, and what must be found: nothing else. */
type Case = readonly [name: string, right: string, wrong: string, found: string, words: RegExp];

const CASES: readonly Case[] = [
  ['a colon in a title', 'title: A test', 'title: Beans: three ways', '2:8 lesson/yaml', /Put quotes around/],
  ['an open quote', 'title: A test', 'title: "It\'s a test', '2:8 lesson/yaml', /quote that opens here/],
  ['an open bracket', 'topics: [cans]', 'topics: [cans', '7:9 lesson/yaml', /“\[” that opens here/],
  ['a tab', 'topics: [cans]', 'topics:\n\t- cans', '8:1 lesson/yaml', /tab/],
  ['an indented key', 'minutes: 40', ' minutes: 40', '2:8 lesson/yaml', /The line below is indented/],
  ['a line without a key', 'minutes: 40', 'minutes: 40\nforty', '4:1 lesson/yaml', /a colon and a blank/],
  ['no blank after a colon', 'title: A test', 'title:A test', '2:1 lesson/yaml', /a colon and a blank/],
  ['an at sign', 'title: A test', 'title: @home', '2:8 lesson/yaml', /cannot begin with “@”/],
  ['a backslash', 'title: A test', 'title: "a\\qb"', '2:10 lesson/yaml', /backslash/],
  ['rows folded into one', 'topics: [cans]', 'topics:\n- cans\n - rice', '9:2 lesson/yaml', /same column/],
  ['a key twice', 'minutes: 40', 'minutes: 40\nminutes: 30', '4:1 lesson/front-key', /twice/],
  ['a misspelt key', 'minutes: 40', 'minuts: 40', '3:1 lesson/front-key', /Did you mean minutes\?/],
  ['a key that is missing', 'minutes: 40\n', '', '1:1 lesson/front-missing', /“minutes”/],
  [
    'a key of objects',
    'minutes: 40',
    'minutes: 40\nconstructor: 1',
    '4:1 lesson/refused-name',
    /constructor/,
  ],
  ['a key that is a list', 'minutes: 40', 'minutes: 40\n? [a, b]\n: c', '4:3 lesson/yaml-feature', /no word/],
  ['a merge key', 'minutes: 40', 'minutes: 40\n<<: {month: 2}', '4:1 lesson/front-key', /<</],
  ['an anchor', 'title: A test', 'title: &a A test', '2:11 lesson/yaml-feature', /anchor/],
  ['a tag', 'title: A test', 'title: !secret A test', '2:8 lesson/yaml-feature', /tag/],
  ['half an hour', 'minutes: 40', 'minutes: 40.5', '3:10 lesson/front-value', /whole number/],
  ['yes for a number', 'minutes: 40', 'minutes: yes', '3:10 lesson/front-value', /whole number/],
  ['a number for a title', 'title: A test', 'title: 2027', '2:8 lesson/front-value', /quotes/],
  ['words for a list', 'topics: [cans]', 'topics: cans', '7:9 lesson/front-value', /list/],
  ['a number in a list', 'topics: [cans]', 'topics: [cans, 1]', '7:16 lesson/front-value', /topics\.1/],
  ['a path for a site', 'minutes: 40', 'minutes: 40\nsite: ../../etc', '4:7 lesson/front-value', /no id/],
  ['a code read as a number', 'minutes: 40', 'minutes: 40\ncode: 1E3', '4:7 lesson/front-value', /“code”/],
  [
    'a language that is none',
    'minutes: 40',
    'minutes: 40\nlanguage: no',
    '4:11 lesson/front-value',
    /one of en/,
  ],
  [
    'a caution taken off without a reason',
    'review: none',
    'review: none\nunpull: [{caution: damaged-cans, role: dietitian, date: 2026-11-02}]',
    '9:10 lesson/front-missing',
    /“unpull\.0\.reason”/,
  ],
  ['a control character', 'title: A test', 'title: "A\\u0007test"', '2:8 lesson/front-value', /control/],
  ['a title of two lines', 'title: A test', 'title: |\n  A\n  test', '2:8 lesson/front-value', /line end/],
  [
    'a review that ends before it began',
    'review: none',
    'review: {role: dietitian, date: 2026-11-02, next: 2025-11-02}',
    '8:51 lesson/front-value',
    /not after date/,
  ],
  [
    'a day that is none',
    'review: none',
    'review: {role: dietitian, date: 2026-02-30, next: 2027-11-02}',
    '8:33 lesson/front-value',
    /no day/,
  ],
  [
    'a review by nobody',
    'review: none',
    'review: {date: 2026-11-02, next: 2027-11-02}',
    '8:9 lesson/front-missing',
    /review\.role/,
  ],
];

describe('a mistake in the front matter', () => {
  it.each(CASES)('%s', (_, right, wrong, expected, words) => {
    expect(FRONT).toContain(right);
    const { problems, found } = parse(FRONT.replace(right, wrong));
    expect(found).toEqual([expected]);
    expect(`${problems[0]?.message} ${problems[0]?.hint}`).toMatch(words);
  });

  it('is found at the same place after a byte order mark and with other line ends', () => {
    const text = FRONT.replace('guidance: us-2025', 'guidance: us-2026');
    for (const other of [`\ufeff${text}`, text.replaceAll('\n', '\r\n'), text.replaceAll('\n', '\r')])
      expect(parse(other).found).toEqual(['6:11 lesson/front-value']);
  });

  it('is blank lines above it', () => {
    const { lesson, found } = parse(`\n\n${FRONT}Text\n`);
    expect(found).toEqual(['1:1 lesson/front-matter-missing']);
    expect(lesson?.front.places.get('minutes')).toMatchObject({ line: 5, column: 10 });
  });

  it('leaves what was most likely meant', () => {
    const { lesson } = parse(FRONT.replace('minutes: 40', 'minuts: 50'));
    expect(lesson?.front.minutes).toBe(50);
  });
});
