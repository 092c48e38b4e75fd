import {
  ACCEPTABLE_SHARES,
  combine,
  ENERGY_FACTORS,
  ENERGY_SHARES,
  type EnergyShare,
  foodEnergy,
  input,
  ketogenicRatio,
  notKnown,
  splitEnergy,
  type Working,
} from '../../nutrition/index.js';
import type { ComputeContext, Computed, ComputedNumber } from '../contract.js';
import { drinks, eachShare, FACTORS, type Grams, gramsOf, unknownIn } from './compute-grams.js';
import { SHORT_WITH_LITTLE_CARBOHYDRATE, settingsOf } from './compute-guard.js';
import { workedNumbers } from './compute-worked.js';
import type { Values } from './schema.js';

/** Where a share lies against its usual range. */
export type Lies = 'under' | 'inside' | 'over';

export interface PartOfEnergy {
  readonly part: EnergyShare;
  /** In percent, unrounded; `null` is not known. */
  readonly share: number | null;
  readonly range?: { readonly low: number; readonly high: number };
  readonly lies?: Lies;
}

export interface SplitResult extends Computed {
  readonly parts: readonly PartOfEnergy[];
  /** Words of the foods that leave the shares open. */
  readonly unknown: readonly string[];
  /** The part that gives the most, and whether it gives more than half. */
  readonly most?: { readonly part: EnergyShare; readonly half: boolean };
  readonly ratio: boolean;
  readonly sources: readonly string[];
}

const FACTOR_SOURCE = ENERGY_FACTORS['4-4-9-7'].source;
const RANGE_SOURCE = 'dri-macronutrients-2005';

/**
 * Where the energy comes from: grams of all foods × 4, 4, 9 and 7, each as a share of their sum. A part that is not
 * known in any food makes every share not known, and the energy at least.
 */
export function compute(values: Values, { report, refuse }: ComputeContext): SplitResult | undefined {
  const { id, show, beside } = values;
  const foods = values.meals.flatMap((meal) => meal.foods);
  const grams = gramsOf(values, foods);
  const amounts = eachShare((part) => (grams[part].quantity.atLeast ? null : grams[part].quantity.value));
  const energy = foodEnergy(
    '4-4-9-7',
    'kcal',
    eachShare((part) => grams[part].quantity.value),
  );
  const whole = ENERGY_SHARES.every((part) => amounts[part] !== null);
  const split = whole ? splitEnergy(eachShare((part) => amounts[part] ?? 0)) : undefined;
  const percent = split?.ok ? split.value.percent : undefined;
  const shares = ENERGY_SHARES.map((part) => ({ part, share: percent?.[part] ?? null }));
  const parts = show.map((part): PartOfEnergy => {
    const share = percent?.[part] ?? null;
    const range = beside && part !== 'alcohol' ? ACCEPTABLE_SHARES.adults[part] : undefined;
    return { part, share, ...(range ? { range, ...liesAgainst(share, range) } : {}) };
  });
  const most = percent && shares.toSorted((a, b) => (b.share ?? 0) - (a.share ?? 0))[0];
  const ratio = whole
    ? ketogenicRatio(amounts.fat ?? 0, amounts.protein ?? 0, amounts.carbohydrate ?? 0)
    : undefined;
  const sources = [...new Set(foods.map(({ food }) => food.record.source))];
  const kcal = energy.ok ? energy.value.quantity : notKnown('kcal');
  const settings = settingsOf(values, { grams, percent, kcal: kcal.value }, { report, refuse });
  const gramsThere = ENERGY_SHARES.filter(
    (part) => part !== 'alcohol' || show.includes('alcohol') || values.meals.some(drinks),
  );
  return {
    numbers: [
      energyNumber(id, grams, kcal, sources),
      brickNumber(id),
      ...gramsThere.flatMap((part) => partNumbers(id, part, grams, percent, sources)),
      ...parts.flatMap(({ part, range }) => (range && part !== 'alcohol' ? [rangeNumber(id, part)] : [])),
      ...(whole && percent ? workedNumbers(id, gramsThere, grams) : []),
      ...(ratio?.ok
        ? [
            {
              id: `${id}.ratio`,
              value: ratio.value.ratio,
              unit: '',
              decimals: 1,
              ...ratioWorking(ratio.value.working, grams),
              sources,
              what: 'grams of fat for each gram of protein and carbohydrate together',
            },
            therapyNumber(id),
          ]
        : []),
    ],
    facts: {
      foods: foods.map(({ food, place }) => ({ food, place })),
      nutrients: show.filter((part) => part !== 'alcohol'),
      settings,
      slots: { nutrients: SHORT_WITH_LITTLE_CARBOHYDRATE },
    },
    parts,
    unknown: unknownIn(values),
    ...(most ? { most: { part: most.part, half: (most.share ?? 0) > 50 } } : {}),
    ratio: ratio?.ok === true,
    sources,
  };
}

