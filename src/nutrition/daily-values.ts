import type { NutrientName } from './food.js';
import type { Amount, MassUnit, Quantity } from './quantity.js';
import { ok, type Result, refuse } from './result.js';
import { unitRatio } from './units.js';
import { FROM_LESSON, input, substitute, type Working } from './working.js';

/** The group that the table is for; other groups have their own values. */
export const DAILY_VALUE_GROUP = 'adults and children 4 years and over';
/** Id of the source of the table. */
export const DAILY_VALUE_SOURCE = 'fda-daily-values';
/** The rule behind the table. Older labels and pages used another set (fat 65 g, sodium 2400 mg, fiber 25 g). */
export const DAILY_VALUE_RULE = '21 CFR 101.9(c)(8)(iv) and (c)(9), 2016 rule, 81 FR 33742';

export interface DailyValue {
  readonly value: number;
  readonly unit: 'g' | 'mg' | 'µg';
  /** Reference Daily Intake (vitamins and minerals) or Daily Reference Value; they round differently on labels. */
  readonly kind: 'RDI' | 'DRV';
  /** What the unit counts, where one mass of the nutrient is not like another. */
  readonly counts?: 'RAE' | 'DFE' | 'NE' | 'alpha-tocopherol';
  /**
   * How the row was checked: read in a document of the FDA itself, or found equal in independent copies of
   * the FDA's table without the rule's own text at hand. No row rests on memory alone.
   */
  readonly checked: 'FDA document' | 'copies of the FDA table';
  readonly note?: string;
}

const fda = { checked: 'FDA document' } as const;
const copies = { checked: 'copies of the FDA table' } as const;

/** Every Daily Value for adults and children 4 years and over. Trans fat and total sugars have none. */
export const DAILY_VALUES = {
  fat: { value: 78, unit: 'g', kind: 'DRV', ...copies },
  'saturated fat': { value: 20, unit: 'g', kind: 'DRV', ...copies },
  cholesterol: { value: 300, unit: 'mg', kind: 'DRV', ...copies },
  carbohydrate: { value: 275, unit: 'g', kind: 'DRV', ...copies },
  sodium: { value: 2300, unit: 'mg', kind: 'DRV', ...copies },
  fiber: { value: 28, unit: 'g', kind: 'DRV', ...copies },
  protein: {
    value: 50,
    unit: 'g',
    kind: 'DRV',
    ...copies,
    note: 'a label corrects the protein for its quality first; this percent does not',
  },
  'added sugars': { value: 50, unit: 'g', kind: 'DRV', ...copies },
  'vitamin A': { value: 900, unit: 'µg', kind: 'RDI', counts: 'RAE', ...fda },
  'vitamin C': { value: 90, unit: 'mg', kind: 'RDI', ...fda },
  calcium: { value: 1300, unit: 'mg', kind: 'RDI', ...fda },
  iron: { value: 18, unit: 'mg', kind: 'RDI', ...fda },
  'vitamin D': { value: 20, unit: 'µg', kind: 'RDI', ...fda },
  'vitamin E': { value: 15, unit: 'mg', kind: 'RDI', counts: 'alpha-tocopherol', ...fda },
  'vitamin K': { value: 120, unit: 'µg', kind: 'RDI', ...fda },
  thiamin: { value: 1.2, unit: 'mg', kind: 'RDI', ...fda },
  riboflavin: { value: 1.3, unit: 'mg', kind: 'RDI', ...fda },
  niacin: { value: 16, unit: 'mg', kind: 'RDI', counts: 'NE', ...fda },
  'vitamin B6': { value: 1.7, unit: 'mg', kind: 'RDI', ...fda },
  folate: { value: 400, unit: 'µg', kind: 'RDI', counts: 'DFE', ...fda },
  'vitamin B12': { value: 2.4, unit: 'µg', kind: 'RDI', ...fda },
  biotin: { value: 30, unit: 'µg', kind: 'RDI', ...fda },
  'pantothenic acid': { value: 5, unit: 'mg', kind: 'RDI', ...fda },
  phosphorus: { value: 1250, unit: 'mg', kind: 'RDI', ...fda },
  iodine: { value: 150, unit: 'µg', kind: 'RDI', ...fda },
  magnesium: { value: 420, unit: 'mg', kind: 'RDI', ...fda },
  zinc: { value: 11, unit: 'mg', kind: 'RDI', ...fda },
  selenium: { value: 55, unit: 'µg', kind: 'RDI', ...copies },
  copper: { value: 0.9, unit: 'mg', kind: 'RDI', ...copies },
  manganese: { value: 2.3, unit: 'mg', kind: 'RDI', ...copies },
  chromium: { value: 35, unit: 'µg', kind: 'RDI', ...copies },
  molybdenum: { value: 45, unit: 'µg', kind: 'RDI', ...copies },
  chloride: { value: 2300, unit: 'mg', kind: 'RDI', ...copies },
  potassium: { value: 4700, unit: 'mg', kind: 'RDI', ...copies },
  choline: { value: 550, unit: 'mg', kind: 'RDI', ...copies },
} as const satisfies Readonly<Record<string, DailyValue>>;
export type DailyValueName = keyof typeof DAILY_VALUES;

