import { beforeAll, describe, expect, it } from 'vitest';
import { createReport } from '../../src/diagnostics/index.js';
import type { Deck } from '../../src/document/index.js';
import { type Mark, textBoxes } from '../../src/figures/index.js';
import type { Pages, StructureNode } from '../../src/layout/index.js';
import { layOutDeck } from '../../src/outputs/slides/index.js';
import { openWorkshop } from '../../src/pipeline/build.js';
import { deckFor } from '../../src/pipeline/deck-for.js';
import { slideTools } from '../../src/pipeline/pictures-out.js';
import { readLesson } from '../../src/pipeline/read.js';
import { memoryWorkspace } from '../../src/pipeline/workspace.js';
import { BEANS, lessonText, ON, program } from './program.js';

/** 24 points: the smallest type on a screen (the house's own rule; common practice for a hall). */
const SMALLEST = 24;

interface Laid {
  readonly deck: Deck;
  readonly pages: Pages;
  readonly codes: readonly string[];
}

async function layOut(text: string, ink: 'color' | 'one' = 'color'): Promise<Laid> {
  const shop = openWorkshop(memoryWorkspace({ [BEANS]: text }, program));
  const report = createReport();
  const desk = readLesson(shop.workspace, 'beans-three-ways', shop.tables, shop.settings, ON, report);
  if (!desk) throw new Error('The lesson cannot be read.');
  const deck = await deckFor(desk, shop.drawers, false, report);
  const pages = await layOutDeck(deck, slideTools(desk, shop.drawers, report, ink), report);
  return { deck, pages, codes: report.problems.map((p) => p.code) };
}

function runsIn(marks: readonly Mark[], scale = 1): { readonly size: number; readonly text: string }[] {
  return marks.flatMap((mark) => {
    if (mark.kind === 'group') return runsIn(mark.marks, scale * Math.abs(mark.at?.[3] ?? 1));
    return mark.kind === 'text' && !mark.hidden
      ? mark.line.runs.map((run) => ({ size: run.size * scale, text: run.text }))
      : [];
  });
}

const marksOf = (page: Pages['pages'][number]) =>
  page.items.flatMap((item) => (item.kind === 'link' ? [] : item.marks));

describe('the deck of the beans lesson', () => {
  let laid: Laid;
  beforeAll(async () => {
    laid = await layOut(lessonText());
  }, 60_000);

  it('has no problem', () => {
    expect(laid.codes).toEqual([]);
  });

  it('sets nothing smaller than 24 points', () => {
    for (const [index, page] of laid.pages.pages.entries()) {
      const small = runsIn(marksOf(page)).filter(
        (run) => run.text.trim() !== '' && run.size < SMALLEST - 0.01,
      );
      expect(small, `page ${index + 1}`).toEqual([]);
    }
  });

  it('keeps all words on the slide and clear of each other', () => {
    for (const [index, page] of laid.pages.pages.entries()) {
      const boxes = textBoxes(marksOf(page)).filter((box) => box.words !== '');
      for (const { box, words: text } of boxes) {
        expect(box.left, `${index + 1}: ${text}`).toBeGreaterThanOrEqual(0);
        expect(box.right, `${index + 1}: ${text}`).toBeLessThanOrEqual(page.width);
        expect(box.bottom, `${index + 1}: ${text}`).toBeLessThanOrEqual(page.height);
      }
      for (const [i, a] of boxes.entries()) {
        for (const b of boxes.slice(i + 1)) {
          const across = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
          const down = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top);
          expect(across > 0.5 && down > 3, `page ${index + 1}: “${a.words}” on “${b.words}”`).toBe(false);
        }
      }
    }
  });

  it('gives every page a title of its own', () => {
    const titles = laid.deck.slides.map((slide) => slide.title.map((inline) => inline.text).join(''));
    expect(new Set(titles).size).toBe(titles.length);
  });

  it('says all cautions before the first figure', () => {
    const kinds = laid.deck.slides.map((slide) => slide.stage.kind);
    expect(kinds.indexOf('caution')).toBeGreaterThan(0);
    expect(kinds.indexOf('caution')).toBeLessThan(kinds.indexOf('show'));
    const lines = laid.deck.slides
      .slice(0, kinds.indexOf('show'))
      .flatMap(({ stage }) => (stage.kind === 'caution' ? stage.block.lines.map((line) => line.id) : []));
    expect(new Set(lines)).toContain('sodium-lithium');
  });

  it('asks before it answers, and the question holds no answer', () => {
    const ask = laid.deck.slides.find(({ stage }) => stage.kind === 'ask');
    expect(
      ask?.stage.kind === 'ask' && ask.stage.question.choices.every((choice) => choice.key === undefined),
    ).toBe(true);
  });

  it('names every piece of content once in its structure', () => {
    const ids: string[] = [];
    const visit = (node: StructureNode): void => {
      ids.push(node.id);
      node.children.forEach(visit);
    };
    visit(laid.pages.structure);
    expect(new Set(ids).size).toBe(ids.length);
    const used = laid.pages.pages.flatMap((page) =>
      page.items.flatMap((item) => (item.kind === 'content' ? [item.node] : [])),
    );
    expect(used.filter((id) => !ids.includes(id))).toEqual([]);
  });
});

describe('a deck in one ink', () => {
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
  it.each([
    [
      'a title of four lines',
      lessonText().replace('## Read two cans', `## ${'Read two cans slowly and aloud '.repeat(6)}`),
    ],
    [
      'too many steps',
      lessonText().replace('4. Tell your neighbor', '4. One\n5. Two\n6. Three\n7. Tell your neighbor'),
    ],
    [
      'a picture that does not exist',
      lessonText().replace('pictures="jar; can; bag"', 'pictures="jar; kann"'),
    ],
    ['two slides with one title', lessonText().replace('## Drain, rinse, shake', '## Who rinses?')],
  ])(
    '%s is a problem',
    async (_, text) => {
      expect((await layOut(text)).codes.filter((code) => code.startsWith('slides/'))).not.toEqual([]);
    },
    60_000,
  );
});
