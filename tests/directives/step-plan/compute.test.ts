import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createReport } from '../../../src/diagnostics/index.js';
import { evaluate } from '../../nutrition/evaluate.js';
import { computeParts } from '../desk.js';
import { part } from '../parts.js';

function plan(rows: readonly string[], more: readonly ReturnType<typeof part>[] = []) {
  const report = createReport();
  const computed = computeParts(
    [...more, part('step-plan', { id: 'x', start: '2027-01', months: '12' }, rows)],
    report,
  );
  const number = (name: string) => computed.numbers.get(`x.${name}`);
  return { report, number, computed };
}

describe('what a step changes', () => {
  // USDA SR28, 14148: 9.94 g of sugars in 100 g of cola, 30.7 g a fluid ounce. 12 × 30.7 × 9.94 / 100 = 36.62 g.
  it.each([
    ['once a day', 'swap one sweet drink a day ; less = 12 fl oz cola', 36.62],
    ['twice a day', 'swap a sweet drink twice a day ; less = 12 fl oz cola', 73.24],
    ['three times a week', 'swap a sweet drink three times a week ; less = 12 fl oz cola', 109.86],
    ['by its fact', 'swap one sweet drink a day ; less = 12 fl oz cola ; times = 2 a day', 73.24],
    ['each time', 'swap one sweet drink ; less = 12 fl oz cola', 36.62],
  ])('tells sugars %s', (_, row, grams) => {
    const less = plan([`Jan: ${row}`]).number('jan.less');
    expect(less?.value).toBeCloseTo(grams, 2);
    expect(less && evaluate(less)).toBeCloseTo(less?.value ?? Number.NaN, 9);
  });

  // USDA SR28, 11053: 3.2 g of fiber in 100 g of boiled green beans, 125 g a cup; so 4 g a cup.
  it('tells fiber of what comes', () => {
    const row = 'Jan: add one cup a day ; more = 1 cup green beans, boiled, no salt ; tells = fiber';
    expect(plan([row]).number('jan.more')?.value).toBeCloseTo(4, 9);
  });

  it('counts a food by the week, in its own measure', () => {
    const beans = 'more = 1/2 cup green beans, boiled, no salt';
    const { number } = plan([`Jan: add half a cup a day ; ${beans}`, `Feb: add some each week ; ${beans}`]);
    expect([number('jan.more')?.value, number('jan.more')?.unit]).toEqual([3.5, 'cup']);
    expect(number('feb.more')?.text.replaceAll('\u00a0', ' ')).toBe('1/2 cup');
  });

  it('takes over what was found to go away when food is rinsed', () => {
    const rinse = part('rinse-drop', {
      id: 'rinse',
      food: 'black beans, canned',
      'label-sodium': '460 mg',
      'label-basis': '1/2 cup, with liquid',
    });
    const { computed, report } = plan(['Feb: rinse canned beans ; rinse = @rinse'], [rinse]);
    const drop = computed.numbers.get('rinse.drop');
    // Duyff and others 2011 and the kitchen tests that disagree with them: 20 to 41 percent of what the label says.
    expect([drop?.low, drop?.high]).toEqual([expect.closeTo(92, 6), expect.closeTo(188.6, 6)]);
    expect(report.problems).toEqual([]);
    expect(computed.entries[1]?.computed?.facts.settings?.step).toContain('cuts salt');
  });

  it('leaves what is not known so, however often', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 12 }), (times) => {
        const row = `Jan: drink one cola less ; less = 12 fl oz cola ; tells = added sugars ; times = ${times} a day`;
        const less = plan([row]).number('jan.less');
        expect([less?.value, less?.text]).toEqual([null, 'not known']);
      }),
      { numRuns: 12 },
    );
  });

  it('grows with how often, in the same proportion', () => {
    const at = (times: number) =>
      plan([`Jan: drink one less ; less = 8 fl oz cola ; times = ${times} a week`]).number('jan.less')
        ?.value ?? Number.NaN;
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 42 }), (times) => {
        expect(at(times)).toBeCloseTo(times * at(1), 6);
      }),
      { numRuns: 20 },
    );
  });
});
