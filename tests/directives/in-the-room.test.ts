import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Level } from '../../src/reading/index.js';
import { evaluate } from '../nutrition/evaluate.js';
import { AUDIENCES, readSnippet, viewOf } from './desk.js';
import { figuresOf, outline, stringsIn } from './strings.js';

const hostile = fc.oneof(
  fc.constantFrom('', ';', '=', '; = ;', '{question}', '__proto__', '<b>', 'a ; b = c', '\u202e', '🫘', '0'),
  fc.string({ maxLength: 30, unit: 'grapheme' }),
);
/** On one line, with nothing that would end the directive or begin another. */
const words = hostile.map((text) => text.replace(/[\p{Cc}\p{Zl}\p{Zp}:`~]/gu, ' ').trim());
const mostly = <T>(good: fc.Arbitrary<T>) =>
  fc.oneof({ weight: 6, arbitrary: good }, { weight: 1, arbitrary: words });
const lines = (head: string, rows: readonly string[], text = '') =>
  [`:::${head}`, ...(text ? [text] : []), ...rows.map((row) => `- ${row}`), ':::', ''].join('\n');

const people = fc.oneof(fc.constantFrom(0, 11, 12, 40, 999), fc.integer({ min: 0, max: 1200 }));
const hands = fc
  .record({
    question: mostly(fc.constantFrom('Do you rinse?', 'Who reads labels?', 'Are you ill?')),
    rows: fc.array(
      fc
        .tuple(
          mostly(fc.constantFrom('always', 'sometimes', 'never', 'now and then')),
          fc.oneof(
            fc.constant(''),
            people.map((n) => ` ; count = ${n}`),
            fc.tuple(people, people).map(([a, b]) => ` ; before = ${a} ; after = ${b}`),
            words.map((then) => ` ; then = ${then}`),
          ),
        )
        .map((pair) => pair.join('')),
      { maxLength: 6 },
    ),
  })
  .map(({ question, rows }) => lines('hands-up{id=x}', rows, question));

const back = fc
  .array(
    fc.oneof(
      mostly(fc.constantFrom('Show me how.', 'Do you rinse?', 'What would you do? ; objective = 1')),
      words.map((point) => `listen-for = ${point} ; rinse`),
    ),
    { maxLength: 9 },
  )
  .map((rows) => lines('teach-back{id=x}', rows));

const card = fc
  .record({
    fields: fc.array(mostly(fc.constantFrom('what', 'how-much', 'when', 'how-sure', 'weight')), {
      maxLength: 6,
    }),
    rows: fc.array(
      fc
        .tuple(
          fc.constantFrom('what', 'when', 'how-sure', 'where'),
          mostly(fc.constantFrom('rinse cans', 'likely')),
        )
        .map((pair) => pair.join(' = ')),
      { maxLength: 4 },
    ),
  })
  .map(({ fields, rows }) =>
    lines(`goal-card{id=x fields="${fields.join(',').replace(/["\\{}]/g, '')}"}`, rows),
  );

function holds(snippet: string): boolean {
  const { computed, problems } = readSnippet(snippet);
  for (const problem of problems) {
    expect(problem.place).toBeDefined();
    expect(problem.message).not.toMatch(/undefined|NaN|\[object/);
  }
  const entry = computed?.entries.find(({ part }) => part.id === 'x');
  if (!computed || !entry) return false;
  if (!entry.computed) expect(problems.length).toBeGreaterThan(0);
  for (const number of computed.numbers.all)
    expect(evaluate(number)).toBeCloseTo(number.value ?? Number.NaN, 9);
  for (const { where, level } of AUDIENCES) {
    const view = viewOf(computed, entry.part, where, level);
    for (const figure of view ? figuresOf(view) : []) {
      expect(figure.alternative.label.length).toBeLessThanOrEqual(120);
      for (const row of figure.alternative.table.rows)
        expect(row).toHaveLength(figure.alternative.table.head.length);
      for (const id of figure.numbers) expect(computed.numbers.get(id)).toBeDefined();
    }
  }
  return entry.computed !== undefined;
}

describe('whatever an author writes for the room', () => {
  it.each([
    ['hands-up', hands],
    ['teach-back', back],
    ['goal-card', card],
  ])('%s gives a view or problems, and never throws', (_, any) => {
    let shown = 0;
    fc.assert(
      fc.property(any, (snippet) => void (holds(snippet) && shown++)),
      { numRuns: 300 },
    );
    expect(shown).toBeGreaterThan(3);
  });
});

const COUNTED = lines('hands-up{id=x}', ['always ; count = 137', 'never ; count = 263'], 'Do you rinse?');
const ASKED = lines('teach-back{id=x}', ['Show me how.', 'listen-for = strainer ; count to 30']);
const SAMPLE = lines('goal-card{id=x}', [
  'what = rinse canned beans',
  'how-much = each can',
  'when = at supper',
  'how-often = this month',
  'how-sure = sure',
]);

describe('a worksheet', () => {
  it.each([
    [COUNTED, /137|263|34|66/],
    [ASKED, /strainer|count to/],
    [SAMPLE, /canned beans|each can|supper|this month|\(sure\)/],
  ])('gives nothing away: %s', (snippet, secret) => {
    const { computed } = readSnippet(snippet);
    const part = computed?.entries[0]?.part;
    if (!computed || !part) throw new Error('It was not read.');
    for (const level of ['short', 'plain', 'fuller', 'staff'] as const) {
      const view = viewOf(computed, part, 'worksheet', level);
      for (const { path, text } of stringsIn(view)) expect(text, path).not.toMatch(secret);
      expect(view && outline(view).join('\n')).not.toMatch(secret);
      const key = viewOf(computed, part, 'key', level);
      expect(key && outline(key).join('\n')).toMatch(secret);
    }
  });
});

describe('levels', () => {
  it('ask one prompt, two, and all of them', () => {
    const rows = ['one', 'two', 'three'].flatMap((n) => [`Show me ${n}.`, `listen-for = ${n}`]);
    const { computed } = readSnippet(lines('teach-back{id=x}', rows));
    const part = computed?.entries[0]?.part;
    if (!computed || !part) throw new Error('It was not read.');
    const prompts = (where: 'handout' | 'staff', level: Level) => {
      const view = viewOf(computed, part, where, level);
      return (view ? outline(view) : []).filter((line) => /Show me \w+\./.test(line)).length;
    };
    expect([prompts('handout', 'short'), prompts('handout', 'plain'), prompts('handout', 'fuller')]).toEqual([
      1, 2, 2,
    ]);
    expect(prompts('staff', 'staff')).toBe(3);
  });
});