function liesAgainst(share: number | null, range: { low: number; high: number }): { lies?: Lies } {
  if (share === null) return {};
  return { lies: share < range.low ? 'under' : share > range.high ? 'over' : 'inside' };
}

/** The ratio with the grams' own workings in the places of the grams. */
function ratioWorking(outer: Working, grams: Grams): Working {
  const parts = ['fat', 'protein', 'carbohydrate'] as const;
  return combine(
    outer.formula,
    parts.map((part) => ({ name: part, item: grams[part].working })),
  );
}

function energyNumber(
  id: string,
  grams: Grams,
  kcal: { readonly value: number | null; readonly atLeast: boolean },
  sources: readonly string[],
): ComputedNumber {
  // Parts of which nothing is known stay out of the sum, which then says at least.
  const there = ENERGY_SHARES.filter((part) => grams[part].quantity.value !== null);
  const some = there.length > 0 ? there : ENERGY_SHARES;
  const atLeast =
    kcal.value !== null && ENERGY_SHARES.some((p) => grams[p].quantity.atLeast || !there.includes(p));
  return {
    id: `${id}.energy`,
    value: kcal.value,
    unit: 'kcal',
    ...(atLeast ? { atLeast } : {}),
    ...combine(
      some.map((part) => `${part} * ${FACTORS[part]}`).join(' + '),
      some.map((part) => ({ name: part, item: grams[part].working })),
    ),
    sources,
    what: 'energy of all rows, by 4, 4, 9 and 7 kcal a gram',
  };
}

function partNumbers(
  id: string,
  part: EnergyShare,
  grams: Grams,
  percent: Readonly<Record<EnergyShare, number>> | undefined,
  sources: readonly string[],
): ComputedNumber[] {
  const { quantity, working } = grams[part];
  const factor = FACTORS[part];
  const energy = ENERGY_SHARES.map((one) => `${one} * ${FACTORS[one]}`).join(' + ');
  const share: Working = percent
    ? combine(
        `${part} * ${factor} / (${energy}) * 100`,
        ENERGY_SHARES.map((one) => ({ name: one, item: grams[one].working })),
      )
    : {
        formula: 'share',
        inputs: [input('share', null, '%', 'house', 'something in the rows is not known')],
      };
  return [
    {
      id: `${id}.${part}.grams`,
      value: quantity.value,
      unit: 'g',
      ...(quantity.atLeast ? { atLeast: true } : {}),
      ...working,
      sources,
      what: `${part} of all rows`,
    },
    {
      id: `${id}.${part}.energy`,
      value: quantity.value === null ? null : quantity.value * factor,
      unit: 'kcal',
      ...(quantity.atLeast ? { atLeast: true } : {}),
      ...combine(`grams * ${factor}`, [{ name: 'grams', item: working }]),
      sources,
      what: `energy from ${part}`,
    },
    {
      id: `${id}.${part}.factor`,
      value: factor,
      unit: 'kcal',
      formula: 'factor',
      inputs: [input('factor', factor, 'kcal per g', FACTOR_SOURCE)],
      sources: [],
      what: `energy of one gram of ${part}`,
    },
    {
      id: `${id}.${part}.share`,
      value: percent?.[part] ?? null,
      unit: '%',
      ...share,
      sources,
      what: `share of the energy that comes from ${part}`,
    },
  ];
}

function rangeNumber(id: string, part: Exclude<EnergyShare, 'alcohol'>): ComputedNumber {
  const { low, high } = ACCEPTABLE_SHARES.adults[part];
  return {
    id: `${id}.${part}.range`,
    value: null,
    low,
    high,
    unit: '%',
    formula: 'low = least; high = most',
    inputs: [
      input('least', low, '%', RANGE_SOURCE, 'adults'),
      input('most', high, '%', RANGE_SOURCE, 'adults'),
    ],
    sources: [RANGE_SOURCE],
    what: `usual share of ${part} in the energy of adults`,
  };
}

function brickNumber(id: string): ComputedNumber {
  return {
    id: `${id}.brick`,
    value: 5,
    unit: '%',
    formula: 'brick',
    inputs: [input('brick', 5, '%', 'house', 'twenty bricks are the whole')],
    sources: [],
    what: 'share of the energy that one brick stands for',
  };
}

/** Common practice, no source: what eating for epilepsy that a team prescribes takes from fat. */
function therapyNumber(id: string): ComputedNumber {
  const note = 'common practice, no source';
  return {
    id: `${id}.therapy`,
    value: null,
    low: 80,
    high: 90,
    unit: '%',
    formula: 'low = least; high = most',
    inputs: [input('least', 80, '%', 'house', note), input('most', 90, '%', 'house', note)],
    sources: [],
    what: 'share of energy from fat in ketogenic eating that is prescribed for epilepsy',
  };
}
