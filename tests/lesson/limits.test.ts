import { describe, expect, it } from 'vitest';
import { FRONT, parse, parseBody } from './known.js';

const times = (count: number, make: (index: number) => string) =>
  Array.from({ length: count }, (_, i) => make(i)).join('');

/** Text past the limits is refused at its place and nothing of it is read. */
const TOO_DEEP: readonly (readonly [name: string, body: string, found: string])[] = [
  ['containers', times(300, (i) => `${':'.repeat(303 - i)}level{is=plain}\n`), '13:1 lesson/too-deep'],
  ['quotes', `a\n${'> '.repeat(1000)}a`, '2:1 lesson/too-deep'],
  ['lists', times(60, (i) => `${'  '.repeat(i)}- a\n`), '7:13 lesson/too-deep'],
  ['lists on one line', `${'- '.repeat(1000)}a`, '1:3 lesson/too-deep'],
  ['brackets', `${'['.repeat(1000)}a${']'.repeat(1000)}`, '1:33 lesson/too-deep'],
  ['open tags', `${'<a b="'.repeat(1000)}`, '1:193 lesson/too-deep'],
  ['stars', '*a '.repeat(1000), '1:193 lesson/too-deep'],
  ['backticks', '`'.repeat(5000), '1:1 lesson/too-deep'],
  ['lines of one paragraph', `\n${'a\n'.repeat(400)}`, '301:1 lesson/too-deep'],
  ['words of one line', 'word '.repeat(4000), '1:1 lesson/too-deep'],
];

describe('text past the limits', () => {
  it.each(TOO_DEEP)('too many %s', (_, body, expected) => {
    const { lesson, found } = parseBody(body);
    expect(found.at(-1)).toBe(expected);
    expect(lesson).toBeUndefined();
  });

  it.each([
    ['bytes', `${FRONT}${'a\n\n'.repeat(50_000)}`, '1:1 lesson/too-large'],
    ['lines', `${FRONT}${'a\n\n'.repeat(2500)}`, '4001:1 lesson/too-large'],
  ])('too many %s', (_, text, expected) => {
    expect(parse(text).found).toEqual([expected]);
  });
});

describe('text within the limits', () => {
  it.each([
    [
      'a long deck without a blank line',
      times(150, () => '::::slide{minutes=1}\n## A\n:::say\nHi\n:::\n::::\n'),
    ],
    ['a long list', times(400, (i) => `- row ${i}\n`)],
    ['a quote with many paragraphs', times(200, () => '> a\n>\n')],
    ['lines to write on', `Name: ${'_'.repeat(60)}`],
    ['rows that begin with a number', '- 1. wash\n- 2. rinse\n'],
    ['many prices', times(60, (i) => `a < ${i} and b > 2 `)],
  ])('%s', (_, body) => {
    expect(parseBody(body).found).toEqual([]);
  });
});
