import type { Published } from './published.js';

/** Ways of eating whose short nutrients are known. */
export const PATTERNS_AT_RISK = [
  'vegan',
  'vegetarian',
  'very low carbohydrate',
  'grain-free',
  'dairy-free',
  'gluten-free',
  'low sodium',
  'very low fat',
] as const;
export type PatternAtRisk = (typeof PATTERNS_AT_RISK)[number];

/** A nutrient or food matter that a way of eating can leave short. */
export interface AtRisk extends Published {
  /** A nutrient of the food table where there is one of that name, else words (`omega-3 (EPA/DHA)`). */
  readonly nutrient: string;
  /** `must say`: a page about the pattern has to name it. `watch`: it should. */
  readonly weight: 'must say' | 'watch';
}

/** What is known of a way of eating. */
export interface PatternRisk {
  readonly nutrients: readonly AtRisk[];
  /** Lines that are no nutrient and have to be said too. */
  readonly say: readonly string[];
}

const rows = (weight: AtRisk['weight'], source: string, ...names: readonly string[]): AtRisk[] =>
  names.map((nutrient) => ({ nutrient, weight, source, checked: 'memory' }));

const POSITION = 'Academy of Nutrition and Dietetics, position on vegetarian patterns for adults (2025)';
const GLUTEN = 'Cardo A et al. Nutrients 2021, on gluten-free diets';
const TRADE = 'dietetic practice, no single source';

/**
 * Nutrients at risk by way of eating, for adults. All rows are from memory and marked so; a dietitian confirms the
 * table before it is first used. It names what to look at; it says of nobody that they lack it.
 */
export const NUTRIENTS_AT_RISK: Readonly<Record<PatternAtRisk, PatternRisk>> = {
  vegan: {
    nutrients: [
      ...rows('must say', POSITION, 'vitamin B12'),
      ...rows(
        'watch',
        POSITION,
        'vitamin D',
        'calcium',
        'iodine',
        'iron',
        'zinc',
        'omega-3 (EPA/DHA)',
        'choline',
        'selenium',
      ),
    ],
    say: ['Vitamin B12 comes from fortified food or a supplement.', 'Protein from several kinds of plants.'],
  },
  vegetarian: {
    nutrients: rows('watch', POSITION, 'iron', 'zinc', 'vitamin B12', 'omega-3 (EPA/DHA)'),
    say: [],
  },
  'very low carbohydrate': {
    nutrients: rows(
      'watch',
      TRADE,
      'fiber',
      'thiamin',
      'folate',
      'vitamin C',
      'potassium',
      'magnesium',
      'calcium',
      'selenium',
    ),
    say: [
      'People who take medicine for blood sugar or blood pressure need a review by their care team first.',
      'LDL cholesterol can rise.',
      'Kidney stones are seen with therapeutic use.',
    ],
  },
  'grain-free': {
    nutrients: rows('watch', TRADE, 'thiamin', 'folate', 'fiber', 'iodine'),
    say: [],
  },
  'dairy-free': {
    nutrients: rows('watch', TRADE, 'calcium', 'vitamin D', 'iodine'),
    say: [],
  },
  'gluten-free': {
    nutrients: [
      ...rows('watch', GLUTEN, 'fiber', 'iron', 'folate'),
      ...rows(
        'watch',
        GLUTEN,
        'thiamin',
        'riboflavin',
        'niacin',
        'vitamin B12',
        'calcium',
        'magnesium',
        'vitamin D',
      ),
    ],
    say: [
      'Celiac disease is tested before gluten is stopped.',
      'It is not a diet for losing weight.',
      'Rice every day can bring arsenic: vary the grains.',
    ],
  },
  'low sodium': {
    nutrients: rows('watch', TRADE, 'iodine'),
    say: ['Salt substitutes with potassium are not safe in kidney disease or with ACE inhibitors.'],
  },
  'very low fat': {
    nutrients: rows('watch', TRADE, 'vitamin E', 'essential fatty acids'),
    say: [],
  },
};

/** The nutrients of a pattern by weight, `must say` first. */
export function nutrientsAtRisk(pattern: PatternAtRisk): readonly AtRisk[] {
  const { nutrients } = NUTRIENTS_AT_RISK[pattern];
  return [
    ...nutrients.filter(({ weight }) => weight === 'must say'),
    ...nutrients.filter(({ weight }) => weight === 'watch'),
  ];
}

/**
 * What a text about a pattern leaves unsaid, in the words of the table: every `must say` nutrient that none of the given
 * names is. Names are compared in any case.
 */
export function unsaidAtRisk(pattern: PatternAtRisk, named: readonly string[]): readonly string[] {
  const said = new Set(named.map((name) => name.toLowerCase()));
  return nutrientsAtRisk(pattern).flatMap(({ nutrient, weight }) =>
    weight === 'must say' && !said.has(nutrient.toLowerCase()) ? [nutrient] : [],
  );
}
