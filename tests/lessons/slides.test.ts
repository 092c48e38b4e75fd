import { beforeAll, describe, expect, it } from 'vitest';
import { boxesOf, cautionBlock } from '../../src/cautions/index.js';
import { createReport, type Problem } from '../../src/diagnostics/index.js';
import type { Deck, Inline, Slide } from '../../src/document/index.js';
import type { Pages } from '../../src/layout/index.js';
import { layOutDeck, measureSlides } from '../../src/outputs/slides/index.js';
import { openWorkshop } from '../../src/pipeline/build.js';
import { deckFor } from '../../src/pipeline/deck-for.js';
import { slideFiles, slideTools } from '../../src/pipeline/pictures-out.js';
import { readLesson } from '../../src/pipeline/read.js';
import { type Desk, settingFor } from '../../src/pipeline/sheets.js';
import { memoryWorkspace } from '../../src/pipeline/workspace.js';
import { faults, idsOf, marksOf, textOf } from '../outputs/slides/look.js';
import { BEANS, lessonText, ON, program } from './program.js';

interface Laid {
  readonly desk: Desk;
  readonly deck: Deck;
  readonly pages: Pages;
  readonly problems: readonly Problem[];
  readonly codes: readonly string[];
}

async function layOut(text: string, ink: 'color' | 'one' = 'color'): Promise<Laid> {
  const shop = openWorkshop(memoryWorkspace({ [BEANS]: text }, program));
  const report = createReport();
  const desk = readLesson(shop.workspace, 'beans-three-ways', shop.tables, shop.settings, ON, report);
  if (!desk) throw new Error('The lesson cannot be read.');
  const deck = await deckFor(desk, shop.drawers, false, report);
  const pages = await layOutDeck(deck, slideTools(desk, shop.drawers, report, ink), report);
  return { desk, deck, pages, problems: report.problems, codes: report.problems.map((p) => p.code) };
}

const said = (inlines: readonly Inline[]) =>
  inlines
    .map(({ text }) => text)
    .join('')
    .replaceAll('\u00a0', ' ');

describe('a deck whose first slide is a figure', () => {
  it('opens with a slide of its own, so that what every deck says first is said', async () => {
    const text = lessonText();
    const first = text.indexOf('::::slide');
    const figure = text.indexOf('::::slide', text.indexOf('::show{figure=pinto}', first) - 200);
    const laid = await layOut(text.slice(0, first) + text.slice(figure));
    const [opening] = laid.deck.slides;
    expect(opening?.stage.kind).toBe('open');
    expect(said(opening?.title ?? [])).toBe('Beans and peas, three ways');
    expect(said(opening?.shelf ?? [])).toContain('This sheet teaches. It does not treat you.');
    expect(laid.codes).not.toContain('S17');
  });
});

