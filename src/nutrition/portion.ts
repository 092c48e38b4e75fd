import { amountOf } from './arithmetic.js';
import type { Food, Measure } from './food.js';
import {
  countedMeasure,
  namedMeasures,
  volumeMeasure,
  type Weighable,
  weighedMeasures,
} from './food-measures.js';
import { isPackage } from './measure-words.js';
import type { Amount, MassUnit, VolumeUnit } from './quantity.js';
import { inWords, ok, type Refusal, type Result, refuse } from './result.js';
import { isMassUnit, isVolumeUnit, KITCHENS, type Kitchen, sizeOf } from './units.js';
import { FROM_LESSON, type Input, input, type Working } from './working.js';
import { measureName, type WrittenAmount, writeAmount } from './written-amount.js';

/** How much of a food, in grams, and how that was got. */
export interface Portion {
  readonly grams: Amount<'g'>;
  /** The portion in words: the amount as written, or the food's usual portion. */
  readonly words: string;
  /** The measure of the food that was used, such as `cup` or `medium`; `null` for a weight or the usual portion. */
  readonly measure: string | null;
  readonly working: Working;
  /** True when the weight of the measure was estimated and not published. */
  readonly estimated: boolean;
}

/**
 * How far a weight in brackets may lie from what the amount before it weighs; further off it is more
 * likely a slip than a different cup. House rules: a volume leaves more room than a weight.
 */
export const STATED_APART = { volume: 0.25, weight: 0.05 } as const;

/** States in which the whole content of a package is the food. A drained food weighs less than its can says. */
const AS_SOLD: ReadonlySet<Food['state']> = new Set([
  'raw',
  'dry',
  'canned, with liquid',
  'frozen, unprepared',
  'ready to eat',
]);

/**
 * What an amount of a food weighs. Weights are turned into grams; volumes and household measures go
 * through the food's own measures (any of its volumes serves for any other); a bare count takes the
 * measure `each`, `whole`, one named in the food's name (`tortilla`), or `medium`; a weight in brackets
 * beside a volume (`1 cup (245 g)`) is used as written. `kitchen` says how large the author's cup and
 * spoons are; the weights of the tables are for exact US ones. A measure that the food lacks is refused,
 * with those it has.
 */
export function gramsOf(
  amount: WrittenAmount,
  food: Weighable,
  kitchen: Kitchen = 'us exact',
): Result<Portion> {
  if (!(amount.count > 0) || !Number.isFinite(amount.count)) {
    return refuse(`An amount of ${food.name} has to be above zero.`);
  }
  if (amount.unit === null) return byMeasure(amount, food, kitchen);
  if (isVolumeUnit(amount.unit)) return byVolume(amount, amount.unit, food, kitchen);
  return byWeight(amount, amount.unit, food, kitchen);
}

/** The food's usual portion, which a row without an amount takes. */
export function usualPortion(food: Weighable): Portion {
  const { words, estimated = false } = food.usual;
  return portion(words, null, [usualWeight(food, 'grams')], estimated);
}

/** The grams of a row: of its amount, or of the usual portion when it has none. */
export function portionOf(
  amount: WrittenAmount | null,
  food: Weighable,
  kitchen: Kitchen = 'us exact',
): Result<Portion> {
  return amount === null ? ok(usualPortion(food)) : gramsOf(amount, food, kitchen);
}

const FOOD_TABLE = 'house';

/** An input that is known. */
type Factor = Input & { readonly value: number };

function byWeight(amount: WrittenAmount, unit: MassUnit, food: Weighable, kitchen: Kitchen): Result<Portion> {
  const each = sizeOf(unit, kitchen);
  const stated = statedWeight(amount, kitchen);
  const apart = stated && tooFarApart(amount, food, stated, amount.count * each, STATED_APART.weight);
  if (apart) return apart;
  const count = input('count', amount.count, unit, FROM_LESSON);
  const inputs =
    unit === 'g'
      ? [input('grams', amount.count, 'g', FROM_LESSON)]
      : [count, input('grams_per_unit', each, `g per ${unit}`, KITCHENS[kitchen].source)];
  return ok(portion(writeAmount(amount), null, inputs, false));
}

function byVolume(
  amount: WrittenAmount,
  unit: VolumeUnit,
  food: Weighable,
  kitchen: Kitchen,
): Result<Portion> {
  const words = writeAmount(amount);
  const own = volumeMeasure(food, unit);
  const stated = statedWeight(amount, kitchen);
  const through = own && throughMeasure(words, amount, unit, own, kitchen);
  if (stated === null) return through === null ? lacks(amount, food) : ok(through);
  const apart = through && tooFarApart(amount, food, stated, through.grams.value, STATED_APART.volume);
  if (apart) return apart;
  return ok(portion(words, null, [input('grams', stated, 'g', FROM_LESSON, 'weight as written')], false));
}

function throughMeasure(
  words: string,
  amount: WrittenAmount,
  unit: VolumeUnit,
  own: { readonly measure: Measure; readonly unit: VolumeUnit },
  kitchen: Kitchen,
): Portion {
  const perUnit = sizeOf(unit, kitchen) / sizeOf(own.unit);
  const inputs = [input('count', amount.count, unit, FROM_LESSON)];
  if (perUnit !== 1) {
    inputs.push(input('measures_per_unit', perUnit, `${own.unit} per ${unit}`, KITCHENS[kitchen].source));
  }
  return portion(words, own.measure.name, [...inputs, eachOf(own.measure)], isEstimated(own.measure));
}

