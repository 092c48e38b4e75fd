import { ok, type Result, refuse } from './result.js';
import { KITCHENS, type Kitchen } from './units.js';

/**
 * Cup and spoons by region, as two-letter codes of ISO 3166. Common practice, no source. The United States measure
 * cups as its food tables do; its labels count with 240 mL, which is the kitchen `us label`.
 */
export const REGION_KITCHENS: Readonly<Record<string, Kitchen>> = {
  US: 'us exact',
  PR: 'us exact',
  CA: 'metric',
  GB: 'metric',
  IE: 'metric',
  NZ: 'metric',
  ZA: 'metric',
  MX: 'metric',
  AU: 'australian',
  JP: 'cup of 200 mL',
};

/** The cup and spoons of a region. Refused where no practice is known: the author then names them. */
export function kitchenOf(region: string): Result<Kitchen> {
  const code = region.toUpperCase();
  const kitchen = Object.hasOwn(REGION_KITCHENS, code) ? REGION_KITCHENS[code] : undefined;
  if (kitchen !== undefined) return ok(kitchen);
  return refuse(`The cup of region "${region}" is not known.`, 'Name the cup.', Object.keys(KITCHENS));
}

/** An amount that people can pour: a count of cups, tablespoons or teaspoons in fractions that measures come in. */
export interface Pourable {
  readonly count: number;
  readonly unit: 'cup' | 'tbsp' | 'tsp';
  /** What that many hold, in mL; differs from what was asked by the rounding. */
  readonly milliliters: number;
}

const CUP_PARTS = [0, 1 / 4, 1 / 3, 1 / 2, 2 / 3, 3 / 4, 1];
const SPOON_PARTS = [0, 1 / 2, 1];
const TEASPOON_PARTS = [0, 1 / 8, 1 / 4, 1 / 2, 3 / 4, 1];

/**
 * The nearest amount that people can pour: from a quarter cup up in cups by quarters and thirds, else in halves of a
 * tablespoon from one up, else in parts of a teaspoon. Halfway goes to the larger. Refuses a volume that is not above
 * zero, and less than a sixteenth of a teaspoon, which nobody measures.
 */
export function pourable(milliliters: number, kitchen: Kitchen = 'us exact'): Result<Pourable> {
  const { cup, tbsp, tsp } = KITCHENS[kitchen];
  if (!(milliliters > 0) || !Number.isFinite(milliliters)) {
    return refuse('An amount to pour has to be above zero.', 'Write how much.');
  }
  if (milliliters < tsp / 16) return refuse('The amount is too small to measure.', 'Write it in words.');
  const rounded = (size: number, parts: readonly number[], unit: Pourable['unit']) => {
    const count = nearest(milliliters / size, parts);
    return ok({ count, unit, milliliters: count * size });
  };
  if (milliliters >= cup / 4 - NOISE) return rounded(cup, CUP_PARTS, 'cup');
  return milliliters >= tbsp - NOISE
    ? rounded(tbsp, SPOON_PARTS, 'tbsp')
    : rounded(tsp, TEASPOON_PARTS, 'tsp');
}

const NOISE = 1e-6;

function nearest(value: number, parts: readonly number[]): number {
  const whole = Math.floor(value + NOISE);
  const rest = value - whole;
  const best = parts.reduce((so, part) => (Math.abs(part - rest) <= Math.abs(so - rest) + NOISE ? part : so));
  return whole + best;
}
