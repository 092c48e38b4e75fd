import { describe, expect, it } from 'vitest';
import { createReport } from '../../../src/diagnostics/index.js';
import { weightCourse } from '../../../src/nutrition/index.js';
import { evaluate, evaluateParts } from '../../nutrition/evaluate.js';
import { computeParts } from '../desk.js';
import { part } from '../parts.js';

function chart(attributes: Readonly<Record<string, string>>) {
  const report = createReport();
  const { numbers, entries } = computeParts([part('pace-chart', { id: 'x', ...attributes })], report);
  const computed = entries[0]?.computed;
  return { numbers, computed, problems: report.problems, of: (name: string) => numbers.get(`x.${name}`) };
}
const band = (example: string, change: string, more: Readonly<Record<string, string>> = {}) =>
  chart({ show: 'band', example, change, ...more });

/**
 * Trajectories of the equations of Hall et al., Lancet 2011;378:826-837, web appendix, worked out by two independent
 * programs (Runge-Kutta and an integrated relation), to 0.3 kg: 500 kcal a day less take a woman of 80 kg down by 13.7 kg
 * in a year. The band is that model over activity, fat and how much is kept to, so the middle of the model lies in it.
 */
describe('the band against the published model', () => {
  it('holds what the model says of a woman of 80 kg at 500 kcal a day less', () => {
    const year = band('woman, 40, 165 cm, 80 kg', '500 kcal a day').of('month-12.kg');
    const course = weightCourse(
      {
        adult: {
          sex: 'female',
          age: 40,
          height: { value: 165, unit: 'cm' },
          weight: { value: 80, unit: 'kg' },
        },
        activity: 1.5,
      },
      [{ fromDay: 0, change: { value: -500, unit: 'kcal' } }],
      365,
    );
    const lost = course.ok ? 80 - (course.value.days.at(-1)?.weight ?? 0) : Number.NaN;
    expect(Math.abs(lost - 13.7)).toBeLessThan(0.3);
    expect(year?.low).toBeLessThan(lost);
    expect(year?.high).toBeGreaterThan(lost);
  });

  it('prints pounds that are the kilograms, and formulas that give both ends', () => {
    const { of } = band('woman, 45, 165 cm, 82 kg', '250 kcal a day');
    const [kg, lb] = [of('month-6.kg'), of('month-6.lb')];
    expect(lb?.low).toBeCloseTo((kg?.low ?? 0) / 0.45359237, 9);
    expect(lb?.high).toBeCloseTo((kg?.high ?? 0) / 0.45359237, 9);
    for (const one of [kg, lb]) {
      const parts = one && evaluateParts(one);
      expect(parts?.low).toBeCloseTo(one?.low ?? Number.NaN, 9);
      expect(parts?.high).toBeCloseTo(one?.high ?? Number.NaN, 9);
    }
  });

  it('levels off: each later half year adds less', () => {
    const { of } = band('woman, 45, 165 cm, 82 kg', '250 kcal a day', { months: '36' });
    const [one, two, three] = [12, 24, 36].map((month) => of(`month-${month}.kg`)?.high ?? Number.NaN);
    expect((two ?? 0) - (one ?? 0)).toBeLessThan(one ?? 0);
    expect((three ?? 0) - (two ?? 0)).toBeLessThan((two ?? 0) - (one ?? 0));
  });

  it('stops above a body mass index of 18.5, at every end', () => {
    const { of } = band('woman, 30, 165 cm, 58 kg', '300 kcal a day', { months: '24' });
    expect((58 - (of('stop.kg')?.high ?? 0)) / 1.65 ** 2).toBeGreaterThanOrEqual(18.5);
    expect(of('month-24.kg')).toBeUndefined();
  });
});

it('holds the published rule of thumb: 100 kcal a day are about 10 lb in the end and 5 lb in the first year', () => {
  // Hall et al. 2011: 10 kcal a day per pound in the end, half of it in a year. 418.4 kJ ÷ 100 = 4.18 kg = 9.2 lb.
  const { of } = band('woman, 45, 165 cm, 82 kg', '100 kcal a day');
  expect(of('rule-end.lb')?.value).toBeCloseTo(9.22, 1);
  expect(of('rule-year.lb')?.value).toBeCloseTo(4.61, 1);
});

it('says that 3 to 5 percent already help (2013 AHA/ACC/TOS guideline)', () => {
  const gains = band('woman, 45, 165 cm, 100 kg', '250 kcal a day').of('gains.kg');
  expect([gains?.low, gains?.high]).toEqual([3, 5]);
});

describe('the exercise', () => {
  const lines = (seed: string) => {
    const { computed } = band('woman, 45, 165 cm, 82 kg', '250 kcal a day', { seed });
    return (computed as unknown as { lines: { kind: string; points: { down: number }[] }[] }).lines;
  };
  it('has the real line end far above the straight one, which no number tells', () => {
    const of = (kind: string) =>
      lines('0')
        .find((line) => line.kind === kind)
        ?.points.at(-1)?.down ?? Number.NaN;
    expect(of('real')).toBeLessThan(0.6 * of('straight'));
    expect(of('sudden')).toBe(of('real'));
    const { numbers } = band('woman, 45, 165 cm, 82 kg', '250 kcal a day');
    expect(
      numbers.all.filter(({ inputs }) => inputs.some(({ source }) => source === 'wishnofsky-1958')),
    ).toEqual([]);
  });
  it('puts the real line anywhere, by the seed', () => {
    const at = (seed: string) => lines(seed).findIndex(({ kind }) => kind === 'real');
    expect(['0', '1', '2', '3'].map(at)).toEqual([2, 1, 0, 2]);
  });
});

/** The trade's pace, common practice: ½ lb a week with 15 lb left, 2 lb with 100, straight between, at most 1 percent. */
describe('the eased pace', () => {
  const pace = (lose: string, example = 'adult, 400 lb, 6 ft') =>
    chart({ show: 'pace', 'to-lose': lose, example });
  it.each([
    ['15 lb', 0.5],
    ['100 lb', 2],
    ['57.5 lb', 1.25],
  ])('begins with %s left at %d lb a week', (lose, first) => {
    expect(pace(lose).of('first.lb')?.value).toBeCloseTo(first, 9);
  });
  it('is never more than 1 percent of weight', () => {
    expect(pace('60 lb', 'adult, 180 lb, 5 ft').of('first.lb')?.value).toBeLessThanOrEqual(1.8);
  });
  it('takes 20 weeks for 10 lb, and formulas give what is printed', () => {
    const { numbers, of } = pace('10 lb');
    expect(of('weeks')?.value).toBe(20);
    for (const one of numbers.all) if (one.value !== null) expect(evaluate(one)).toBeCloseTo(one.value, 9);
  });
  it('counts milestones in both units to the same end', () => {
    const { numbers } = pace('60 lb');
    const last = (unit: string) =>
      numbers.all.findLast(({ id }) => new RegExp(`\\.${unit}-\\d+\\.weeks$`).test(id))?.value;
    expect(last('kg')).toBe(last('lb'));
  });
});

it('tells the cautions what it shows', () => {
  expect(band('woman, 45, 165 cm, 82 kg', '250 kcal a day').computed?.facts.settings).toEqual({
    show: ['band'],
  });
});
