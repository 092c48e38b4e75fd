import type { Food, FoodState, NutrientName } from './food.js';
import { isPackage } from './measure-words.js';
import { type NutrientUnit, nutrientIn } from './nutrient.js';
import { gramsOf, type Portion } from './portion.js';
import { ok, type Refusal, type Result, refuse } from './result.js';
import { nearWords } from './spelling.js';
import { isMassUnit, type Kitchen } from './units.js';
import type { Worked } from './working.js';
import { parseAmount, type WrittenAmount } from './written-amount.js';

/** The states a basis can name; `not said` when it names none. */
export type BasisState =
  | 'ready to eat'
  | 'with liquid'
  | 'drained'
  | 'drained and rinsed'
  | 'raw'
  | 'dry'
  | 'cooked'
  | 'not said';

/** The one amount and state that all compared foods stand on. */
export interface Basis {
  /** As the author wrote it, without white space around it. */
  readonly words: string;
  readonly amount: WrittenAmount;
  /** Per volume, per weight, per package and per piece answer different questions. */
  readonly per: 'volume' | 'weight' | 'package' | 'piece';
  readonly state: BasisState;
}

/** Words for each state, each with the foods that are in it. */
const STATES: Readonly<
  Record<Exclude<BasisState, 'not said'>, { words: readonly string[]; foods: readonly FoodState[] }>
> = {
  'ready to eat': {
    words: ['ready to eat', 'ready-to-eat', 'as eaten'],
    foods: [
      'ready to eat',
      'raw',
      'cooked',
      'frozen, cooked',
      'canned, drained',
      'canned, drained and rinsed',
    ],
  },
  'with liquid': {
    words: [
      'with liquid',
      'with its liquid',
      'with the liquid',
      'solids and liquid',
      'solids and liquids',
      'undrained',
    ],
    foods: ['canned, with liquid'],
  },
  drained: { words: ['drained'], foods: ['canned, drained'] },
  'drained and rinsed': {
    words: ['drained and rinsed', 'drained, rinsed', 'rinsed'],
    foods: ['canned, drained and rinsed'],
  },
  raw: { words: ['raw'], foods: ['raw'] },
  dry: { words: ['dry', 'dried', 'uncooked'], foods: ['dry'] },
  cooked: { words: ['cooked'], foods: ['cooked', 'frozen, cooked'] },
};

/** Raw foods of these kinds are not eaten as they are. */
const COOK_FIRST = ['meat', 'fish', 'shellfish', 'egg'] as const;

/**
 * Reads a basis such as `1 cup, ready to eat`, `1/2 cup`, `100 g`, `1 can (15 oz)` or `1/2 cup, with liquid`.
 * Refuses a basis without an amount, a bare count, and words it does not know. A package without a size
 * (`1 can`) is the one that the food table weighs; `formsOnBasis` sees that all rows mean the same one.
 */
export function parseBasis(text: string): Result<Basis> {
  const words = text.trim();
  const read = parseAmount(words);
  if (!read.ok) return read;
  const { amount, rest } = read.value;
  if (amount === null || amount.measure === null) {
    return refuse(`The basis "${words}" has no measure.`, 'Write one such as 1 cup, ready to eat, or 100 g.');
  }
  const state = readState(rest.replace(/^,\s*/, ''));
  if (typeof state !== 'string') return state;
  return ok({ words, amount, per: perOf(amount), state });
}

/**
 * What the basis weighs for one food. Refused when the food is not in the state that the basis names: a
 * canned food with its liquid is a label row and never ready to eat; dry and unprepared foods, and raw
 * meat, fish or egg, are not either. Refused, too, when the food lacks the measure.
 */
export function portionOnBasis(food: Food, basis: Basis, kitchen: Kitchen = 'us exact'): Result<Portion> {
  return wrongState(food, basis.state) ?? gramsOf(basis.amount, food, kitchen);
}

