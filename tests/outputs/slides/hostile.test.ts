import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Slide, Stage } from '../../../src/document/index.js';
import {
  asking,
  bricksStage,
  caution,
  cautions,
  deck,
  EIGHT_CAUTIONS,
  figureShelf,
  lanesStage,
  list,
  type Option,
  PINTO,
  paragraph,
  slide,
  sources,
  words,
} from './decks.js';
import { faults, type Laid, layOut, marksOf, shapesOn, shelfOf, sizesOn, wordsOn } from './look.js';

const one = (title: string, stage: Stage, more: Partial<Slide> = {}) =>
  layOut(deck([slide(1, title, stage, more)]));

/** All is well, or it is said: never words on words, or off the slide, without a word. */
function expectNoSmudge({ pages, codes }: Laid): void {
  const told = codes.some((code) => code.startsWith('slides/') || code.startsWith('figures/'));
  if (!told) expect(faults(pages)).toEqual([]);
  // Words are never made smaller than 24 points, whatever is wrong.
  expect(faults(pages).filter((fault) => fault.includes('pixels'))).toEqual([]);
}

const LONG =
  'Dried, frozen or canned beans and peas bring fiber to a table for little money all the year round ';
const WORD = 'Bohnenkonservenverpackungsverordnungsdurchführungsbestimmung';

const open: Stage = {
  kind: 'open',
  audience: 'A talk for adults who shop and cook',
  pictures: ['jar', 'can', 'bag'],
};
const say: Stage = { kind: 'say', sentence: [], picture: 'cup' };
const few: Stage = { kind: 'words', blocks: [paragraph('Pick a dish you make already.')], picture: 'pot' };
const activity = (
  minutes: number,
  steps: readonly string[],
  pictures: readonly string[] = ['can', 'can'],
): Stage => ({
  kind: 'do',
  minutes,
  said: `${minutes} minutes`,
  steps: steps.map(words),
  pictures,
});
const three = ['Take two cans from the table.', 'Find the sodium line.', 'Tell your neighbor.'];
const [ask] = asking('Which has the least sodium?', PINTO);

describe('a title', () => {
  const masters: readonly (readonly [string, Stage])[] = [
    ['of the talk', open],
    ['that is one sentence', say],
    ['of a few words', few],
    ['of an activity', activity(8, three)],
    ['of a figure', lanesStage],
    ['of a question', ask],
    ['of sources', { kind: 'sources', sources: sources(3) }],
  ];

  it.each(masters)('%s that takes two lines stands clear of everything', async (_, stage) => {
    const laid = await one(
      'Rinsing the beans from a can sends a part of their sodium down',
      stage,
      stage === lanesStage ? figureShelf : {},
    );
    expect(laid.codes).toEqual([]);
    expect(faults(laid.pages)).toEqual([]);
  });

  it.each(masters)('%s that is far too long is a problem', async (_, stage) => {
    const { problems } = await one(LONG.repeat(4), stage);
    expect(problems.map((p) => `${p.code}: ${p.message}`)).toContainEqual(
      expect.stringMatching(/^slides\/too-long: Slide 1: the title takes \d+ lines/),
    );
  });

  it.each(masters)(
    '%s with a word wider than the slide is a problem that names the word',
    async (_, stage) => {
      const { problems } = await one(`${WORD}${WORD}`, stage);
      expect(problems.find((p) => p.code === 'slides/wide-word')?.message).toContain(WORD);
    },
  );

  it('is tried at 56, 50 and 44 pixels on one line before it takes two', async () => {
    const sizes = [];
    for (const title of [
      'Rinsed, a cup still has some',
      'Rinsed, a cup of beans from a can has its salt',
      'Rinsed, a cup of beans from a can still has some salt',
      'Rinsed, a cup of beans from a can still has 360 mg of all its sodium in it',
    ]) {
      const { pages } = await one(title, lanesStage, figureShelf);
      const run = marksOf(pages.pages[0])
        .flatMap((mark) => (mark.kind === 'group' ? mark.marks : []))
        .find(
          (mark) =>
            mark.kind === 'text' && title.startsWith(mark.line.text.replaceAll('\u00a0', ' ').slice(0, 6)),
        );
      sizes.push(run?.kind === 'text' ? run.line.runs[0]?.size : undefined);
    }
    expect(sizes).toEqual([56, 50, 44, 56]);
  });

  it('of a talk without any words is set all the same', async () => {
    expectNoSmudge(await one('', open));
  });

  it('that two slides share is a problem at the second', async () => {
    const place = { file: 'lessons/beans/lesson.md', line: 40, column: 1 };
    const { problems } = await layOut(deck([slide(1, 'Beans', open), slide(2, 'Beans', few, { place })]));
    expect(problems).toEqual([
      {
        code: 'slides/same-title',
        severity: 'ask',
        message: 'Slides 1 and 2 have the same title: “Beans”.',
        hint: 'Give each its own.',
        place,
      },
    ]);
  });
});

