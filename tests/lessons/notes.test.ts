import { beforeAll, describe, expect, it } from 'vitest';
import { createReport } from '../../src/diagnostics/index.js';
import type { Block, Deck, Inline, Slide } from '../../src/document/index.js';
import { openWorkshop } from '../../src/pipeline/build.js';
import { deckFor } from '../../src/pipeline/deck-for.js';
import { jobsFor } from '../../src/pipeline/jobs.js';
import { clock, noteBlocks } from '../../src/pipeline/notes.js';
import { readLesson } from '../../src/pipeline/read.js';
import { memoryWorkspace } from '../../src/pipeline/workspace.js';
import { BEANS, lessonText, ON, program } from './program.js';

const said = (inlines: readonly Inline[]) =>
  inlines
    .map(({ text, breakBefore }) => `${breakBefore ? '/' : ''}${text}`)
    .join('')
    .replaceAll('\u00a0', ' ')
    .trim();
const lines = (blocks: readonly Block[]) =>
  blocks.flatMap((block) =>
    'inlines' in block ? [`${block.kind === 'heading' ? '## ' : ''}${said(block.inlines)}`] : [],
  );

const shop = openWorkshop(memoryWorkspace({ [BEANS]: lessonText() }, program));

function deskOf() {
  const desk = readLesson(shop.workspace, 'beans-three-ways', shop.tables, shop.settings, ON, createReport());
  if (!desk) throw new Error('The lesson cannot be read.');
  return desk;
}

describe('the clock', () => {
  it.each([
    [0, '0:00'],
    [7, '0:07'],
    [59, '0:59'],
    [60, '1:00'],
    [125, '2:05'],
  ])('%d minutes is %s', (minutes, expected) => {
    expect(clock(minutes)).toBe(expected);
  });
});

describe('the notes of the beans lesson', () => {
  let deck: Deck;
  let blocks: readonly Block[];
  beforeAll(async () => {
    deck = await deckFor(deskOf(), shop.drawers, false, createReport());
    blocks = noteBlocks(deck);
  });

  it('have a section for each slide, with the minute at which it begins', () => {
    const minutes = [...lessonText().matchAll(/^:{4,}slide\{minutes=(\d+)/gm)].map((match) =>
      Number(match[1]),
    );
    const heads = lines(blocks).filter((line) => line.startsWith('## '));
    // Cautions and sources have no minutes of their own; all else begins when what is before it ends.
    const starts = minutes.map((_, index) => minutes.slice(0, index).reduce((a, b) => a + b, 0));
    expect(heads.map((head) => head.replace(/ \/.*/, ''))).toEqual(
      [...starts.slice(0, 3), starts[3] ?? 0, ...starts.slice(3), minutes.reduce((a, b) => a + b, 0)].map(
        (m) => `## ${clock(m)}`,
      ),
    );
    expect(heads.map((head) => head.replace(/.*\//, ''))).toEqual(
      heads.map((_, index) => `Slide ${index + 1}`),
    );
  });

  it('say how long the talk is, and what is left of it without what a shorter talk leaves out', () => {
    const [first] = lines(blocks);
    const cut = [...lessonText().matchAll(/^:{4,}slide\{minutes=(\d+)[^}]*cut=30/gm)].map((match) =>
      Number(match[1]),
    );
    expect(first).toContain('The talk takes 40 minutes.');
    expect(first).toContain(`that leaves ${40 - cut.reduce((a, b) => a + b, 0)} minutes.`);
    expect(
      lines(blocks).filter((line) => line === 'Leave out when the talk is 30 minutes long.'),
    ).toHaveLength(cut.length);
  });

  it('name the figure and not the caution that leads it, and say to read that aloud', () => {
    const text = lines(blocks);
    const at = text.indexOf('## 0:07 /Slide 5');
    expect(text.slice(at + 1, at + 3)).toEqual([
      'Rinsed, a cup still has 360 mg of sodium (6 minutes, 2 steps)',
      'First step: read the caution aloud.',
    ]);
  });

  it('tell the answer and what is to be said of the others, with their numbers', () => {
    const answer = blocks.find((block) => 'inlines' in block && said(block.inlines).startsWith('Answer:'));
    const inlines = answer && 'inlines' in answer ? answer.inlines : [];
    expect(said(inlines)).toBe(
      'Answer: C, 1 mg. No salt went in. A, 200 mg. Some salt stays. B, 180 mg. Rinsing takes a part.',
    );
    expect(inlines.filter(({ number }) => number?.startsWith('least.'))).toHaveLength(3);
  });

  it('take two pages of each paper', async () => {
    const notes = jobsFor(deskOf(), shop).filter(({ name }) => name.startsWith('notes-'));
    expect(notes.map(({ name }) => name)).toEqual(['notes-letter.pdf', 'notes-a4.pdf']);
    for (const job of notes) {
      const laid = await job.layOut(false);
      expect(laid.problems).toEqual([]);
      expect(laid.pages.pages.length).toBeLessThanOrEqual(2);
    }
  }, 60_000);
});

describe('the lengths of a talk', () => {
  const slide = (number: number, minutes: number, cut?: number): Slide => ({
    id: `s${number}`,
    number,
    title: [{ text: `Slide ${number}` }],
    stage: { kind: 'say', sentence: [] },
    shelf: [],
    minutes,
    say: [],
    do: [],
    ...(cut === undefined ? {} : { cut }),
  });

  it('leave out for a shorter talk what a longer one leaves out already', async () => {
    const deck = await deckFor(deskOf(), shop.drawers, false, createReport());
    const slides = [slide(1, 10), slide(2, 10, 40), slide(3, 10, 30), slide(4, 20)];
    expect(lines(noteBlocks({ ...deck, slides }))[0]).toBe(
      'The talk takes 50 minutes. For a talk of 40 minutes leave out slide 2: that leaves 40 minutes. ' +
        'For a talk of 30 minutes leave out slides 2 and 3: that leaves 30 minutes.',
    );
  });
});
