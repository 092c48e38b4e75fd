import { beforeAll, describe, expect, it } from 'vitest';
import type { Built } from '../../src/pipeline/build.js';
import { readPdf } from './pdf-text.js';
import { buildFrom, fileOf, textOf } from './program.js';

const lesson = (audience: string, text: string) => `---
title: Slow is normal
code: SLOW
minutes: 40
audience: ${audience}
objectives: [name one gain]
guidance: us-2025
topics: [weight]
review: none
site: lantern-street
---

# Slow is normal

Small changes add up, and then they level off.

## What to expect

::pace-chart{id=slow show=band change="250 kcal a day" example="woman, 45, 165 cm, 82 kg"}

::::only{out=handout}
Weight loss slows, and that is normal.
::::

::pace-chart{id=ease show=pace to-lose="20 lb" example="adult, 230 lb, 5 ft 7 in"}

::::only{out=weightfree}
${text}
::::
`;
const build = (audience: string, text: string) =>
  buildFrom({ 'lessons/slow/lesson.md': lesson(audience, text) }, 'slow');
const isTwin = (path: string) => path.includes('weightfree');
const TWIN = 'en/handout-plain-weightfree-letter.pdf';

describe('a lesson about weight', () => {
  let good: Built;
  let slip: Built;
  let school: Built;
  beforeAll(async () => {
    [good, slip, school] = await Promise.all([
      build('adults', 'Sleep well and walk a little.'),
      build('adults', 'You may be 5 lb lighter.'),
      build('teens at school', 'Sleep well.'),
    ]);
  }, 120_000);

  it('gets a sheet without weight at every level, on both papers, in color and in one ink', () => {
    const twins = good.files.map(({ path }) => path).filter(isTwin);
    const wanted = ['short', 'plain', 'fuller'].flatMap((level) =>
      ['a4', 'letter'].flatMap((paper) => [
        `en/handout-${level}-weightfree-${paper}.pdf`,
        `en/handout-${level}-weightfree-oneink-${paper}.pdf`,
      ]),
    );
    expect(twins.toSorted()).toEqual(wanted.toSorted());
    for (const path of wanted) expect(textOf(good, 'manifest.json')).toContain(path);
    expect(good.files.filter(({ path, draft }) => isTwin(path) && (draft?.length ?? 0) > 0)).toEqual([]);
  });

  it('says there once what else changes, and nothing of weight', async () => {
    const text = (await readPdf(fileOf(good, TWIN))).text.replace(/\s+/g, ' ');
    expect(text.split('What else changes?')).toHaveLength(2);
    expect(text).toContain('Sleep well and walk a little.');
    for (const words of [
      'Weight loss slows',
      ' lb',
      'calories',
      'This page on weight',
      'skip the weight page',
    ])
      expect(text, words).not.toContain(words);
    // What asks people to see their care team stands, and so does where help is.
    expect(text).toContain('losing weight without trying? Ask your care team first.');
    expect(text).toContain('Do thoughts about food or weight fill your day?');
  });

  it('keeps its own words off the handout', async () => {
    const text = (await readPdf(fileOf(good, 'en/handout-plain-letter.pdf'))).text.replace(/\s+/g, ' ');
    expect(text).toContain('Weight loss slows, and that is normal.');
    expect(text).not.toContain('Sleep well and walk a little.');
    expect(text).toContain('This page on weight is not for you');
  });

  it('makes a draft of that sheet alone when it says a weight', () => {
    const found = slip.problems.filter(({ code }) => code === 'weight-free/word');
    expect(found.length).toBeGreaterThan(0);
    expect(found[0]?.place?.line).toBe(28);
    for (const { path, draft = [] } of slip.files.filter((file) => file.path.endsWith('.pdf')))
      expect(draft.includes('weight-free/word'), path).toBe(isTwin(path));
  });

  it('is withheld from a room under 18, but for the sheet without weight (R14)', () => {
    for (const { path, draft = [] } of school.files.filter((file) => /handout.*pdf$/.test(file.path)))
      expect(draft.includes('S11'), path).toBe(!isTwin(path));
  });

  it('tells the reviewer which lines the sheet without weight leaves out', async () => {
    const text = (await readPdf(fileOf(good, 'en/review-letter.pdf'))).text.replace(/\s+/g, ' ');
    expect(text).toContain('weight-opt-out, weight-not-for, and weight-pace');
  });
});
