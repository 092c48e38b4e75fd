import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { platework } from './command.js';

let elsewhere: string;
beforeAll(() => {
  elsewhere = mkdtempSync(join(tmpdir(), 'platework-foods-'));
});
afterAll(() => rmSync(elsewhere, { recursive: true, force: true }));
const foods = (...words: string[]) => platework(['foods', ...words], elsewhere);

describe('platework foods', () => {
  it('shows kind, state, measures and main nutrients, outside a workspace', () => {
    const { code, out, err } = foods('frijoles', 'negros');
    expect([code, err]).toEqual([0, '']);
    // USDA SR28, food 16014, per 100 g: 341 kcal, 21.6 g protein, 15.5 g fiber, 1,483 mg potassium; a cup is 194 g.
    expect(out).toMatch(/^black beans, dry\n/);
    expect(out).toMatch(/Kind +black beans; dry/);
    expect(out).toMatch(/State +dry/);
    expect(out).toMatch(/Measures +cup 194 g; tbsp 12.1 g/);
    expect(out).toMatch(/food 16014: Beans, black, mature seeds, raw/);
    expect(out).toMatch(/per 100 g +per 1\/4 cup/);
    expect(out).toMatch(/energy +340 calories +170 calories/);
    expect(out).toMatch(/potassium +1,500 mg +720 mg/);
  });

  it('says not known where the release is blank, and never zero', () => {
    // Added sugars stand in no column of SR28; only a food that is nothing but itself has none.
    const { out } = foods('pinto beans, canned, drained', '--most', '1');
    expect(out).toMatch(/added sugars +not known +not known/);
    expect(foods('refried beans canned fat-free', '--most', '1').out).toMatch(/added sugars +not known/);
  });

  it('gives machines the unrounded values', () => {
    const { code, out } = foods('beans', '--json', '--most', '2');
    const read = JSON.parse(out);
    expect(code).toBe(0);
    expect(read.foods).toHaveLength(2);
    expect(read.foods[0]).toMatchObject({ name: 'pinto beans, dry', per100g: { protein: 21.42 } });
    expect(read.found).toBe(2 + read.others.length);
  });

  it('says that it guessed', () => {
    const { code, out } = foods('garbonzo');
    expect(code).toBe(0);
    expect(out).toMatch(/^No food answers to "garbonzo" as it is written. The nearest:\n\nchickpeas, dry\n/);
  });

  it('offers the nearest five when nothing is found', () => {
    const { code, out } = foods('xylophone', 'soup');
    expect(code).toBe(1);
    expect(out.trimEnd().split('\n')).toHaveLength(6);
    expect(JSON.parse(foods('xylophone', 'soup', '--json').out)).toMatchObject({ found: 0, foods: [] });
  });

  it('shows foods that only the release has, and says that lessons cannot name them', () => {
    const { out } = foods('squab', 'meat', 'only', '--most', '1');
    expect(out).toMatch(/^Squab, \(pigeon\), meat only, raw \(in the release only/);
    expect(out).toMatch(/energy +140 calories\n/);
  });

  it.each([
    [[], 'Say which food'],
    [['...'], 'Say which food'],
    [['beans', '--most', 'all'], '--most needs a count'],
    [['beans', '--mots', '1'], 'Did you mean --most?'],
  ])('refuses %j: %s', (words, message) => {
    const { code, err } = foods(...words);
    expect([code, err]).toEqual([2, expect.stringContaining(message)]);
  });

  it('explains itself', () => {
    expect(foods('--help')).toMatchObject({
      code: 0,
      out: expect.stringContaining('platework foods <words>'),
    });
  });
});
