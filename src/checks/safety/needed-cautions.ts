/** Content that may not go out without its cautions, looked for apart from what the register pulls. */
export interface NeedRule {
  readonly code:
    | 'S01'
    | 'S02'
    | 'S03'
    | 'S04'
    | 'S05'
    | 'S06'
    | 'S08'
    | 'S09'
    | 'S10'
    | 'S13'
    | 'S14'
    | 'S16';
  /** What stands in the lesson, for the message. */
  readonly what: string;
  /** Every one of these has to be pulled. */
  readonly needs: readonly string[];
  /** English words of one sentence. */
  readonly patterns?: readonly string[];
  /** A food with one of these flags. */
  readonly flags?: readonly string[];
  readonly topics?: readonly string[];
}

const LESS =
  '(?:cut|cuts|cutting|less|lower|reduce|reduces|skip|skips|hide|no more|give up|leave out|without)';

/**
 * Only the plainest signs: where the register's own triggers look wider, a lesson may take a caution off with a
 * reason; where these signs stand, it may not.
 */
export const NEED_RULES: readonly NeedRule[] = [
  {
    code: 'S01',
    what: 'potassium salt',
    needs: ['potassium-salt'],
    flags: ['potassium-chloride'],
    topics: ['potassium salt', 'sodium down'],
    patterns: ['(?:salt substitutes?|potassium (?:salt|chloride)|lite salt|half salt|low[- ]sodium salt)'],
  },
  {
    code: 'S01',
    what: 'more potassium from food',
    needs: ['potassium-foods'],
    topics: ['potassium-rich foods'],
    patterns: ['(?:high in potassium|potassium[- ]rich|more potassium)'],
  },
  {
    code: 'S02',
    what: 'less carbohydrate',
    needs: ['carb-low-sugar', 'carb-sglt2'],
    topics: ['carbohydrate down', 'fasting', 'skipping meals'],
    patterns: [
      `${LESS} (?:out |back (?:on )?|down (?:on )?|all |the |your |on )*(?:carbs|carbohydrates?|starch(?:es)?)`,
      '(?:low[- ]carb|keto|ketogenic|no[- ]carb)',
      '(?:skip|skips|skipping) (?:breakfast|lunch|supper|dinner|a meal|meals)',
    ],
  },
  {
    code: 'S03',
    what: 'less sodium',
    needs: ['sodium-lithium', 'sodium-heart-water-pills'],
    topics: ['sodium down'],
    patterns: [
      `${LESS} (?:out |back (?:on )?|down (?:on )?|all |the |your |on )*(?:salt|sodium)`,
      '(?:low[- ]salt) (?:diet|plan|eating)',
    ],
  },
  {
    code: 'S04',
    what: 'when to have calcium or iron',
    needs: ['thyroid-tablet', 'antibiotic-minerals'],
    topics: ['calcium timing', 'iron timing'],
    patterns: [
      '(?:calcium|iron) (?:tablets?|pills?|supplements?)\\b[^.?!]{0,60}\\b(?:morning|evening|breakfast|supper|night|bed)',
    ],
  },
  {
    code: 'S05',
    what: 'more or fewer greens',
    needs: ['warfarin-greens'],
    topics: ['greens steady'],
    patterns: [
      '(?:more|fewer|no more|add|give up) (?:dark |leafy )*(?:greens|kale|spinach|collards)',
      'vitamin K',
    ],
  },
  { code: 'S06', what: 'grapefruit or its kind', needs: ['grapefruit-medicine'], flags: ['grapefruit-kind'] },
  { code: 'S06', what: 'aged or fermented food', needs: ['maoi-aged-food'], flags: ['aged-fermented'] },
  { code: 'S06', what: 'liver', needs: ['liver-vitamin-a'], flags: ['liver'] },
  { code: 'S06', what: 'star fruit', needs: ['star-fruit-kidney'], flags: ['star-fruit'] },
  {
    code: 'S08',
    what: 'a free-from word',
    needs: ['allergen-label', 'allergen-cross-contact'],
    topics: ['allergy'],
    patterns: [
      '(?:tree[- ]?nut|nut|peanut|dairy|milk|egg|soy|fish|shellfish|sesame|wheat|gluten)[- ]free',
      'allergy[- ](?:safe|friendly)',
    ],
  },
  {
    code: 'S09',
    what: 'gluten-free eating',
    needs: ['celiac-test-first', 'gluten-free-label'],
    topics: ['gluten-free'],
    patterns: ['gluten[- ]free'],
  },
  { code: 'S10', what: 'honey', needs: ['honey-infant'], flags: ['honey'], topics: ['honey', 'infants'] },
  {
    code: 'S10',
    what: 'a food that small children choke on',
    needs: ['choking-child'],
    flags: ['choke-shape'],
    topics: ['small round foods'],
  },
  {
    code: 'S10',
    what: 'a drink used as milk',
    needs: ['milk-infant'],
    flags: ['plant-drink', 'cow-milk-drink', 'rice-drink'],
  },
  {
    code: 'S13',
    what: 'a fast or a diet that leaves foods out',
    needs: ['fasting-not-for'],
    topics: ['fasting'],
    patterns: ['(?:fasting window|time-restricted eating|juice cleanse|water fast|detox diet)'],
  },
  {
    code: 'S13',
    what: 'a diet that leaves foods out',
    needs: ['diet-gaps'],
    topics: ['restrictive diet', 'vegan', 'dairy-free', 'gluten-free', 'carbohydrate down'],
  },
  {
    code: 'S14',
    what: 'vegan eating',
    needs: ['vegan-b12'],
    topics: ['vegan'],
    patterns: ['(?:go|going|eat|eating|be) vegan', 'vegan (?:diet|eating|day|week|meals?|plate)'],
  },
  {
    code: 'S14',
    what: 'supplements',
    needs: ['supplement-ask'],
    topics: ['supplements'],
    patterns: [
      '(?:take|takes|taking|buy|try) (?:a |an |your |some )?(?:[a-z0-9]+ ){0,2}(?:supplements?|multivitamins?|gummies|capsules?)',
    ],
  },
  {
    code: 'S16',
    what: 'more to drink',
    needs: ['fluids-limit'],
    topics: ['fluids', 'fiber up'],
    patterns: ['(?:drink|drinking) (?:more|plenty of|lots of) water', 'eight glasses'],
  },
  {
    code: 'S16',
    what: 'more fiber',
    needs: ['fiber-slowly'],
    topics: ['fiber up'],
    patterns: ['(?:eat|add|get|have|more) (?:more )?fiber (?:every|each|a|today|now)', 'more fiber'],
  },
  {
    code: 'S16',
    what: 'more protein',
    needs: ['protein-kidney'],
    topics: ['protein up'],
    patterns: ['(?:more|high|extra) protein', 'protein (?:shakes?|powders?)'],
  },
];