/** A share of a Daily Value, unrounded, in percent; `null` when the amount is not known. */
export interface DailyPercent {
  readonly percent: number | null;
  readonly atLeast: boolean;
  readonly of: Amount<DailyValue['unit']>;
  readonly row: DailyValue;
  readonly working: Working;
}

/** The row of a nutrient, or `null` when it has no Daily Value. */
export function dailyValueOf(name: NutrientName | DailyValueName): DailyValue | null {
  return Object.hasOwn(DAILY_VALUES, name) ? DAILY_VALUES[name as DailyValueName] : null;
}

/**
 * An amount as percent of the Daily Value: amount ÷ daily value × 100, for adults and children 4 and
 * over. The amount has to be counted as the row counts it (µg RAE, µg DFE, mg NE). `working` is how the amount
 * was got; it becomes part of the formula. Refuses nutrients that have no Daily Value. A Daily Value is
 * for comparing foods; it is nobody's own target.
 */
export function percentOfDailyValue(
  name: NutrientName | DailyValueName,
  quantity: Quantity<MassUnit>,
  working?: Working,
): Result<DailyPercent> {
  const row = dailyValueOf(name);
  if (row === null) {
    return refuse(`There is no Daily Value for ${name}.`, 'Show the amount without a percent.');
  }
  const ratio = unitRatio(quantity.unit, row.unit);
  const inputs = [
    input('amount', quantity.value, quantity.unit, FROM_LESSON),
    input('daily_value', row.value, row.unit, DAILY_VALUE_SOURCE, row.note ?? DAILY_VALUE_GROUP),
  ];
  if (ratio !== 1)
    inputs.push(input('ratio', ratio, `${row.unit} per ${quantity.unit}`, 'definition of the units'));
  const outer: Working = {
    formula: ratio === 1 ? 'amount / daily_value * 100' : 'amount * ratio / daily_value * 100',
    inputs,
  };
  return ok({
    percent: quantity.value === null ? null : ((quantity.value * ratio) / row.value) * 100,
    atLeast: quantity.atLeast,
    of: { value: row.value, unit: row.unit },
    row,
    working: working === undefined ? outer : substitute(outer, 'amount', working),
  });
}

/**
 * The comparing habit of the FDA's consumer pages: 5 percent or less is low, 20 percent or more is high.
 * Takes the unrounded percent.
 */
export function lowOrHigh(percent: number): 'low' | 'between' | 'high' {
  if (percent <= LOW_PERCENT) return 'low';
  return percent >= HIGH_PERCENT ? 'high' : 'between';
}
export const LOW_PERCENT = 5;
export const HIGH_PERCENT = 20;