function byMeasure(amount: WrittenAmount, food: Weighable, kitchen: Kitchen): Result<Portion> {
  const words = writeAmount(amount);
  const count = input('count', amount.count, amount.measure ?? 'piece', FROM_LESSON);
  if (amount.measure === null) {
    const one = countedMeasure(food);
    return one === null
      ? lacks(amount, food)
      : ok(portion(words, one.name, [count, eachOf(one)], isEstimated(one)));
  }
  const [found, ...others] = namedMeasures(food, amount);
  if (found !== undefined && others.length === 0) {
    return ok(portion(words, found.name, [count, eachOf(found)], isEstimated(found)));
  }
  if (found !== undefined) {
    const names = [found, ...others].map((measure) => measure.name);
    return refuse(`${food.name}: "${amount.measure}" can be ${inWords(names)}.`, 'Write which one.', names);
  }
  if (amount.measure === 'serving' || amount.measure === 'portion') {
    const { estimated = false } = food.usual;
    return ok(portion(words, null, [count, usualWeight(food, 'grams_each')], estimated));
  }
  if (amount.size !== null && isPackage(amount.measure)) {
    return fromPackage(amount, amount.size, food, kitchen, count);
  }
  return lacks(amount, food);
}

/** A package whose whole content is the food weighs what its label says. */
function fromPackage(
  amount: WrittenAmount,
  size: Amount<MassUnit | VolumeUnit>,
  food: Weighable,
  kitchen: Kitchen,
  count: Factor,
): Result<Portion> {
  if (!AS_SOLD.has(food.state)) {
    return refuse(
      `The size on the ${amount.measure} is not the weight of ${food.name}: it is what was packed, not what is eaten.`,
      `Write the amount as a weight${choices(food)}.`,
      weighedMeasures(food).map((measure) => measure.name),
    );
  }
  const words = writeAmount(amount);
  const note = `${size.value} ${size.unit} on the label`;
  if (isMassUnit(size.unit)) {
    const each = input('grams_each', size.value * sizeOf(size.unit, kitchen), 'g', FROM_LESSON, note);
    return ok(portion(words, null, [count, each], false));
  }
  const own = volumeMeasure(food, size.unit);
  if (own === null) return lacks(amount, food);
  const measures = (size.value * sizeOf(size.unit, kitchen)) / sizeOf(own.unit);
  const each = input('measures_each', measures, own.unit, FROM_LESSON, note);
  return ok(portion(words, own.measure.name, [count, each, eachOf(own.measure)], isEstimated(own.measure)));
}

/** The grams in brackets beside an amount, or `null` when there are none. */
function statedWeight(amount: WrittenAmount, kitchen: Kitchen): number | null {
  const { size } = amount;
  return size !== null && isMassUnit(size.unit) ? size.value * sizeOf(size.unit, kitchen) : null;
}

function tooFarApart(
  amount: WrittenAmount,
  food: Weighable,
  stated: number,
  expected: number,
  allowed: number,
): Refusal | null {
  if (Math.abs(stated - expected) <= allowed * Math.max(stated, expected)) return null;
  return refuse(
    `"${writeAmount(amount)}" does not fit: that much ${food.name} weighs about ${Math.round(expected)} g.`,
    'Correct the amount or the weight, or leave the weight out.',
  );
}

/** A portion whose grams are the product of its inputs. */
function portion(
  words: string,
  measure: string | null,
  inputs: readonly Factor[],
  estimated: boolean,
): Portion {
  const value = inputs.reduce((product, one) => product * one.value, 1);
  const formula = inputs.map((one) => one.name).join(' * ');
  return { grams: amountOf(value, 'g'), words, measure, working: { formula, inputs }, estimated };
}

function isEstimated(measure: Measure): boolean {
  return measure.estimated === true;
}

function eachOf(measure: Measure): Factor {
  const marked = isEstimated(measure) ? ['estimated'] : [];
  const notes = measure.note === undefined ? marked : [...marked, measure.note];
  const note = notes.length === 0 ? undefined : notes.join(': ');
  return input('grams_each', measure.grams, `g per ${measure.name}`, measure.source, note);
}

function usualWeight(food: Weighable, name: string): Factor {
  const { grams, words, estimated } = food.usual;
  const note = `${estimated ? 'estimated: ' : ''}usual portion, ${words}`;
  return input(name, amountOf(grams, 'g').value, 'g', FOOD_TABLE, note);
}

function lacks(amount: WrittenAmount, food: Weighable): Refusal {
  return refuse(
    `The weight of one ${measureName(amount) ?? 'piece'} of ${food.name} is not known.`,
    `Write the amount as a weight${choices(food)}.`,
    weighedMeasures(food).map((measure) => measure.name),
  );
}

function choices(food: Weighable): string {
  const names = weighedMeasures(food).map((measure) => measure.name);
  return names.length === 0 ? '' : ` or in a measure that this food has: ${inWords(names)}`;
}
