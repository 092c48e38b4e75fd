import { describe, expect, it } from 'vitest';
import { pull } from '../../../src/cautions/index.js';
import { createReport } from '../../../src/diagnostics/index.js';
import { DIRECTIVES } from '../../../src/directives/list.js';
import { touchesOf } from '../../../src/directives/step-plan/touches.js';
import { parseLesson } from '../../../src/lesson/index.js';
import { computeLesson } from '../../../src/pipeline/compute.js';
import { factsOf } from '../../../src/pipeline/facts.js';
import { register } from '../../cautions/register-files.js';
import { readSnippet, tables } from '../desk.js';

function pulledBy(row: string): string[] {
  const { computed } = readSnippet(`:::step-plan{id=x start=2027-01 months=1}\n- Jan: ${row}\n:::\n`);
  if (!computed) throw new Error('The lesson was not read.');
  // Without topics and texts, so that only the directive pulls.
  const facts = { ...factsOf(computed), topics: [], texts: [] };
  return pull(register, facts, createReport()).map(({ caution }) => caution.id);
}

describe('a step pulls the cautions of what it touches', () => {
  it.each([
    ['swap one sweet drink a day for water', ['treat-low-first', 'carb-low-sugar', 'carb-sglt2']],
    ['leave out one snack a day', ['carb-low-sugar', 'carb-sglt2']],
    ['eat one snack less a day', ['carb-low-sugar', 'carb-sglt2']],
    ['eat one lunch later a week', ['fasting-not-for', 'carb-low-sugar']],
    ['drink one soda less a day', ['treat-low-first', 'carb-low-sugar']],
    ['have one slice less ; less = 1 oz wheat bread', ['carb-low-sugar', 'carb-sglt2']],
    ['skip one breakfast a week', ['fasting-not-for', 'carb-low-sugar']],
    ['rinse one can of beans', ['sodium-lithium', 'sodium-heart-water-pills', 'sodium-need-more']],
    ['use half a spoon of salt substitute', ['potassium-salt', 'sodium-lithium']],
    ['drink two glasses of water more a day', ['fluids-limit']],
    ['add 5 g of fiber a day', ['fiber-slowly', 'thyroid-tablet']],
    ['eat one cup a day ; more = 1 cup pinto beans, canned, drained', ['fiber-slowly', 'protein-kidney']],
    ['add one egg for protein', ['protein-kidney']],
    ['eat a salad every day', ['warfarin-greens']],
    ['eat one cup ; more = 1 cup spinach, raw', ['warfarin-greens']],
    ['take one vitamin a day', ['supplement-ask']],
    ['walk for 10 minutes a day', ['activity-stop', 'activity-low-sugar']],
    ['drink one beer less a week', ['alcohol-medicine']],
  ])('%s', (row, ids) => {
    expect(pulledBy(row)).toEqual(expect.arrayContaining([...ids, 'line-get-help']));
  });

  it('and none where it touches nothing', () => {
    expect(pulledBy('eat one pear a day')).not.toEqual(
      expect.arrayContaining([expect.stringMatching(/^(?:sodium|carb|treat|fasting|warfarin)-/)]),
    );
  });

  it.each([
    ['swap one sweet drink a day for water', 'fluids-limit'],
    ['have one bowl of noodles for dinner a week', 'fasting-not-for'],
    ['eat one fast food meal less a week', 'fasting-not-for'],
    ['walk fast for 10 minutes a day', 'fasting-not-for'],
  ])('%s does not pull %s', (row, id) => expect(pulledBy(row)).not.toContain(id));

  it('all of them in a language whose words nobody listed', () => {
    expect(touchesOf('aaa', undefined, false, 'xx')).toHaveLength(12);
  });
});

describe('a salt substitute', () => {
  const codes = (audience: string) => {
    const report = createReport();
    const text = `---
title: A lesson for tests
minutes: 30
audience: ${audience}
objectives:
  - try a directive
guidance: us-2025
topics: [habits]
sources: [usda-sr28]
review: none
---

# A lesson for tests

:::step-plan{id=x start=2027-01 months=1}
- Jan: use half a spoon of salt substitute
:::
`;
    const lesson = parseLesson(
      text,
      'lesson.md',
      DIRECTIVES.map(({ schema }) => schema),
      report,
    );
    if (lesson) computeLesson(lesson, tables, report);
    return report.problems.map(({ code }) => code);
  };

  it.each(['families with children', 'people with kidney disease', 'pregnant women'])(
    'is refused for %s',
    (who) => {
      expect(codes(who)).toContain('cautions/refused');
    },
  );

  it('is shown to other adults with its caution', () => {
    expect(codes('adults who cook')).not.toContain('cautions/refused');
  });
});
