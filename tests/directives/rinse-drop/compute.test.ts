import { describe, expect, it } from 'vitest';
import { createReport } from '../../../src/diagnostics/index.js';
import { evaluateParts } from '../../nutrition/evaluate.js';
import { plainRows } from '../../records/tables.js';
import { computeParts } from '../desk.js';
import { part } from '../parts.js';

function rinse(attributes: Readonly<Record<string, string>>) {
  const report = createReport();
  const all = { id: 'x', food: 'black beans, canned', 'label-basis': '1/2 cup, with liquid', ...attributes };
  const { numbers } = computeParts([part('rinse-drop', all)], report);
  const range = (name: string) => {
    const found = numbers.get(`x.${name}`);
    return found && { low: found.low ?? Number.NaN, high: found.high ?? Number.NaN };
  };
  return {
    numbers,
    range,
    text: (name: string) => numbers.get(`x.${name}`)?.text.replaceAll('\u00a0', ' '),
    problems: report.problems,
    codes: report.problems.map((problem) => problem.code),
  };
}

describe('beans, against the published findings', () => {
  it('drained and rinsed: from the 41 percent of one study to the 20 percent of kitchen tests', () => {
    // Duyff, Mount and Jones 2011 (J Culin Sci Technol 9:106-112), seen in four summaries: a label of 440 mg
    // leaves 260 mg. Kitchen tests found 20 to 27 percent less after 30 to 60 seconds of rinsing.
    const { range } = rinse({ 'label-sodium': '440 mg' });
    expect(range('after')?.low).toBeCloseTo(260, -0.5);
    expect(range('after')?.low).toBeCloseTo(440 * (1 - 0.41), 9);
    expect(range('after')?.high).toBeCloseTo(440 * (1 - 0.2), 9);
  });

  it('drained only: from the 36 percent of one study to the 8 percent of kitchen tests', () => {
    // Duyff 2011: 440 mg leaves 282 mg. Kitchen tests: about 8 percent less.
    const { range } = rinse({ 'label-sodium': '440 mg', treatment: 'drained' });
    expect(range('after')?.low).toBeCloseTo(282, -0.5);
    expect(range('after')?.high).toBeCloseTo(440 * 0.92, 9);
  });

  it('460 mg becomes 270 to 370 mg, and 90 to 190 mg is gone', () => {
    const { text } = rinse({ 'label-sodium': '460 mg' });
    expect(text('after')).toBe('270 to 370 mg');
    expect(text('drop')).toBe('90 to 190 mg');
    expect(text('share')).toBe('20 to 41%');
  });

  it('what is left and what is gone add up to the label', () => {
    const { range } = rinse({ 'label-sodium': '380 mg' });
    expect((range('after')?.low ?? 0) + (range('drop')?.high ?? 0)).toBeCloseTo(380, 9);
    expect((range('after')?.high ?? 0) + (range('drop')?.low ?? 0)).toBeCloseTo(380, 9);
  });
});

describe('vegetables, against mg in 100 g of can contents (Haytowitz 2011, FASEB J 25(S1):609.3)', () => {
  it.each([
    ['green beans, canned', 231, 231, 214],
    ['green peas, canned', 261, 244, 231],
    ['corn, canned', 205, 185, 162],
  ])('%s', (food, label, drained, rinsed) => {
    const within = (value: number, treatment: string) => {
      const { range, codes } = rinse({ food, 'label-sodium': `${label} mg`, treatment });
      expect(codes).toEqual([]);
      // The losses stand as whole percents, so the ends may be half a percent of the label off.
      expect(value).toBeGreaterThanOrEqual((range('after')?.low ?? Number.NaN) - 0.005 * label);
      expect(value).toBeLessThanOrEqual((range('after')?.high ?? Number.NaN) + 0.005 * label);
    };
    within(drained, 'drained');
    within(rinsed, 'drained and rinsed');
  });

  it('the study found no loss from draining green beans, and the range goes down to none', () => {
    const { range } = rinse({ food: 'green beans, canned', 'label-sodium': '230 mg', treatment: 'drained' });
    expect(range('after')?.high).toBe(230);
  });
});

