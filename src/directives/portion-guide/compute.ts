import { kebab } from '../../document/index.js';
import {
  type HandMeasure,
  handFor,
  KITCHENS,
  type Kitchen,
  type Pour,
  pourOf,
  type ReferenceAmount,
  referenceAmountFor,
} from '../../nutrition/index.js';
import type { ComputeContext, Computed, ComputedNumber, Measures } from '../contract.js';
import { readProblem } from '../problems.js';
import type { GuideRow, Values } from './schema.js';

/** One food as it is poured; numbers by the last part of their ids. */
export interface PouredRow {
  readonly words: string;
  /** Ids of its numbers. They are named with their unit, since foods are poured with different measures. */
  readonly ids: {
    readonly usual: string;
    readonly grams: string;
    readonly also?: string;
    readonly label?: string;
    readonly labelAs?: string;
  };
  readonly unit: Pour['unit'];
  /** The part of one measure up to the line. */
  readonly share: number;
  readonly fills: 'once' | 'twice' | 'often' | 'then to the line';
  readonly hand: { readonly hand: HandMeasure; readonly times: number } | null;
  readonly estimated: boolean;
}

/** What readers of one family of measures see. */
export interface Guide {
  /** What is hung on the ids of this family's numbers. */
  readonly suffix: string;
  readonly rows: readonly PouredRow[];
  readonly holds: Readonly<Record<Pour['unit'], number>>;
}

export interface GuideResult extends Computed {
  readonly guides: Readonly<Record<Measures, Guide>>;
}

/** Grams of each amount: volume × the weight of a volume of that food in its state. */
export function compute(values: Values, context: ComputeContext): GuideResult | undefined {
  const { kitchen } = values;
  const us = guideFor(values, kitchen ?? 'us label', '', context);
  const metric = kitchen ? us : us && guideFor(values, 'metric', '-metric', context);
  if (!us || !metric) return undefined;
  return {
    numbers: [lineNumber(values), ...us.numbers, ...(kitchen ? [] : metric.numbers)],
    facts: {
      foods: values.rows.map(({ food, place }) => ({ food, place })),
      nutrients: [],
      settings: { measures: values.measures },
    },
    guides: { us: us.guide, metric: metric.guide },
  };
}

function guideFor(
  values: Values,
  kitchen: Kitchen,
  suffix: string,
  { report }: ComputeContext,
): { readonly guide: Guide; readonly numbers: readonly ComputedNumber[] } | undefined {
  const numbers = holdNumbers(values.id, kitchen, suffix);
  const rows: PouredRow[] = [];
  for (const row of values.rows) {
    const pour = pourOf(row.amount, row.food, kitchen, values.into);
    if (!pour.ok) {
      report.add(readProblem('directives/amount', pour, row.place));
      return undefined;
    }
    const own = {
      ...pourNumbers(pour.value, row),
      also: alsoNumber(pour.value, kitchen, row),
      ...labelNumbers(row, kitchen),
    };
    const idOf = ({ id, unit }: ComputedNumber) =>
      `${values.id}.${kebab(row.words)}.${[id, UNIT_WORDS[unit] ?? unit].filter(Boolean).join('-')}${suffix}`;
    numbers.push(...Object.values(own).map((number) => ({ ...number, id: idOf(number) })));
    const { usual, grams, also, label, labelAs } = own;
    rows.push({
      ...shown(pour.value),
      words: row.words,
      ids: {
        usual: idOf(usual),
        grams: idOf(grams),
        also: idOf(also),
        ...(label && labelAs ? { label: idOf(label), labelAs: idOf(labelAs) } : {}),
      },
    });
  }
  const { cup, tbsp, tsp } = KITCHENS[kitchen];
  return { guide: { suffix, rows, holds: { cup, tbsp, tsp } }, numbers };
}

/** Units as they stand in ids. */
const UNIT_WORDS: Readonly<Record<string, string>> = {
  cup: 'cups',
  tbsp: 'tablespoons',
  tsp: 'teaspoons',
  g: 'grams',
  mL: 'milliliters',
};

function shown(pour: Pour): Pick<PouredRow, 'unit' | 'share' | 'fills' | 'hand' | 'estimated'> {
  const whole = Math.floor(pour.count + 1e-6);
  const part = pour.count - whole;
  const even = part < 1e-6;
  const fills =
    whole === 0 || (even && whole === 1)
      ? 'once'
      : !even
        ? 'then to the line'
        : whole === 2
          ? 'twice'
          : 'often';
  return { unit: pour.unit, share: even ? 1 : part, fills, hand: handFor(pour), estimated: pour.estimated };
}

