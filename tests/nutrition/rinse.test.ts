import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  judgeRinseClaim,
  LITTLE_TO_LOSE,
  parseBasis,
  RINSE_STUDIES,
  type RinseKind,
  type RinseQuestion,
  rinseKindOf,
  rinseRange,
  roundOutward,
  type Treatment,
} from '../../src/nutrition/index.js';
import { evaluateParts } from './evaluate.js';
import { refusalOf, valueIn } from './expect-result.js';

const withLiquid = valueIn(parseBasis('1/2 cup, with liquid'));
const ask = (mg: number, kind: RinseKind | null, treatment: Treatment, more: Partial<RinseQuestion> = {}) =>
  rinseRange({ label: { value: mg, unit: 'mg' }, basis: withLiquid, kind, treatment, ...more });

describe('the rinse range', () => {
  it.each([
    // Losses: Duyff, Mount and Jones 2011, 36% drained, 41% drained and rinsed; kitchen tests 8%, 20 to 27%.
    [460, 'beans', 'drained and rinsed', 271.4, 368],
    [460, 'beans', 'drained', 294.4, 423.2],
    // Haytowitz 2011, mg per 100 g: 0 to 10% drained, 7 to 21% rinsed; summaries of it, 9 to 23%.
    [300, 'vegetables', 'drained and rinsed', 231, 279],
    [300, 'vegetables', 'drained', 270, 300],
  ] as const)('%d mg, %s, %s', (mg, kind, treatment, low, high) => {
    const range = valueIn(ask(mg, kind, treatment));
    expect(range.after.low).toBeCloseTo(low, 9);
    expect(range.after.high).toBeCloseTo(high, 9);
    expect(evaluateParts(range.working)).toEqual({ low: range.after.low, high: range.after.high });
    expect(evaluateParts(range.goneWorking)).toEqual({ low: range.gone.low, high: range.gone.high });
    expect(range.gone.low + range.after.high).toBeCloseTo(mg, 9);
    expect(range.gone.high + range.after.low).toBeCloseTo(mg, 9);
  });

  it('widens to 270 to 370 mg when it is rounded', () => {
    expect(roundOutward(valueIn(ask(460, 'beans', 'drained and rinsed')).after, 10)).toEqual({
      low: 270,
      high: 370,
    });
  });

  it('shows what each study found, and that they disagree', () => {
    // Duyff, Mount and Jones 2011, at 440 mg a serving: 282 mg drained, 260 mg drained and rinsed, to 1 mg.
    const drained = valueIn(ask(440, 'beans', 'drained'));
    const rinsed = valueIn(ask(440, 'beans', 'drained and rinsed'));
    const duyff = (range: typeof drained) =>
      range.findings.find((one) => one.study.source === 'duyff-2011')?.after;
    expect(Math.abs((duyff(drained)?.low ?? 0) - 282)).toBeLessThanOrEqual(1);
    expect(Math.abs((duyff(rinsed)?.high ?? 0) - 260)).toBeLessThanOrEqual(1);
    expect(drained.disagree && rinsed.disagree).toBe(true);
    expect(rinsed.working.inputs.map((one) => [one.name, one.value, one.source])).toEqual([
      ['label', 440, 'lesson'],
      ['loss_low', 0.2, 'kitchen-tests-beans'],
      ['loss_high', 0.41, 'duyff-2011'],
    ]);
    const vegetables = valueIn(
      ask(440, 'vegetables', 'drained and rinsed', { labelSource: 'label-green-beans' }),
    );
    expect(vegetables.disagree).toBe(false);
    expect(vegetables.working.inputs[0]?.source).toBe('label-green-beans');
  });

  it('holds the shares of the vegetables against the published milligrams', () => {
    // Haytowitz 2011, abstract: mg per 100 g of can contents, drained, rinsed.
    const found = [
      [231, 231, 214],
      [261, 244, 231],
      [205, 185, 162],
    ] as const;
    const loss = (at: 1 | 2) => found.map((row) => 1 - row[at] / row[0]);
    const study = (treatment: Treatment) =>
      RINSE_STUDIES.find((one) => one.source === 'haytowitz-2011' && one.treatment === treatment);
    for (const [treatment, at] of [
      ['drained', 1],
      ['drained and rinsed', 2],
    ] as const) {
      expect(study(treatment)?.lossLow).toBeCloseTo(Math.min(...loss(at)), 2);
      expect(study(treatment)?.lossHigh).toBeCloseTo(Math.max(...loss(at)), 2);
    }
  });

  it('says when there is little to lose', () => {
    // 21 CFR 101.61(b)(4): low sodium is 140 mg or less; to use it here is a house rule.
    expect(LITTLE_TO_LOSE.value).toBe(140);
    expect(valueIn(ask(140, 'beans', 'drained')).littleToLose).toBe(true);
    expect(valueIn(ask(141, 'beans', 'drained')).littleToLose).toBe(false);
    expect(valueIn(ask(141, 'beans', 'drained', { noSaltAdded: true })).littleToLose).toBe(true);
  });

  it('refuses a label basis that is not the studies’ own', () => {
    for (const text of ['1/2 cup', '1/2 cup, ready to eat', '100 g']) {
      const refusal = refusalOf(ask(460, 'beans', 'drained', { basis: valueIn(parseBasis(text)) }));
      expect(refusal.reason).toBe('It is not known whether the label counts the liquid.');
    }
    expect(refusalOf(ask(460, 'beans', 'drained', { basis: null })).hint).toContain('1/2 cup, with liquid');
    for (const text of ['1/2 cup, drained', '1/2 cup, drained and rinsed']) {
      const refusal = refusalOf(ask(460, 'beans', 'drained', { basis: valueIn(parseBasis(text)) }));
      expect(refusal.reason).toContain('already drained');
    }
  });

  it('refuses labels without sodium', () => {
    for (const mg of [0, -5, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(refusalOf(ask(mg, 'beans', 'drained')).reason).toContain('above zero');
    }
  });

  it('refuses foods and treatments that no study measured on that basis', () => {
    expect(refusalOf(ask(460, null, 'drained')).reason).toContain('No study of this food');
    expect(refusalOf(ask(460, 'tuna', 'drained')).reason).toContain('No study of tuna');
    for (const kind of ['tuna', 'cottage cheese'] as const) {
      expect(refusalOf(ask(460, kind, 'drained and rinsed')).reason).toContain('vermeulen-1983');
    }
  });

  it('rises with the label, and rinsing never leaves more than draining', () => {
    const mg = fc.double({ min: 0.001, max: 5000, noNaN: true });
    const kind = fc.constantFrom<RinseKind>('beans', 'vegetables');
    fc.assert(
      fc.property(mg, mg, kind, (a, b, one) => {
        const less = valueIn(ask(Math.min(a, b), one, 'drained and rinsed')).after;
        const more = valueIn(ask(Math.max(a, b), one, 'drained and rinsed')).after;
        const drained = valueIn(ask(Math.max(a, b), one, 'drained')).after;
        expect(less.low).toBeLessThanOrEqual(more.low);
        expect(less.high).toBeLessThanOrEqual(more.high);
        expect(more.low).toBeLessThanOrEqual(more.high);
        expect(more.low).toBeLessThanOrEqual(drained.low);
        expect(more.high).toBeLessThanOrEqual(drained.high);
        expect(drained.high).toBeLessThanOrEqual(Math.max(a, b));
        expect(more.low).toBeGreaterThan(0);
      }),
    );
  });
});

describe('claims about rinsing', () => {
  const claim = (says: 'at least' | 'up to' | 'about', share: number, more: Partial<RinseQuestion> = {}) =>
    judgeRinseClaim(
      { says, share },
      { basis: withLiquid, kind: 'beans', treatment: 'drained and rinsed', ...more },
    );

  it.each([
    ['at least', 0.2, true],
    ['at least', 0.1, true],
    ['at least', 0.25, false],
    ['at least', 0, false],
    ['about', 0.3, true],
    ['about', 0.41, true],
    ['about', 0.45, false],
    ['about', 0.1, false],
    ['up to', 0.41, true],
    ['up to', 0.5, false],
    ['up to', 0.1, false],
  ] as const)('%s %d', (says, share, holds) => {
    expect(claim(says, share).ok).toBe(holds);
  });

  it('says what the studies found', () => {
    expect(valueIn(claim('about', 0.3))).toEqual({ low: 0.2, high: 0.41 });
    expect(refusalOf(claim('at least', 0.5)).reason).toBe(
      'Studies found that 20% to 41% of the sodium goes away when beans are drained and rinsed; "at least 50%" is not what they found.',
    );
  });

  it('is refused on another basis, or without a study', () => {
    expect(refusalOf(claim('about', 0.3, { basis: null })).reason).toContain('not known whether');
    expect(refusalOf(claim('about', 0.3, { kind: null })).reason).toContain('No study');
  });
});

describe('kinds of food that were studied', () => {
  it.each([
    ['pinto beans, canned', 'beans'],
    ['Canned black beans', 'beans'],
    ['kidney beans, canned, drained', 'beans'],
    ['great northern beans', 'beans'],
    ['dark red kidney beans', 'beans'],
    ['chickpeas, canned', 'beans'],
    ['garbanzo beans', 'beans'],
    ['black-eyed peas, canned', 'beans'],
    ['beans, canned', 'beans'],
    ['green beans, canned', 'vegetables'],
    ['cut green beans, canned', 'vegetables'],
    ['peas, canned', 'vegetables'],
    ['sweet peas, canned', 'vegetables'],
    ['corn, canned', 'vegetables'],
    ['whole kernel corn, canned', 'vegetables'],
    ['tuna, canned in water', 'tuna'],
    ['light tuna', 'tuna'],
    ['cottage cheese', 'cottage cheese'],
    ['low-fat cottage cheese', 'cottage cheese'],
    // Nobody measured these, or their liquid is a sauce.
    ['baked beans, canned', null],
    ['refried beans', null],
    ['chili beans', null],
    ['pinto beans in chili sauce', null],
    ['cream style corn', null],
    ['corn, canned, cream style', null],
    ['soybeans, canned', null],
    ['split peas, dry', null],
    ['lentils, canned', null],
    ['carrots, canned', null],
    ['peas and carrots, canned', null],
    ['corn tortilla', null],
    ['popcorn', null],
    ['coffee beans', null],
    ['', null],
  ] as const)('%s', (name, kind) => {
    expect(rinseKindOf(name)).toBe(kind);
  });
});
