import type { DailyValueName } from './daily-values.js';

/** The groups for which 21 CFR 101.9 gives Daily Values. The first is the one that an ordinary label uses. */
export const DAILY_VALUE_GROUPS = [
  'adults and children 4 years and over',
  'infants through 12 months',
  'children 1 through 3 years',
  'pregnant and lactating women',
] as const;
export type DailyValueGroup = (typeof DAILY_VALUE_GROUPS)[number];
export type SpecialGroup = Exclude<DailyValueGroup, (typeof DAILY_VALUE_GROUPS)[0]>;

/** Energy of the diet that each group's values belong to, in kcal; the rule gives infants none. */
export const REFERENCE_DIET: Readonly<Record<DailyValueGroup, number | null>> = {
  'adults and children 4 years and over': 2000,
  'infants through 12 months': null,
  'children 1 through 3 years': 1000,
  'pregnant and lactating women': 2000,
};

/** Infants, children 1 to 3, pregnant and lactating women, in the unit of the adult row; `null` is no value. */
export type SpecialValues = readonly [
  infants: number | null,
  children: number | null,
  mothers: number | null,
];

/** The columns of 21 CFR 101.9(c)(8)(iv) and (c)(9) beside the adults' one. */
export const SPECIAL_VALUES: Readonly<Record<DailyValueName, SpecialValues>> = {
  'vitamin A': [500, 300, 1300],
  'vitamin C': [50, 15, 120],
  calcium: [260, 700, 1300],
  iron: [11, 7, 27],
  'vitamin D': [10, 15, 15],
  'vitamin E': [5, 6, 19],
  'vitamin K': [2.5, 30, 90],
  thiamin: [0.3, 0.5, 1.4],
  riboflavin: [0.4, 0.5, 1.6],
  niacin: [4, 6, 18],
  'vitamin B6': [0.3, 0.5, 2],
  folate: [80, 150, 600],
  'vitamin B12': [0.5, 0.9, 2.8],
  biotin: [6, 8, 35],
  'pantothenic acid': [1.8, 2, 7],
  phosphorus: [275, 460, 1250],
  iodine: [130, 90, 290],
  magnesium: [75, 80, 400],
  zinc: [3, 3, 13],
  selenium: [20, 20, 70],
  copper: [0.2, 0.3, 1.3],
  manganese: [0.6, 1.2, 2.6],
  chromium: [5.5, 11, 45],
  molybdenum: [3, 17, 50],
  chloride: [570, 1500, 2300],
  potassium: [700, 3000, 5100],
  choline: [150, 200, 550],
  protein: [11, 13, 71],
  fat: [30, 39, 78],
  'saturated fat': [null, 10, 20],
  cholesterol: [null, 300, 300],
  carbohydrate: [95, 150, 275],
  sodium: [null, 1500, 2300],
  fiber: [null, 14, 28],
  'added sugars': [null, 25, 50],
};

/** Rows of `SPECIAL_VALUES` read in the FDA's own list for industry; all others rest on memory. */
export const SPECIAL_VALUES_READ: ReadonlySet<DailyValueName> = new Set<DailyValueName>([
  'vitamin A',
  'vitamin C',
  'calcium',
  'iron',
  'vitamin D',
  'vitamin E',
  'vitamin K',
  'thiamin',
  'riboflavin',
  'niacin',
  'vitamin B6',
  'folate',
  'vitamin B12',
  'biotin',
  'pantothenic acid',
  'phosphorus',
  'iodine',
  'magnesium',
  'zinc',
]);
