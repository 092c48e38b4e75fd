import {
  type Condition,
  faultOfFood,
  judge,
  type LabeledFood,
  type LabelNutrient,
  type Limit,
  type LimitBasis,
  type Verdict,
} from './content-limits.js';
import type { Checked } from './published.js';
import { ok, type Result, refuse } from './result.js';

/** Rules beside those of the US. The Codex is a guideline that national rules are derived from. */
export type ClaimRules = 'eu' | 'codex';
/** Solids are judged per 100 g, liquids per 100 mL. */
export type FoodForm = 'solid' | 'liquid';

/** One claim under the EU's or the Codex's rules. */
interface ThresholdClaim {
  readonly claim: string;
  readonly about: LabelNutrient;
  readonly solid: readonly Condition[] | null;
  readonly liquid: readonly Condition[] | null;
  readonly checked: Checked;
  readonly note?: string;
}

const per: Readonly<Record<FoodForm, LimitBasis>> = { solid: '100 g', liquid: '100 mL' };
const limit = (form: FoodForm, is: Limit['is'], value: number, ...of: LabelNutrient[]): Limit => ({
  of,
  is,
  value,
  per: per[form],
});
const most = (of: LabelNutrient, solid: number, liquid: number) => ({
  solid: [limit('solid', 'at most', solid, of)],
  liquid: [limit('liquid', 'at most', liquid, of)],
});
const energyShare = (is: Limit['is'], value: number, ...of: LabelNutrient[]): Limit => ({
  of,
  is,
  value,
  per: 'percent of energy',
});
/** The same on both forms: so much per 100 g, or so much per 100 kcal. */
const fiber = (grams: number, perEnergy: number) => {
  const anyOf: readonly Limit[] = [
    limit('solid', 'at least', grams, 'fiber'),
    { of: ['fiber'], is: 'at least', value: perEnergy, per: '100 kcal' },
  ];
  return { solid: [{ anyOf }], liquid: [{ anyOf }] };
};
const both = (...conditions: Condition[]) => ({ solid: conditions, liquid: conditions });

/** Regulation (EC) 1924/2006, Annex. Low salt is 0.12 g of sodium, which is 0.3 g of salt; a trade page misprints it. */
const EU: readonly ThresholdClaim[] = [
  {
    claim: 'energy free',
    about: 'energy',
    solid: null,
    liquid: [limit('liquid', 'at most', 4, 'energy')],
    checked: 'copies',
  },
  { claim: 'low energy', about: 'energy', ...most('energy', 40, 20), checked: 'copies' },
  {
    claim: 'fat free',
    about: 'fat',
    ...most('fat', 0.5, 0.5),
    checked: 'copies',
    note: '"x% fat free" may not be written',
  },
  {
    claim: 'low fat',
    about: 'fat',
    ...most('fat', 3, 1.5),
    checked: 'copies',
    note: 'semi-skimmed milk may hold 1.8 g per 100 mL',
  },
  {
    claim: 'saturated fat free',
    about: 'saturated fat',
    solid: [limit('solid', 'at most', 0.1, 'saturated fat', 'trans fat')],
    liquid: [limit('liquid', 'at most', 0.1, 'saturated fat', 'trans fat')],
    checked: 'copies',
  },
  {
    claim: 'low saturated fat',
    about: 'saturated fat',
    solid: [
      limit('solid', 'at most', 1.5, 'saturated fat', 'trans fat'),
      energyShare('at most', 10, 'saturated fat', 'trans fat'),
    ],
    liquid: [
      limit('liquid', 'at most', 0.75, 'saturated fat', 'trans fat'),
      energyShare('at most', 10, 'saturated fat', 'trans fat'),
    ],
    checked: 'copies',
  },
  { claim: 'sugar free', about: 'sugars', ...most('sugars', 0.5, 0.5), checked: 'copies' },
  { claim: 'low sugar', about: 'sugars', ...most('sugars', 5, 2.5), checked: 'copies' },
  {
    claim: 'salt free',
    about: 'sodium',
    solid: [limit('solid', 'at most', 5, 'sodium')],
    liquid: null,
    checked: 'copies',
  },
  {
    claim: 'very low salt',
    about: 'sodium',
    ...most('sodium', 40, 40),
    checked: 'copies',
    note: 'not for waters',
  },
  {
    claim: 'low salt',
    about: 'sodium',
    ...most('sodium', 120, 120),
    checked: 'copies',
    note: 'waters differ',
  },
  { claim: 'high fiber', about: 'fiber', ...fiber(6, 3), checked: 'memory' },
  { claim: 'source of fiber', about: 'fiber', ...fiber(3, 1.5), checked: 'memory' },
  {
    claim: 'high protein',
    about: 'protein',
    ...both(energyShare('at least', 20, 'protein')),
    checked: 'memory',
  },
  {
    claim: 'source of protein',
    about: 'protein',
    ...both(energyShare('at least', 12, 'protein')),
    checked: 'memory',
  },
];

/** What the Codex calls low in saturated fat; its claims on cholesterol ask for it too. */
const LOW_SATURATED = {
  solid: [limit('solid', 'at most', 1.5, 'saturated fat'), energyShare('at most', 10, 'saturated fat')],
  liquid: [limit('liquid', 'at most', 0.75, 'saturated fat'), energyShare('at most', 10, 'saturated fat')],
};

