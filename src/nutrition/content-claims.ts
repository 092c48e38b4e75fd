import {
  type Condition,
  faultOfFood,
  judge,
  type LabeledFood,
  type LabelNutrient,
  type LimitBasis,
  type Verdict,
} from './content-limits.js';
import type { Checked } from './published.js';
import { ok, type Result, refuse } from './result.js';

/** Meals and main dishes have limits of their own. */
export type DishKind = 'food' | 'meal';

/** One content claim of US labels on what a food has little or none of. */
interface ContentClaim {
  /** What the claim is about; `lean` words are about meat, fish and game. */
  readonly about: LabelNutrient | 'meat';
  readonly rule: string;
  readonly food: readonly Condition[];
  /** `null` where the limits of meals are not recorded here. */
  readonly meal: readonly Condition[] | null;
  /** The food's limits were read in copies of an FDA guide, unless named; those of meals follow `meals`. */
  readonly checked: Checked;
  readonly meals: Checked;
  readonly note?: string;
}

const REFERENCE = 'reference amount';
const SERVING = 'labeled serving';
const SMALL = '50 g if the reference amount is small';

const under = (of: LabelNutrient, value: number, ...bases: LimitBasis[]): Condition[] =>
  bases.map((per) => ({ of: [of], is: 'under', value, per }));
const most = (of: LabelNutrient, value: number, ...bases: LimitBasis[]): Condition[] =>
  bases.map((per) => ({ of: [of], is: 'at most', value, per }));
const free = (of: LabelNutrient, value: number) => ({
  food: under(of, value, REFERENCE, SERVING),
  meal: under(of, value, SERVING),
});
const low = (of: LabelNutrient, value: number, meal: number) => ({
  food: most(of, value, REFERENCE, SMALL),
  meal: most(of, meal, '100 g'),
});
const LEAN_BASES = [REFERENCE, '100 g'] as const;
const read = { checked: 'copies', meals: 'copies' } as const;
/** The limits of meals on "free" words are from memory. */
const readFood = { checked: 'copies', meals: 'memory' } as const;

/**
 * The claims, strongest first within what they are about. The limit per 50 g of small reference amounts stands
 * where the rule has it: the one on low saturated fat does not.
 */
const CLAIMS = {
  'calorie free': { about: 'energy', rule: '101.60(b)(1)', ...free('energy', 5), ...readFood },
  'low calorie': { about: 'energy', rule: '101.60(b)(2)', ...low('energy', 40, 120), ...read },
  'fat free': { about: 'fat', rule: '101.62(b)(1)', ...free('fat', 0.5), ...readFood },
  'low fat': {
    about: 'fat',
    rule: '101.62(b)(2)',
    food: low('fat', 3, 3).food,
    meal: [...low('fat', 3, 3).meal, ...most('fat', 30, 'percent of energy')],
    ...read,
  },
  'saturated fat free': {
    about: 'saturated fat',
    rule: '101.62(c)(1)',
    food: [...free('saturated fat', 0.5).food, ...free('trans fat', 0.5).food],
    meal: [...free('saturated fat', 0.5).meal, ...free('trans fat', 0.5).meal],
    ...readFood,
  },
  'low saturated fat': {
    about: 'saturated fat',
    rule: '101.62(c)(2)',
    food: [...most('saturated fat', 1, REFERENCE), ...most('saturated fat', 15, 'percent of energy')],
    meal: [...most('saturated fat', 1, '100 g'), ...under('saturated fat', 10, 'percent of energy')],
    ...read,
  },
  'cholesterol free': {
    about: 'cholesterol',
    rule: '101.62(d)(1)',
    food: [...free('cholesterol', 2).food, ...most('saturated fat', 2, REFERENCE)],
    meal: [...free('cholesterol', 2).meal, ...most('saturated fat', 2, SERVING)],
    ...readFood,
    note: 'a food with more than 13 g of fat must state its total fat beside the claim',
  },
  'low cholesterol': {
    about: 'cholesterol',
    rule: '101.62(d)(2)',
    food: [...low('cholesterol', 20, 20).food, ...most('saturated fat', 2, REFERENCE, SMALL)],
    meal: [...low('cholesterol', 20, 20).meal, ...most('saturated fat', 2, '100 g')],
    ...readFood,
    note: 'a food with more than 13 g of fat must state its total fat beside the claim',
  },
  'sodium free': {
    about: 'sodium',
    rule: '101.61(b)(1)',
    ...free('sodium', 5),
    ...readFood,
    note: 'an ingredient that is salt or is known to hold sodium needs a footnote',
  },
  'very low sodium': {
    about: 'sodium',
    rule: '101.61(b)(2)',
    ...low('sodium', 35, 35),
    ...readFood,
  },
  'low sodium': { about: 'sodium', rule: '101.61(b)(4)', ...low('sodium', 140, 140), ...read },
  'sugar free': {
    about: 'sugars',
    rule: '101.60(c)(1)',
    ...free('sugars', 0.5),
    ...readFood,
    note: 'say beside it when the food is not low or reduced in calories',
  },
  'extra lean': {
    about: 'meat',
    rule: '101.62(e)(3)',
    food: [
      ...under('fat', 5, ...LEAN_BASES),
      ...under('saturated fat', 2, ...LEAN_BASES),
      ...under('cholesterol', 95, ...LEAN_BASES),
    ],
    meal: null,
    checked: 'memory',
    meals: 'memory',
  },
  lean: {
    about: 'meat',
    rule: '101.62(e)(1)',
    food: [
      ...under('fat', 10, ...LEAN_BASES),
      ...most('saturated fat', 4.5, ...LEAN_BASES),
      ...under('cholesterol', 95, ...LEAN_BASES),
    ],
    meal: null,
    checked: 'memory',
    meals: 'memory',
    note: 'an older copy prints 4 g of saturated fat',
  },
} as const satisfies Readonly<Record<string, ContentClaim>>;
export type ContentClaimName = keyof typeof CLAIMS;

