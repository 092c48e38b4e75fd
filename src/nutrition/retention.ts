import { known, notKnown } from './arithmetic.js';
import type { Quantity, Unit } from './quantity.js';
import { ok, type Result, refuse } from './result.js';
import { input, type Worked } from './working.js';

/** How much of a nutrient stays in a food when it is cooked, as the retention tables give it. */
export interface Retention {
  /** Percent from 0 to 100. */
  readonly percent: number;
  /** Id of the source and the code in it, such as `usda-retention-6 3005`. */
  readonly source: string;
  /** What the code stands for, such as `greens, boiled in much water, drained`. */
  readonly method: string;
}

/** Weight after cooking ÷ weight before: above 1 for dry beans and rice, below 1 for meat and greens. */
export interface CookingYield {
  readonly factor: number;
  readonly source: string;
}

/**
 * Estimates what 100 g of a cooked food holds from its raw record: raw per 100 g × retention ÷ yield.
 * Source: USDA Table of Nutrient Retention Factors, Release 6 (2007), whose true retention is
 * (cooked per g × g cooked) ÷ (raw per g × g raw) × 100. The result is always marked as estimated. Never for
 * a record that is already cooked. Refuses a percent outside 0 to 100 and a yield that is not above zero.
 */
export function cookedPer100g<U extends Unit>(
  raw: Quantity<U>,
  rawSource: string,
  retention: Retention,
  cooking: CookingYield,
): Result<Worked<U>> {
  const { percent } = retention;
  if (!(percent >= 0 && percent <= 100)) {
    return refuse(
      `A retention of ${percent} percent is not between 0 and 100.`,
      'Correct the retention table.',
    );
  }
  if (!(cooking.factor > 0) || !Number.isFinite(cooking.factor)) {
    return refuse(
      `A cooking yield of ${cooking.factor} is not above zero.`,
      'Write weight after ÷ weight before.',
    );
  }
  const value = raw.value === null ? null : (raw.value * percent) / 100 / cooking.factor;
  return ok({
    quantity: value === null ? notKnown(raw.unit) : { ...known(value, raw.unit), atLeast: raw.atLeast },
    working: {
      formula: 'raw * retention / 100 / yield',
      inputs: [
        input('raw', raw.value, `${raw.unit} per 100 g raw`, rawSource),
        input('retention', percent, 'percent kept', retention.source, retention.method),
        input('yield', cooking.factor, 'g cooked per g raw', cooking.source),
      ],
    },
    estimated: true,
  });
}
