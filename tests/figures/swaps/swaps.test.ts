import { describe, expect, it } from 'vitest';
import { draw, type Swaps } from '../../../src/figures/index.js';
import { picture } from '../dish/samples.js';
import { paper, screen } from '../samples.js';

const lane = (name: string, before: number, after: number, text: string) => ({
  name,
  before,
  after,
  text,
  numbers: [],
});
const swaps: Swaps = {
  kind: 'swaps',
  id: 'swaps',
  mode: 'shown',
  alternative: { label: 'Sample', reading: 'Sample.', table: { caption: '', head: [], rows: [] } },
  numbers: [],
  rows: [
    {
      old: { picture: 'glass-of-milk', name: 'Milk', note: '1 cup' },
      fresh: { picture: 'beverage-box', name: 'Soy drink', note: '1 cup' },
      job: 'calcium and protein',
      lanes: [
        lane('Protein', 7.7, 6.3, '8 g to 6 g'),
        lane('Vitamin B12', 1.1, 2.1, '1 µg to 2 µg'),
        lane('Saturated fat', 4.6, 0.5, '5 g to less than 1 g'),
      ],
      lost: '',
    },
    {
      old: { picture: 'butter', name: 'Butter, salted', note: '4 tsp' },
      fresh: { picture: 'pouring-liquid', name: 'Canola oil', note: '1 tbsp' },
      job: '',
      lanes: [lane('Sodium', 120, 0, '120 mg to 0 mg'), lane('Zinc', 1, 1, '1 mg to 1 mg')],
      lost: 'Lost: vitamin A.',
    },
  ],
  words: { before: 'before', after: 'after' },
};

describe('swaps', () => {
  it.each(['short', 'plain', 'fuller', 'large'] as const)('are drawn on paper at %s', (level) => {
    for (const ink of ['color', 'one'] as const)
      for (const direction of ['ltr', 'rtl'] as const)
        expect(draw(swaps, paper({ picture, level, ink, direction })).problems).toEqual([]);
  });

  it('are drawn one at a time on a slide', () => {
    for (const row of swaps.rows)
      expect(draw({ ...swaps, rows: [row] }, screen({ picture })).problems).toEqual([]);
    expect(draw(swaps, screen({ picture })).problems.map(({ code }) => code)).toContain('figures/too-many');
  });

  it('say which words do not fit', () => {
    const rows = [{ ...swaps.rows[0], job: 'W'.repeat(60) } as Swaps['rows'][number]];
    const { problems } = draw({ ...swaps, rows }, paper({ picture }));
    expect(problems.map(({ code }) => code)).toContain('figures/does-not-fit');
  });
});
