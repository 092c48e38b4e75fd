import { describe, expect, it } from 'vitest';
import { pull } from '../../../src/cautions/index.js';
import { createReport } from '../../../src/diagnostics/index.js';
import { factsOf } from '../../../src/pipeline/facts.js';
import { register } from '../../cautions/register-files.js';
import { readSnippet } from '../desk.js';

function pulledBy(rows: readonly string[], attributes = ''): string[] {
  const { computed } = readSnippet(
    `:::energy-split{id=x${attributes}}\n${rows.map((row) => `- ${row}\n`).join('')}:::\n`,
  );
  if (!computed) throw new Error('The lesson was not read.');
  const facts = factsOf(computed);
  // The test lesson's own topic is left out.
  return pull(register, { ...facts, topics: [] }, createReport()).map(({ caution }) => caution.id);
}

describe('cautions of a day', () => {
  const CARBOHYDRATE = ['carb-low-sugar', 'carb-sglt2', 'low-carb-not-for'];

  it('a usual day pulls its notes and no box on carbohydrate', () => {
    const ids = pulledBy(['all day: 4 cups brown rice, cooked ; 1 kg whole milk ; 2 tbsp olive oil']);
    expect(ids).toEqual(expect.arrayContaining(['note-energy-range', 'own-plan-carb-kidney']));
    for (const id of [...CARBOHYDRATE, 'alcohol-none', 'glp1-low-intake']) expect(ids).not.toContain(id);
  });

  it('an example with next to no carbohydrate pulls all three boxes, and what it leaves out', () => {
    const ids = pulledBy([
      'breakfast: 3 eggs ; 1 tbsp butter ; 1/2 cup avocado',
      'lunch: 4 oz cheddar ; 1/2 cup walnuts ; 2 cups salad greens ; 2 tbsp olive oil',
      'supper: 6 oz pork, roasted ; 1 cup green beans, cooked ; 2 tbsp butter',
    ]);
    expect(ids).toEqual(expect.arrayContaining([...CARBOHYDRATE, 'diet-gaps', 'note-energy-range']));
  });

  it('much protein, little energy and alcohol each pull their own', () => {
    const rows = ['all day: 6 oz salmon, baked ; 5 fl oz red wine ; alcohol = 15 g'];
    const ids = pulledBy(rows, ' as="what is missing"');
    expect(ids).toEqual(
      expect.arrayContaining(['protein-kidney', 'glp1-low-intake', 'alcohol-medicine', 'alcohol-none']),
    );
  });

  it('alcohol that is stated counts where no food is flagged', () => {
    expect(pulledBy(['all day: 1 kg whole milk ; alcohol = 15 g'], ' of=meal')).toContain('alcohol-none');
  });
});
