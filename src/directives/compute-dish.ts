import { kebab } from '../document/index.js';
import {
  DISH_KINDS,
  DISH_PARTS,
  type DishFood,
  type DishKindName,
  dishNutrient,
  input,
  type NutrientName,
  partsOf,
  partsWorking,
} from '../nutrition/index.js';
import type { ComputedNumber } from './contract.js';
import type { Refused } from './problems.js';

/** How much of the dish a kind is, for readers who count nothing. House rule. */
export type Extent = 'none' | 'little' | 'some' | 'half' | 'most' | 'all';

export interface DishKind {
  readonly kind: DishKindName;
  readonly parts: number;
  readonly extent: Extent;
  /** Ids of its numbers: parts, share of the volume, and what the key of a worksheet accepts. */
  readonly number: string;
  readonly share: string;
  readonly accepted: string;
}

/** A food's place among the twelve parts. */
export interface DishPart {
  /** Its place among the foods that were given. */
  readonly index: number;
  readonly kind: DishKindName;
  readonly parts: number;
  readonly number: string;
  readonly estimated: boolean;
}

/** A dish in twelve parts, kinds and foods in the order in which it is filled: produce, protein, grain. */
export interface DishNumbers {
  readonly kinds: readonly DishKind[];
  readonly parts: readonly DishPart[];
  readonly numbers: readonly ComputedNumber[];
}

type Named = DishFood & { readonly words: string };

/** The parts of a dish as numbers named after its id, or why it has none. Every kind is there, also one of no part. */
export function dishNumbers(id: string, foods: readonly Named[]): DishNumbers | Refused {
  const inside = foods.flatMap((one, index) => (one.fills ? [{ ...one, fills: one.fills, index }] : []));
  const shares = partsOf(foods);
  if (!shares.ok) return shares;
  const volumes = inside.map(({ fills }) => fills.volume.milliliters);
  const whole = sum(volumes);
  const numbers: ComputedNumber[] = [];
  const parts = inside.map(({ fills, food, words, index }, i): DishPart => {
    const row = `${id}.${kebab(words)}`;
    const own = shares.value.rows[i] ?? 0;
    const sources = fills.volume.working.inputs.some(({ source }) => source === food.record.source)
      ? [food.record.source]
      : [];
    const of = { id: food.id, ...food.record };
    numbers.push(
      {
        id: `${row}.volume`,
        value: fills.volume.milliliters,
        unit: 'mL',
        ...fills.volume.working,
        sources,
        what: `volume of ${food.name} as served`,
        food: of,
      },
      {
        id: `${row}.parts`,
        value: own,
        unit: '',
        decimals: 0,
        ...partsWorking(own, fills.volume.milliliters, whole),
        sources,
        what: `parts of ${DISH_PARTS} that are ${food.name}`,
        food: of,
      },
    );
    return { index, kind: fills.kind, parts: own, number: `${row}.parts`, estimated: fills.volume.estimated };
  });
  const kinds = DISH_KINDS.map((kind): DishKind => {
    const volume = sum(
      inside.flatMap(({ fills }) => (fills.kind === kind ? [fills.volume.milliliters] : [])),
    );
    const own = shares.value.kinds.find((one) => one.kind === kind)?.parts ?? 0;
    const name = `${id}.${kebab(kind)}`;
    const common = { sources: [], decimals: 0 };
    numbers.push(
      {
        id: `${name}.parts`,
        value: own,
        unit: '',
        ...common,
        ...partsWorking(own, volume, whole),
        what: `parts of ${DISH_PARTS} that are ${kind}`,
      },
      {
        id: `${name}.share`,
        value: (volume / whole) * 100,
        unit: '%',
        ...common,
        formula: 'volume / dish * 100',
        inputs: [
          input('volume', volume, 'mL', 'lesson', 'as served'),
          input('dish', whole, 'mL', 'lesson', 'all that fills the dish'),
        ],
        what: `share of the dish by volume that is ${kind}`,
      },
      {
        id: `${name}.accepted`,
        value: null,
        low: Math.max(0, own - 1),
        high: Math.min(DISH_PARTS, own + 1),
        unit: '',
        ...common,
        formula: `low = max(0, parts - 1); high = min(${DISH_PARTS}, parts + 1)`,
        inputs: [input('parts', own, 'parts', 'house', 'one more or less is right too')],
        what: `counters of ${kind} that are right on the worksheet`,
      },
    );
    return {
      kind,
      parts: own,
      extent: extentOf(own),
      number: `${name}.parts`,
      share: `${name}.share`,
      accepted: `${name}.accepted`,
    };
  });
  const ordered = DISH_KINDS.flatMap((kind) => parts.filter((part) => part.kind === kind));
  return { kinds, parts: ordered, numbers };
}

/** What one person gets of a nutrient, as a number `<id>.<nutrient>`. */
export function totalNumber(
  id: string,
  foods: readonly Named[],
  nutrient: NutrientName,
  serves: number,
): ComputedNumber {
  const { quantity, working } = dishNutrient(foods, nutrient, serves);
  return {
    id: `${id}.${kebab(nutrient)}`,
    value: quantity.value,
    ...(quantity.atLeast ? { atLeast: true } : {}),
    unit: quantity.unit,
    ...working,
    sources: sourcesOf(foods),
    what: `${nutrient} of the dish and what stands beside it, for one person`,
  };
}

/** The records of the foods, and where the weights of their measures were published. */
export function sourcesOf(foods: readonly Named[]): string[] {
  const measures = foods.flatMap(({ food, portion }) => {
    const measure = food.measures.find(({ name }) => name === portion.measure);
    return measure && measure.estimated !== true ? [measure.source] : [];
  });
  return [...new Set([...foods.map(({ food }) => food.record.source), ...measures])];
}

function extentOf(parts: number): Extent {
  if (parts === 0) return 'none';
  if (parts === 1) return 'little';
  if (parts < 5) return 'some';
  if (parts < 8) return 'half';
  return parts < DISH_PARTS ? 'most' : 'all';
}

function sum(values: readonly number[]): number {
  return values.reduce((so, value) => so + value, 0);
}
