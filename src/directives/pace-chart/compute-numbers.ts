import { heightInCm, input, type Range, unitRatio, type Working, weightInKg } from '../../nutrition/index.js';
import type { ComputedNumber } from '../contract.js';
import type { Example } from './schema.js';

/** The units of both families of measures; pages print one of them. */
export const UNITS = ['lb', 'kg'] as const;
export type WeightUnit = (typeof UNITS)[number];

type Made = Omit<ComputedNumber, 'id' | 'sources'>;

/** A number with the sources that its inputs name. */
export function number(id: string, made: Made): ComputedNumber {
  const named = made.inputs.map(({ source }) => source).filter((source) => /^[a-z-]+-\d{4}$/.test(source));
  return { id, ...made, sources: [...new Set(named)] };
}

/** A number that is itself the input: what the author wrote, a figure of ours or of a source. */
export function given(
  id: string,
  name: string,
  value: number,
  unit: string,
  source: string,
  what: string,
  decimals = 0,
  note?: string,
): ComputedNumber {
  return number(id, {
    value,
    unit,
    formula: name,
    inputs: [input(name, value, unit, source, note)],
    what,
    decimals,
  });
}

/** A range whose ends are inputs. */
export function span(
  id: string,
  [low, high]: readonly [number, number],
  unit: string,
  source: string,
  what: string,
  decimals = 0,
): ComputedNumber {
  return number(id, {
    value: null,
    low,
    high,
    unit,
    decimals,
    formula: 'low = least; high = most',
    inputs: [input('least', low, unit, source), input('most', high, unit, source)],
    what,
  });
}

/** kg worked out → the same in a unit, as a formula over the same inputs. */
export function inUnit(
  kg: number,
  { formula, inputs }: Working,
  unit: WeightUnit,
): Pick<Made, 'value' | 'unit' | 'formula' | 'inputs'> {
  if (unit === 'kg') return { value: kg, unit, formula, inputs };
  const each = unitRatio('kg', 'lb');
  return {
    value: kg * each,
    unit,
    formula: `(${formula}) * lb_each`,
    inputs: [...inputs, input('lb_each', each, 'lb per kg', 'definition of the units')],
  };
}

/** A band's range on a day, in kg with losses below zero → how much less, from the least to the most. */
export function lessNumber(
  id: string,
  { low, high }: Range<'kg'>,
  { inputs }: Working,
  unit: WeightUnit,
  what: string,
): ComputedNumber {
  const each = unit === 'kg' ? 1 : unitRatio('kg', 'lb');
  const factor = unit === 'kg' ? '' : ' * lb_each';
  return number(id, {
    value: null,
    low: Math.max(0, -high * each),
    high: Math.max(0, -low * each),
    unit,
    formula: `low = max(0, (start - heaviest)${factor}); high = max(0, (start - lightest)${factor})`,
    inputs:
      unit === 'kg' ? inputs : [...inputs, input('lb_each', each, 'lb per kg', 'definition of the units')],
    what,
  });
}

/** The invented adult in both families of measures. */
export function exampleNumbers(id: string, { age, height, weight }: Example): ComputedNumber[] {
  const cm = heightInCm(height);
  const kg = weightInKg(weight);
  if (!cm.ok || !kg.ok || cm.value.value === null || kg.value.value === null) return [];
  const inches = Math.round(cm.value.value / 2.54);
  const [feet, rest] = [Math.floor(inches / 12), inches % 12];
  const note = `a height of ${height.value} ${height.unit} in whole inches`;
  return [
    ...(age === null ? [] : [given(`${id}.age`, 'age', age, '', 'lesson', 'age of the invented adult')]),
    number(`${id}.height`, {
      value: cm.value.value,
      unit: 'cm',
      ...cm.value.working,
      what: 'height of the invented adult',
      decimals: 0,
    }),
    given(`${id}.feet`, 'feet', feet, 'ft', 'lesson', 'height of the invented adult, whole feet', 0, note),
    given(
      `${id}.inches`,
      'inches',
      rest,
      'in',
      'lesson',
      'height of the invented adult, inches beyond',
      0,
      note,
    ),
    ...UNITS.map((unit) =>
      number(`${id}.example-${unit}`, {
        ...inUnit(kg.value.value ?? 0, kg.value.working, unit),
        what: 'weight of the invented adult at the start',
        decimals: 0,
      }),
    ),
  ];
}