describe('bricks', () => {
  it('are worth the smallest round number that gives at most 25 of them', () => {
    // 460 mg in bricks of 20 mg are 23; in bricks of 10 mg they would be 46.
    expect(rinse({ 'label-sodium': '460 mg' }).numbers.get('x.brick')?.value).toBe(20);
    expect(rinse({ 'label-sodium': '500 mg' }).numbers.get('x.brick')?.value).toBe(20);
    expect(rinse({ 'label-sodium': '510 mg' }).numbers.get('x.brick')?.value).toBe(50);
    expect(rinse({ 'label-sodium': '100 mg' }).numbers.get('x.brick')?.value).toBe(5);
  });

  it('that a right answer crosses out lie inside what goes away', () => {
    // By hand: 92 to 188.6 mg in bricks of 20 mg are 4.6 to 9.43 bricks, so 5 to 9 whole ones.
    expect(rinse({ 'label-sodium': '460 mg' }).text('bricks')).toBe('5 to 9');
  });

  it('are not counted when no whole number lies inside', () => {
    // By hand: drained green beans of 60 mg lose 0 to 6 mg; a brick of 5 mg gives 1. Of 45 mg: 0 to 4.5 mg, none.
    const beans = { food: 'green beans, canned', treatment: 'drained' };
    expect(rinse({ ...beans, 'label-sodium': '60 mg' }).text('bricks')).toBe('1');
    expect(rinse({ ...beans, 'label-sodium': '45 mg' }).text('bricks')).toBeUndefined();
  });

  it('have formulas that give their values', () => {
    for (const number of rinse({ 'label-sodium': '460 mg' }).numbers.all.filter((n) => n.low !== undefined)) {
      const parts = evaluateParts(number);
      expect(parts.low).toBeCloseTo(number.low ?? Number.NaN, 9);
      expect(parts.high).toBeCloseTo(number.high ?? Number.NaN, 9);
    }
  });
});

describe('what cannot be said is refused', () => {
  it.each([
    ['1/2 cup', 'N18'],
    ['1/2 cup, drained', 'N18'],
    ['1/2 cup, drained and rinsed', 'N18'],
    ['half a can', 'N18'],
  ])('a label for %s', (basis, code) => {
    const { codes, problems, numbers } = rinse({ 'label-sodium': '460 mg', 'label-basis': basis });
    expect(codes).toEqual([code]);
    expect(problems[0]?.place?.column).toBe(30);
    expect(numbers.all).toEqual([]);
  });

  it.each(['0 mg', '460', 'low', '-5 mg', '1 cup', '6000 mg'])('sodium of "%s"', (sodium) => {
    expect(rinse({ 'label-sodium': sodium }).codes).toEqual(['directives/label']);
  });

  it.each([
    ['black beans, dry', 'N18'],
    ['green peas, frozen, boiled, no salt', 'N18'],
    ['tuna, canned in water, drained', 'N18'],
    ['refried beans, canned', 'N18'],
    ['moon beans, canned', 'directives/no-such-food'],
  ])('%s', (food, code) => {
    const { codes, problems } = rinse({ food, 'label-sodium': '460 mg' });
    expect(codes).toEqual([code]);
    expect(problems[0]?.place?.column).toBe(20);
  });

  it('no salt added beside a salty label', () => {
    expect(rinse({ 'label-sodium': '460 mg', 'no-salt-added': 'yes' }).codes).toEqual(['directives/label']);
  });
});

describe('cans without much salt', () => {
  it('no salt added: the label and no range', () => {
    const { numbers, codes } = rinse({ 'label-sodium': '15 mg', 'no-salt-added': 'yes' });
    expect(codes).toEqual([]);
    expect(numbers.all.map((number) => number.id)).toEqual(['x.label']);
  });

  it('a food whose form says so needs no attribute', () => {
    const food = 'green peas, canned, no salt added, drained';
    expect(rinse({ food, 'label-sodium': '10 mg' }).numbers.all).toHaveLength(1);
  });

  it('up to 140 mg (21 CFR 101.61(b)(4), “low sodium”) the range stands with a sentence', () => {
    const little = (sodium: string) => rinse({ 'label-sodium': sodium });
    expect(little('140 mg').range('after')).toBeDefined();
  });
});

/**
 * Which canned foods of the everyday table anybody has measured. Sorted by hand from what the studies name:
 * beans (Duyff 2011: five kinds of canned beans), and green beans, peas and corn (Haytowitz 2011).
 */
describe('every canned food of the table', () => {
  const MEASURED = [
    'pinto beans',
    'black beans',
    'kidney beans',
    'navy beans',
    'great northern beans',
    'white beans',
    'cranberry beans',
    'chickpeas',
    'lima beans',
    'black-eyed peas',
    'fava beans',
    'green peas',
    'green beans',
    'corn',
  ];
  const canned = plainRows('foods/everyday.tsv').filter((row) => row.state?.startsWith('canned'));

  it('is there', () => expect(canned.length).toBeGreaterThan(40));

  it.each(canned.map((row) => [row.name ?? '', row.kind ?? ''] as const))('%s', (food, kind) => {
    const { codes } = rinse({ food, 'label-sodium': '100 mg' });
    expect(codes).toEqual(MEASURED.includes(kind) ? [] : ['N18']);
  });
});
