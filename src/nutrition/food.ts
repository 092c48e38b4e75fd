// Contract
import type { MassUnit } from './quantity.js';

/** Nutrients by their plain names. Values stand per 100 g of the edible part. */
export const NUTRIENTS = {
  energy: { name: 'energy', unit: 'kcal' },
  protein: { name: 'protein', unit: 'g' },
  fat: { name: 'fat', unit: 'g' },
  'saturated fat': { name: 'saturated fat', unit: 'g' },
  'monounsaturated fat': { name: 'monounsaturated fat', unit: 'g' },
  'polyunsaturated fat': { name: 'polyunsaturated fat', unit: 'g' },
  cholesterol: { name: 'cholesterol', unit: 'mg' },
  carbohydrate: { name: 'carbohydrate', unit: 'g' },
  fiber: { name: 'fiber', unit: 'g' },
  sugars: { name: 'sugars', unit: 'g' },
  'added sugars': { name: 'added sugars', unit: 'g' },
  water: { name: 'water', unit: 'g' },
  ash: { name: 'ash', unit: 'g' },
  sodium: { name: 'sodium', unit: 'mg' },
  potassium: { name: 'potassium', unit: 'mg' },
  calcium: { name: 'calcium', unit: 'mg' },
  iron: { name: 'iron', unit: 'mg' },
  magnesium: { name: 'magnesium', unit: 'mg' },
  phosphorus: { name: 'phosphorus', unit: 'mg' },
  zinc: { name: 'zinc', unit: 'mg' },
  copper: { name: 'copper', unit: 'mg' },
  manganese: { name: 'manganese', unit: 'mg' },
  selenium: { name: 'selenium', unit: 'µg' },
  'vitamin A': { name: 'vitamin A', unit: 'µg' },
  'vitamin C': { name: 'vitamin C', unit: 'mg' },
  'vitamin D': { name: 'vitamin D', unit: 'µg' },
  'vitamin E': { name: 'vitamin E', unit: 'mg' },
  'vitamin K': { name: 'vitamin K', unit: 'µg' },
  thiamin: { name: 'thiamin', unit: 'mg' },
  riboflavin: { name: 'riboflavin', unit: 'mg' },
  niacin: { name: 'niacin', unit: 'mg' },
  'pantothenic acid': { name: 'pantothenic acid', unit: 'mg' },
  'vitamin B6': { name: 'vitamin B6', unit: 'mg' },
  folate: { name: 'folate', unit: 'µg' },
  'vitamin B12': { name: 'vitamin B12', unit: 'µg' },
  choline: { name: 'choline', unit: 'mg' },
} as const;
export type NutrientName = keyof typeof NUTRIENTS;

/** What a food may contain; `unknown` is a value and never passes as `no`. */
export const CONTENTS = [
  'meat',
  'fish',
  'shellfish',
  'milk',
  'egg',
  'wheat',
  'gluten',
  'soy',
  'peanut',
  'tree nut',
  'sesame',
  'honey',
] as const;
export type Content = (typeof CONTENTS)[number];
export type Contains = 'yes' | 'no' | 'unknown';

/** Plate kinds. Beans carry two: they may count as protein or as starch, never both. */
export type PlateKind =
  | 'vegetable'
  | 'fruit'
  | 'grain or starch'
  | 'protein'
  | 'dairy or calcium'
  | 'fat'
  | 'drink'
  | 'seasoning';

/** `ready to eat` foods may be compared; `with liquid` is a label row and never ready to eat. */
export type FoodState =
  | 'raw'
  | 'dry'
  | 'cooked'
  | 'canned, with liquid'
  | 'canned, drained'
  | 'canned, drained and rinsed'
  | 'frozen, unprepared'
  | 'frozen, cooked'
  | 'ready to eat';

/** A household measure: how many grams one of it weighs, and where that figure comes from. */
export interface Measure {
  /** `cup`, `tbsp`, `medium`, `can (15 oz)`, `slice` … in the singular. */
  readonly name: string;
  readonly grams: number;
  /** Id of a source in assets/sources.yaml, or `house` for a weight of our own. */
  readonly source: string;
  /** The source's own words for the measure, or why it was estimated so. */
  readonly note?: string;
  /** True for a weight that was estimated, not published; pages say so. */
  readonly estimated?: boolean;
}

/** One food as a lesson sees it: everyday name, record and nutrients. */
export interface Food {
  /** Stable id in kebab-case, such as `pinto-beans-canned-drained`. */
  readonly id: string;
  /** The plain name that a lesson writes, such as `pinto beans, canned, drained`. */
  readonly name: string;
  readonly aliases: readonly string[];
  readonly state: FoodState;
  /** The species or dish that forms share, such as `pinto beans`. */
  readonly kind: string;
  /** The form within the kind, such as `canned, drained and rinsed`. */
  readonly form: string;
  readonly plate: readonly PlateKind[];
  readonly measures: readonly Measure[];
  readonly usual: UsualPortion;
  readonly contains: Readonly<Record<Content, Contains>>;
  /** Picture name under assets/pictures; each has a color and a one-ink drawing. */
  readonly picture: string;
  /** Flags that pull cautions (`canned`, `kidney-bean-dry` …), named as in the register. */
  readonly flags: readonly string[];
  /** Per 100 g; `null` is not known. */
  readonly per100g: Readonly<Record<NutrientName, number | null>>;
  /** Where the nutrients come from. */
  readonly record: FoodSource;
}

/** Grams in one usual portion, with words for it, such as `1/2 cup`. */
export interface UsualPortion {
  readonly words: string;
  readonly grams: number;
  /** True when the weight of its measure was estimated and not published. */
  readonly estimated?: true;
}

/** The record behind a food's nutrients. */
export interface FoodSource {
  /** Id of a source in assets/sources.yaml, such as `usda-sr28`. */
  readonly source: string;
  /** The release's own number of the food, such as `16044`, or a label's id. */
  readonly number: string;
  /** The release's own description of the food. */
  readonly description: string;
  /** ISO date of the data. */
  readonly date: string;
}

export type { MassUnit };
