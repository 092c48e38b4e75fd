import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { frontMatterJsonSchema } from '../../src/lesson/index.js';
import { ROOT } from '../house/source.js';
import { FRONT, parse } from './known.js';

describe('front matter', () => {
  it('has a JSON Schema for editors, and the committed one is the same', () => {
    const committed = JSON.parse(readFileSync(join(ROOT, 'assets/front-matter.schema.json'), 'utf8'));
    expect(committed).toEqual(JSON.parse(JSON.stringify(frontMatterJsonSchema())));
    expect(committed.required).toEqual(
      expect.arrayContaining(['title', 'minutes', 'audience', 'objectives', 'guidance', 'topics', 'review']),
    );
  });

  it('gives every value its place', () => {
    const { lesson } = parse(FRONT);
    expect(lesson?.front.places.get('topics.0')).toMatchObject({ line: 7, column: 10 });
    expect(lesson?.front.places.get('minutes')).toMatchObject({ line: 3, column: 10 });
  });

  it('reads a review with role and days, and refuses a day that is none', () => {
    const review = (text: string) => parse(FRONT.replace('review: none', text));
    expect(
      review('review: {role: dietitian, date: 2026-11-02, next: 2027-11-02}').lesson?.front.review,
    ).toEqual({ role: 'dietitian', date: '2026-11-02', next: '2027-11-02' });
    expect(review('review: {role: dietitian, date: 2026-02-30, next: 2027-11-02}').found).toEqual([
      '8:33 lesson/front-value',
    ]);
    expect(review('review: {role: dietitian, date: 2026-11-02}').found).toEqual(['8:9 lesson/front-missing']);
  });

  it.each([
    ['minutes: 40', 'minutes: "40"', '3:10 lesson/front-value'],
    ['minutes: 40', 'minutes: 4000', '3:10 lesson/front-value'],
    ['topics: [cans]', 'topics: cans', '7:9 lesson/front-value'],
    ['audience: anyone', 'audience:', '4:10 lesson/front-value'],
    ['audience: anyone', 'audince: anyone', '4:1 lesson/front-key'],
    ['guidance: us-2025', 'guidance: us', '6:11 lesson/front-value'],
  ])('%s written as %s', (right, wrong, expected) => {
    expect(parse(FRONT.replace(right, wrong)).found).toContain(expected);
  });

  it('derives a code for the pages from the folder', () => {
    expect(parse(FRONT).lesson?.front.code).toBe('TEST');
  });
});
