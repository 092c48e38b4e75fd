import fc from 'fast-check';
import { expect, it } from 'vitest';
import { createReport } from '../../../src/diagnostics/index.js';
import { draw } from '../../../src/figures/index.js';
import { LEVELS } from '../../../src/reading/index.js';
import { paper, screen } from '../../figures/samples.js';
import { computeParts, viewOf } from '../desk.js';
import { part } from '../parts.js';
import { figuresOf } from '../strings.js';

const person = fc
  .tuple(
    fc.constantFrom('woman', 'man'),
    fc.integer({ min: 19, max: 78 }),
    fc.integer({ min: 145, max: 205 }),
    fc.integer({ min: 19, max: 55 }),
  )
  .map(([who, age, cm, index]) => `${who}, ${age}, ${cm} cm, ${Math.round(index * (cm / 100) ** 2)} kg`);

it('whatever is computed of a person and a change is drawn with every word clear, or explained', () => {
  let drawn = 0;
  fc.assert(
    fc.property(
      person,
      fc.tuple(fc.integer({ min: 10, max: 600 }), fc.boolean()),
      fc.integer({ min: 1, max: 36 }),
      (example, [kcal, stepped], months) => {
        const report = createReport();
        const written = part('pace-chart', {
          id: 'x',
          show: 'band',
          example,
          change: `${kcal} kcal a day${stepped && months > 2 ? `; ${kcal + 100} kcal a day from month ${months >> 1}` : ''}`,
          months: String(months),
        });
        const computed = computeParts([written], report);
        if (!computed.entries[0]?.computed) {
          expect(report.problems.length).toBeGreaterThan(0);
          return;
        }
        drawn++;
        for (const level of LEVELS)
          for (const where of ['handout', 'slide', 'worksheet', 'key'] as const) {
            const view = viewOf(computed, written, where, level);
            for (const figure of view ? figuresOf(view) : []) {
              const size = level === 'staff' ? 'large' : level;
              for (const options of where === 'slide'
                ? [screen({ height: 400 }), screen({ direction: 'rtl' })]
                : [paper({ level: size }), paper({ level: size, ink: 'one', direction: 'rtl', slack: 0 })]) {
                const { problems, drawing } = draw(figure, options);
                expect(problems.map(({ message }) => message)).toEqual([]);
                expect(JSON.stringify(drawing.marks)).not.toMatch(/NaN|null|Infinity/);
              }
            }
          }
      },
    ),
    {
      numRuns: 12,
      // A band that stops so late and so deep that its reason has no room below.
      examples: [['woman, 19, 145 cm, 42 kg', [11, true], 17]],
    },
  );
  expect(drawn).toBeGreaterThan(2);
}, 60_000);