describe('a question', () => {
  const four: readonly Option[] = [...PINTO, { words: 'Pinto beans, canned, no salt added', value: '20 mg' }];

  it.each([
    [2, PINTO.slice(0, 2)],
    [3, PINTO],
    [4, four],
  ])('with %d options keeps them apart, answered or not', async (count, options) => {
    const [first, second] = asking('Which has the least sodium?', options);
    const laid = await layOut(
      deck([
        slide(1, 'Which has the least sodium?', first, figureShelf),
        slide(1, 'Answer: |C|.', second, figureShelf),
      ]),
    );
    expect(laid.codes).toEqual([]);
    expect(faults(laid.pages)).toEqual([]);
    for (const option of options)
      expect(wordsOn(laid.pages.pages[1]).map((w) => w.text)).toContain(option.value);
    expect(wordsOn(laid.pages.pages[0]).filter(({ text }) => /^[A-D]$/.test(text))).toHaveLength(count);
  });

  it('holds no answer: no value, no reason, nothing filled', async () => {
    const { pages } = await one('Which has the least sodium?', ask);
    const said =
      pages.pages[0]?.items
        .flatMap((item) => (item.kind === 'content' ? [JSON.stringify(item.marks)] : []))
        .join('') ?? '';
    expect(
      wordsOn(pages.pages[0])
        .map(({ text }) => text)
        .join(' '),
    ).not.toMatch(/mg|salt/);
    expect(said).not.toContain('least.');
    expect(shapesOn(marksOf(pages.pages[0])).filter(({ fill }) => fill === '#1f4e5f')).toEqual([]);
  });

  it('when answered, frames one column with 9 pixels of petrol, open to the shelf, and fills its disc', async () => {
    const [, answer] = asking('Which has the least sodium?', PINTO);
    const { pages } = await one('Answer: |C|.', answer);
    const shapes = shapesOn(marksOf(pages.pages[0]));
    const petrol = shapes.filter(({ stroke }) => stroke?.color === '#1f4e5f');
    expect(petrol.map(({ stroke }) => stroke?.width)).toEqual([expect.closeTo(9), expect.closeTo(4)]);
    expect(petrol[0]?.bottom).toBeCloseTo(shelfOf(pages.pages[0]));
    expect(shapes.filter(({ fill }) => fill === '#1f4e5f')).toHaveLength(1);
  });

  it.each([
    ['five options', 'Which?', [...four, { words: 'Pinto beans, dried', value: '1 mg' }]],
    ['options of many words', 'Which?', PINTO.map((option) => ({ ...option, words: LONG }))],
    [
      'an option with a word wider than its column',
      'Which?',
      [{ words: WORD, value: '1 mg', right: true }, ...PINTO.slice(1)],
    ],
    ['a question of many words', LONG.repeat(3), PINTO],
  ])('with %s is a problem', async (_, prompt, options) => {
    const [first, second] = asking(prompt, options);
    const laid = await layOut(deck([slide(1, prompt, first), slide(1, 'Answer: |C|.', second)]));
    expect(laid.codes.filter((code) => code.startsWith('slides/'))).not.toEqual([]);
    expectNoSmudge(laid);
  });

  it('sets its options at 32 pixels before they would be too high', async () => {
    const options = PINTO.map((option) => ({
      ...option,
      words: 'Pinto beans from a can, drained, rinsed twice and heated',
    }));
    const title = 'Half a cup of pinto beans. Which has the least sodium?';
    const size = async (lines: number) => {
      const shelf = words(
        'Brands differ. Check your own can. Numbers here are close, not exact. '
          .repeat(lines)
          .slice(0, 60 * lines),
      );
      const { codes, pages } = await one(title, asking(title, options)[0], { shelf });
      const runs = sizesOn(marksOf(pages.pages[0])).filter(({ text }) => text.startsWith('Pinto'));
      return [runs[0]?.size, codes.includes('slides/too-long')];
    };
    expect([await size(2), await size(4)]).toEqual([
      [expect.closeTo(36), false],
      [expect.closeTo(32), false],
    ]);
  });

  it('stands below a title that is another sentence', async () => {
    const laid = await one(
      'Hold up your fingers',
      asking('Half a cup of pinto beans. Which has the least sodium?', PINTO)[0],
    );
    expect(laid.codes).toEqual([]);
    expect(faults(laid.pages)).toEqual([]);
    const texts = wordsOn(laid.pages.pages[0]).map(({ text }) => text);
    expect(texts).toContain('Half a cup of pinto beans. Which has the least sodium?');
  });
});

