import { DAILY_VALUES, type DailyValueName } from './daily-values.js';
import type { Food } from './food.js';
import { type NeedSettings, passesAll, type Testable, testNeeds } from './need-testing.js';
import { NEEDS, type NeedName } from './needs.js';
import type { Unit } from './quantity.js';
import type { Reckoned } from './reckoned.js';
import { ok, type Result, refuse } from './result.js';
import { combine, type Worked } from './working.js';

/** A swap that may be printed, with what has to stand beside it. */
export interface Swap {
  /** Conditions of the new food (`the oats are labeled gluten-free`), one sentence each. A page prints all of them. */
  readonly conditions: readonly string[];
  /** Lines of every need in force, each once. */
  readonly notes: readonly string[];
}

/**
 * Judges a swap by every need in force, not only by the one that it was made for: a nut-free and dairy-free table gets no
 * almond drink. Refused when the new food breaks a need, or when it is not known whether it does; with the foods of
 * `others` that pass, nearest first. Without a need, nothing is refused.
 */
export function judgeSwap(
  to: Testable & Pick<Food, 'plate'>,
  needs: readonly NeedName[],
  settings: NeedSettings,
  others: readonly (Testable & Pick<Food, 'plate'>)[] = [],
): Result<Swap> {
  const verdicts = testNeeds(to, needs, settings);
  const bad = verdicts.filter(({ verdict }) => verdict === 'breaks' || verdict === 'not known');
  if (bad.length > 0) {
    const reasons = bad.map(
      ({ need, findings }) =>
        `${need}: ${findings.flatMap(({ kind, reason }) => (kind === 'only if' ? [] : [reason])).join(' ')}`,
    );
    return refuse(
      `${to.name} cannot be the swap. ${reasons.join(' ')}`,
      'Choose a food that fits every need in force.',
      nearestPassing(to, others, needs, settings).map(({ name }) => name),
    );
  }
  return ok({
    conditions: [...new Set(verdicts.flatMap(({ findings }) => findings.map(({ reason }) => reason)))],
    notes: [...new Set(needs.flatMap((need) => NEEDS[need].notes))],
  });
}

/**
 * Foods that pass every need, of the same plate kind as a food, nearest first: by the difference in protein per 100 g,
 * then by name. A food whose protein is not known comes last.
 */
export function nearestPassing<F extends Testable & Pick<Food, 'plate'>>(
  to: Testable & Pick<Food, 'plate'>,
  others: readonly F[],
  needs: readonly NeedName[],
  settings: NeedSettings,
  most = 3,
): readonly F[] {
  const far = (food: F) => {
    const [one, other] = [food.per100g.protein, to.per100g.protein];
    return one === null || other === null ? Number.POSITIVE_INFINITY : Math.abs(one - other);
  };
  return others
    .filter((food) => food.name !== to.name && food.plate.some((kind) => to.plate.includes(kind)))
    .filter((food) => passesAll(food, needs, { coconut: settings.coconut }))
    .map((food) => ({ food, off: far(food) }))
    .sort((a, b) => (a.off === b.off ? (a.food.name < b.food.name ? -1 : 1) : a.off - b.off))
    .slice(0, most)
    .map(({ food }) => food);
}

/** What a swap changes: `after - before`, below zero for less. Not known when either is not known in full. */
export function swapChange<U extends Unit>(before: Worked<U>, after: Worked<NoInfer<U>>): Reckoned<U> {
  const [a, b] = [before.quantity, after.quantity];
  if (a.unit !== b.unit) throw new Error(`${a.unit} and ${b.unit} cannot be set against each other.`);
  const open = a.value === null || b.value === null || a.atLeast || b.atLeast;
  return {
    value: open ? null : b.value - a.value,
    unit: a.unit,
    working: combine('after - before', [
      { name: 'after', item: after.working },
      { name: 'before', item: before.working },
    ]),
  };
}

/** A nutrient counts as given from this percent of the daily value up, and as lost below this share of what was. House rules. */
export const GAVE_PERCENT = 10;
export const LOST_BELOW = 0.5;

/**
 * Whether a swap loses a nutrient: the old food gave 10 percent of the daily value or more, and the new one gives less
 * than half of what the old one gave. `null` where it cannot be told because a value is not known in full; an old food
 * that surely gave too little loses nothing, whatever the new one holds. Less sodium, fat, cholesterol, carbohydrate or
 * added sugars is no loss.
 */
export function isLost(before: Worked, after: Worked, nutrient: DailyValueName): boolean | null {
  if (LESS_IS_NO_LOSS.has(nutrient)) return false;
  const { quantity: old } = before;
  const { quantity: fresh } = after;
  if (old.value === null) return null;
  if (old.value < (GAVE_PERCENT / 100) * DAILY_VALUES[nutrient].value) return old.atLeast ? null : false;
  if (fresh.value === null) return null;
  if (fresh.value < LOST_BELOW * old.value) return fresh.atLeast ? null : true;
  return old.atLeast ? null : false;
}

/** What people are told to have less of. */
const LESS_IS_NO_LOSS: ReadonlySet<DailyValueName> = new Set<DailyValueName>([
  'fat',
  'saturated fat',
  'cholesterol',
  'sodium',
  'added sugars',
  'carbohydrate',
  'chloride',
]);

/** Nutrients that plant foods get from fortifying, where their name says so. */
const FORTIFIED_WITH = [
  'calcium',
  'vitamin A',
  'vitamin D',
  'vitamin B12',
  'riboflavin',
  'iron',
  'folate',
] as const;

/**
 * Whether a food brings a nutrient only because it was added, by the words of its name (`calcium added`, `fortified`,
 * `enriched`). Then the page says *only if fortified; check the label*.
 */
export function onlyIfFortified(food: Pick<Food, 'name' | 'form' | 'record'>, nutrient: string): boolean {
  const words = `${food.name} ${food.form} ${food.record.description}`.toLowerCase();
  const said = words.replace(
    /\b(?:no [a-z]+ added|not fortified|unfortified|unenriched|not enriched)\b/g,
    '',
  );
  return FORTIFIED_WITH.some((one) => one === nutrient) && /\b(?:fortified|enriched|added)\b/.test(said);
}