/** The names of the claims; those on one nutrient stand strongest first. */
export const CONTENT_CLAIMS = Object.keys(CLAIMS) as readonly ContentClaimName[];

/**
 * Whether a US label may carry the claim, judged on unrounded amounts per reference amount (and per labeled serving
 * or per 50 g where the rule says so), for meals and main dishes per 100 g or per labeled serving. What is not
 * known never passes as low. Source: 21 CFR 101.60 to 101.62 as FDA guides restate them; `checked` says what rests
 * on memory. Refuses numbers below zero and a meal where no limit is recorded.
 */
export function usClaim(
  claim: ContentClaimName,
  food: LabeledFood,
  kind: DishKind = 'food',
): Result<Verdict> {
  const fault = faultOfFood(food);
  if (fault !== null) return fault;
  const row: ContentClaim = CLAIMS[claim];
  const conditions = row[kind];
  if (conditions === null) {
    return refuse(
      `No limits of "${claim}" for a meal are recorded.`,
      'Leave the claim out, or judge one food.',
    );
  }
  return ok({
    claim,
    ...judge(food, conditions),
    source: `21 CFR ${row.rule}`,
    checked: kind === 'food' ? row.checked : row.meals,
    ...(row.note === undefined ? {} : { note: row.note }),
  });
}

/** The strongest claim that a food may carry on one nutrient. */
export interface StrongestClaim {
  /** The claim's verdict; `null` when no claim is known to be allowed. */
  readonly verdict: Verdict | null;
  /** True when a stronger claim, or any claim at all, could not be ruled out because an amount is not known. */
  readonly open: boolean;
}

/** The strongest claim on a nutrient that the rules allow: free before very low before low. */
export function strongestUsClaim(
  about: LabelNutrient,
  food: LabeledFood,
  kind: DishKind = 'food',
): Result<StrongestClaim> {
  let open = false;
  for (const claim of CONTENT_CLAIMS.filter((name) => CLAIMS[name].about === about)) {
    const verdict = usClaim(claim, food, kind);
    if (!verdict.ok) return verdict;
    if (verdict.value.allowed === 'yes') return ok({ verdict: verdict.value, open });
    open ||= verdict.value.allowed === 'unknown';
  }
  return ok({ verdict: null, open });
}
