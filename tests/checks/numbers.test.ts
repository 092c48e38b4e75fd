import { describe, expect, it } from 'vitest';
import { checkNotKnown, checkSameNumbers, checkSharedBasis } from '../../src/checks/index.js';
import { digitsIn } from '../../src/checks/shown.js';
import { type Block, type Inline, numbersOf } from '../../src/document/index.js';
import type { Food } from '../../src/nutrition/index.js';
import {
  asDeck,
  asSheet,
  deck,
  found,
  inline,
  lanes,
  type NUMBERS,
  number,
  numbers,
  problems,
  sheet,
} from './fixtures.js';

const paragraph = (inlines: readonly Inline[]): Block => ({
  kind: 'paragraph',
  inlines,
  place: { file: 'lesson.md', line: 7, column: 1 },
});
const withBlocks = (...blocks: Block[]) => asSheet('handout', sheet('handout', 'plain', { blocks }));

describe('N02, one quantity and one value', () => {
  const check = (...blocks: Block[]) =>
    found((r) => checkSameNumbers({ built: [withBlocks(...blocks)], numbers }, r));

  it('is content when sheet, worksheet, key and deck show the values', () => {
    const built = [
      ...(['handout', 'worksheet', 'key'] as const).map((k) => asSheet(k, sheet(k, 'plain'))),
      asDeck(deck()),
    ];
    expect(found((r) => checkSameNumbers({ built, numbers }, r))).toEqual([]);
  });

  it('finds a value typed over, on any output, and says what it spoils', () => {
    const message = sheet('handout', 'short', { message: [inline('360 mg', 'pinto.canned.sodium')] });
    expect(
      problems((r) => checkSameNumbers({ built: [asSheet('handout-short', message)], numbers }, r)),
    ).toMatchObject([
      {
        code: 'N02',
        severity: 'stop',
        actual: '360 mg',
        expected: ['410\u00a0mg'],
        spoils: { outputs: ['handout'], levels: ['short'], languages: ['en'] },
      },
    ]);
  });

  it('finds a slide that differs from the sheet', () => {
    const d = deck();
    const slides = d.slides.map((s) =>
      s.id === 's1' ? { ...s, shelf: [inline('400 mg', 'pinto.canned.sodium')] } : s,
    );
    expect(found((r) => checkSameNumbers({ built: [asDeck({ ...d, slides })], numbers }, r))).toEqual([
      'N02 slides: `pinto.canned.sodium` (sodium in 1 cup of canned) is shown as "400 mg"; it is 410\u00a0mg.',
    ]);
  });

  it.each([
    [
      'an id that no number has',
      [inline('5 mg', 'pinto.fresh.sodium')],
      'N02 @7 handout: "5 mg" is shown as `pinto.fresh.sodium`, and no number has that id.',
    ],
    [
      'half of a range changed',
      [inline('270 to 380 mg', 'rinse.after')],
      'N02 @7 handout: `rinse.after` (after in 1 cup of after) is shown as "270 to 380 mg"; it is 270\u00a0to\u00a0370\u00a0mg.',
    ],
  ])('%s', (_, inlines, problem) => {
    expect(check(paragraph(inlines))).toEqual([problem]);
  });

  it.each([
    ['words without digits', [inline('about half', 'pinto.canned.sodium')]],
    ['one end of a range beside its mark', [inline('270', 'rinse.after')]],
    ['no-break blanks', [inline('410\u00a0mg', 'pinto.canned.sodium')]],
    ['text without an id, such as a year', [{ text: 'In 2015, 28 foods' }]],
  ])('lets pass %s', (_, inlines) => {
    expect(check(paragraph(inlines))).toEqual([]);
  });

  it('finds a dot that is drawn where its value is not', () => {
    const figure = lanes();
    const moved = {
      ...figure,
      lanes: figure.lanes.map((l) => ({
        ...l,
        dots: l.dots.map((d) => (d.letter === 'A' ? { ...d, value: 3 } : d)),
      })),
    };
    expect(check({ kind: 'figure', figure: moved })).toEqual([
      'N02 handout: `pinto.dried.sodium` is drawn at 3; its value is 2.',
    ]);
  });

  it('finds an answer on the key that is no value of its question', () => {
    const question = (value: string): Block => ({
      kind: 'question',
      id: 'q1-2',
      prompt: [{ text: 'Which has least?' }],
      choices: [{ letter: 'A', inlines: [{ text: 'Canned' }], key: { right: false, value, why: 'x' } }],
    });
    expect(check(question('210 mg'))).toEqual([]);
    expect(check(question('200 mg'))).toEqual([
      'N02 handout: the key of `q1-2` says "200 mg" for A, which is no value of that question.',
    ]);
  });
});

describe('digits in a text', () => {
  it.each([
    ['1,170 mg', ['1170']],
    ['from 270 to 370 mg', ['270', '370']],
    ['2.5 g in 1/2 cup', ['2.5', '1', '2']],
    ['one, two, 3, 4', ['3', '4']],
    ['not known', []],
  ])('%s', (text, digits) => {
    expect(digitsIn(text, 'en')).toEqual(digits);
  });
  it('are not looked for in a language whose marks are not known', () => {
    expect(digitsIn('1.234', 'xx')).toEqual([]);
  });
});