/** What one food holds of a nutrient on the basis, with its portion. */
export function valueOnBasis<N extends NutrientName>(
  food: Food,
  nutrient: N,
  basis: Basis,
  kitchen: Kitchen = 'us exact',
): Result<{ readonly portion: Portion; readonly worked: Worked<NutrientUnit<N>> }> {
  const portion = portionOnBasis(food, basis, kitchen);
  if (!portion.ok) return portion;
  return ok({ portion: portion.value, worked: nutrientIn(food, nutrient, portion.value) });
}

/** One form of a food on the basis, or why it cannot stand beside the others. */
export interface FormOnBasis<N extends NutrientName> {
  readonly food: Food;
  /** A canned food with its liquid: what a label says, not what is eaten. */
  readonly labelRow: boolean;
  readonly value: Result<{ readonly portion: Portion; readonly worked: Worked<NutrientUnit<N>> }>;
}

/**
 * Several forms on one basis, in the order given. When the basis is a package without a size, a row whose
 * package has another name in the food table than the first row's is refused: `can` is not `can (8 oz)`.
 */
export function formsOnBasis<N extends NutrientName>(
  foods: readonly Food[],
  nutrient: N,
  basis: Basis,
  kitchen: Kitchen = 'us exact',
): readonly FormOnBasis<N>[] {
  let first: string | null = null;
  return foods.map((food) => {
    const value = valueOnBasis(food, nutrient, basis, kitchen);
    const labelRow = food.state === 'canned, with liquid';
    if (!value.ok || basis.per !== 'package' || basis.amount.size !== null) return { food, labelRow, value };
    const { measure } = value.value.portion;
    first ??= measure;
    return { food, labelRow, value: measure === first ? value : otherPackage(food, measure, first) };
  });
}

function otherPackage(food: Food, measure: string | null, first: string | null): Refusal {
  return refuse(
    `${food.name} is weighed by the ${measure} and the rows before it by the ${first}.`,
    'Write the size in the basis, or compare per cup or per weight.',
  );
}

function perOf(amount: WrittenAmount): Basis['per'] {
  if (amount.unit !== null) return isMassUnit(amount.unit) ? 'weight' : 'volume';
  return isPackage(amount.measure) ? 'package' : 'piece';
}

function readState(words: string): BasisState | Refusal {
  const wanted = words.toLowerCase().replace(/\s+/g, ' ');
  if (wanted === '') return 'not said';
  for (const state of stateNames()) {
    if (STATES[state].words.includes(wanted)) return state;
  }
  const near = nearWords(wanted, stateNames());
  return refuse(
    `The basis ends in "${words}", which is no state of a food.`,
    'Write a state such as ready to eat, with liquid, drained, drained and rinsed, raw, dry or cooked; foods go in the rows.',
    near,
  );
}

function stateNames(): Exclude<BasisState, 'not said'>[] {
  return Object.keys(STATES) as Exclude<BasisState, 'not said'>[];
}

function wrongState(food: Food, state: BasisState): Refusal | null {
  if (state === 'not said') return null;
  if (!STATES[state].foods.includes(food.state)) {
    return refuse(
      `${food.name} is "${food.state}" and the basis is "${state}".`,
      food.state === 'canned, with liquid'
        ? 'What a label says with the liquid is not what is eaten: take the drained form, or leave the state out of the basis.'
        : 'Take a form of the food in that state, or leave the state out of the basis.',
    );
  }
  if (state !== 'ready to eat' || food.state !== 'raw') return null;
  const cookFirst = COOK_FIRST.find((content) => food.contains[content] !== 'no');
  if (cookFirst === undefined) return null;
  return refuse(
    food.contains[cookFirst] === 'yes'
      ? `${food.name} is raw and has ${cookFirst} in it: it is not ready to eat.`
      : `${food.name} is raw and may have ${cookFirst} in it, which is not known: it is not ready to eat.`,
    'Take the cooked form.',
  );
}
