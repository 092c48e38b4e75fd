import type { MassUnit, VolumeUnit } from './quantity.js';

/** The words for units of weight and volume in recipes; the first is how we write one, all without a point. */
export const UNIT_WORDS: Readonly<Record<MassUnit | VolumeUnit, readonly string[]>> = {
  g: ['g', 'gram', 'grams', 'gm', 'gms'],
  mg: ['mg', 'milligram', 'milligrams'],
  µg: ['µg', 'μg', 'mcg', 'ug', 'microgram', 'micrograms'],
  kg: ['kg', 'kilo', 'kilos', 'kilogram', 'kilograms'],
  oz: ['oz', 'ozs', 'ounce', 'ounces'],
  lb: ['lb', 'lbs', 'pound', 'pounds'],
  mL: ['ml', 'mls', 'milliliter', 'milliliters', 'millilitre', 'millilitres'],
  L: ['l', 'liter', 'liters', 'litre', 'litres'],
  cup: ['cup', 'cups'],
  tbsp: ['tbsp', 'tbsps', 'tbs', 'tablespoon', 'tablespoons'],
  tsp: ['tsp', 'tsps', 'teaspoon', 'teaspoons'],
  'fl oz': ['fl oz', 'floz', 'fluid oz', 'fluid ounce', 'fluid ounces'],
};

/** Units that are known and not read, with what to write instead. */
export const OTHER_UNITS: Readonly<Record<string, string>> = {
  pint: 'Write 2 cups for a pint.',
  pints: 'Write 2 cups for each pint.',
  pt: 'Write 2 cups for a pint.',
  quart: 'Write 4 cups for a quart.',
  quarts: 'Write 4 cups for each quart.',
  qt: 'Write 4 cups for a quart.',
  gallon: 'Write 16 cups for a gallon.',
  gallons: 'Write 16 cups for each gallon.',
  dl: 'Write 100 mL for a deciliter.',
  cl: 'Write 10 mL for a centiliter.',
  kcal: 'Energy is no amount of food; write a measure or a weight.',
  calories: 'Energy is no amount of food; write a measure or a weight.',
  kj: 'Energy is no amount of food; write a measure or a weight.',
  iu: 'International units are no amount of food; write a measure or a weight.',
};

/** Household measures in the singular, each with its plural. */
export const MEASURE_WORDS: Readonly<Record<string, string>> = {
  bag: 'bags',
  bottle: 'bottles',
  bowl: 'bowls',
  box: 'boxes',
  bunch: 'bunches',
  can: 'cans',
  carton: 'cartons',
  clove: 'cloves',
  container: 'containers',
  ear: 'ears',
  fillet: 'fillets',
  floret: 'florets',
  glass: 'glasses',
  half: 'halves',
  handful: 'handfuls',
  head: 'heads',
  jar: 'jars',
  leaf: 'leaves',
  link: 'links',
  pack: 'packs',
  package: 'packages',
  packet: 'packets',
  pat: 'pats',
  patty: 'patties',
  piece: 'pieces',
  pinch: 'pinches',
  portion: 'portions',
  pouch: 'pouches',
  ring: 'rings',
  scoop: 'scoops',
  serving: 'servings',
  sheet: 'sheets',
  slice: 'slices',
  spear: 'spears',
  sprig: 'sprigs',
  stalk: 'stalks',
  stick: 'sticks',
  strip: 'strips',
  tub: 'tubs',
  wedge: 'wedges',
};

/** Sizes of a piece, with the short forms that recipes use. */
export const SIZE_WORDS: Readonly<Record<string, readonly string[]>> = {
  small: ['small', 'sm'],
  medium: ['medium', 'med'],
  large: ['large', 'lg'],
  'extra large': ['extra large', 'extra-large', 'x-large', 'xl'],
};

/** Measures that are packages: what is in one depends on its size. */
export const PACKAGES: ReadonlySet<string> = new Set([
  'bag',
  'bottle',
  'box',
  'can',
  'carton',
  'container',
  'jar',
  'pack',
  'package',
  'packet',
  'pouch',
  'tub',
]);

/** Whether a measure is a package, such as `can` or `large jar`. */
export function isPackage(measure: string | null): boolean {
  return measure !== null && PACKAGES.has(measure.replace(/^.* /, ''));
}

/** Units worth guessing when a word is one slip away. */
export const SPELLED_UNITS: readonly string[] = [
  'cup',
  'cups',
  'tbsp',
  'tsp',
  'tablespoon',
  'tablespoons',
  'teaspoon',
  'teaspoons',
  'ounce',
  'ounces',
  'pound',
  'pounds',
  'gram',
  'grams',
  'kilogram',
  'kilograms',
  'liter',
  'liters',
  'milliliter',
  'milliliters',
];

/** Foods, cuts and heaps whose names are one slip away from a unit. */
export const NOT_UNITS: ReadonlySet<string> = new Set([
  'cap',
  'caps',
  'cub',
  'cubs',
  'cut',
  'cuts',
  'ground',
  'mound',
  'mounds',
  'round',
  'rounds',
  'tops',
]);

/** Number words that may stand before a measure, with the digits for them. */
export const NUMBER_WORDS: Readonly<Record<string, string>> = {
  a: '1',
  an: '1',
  one: '1',
  two: '2',
  three: '3',
  four: '4',
  five: '5',
  six: '6',
  seven: '7',
  eight: '8',
  nine: '9',
  ten: '10',
  twelve: '12',
  half: '1/2',
  quarter: '1/4',
};
