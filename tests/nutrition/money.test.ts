import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type BasketPlan,
  type BasketRow,
  type Cost,
  type CostQuestion,
  costLadder,
  costOf,
  cupsFor,
  daysBetween,
  daysLater,
  fillBasket,
  freshnessOn,
  isDay,
  type MatchRule,
  matchMoney,
  money,
  type Price,
  packagesFor,
  priceOn,
  readMatch,
  readMoney,
  readPrice,
  sumMoney,
  toCents,
  type Weighed,
  withinBudget,
  writeMoney,
} from '../../src/nutrition/index.js';
import { evaluate } from './evaluate.js';
import { refusalOf, valueIn } from './expect-result.js';

const usd = (cents: number) => money(cents, 'USD');
const grams = (value: number, estimated = false): Weighed => ({
  grams: { value, unit: 'g' },
  working: { formula: 'grams', inputs: [{ name: 'grams', value, unit: 'g', source: 'lesson' }] },
  estimated,
});
const WRITTEN = {
  food: 'cherries',
  price: '4.66',
  size: '1 lb',
  kind: 'shelf',
  shop: 'Ferry Hill Grocery',
  dated: '2027-01-20',
};
const priced = (more: Partial<typeof WRITTEN> = {}): Price =>
  valueIn(readPrice({ ...WRITTEN, ...more }, 'USD'));

describe('sums of money', () => {
  it.each([
    ['4.66', 466],
    ['$4.66', 466],
    ['4', 400],
    ['68¢', 68],
    ['0.07', 7],
    // In binary fractions this would be 1998.9999999999998 cents.
    ['19.99', 1999],
    [' 100000.00 ', 10_000_000],
  ])('reads %s', (text, cents) => {
    expect(valueIn(readMoney(text, 'USD'))).toEqual({ cents, currency: 'USD' });
  });

  it.each(['-1', '−1.00', '1,50', 'free', '1.5', '1.234', '', '1e3', '100000.01', '0x10'])(
    'refuses "%s"',
    (text) => {
      expect(refusalOf(readMoney(text, 'USD')).hint).toBe('Write a sum such as 4.66.');
    },
  );

  it('writes what it reads', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 10_000_000 }), (cents) => {
        expect(valueIn(readMoney(writeMoney(usd(cents)), 'USD')).cents).toBe(cents);
      }),
    );
    expect(writeMoney(usd(-105))).toBe('-1.05');
  });

  it('rounds a cost once, half a cent up', () => {
    expect([toCents(68.5), toCents(68.49), toCents(173.2)]).toEqual([69, 68, 173]);
  });

  it('adds one currency, and is never a fraction of a cent', () => {
    expect(sumMoney([usd(10), usd(20)], 'USD')).toEqual(usd(30));
    expect(sumMoney([], 'CAD')).toEqual({ cents: 0, currency: 'CAD' });
    expect(() => sumMoney([money(1, 'CAD')], 'USD')).toThrow('Two currencies');
    expect(() => usd(1.5)).toThrow('no sum');
  });
});

