import {
  type Amount,
  EASED_PACE,
  type EasedPace,
  easedPace,
  input,
  type MassUnit,
  paceAt,
  unitRatio,
} from '../../nutrition/index.js';
import type { ComputeContext, Computed, ComputedNumber } from '../contract.js';
import { readProblem } from '../problems.js';
import { exampleNumbers, given, inUnit, number, UNITS, type WeightUnit } from './compute-numbers.js';
import type { PaceValues } from './schema.js';

export interface PaceResult extends Computed {
  readonly show: 'pace';
  /** Whether the pace goes down at all. */
  readonly eases: boolean;
  /** What each row of the table is called in ids, by unit: `lb-10`. */
  readonly rows: Readonly<Record<WeightUnit, readonly string[]>>;
}

/** Milestones are so far apart that the table has at most so many rows. House rule. */
const APART: Readonly<Record<WeightUnit, readonly number[]>> = { lb: [5, 10, 20, 50], kg: [2, 5, 10, 20] };
const MOST_ROWS = 7;

/** A loss that eases as less is left, in weeks; the trade's pace, for the invented adult alone. */
export function computePace(values: PaceValues, { report, refuse }: ComputeContext): PaceResult | undefined {
  const { id, example, toLose } = values;
  const paces = UNITS.map((unit) => {
    const total = toLose.value * unitRatio(toLose.unit, unit);
    const every = APART[unit].find((one) => total / one <= MOST_ROWS) ?? APART[unit].at(-1) ?? 50;
    const { age, height, weight } = example;
    const pace = easedPace({ age: age ?? 'adult', height, weight }, toLose, { value: every, unit });
    return { unit, every, pace };
  });
  const found: (Milestones & { unit: WeightUnit })[] = [];
  for (const { unit, every, pace } of paces) {
    if (!pace.ok) {
      if (/mass index below/.test(pace.reason)) refuse('R10', values.place);
      else report.add(readProblem('pace-chart/to-lose', pace, values.place));
      return undefined;
    }
    found.push({ unit, ...milestones(values, pace.value, unit, every) });
  }
  const rowsOf = (unit: WeightUnit) => found.find((one) => one.unit === unit)?.rows ?? [];
  const week = paces[0]?.pace;
  const last = week?.ok ? (week.value.weeks.at(-1)?.week ?? 0) : 0;
  return {
    show: 'pace',
    eases: toLose.value * unitRatio(toLose.unit, 'lb') > EASED_PACE.slow.left,
    numbers: [
      ...exampleNumbers(id, example),
      ...UNITS.flatMap((unit) => [
        number(`${id}.lose.${unit}`, {
          ...amountIn(toLose, unit),
          what: 'how much the invented adult loses in all',
          decimals: 0,
        }),
        paceNumber(`${id}.first.${unit}`, toLose, example.weight, 0, unit, 'in the first week'),
        given(
          `${id}.most.${unit}`,
          'most',
          unit === 'lb' ? EASED_PACE.fast.perWeek : 1,
          unit,
          'house',
          'the most a week in group material',
        ),
        number(`${id}.slowest.${unit}`, {
          ...amountIn({ value: EASED_PACE.slow.perWeek, unit: 'lb' }, unit),
          what: 'the pace while little is left',
          decimals: 1,
        }),
      ]),
      given(
        `${id}.percent`,
        'percent',
        EASED_PACE.mostPercent,
        '%',
        'house',
        'the most a week as a share of weight',
      ),
      given(
        `${id}.weeks`,
        'weeks',
        last,
        'weeks',
        'house',
        'weeks until all is lost, at the eased pace',
        0,
        'counted week by week',
      ),
      ...found.flatMap(({ numbers }) => numbers),
    ],
    facts: { foods: [], nutrients: [], settings: { show: ['pace'] } },
    rows: { lb: rowsOf('lb'), kg: rowsOf('kg') },
  };
}

interface Milestones {
  readonly rows: readonly string[];
  readonly numbers: readonly ComputedNumber[];
}

function milestones(
  { id, example, toLose }: PaceValues,
  pace: EasedPace,
  unit: WeightUnit,
  every: number,
): Milestones {
  const each = unitRatio('lb', unit);
  const rows = pace.milestones.map(({ lost, weeks }, index) => {
    const row = `${unit}-${(index + 1) * every}`;
    return {
      row,
      numbers: [
        given(
          `${id}.${row}.lost-${unit}`,
          'lost',
          lost * each,
          unit,
          'house',
          'a milestone of the eased pace',
          0,
          `every ${every} ${unit}, and all of it`,
        ),
        given(
          `${id}.${row}.weeks`,
          'weeks',
          weeks,
          'weeks',
          'house',
          `whole weeks until ${Math.round(lost * each)} ${unit} are lost`,
          0,
          'counted week by week at the eased pace',
        ),
        paceNumber(
          `${id}.${row}.pace-${unit}`,
          toLose,
          example.weight,
          pace.milestones[index - 1]?.lost ?? 0,
          unit,
          'at the start of this stretch',
        ),
      ],
    };
  });
  return { rows: rows.map(({ row }) => row), numbers: rows.flatMap(({ numbers }) => numbers) };
}

/** The pace when so many lb are lost. */
function paceNumber(
  id: string,
  toLose: Amount<MassUnit>,
  weight: Amount<MassUnit>,
  lost: number,
  unit: WeightUnit,
  when: string,
): ComputedNumber {
  const left = toLose.value * unitRatio(toLose.unit, 'lb') - lost;
  const { quantity, working } = paceAt(left, weight.value * unitRatio(weight.unit, 'lb') - lost);
  const each = unitRatio('lb', unit);
  return number(id, {
    value: (quantity.value ?? 0) * each,
    unit,
    formula: unit === 'lb' ? working.formula : `(${working.formula}) * kg_each`,
    inputs:
      unit === 'lb'
        ? working.inputs
        : [...working.inputs, input('kg_each', each, 'kg per lb', 'definition of the units')],
    what: `pace of the invented adult a week, ${when}`,
    decimals: 1,
  });
}

function amountIn({ value, unit: from }: Amount<MassUnit>, unit: WeightUnit) {
  const kg = value * unitRatio(from, 'kg');
  if (from === unit)
    return { value, unit, formula: 'amount', inputs: [input('amount', value, from, 'lesson')] };
  const each = unitRatio(from, 'kg');
  return inUnit(
    kg,
    {
      formula: 'amount * kg_each',
      inputs: [
        input('amount', value, from, 'lesson'),
        input('kg_each', each, `kg per ${from}`, 'definition of the units'),
      ],
    },
    unit,
  );
}
