import { beforeAll, describe, expect, it } from 'vitest';
import type { Built } from '../../src/pipeline/build.js';
import type { NumbersFile } from '../../src/pipeline/numbers.js';
import { evaluate, evaluateParts } from '../nutrition/evaluate.js';
import { readPdf } from './pdf-text.js';
import { buildFrom, fileOf, lessonText, textOf } from './program.js';

const LESSONS = [
  {
    slug: 'your-dish',
    // The eight boxes that the register's authors counted by hand for this lesson.
    boxes: [
      'milk-infant',
      'allergen-label',
      'allergen-cross-contact',
      'allergen-swap',
      'vegan-b12',
      'diet-gaps',
      'celiac-test-first',
      'gluten-free-label',
    ],
    hints: [] as string[],
  },
  {
    slug: 'slow-is-normal',
    boxes: [
      'carb-low-sugar',
      'glp1-low-intake',
      'weight-not-for',
      'weight-ask-first',
      'weight-pace',
      'bariatric-plan',
      'activity-stop',
      'activity-low-sugar',
    ],
    // The boxes of this lesson leave room for one card on a sheet.
    hints: ['layout/cards'],
  },
];
const path = (slug: string) => `lessons/${slug}/lesson.md`;

/** Each lesson is built once for all tests of this file. */
const builds = new Map<string, Promise<Built>>();
function build(slug: string): Promise<Built> {
  const made = builds.get(slug) ?? buildFrom({ [path(slug)]: lessonText(path(slug)) }, slug);
  builds.set(slug, made);
  return made;
}

describe.each(LESSONS)('the lesson $slug', ({ slug, boxes, hints }) => {
  let built: Built;
  let numbers: NumbersFile['numbers'];
  beforeAll(async () => {
    built = await build(slug);
    numbers = (JSON.parse(textOf(built, 'numbers.json')) as NumbersFile).numbers;
  }, 180_000);

  it('has no problem but the hints that are named', () => {
    expect(built.problems.map(({ code }) => code)).toEqual(hints);
  });

  it('fills two sides at most at each level, on each paper, in color and in one ink', () => {
    const handouts = built.files.filter((file) => file.path.includes('/handout-'));
    expect(handouts.length).toBeGreaterThanOrEqual(12);
    expect(handouts.filter((file) => (file.pages ?? 0) > 2).map((file) => file.path)).toEqual([]);
  });

  it('plans forty minutes', () => {
    const minutes = [...lessonText(path(slug)).matchAll(/::::slide\{minutes=(\d+)/g)].map((m) =>
      Number(m[1]),
    );
    expect(minutes.reduce((a, b) => a + b, 0)).toBe(40);
  });

  it('pulls the boxes that its register counts for it, and no other', () => {
    const pulled = built.pulled
      .filter(({ caution }) => caution.kind === 'box')
      .map(({ caution }) => caution.id);
    expect(pulled.toSorted()).toEqual(boxes.toSorted());
  });

  it('holds formulas that give their values when other code works them out', () => {
    expect(numbers.length).toBeGreaterThan(10);
    for (const number of numbers) {
      if (number.low !== undefined && number.high !== undefined) {
        const parts = evaluateParts(number);
        expect(parts.low, number.id).toBeCloseTo(number.low, 9);
        expect(parts.high, number.id).toBeCloseTo(number.high, 9);
      } else if (number.value !== null) expect(evaluate(number), number.id).toBeCloseTo(number.value, 9);
    }
  });
});

describe('Your dish, your kitchen', () => {
  /**
   * USDA Standard Reference 28, read from ABBREV.txt: couscous, cooked (20029) 1.4 g of fiber per 100 g, a cup 157 g;
   * lentils, boiled (16070) 7.9 g, a cup 198 g; quinoa, cooked (20137) 2.8 g, a cup 185 g; green beans, boiled (11053)
   * 3.2 g, a cup 125 g; carrots, boiled (11125) 3.0 g, a cup of slices 156 g; chicken breast (05064) none.
   */
  it('tells the fiber before and after the turn as the release has it', async () => {
    const built = await build('your-dish');
    const { numbers } = JSON.parse(textOf(built, 'numbers.json')) as NumbersFile;
    const value = (id: string) => numbers.find((n) => n.id === id)?.value;
    const sides = 3.2 * 1.25 + 3.0 * 1.56;
    expect(value('turned.before.fiber')).toBeCloseTo(1.4 * 1.57 + sides, 6);
    expect(value('turned.after.fiber')).toBeCloseTo(7.9 * 1.98 * 0.75 + 2.8 * 1.85 + sides, 6);
    const text = (await readPdf(fileOf(built, 'en/handout-plain-letter.pdf'))).text.replaceAll('\u00a0', ' ');
    expect(text).toContain('Fiber goes from 11 g to 26 g.');
  }, 180_000);
});

describe('Slow is normal', () => {
  let built: Built;
  beforeAll(async () => {
    built = await build('slow-is-normal');
  }, 180_000);

  it.each(['short', 'plain', 'fuller'])(
    'has a sheet without weight at %s that holds no weight and no energy',
    async (level) => {
      const { text } = await readPdf(fileOf(built, `en/handout-${level}-weightfree-letter.pdf`));
      const own = text.slice(text.indexOf('What else'));
      expect(own.length).toBeGreaterThan(80);
      expect(own).not.toMatch(/\b(?:weigh|weight|lb|kg|pounds?|calories?|kcal|BMI|slim|diet)\b/i);
    },
  );

  it.each(['handout-plain-letter', 'slides', 'worksheet-plain-letter'])(
    'never prints a goal or a personal target in %s',
    async (name) => {
      const { text } = await readPdf(fileOf(built, `en/${name}.pdf`));
      expect(text).not.toMatch(/goal weight|target|your weight is|you should (?:eat|weigh)/i);
    },
  );
});