describe('an activity', () => {
  it.each([1, 5, 10, 11, 20, 21, 45, 60])(
    'of %d minutes has a brick for each, clear of its head',
    async (minutes) => {
      const laid = await one('Read both of the cans', activity(minutes, three));
      expect(laid.codes).toEqual([]);
      expect(faults(laid.pages)).toEqual([]);
      const page = laid.pages.pages[0];
      const bricks = shapesOn(marksOf(page)).filter(
        ({ left, right, top, bottom, fill, stroke }) =>
          fill === '#14212b' &&
          !stroke &&
          right - left < 41 &&
          right - left > 27 &&
          bottom - top < 45 &&
          left > 600 &&
          bottom < 400,
      );
      expect(bricks).toHaveLength(minutes);
      for (const { text, left, right, top, bottom } of wordsOn(page))
        for (const brick of bricks)
          expect(
            Math.min(right, brick.right) > Math.max(left, brick.left) &&
              Math.min(bottom, brick.bottom) > Math.max(top, brick.top),
            `“${text}” stands on a brick`,
          ).toBe(false);
    },
  );

  it('of more than four steps is a problem', async () => {
    const { problems } = await one('Read', activity(5, ['One', 'Two', 'Three', 'Four', 'Five']));
    expect(problems.map((p) => p.message)).toEqual(['Slide 1: the list has 5 points; a slide holds 4.']);
  });

  it('of steps that are too long is a problem, and its words still have 32 pixels', async () => {
    const laid = await one('Read', activity(5, [LONG, LONG, LONG, LONG]));
    expect(laid.codes).toContain('slides/too-long');
    expectNoSmudge(laid);
  });
});

describe('pictures', () => {
  it('give way to words', async () => {
    const laid = await one('Read two cans', {
      kind: 'words',
      blocks: [
        list(
          false,
          ...Array.from({ length: 4 }, () => 'Take two cans of beans and read the whole label slowly'),
        ),
      ],
      picture: 'pot',
    });
    expect(laid.codes.filter((code) => code !== 'slides/wordy')).toEqual([]);
    const page = laid.pages.pages[0];
    const vessel = shapesOn(marksOf(page)).filter(({ fill, stroke }) => fill === '#ffffff' && stroke);
    const left = Math.min(...vessel.map((shape) => shape.left));
    const top = Math.min(...vessel.map((shape) => shape.top));
    for (const line of wordsOn(page).filter(({ bottom }) => bottom < shelfOf(page)))
      expect(line.right <= left || line.bottom <= top, line.text).toBe(true);
  });

  it('that are too many are a problem', async () => {
    const pictures = Array.from({ length: 12 }, () => 'can');
    const { problems } = await one('Beans', { kind: 'open', audience: 'A talk', pictures });
    expect(problems.map((p) => p.message)).toEqual(['Slide 1: there is no room for 12 pictures.']);
  });

  it('that do not exist are a problem', async () => {
    const { codes } = await one('Beans', { kind: 'open', audience: 'A talk', pictures: ['can', 'kann'] });
    expect(codes).toEqual(['slides/no-picture']);
  });
});

