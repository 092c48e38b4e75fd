import { known, notKnown } from './arithmetic.js';
import type { Food, FoodState, NutrientName } from './food.js';
import { NUTRIENTS } from './food.js';
import type { NutrientUnit } from './nutrient.js';
import type { Unit } from './quantity.js';
import { ok, type Refusal, type Result, refuse } from './result.js';
import { type CookingYield, cookedPer100g, type Retention } from './retention.js';
import { type RetentionNutrient, retentionOf } from './retention-table.js';
import { input, substitute, type Worked } from './working.js';

/** Records that are not cooked yet, so that cooking may still take something away. */
const UNCOOKED: ReadonlySet<FoodState> = new Set(['raw', 'dry', 'frozen, unprepared']);

/** Why a record may not be multiplied by a retention factor, or `null` when it may. */
export function alreadyCooked(food: Pick<Food, 'name' | 'state'>): Refusal | null {
  if (UNCOOKED.has(food.state)) return null;
  return refuse(
    `${food.name} is "${food.state}": its record already shows what cooking or canning took away.`,
    'Leave the retention code out, or take the raw or dry form of the food.',
  );
}

/**
 * What 100 g of a cooked food hold, from the record of the uncooked one and a code of the retention release:
 * `raw * retention / 100 / yield`. Marked as estimated. Refuses a record that is cooked or canned already,
 * and what `retentionOf` and `cookedPer100g` refuse.
 */
export function cookedFood<N extends NutrientName & RetentionNutrient>(
  food: Pick<Food, 'name' | 'state' | 'per100g' | 'record'>,
  nutrient: N,
  code: string,
  cooking: CookingYield,
): Result<Worked<NutrientUnit<N>>> {
  const cooked = alreadyCooked(food);
  if (cooked !== null) return cooked;
  const retention = retentionOf(code, nutrient);
  if (!retention.ok) return retention;
  const unit: NutrientUnit<N> = NUTRIENTS[nutrient].unit;
  const value = food.per100g[nutrient];
  const raw = value === null ? notKnown(unit) : known(value, unit);
  return cookedPer100g(raw, `${food.record.source} ${food.record.number}`, retention.value, cooking);
}

/**
 * What stays of an amount of a nutrient in uncooked food: `raw * retention / 100`. The weight of the cooked food
 * does not matter for the whole amount, only for what 100 g hold. Not known stays not known. Refused when a
 * retention was applied already: it is applied once.
 */
export function afterCooking<U extends Unit>(raw: Worked<U>, retention: Retention): Result<Worked<U>> {
  if (raw.working.inputs.some((one) => one.unit === RETENTION_UNIT)) {
    return refuse('A retention factor was applied to this amount already.', 'Apply it once.');
  }
  return ok(timesRetention(raw, retention));
}

/** The same for an amount that no retention can have met yet. */
export function timesRetention<U extends Unit>(raw: Worked<U>, retention: Retention): Worked<U> {
  const { value, unit, atLeast } = raw.quantity;
  const kept = value === null ? null : (value * retention.percent) / 100;
  return {
    quantity: kept === null ? notKnown(unit) : { ...known(kept, unit), atLeast },
    working: substitute(
      {
        formula: 'raw * retention / 100',
        inputs: [
          input('raw', null, '', ''),
          input('retention', retention.percent, RETENTION_UNIT, retention.source, retention.method),
        ],
      },
      'raw',
      raw.working,
    ),
    estimated: true,
  };
}

const RETENTION_UNIT = 'percent kept';
