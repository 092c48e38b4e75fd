import type { Contains } from './food.js';
import type { Published } from './published.js';
import { type Refusal, refuse } from './result.js';
import { FROM_LESSON, type Input, input, nameInputs, type Working } from './working.js';

/** What rules of labels set limits for, with the unit of its amounts. */
export const LABEL_NUTRIENTS = {
  energy: 'kcal',
  fat: 'g',
  'saturated fat': 'g',
  'trans fat': 'g',
  cholesterol: 'mg',
  sodium: 'mg',
  sugars: 'g',
  'added sugars': 'g',
  fiber: 'g',
  protein: 'g',
} as const;
export type LabelNutrient = keyof typeof LABEL_NUTRIENTS;

/** A food as the rules look at it. Amounts are never the rounded ones of a label. */
export interface LabeledFood {
  /** Weight in g that `amounts` belong to; above zero. */
  readonly grams: number;
  /** Volume of that weight in mL, for limits per 100 mL; above zero. */
  readonly milliliters?: number;
  /** Unrounded amounts in that weight, zero or more; `null` and what is left out are not known. */
  readonly amounts: Readonly<Partial<Record<LabelNutrient, number | null>>>;
  /** The reference amount in g, and whether the rules call it small: 30 g or 2 tablespoons, or less. */
  readonly reference?: { readonly grams: number; readonly small: boolean };
  /** The labeled serving in g. */
  readonly servingGrams?: number;
}

/** What a limit is counted on. */
export type LimitBasis =
  | 'reference amount'
  | 'labeled serving'
  | '50 g if the reference amount is small'
  | '100 g'
  | '100 mL'
  | '100 kcal'
  | 'percent of energy';

/** One limit on the sum of `of`, in the unit of its nutrients, or in percent for a share of the energy. */
export interface Limit {
  readonly of: readonly LabelNutrient[];
  readonly is: 'under' | 'at most' | 'at least';
  readonly value: number;
  readonly per: LimitBasis;
}

/** A limit, or several of which one is enough. */
export type Condition = Limit | { readonly anyOf: readonly Limit[] };

/** How a food stands to one limit. */
export interface Finding {
  readonly limit: Limit;
  /** The unrounded amount on the basis of the limit; `null` when it is not known. */
  readonly actual: number | null;
  readonly holds: Contains;
  readonly working: Working;
}

/** Whether a rule lets a food carry a claim. `unknown` is a value and never passes as `yes`. */
export interface Verdict extends Published {
  readonly claim: string;
  readonly allowed: Contains;
  readonly findings: readonly Finding[];
}

/** What a gram gives when a rule asks for a share of the energy, in kcal; such rules ask for fats and protein only. */
const ENERGY_PER_GRAM = { protein: 4, fat: 9 } as const;
/** Share by which two numbers may differ and still count as the same: the noise of binary fractions. */
const NOISE = 1e-9;

/** What is wrong with the numbers of a food, or `null`: weights must be above zero, amounts zero or more. */
export function faultOfFood(food: LabeledFood): Refusal | null {
  const weights = [food.grams, food.milliliters, food.reference?.grams, food.servingGrams];
  const weight = weights.find((one) => one !== undefined && !(one > 0 && Number.isFinite(one)));
  if (weight !== undefined) {
    return refuse(
      `A weight or volume of ${weight} is not above zero.`,
      'Write the weight that was measured.',
    );
  }
  const bad = Object.entries(food.amounts).find(
    ([, amount]) => amount !== null && !(amount >= 0 && Number.isFinite(amount)),
  );
  return bad === undefined
    ? null
    : refuse(`An amount of ${bad[1]} for ${bad[0]} is below zero.`, 'Leave out what is not known.');
}

/** Holds a food against the conditions of a claim. All must hold; of `anyOf` one is enough. */
export function judge(
  food: LabeledFood,
  conditions: readonly Condition[],
): { readonly allowed: Contains; readonly findings: readonly Finding[] } {
  const groups = conditions
    .map((condition) => ('anyOf' in condition ? condition.anyOf : [condition]))
    .map((limits) => limits.filter((limit) => applies(food, limit)).map((limit) => find(food, limit)))
    .filter((findings) => findings.length > 0);
  return {
    allowed: allHold(groups.map((group) => some(group.map(({ holds }) => holds)))),
    findings: groups.flat(),
  };
}

