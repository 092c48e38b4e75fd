import { allHold, faultOfFood, judge, type LabeledFood, type Limit, type Verdict } from './content-limits.js';
import { DAILY_VALUES } from './daily-values.js';
import type { Contains } from './food.js';
import type { Checked, Published } from './published.js';
import { ok, type Result, refuse } from './result.js';

/** The days of the rule on the word "healthy": 89 FR 106064, and 90 FR 10592, which put it off. */
export const HEALTHY_DATES = {
  published: '2024-12-27',
  firstEffective: '2025-02-25',
  effective: '2025-04-28',
  compliance: '2028-02-25',
} as const;

/** Which test a label with the word has to pass. */
export type HealthyTest = 'old test' | 'old or new test' | 'new test';

/** Which test holds on a day written as `2027-03-01`. Refuses what is no day. */
export function healthyTestOn(day: string): Result<HealthyTest> {
  if (!/^\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\d|3[01])$/.test(day)) {
    return refuse(`"${day}" is no day.`, 'Write it as 2027-03-01.');
  }
  if (day < HEALTHY_DATES.effective) return ok('old test');
  return ok(day < HEALTHY_DATES.compliance ? 'old or new test' : 'new test');
}

/** Limits of one kind of food, in percent of the Daily Value per reference amount. */
export interface HealthyRow extends Published {
  readonly addedSugars: number;
  readonly sodium: number;
  readonly saturatedFat: number;
  /** How much of a food group one reference amount must hold; `null` where the rule asks in another way. */
  readonly holds: string | null;
}

const SOURCE = '21 CFR 101.65(d), 89 FR 106064';
const row = (
  checked: Checked,
  addedSugars: number,
  sodium: number,
  saturatedFat: number,
  holds: string | null,
  note?: string,
): HealthyRow => ({
  addedSugars,
  sodium,
  saturatedFat,
  holds,
  source: SOURCE,
  checked,
  ...(note === undefined ? {} : { note }),
});

/**
 * The limits. Only the row of mixed products was read in copies; the limits of the others are from memory, and
 * those of main dishes and meals are unsettled. Oils have limits by kind of product and are left out.
 */
export const HEALTHY_ROWS = {
  'mixed product': row('copies', 10, 15, 10, null, 'one food group equivalent over at least two groups'),
  fruit: row('memory', 2, 10, 5, '1/2 cup'),
  vegetable: row('memory', 2, 10, 5, '1/2 cup'),
  grain: row('memory', 10, 10, 5, '3/4 oz of whole grain', 'the amount of whole grain was read in copies'),
  dairy: row('memory', 5, 10, 10, '2/3 cup', 'the amount was read in copies; the proposal had 3/4 cup'),
  'game meat': row('memory', 2, 10, 10, '1 1/2 oz'),
  seafood: row('memory', 2, 10, 10, '1 oz'),
  egg: row('memory', 2, 10, 10, '1 egg'),
  'beans, peas and lentils': row('memory', 2, 10, 5, '1 oz'),
  'nuts, seeds and soy': row(
    'memory',
    2,
    10,
    5,
    '1 oz',
    "the nuts' and seeds' own saturated fat is not counted",
  ),
  'main dish': row('unsettled', 15, 20, 15, null),
  meal: row('unsettled', 20, 30, 20, null),
} as const satisfies Readonly<Record<string, HealthyRow>>;
export type HealthyKind = keyof typeof HEALTHY_ROWS;

/**
 * Whether a food stays within the new limits of the word "healthy" per reference amount and holds enough of its food
 * group, which `holdsGroup` answers. For nuts and seeds give the saturated fat without their own. Refuses unsettled rows, which have to be
 * read again in the rule first, and numbers below zero.
 */
export function healthyByNewTest(
  kind: HealthyKind,
  food: LabeledFood,
  holdsGroup: Contains,
): Result<Verdict> {
  const limits: HealthyRow = HEALTHY_ROWS[kind];
  if (limits.checked === 'unsettled') {
    return refuse(
      `The limits of "healthy" for a ${kind} are not settled here.`,
      'Read them in 21 CFR 101.65(d), and make no claim until then.',
    );
  }
  const fault = faultOfFood(food);
  if (fault !== null) return fault;
  const { allowed, findings } = judge(food, [
    atMost('added sugars', limits.addedSugars),
    atMost('sodium', limits.sodium),
    atMost('saturated fat', limits.saturatedFat),
  ]);
  return ok({
    claim: 'healthy',
    allowed: allHold([allowed, holdsGroup]),
    findings,
    source: limits.source,
    checked: limits.checked,
    ...(limits.note === undefined ? {} : { note: limits.note }),
  });
}

function atMost(of: 'added sugars' | 'sodium' | 'saturated fat', percent: number): Limit {
  const value = (percent * DAILY_VALUES[of].value) / 100;
  return { of: [of], is: 'at most', value, per: 'reference amount' };
}