describe('words', () => {
  it('shrink from 40 to 36 pixels and no further', async () => {
    const size = async (count: number) => {
      const blocks = [...Array.from({ length: count }, () => paragraph(LONG)), paragraph('Beans.')];
      const laid = await one('Beans', { kind: 'words', blocks });
      const run = marksOf(laid.pages.pages[0])
        .flatMap((mark) => (mark.kind === 'group' ? mark.marks : []))
        .find((mark) => mark.kind === 'text' && mark.line.text.startsWith('Dried'));
      return [
        run?.kind === 'text' ? run.line.runs[0]?.size : undefined,
        laid.codes.includes('slides/too-long'),
      ];
    };
    expect(await size(2)).toEqual([40, false]);
    expect(await size(4)).toEqual([36, false]);
    expect(await size(7)).toEqual([36, true]);
  });

  it('of more than 35 are worth a hint', async () => {
    const { problems } = await one('Beans', { kind: 'words', blocks: [paragraph(LONG), paragraph(LONG)] });
    expect(problems.map((p) => [p.code, p.severity])).toEqual([['slides/wordy', 'hint']]);
  });

  it.each([
    ['a table', { kind: 'table', head: [], rows: [], rowHeads: false }],
    ['lines to write on', { kind: 'write', label: 'My dish', lines: 2 }],
    ['a figure', bricksStage.kind === 'show' ? bricksStage.block : paragraph('')],
    ['a list in a list', { kind: 'list', ordered: false, items: [[paragraph('One'), list(false, 'Two')]] }],
  ] as const)('with %s beside them are a problem, not a loss in silence', async (_, block) => {
    const { codes } = await one('Beans', { kind: 'words', blocks: [paragraph('Beans.'), block] });
    expect(codes).toEqual(['slides/no-place']);
  });

  it('without a drawing in any font are a problem', async () => {
    const { codes } = await one('Beans \u{1F96B}', few);
    expect(codes).toContain('text/no-glyph');
  });
});

describe('the shelf', () => {
  it.each([2, 3, 4])('holds %d lines', async (lines) => {
    const text = 'Brands differ. Check your own can. Numbers here are close, not exact. '
      .repeat(lines)
      .slice(0, 60 * lines);
    const laid = await one('Beans', few, { shelf: words(text) });
    expect(laid.codes).toEqual([]);
    expect(faults(laid.pages)).toEqual([]);
    expect(shelfOf(laid.pages.pages[0])).toBeCloseTo(720 - 44 - 40 * lines);
  });

  it('with more says how many characters are too many, at the slide', async () => {
    const place = { file: 'lessons/beans/lesson.md', line: 12, column: 1 };
    const { problems } = await one('Beans', few, { shelf: words('Brands differ. '.repeat(40)), place });
    expect(problems).toEqual([
      expect.objectContaining({
        code: 'slides/too-long',
        message: expect.stringMatching(/^Slide 1: the shelf has \d+ characters too many\.$/),
        place,
      }),
    ]);
  });
});

