import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Contains,
  glutenFree,
  HEALTHY_ROWS,
  type HealthyKind,
  healthyByNewTest,
  healthyTestOn,
  known,
  type LabeledFood,
  lessClaim,
  lightClaim,
  moreClaim,
  noAddedSugars,
  noSaltAdded,
  notKnown,
  organicShare,
  organicWords,
  sourceClaim,
  sourceWord,
} from '../../src/nutrition/index.js';
import { evaluate } from './evaluate.js';
import { refusalOf, valueIn } from './expect-result.js';

const ANSWERS: readonly Contains[] = ['yes', 'no', 'unknown'];

describe('less and light', () => {
  it.each([
    // 21 CFR 101.61(b)(6) and 101.56(c): 25 percent less, 50 percent less. 890 to 667 mg is 25.06 percent less.
    [known(667, 'mg'), known(890, 'mg'), 'no', 'yes', 'no'],
    [known(0.3, 'g'), known(600, 'mg'), 'no', 'yes', 'yes'],
    [known(450, 'mg'), known(600, 'mg'), 'unknown', 'unknown', 'no'],
    [known(451, 'mg'), known(600, 'mg'), 'unknown', 'no', 'no'],
    [notKnown('mg'), known(600, 'mg'), 'no', 'unknown', 'unknown'],
    [known(1, 'mg'), notKnown('mg'), 'no', 'unknown', 'unknown'],
    [{ ...known(1, 'mg'), atLeast: true }, known(600, 'mg'), 'no', 'unknown', 'unknown'],
    [known(1, 'mg'), { ...known(600, 'mg'), atLeast: true }, 'no', 'unknown', 'unknown'],
    [known(75, 'kcal'), known(100, 'kcal'), 'no', 'yes', 'no'],
  ] as const)('%o against %o, low: %s', (food, reference, low, reduced, half) => {
    expect(valueIn(lessClaim(food, reference, low))).toMatchObject({ reduced, half });
  });

  it('shows how it was got', () => {
    const claim = valueIn(lessClaim(known(0.3, 'g'), known(400, 'mg'), 'no'));
    expect(claim.lessPercent).toBeCloseTo(25, 9);
    expect(evaluate(claim.working)).toBeCloseTo(25, 9);
  });

  it('refuses a low reference food, other units and bad amounts', () => {
    expect(refusalOf(lessClaim(known(1, 'mg'), known(2, 'mg'), 'yes')).reason).toContain('itself low');
    expect(refusalOf(lessClaim(known(1, 'mg'), known(2, 'kcal'), 'no')).reason).toBe(
      'mg cannot be compared with kcal.',
    );
    for (const [a, b] of [
      [-1, 2],
      [1, 0],
      [1, -2],
    ] as const)
      expect(refusalOf(lessClaim(known(a, 'mg'), known(b, 'mg'), 'no')).reason).toContain('zero or more');
  });

  it.each([
    // 21 CFR 101.56(b): 10 g of fat in 150 kcal is 60 percent of the energy; in 200 kcal it is 45 percent.
    [5, 150, 10, 150, true],
    [5.1, 90, 10, 150, false],
    [8, 133, 10, 200, true],
    [8, 134, 10, 200, false],
    [5, 200, 10, 200, true],
  ])('%d g and %d kcal against %d g and %d kcal: %s', (fatGrams, kcal, fat, energy, allowed) => {
    expect(valueIn(lightClaim({ fatGrams, kcal }, { fatGrams: fat, kcal: energy })).allowed).toBe(allowed);
  });

  it('refuses to call light what it cannot compare', () => {
    for (const [food, reference] of [
      [
        { fatGrams: -1, kcal: 1 },
        { fatGrams: 1, kcal: 1 },
      ],
      [
        { fatGrams: 1, kcal: Number.NaN },
        { fatGrams: 1, kcal: 1 },
      ],
      [
        { fatGrams: 1, kcal: 1 },
        { fatGrams: 0, kcal: 1 },
      ],
      [
        { fatGrams: 1, kcal: 1 },
        { fatGrams: 1, kcal: 0 },
      ],
    ] as const)
      expect(refusalOf(lightClaim(food, reference)).reason).toContain('zero or more');
  });
});

