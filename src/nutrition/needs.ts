import type { IngredientGroup } from './ingredient-words.js';

/** What a need says of a group: it breaks the need, or it may stand there only under a condition. */
export interface NeedRule {
  readonly group: IngredientGroup;
  /** `null` breaks the need; else what has to be so, as a label says it. */
  readonly onlyIf: string | null;
  /** Why, in a few plain words. */
  readonly why: string;
}

/** What people leave out of their food, and why. */
export interface Need {
  /** A way of eating, an allergy, a faith rule, or a limit. */
  readonly about: 'way of eating' | 'allergy or intolerance' | 'faith' | 'limit';
  readonly rules: readonly NeedRule[];
  /** Lines that a page with this need must bear in mind; in words, because no table can test them. */
  readonly notes: readonly string[];
  /** Whether the word is defined by rule, so that a label that bears it may be leaned on. */
  readonly labelCounts: boolean;
  readonly source: string;
}

const breaks = (why: string, ...groups: readonly IngredientGroup[]): NeedRule[] =>
  groups.map((group) => ({ group, onlyIf: null, why }));
const onlyIf = (condition: string, why: string, ...groups: readonly IngredientGroup[]): NeedRule[] =>
  groups.map((group) => ({ group, onlyIf: condition, why }));

const FROM_MEMORY = 'definitions in common use, from memory';
const ALLERGY = 'nine major allergens, Federal Food, Drug, and Cosmetic Act section 201(qq), from memory';
const READ = 'Read the label every time: recipes change.';
const CROSS = 'Keep board, knife, pot and spoon apart.';

const ANIMALS = [
  ...breaks('it is an animal', 'meat', 'fish', 'shellfish'),
  ...breaks('it is taken from a dead animal', 'gelatin', 'animal fat or extract'),
  ...breaks('it is made of insects', 'insect product'),
];
const RENNET = onlyIf(
  'the rennet is not from animals',
  'some cheese is set with rennet from calves',
  'animal rennet',
);
const MILK = breaks('it is milk or made of milk', 'milk');
const EGG = breaks('it is egg or made of egg', 'egg');

const vegetarian = (more: readonly NeedRule[], notes: readonly string[] = []): Need => ({
  about: 'way of eating',
  rules: [...ANIMALS, ...more],
  notes: [READ, ...notes],
  labelCounts: true,
  source: FROM_MEMORY,
});
const allergy = (why: string, ...groups: readonly IngredientGroup[]): Need => ({
  about: 'allergy or intolerance',
  rules: breaks(why, ...groups),
  notes: [READ, CROSS, '"May contain" is voluntary; where it does not stand, nothing is proved.'],
  labelCounts: false,
  source: ALLERGY,
});

/**
 * Needs that a lesson may name. None is a prescription, and none judges a diet. Halal-style and kosher-style look at
 * ingredients only; whether food is halal or kosher is for those who certify it.
 */
export const NEEDS = {
  vegan: vegetarian(
    [
      ...MILK,
      ...EGG,
      ...breaks('it is made by bees', 'honey'),
      ...breaks('it is from the stomach of a calf', 'animal rennet'),
      ...onlyIf('the vitamin D is not from wool', 'vitamin D3 is often made from wool', 'wool fat'),
    ],
    ['Vitamin B12 has to come from fortified food or a supplement.'],
  ),
  vegetarian: vegetarian(RENNET, ['Milk and egg are in.']),
  'lacto-vegetarian': vegetarian([...RENNET, ...EGG], ['Milk is in, egg is out.']),
  'ovo-vegetarian': vegetarian(
    [...MILK, ...breaks('it is from the stomach of a calf', 'animal rennet')],
    ['Egg is in, milk is out.'],
  ),
  pescatarian: {
    ...vegetarian([], ['Fish and shellfish are in.']),
    rules: [
      ...breaks('it is meat', 'meat'),
      ...breaks('it is taken from a dead land animal', 'animal fat or extract'),
      ...onlyIf('the gelatin is from fish', 'most gelatin is from pigs or cattle', 'gelatin'),
      ...breaks('it is made of insects', 'insect product'),
      ...RENNET,
    ],
  },
  'gluten-free': {
    about: 'allergy or intolerance',
    rules: [
      ...breaks('it is wheat, rye, barley or made of them; malt is barley', 'gluten'),
      ...onlyIf(
        'the oats are labeled gluten-free',
        'oats pick up wheat and barley in field and mill',
        'oats',
      ),
    ],
    notes: [
      READ,
      CROSS,
      'Wheat-free is not gluten-free.',
      'Celiac disease is tested before gluten is stopped.',
      'It is not a diet for losing weight.',
    ],
    labelCounts: true,
    source: '21 CFR 101.91 (under 20 ppm); grains from memory',
  },
  'wheat-free': allergy('it is wheat or made of it', 'wheat'),
  'dairy-free': allergy('it is milk or made of milk', 'milk'),
  'egg-free': allergy('it is egg or made of egg', 'egg'),
  'nut-free': allergy('it is a nut or a peanut', 'tree nut', 'peanut'),
  'peanut-free': allergy('it is peanut', 'peanut'),
  'tree-nut-free': allergy('it is a tree nut', 'tree nut'),
  'fish-free': allergy('it is fish or made of fish', 'fish'),
  'shellfish-free': allergy('it is shellfish or made of it', 'shellfish'),
  'soy-free': allergy('it is soy or made of soy', 'soy'),
  'sesame-free': allergy('it is sesame or made of it', 'sesame'),
  'halal-style': {
    about: 'faith',
    rules: [
      ...breaks('it is from a pig', 'pork'),
      ...breaks('it is alcohol', 'alcohol'),
      ...onlyIf(
        'it is certified halal',
        'it depends on how the animal was slaughtered',
        'meat',
        'gelatin',
        'animal fat or extract',
        'animal rennet',
      ),
      ...onlyIf('it is certified halal', 'authorities differ on color from insects', 'insect product'),
    ],
    notes: ['Only ingredients were looked at. Ask those who certify.', READ],
    labelCounts: true,
    source: FROM_MEMORY,
  },
  'kosher-style': {
    about: 'faith',
    rules: [
      ...breaks('it is from a pig', 'pork'),
      ...breaks('it has no fins and scales', 'shellfish', 'fish without scales'),
      ...breaks('it is made of insects', 'insect product'),
      ...onlyIf(
        'it is certified kosher',
        'it depends on the animal and how it was slaughtered',
        'meat',
        'gelatin',
        'animal fat or extract',
      ),
      ...onlyIf('it is certified kosher', 'cheese is set with rennet', 'animal rennet'),
      ...onlyIf('it is certified kosher', 'wine is made under supervision', 'alcohol'),
    ],
    notes: [
      'Meat and milk are not in one dish.',
      'Only ingredients were looked at. Ask those who certify.',
      READ,
    ],
    labelCounts: true,
    source: FROM_MEMORY,
  },
  'low-sodium': {
    about: 'limit',
    rules: [],
    notes: [
      'Potassium salt is not safe in kidney disease or with some blood pressure medicines: ask first.',
      'People with a limit of their own follow that one.',
    ],
    labelCounts: false,
    source: '21 CFR 101.61(b)(4), 140 mg per reference amount; on the usual portion by house rule',
  },
} as const satisfies Readonly<Record<string, Need>>;
export type NeedName = keyof typeof NEEDS;

/** The most sodium in a usual portion of a food for `low-sodium`, in mg. */
export const LOW_SODIUM_MG = 140;

/** The needs by name, in the order in which they are listed. */
export const NEED_NAMES = Object.keys(NEEDS) as readonly NeedName[];