describe('the deck of the beans lesson', () => {
  let laid: Laid;
  beforeAll(async () => {
    laid = await layOut(lessonText());
  }, 60_000);

  it('has no problem', () => {
    expect(laid.codes).toEqual([]);
  });

  it('has no words under 24 points, none outside their place and none on others', () => {
    expect(faults(laid.pages)).toEqual([]);
  });

  it('gives every page a title of its own, steps too', () => {
    const titles = laid.deck.slides.map(({ title }) => said(title));
    expect(new Set(titles).size).toBe(titles.length);
    expect(titles).not.toContain('');
  });

  it('says every caution before the first figure, whole and in order, in the short wording', () => {
    const { slides } = laid.deck;
    const first = slides.findIndex(({ stage }) => stage.kind === 'show');
    const lines = slides
      .slice(0, first)
      .flatMap(({ number, stage }) => (stage.kind === 'caution' && number === 4 ? stage.block.lines : []));
    const boxes = boxesOf(laid.desk.pulled);
    expect(boxes.length).toBeGreaterThan(5);
    expect(lines.map(({ id, inlines }) => [id, said(inlines)])).toEqual(
      boxes.map(({ caution }) => [caution.id, caution.wordings.en?.short]),
    );
    // The finished pages say them again, each on one page.
    const pages = laid.pages.pages.map((page) => textOf(marksOf(page)).replace(/\s+/gu, ' '));
    for (const { caution } of boxes)
      expect(
        pages.some((page) => page.includes(caution.wordings.en?.short ?? '?')),
        caution.id,
      ).toBe(true);
  });

  it('has each stop line of a figure on its slide: on the shelf, or as its first step', () => {
    const { slides } = laid.deck;
    const stop = 'Is the can swollen, leaking or badly dented? Do not open it. Throw it out.';
    const figures = slides.filter(({ stage }) => stage.kind === 'show' || stage.kind === 'ask');
    expect(figures.length).toBeGreaterThan(3);
    for (const { number, shelf } of figures) {
      const step = slides.find((slide) => slide.number === number && slide.stage.kind === 'caution');
      const lines = step?.stage.kind === 'caution' ? step.stage.block.lines.map((l) => said(l.inlines)) : [];
      expect(said(shelf).includes(stop) || lines.includes(stop), `slide ${number}`).toBe(true);
      // What stands there need not be pointed to; what does not, is.
      expect(said(shelf).includes('Stop: slide 4.'), `slide ${number}`).toBe(!said(shelf).includes(stop));
      expect(said(shelf)).toMatch(/Sources? \d/);
    }
  });

  it('asks the question as its title, and answers on the next step with the letter and why', () => {
    const at = laid.deck.slides.findIndex(({ stage }) => stage.kind === 'ask');
    const [ask, answer] = laid.deck.slides.slice(at, at + 2);
    expect(said(ask?.title ?? [])).toBe('Half a cup of pinto beans. Which has the least sodium?');
    expect(said(answer?.title ?? [])).toBe('Answer: C. No salt went in.');
    expect(ask?.number).toBe(answer?.number);
    expect(
      ask?.stage.kind === 'ask' && ask.stage.question.choices.every(({ key }) => key === undefined),
    ).toBe(true);
  });

  it('names its files by number, and says no answer in the title or description of a question', () => {
    const files = slideFiles(laid.deck, laid.pages, []);
    expect(
      files.map(({ path }) => path).filter((path) => !/^en\/slides\/\d\d\.(svg|png)$/.test(path)),
    ).toEqual([]);
    expect(files).toHaveLength(2 * laid.deck.slides.length);
    const at = laid.deck.slides.findIndex(({ stage }) => stage.kind === 'ask');
    const svg = (index: number) => new TextDecoder().decode(files[2 * index]?.bytes);
    const told = (index: number) =>
      svg(index)
        .match(/<title.*?<\/desc>/s)?.[0]
        .replaceAll('\u00a0', ' ') ?? '';
    expect(told(at)).toContain('A. Pinto beans, canned, drained');
    expect(told(at)).not.toMatch(/Answer|\d mg|No salt went in/);
    expect(told(at + 1)).toContain('C. Pinto beans, dried, cooked at home: 1 mg.');
  });

  it('tells in each picture file all that the slide says', () => {
    const files = slideFiles(laid.deck, laid.pages, []);
    const at = laid.deck.slides.findIndex(({ stage }) => stage.kind === 'caution');
    expect(new TextDecoder().decode(files[2 * at]?.bytes)).toContain(
      'Stop: Is the can swollen, leaking or badly dented?',
    );
  });

  it('knows where each slide stands in the lesson', () => {
    const own = laid.deck.slides.filter(({ stage }) => stage.kind !== 'caution' && stage.kind !== 'sources');
    expect(own.every(({ place }) => place?.file.endsWith('lesson.md'))).toBe(true);
    expect(lessonText().split('\n')[(own[0]?.place?.line ?? 0) - 1]).toContain('::::slide{minutes=2');
  });

  it('names every piece of content once in its structure', () => {
    const ids = idsOf(laid.pages.structure);
    expect(new Set(ids).size).toBe(ids.length);
    const used = laid.pages.pages.flatMap((page) =>
      page.items.flatMap((item) => (item.kind === 'content' ? [item.node] : [])),
    );
    expect(used.filter((id) => !ids.includes(id))).toEqual([]);
  });
});

describe('all boxes of the register', () => {
  it('stand on slides whole and in order, however many there are', async () => {
    const shop = openWorkshop(memoryWorkspace({ [BEANS]: lessonText() }, program));
    const report = createReport();
    const desk = readLesson(shop.workspace, 'beans-three-ways', shop.tables, shop.settings, ON, report);
    if (!desk) throw new Error('The lesson cannot be read.');
    const pulled = shop.tables.register.cautions.map((caution) => ({
      caution,
      reasons: [],
      reworded: {},
      slots: {},
    }));
    const { lines, whoToAsk } = cautionBlock(pulled, settingFor(desk, 'slides', 'plain'), createReport());
    expect(lines.length).toBeGreaterThan(40);
    const fits = await measureSlides(shop.drawers.fonts, shop.drawers.frames, 'en');
    const parts = fits.cautions(lines, []);
    expect(parts.flat()).toEqual(lines);
    const deck = await deckFor(desk, shop.drawers, false, createReport());
    const slides = parts.map(
      (part, index): Slide => ({
        id: `c${index}`,
        number: index + 1,
        title: [{ text: `Part ${index + 1}` }],
        stage: { kind: 'caution', block: { lines: part, whoToAsk } },
        shelf: [],
        minutes: 0,
        say: [],
        do: [],
      }),
    );
    const found = createReport();
    const pages = await layOutDeck({ ...deck, slides }, slideTools(desk, shop.drawers, found), found);
    expect(found.problems).toEqual([]);
    expect(faults(pages)).toEqual([]);
  }, 60_000);
});

