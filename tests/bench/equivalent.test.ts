import { describe, expect, it } from 'vitest';
import { createReport } from '../../src/diagnostics/index.js';
import { openWorkshop } from '../../src/pipeline/build.js';
import { jobsFor } from '../../src/pipeline/jobs.js';
import { readLesson } from '../../src/pipeline/read.js';
import { makeSheet } from '../../src/pipeline/sheets.js';
import { memoryWorkspace } from '../../src/pipeline/workspace.js';
import { lessonText, ON, program } from '../lessons/program.js';
import { equivalentHtml } from './equivalent.mjs';

const report = createReport();
const text = lessonText('tests/bench/neutral/lesson.md');
const shop = openWorkshop(memoryWorkspace({ 'lessons/room/lesson.md': text }, program));
const desk = readLesson(shop.workspace, 'room', shop.tables, shop.settings, ON, report);
if (!desk) throw new Error('The neutral lesson cannot be read.');
const sheet = makeSheet(desk, 'handout', 'plain', false, report);

/** Words of a text without its marks. */
const words = (marked: string): readonly string[] => marked.match(/[\p{L}\p{N}]+/gu) ?? [];

describe('the neutral handout of the bench', () => {
  it('has no problem, no figure and two pages', async () => {
    const job = jobsFor(desk, shop).find(({ name }) => name === 'handout-plain-letter.pdf');
    const laid = await job?.layOut(false);
    expect(report.problems).toEqual([]);
    expect(laid?.problems).toEqual([]);
    expect(laid?.pages.pages).toHaveLength(2);
    expect(desk.computed.entries).toEqual([]);
  });

  it('is a web page with every word of the lesson, in the same order', () => {
    const page = equivalentHtml(sheet, 'assets/')
      .replace(/[\s\S]*<body>/, '')
      .replace(/<[^>]*>/g, ' ')
      .replaceAll('&quot;', '"')
      .replaceAll('&amp;', '&');
    const lesson = text.replace(/^---[\s\S]*?\n---\n/, '').replace(/^\d+\. /gm, '');
    const found = words(page);
    let at = -1;
    const missing = words(lesson).filter((word) => {
      const next = found.indexOf(word, at + 1);
      if (next >= 0) at = next;
      return next < 0;
    });
    expect(missing).toEqual([]);
  });

  it('keeps out what a browser would show otherwise', () => {
    const figure = { kind: 'write', label: 'My plan', lines: 2 } as const;
    expect(() => equivalentHtml({ ...sheet, blocks: [figure] }, 'assets/')).toThrow(/write/);
  });
});
