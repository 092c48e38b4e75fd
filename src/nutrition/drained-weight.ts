import type { Food, Measure } from './food.js';
import { type Weighable, weighedMeasures } from './food-measures.js';
import { isPackage } from './measure-words.js';
import { ok, type Result, refuse } from './result.js';
import { input, type Working } from './working.js';

/** How much of what a can holds is left when it is drained, by weight. */
export interface DrainedShare {
  /** Above 0, at most 1. */
  readonly share: number;
  /** The package whose two weights gave it, such as `can (15.5 oz)`. */
  readonly measure: string;
  readonly working: Working;
  readonly estimated: boolean;
}

/**
 * The drained share of a can, from the two records of the pair: weight of the package drained ÷ weight of the same
 * package with its liquid. Published check: USDA SR28, pinto beans, 277 g of 442 g. Refused when the foods are
 * not such a pair, when no package has a weight in both, and when the drained can would weigh more.
 */
export function drainedShare(
  withLiquid: Weighable & Pick<Food, 'kind'>,
  drained: Weighable & Pick<Food, 'kind'>,
): Result<DrainedShare> {
  const isDrained = drained.state === 'canned, drained' || drained.state === 'canned, drained and rinsed';
  if (withLiquid.state !== 'canned, with liquid' || !isDrained || withLiquid.kind !== drained.kind) {
    return refuse(
      `${withLiquid.name} and ${drained.name} are not one canned food with its liquid and drained.`,
      'Take the two records of the same kind.',
    );
  }
  const pair = packagePair(withLiquid, drained);
  if (pair === null) {
    return refuse(
      `No package has a weight both as ${withLiquid.name} and as ${drained.name}.`,
      'Weigh a drained can, or take the drained weight on its label.',
    );
  }
  const [full, left] = pair;
  if (left.grams > full.grams) {
    return refuse(
      `The ${left.name} of ${drained.name} weighs more than the full one.`,
      'Correct the food table.',
    );
  }
  return ok({
    share: left.grams / full.grams,
    measure: full.name,
    working: {
      formula: 'drained / full',
      inputs: [
        input('drained', left.grams, `g per ${left.name}`, left.source, left.note),
        input('full', full.grams, `g per ${full.name}`, full.source, full.note),
      ],
    },
    estimated: full.estimated === true || left.estimated === true,
  });
}

function packagePair(withLiquid: Weighable, drained: Weighable): readonly [Measure, Measure] | null {
  for (const full of weighedMeasures(withLiquid)) {
    if (!isPackage(full.name.replace(/ \(.*$/, ''))) continue;
    const left = weighedMeasures(drained).find((measure) => measure.name === full.name);
    if (left !== undefined) return [full, left];
  }
  return null;
}