describe('the deck of the beans lesson in one ink', () => {
  it('has black and white only', async () => {
    const { pages } = await layOut(lessonText(), 'one');
    const colors = new Set(
      JSON.stringify(pages.pages.map(marksOf), (key, value) =>
        key === 'font' || key === 'glyphs' ? undefined : value,
      ).match(/#[0-9a-f]{6}/g),
    );
    expect([...colors].filter((color) => !['#000000', '#ffffff'].includes(color))).toEqual([]);
  }, 60_000);
});

describe('a deck that holds too much', () => {
  /** Puts words into the first slide whose heading holds these words, below the heading. */
  const into = (heading: string, words: string) =>
    lessonText().replace(new RegExp(`(## ${heading}.*\n)`), `$1\n${words}\n`);

  it.each([
    [
      'a title of many lines',
      lessonText().replace(
        '## Read two cans\n\n:::do',
        `## ${'Read two cans slowly and aloud '.repeat(6)}\n\n:::do`,
      ),
      'slides/too-long',
      '::::slide{minutes=8',
    ],
    [
      'too many steps',
      lessonText().replace('4. Tell your neighbor', '4. One\n5. Two\n6. Three\n7. Tell your neighbor'),
      'slides/too-long',
      '::::slide{minutes=8',
    ],
    [
      'a picture that does not exist',
      lessonText().replace('pictures="jar; can; bag"', 'pictures="jar; kann"'),
      'slides/no-picture',
      '::::slide{minutes=2 pictures="jar',
    ],
    [
      'two slides with one title',
      lessonText().replace('## Drain, rinse, shake', '## Who rinses?'),
      'slides/same-title',
      '::::slide{minutes=3 pictures="sieve"}',
    ],
    [
      'words beside a figure',
      into('Rinsing sends', 'These words stand beside the figure.'),
      'slides/no-place',
      'These words stand',
    ],
    [
      'a second figure',
      into('Rinsing sends', '::show{figure=pinto}'),
      'slides/no-place',
      '::show{figure=rinse}',
    ],
    [
      'words beside the title of the talk',
      lessonText().replace(
        '# Beans and peas, three ways\n\n:::say',
        '# Beans and peas, three ways\n\nMore words.\n\n:::say',
      ),
      'slides/no-place',
      'More words.',
    ],
    [
      'a table',
      into('One dish', '| a | b |\n| --- | --- |\n| 1 | 2 |'),
      'slides/no-place',
      '::::slide{minutes=3 pictures="pot"}',
    ],
    [
      'pictures beside a figure',
      lessonText().replace('::::slide{minutes=5}', '::::slide{minutes=5 pictures="can"}'),
      'slides/no-place',
      '::::slide{minutes=5 pictures',
    ],
    [
      'two pictures beside words',
      lessonText().replace('pictures="pot"', 'pictures="pot; can"'),
      'slides/no-place',
      'pictures="pot; can"',
    ],
    [
      'words for the slides that stand in none',
      `${lessonText()}\n:::only{out=slides}\nLost words.\n:::\n`,
      'slides/no-place',
      'Lost words.',
    ],
  ])(
    '%s is a problem at its place',
    async (_, text, code, line) => {
      const found = (await layOut(text)).problems.filter((problem) => problem.code === code);
      expect(found[0]?.hint).toBeTruthy();
      expect(text.split('\n')[(found[0]?.place?.line ?? 0) - 1]).toContain(line);
    },
    60_000,
  );
});

describe('a slide with words for several levels', () => {
  it('shows the plain ones', async () => {
    const levels = '::::level{is=short}\nShort words.\n::::\n\n::::level{is=plain}\nPlain words.\n::::';
    const text = lessonText()
      .replace('Pick a dish you make already. Put one cup of beans or peas in it this week.', levels)
      .replace('::::slide{minutes=3 pictures="pot"}', ':::::slide{minutes=3 pictures="pot"}')
      .replace(/(quiet minutes[^:]*:::\n)::::/, '$1:::::');
    const { deck, codes } = await layOut(text);
    expect(codes).toEqual([]);
    const slide = deck.slides.find(({ title }) => said(title) === 'One dish, one day');
    const blocks = slide?.stage.kind === 'words' ? slide.stage.blocks : [];
    expect(blocks.map((block) => ('inlines' in block ? said(block.inlines) : ''))).toEqual(['Plain words.']);
  }, 60_000);
});