/** Codex CXG 23-1997, tables of conditions; sodium, sugar and fiber agree with a national standard made from it. */
const CODEX: readonly ThresholdClaim[] = [
  {
    claim: 'energy free',
    about: 'energy',
    solid: null,
    liquid: [limit('liquid', 'at most', 4, 'energy')],
    checked: 'memory',
  },
  { claim: 'low energy', about: 'energy', ...most('energy', 40, 20), checked: 'memory' },
  { claim: 'fat free', about: 'fat', ...most('fat', 0.5, 0.5), checked: 'memory' },
  { claim: 'low fat', about: 'fat', ...most('fat', 3, 1.5), checked: 'memory' },
  {
    claim: 'saturated fat free',
    about: 'saturated fat',
    ...most('saturated fat', 0.1, 0.1),
    checked: 'memory',
  },
  {
    claim: 'low saturated fat',
    about: 'saturated fat',
    ...LOW_SATURATED,
    checked: 'memory',
  },
  {
    claim: 'cholesterol free',
    about: 'cholesterol',
    solid: [limit('solid', 'at most', 5, 'cholesterol'), ...LOW_SATURATED.solid],
    liquid: [limit('liquid', 'at most', 5, 'cholesterol'), ...LOW_SATURATED.liquid],
    checked: 'memory',
  },
  {
    claim: 'low cholesterol',
    about: 'cholesterol',
    solid: [limit('solid', 'at most', 20, 'cholesterol'), ...LOW_SATURATED.solid],
    liquid: [limit('liquid', 'at most', 10, 'cholesterol'), ...LOW_SATURATED.liquid],
    checked: 'memory',
  },
  { claim: 'sugar free', about: 'sugars', ...most('sugars', 0.5, 0.5), checked: 'copies' },
  {
    claim: 'sodium free',
    about: 'sodium',
    solid: [limit('solid', 'at most', 5, 'sodium')],
    liquid: null,
    checked: 'copies',
  },
  {
    claim: 'very low sodium',
    about: 'sodium',
    solid: [limit('solid', 'at most', 40, 'sodium')],
    liquid: null,
    checked: 'copies',
  },
  {
    claim: 'low sodium',
    about: 'sodium',
    solid: [limit('solid', 'at most', 120, 'sodium')],
    liquid: null,
    checked: 'copies',
  },
  { claim: 'high fiber', about: 'fiber', ...fiber(6, 3), checked: 'copies' },
  { claim: 'source of fiber', about: 'fiber', ...fiber(3, 1.5), checked: 'copies' },
];

const TABLES: Readonly<
  Record<ClaimRules, { readonly source: string; readonly rows: readonly ThresholdClaim[] }>
> = {
  eu: { source: 'Regulation (EC) 1924/2006, Annex', rows: EU },
  codex: { source: 'Codex CXG 23-1997', rows: CODEX },
};

/** The names of the claims of a set of rules; those on one nutrient stand strongest first. */
export function thresholdClaimNames(rules: ClaimRules): readonly string[] {
  return TABLES[rules].rows.map(({ claim }) => claim);
}

/**
 * Whether the EU's rules or the Codex let a food carry a claim, on unrounded amounts per 100 g or per 100 mL. Sodium
 * counts in mg; the EU prints salt, which is sodium × 2.5. Refuses claims that are not in the table, among them
 * those on vitamins and minerals, for which no reference values of the EU or the Codex are held here.
 */
export function thresholdClaim(
  rules: ClaimRules,
  claim: string,
  food: LabeledFood,
  form: FoodForm,
): Result<Verdict> {
  const { source, rows } = TABLES[rules];
  const row = rows.find((one) => one.claim === claim);
  if (row === undefined) {
    return refuse(
      `No limits of "${claim}" are held here.`,
      'Claims on vitamins and minerals need reference values that this table does not hold.',
      rows.map((one) => one.claim).slice(0, 5),
    );
  }
  const fault = faultOfFood(food);
  if (fault !== null) return fault;
  const conditions = row[form];
  if (conditions === null)
    return refuse(`No limits of "${claim}" for a ${form} are held here.`, 'Make no claim.');
  return ok({
    claim,
    ...judge(food, conditions),
    source,
    checked: row.checked,
    ...(row.note === undefined ? {} : { note: row.note }),
  });
}

/** The strongest claim on a nutrient that the rules are known to allow; `null` when there is none. */
export function strongestThresholdClaim(
  rules: ClaimRules,
  about: LabelNutrient,
  food: LabeledFood,
  form: FoodForm,
): Result<Verdict | null> {
  for (const row of TABLES[rules].rows.filter((one) => one.about === about && one[form] !== null)) {
    const verdict = thresholdClaim(rules, row.claim, food, form);
    if (!verdict.ok) return verdict;
    if (verdict.value.allowed === 'yes') return verdict;
  }
  return ok(null);
}

/** Least reduction in percent for a comparing claim: the EU asks 30, of sodium 25 (from memory); the Codex asks 25. */
export function leastReduction(rules: ClaimRules, about: LabelNutrient): number {
  return rules === 'eu' && about !== 'sodium' ? 30 : 25;
}