describe('cautions', () => {
  it('that are too long for one slide even at 32 pixels are a problem, and whole', async () => {
    const long = caution('long', 'Stop', LONG.repeat(6), 'Stop.');
    const { pages, codes } = await one('Before we start', cautions([long]));
    expect(codes).toEqual(['slides/too-long']);
    const said = wordsOn(pages.pages[0])
      .map(({ text }) => text)
      .join(' ');
    expect(said.replace(/\s+/g, ' ')).toContain(LONG.repeat(6).trim());
  });

  it('take the largest size that fits', async () => {
    const sizes = [];
    for (const count of [1, 3, 4]) {
      const { pages } = await one('Before we start', cautions(EIGHT_CAUTIONS.slice(0, count)));
      const run = marksOf(pages.pages[0])
        .flatMap((mark) => (mark.kind === 'group' ? mark.marks : []))
        .find((mark) => mark.kind === 'text' && mark.line.text.startsWith('Is the can'));
      sizes.push(run?.kind === 'text' ? run.line.runs[0]?.size : undefined);
    }
    expect(sizes[0]).toBe(52);
    expect(sizes).toEqual([...sizes].sort((a, b) => (b ?? 0) - (a ?? 0)));
    expect(Math.min(...sizes.map((size) => size ?? 0))).toBeGreaterThanOrEqual(32);
  });
});

describe('any deck', () => {
  const word = fc.oneof(
    fc.constantFrom(
      'beans',
      'can',
      'sodium',
      'a',
      'of',
      'rinse',
      '30',
      '360 mg',
      'yesterday’s',
      'I',
      'WWW',
      'ffi',
    ),
    fc.string({ minLength: 1, maxLength: 18, unit: fc.constantFrom(...'abcdefghijklmnopqrstuvwxyzäéñ-') }),
  );
  const text = (most: number) =>
    fc.array(word, { minLength: 1, maxLength: most }).map((all) => all.join(' '));
  const picture = fc.constantFrom('can', 'jar', 'sack', 'bag', 'sieve', 'pot', 'cup');
  const stage: fc.Arbitrary<Stage> = fc.oneof(
    fc.record({
      kind: fc.constant('open' as const),
      audience: text(12),
      pictures: fc.array(picture, { maxLength: 4 }),
    }),
    fc.record({ kind: fc.constant('say' as const), sentence: fc.constant([]), picture }),
    fc.record({
      kind: fc.constant('words' as const),
      blocks: fc.array(text(30).map(paragraph), { maxLength: 4 }),
      picture,
    }),
    fc
      .tuple(
        fc.integer({ min: 0, max: 60 }),
        fc.array(text(14), { maxLength: 5 }),
        fc.array(picture, { maxLength: 3 }),
      )
      .map(([minutes, steps, pictures]) => activity(minutes, steps, pictures)),
    fc
      .tuple(
        text(14),
        fc.array(fc.record({ words: text(7), value: fc.constantFrom('1 mg', '1,200 mg', '90 to 190 mg') }), {
          minLength: 1,
          maxLength: 5,
        }),
        fc.nat(1),
      )
      .map(([prompt, options, which]): Stage => asking(prompt, options)[which === 0 ? 0 : 1]),
    fc
      .array(text(24), { minLength: 1, maxLength: 6 })
      .map((lines) =>
        cautions(
          lines.map((line, i) =>
            caution(`c${i}`, i < 2 ? 'Stop' : 'Ask first', line, 'Ask your care team first.'),
          ),
        ),
      ),
    fc
      .tuple(fc.integer({ min: 1, max: 6 }), text(12))
      .map(([count, name]): Stage => ({ kind: 'sources', sources: sources(count, name) })),
    fc.constantFrom(lanesStage, bricksStage),
  );

  it('has its words in their places, or says what does not fit', async () => {
    await fc.assert(
      fc.asyncProperty(text(16), stage, text(50), fc.boolean(), async (title, one_, shelf, draft) => {
        const more = draft ? { draft: 'Draft, do not hand out' } : {};
        expectNoSmudge(await layOut(deck([slide(1, title, one_, { shelf: words(shelf) })], more)));
      }),
      { numRuns: 250, seed: 7 },
    );
  }, 120_000);
});
