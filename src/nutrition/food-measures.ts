import type { Food, Measure } from './food.js';
import type { VolumeUnit } from './quantity.js';
import { isMassUnit, isVolumeUnit, sizeOf } from './units.js';
import { measureName, parseAmount, type WrittenAmount } from './written-amount.js';

/** What has to be known of a food to weigh an amount of it. */
export type Weighable = Pick<Food, 'name' | 'state' | 'measures' | 'usual'>;

/** The food's measures that have a weight. A weight that is missing, zero or no number is no weight. */
export function weighedMeasures(food: Weighable): readonly Measure[] {
  return food.measures.filter((measure) => Number.isFinite(measure.grams) && measure.grams > 0);
}

/**
 * The food's measure of that very unit, else another volume of it, because any volume serves for any
 * other: published before estimated, then the largest.
 */
export function volumeMeasure(
  food: Weighable,
  unit: VolumeUnit,
): { readonly measure: Measure; readonly unit: VolumeUnit } | null {
  const all = weighedMeasures(food).flatMap((measure) => {
    const own = readName(measure)?.unit ?? null;
    return own !== null && isVolumeUnit(own) ? [{ measure, unit: own }] : [];
  });
  const rank = (one: (typeof all)[number]) =>
    (one.unit === unit ? 0 : 2) + (one.measure.estimated === true ? 1 : 0);
  all.sort((a, b) => rank(a) - rank(b) || sizeOf(b.unit) - sizeOf(a.unit));
  return all[0] ?? null;
}

/** The food's measures that a written measure can mean; several when a package is written without its size. */
export function namedMeasures(food: Weighable, amount: WrittenAmount): readonly Measure[] {
  const measures = weighedMeasures(food);
  const exact = measures.find((measure) => measure.name === measureName(amount));
  if (exact !== undefined) return [exact];
  return measures.filter((measure) => {
    const own = readName(measure);
    return own !== null && own.measure === amount.measure && sameSize(own, amount);
  });
}

/** The measure that a bare count means: `each` or `whole`, one that the food's name holds (`tortilla`), or `medium`. */
export function countedMeasure(food: Weighable): Measure | null {
  const measures = weighedMeasures(food);
  const words = new Set(food.name.toLowerCase().split(/[^\p{L}]+/u));
  const inName = (name: string) => words.has(name) || words.has(`${name}s`) || words.has(`${name}es`);
  return (
    measures.find((measure) => measure.name === 'each' || measure.name === 'whole') ??
    measures.find((measure) => inName(measure.name)) ??
    measures.find((measure) => measure.name === 'medium') ??
    null
  );
}

function readName(measure: Measure): WrittenAmount | null {
  const read = parseAmount(`1 ${measure.name}`);
  return read.ok && read.value.rest === '' ? read.value.amount : null;
}

/** An amount without a size fits any package; two sizes fit when they are within half a percent. */
function sameSize(own: WrittenAmount, wanted: WrittenAmount): boolean {
  if (wanted.size === null) return true;
  if (own.size === null || isMassUnit(own.size.unit) !== isMassUnit(wanted.size.unit)) return false;
  const a = own.size.value * sizeOf(own.size.unit);
  const b = wanted.size.value * sizeOf(wanted.size.unit);
  return Math.abs(a - b) <= 0.005 * Math.max(a, b);
}
