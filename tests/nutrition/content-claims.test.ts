import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  CONTENT_CLAIMS,
  type ContentClaimName,
  isSmallReference,
  judge,
  LABEL_NUTRIENTS,
  type LabeledFood,
  type LabelNutrient,
  leastReduction,
  REFERENCE_AMOUNTS,
  REFERENCE_KINDS,
  referenceAmountOf,
  strongestThresholdClaim,
  strongestUsClaim,
  thresholdClaim,
  thresholdClaimNames,
  usClaim,
} from '../../src/nutrition/index.js';
import { evaluate } from './evaluate.js';
import { refusalOf, valueIn } from './expect-result.js';

const NUTRIENTS = Object.keys(LABEL_NUTRIENTS) as LabelNutrient[];
const food = (amounts: LabeledFood['amounts'], more: Partial<LabeledFood> = {}): LabeledFood => ({
  grams: 100,
  amounts,
  reference: { grams: 100, small: false },
  servingGrams: 100,
  ...more,
});
const allowed = (claim: ContentClaimName, one: LabeledFood, kind: 'food' | 'meal' = 'food') =>
  valueIn(usClaim(claim, one, kind)).allowed;

describe('content claims of the US', () => {
  it.each([
    // 21 CFR 101.60 to 101.62; FDA Food Labeling Guide, appendix A; limits of meals on "free" and of lean from memory.
    ['calorie free', { energy: 4.9 }, 'yes'],
    ['calorie free', { energy: 5 }, 'no'],
    ['low calorie', { energy: 40 }, 'yes'],
    ['low calorie', { energy: 41 }, 'no'],
    ['saturated fat free', { 'saturated fat': 0.4, 'trans fat': 0.4 }, 'yes'],
    ['saturated fat free', { 'saturated fat': 0.4, 'trans fat': 0.5 }, 'no'],
    ['saturated fat free', { 'saturated fat': 0.4 }, 'unknown'],
    ['low saturated fat', { 'saturated fat': 1, energy: 60 }, 'yes'],
    ['low saturated fat', { 'saturated fat': 1, energy: 59 }, 'no'],
    ['cholesterol free', { cholesterol: 1, 'saturated fat': 2 }, 'yes'],
    ['cholesterol free', { cholesterol: 0, 'saturated fat': 2.1 }, 'no'],
    ['low cholesterol', { cholesterol: 20, 'saturated fat': 2 }, 'yes'],
    ['low cholesterol', { cholesterol: 21, 'saturated fat': 0 }, 'no'],
    ['sugar free', { sugars: 0.49 }, 'yes'],
    ['lean', { fat: 9.9, 'saturated fat': 4.5, cholesterol: 94 }, 'yes'],
    ['lean', { fat: 10, 'saturated fat': 4.5, cholesterol: 94 }, 'no'],
    ['extra lean', { fat: 4.9, 'saturated fat': 1.9, cholesterol: 94 }, 'yes'],
    ['extra lean', { fat: 4.9, 'saturated fat': 2, cholesterol: 94 }, 'no'],
    ['low sodium', { sodium: null }, 'unknown'],
    ['low sodium', {}, 'unknown'],
  ] as const)('%s with %o: %s', (claim, amounts, answer) => {
    expect(allowed(claim, food(amounts))).toBe(answer);
  });

  it('count on the reference amount, whatever weight the amounts belong to', () => {
    const per100 = food({ sodium: 164.7058823529412 }, { reference: { grams: 85, small: false } });
    // 140 mg in 85 g but for the noise of binary fractions.
    expect(allowed('low sodium', per100)).toBe('yes');
    expect(allowed('low sodium', food({ sodium: 165 }, { reference: { grams: 85, small: false } }))).toBe(
      'no',
    );
  });

  it('ask small reference amounts per 50 g too', () => {
    const crackers = (small: boolean) => food({ sodium: 450 }, { reference: { grams: 30, small } });
    // 135 mg in 30 g, and 225 mg in 50 g.
    expect(allowed('low sodium', crackers(false))).toBe('yes');
    expect(allowed('low sodium', crackers(true))).toBe('no');
    const verdict = valueIn(usClaim('low sodium', crackers(true)));
    expect(verdict.findings.map(({ actual }) => actual)).toEqual([135, 225]);
  });

  it('do not ask low saturated fat per 50 g', () => {
    const spread = food({ 'saturated fat': 3, energy: 700 }, { reference: { grams: 30, small: true } });
    expect(allowed('low saturated fat', spread)).toBe('yes');
  });

  it('ask "free" per labeled serving too', () => {
    const drink = food({ sodium: 4 }, { servingGrams: 200 });
    expect(allowed('sodium free', drink)).toBe('no');
    const { servingGrams: _, ...unsaid } = drink;
    expect(allowed('sodium free', unsaid)).toBe('unknown');
    const { reference: __, ...bare } = drink;
    expect(allowed('low sodium', bare)).toBe('unknown');
  });

  it.each([
    ['low calorie', { energy: 120 }, 'yes'],
    ['low calorie', { energy: 121 }, 'no'],
    ['low fat', { fat: 3, energy: 90 }, 'yes'],
    ['low fat', { fat: 3, energy: 89 }, 'no'],
    ['low fat', { fat: 0, energy: 0 }, 'yes'],
    ['low saturated fat', { 'saturated fat': 1, energy: 91 }, 'yes'],
    ['low saturated fat', { 'saturated fat': 1, energy: 90 }, 'no'],
    ['low cholesterol', { cholesterol: 20, 'saturated fat': 2 }, 'yes'],
    ['sodium free', { sodium: 4 }, 'yes'],
    ['low saturated fat', { 'saturated fat': 1 }, 'unknown'],
  ] as const)('%s of a meal with %o per 100 g: %s', (claim, amounts, answer) => {
    expect(allowed(claim, { grams: 100, amounts, servingGrams: 100 }, 'meal')).toBe(answer);
  });

  it('say what rests on memory', () => {
    expect(valueIn(usClaim('low sodium', food({ sodium: 1 })))).toMatchObject({
      checked: 'copies',
      source: '21 CFR 101.61(b)(4)',
    });
    expect(valueIn(usClaim('very low sodium', food({ sodium: 1 }), 'meal')).checked).toBe('memory');
    expect(valueIn(usClaim('lean', food({}))).checked).toBe('memory');
    expect(valueIn(usClaim('lean', food({}))).note).toContain('4 g');
  });

  it('refuse lean meals and bad numbers', () => {
    expect(refusalOf(usClaim('lean', food({}), 'meal')).reason).toBe(
      'No limits of "lean" for a meal are recorded.',
    );
    expect(refusalOf(strongestUsClaim('sodium', food({ sodium: -1 }))).reason).toBe(
      'An amount of -1 for sodium is below zero.',
    );
    expect(refusalOf(usClaim('low fat', food({ fat: Number.NaN }))).reason).toContain('NaN');
    for (const grams of [0, -1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(refusalOf(usClaim('low fat', food({ fat: 1 }, { grams }))).reason).toContain(
        'is not above zero',
      );
    expect(refusalOf(usClaim('low fat', food({ fat: 1 }, { servingGrams: 0 }))).reason).toContain(
      'is not above zero',
    );
  });

  it('find the strongest, and say when a stronger one stays open', () => {
    const { servingGrams: _, ...unsaid } = food({ sodium: 4 });
    expect(valueIn(strongestUsClaim('sodium', unsaid))).toMatchObject({
      verdict: { claim: 'very low sodium' },
      open: true,
    });
    expect(valueIn(strongestUsClaim('sodium', food({})))).toEqual({ verdict: null, open: true });
    expect(valueIn(strongestUsClaim('sodium', food({ sodium: 141 })))).toEqual({
      verdict: null,
      open: false,
    });
    expect(valueIn(strongestUsClaim('protein', food({})))).toEqual({ verdict: null, open: false });
  });

  const amounts = fc.record(
    Object.fromEntries(NUTRIENTS.map((name) => [name, fc.double({ min: 0, max: 50, noNaN: true })])),
  ) as fc.Arbitrary<Record<LabelNutrient, number>>;

  it('show workings that give what they judge', () => {
    fc.assert(
      fc.property(
        amounts,
        fc.constantFrom(...CONTENT_CLAIMS),
        fc.integer({ min: 1, max: 300 }),
        (all, claim, grams) => {
          const verdict = valueIn(usClaim(claim, food({ ...all, energy: all.energy + 1 }, { grams })));
          for (const { actual, working } of verdict.findings)
            expect(Math.abs(evaluate(working) - (actual ?? Number.NaN))).toBeLessThanOrEqual(
              1e-9 * Math.max(1, actual ?? 0),
            );
        },
      ),
    );
  });

  it('are never won by more of the nutrient, nor by not knowing it', () => {
    fc.assert(
      fc.property(
        amounts,
        fc.constantFrom('low sodium', 'low fat', 'low calorie', 'low cholesterol', 'sugar free' as const),
        fc.constantFrom(...NUTRIENTS),
        (all, claim, name) => {
          const now = allowed(claim as ContentClaimName, food(all));
          if (now === 'no') {
            expect(allowed(claim as ContentClaimName, food({ ...all, [name]: all[name] + 1 }))).toBe('no');
            expect(allowed(claim as ContentClaimName, food({ ...all, [name]: null }))).not.toBe('yes');
          } else expect(allowed(claim as ContentClaimName, food(all))).toBe('yes');
        },
      ),
    );
  });
});

describe('limits', () => {
  it('sum what they name, and know what the known part alone decides', () => {
    const limit = { of: ['saturated fat', 'trans fat'], is: 'at most', value: 1.5, per: '100 g' } as const;
    const known = judge(food({ 'saturated fat': 1, 'trans fat': 0.4 }), [limit]);
    expect(known.allowed).toBe('yes');
    expect(evaluate(known.findings[0]?.working ?? { formula: '0', inputs: [] })).toBeCloseTo(1.4, 9);
    expect(judge(food({ 'saturated fat': 1.6 }), [limit]).allowed).toBe('no');
    expect(judge(food({ 'saturated fat': 1 }), [limit])).toMatchObject({ allowed: 'unknown' });
    const least = { ...limit, is: 'at least' } as const;
    expect(judge(food({ 'saturated fat': 1.6 }), [least]).allowed).toBe('yes');
    expect(judge(food({ 'saturated fat': 1 }), [least]).allowed).toBe('unknown');
  });

  it('leave out the limit per 50 g only when the reference amount is known not to be small', () => {
    const limit = {
      of: ['fat'],
      is: 'at most',
      value: 3,
      per: '50 g if the reference amount is small',
    } as const;
    expect(judge(food({ fat: 99 }), [limit])).toEqual({ allowed: 'yes', findings: [] });
    expect(judge({ grams: 100, amounts: { fat: 1 } }, [limit]).allowed).toBe('unknown');
  });
});

describe('claims of the EU and the Codex', () => {
  const solid = (amounts: LabeledFood['amounts']): LabeledFood => ({ grams: 100, amounts });
  const liquid = (amounts: LabeledFood['amounts']): LabeledFood => ({
    grams: 103,
    milliliters: 100,
    amounts,
  });
  it.each([
    // Regulation (EC) 1924/2006, Annex, as a public table restates it; fiber and protein from memory.
    ['eu', 'low energy', 'solid', { energy: 40 }, 'yes'],
    ['eu', 'low energy', 'liquid', { energy: 21 }, 'no'],
    ['eu', 'energy free', 'liquid', { energy: 4 }, 'yes'],
    ['eu', 'low fat', 'solid', { fat: 3 }, 'yes'],
    ['eu', 'low fat', 'liquid', { fat: 1.6 }, 'no'],
    ['eu', 'low saturated fat', 'solid', { 'saturated fat': 1, 'trans fat': 0.5, energy: 135 }, 'yes'],
    ['eu', 'low saturated fat', 'solid', { 'saturated fat': 1, 'trans fat': 0.5, energy: 134 }, 'no'],
    ['eu', 'low saturated fat', 'solid', { 'saturated fat': 1, 'trans fat': 0.6, energy: 500 }, 'no'],
    ['eu', 'low sugar', 'liquid', { sugars: 2.5 }, 'yes'],
    ['eu', 'low salt', 'liquid', { sodium: 120 }, 'yes'],
    ['eu', 'source of fiber', 'solid', { fiber: 3, energy: 900 }, 'yes'],
    ['eu', 'source of fiber', 'solid', { fiber: 1.5, energy: 100 }, 'yes'],
    ['eu', 'source of fiber', 'solid', { fiber: 2.9, energy: 200 }, 'no'],
    ['eu', 'source of fiber', 'solid', { fiber: 2.9 }, 'unknown'],
    ['eu', 'source of fiber', 'solid', { fiber: 0, energy: 0 }, 'no'],
    ['eu', 'high fiber', 'solid', { fiber: 6, energy: 900 }, 'yes'],
    ['eu', 'source of protein', 'solid', { protein: 3, energy: 100 }, 'yes'],
    ['eu', 'high protein', 'solid', { protein: 4.9, energy: 100 }, 'no'],
    // Codex CXG 23-1997; sodium, sugar and fiber as a national standard made from it has them, the rest from memory.
    ['codex', 'low sodium', 'solid', { sodium: 120 }, 'yes'],
    ['codex', 'very low sodium', 'solid', { sodium: 41 }, 'no'],
    ['codex', 'low cholesterol', 'solid', { cholesterol: 20, 'saturated fat': 1.5, energy: 200 }, 'yes'],
    ['codex', 'low cholesterol', 'solid', { cholesterol: 20, 'saturated fat': 1.6, energy: 200 }, 'no'],
    ['codex', 'sugar free', 'liquid', { sugars: 0.5 }, 'yes'],
  ] as const)('%s, %s, %s with %o: %s', (rules, claim, form, amounts, answer) => {
    const one = form === 'solid' ? solid(amounts) : liquid(amounts);
    expect(valueIn(thresholdClaim(rules, claim, one, form)).allowed).toBe(answer);
  });

  it('need the volume of a liquid', () => {
    const verdict = valueIn(thresholdClaim('eu', 'low fat', solid({ fat: 1 }), 'liquid'));
    expect([verdict.allowed, verdict.findings[0]?.actual]).toEqual(['unknown', null]);
    const known = valueIn(thresholdClaim('eu', 'low fat', liquid({ fat: 1 }), 'liquid'));
    expect(evaluate(known.findings[0]?.working ?? { formula: '0', inputs: [] })).toBeCloseTo(1, 9);
  });

  it('say which rows rest on memory, and what else the rule says', () => {
    expect(valueIn(thresholdClaim('eu', 'low fat', solid({}), 'solid'))).toMatchObject({
      checked: 'copies',
      source: 'Regulation (EC) 1924/2006, Annex',
      note: 'semi-skimmed milk may hold 1.8 g per 100 mL',
    });
    expect(valueIn(thresholdClaim('codex', 'low fat', solid({}), 'solid'))).toMatchObject({
      checked: 'memory',
      source: 'Codex CXG 23-1997',
    });
  });

  it('refuse vitamins, forms without limits, and bad numbers', () => {
    for (const rules of ['eu', 'codex'] as const) {
      expect(refusalOf(thresholdClaim(rules, 'source of vitamin C', solid({}), 'solid')).hint).toContain(
        'need reference values',
      );
      expect(thresholdClaimNames(rules).filter((name) => /vitamin|mineral|iron|calcium/.test(name))).toEqual(
        [],
      );
    }
    expect(refusalOf(thresholdClaim('eu', 'energy free', solid({ energy: 1 }), 'solid')).reason).toBe(
      'No limits of "energy free" for a solid are held here.',
    );
    expect(refusalOf(strongestThresholdClaim('eu', 'fat', solid({ fat: -1 }), 'solid')).reason).toContain(
      'below zero',
    );
  });

  it('find the strongest', () => {
    const strongest = (sodium: number) =>
      valueIn(strongestThresholdClaim('codex', 'sodium', solid({ sodium }), 'solid'))?.claim;
    expect([5, 40, 120, 121].map(strongest)).toEqual([
      'sodium free',
      'very low sodium',
      'low sodium',
      undefined,
    ]);
  });

  it('ask more of a reduction in the EU than in the Codex', () => {
    expect(leastReduction('eu', 'fat')).toBe(30);
    expect(leastReduction('eu', 'sodium')).toBe(25);
    expect(leastReduction('codex', 'fat')).toBe(25);
  });
});

describe('reference amounts', () => {
  it.each([
    // 21 CFR 101.12(b) as amended in 2016, from memory.
    ['bread and rolls', '50 g'],
    ['yogurt', '170 g'],
    ['Beans in sauce, canned in liquid or refried', '130 g'],
    ['ice cream and frozen desserts', '0.66 cup'],
    ['carbonated and other sweet drinks', '360 mL'],
  ])('%s: %s', (kind, said) => {
    const { amount, unit } = valueIn(referenceAmountOf(kind));
    expect(`${Math.floor(amount * 100) / 100} ${unit}`).toBe(said);
  });

  it('are told apart, above zero, and marked as remembered', () => {
    expect(new Set(REFERENCE_KINDS).size).toBe(REFERENCE_AMOUNTS.length);
    for (const row of REFERENCE_AMOUNTS) {
      expect(row.amount).toBeGreaterThan(0);
      expect(row.checked).toBe('memory');
      expect(row.source).toMatch(/^(21|9) CFR/);
    }
  });

  it('are refused for other words, with kinds that share one', () => {
    expect(refusalOf(referenceAmountOf('rye bread')).near).toEqual([
      'biscuits, croissants, tortillas and corn bread',
      'bread and rolls',
    ]);
    expect(refusalOf(referenceAmountOf('')).near).toBeUndefined();
  });

  it.each([
    [30, 'g', true],
    [31, 'g', false],
    [30, 'mL', true],
    [2, 'tbsp', true],
    [3, 'tbsp', false],
    [6, 'tsp', true],
    [7, 'tsp', false],
    [0.125, 'cup', true],
    [0.5, 'cup', false],
  ] as const)('%d %s small: %s', (amount, unit, small) => {
    expect(isSmallReference({ amount, unit })).toBe(small);
  });
});
