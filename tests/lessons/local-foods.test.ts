import { describe, expect, it } from 'vitest';
import { buildFrom, program } from './program.js';

const LESSON = `---
title: A small lesson
minutes: 10
audience: anyone
site: our-hall
objectives:
  - compare two cans
guidance: us-2025
topics: [cans]
review: none
---

# A small lesson

Rinse beans from a can.

## One cup

:::form-compare{id=beans food="black beans" basis="1 cup, ready to eat" show="sodium"}
- dried, cooked at home
- canned, drained and rinsed
:::
`;
const FOODS = `site: our-hall
foods:
  - name: black beans, canned, drained and rinsed
    state: canned, drained and rinsed
    plate: [protein, grain or starch]
    serving: { words: 1/2 cup, grams: 85 }
    label: { energy: 100 kcal, sodium: 150 mg, fiber: 7 g }
    contains: none
    picture: black-beans-rinsed
    flags: [canned]
    source: an invented can
    dated: 2026-11-20
    keep_months: 12
`;
const pack = (name: string) =>
  new TextDecoder()
    .decode(program.asset(`local/lantern-street/${name}`) ?? new Uint8Array())
    .replace('site: lantern-street', 'site: our-hall');
const files = (foods: Readonly<Record<string, string>>) => ({
  'lessons/small/lesson.md': LESSON,
  'platework.yaml': 'paper: [letter]\nlevels: [plain]\n',
  'assets/local/our-hall/lines.yaml': pack('lines.yaml'),
  'assets/local/our-hall/site.yaml': pack('site.yaml'),
  ...foods,
});
const numbersOf = (built: Awaited<ReturnType<typeof buildFrom>>) => {
  const file = built.files.find((f) => f.path === 'numbers.json');
  return file ? new TextDecoder().decode(file.bytes) : '';
};

describe('a food from a local label', () => {
  it('stands in a comparison like any other, with the label as its source', async () => {
    const built = await buildFrom(files({ 'assets/local/our-hall/foods.yaml': FOODS }), 'small');
    expect(built.problems.filter((p) => p.severity === 'stop')).toEqual([]);
    const numbers = numbersOf(built);
    // A cup is two servings of the label: 300 mg of sodium.
    expect(numbers).toContain('300');
    expect(numbers).toContain('label-black-beans-canned-drained-and-rinsed');
  }, 60_000);

  it('is not there without its file, and past its shelf life it is asked about', async () => {
    const without = await buildFrom(files({}), 'small');
    expect(without.problems.some((p) => p.severity === 'stop')).toBe(true);
    const old = await buildFrom(files({ 'assets/local/our-hall/foods.yaml': FOODS }), 'small', '2027-11-21');
    expect(old.problems.map((p) => p.code)).toContain('local/food-old');
  }, 60_000);
});