function pourNumbers(
  pour: Pour,
  { food }: GuideRow,
): { readonly usual: ComputedNumber; readonly grams: ComputedNumber } {
  const note = 'the nearest amount that measures come in';
  return {
    usual: {
      id: '',
      value: pour.count,
      unit: pour.unit,
      formula: 'count',
      inputs: [{ name: 'count', value: pour.count, unit: pour.unit, source: 'house', note }],
      sources: [],
      what: `an amount of ${food.name}, to pour`,
    },
    grams: {
      id: '',
      value: pour.grams,
      unit: 'g',
      ...pour.working,
      sources: [food.record.source],
      what: `weight of that amount of ${food.name}`,
      food: { id: food.id, ...food.record },
    },
  };
}

/** The same amount in a smaller measure when it comes out whole, else in milliliters. */
function alsoNumber(pour: Pour, kitchen: Kitchen, { food }: GuideRow): ComputedNumber {
  const units = KITCHENS[kitchen];
  const unit = pour.unit === 'cup' ? 'tbsp' : pour.unit === 'tbsp' ? 'tsp' : undefined;
  const input = (name: string, value: number, of: string, source: string) => ({
    name,
    value,
    unit: of,
    source,
  });
  const size = units[pour.unit];
  const common = [
    input('count', pour.count, pour.unit, 'house'),
    input('size', size, `mL per ${pour.unit}`, units.source),
  ];
  const what = `the same amount of ${food.name} in another measure`;
  const count = unit === undefined ? 0.5 : (pour.count * size) / units[unit];
  if (unit !== undefined && Math.abs(count - Math.round(count)) < 1e-6)
    return {
      id: 'also',
      value: count,
      unit,
      decimals: 0,
      formula: 'count * size / smaller',
      inputs: [...common, input('smaller', units[unit], `mL per ${unit}`, units.source)],
      sources: [],
      what,
    };
  return {
    id: 'also',
    value: pour.count * size,
    unit: 'mL',
    formula: 'count * size',
    inputs: common,
    sources: [],
    what,
  };
}

/** What a label counts, as its rule has it, and that in a measure or in grams. */
function labelNumbers(
  row: GuideRow,
  kitchen: Kitchen,
): { readonly label?: ComputedNumber; readonly labelAs?: ComputedNumber } {
  const rule = referenceAmountFor(row.food);
  const poured = rule && pourOf(writtenOf(rule), row.food, kitchen, ['cup', 'spoon']);
  if (!rule || !poured?.ok) return {};
  const { food } = row;
  const { usual, grams } = pourNumbers(poured.value, row);
  const as = rule.unit === 'g' || rule.unit === 'mL' ? usual : grams;
  return {
    label: {
      id: 'label',
      value: rule.amount,
      unit: rule.unit,
      decimals: 0,
      formula: 'amount',
      inputs: [{ name: 'amount', value: rule.amount, unit: rule.unit, source: rule.source, note: rule.kind }],
      sources: ['fda-reference-amounts'],
      what: `what a label counts as eaten at one time of ${food.name}`,
    },
    labelAs: { ...as, id: 'label-as', what: `that amount of ${food.name} in another measure` },
  };
}

function writtenOf({ amount, unit }: ReferenceAmount) {
  return { count: amount, unit, measure: unit, size: null };
}

function holdNumbers(id: string, kitchen: Kitchen, suffix: string): ComputedNumber[] {
  const units = KITCHENS[kitchen];
  const names = { cup: 'cup', tablespoon: 'tbsp', teaspoon: 'tsp' } as const;
  return (Object.keys(names) as (keyof typeof names)[]).map((name) => {
    const value = units[names[name]];
    return {
      id: `${id}.${name}${suffix}`,
      value,
      unit: 'mL',
      decimals: 0,
      formula: 'size',
      inputs: [{ name: 'size', value, unit: 'mL', source: units.source }],
      sources: [],
      what: `what a ${name} holds`,
    };
  });
}

/** The line beside the claim of true size. */
function lineNumber({ id }: Values): ComputedNumber {
  return {
    id: `${id}.line`,
    value: 50,
    unit: 'mm',
    decimals: 0,
    formula: 'line',
    inputs: [{ name: 'line', value: 50, unit: 'mm', source: 'house' }],
    sources: [],
    what: 'length of the line that shows whether a page has its true size',
  };
}