describe('N04, missing is never zero', () => {
  const check = (...blocks: Block[]) =>
    found((r) => checkNotKnown({ built: [withBlocks(...blocks)], numbers }, r));

  it('finds a missing value shown as 0, or at 0 on a line', () => {
    expect(check(paragraph([inline('0 mg', 'pinto.rinsed.sodium')]))).toEqual([
      'N04 @7 handout: `pinto.rinsed.sodium` (sodium in 1 cup of rinsed) is not known and is shown as "0 mg".',
    ]);
    const at = (value: number | null) => {
      const figure = lanes();
      const dot = { letter: 'C', value, text: 'not known', number: 'pinto.rinsed.sodium' };
      return check({ kind: 'figure', figure: { ...figure, lanes: [{ name: 'Sodium', dots: [dot] }] } });
    };
    expect(at(0)).toHaveLength(1);
    expect(at(null)).toEqual([]);
  });

  it('finds a total that hides its missing part', () => {
    expect(check(paragraph([inline('1,200 mg', 'day.sodium')]))).toEqual([
      'N04 @7 handout: `day.sodium` (sodium in 1 cup of sodium) is a total with a part that is not known, and is shown as "1,200 mg".',
    ]);
    expect(check(paragraph([inline('at least 1,200 mg', 'day.sodium')]))).toEqual([]);
  });

  it('lets pass the words, and a range, which has no single value', () => {
    expect(
      check(paragraph([inline('not known', 'pinto.rinsed.sodium'), inline('270 to 370 mg', 'rinse.after')])),
    ).toEqual([]);
  });

  it('finds it in the numbers themselves', () => {
    const blind = {
      ...number('day.iron', 5, '5 mg'),
      inputs: [{ name: 'beans', value: null, unit: 'mg', source: 'usda-sr28' }],
    };
    const check2 = (n: typeof blind | (typeof NUMBERS)[number]) =>
      found((r) => checkNotKnown({ built: [], numbers: numbersOf([n]) }, r));
    expect(check2(blind)).toEqual([
      'N04 `day.iron` (iron in 1 cup of iron) has a value although beans is not known, and does not say at least.',
    ]);
    expect(check2({ ...blind, atLeast: true })).toEqual([]);
    expect(check2({ ...blind, value: null })).toEqual([]);
  });
});

describe('N03, one basis', () => {
  const food = (name: string, state: Food['state']): Food => ({
    id: name,
    name,
    aliases: [],
    state,
    kind: 'pinto beans',
    form: name,
    plate: ['protein'],
    measures: [{ name: 'cup', grams: 171, source: 'usda-sr28' }],
    usual: { words: '1/2 cup', grams: 86 },
    contains: {
      meat: 'no',
      fish: 'no',
      shellfish: 'no',
      milk: 'no',
      egg: 'no',
      wheat: 'no',
      gluten: 'no',
      soy: 'no',
      peanut: 'no',
      'tree nut': 'no',
      sesame: 'no',
      honey: 'no',
    },
    picture: 'beans',
    flags: [],
    per100g: {} as Food['per100g'],
    record: { source: 'usda-sr28', number: '1', description: '', date: '2015-09-28' },
  });
  const compare = (basis: string, ...foods: Food[]) =>
    found((r) =>
      checkSharedBasis(
        {
          comparisons: [
            {
              id: 'pinto',
              basis,
              place: { file: 'l.md', line: 3, column: 1 },
              foods: foods.map((f, i) => ({ food: f, place: { file: 'l.md', line: 4 + i, column: 3 } })),
            },
          ],
          numbers,
        },
        r,
      ),
    );
  const cooked = food('pinto beans, cooked', 'cooked');

  it('lets pass foods that stand on it', () => {
    expect(
      compare('1 cup, ready to eat', cooked, food('pinto beans, canned, drained', 'canned, drained')),
    ).toEqual([]);
    expect(compare('1/2 cup, with liquid', food('pinto beans, canned', 'canned, with liquid'))).toEqual([]);
  });

  it('never takes food with its liquid, or dry food, as ready to eat', () => {
    expect(
      compare('1 cup, ready to eat', cooked, food('pinto beans, canned', 'canned, with liquid')),
    ).toEqual([expect.stringMatching(/^N03 @5 `pinto` sets pinto beans, canned on "1 cup, ready to eat": /)]);
    expect(compare('1 cup, ready to eat', food('pinto beans, dry', 'dry'))).toEqual([
      expect.stringMatching(/^N03 @4 /),
    ]);
  });

  it('finds words that are no basis', () => {
    expect(compare('a good bowl', cooked)).toEqual([
      expect.stringMatching(/^N03 @3 `pinto` compares foods on "a good bowl", which is no basis/),
    ]);
  });

  it('finds rows of one figure that name two bases or two units', () => {
    const rows = (over: object) =>
      numbersOf([number('a.x.iron', 1, '1 mg'), { ...number('a.y.iron', 2, '2 mg'), ...over }]);
    const comparison = { id: 'a', basis: '1 cup, ready to eat', foods: [] };
    const check = (n: ReturnType<typeof rows>) =>
      found((r) => checkSharedBasis({ comparisons: [comparison], numbers: n }, r));
    // Rows of swaps and steps have an amount of their own each and are not compared.
    const apart = rows({ what: 'iron in 1/2 cup of y', unit: 'g' });
    expect(found((r) => checkSharedBasis({ comparisons: [], numbers: apart }, r))).toEqual([]);
    expect(check(rows({}))).toEqual([]);
    expect(check(rows({ what: 'iron in 1/2 cup of y' }))).toEqual([
      'N03 The rows of `a.*.iron` do not share one basis: 1 cup and 1/2 cup.',
    ]);
    expect(check(rows({ unit: 'g' }))).toEqual([
      'N03 The rows of `a.*.iron` do not share one unit: mg and g.',
    ]);
    // A food adapted for one language stands beside the others on its own terms.
    expect(check(rows({ what: 'iron in 1/2 cup of y', only: { languages: ['ht'] } }))).toEqual([]);
  });
});
