import { beforeAll, describe, expect, it } from 'vitest';
import type { Built } from '../../src/pipeline/build.js';
import { readPdf } from './pdf-text.js';
import { buildFrom, fileOf } from './program.js';

const lesson = (topics: string, copies: number) => `---
title: One small thing
code: SMALL
minutes: 40
audience: adults
objectives: [name one habit]
guidance: us-2025
topics: [${topics}]
review: none
---

# One small thing

Pick one small thing.

::goal-card{id=goal copies=${copies}}
`;

const build = (topics: string, copies: number) =>
  buildFrom({ 'lessons/small/lesson.md': lesson(topics, copies) }, 'small');
const times = (text: string, words: string) => text.split(words).length - 1;

describe('cards to cut', () => {
  let salt: Built;
  let cans: Built;
  beforeAll(async () => {
    [salt, cans] = await Promise.all([build('sodium down', 2), build('cans', 4)]);
  }, 60_000);

  it.each(['letter', 'a4'])('carry every caution that stands on cards on both copies, %s', async (paper) => {
    const pages = (await readPdf(fileOf(salt, `en/cards-${paper}.pdf`))).texts;
    const text = pages.join(' ').replace(/\s+/g, ' ');
    for (const words of [
      'Do you take lithium? Ask your care team before you cut back on salt.',
      'Heart failure or water pills? Ask your care team before you change your salt.',
      'Do you have an eating plan from your care team? Follow your own plan.',
      'Keep taking your pills.',
      'This page is yours. You do not have to show it or hand it in.',
      'Pills for sugar, blood pressure or thyroid?',
    ])
      expect(times(text, words), words).toBe(2);
    expect(times(text, 'How sure am I?')).toBe(2);
  });

  it('leave out what no card must carry', async () => {
    const text = (await readPdf(fileOf(cans, 'en/cards-letter.pdf'))).text;
    expect(text).not.toContain('thyroid');
    expect(text).not.toContain('swollen');
    expect(times(text, 'One thing I will do')).toBe(4);
  });

  it('are made without a problem, and no draft', () => {
    for (const built of [salt, cans]) {
      // The lesson has no site, so that nothing fills in where to call in an emergency; no card says it.
      const others = built.problems.filter(({ code }) => code !== 'cautions/slot');
      expect(others.filter(({ severity }) => severity === 'stop')).toEqual([]);
      for (const file of built.files.filter(({ path }) => /cards-/.test(path))) {
        expect(file.draft).toEqual([]);
        expect(file.pages).toBe(1);
      }
    }
  });
});

describe("the leader's page", () => {
  const hands = ':::hands-up{id=rinse}\nDo you rinse?\n- yes ; then = skip the slide\n- no\n:::\n';
  const page = async (more: string) => {
    const text = `${lesson('cans', 2)}\n${hands}${more}`;
    const built = await buildFrom({ 'lessons/small/lesson.md': text }, 'small');
    return (await readPdf(fileOf(built, 'en/staff-letter.pdf'))).text.replace(/\s+/g, ' ');
  };

  it('holds what is for the leader alone, once, wherever the lesson puts it', async () => {
    const [alone, placed] = await Promise.all([
      page(''),
      page('\n::::staff\n## Hands\n::show{figure=rinse}\n::::\n'),
    ]);
    for (const text of [alone, placed]) expect(times(text, 'skip the slide')).toBe(1);
    expect(alone).toContain('In the room');
    expect(placed).not.toContain('In the room');
  }, 60_000);
});
