import { NUTRIENTS, type NutrientName } from '../../nutrition/food.js';

/**
 * FoodData Central's nutrient numbers (`nutrient_nbr` of nutrient.csv) that answer for each of our
 * nutrients, the best first: where a food has several, the first of them counts. Energy in kilocalories
 * is 208, else by the food's own factors (958), else by general ones (957); fiber 291, else by the newer
 * method (293); sugars 269, else as labels count them (269.3). The numbers are those of the Standard
 * Reference and its successors, as FoodData Central's nutrient.csv pairs them with names.
 */
export const NUTRIENT_NUMBERS: Readonly<Record<NutrientName, readonly string[]>> = {
  energy: ['208', '958', '957'],
  protein: ['203'],
  fat: ['204'],
  'saturated fat': ['606'],
  'monounsaturated fat': ['645'],
  'polyunsaturated fat': ['646'],
  cholesterol: ['601'],
  carbohydrate: ['205'],
  fiber: ['291', '293'],
  sugars: ['269', '269.3'],
  'added sugars': ['539'],
  water: ['255'],
  ash: ['207'],
  sodium: ['307'],
  potassium: ['306'],
  calcium: ['301'],
  iron: ['303'],
  magnesium: ['304'],
  phosphorus: ['305'],
  zinc: ['309'],
  copper: ['312'],
  manganese: ['315'],
  selenium: ['317'],
  'vitamin A': ['320'],
  'vitamin C': ['401'],
  'vitamin D': ['328'],
  'vitamin E': ['323'],
  'vitamin K': ['430'],
  thiamin: ['404'],
  riboflavin: ['405'],
  niacin: ['406'],
  'pantothenic acid': ['410'],
  'vitamin B6': ['415'],
  folate: ['435'],
  'vitamin B12': ['418'],
  choline: ['421'],
};

/** Our nutrients in the order of the imported table. */
export const NAMES = Object.keys(NUTRIENTS) as readonly NutrientName[];

/** Unit names of nutrient.csv. */
const UNITS: Readonly<Record<string, string>> = { g: 'G', mg: 'MG', µg: 'UG', kcal: 'KCAL' };

/** The unit that nutrient.csv must give for one of our nutrients. */
export function unitOf(name: NutrientName): string {
  return UNITS[NUTRIENTS[name].unit] ?? '';
}

/** Which of our nutrients a number answers for, and how well; 0 is best. */
export const ANSWERS: ReadonlyMap<string, { readonly name: NutrientName; readonly rank: number }> = new Map(
  NAMES.flatMap((name) => NUTRIENT_NUMBERS[name].map((number, rank) => [number, { name, rank }] as const)),
);
