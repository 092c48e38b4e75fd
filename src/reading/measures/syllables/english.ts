import { syllable } from 'syllable';

/**
 * Words that the package counts otherwise than the CMU Pronouncing Dictionary does: common words, and words
 * of food and health. Names by letters (FDA) are among them.
 */
const CORRECTED: ReadonlyMap<string, number> = new Map(
  [
    'axe beer bye charge checked cheer deer drawer drawers else false flagged hatched large locked matched merge',
    'merged owe packed proof proud prove queen queer rubbed rye squeak squeeze stacked steer tagged tier tongue',
    'tongues begged wic; ashes barefoot baseball baseline bracelet carriage cashier chocolate classes',
    'cobbler cocoa courses crooked cushion dashes diamond diets doing elsewhere evening eyebrow fashion fireworks',
    'flours fluid fluids forest framework glasses going goodbye gracious grapefruit graveyard guesses guideline',
    'guidelines homemade homesick horseback horseshoe household housewife housework inches junior kcal lawyer',
    'lifelong lifestyle lifestyles losses marriage million milestones mr mrs nineteen ninety oranges passes peaches',
    'pigeon poem quinoa reaches reindeer relapse rosebud safety science seeing sequence soldier teaches tire tired',
    'touches unique unpacked; agreeing area areas bmi campfire carelessness cdc desire dieting element elements',
    'equation equations everyday everything fda hdl ideas ibs ldl linear linguine mph nausea nutrient nutrients',
    'oasis optional policeman sequences theater valuable vegetable vegetables whoever worcestershire; association',
    'cooperate coordinate diabetes diarrhea dictionary dietary dietetic dietician dieticians dietitian dietitians',
    'edamame entirely everybody laboratory professional usda vietnamese; orientation',
  ]
    .join(' ')
    .split('; ')
    .flatMap((words, index) => words.split(' ').map((word) => [word, index + 1] as const)),
);

/** Units are read out, as McLaughlin's rules of 1969 ask for short forms: "mg" is "milligrams". */
const READ_OUT: ReadonlyMap<string, number> = new Map(
  Object.entries({
    mg: 3,
    kg: 3,
    mcg: 3,
    ml: 4,
    tsp: 2,
    tbsp: 3,
    oz: 1,
    lb: 1,
    lbs: 1,
    fl: 2,
    hr: 1,
    hrs: 1,
    vs: 2,
  }),
);

/** Syllables of one English word as it is spoken, one at least. Capitals without a vowel are spelled out. */
export function englishSyllables(word: string): number {
  const plain = word.toLowerCase().replace(/[’']s$/u, '');
  const known = CORRECTED.get(plain) ?? READ_OUT.get(plain);
  if (known !== undefined) return known;
  if (/^[B-DF-HJ-NP-TV-XZ]{2,5}$/u.test(word)) return word.length + 2 * (word.match(/W/gu)?.length ?? 0);
  return Math.max(1, syllable(word));
}