describe('days', () => {
  it.each([
    // By the calendar: 2028 is a leap year, 1900 and 2100 are not.
    ['2027-01-20', '2027-04-20', 90],
    ['2028-02-28', '2028-03-01', 2],
    ['2027-02-28', '2027-03-01', 1],
    ['2100-02-28', '2100-03-01', 1],
    ['2000-02-28', '2000-03-01', 2],
    ['2026-12-31', '2027-01-01', 1],
    ['2027-01-01', '2026-12-31', -1],
    ['1970-01-01', '2000-01-01', 10957],
  ])('%s to %s', (from, to, count) => {
    expect(valueIn(daysBetween(from, to))).toBe(count);
    expect(valueIn(daysLater(from, count))).toBe(to);
  });

  it('refuses days that the calendar does not have', () => {
    for (const day of ['2027-02-29', '2027-13-01', '2027-1-1', '20270120', '2027-00-10', '1899-12-31', '']) {
      expect(isDay(day)).toBe(false);
      expect(refusalOf(daysBetween(day, '2027-01-01')).reason).toBe(`"${day}" is no day.`);
      expect(daysBetween('2027-01-01', day).ok).toBe(false);
      expect(daysLater(day, 1).ok).toBe(false);
    }
    for (const count of [0.5, Number.NaN, 1e9, 100_000])
      expect(daysLater('2027-01-01', count).ok).toBe(false);
  });

  it('goes there and back', () => {
    fc.assert(
      fc.property(fc.integer({ min: -9000, max: 9000 }), (count) => {
        const there = valueIn(daysLater('2027-01-20', count));
        expect(valueIn(daysLater(there, -count))).toBe('2027-01-20');
        expect(valueIn(daysBetween('2027-01-20', there))).toBe(count);
      }),
    );
  });

  it('keeps a price through its last day', () => {
    expect(valueIn(freshnessOn('2027-01-20', 90, '2027-04-20'))).toEqual({
      age: 90,
      until: '2027-04-20',
      expired: false,
      left: 0,
    });
    expect(valueIn(freshnessOn('2027-01-20', 90, '2027-04-21'))).toMatchObject({ expired: true, left: -1 });
    expect(refusalOf(freshnessOn('2027-01-20', 90, '2027-01-19')).reason).toBe(
      '2027-01-20 lies after 2027-01-19.',
    );
    for (const life of [0, -1, 1.5, Number.NaN])
      expect(freshnessOn('2027-01-20', life, '2027-01-21').ok).toBe(false);
    expect(freshnessOn('no day', 9, '2027-01-21').ok).toBe(false);
    expect(freshnessOn('2199-12-31', 9, '2199-12-31').ok).toBe(false);
  });
});

describe('a price', () => {
  it('has food, sum, size, kind, shop and day', () => {
    expect(priced()).toEqual({
      food: 'cherries',
      money: usd(466),
      size: { count: 1, unit: 'lb', measure: 'lb', size: null },
      kind: 'shelf',
      shop: 'Ferry Hill Grocery',
      dated: '2027-01-20',
    });
  });

  it.each([
    [{ shop: ' ', kind: '' }, 'The price has no kind and shop.'],
    [{ price: '4,66' }, 'A comma stands in "4,66".'],
    [{ price: '0' }, 'A price of zero is no price.'],
    [{ size: 'big' }, '"big" is not the size of a package.'],
    [{ size: '1 lb bag' }, '"1 lb bag" is not the size of a package.'],
    [{ size: '0 lb' }, 'An amount of zero is no amount.'],
    [{ kind: 'coupon' }, '"coupon" is no kind of price.'],
    [{ dated: '20 January' }, '"20 January" is no day.'],
  ])('%o is refused', (more, reason) => {
    expect(refusalOf(readPrice({ ...WRITTEN, ...more }, 'USD')).reason).toBe(reason);
  });

  it('is withheld past its shelf life', () => {
    expect(valueIn(priceOn(priced(), '2027-04-20')).until).toBe('2027-04-20');
    const late = refusalOf(priceOn(priced(), '2027-04-21'));
    expect(late.reason).toBe('The price of 1 lb cherries is 91 days old.');
    expect(late.hint).toBe("Ask for this week's price.");
    expect(priceOn(priced(), '2027-01-19').ok).toBe(false);
  });
});