describe('good source, high and more', () => {
  it.each([
    // 21 CFR 101.54(b) and (c).
    [null, false, 'not known'],
    [20, true, 'high'],
    [15, true, 'not known'],
    [5, true, 'not known'],
    [9.99, false, 'none'],
  ] as const)('%s percent, at least: %s', (percent, atLeast, word) => {
    expect(sourceWord(percent, atLeast)).toBe(word);
  });

  it('asks for the total fat beside fiber, and for the quality of protein', () => {
    const fiber = (lowFat: Contains) => valueIn(sourceClaim('fiber', known(6, 'g'), lowFat));
    expect(fiber('no')).toMatchObject({ word: 'high', say: ['state the total fat beside the claim'] });
    expect(fiber('unknown').say).toHaveLength(1);
    expect(fiber('yes').say).toEqual([]);
    expect(valueIn(sourceClaim('fiber', known(3, 'g'), 'no')).word).toBe('good source');
    expect(valueIn(sourceClaim('fiber', known(1, 'g'), 'no')).say).toEqual([]);
    expect(valueIn(sourceClaim('protein', known(10, 'g'), 'yes')).say).toEqual([
      'correct the protein for its quality first',
    ]);
  });

  it('makes no claim of plenty of what labels want less of', () => {
    expect(refusalOf(sourceClaim('sodium', known(500, 'mg'), 'yes')).reason).toBe(
      'A label makes no claim of plenty of sodium.',
    );
    expect(refusalOf(moreClaim('added sugars', known(5, 'g'), known(1, 'g'))).reason).toContain(
      'added sugars',
    );
  });

  it.each([
    // 21 CFR 101.54(e): 10 percent of 1300 mg is 130 mg.
    [known(330, 'mg'), known(200, 'mg'), 'yes'],
    [known(0.329, 'g'), known(200, 'mg'), 'no'],
    [notKnown('mg'), known(200, 'mg'), 'unknown'],
    [known(330, 'mg'), notKnown('mg'), 'unknown'],
    [{ ...known(330, 'mg'), atLeast: true }, known(200, 'mg'), 'unknown'],
    [known(330, 'mg'), { ...known(200, 'mg'), atLeast: true }, 'unknown'],
  ] as const)('more calcium: %o against %o: %s', (food, reference, allowed) => {
    expect(valueIn(moreClaim('calcium', food, reference)).allowed).toBe(allowed);
  });
});

describe('nothing added', () => {
  const unsweetened = {
    sugarAdded: 'no',
    sugaryIngredient: 'no',
    processRaisesSugars: 'no',
    usuallySweetened: 'yes',
    lowCalorie: 'no',
  } as const;

  it('keeps to all conditions on sugar', () => {
    // 21 CFR 101.60(c)(2).
    expect(noAddedSugars(unsweetened)).toMatchObject({
      allowed: 'yes',
      say: ['say that the food is not low in calories'],
    });
    expect(noAddedSugars({ ...unsweetened, lowCalorie: 'yes' }).say).toEqual([]);
    for (const key of ['sugarAdded', 'sugaryIngredient', 'processRaisesSugars'] as const) {
      expect(noAddedSugars({ ...unsweetened, [key]: 'yes' }).allowed).toBe('no');
      expect(noAddedSugars({ ...unsweetened, [key]: 'unknown' }).allowed).toBe('unknown');
    }
    expect(noAddedSugars({ ...unsweetened, usuallySweetened: 'no' }).allowed).toBe('no');
  });

  it('keeps to all conditions on salt', () => {
    // 21 CFR 101.61(c)(2).
    const unsalted = { saltAdded: 'no', usuallySalted: 'yes', sodiumFree: 'no' } as const;
    expect(noSaltAdded(unsalted)).toMatchObject({
      allowed: 'yes',
      say: ['say that the food is not a sodium free food'],
    });
    expect(noSaltAdded({ ...unsalted, sodiumFree: 'yes' }).say).toEqual([]);
    expect(noSaltAdded({ ...unsalted, saltAdded: 'yes' }).allowed).toBe('no');
    expect(noSaltAdded({ ...unsalted, usuallySalted: 'no' }).allowed).toBe('no');
  });

  it('lets gluten-free stand only when everything is known', () => {
    // 21 CFR 101.91, from memory.
    const free = { ppm: 5, glutenGrain: 'no', untreatedDerivative: 'no', fermented: 'no' } as const;
    expect(glutenFree(free)).toMatchObject({
      allowed: 'yes',
      checked: 'memory',
      say: ['read the label each time'],
    });
    expect(glutenFree({ ...free, ppm: null }).allowed).toBe('unknown');
    expect(glutenFree({ ...free, ppm: -1 }).allowed).toBe('unknown');
    expect(glutenFree({ ...free, fermented: 'yes' }).allowed).toBe('unknown');
    expect(glutenFree({ ...free, fermented: 'yes', glutenFreeBefore: 'yes' }).allowed).toBe('yes');
    expect(glutenFree({ ...free, fermented: 'unknown', glutenFreeBefore: 'no' }).allowed).toBe('no');
    const answer = fc.constantFrom(...ANSWERS);
    fc.assert(
      fc.property(answer, answer, answer, (glutenGrain, untreatedDerivative, fermented) => {
        const { allowed } = glutenFree({ ppm: 1, glutenGrain, untreatedDerivative, fermented });
        const sure = [glutenGrain, untreatedDerivative, fermented].every((one) => one === 'no');
        expect(allowed === 'yes').toBe(sure);
      }),
    );
  });
});

