import type { NutrientName } from '../nutrition/food.js';

/** One column of nutrient values in the release, per 100 g of the edible part. */
export interface ReleaseColumn {
  /** The heading in our table, with its unit. */
  readonly heading: string;
  /** Position in a line of the publisher's ABBREV file, counted from 0. */
  readonly field: number;
  /** The nutrient that a lesson asks for by name, if this column answers it. */
  readonly nutrient?: NutrientName;
}

const column = (field: number, heading: string): ReleaseColumn => ({ field, heading });
const answers = (field: number, heading: string, nutrient: NutrientName): ReleaseColumn => ({
  field,
  heading,
  nutrient,
});

/**
 * The nutrient columns in the publisher's order. Where the release holds several columns for one
 * nutrient, the one that Daily Values are stated in answers for it: vitamin A in retinol activity
 * equivalents, vitamin D in µg, folate in dietary folate equivalents. Vitamin E is alpha-tocopherol.
 * Niacin is the preformed vitamin alone; the release has no niacin equivalents. Added sugars are in
 * no column.
 */
export const NUTRIENT_COLUMNS: readonly ReleaseColumn[] = [
  answers(2, 'water (g)', 'water'),
  answers(3, 'energy (kcal)', 'energy'),
  answers(4, 'protein (g)', 'protein'),
  answers(5, 'fat (g)', 'fat'),
  answers(6, 'ash (g)', 'ash'),
  answers(7, 'carbohydrate (g)', 'carbohydrate'),
  answers(8, 'fiber (g)', 'fiber'),
  answers(9, 'sugars (g)', 'sugars'),
  answers(10, 'calcium (mg)', 'calcium'),
  answers(11, 'iron (mg)', 'iron'),
  answers(12, 'magnesium (mg)', 'magnesium'),
  answers(13, 'phosphorus (mg)', 'phosphorus'),
  answers(14, 'potassium (mg)', 'potassium'),
  answers(15, 'sodium (mg)', 'sodium'),
  answers(16, 'zinc (mg)', 'zinc'),
  answers(17, 'copper (mg)', 'copper'),
  answers(18, 'manganese (mg)', 'manganese'),
  answers(19, 'selenium (µg)', 'selenium'),
  answers(20, 'vitamin C (mg)', 'vitamin C'),
  answers(21, 'thiamin (mg)', 'thiamin'),
  answers(22, 'riboflavin (mg)', 'riboflavin'),
  answers(23, 'niacin (mg)', 'niacin'),
  answers(24, 'pantothenic acid (mg)', 'pantothenic acid'),
  answers(25, 'vitamin B6 (mg)', 'vitamin B6'),
  column(26, 'folate, total (µg)'),
  column(27, 'folic acid (µg)'),
  column(28, 'food folate (µg)'),
  answers(29, 'folate (µg DFE)', 'folate'),
  answers(30, 'choline (mg)', 'choline'),
  answers(31, 'vitamin B12 (µg)', 'vitamin B12'),
  column(32, 'vitamin A (IU)'),
  answers(33, 'vitamin A (µg RAE)', 'vitamin A'),
  column(34, 'retinol (µg)'),
  column(35, 'alpha-carotene (µg)'),
  column(36, 'beta-carotene (µg)'),
  column(37, 'beta-cryptoxanthin (µg)'),
  column(38, 'lycopene (µg)'),
  column(39, 'lutein and zeaxanthin (µg)'),
  answers(40, 'vitamin E (mg)', 'vitamin E'),
  answers(41, 'vitamin D (µg)', 'vitamin D'),
  column(42, 'vitamin D (IU)'),
  answers(43, 'vitamin K (µg)', 'vitamin K'),
  answers(44, 'saturated fat (g)', 'saturated fat'),
  answers(45, 'monounsaturated fat (g)', 'monounsaturated fat'),
  answers(46, 'polyunsaturated fat (g)', 'polyunsaturated fat'),
  answers(47, 'cholesterol (mg)', 'cholesterol'),
];

/** Headings of the release table before and after the nutrients. */
export const RELEASE_START = ['number', 'description', 'group'] as const;
export const RELEASE_END = [
  'weight 1 (g)',
  'weight 1 measure',
  'weight 2 (g)',
  'weight 2 measure',
  'refuse (%)',
] as const;

/** All headings of the release table, in order. */
export const RELEASE_HEADINGS: readonly string[] = [
  ...RELEASE_START,
  ...NUTRIENT_COLUMNS.map((c) => c.heading),
  ...RELEASE_END,
];

/** Headings of the second table of the release, which holds what loading a lesson never needs. */
export const DESCRIPTION_HEADINGS = [
  'number',
  'short description',
  'common names',
  'manufacturer',
  'survey',
  'refuse description',
  'scientific name',
  'nitrogen factor',
  'protein factor (kcal/g)',
  'fat factor (kcal/g)',
  'carbohydrate factor (kcal/g)',
] as const;

/**
 * Headings of the index of the release: where each food's line stands in the release table, in bytes, so
 * that a few foods can be read without the rest.
 */
export const INDEX_HEADINGS = ['number', 'start', 'length', 'description'] as const;

/** Where the tables stand under `assets/`. */
export const RELEASE_FILE = 'foods/release.tsv';
export const RELEASE_INDEX_FILE = 'foods/release-index.tsv';
export const DESCRIPTIONS_FILE = 'foods/release-descriptions.tsv';
export const EVERYDAY_FILE = 'foods/everyday.tsv';

/** The release as a source: its id in `sources.yaml` and the date of its data. */
export const RELEASE_SOURCE = { source: 'usda-sr28', date: '2015-09' } as const;
