import { describe, expect, it } from 'vitest';
import { parse } from './known.js';

/**
 * A lesson with twenty-five different mistakes. Each line stands beside what must be found in it:
 * `column code`, columns from 1.
 */
const LINES: readonly (readonly [line: string, ...expected: string[]])[] = [
  ['---'],
  ['title: 2027', '8 lesson/front-value'],
  ['minuets: 40', '1 lesson/front-key'],
  ['minutes: 40'],
  ['audience: adults'],
  ['objectives: [compare two cans]'],
  ['guidance: us-2026', '11 lesson/front-value'],
  ['topics: [cans]'],
  ['review: none'],
  ['constructor: x', '1 lesson/refused-name'],
  ['---'],
  ['# A lesson'],
  [''],
  ['Cans <b>and</b> bags.', '6 lesson/html', '12 lesson/html'],
  [''],
  ['Read [this](javascript:alert).', '6 lesson/link'],
  [''],
  ['![](pictures/can.png)', '1 lesson/picture-words'],
  [''],
  ['![A can](https://example.org/can.png)', '1 lesson/picture'],
  [''],
  ['It has :n[sodium]{of=pnto} in it.', '22 lesson/reference'],
  [''],
  ['It has :n{of=pinto} in it.', '8 lesson/inline'],
  [''],
  [':::form-compair{id=pinto food="pinto beans" basis="1 cup" show=sodium}', '4 lesson/unknown-directive'],
  ['- canned, drained'],
  ['- canned, drained and rinsed'],
  [':::'],
  [''],
  [
    '::rinse-drop{id=rinse, food="black beans"}',
    '1 lesson/attribute-missing',
    '1 lesson/attribute-missing',
    '22 lesson/attribute-writing',
  ],
  [''],
  ['::write{lines=two label="Name"}', '15 lesson/attribute-value'],
  [''],
  ['::write{lines=1 lable="Name" label="Name"}', '17 lesson/attribute-name'],
  [''],
  ['::write{label=“Name”}', '15 lesson/attribute-writing'],
  [''],
  ['::write{label=My plan}', '15 lesson/attribute-writing'],
  [''],
  ['::write{label="A" onclick="x"}', '19 lesson/refused-name'],
  [''],
  ['::show{figure=peas}', '15 lesson/reference'],
  [''],
  ['::: level{is=plain}', '1 lesson/opening'],
  ['Plain words.'],
  [':::'],
  [''],
  [':::level{is=plian}', '13 lesson/attribute-value'],
  ['Other words.'],
  [':::'],
  [''],
  ['Words between.'],
  [''],
  [':::slide{minutes=4}', '1 lesson/colons'],
  ['## One'],
  [':::'],
  [''],
  ['::::slide{minutes=4}', '1 lesson/colons'],
  ['::::only{out=slides}', '1 lesson/placement'],
  ['Text'],
  ['::::'],
  ['::::'],
  [''],
  ['A line with ::write{label="x"} in it.', '13 lesson/middle-of-line'],
  [''],
  ['::::staff'],
  ['Some text'],
  ['---', '1 lesson/underline'],
  ['::::'],
  [''],
  [':::', '1 lesson/stray-close'],
  [''],
  ['::::worksheet', '1 lesson/unclosed'],
  ['## Last'],
];

describe('a lesson with many mistakes', () => {
  const text = LINES.map(([line]) => line).join('\n');
  const expected = LINES.flatMap(([, ...marks], index) => marks.map((mark) => `${index + 1}:${mark}`));

  it('has at least twenty-five different ones', () => {
    expect(new Set(expected.map((mark) => mark.replace(/^\S+ /, ''))).size).toBeGreaterThanOrEqual(18);
    expect(expected.length).toBeGreaterThanOrEqual(25);
  });

  it('gets the right place for each, and no other', () => {
    expect(parse(text).found).toEqual(expected);
  });

  it('says of each what is wrong and what to do', () => {
    for (const problem of parse(text).problems) {
      expect(problem.message, problem.code).toMatch(/^.{10,}[.!?]$/s);
      expect(problem.hint ?? '', problem.code).not.toBe('');
    }
  });

  it('finds the same places with Windows line ends', () => {
    expect(parse(text.replaceAll('\n', '\r\n')).found).toEqual(expected);
  });
});