/** The limit per 50 g is for small reference amounts; whether one is small must be known to leave it out. */
function applies(food: LabeledFood, { per }: Limit): boolean {
  return per !== '50 g if the reference amount is small' || food.reference?.small !== false;
}

/** `yes` when all are, `no` when one is no, else not known. */
export function allHold(answers: readonly Contains[]): Contains {
  if (answers.includes('no')) return 'no';
  return answers.includes('unknown') ? 'unknown' : 'yes';
}

function some(answers: readonly Contains[]): Contains {
  if (answers.includes('yes')) return 'yes';
  return answers.includes('unknown') ? 'unknown' : 'no';
}

/** One side of a comparison: sum of the parts × `times`, against limit × `on`. */
interface Sides {
  readonly times: number;
  readonly on: number | null;
  readonly formula: (sum: string) => string;
  readonly inputs: readonly Input[];
}

function find(food: LabeledFood, limit: Limit): Finding {
  const parts = limit.of.map((name) => ({ name, amount: food.amounts[name] ?? null }));
  const named = nameInputs(parts, ({ name }) => name);
  const sides = sidesOf(food, limit);
  const sum = named.map(({ name }) => name).join(' + ');
  const known = parts.reduce((so, { amount }) => so + (amount ?? 0), 0);
  const missing = parts.some(({ amount }) => amount === null);
  const exact = missing || sides.on === null || sides.on === 0 ? null : (known * sides.times) / sides.on;
  return {
    limit,
    actual: exact,
    holds: holdsFor(limit, known * sides.times, sides.on, missing),
    working: {
      formula: sides.formula(named.length === 1 ? sum : `(${sum})`),
      inputs: [
        ...named.map(({ name, item }) => input(name, item.amount, LABEL_NUTRIENTS[item.name], FROM_LESSON)),
        ...sides.inputs,
      ],
    },
  };
}

function holdsFor(limit: Limit, side: number, on: number | null, missing: boolean): Contains {
  if (on === null) return 'unknown';
  const bound = limit.value * on;
  const noise = NOISE * Math.max(Math.abs(side), Math.abs(bound));
  if (limit.is === 'at least') {
    if (on > 0 && side >= bound - noise) return 'yes';
    return missing ? 'unknown' : 'no';
  }
  const within = limit.is === 'under' ? side < bound - noise : side <= bound + noise;
  if (!within) return 'no';
  return missing ? 'unknown' : 'yes';
}

function sidesOf(food: LabeledFood, { of, per }: Limit): Sides {
  switch (per) {
    case 'reference amount':
      return byWeight(food, food.reference?.grams, per);
    case 'labeled serving':
      return byWeight(food, food.servingGrams, per);
    case '50 g if the reference amount is small':
      return byWeight(food, food.reference === undefined ? undefined : 50, '50 g');
    case '100 g':
      return byWeight(food, 100, per);
    case '100 mL':
      return {
        times: 100,
        on: food.milliliters ?? null,
        formula: (sum) => `${sum} * 100 / milliliters`,
        inputs: [input('milliliters', food.milliliters ?? null, 'mL', FROM_LESSON)],
      };
    case '100 kcal':
      return byEnergy(food, 1, (sum) => `${sum} * 100 / energy`);
    case 'percent of energy': {
      const each = of.includes('protein') ? ENERGY_PER_GRAM.protein : ENERGY_PER_GRAM.fat;
      return byEnergy(food, each, (sum) => `${sum} * ${each} * 100 / energy`);
    }
  }
}

/** Amounts that already belong to the weight asked for are taken as they stand, without noise. */
function byWeight(food: LabeledFood, weight: number | undefined, note: string): Sides {
  return {
    times: weight ?? 1,
    on: weight === undefined ? null : food.grams,
    formula: (sum) => `${sum} * per / grams`,
    inputs: [
      input('per', weight ?? null, 'g', FROM_LESSON, note),
      input('grams', food.grams, 'g', FROM_LESSON),
    ],
  };
}

function byEnergy(food: LabeledFood, each: number, formula: Sides['formula']): Sides {
  const energy = food.amounts.energy ?? null;
  return {
    times: each * 100,
    on: energy,
    formula,
    inputs: [input('energy', energy, 'kcal', FROM_LESSON)],
  };
}
