import { describe, expect, it } from 'vitest';
import { createReport } from '../../../src/diagnostics/index.js';
import type { QuizResult } from '../../../src/directives/quiz/compute.js';
import type { Values } from '../../../src/directives/quiz/schema.js';
import { shuffle } from '../../../src/directives/quiz/shuffle.js';
import { computeParts } from '../desk.js';
import { part } from '../parts.js';
import { abbreviated } from '../sr28.js';

type Asked = readonly [string, readonly string[]];

function quiz(questions: readonly Asked[], attributes: Readonly<Record<string, string>> = {}) {
  const report = createReport();
  const all = { id: 'q', basis: '1/2 cup, ready to eat', ...attributes };
  const { entries, numbers } = computeParts([part('quiz', all, questions)], report);
  const [entry] = entries;
  const values = entry?.values as Values | undefined;
  const computed = entry?.computed as QuizResult | undefined;
  return {
    numbers,
    values,
    /** The words of each right option. */
    right: computed?.questions.map((answered, q) => values?.questions[q]?.options[answered.right]?.words),
    codes: report.problems.map((problem) => problem.code),
  };
}

const PINTO = [
  'pinto beans, canned, drained ; why = some salt stays',
  'pinto beans, canned, drained and rinsed ; why = rinsing takes part of it',
  'pinto beans, dried, cooked at home ; why = no salt went in',
];

describe('the answer, against the publisher’s own file of USDA SR28 (September 2015)', () => {
  const per100 = ['16146', '16345', '16043'].map((number) => abbreviated(number).sodium ?? Number.NaN);

  it('is the smallest or the largest of the records, on one weight', () => {
    // 239, 212 and 1 mg in 100 g: the least is a tenth and more below the next, and so is the most.
    expect(per100).toEqual([239, 212, 1]);
    const least = quiz([['Q: Which has the least sodium?', [...PINTO, 'answer = min(sodium)']]], {
      basis: '100 g',
    });
    expect(least.codes).toEqual([]);
    expect(least.right).toEqual(['pinto beans, dried, cooked at home']);
    const most = quiz([['Q: Which has the most sodium?', [...PINTO, 'answer = max(sodium)']]], {
      basis: '100 g',
    });
    expect(most.right).toEqual(['pinto beans, canned, drained']);
  });

  it('is computed on the basis of the quiz', () => {
    // Half of a cup of 171 g at 1 mg in 100 g, and half of one of 169 g at 212 mg.
    const { numbers } = quiz([['Q: Which has the least sodium?', [...PINTO, 'answer = min(sodium)']]]);
    expect(numbers.get('q.pinto-beans-dried-cooked-at-home.sodium')?.value).toBeCloseTo((1 * 171) / 200, 9);
    expect(numbers.get('q.pinto-beans-canned-drained-and-rinsed.sodium')?.value).toBeCloseTo(
      (212 * 169) / 200,
      9,
    );
  });
});

describe('no question whose answer the tables cannot tell', () => {
  it('too close to call: within ten percent of the larger (house rule)', () => {
    // Protein in 100 g by SR28: 6.99 g (16146) and 7.04 g (16345).
    const close = quiz(
      [['Q: Which has the most protein?', [...PINTO.slice(0, 2), 'answer = max(protein)']]],
      {
        basis: '100 g',
      },
    );
    expect([abbreviated('16146').protein, abbreviated('16345').protein]).toEqual([6.99, 7.04]);
    expect(close.codes).toEqual(['quiz/too-close-to-call']);
  });

  it('a value that is not known could be either', () => {
    const open = quiz([['Q: Which has the most fiber?', [...PINTO.slice(1), 'answer = max(fiber)']]]);
    expect(open.codes).toEqual(['quiz/too-close-to-call']);
  });

  it('the same food twice', () => {
    const twice = quiz([
      ['Q: Which has the least sodium?', [PINTO[0] ?? '', PINTO[0] ?? '', 'answer = min(sodium)']],
    ]);
    expect(twice.codes).toEqual(['quiz/too-close-to-call']);
  });
});

describe('no trick questions', () => {
  it('a label row does not stand beside food as eaten', () => {
    const label = 'pinto beans, canned, with the liquid ; why = the liquid counts';
    const mixed = [PINTO[2] ?? '', label, 'answer = min(sodium)'];
    expect(quiz([['Q: Which has the least sodium?', mixed]], { basis: '1/2 cup' }).codes).toEqual(['N03']);
    expect(quiz([['Q: Which has the least sodium?', mixed]]).codes).toEqual(['N03']);
  });

  it('dry food does not stand beside cooked', () => {
    const dry = 'pinto beans, dry ; why = dry beans are dense';
    const mixed = [PINTO[2] ?? '', dry, 'answer = max(fiber)'];
    expect(quiz([['Q: Which has the most fiber?', mixed]], { basis: '1 cup' }).codes).toEqual(['N03']);
  });

  it('a prompt does not ask the other way round', () => {
    const against = quiz([['Q: Which has the MOST sodium?', [...PINTO, 'answer = min(sodium)']]]);
    expect(against.codes).toEqual(['quiz/prompt']);
    const both = quiz([
      ['Q: Most cans are salty. Which has the least sodium?', [...PINTO, 'answer = min(sodium)']],
    ]);
    expect(both.codes).toEqual([]);
  });
});

describe('the seed', () => {
  const asked: Asked = ['Q: Which has the least sodium?', [...PINTO, 'answer = min(sodium)']];
  const order = (seed: string) =>
    quiz([asked], { seed }).values?.questions[0]?.options.map((option) => option.words) ?? [];

  it('gives the same order every time, with every option in it', () => {
    expect(order('7')).toEqual(order('7'));
    expect([...order('7')].sort()).toEqual([...order('8')].sort());
  });

  it('does not change the answer', () => {
    for (const seed of ['0', '1', '2', '3', '999999'])
      expect(quiz([asked], { seed }).right).toEqual(['pinto beans, dried, cooked at home']);
  });

  it('gives each question of a quiz its own order', () => {
    const orders = new Set(
      Array.from({ length: 10 }, (_, seed) => {
        const { values } = quiz([asked, asked, asked], { seed: String(seed) });
        return JSON.stringify(
          values?.questions.map((question) => question.options.findIndex((o) => o.words.includes('home'))),
        );
      }),
    );
    // With one order for all, the right box would stand at the same place three times.
    expect([...orders].some((places) => new Set(JSON.parse(places) as number[]).size > 1)).toBe(true);
  });

  it('puts the last option at every place about equally often', () => {
    // 4,000 seeds, four places: 1,000 each, with a standard deviation of 27 (binomial).
    const places = [0, 0, 0, 0];
    for (let seed = 0; seed < 4000; seed++) {
      const at = shuffle(['a', 'b', 'c', 'd'], seed).indexOf('d');
      places[at] = (places[at] ?? 0) + 1;
    }
    for (const count of places) expect(Math.abs(count - 1000)).toBeLessThan(110);
  });

  it('gives every order of three about equally often', () => {
    const counts = new Map<string, number>();
    for (let seed = 0; seed < 6000; seed++) {
      const key = shuffle(['a', 'b', 'c'], seed).join('');
      counts.set(key, (counts.get(key) ?? 0) + 1);
    }
    expect(counts.size).toBe(6);
    for (const count of counts.values()) expect(Math.abs(count - 1000)).toBeLessThan(120);
  });
});