describe('the cost of an edible cup', () => {
  const LB = 453.59237;
  const question = (price: Price, cup: number, factor: number): CostQuestion => ({
    price,
    bought: grams(LB),
    eaten: grams(cup * LB),
    yields: [{ factor, source: 'usda-ers', what: 'stems and stones' }],
  });
  const cost = (more: Partial<typeof WRITTEN>, cup = 0.342): Cost =>
    valueIn(costOf(question(priced(more), cup, 0.92)));

  it('tells where it comes from', () => {
    const one = cost({});
    expect(evaluate(one.working)).toBeCloseTo(one.value, 9);
    expect(one).toMatchObject({ unit: 'cents', kind: 'shelf', shop: 'Ferry Hill Grocery', estimated: false });
    expect(one.working.inputs[0]).toMatchObject({
      source: 'Ferry Hill Grocery, 2027-01-20',
      note: 'shelf price',
    });
  });

  it('takes each yield once, or none', () => {
    const plain = valueIn(costOf({ ...question(priced(), 0.342, 1), yields: [] }));
    const two = valueIn(
      costOf({
        ...question(priced(), 0.342, 1),
        yields: [
          { factor: 0.5, source: 'a', what: 'peel' },
          { factor: 2, source: 'b', what: 'boiling' },
        ],
      }),
    );
    expect(two.value).toBeCloseTo(plain.value, 9);
    expect(evaluate(two.working)).toBeCloseTo(two.value, 9);
  });

  it('carries estimated weights', () => {
    const base = question(priced(), 0.342, 0.92);
    expect(valueIn(costOf({ ...base, bought: grams(9, true) })).estimated).toBe(true);
    expect(valueIn(costOf({ ...base, eaten: grams(9, true) })).estimated).toBe(true);
  });

  it('refuses weights and yields that cannot be', () => {
    const base = question(priced(), 0.342, 0.92);
    expect(costOf({ ...base, bought: grams(0) }).ok).toBe(false);
    expect(costOf({ ...base, eaten: grams(0) }).ok).toBe(false);
    for (const factor of [0, -1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(refusalOf(costOf(question(priced(), 1, factor))).reason).toContain('stems and stones');
  });

  it('rises with price and portion and falls with the yield', () => {
    const above = (low: number) => fc.double({ min: low, max: 1, noNaN: true });
    fc.assert(
      fc.property(above(0.1), above(0.1), (cup, factor) => {
        const of = (price: string, a: number, b: number) =>
          valueIn(costOf(question(priced({ price }), a, b))).value;
        const one = of('4.66', cup, factor);
        expect(of('4.67', cup, factor)).toBeGreaterThan(one);
        expect(of('4.66', cup * 1.1, factor)).toBeGreaterThan(one);
        expect(of('4.66', cup, factor * 1.1)).toBeLessThan(one);
      }),
    );
  });

  it('stands on a ladder, sale prices apart', () => {
    const [a, b, c] = [cost({}), cost({ price: '2.00' }), cost({ price: '1.00', kind: 'sale' })];
    expect(valueIn(costLadder([a, b, c]))).toEqual({ shelf: [b, a], sale: [c] });
    expect(refusalOf(costLadder([a, cost({ dated: '2026-01-20' })])).reason).toContain('365 days apart');
    expect(costLadder([]).ok).toBe(false);
    expect(costLadder([a, { ...a, currency: 'CAD' }]).ok).toBe(false);
    expect(costLadder([{ ...a, dated: 'once' }]).ok).toBe(false);
  });
});

describe('matched money', () => {
  const rule: MatchRule = { gives: 1, forEach: 1, cap: usd(1000), token: 1 };
  it.each([
    // own, given to own, cap, token, match: by hand.
    [1000, 1, 1, 1000, 1, 1000, false],
    [1500, 1, 1, 1000, 1, 1000, true],
    [600, 1, 1, 1000, 1, 600, false],
    [600, 2, 1, 1000, 1, 1000, true],
    [501, 1, 2, null, 1, 250, false],
    [1000, 1, 2, null, 200, 400, false],
    [0, 1, 1, null, 1, 0, false],
  ])('%i cents at %i to %i, cap %s, tokens of %i', (own, gives, forEach, cap, token, match, capped) => {
    const result = valueIn(
      matchMoney(usd(own), { gives, forEach, cap: cap === null ? null : usd(cap), token }),
    );
    expect(result.matched.cents).toBe(match);
    expect(result.total.cents).toBe(own + match);
    expect(result.capped).toBe(capped);
    if (token === 1) expect(Math.floor(evaluate(result.working))).toBe(own + match);
  });

  it('reads a match', () => {
    expect(valueIn(readMatch('1 to 1'))).toEqual({ gives: 1, forEach: 1 });
    expect(valueIn(readMatch(' 0.5 TO 1 '))).toEqual({ gives: 0.5, forEach: 1 });
    for (const text of ['double', '1:1', '0 to 1', '1 to 0', '-1 to 1', '1 to 1 to 1'])
      expect(readMatch(text).ok).toBe(false);
  });

  it('refuses rules and money that are none', () => {
    for (const wrong of [{ gives: 0 }, { forEach: 0 }, { token: 0 }, { token: 0.5 }, { gives: Number.NaN }])
      expect(matchMoney(usd(1), { ...rule, ...wrong }).ok).toBe(false);
    expect(matchMoney(usd(-1), rule).ok).toBe(false);
    expect(matchMoney(usd(1), { ...rule, cap: usd(-1) }).ok).toBe(false);
    expect(matchMoney(usd(1), { ...rule, cap: money(1, 'CAD') }).ok).toBe(false);
  });

  it("never gives more than the cap, and never less for more of one's own", () => {
    const cents = fc.integer({ min: 0, max: 100_000 });
    fc.assert(
      fc.property(cents, cents, fc.integer({ min: 1, max: 5 }), cents, (own, more, gives, cap) => {
        const of = (sum: number) =>
          valueIn(matchMoney(usd(sum), { ...rule, gives, cap: usd(cap) })).matched.cents;
        expect(of(own)).toBeLessThanOrEqual(cap);
        expect(of(own + more)).toBeGreaterThanOrEqual(of(own));
      }),
    );
  });

  it('buys whole cups, rounded down', () => {
    const cup = (value: number | null) => ({
      value,
      unit: 'cents' as const,
      working: { formula: 'cup', inputs: [{ name: 'cup', value, unit: 'cents', source: 'lesson' }] },
    });
    const bought = valueIn(cupsFor(usd(2000), cup(68)));
    expect(bought.whole).toBe(29);
    expect(evaluate(bought.working)).toBeCloseTo(29.41, 2);
    expect(valueIn(cupsFor(usd(30), cup(0.1))).whole).toBe(300);
    expect(valueIn(cupsFor(usd(2000), cup(null)))).toMatchObject({ value: null, whole: null });
    expect(cupsFor(usd(1), cup(0)).ok).toBe(false);
    expect(cupsFor(usd(-1), cup(1)).ok).toBe(false);
  });
});

describe('a basket', () => {
  const row = (
    food: string,
    needs: number,
    packageGrams: number,
    cents: number | null,
    more: Partial<BasketRow> = {},
  ) => ({
    food,
    needs,
    onHand: 0,
    packageGrams,
    price: cents === null ? null : usd(cents),
    eligible: true,
    ...more,
  });
  const plan: BasketPlan = { budget: usd(1000), people: 2, days: 7 };
  const oats = row('oats', 700, 500, 299);
  const beans = row('pinto beans, dry', 900, 907, 189);
  const soap = row('soap', 1, 1, 150, { eligible: false });

  it('buys whole packages and carries the rest over', () => {
    const basket = valueIn(fillBasket([oats, beans, soap], plan));
    expect(
      basket.lines.map(({ packages, carriesOver, cost }) => [packages, carriesOver, cost?.cents]),
    ).toEqual([
      [2, 300, 598],
      [1, 7, 189],
      [1, 0, 150],
    ]);
    expect(basket).toMatchObject({
      total: usd(937),
      atLeast: false,
      left: usd(63),
      over: false,
      eligible: usd(787),
    });
    expect(basket.perPersonDay.value).toBeCloseTo(937 / 14, 9);
    expect(evaluate(basket.perPersonDay.working)).toBeCloseTo(937 / 14, 9);
    const next = valueIn(fillBasket([{ ...oats, onHand: 300 }], plan));
    expect(next.lines[0]).toMatchObject({ packages: 1, carriesOver: 100 });
  });

  it('buys nothing that is at home', () => {
    const basket = valueIn(fillBasket([{ ...oats, onHand: 900, price: null, eligible: null }], plan));
    expect(basket).toMatchObject({ total: usd(0), atLeast: false, left: usd(1000), eligible: usd(0) });
    expect(basket.lines[0]).toMatchObject({ packages: 0, carriesOver: 200, cost: null });
    expect(evaluate(basket.perPersonDay.working)).toBe(0);
  });

  it('does not know what is left while a price is not known', () => {
    const basket = valueIn(fillBasket([oats, row('rice', 100, 100, null)], plan));
    expect(basket).toMatchObject({ total: usd(598), atLeast: true, left: null, over: false, eligible: null });
    expect(basket.perPersonDay.value).toBeNull();
    const open = valueIn(fillBasket([row('rice', 100, 100, null, { eligible: false }), oats], plan));
    expect(open.eligible).toEqual(usd(598));
    expect(valueIn(fillBasket([{ ...oats, eligible: null }], plan)).eligible).toBeNull();
    expect(valueIn(fillBasket([row('feast', 1, 1, 5000), row('rice', 1, 1, null)], plan))).toMatchObject({
      over: true,
    });
  });

  it('says by how much it is over', () => {
    expect(valueIn(fillBasket([row('feast', 1, 1, 1250)], plan))).toMatchObject({
      left: usd(-250),
      over: true,
    });
  });

  it.each([
    [[], {}, 'The list is empty.'],
    [[oats], { budget: usd(-1) }, 'A budget of -0.01 is none.'],
    [[oats], { people: 0 }, '0 people cannot eat.'],
    [[oats], { people: 1.5 }, '1.5 people cannot eat.'],
    [[oats], { days: 0 }, '0 days are no time.'],
    [[oats], { days: 0.5 }, '0.5 days are no time.'],
    [[{ ...oats, needs: -1 }], {}, 'The amount of oats is no amount.'],
    [[{ ...oats, onHand: Number.NaN }], {}, 'The amount of oats is no amount.'],
    [[{ ...oats, needs: Number.POSITIVE_INFINITY }], {}, 'The amount of oats is no amount.'],
    [[{ ...oats, packageGrams: 0 }], {}, 'A package of oats holds nothing.'],
    [[{ ...oats, packageGrams: Number.POSITIVE_INFINITY }], {}, 'A package of oats holds nothing.'],
    [[{ ...oats, price: money(1, 'CAD') }], {}, 'The price of oats is in another currency.'],
    [[{ ...oats, price: usd(-1) }], {}, 'The price of oats is below zero.'],
  ] as const)('%#: refused', (rows, more, reason) => {
    expect(refusalOf(fillBasket(rows, { ...plan, ...more })).reason).toBe(reason);
  });

  it('needs enough packages and not one more, in any order', () => {
    const amount = fc.integer({ min: 0, max: 5000 });
    fc.assert(
      fc.property(amount, fc.integer({ min: 1, max: 2000 }), amount, (needs, size, home) => {
        const count = packagesFor(needs, size, home);
        expect(home + count * size).toBeGreaterThanOrEqual(needs);
        if (count > 0) expect(home + (count - 1) * size).toBeLessThan(needs);
        const one = row('a', needs, size, 100);
        const [there, back] = [fillBasket([one, beans], plan), fillBasket([beans, one], plan)].map(valueIn);
        expect(there?.total).toEqual(back?.total);
      }),
    );
    // Three tenths of a gram three times is nine tenths and not a bit more.
    expect(packagesFor(0.3 * 3, 0.9)).toBe(1);
  });

  it('finds other lists that fit', () => {
    const dear = [row('salmon', 500, 500, 900), row('berries', 300, 300, 450), oats];
    const choices = [
      { place: 0, row: row('sardines', 500, 500, 300) },
      { place: 1, row: row('apples', 300, 300, 100) },
      { place: 0, row: beans },
      { place: 2, row: row('oats, large', 700, 1200, 399) },
      { place: 2, row: row('rice', 700, 700, null) },
      { place: 9, row: beans },
    ];
    const answers = valueIn(withinBudget(dear, choices, plan));
    expect(answers.map(({ changes, total }) => [changes.map((one) => one.row.food), total.cents])).toEqual([
      [['sardines', 'apples'], 998],
      [['apples', 'pinto beans, dry'], 887],
    ]);
    const cheap = valueIn(withinBudget([oats], [{ place: 0, row: beans }], plan, 1));
    expect(cheap).toHaveLength(1);
    expect(valueIn(withinBudget(dear, choices, { ...plan, budget: usd(5) }))).toEqual([]);
    expect(valueIn(withinBudget(dear, choices, { ...plan, budget: usd(5000) }))).toHaveLength(3);
    expect(withinBudget([], [], plan).ok).toBe(false);
    expect(withinBudget([row('rice', 1, 1, null)], [], plan).ok).toBe(false);
  });
});
