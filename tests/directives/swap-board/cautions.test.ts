import { describe, expect, it } from 'vitest';
import { pull } from '../../../src/cautions/index.js';
import { createReport } from '../../../src/diagnostics/index.js';
import { factsOf } from '../../../src/pipeline/facts.js';
import { register } from '../../cautions/register-files.js';
import { readSnippet } from '../desk.js';

function pulledBy(row: string, need = ''): string[] {
  const { computed } = readSnippet(
    `:::swap-board{id=s${need === '' ? '' : ` need="${need}"`}}\n- ${row}\n:::\n`,
  );
  if (!computed) throw new Error('The lesson was not read.');
  // Without topics and texts, so that only the directive pulls.
  const facts = { ...factsOf(computed), topics: [], texts: [] };
  return pull(register, facts, createReport()).map(({ caution }) => caution.id);
}

const MILK = '1 cup whole milk -> 1 cup soy drink, calcium added';
const SALMON = '3 oz salmon, baked -> 1/2 cup tofu, firm, calcium-set';

describe('a swap pulls the cautions of what it touches', () => {
  it.each([
    ['whatever it is', '1 medium apple -> 1 medium pear', '', ['allergen-swap', 'note-faith-culture']],
    ['milk and plant drinks', MILK, '', ['milk-infant', 'note-plant-drink']],
    ['a vegan table', MILK, 'vegan', ['vegan-b12']],
    ['an allergy', MILK, 'dairy-free', ['allergen-label', 'allergen-cross-contact']],
    ['the last source of vitamin B12, and a loss', SALMON, '', ['vegan-b12', 'diet-gaps']],
    [
      'sodium that falls',
      '1 tbsp soy sauce -> 1 tbsp lemon juice',
      '',
      ['sodium-lithium', 'sodium-heart-water-pills', 'sodium-need-more', 'maoi-aged-food'],
    ],
    ['soy in the morning', `${MILK} ; use = breakfast`, '', ['thyroid-tablet']],
    ['honey', '1 tbsp white sugar -> 1 tbsp honey', '', ['honey-infant']],
    [
      'no gluten',
      '1 cup couscous, cooked -> 1 cup quinoa, cooked',
      'gluten-free',
      ['celiac-test-first', 'gluten-free-label'],
    ],
  ])('%s', (_, row, need, ids) => {
    expect(pulledBy(row, need)).toEqual(expect.arrayContaining(ids));
  });

  it('and none where it touches nothing', () => {
    const pulled = pulledBy('1 medium apple -> 1 medium pear');
    for (const id of ['vegan-b12', 'diet-gaps', 'sodium-lithium', 'thyroid-tablet', 'milk-infant'])
      expect(pulled).not.toContain(id);
  });
});
