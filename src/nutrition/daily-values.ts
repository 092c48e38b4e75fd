import {
  DAILY_VALUE_GROUPS,
  type DailyValueGroup,
  SPECIAL_VALUES,
  SPECIAL_VALUES_READ,
  type SpecialGroup,
} from './daily-value-groups.js';
import type { NutrientName } from './food.js';
import type { Amount, MassUnit, Quantity } from './quantity.js';
import { ok, type Result, refuse } from './result.js';
import { unitRatio } from './units.js';
import { FROM_LESSON, input, substitute, type Working } from './working.js';

/** The group that an ordinary label and `DAILY_VALUES` are for; other groups have their own values. */
export const DAILY_VALUE_GROUP: DailyValueGroup = DAILY_VALUE_GROUPS[0];
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
   * How the value was checked: read in a document of the FDA itself, found equal in independent copies of
   * the FDA's table without the rule's own text at hand, or remembered. No value for adults is only remembered.
   */
  readonly checked: 'FDA document' | 'copies of the FDA table' | 'memory';
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

/** The row of a nutrient for a group, or `null` when the group has no Daily Value for it. */
export function dailyValueOf(
  name: NutrientName | DailyValueName,
  group: DailyValueGroup = DAILY_VALUE_GROUP,
): DailyValue | null {
  if (!isDailyValueName(name)) return null;
  const adult: DailyValue = DAILY_VALUES[name];
  return isSpecial(group) ? specialRow(name, adult, group) : adult;
}

/**
 * An amount as percent of the Daily Value: amount ÷ daily value × 100, for the group, which is adults and
 * children 4 and over unless named. The amount has to be counted as the row counts it (µg RAE, µg DFE, mg NE).
 * `working` is how the amount was got; it becomes part of the formula. Refuses nutrients that have no Daily Value
 * for the group. A Daily Value is for comparing foods; it is nobody's own target.
 */
export function percentOfDailyValue(
  name: NutrientName | DailyValueName,
  quantity: Quantity<MassUnit>,
  working?: Working,
  group: DailyValueGroup = DAILY_VALUE_GROUP,
): Result<DailyPercent> {
  const row = dailyValueOf(name, group);
  if (row === null) {
    const whom = dailyValueOf(name) === null ? '' : ` for ${group}`;
    return refuse(`There is no Daily Value for ${name}${whom}.`, 'Show the amount without a percent.');
  }
  const ratio = unitRatio(quantity.unit, row.unit);
  const inputs = [
    input('amount', quantity.value, quantity.unit, FROM_LESSON),
    input('daily_value', row.value, row.unit, DAILY_VALUE_SOURCE, noteOf(row, group)),
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

function isDailyValueName(name: string): name is DailyValueName {
  return Object.hasOwn(DAILY_VALUES, name);
}

function isSpecial(group: DailyValueGroup): group is SpecialGroup {
  return group !== DAILY_VALUE_GROUPS[0];
}

const COLUMN: Readonly<Record<SpecialGroup, 0 | 1 | 2>> = {
  'infants through 12 months': 0,
  'children 1 through 3 years': 1,
  'pregnant and lactating women': 2,
};

/** Protein is a Reference Daily Intake for infants and mothers and a Daily Reference Value for the others. */
function specialRow(name: DailyValueName, adult: DailyValue, group: SpecialGroup): DailyValue | null {
  const value = SPECIAL_VALUES[name][COLUMN[group]];
  if (value === null) return null;
  const intake = name === 'protein' && group !== 'children 1 through 3 years';
  return {
    ...adult,
    value,
    kind: intake ? 'RDI' : adult.kind,
    checked: SPECIAL_VALUES_READ.has(name) ? 'FDA document' : 'memory',
  };
}

/** Says whom the value is for, what it leaves out, and when nobody has read it again in the rule. */
function noteOf(row: DailyValue, group: DailyValueGroup): string {
  if (group === DAILY_VALUE_GROUP) return row.note ?? group;
  return [group, row.note, row.checked === 'memory' ? 'value from memory' : undefined]
    .filter((part) => part !== undefined)
    .join('; ');
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