describe('organic', () => {
  it('counts without water and salt', () => {
    const share = valueIn(organicShare({ organic: 570, all: 1000, waterAndSalt: 400 }));
    expect(share.percent).toBeCloseTo(95, 9);
    expect(evaluate(share.working)).toBeCloseTo(95, 9);
    expect(valueIn(organicWords(share.percent)).words).toBe('organic');
  });

  it('refuses what is no share', () => {
    for (const percent of [-1, 100.1, Number.NaN])
      expect(refusalOf(organicWords(percent)).reason).toContain('not between 0 and 100');
    for (const grams of [
      { organic: -1, all: 10, waterAndSalt: 0 },
      { organic: 1, all: 10, waterAndSalt: -1 },
      { organic: 0, all: 10, waterAndSalt: 10 },
      { organic: 7, all: 10, waterAndSalt: 4 },
    ])
      expect(refusalOf(organicShare(grams)).reason).toContain('no more than');
  });
});

describe('the word "healthy"', () => {
  it.each([
    // 89 FR 106064 and 90 FR 10592.
    ['2025-04-27', 'old test'],
    ['2025-04-28', 'old or new test'],
    ['2028-02-24', 'old or new test'],
    ['2028-02-25', 'new test'],
  ])('%s: %s', (day, test) => {
    expect(valueIn(healthyTestOn(day))).toBe(test);
  });

  it('refuses what is no day', () => {
    for (const day of ['28 April 2025', '2025-13-01', '2025-04-32', ''])
      expect(refusalOf(healthyTestOn(day)).hint).toBe('Write it as 2027-03-01.');
  });

  const mix = (addedSugars: number | null, sodium: number, saturated: number): LabeledFood => ({
    grams: 140,
    amounts: { 'added sugars': addedSugars, sodium, 'saturated fat': saturated },
    reference: { grams: 140, small: false },
  });

  it.each([
    // Mixed products: 10 percent of 50 g, 15 percent of 2300 mg, 10 percent of 20 g; a law firm's summary of the rule.
    [5, 345, 2, 'yes', 'yes'],
    [5.1, 345, 2, 'yes', 'no'],
    [5, 346, 2, 'yes', 'no'],
    [5, 345, 2.1, 'yes', 'no'],
    [5, 345, 2, 'no', 'no'],
    [5, 345, 2, 'unknown', 'unknown'],
    [null, 345, 2, 'yes', 'unknown'],
  ] as const)('%s g, %d mg, %d g, holds its group: %s', (sugars, sodium, saturated, holds, allowed) => {
    const verdict = valueIn(healthyByNewTest('mixed product', mix(sugars, sodium, saturated), holds));
    expect([verdict.allowed, verdict.checked]).toEqual([allowed, 'copies']);
  });

  it('marks rows from memory and refuses unsettled ones', () => {
    const marks = Object.entries(HEALTHY_ROWS).map(([kind, { checked }]) => `${kind}: ${checked}`);
    expect(marks.filter((mark) => mark.endsWith('unsettled'))).toEqual([
      'main dish: unsettled',
      'meal: unsettled',
    ]);
    expect(marks.filter((mark) => mark.endsWith('copies'))).toEqual(['mixed product: copies']);
    const fruit = valueIn(healthyByNewTest('fruit', mix(1, 230, 1), 'yes'));
    expect(fruit).toMatchObject({ allowed: 'yes', checked: 'memory' });
    expect(fruit.note).toBeUndefined();
    for (const kind of ['meal', 'main dish'] as HealthyKind[])
      expect(refusalOf(healthyByNewTest(kind, mix(0, 0, 0), 'yes')).reason).toContain('not settled');
    expect(refusalOf(healthyByNewTest('fruit', mix(-1, 0, 0), 'yes')).reason).toContain('below zero');
  });
});
