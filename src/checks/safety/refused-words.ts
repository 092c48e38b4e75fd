import type { RoomGroup } from '../../cautions/index.js';

/** What no lesson may say, by the rule that it breaks and the refusal of the register that it meets. */
export interface WordRule {
  readonly code: 'E03' | 'S02' | 'S09' | 'S10' | 'S11' | 'S12' | 'S13' | 'S14' | 'S15';
  readonly refusal: string;
  /** What the words do, after "… in text". */
  readonly what: string;
  readonly instead: string;
  /** English; each is looked for in one sentence, whatever the case. */
  readonly patterns: readonly string[];
  /** A sentence that warns against it says so with a "no", and is left alone. */
  readonly unlessDenied: boolean;
  /** A sentence with one of these words means something harmless. */
  readonly unless?: string;
  /** Only when one of these is in the room by the lesson's own words. */
  readonly rooms?: RoomGroup;
}

const BABY = '(?:bab(?:y|ies)|infants?|newborns?)';
const MEDICINE =
  '(?:insulin|medicines?|medications?|pills?|tablets?|dos(?:e|es)|metformin|statins?|warfarin|blood thinners?|inhalers?|blood pressure pills?|water pills?)';
const DOSE = '\\d[\\d,.]* ?(?:mg|mcg|[µμ]g|ug|micrograms?|milligrams?|IU|international units)';
const SUPPLEMENT =
  '(?:supplements?|tablets?|capsules?|gummies|drops|powders?|multivitamins?|pills?|kelp|fish oil)';
const WEIGHT = '(?:pounds?|lbs?|kilos?|kilograms?|kg)';

export const WORD_RULES: readonly WordRule[] = [
  {
    code: 'E03',
    refusal: 'R24',
    what: 'changes a medicine',
    instead: 'Name the medicine type and ask the reader to speak with the care team.',
    unlessDenied: true,
    patterns: [
      `(?:stop|quit|skip|halve|double|cut|lower|raise|increase|reduce|change|adjust|leave out)(?:ping|ting|ing)? (?:taking )?(?:your|the|a|his|her|their) (?:[a-z-]+ ){0,2}${MEDICINE}`,
      `(?:come|coming|get|getting|go) off (?:your|the|his|her|their) (?:[a-z-]+ ){0,2}${MEDICINE}`,
      `(?:instead of|in place of|replaces?|no longer need) (?:your|the|a) (?:[a-z-]+ ){0,2}${MEDICINE}`,
      'units? (?:of insulin )?for every \\d+ ?g(?:rams?)?',
      'insulin[- ]to[- ]carb ratio of',
    ],
  },
  {
    code: 'E03',
    refusal: 'R24',
    what: 'promises to heal',
    instead: 'Say what the food holds, and what it is linked with where a source says so.',
    unlessDenied: true,
    patterns: [
      '(?:cures?|heals?|reverses?|prevents?|beats?) (?:your |the )?(?:[a-z0-9]+ ){0,2}(?:diabetes|cancer|heart disease|high blood pressure|arthritis|disease|strokes?|dementia)',
      '(?:boosts?|boosting) (?:your |the )?immun[a-z]+',
      'detox(?:es|ing|ify|ifies)? (?:your|the|you)',
      '(?:flush|clean|cleanse)(?:es|ing)? (?:out )?(?:your |the )?(?:body|liver|kidneys|toxins)',
    ],
  },
  {
    code: 'S02',
    refusal: 'R27',
    what: 'plans carbohydrate below what a group sheet may',
    instead: 'Show energy-split of one invented day; a medical team plans such eating.',
    unlessDenied: true,
    patterns: [
      '(?:under|below|less than|at most|only|stay (?:under|below)) (?:[1-4]?\\d) ?(?:g|grams?) (?:of )?(?:net )?carb[a-z]*(?: (?:a|per) day)?',
      '(?:under|below|less than|at most|only) \\d ?(?:%|percent) (?:of (?:your )?(?:energy|calories) )?(?:from )?carb[a-z]*',
    ],
  },
  {
    code: 'S09',
    refusal: 'R20',
    what: 'takes wheat-free, oats or a missing "may contain" for gluten-free or safe',
    instead: 'Use the term gluten-free with the label line, and keep the test-first box.',
    unlessDenied: true,
    patterns: [
      'wheat[- ]free (?:means|is|are|and so|so it is|=) (?:also )?(?:gluten[- ]free|safe)',
      '(?:wheat[- ]free)\\b[^.?!]{0,60}\\b(?:for|if you have) c(?:o)?eliac',
      '(?:all|plain|any|pure) oats (?:are|is) (?:naturally )?(?:gluten[- ]free|safe)',
      'oats (?:are|is) (?:naturally )?gluten[- ]free',
      'no ["“]?may contain["”]?[^.?!]{0,40}\\b(?:safe|free)',
    ],
  },
  {
    code: 'S10',
    refusal: 'R03',
    what: 'gives honey to a baby',
    instead: 'Use fruit, or set the audience to 12 months and over.',
    unlessDenied: true,
    patterns: [`honey\\b[^.?!]{0,80}\\b${BABY}`, `${BABY}\\b[^.?!]{0,80}\\bhoney`],
  },
  {
    code: 'S10',
    refusal: 'R04',
    what: 'swaps a baby’s milk or makes formula at home',
    instead: 'Remove it; a baby’s main drink is not for a group sheet.',
    unlessDenied: true,
    patterns: [
      '(?:home-?made|make your own|diluted?|water down|stretch) (?:the |your |baby )*formula',
      `(?:give|offer|feed|swap|switch)(?:ing)? (?:your |the |a )?${BABY}\\b[^.?!]{0,60}\\b(?:cow[’']?s? milk|goat[’']?s? milk|oat (?:milk|drink)|soy (?:milk|drink)|almond (?:milk|drink)|rice (?:milk|drink)|plant (?:milk|drink))`,
    ],
  },
  {
    code: 'S11',
    refusal: 'R08',
    what: 'foretells weight on a straight line',
    instead: 'Use pace-chart: weight change slows and levels off, and people differ.',
    unlessDenied: true,
    patterns: [
      '3,?500[- ](?:k?cal(?:orie)?s?)\\b[^.?!]{0,60}\\b(?:pound|lb)',
      `(?:lose|drop|shed|melt|take off)(?:s|ing)? (?:about |up to |around )?\\d[\\d.,]* ?${WEIGHT}\\b[^.?!]{0,40}\\b(?:in|by|within|every|each|per) (?:just )?(?:\\d+|a|an|one|two|three|four|five|six|seven|eight|nine|ten|twelve)? ?(?:days?|weeks?|months?|years?|spring|summer|fall|winter|christmas|new year)`,
      `(?:lose|drop|shed|take off)(?:s|ing)? (?:about |up to |around )?(?:a|one|two|three|four|five|six|ten|half a|\\d[\\d.,]*) ?${WEIGHT} (?:a|per|each|every|in|by)`,
      `\\d[\\d.,]* ?${WEIGHT} (?:lighter|less|down|gone) (?:in|by|within|after) `,
    ],
  },
  {
    code: 'S11',
    refusal: 'R09',
    what: 'sets or asks for a personal number',
    instead: 'Use the invented example adult; a dietitian sets personal targets.',
    unlessDenied: true,
    patterns: [
      '(?:you|your body) (?:should|must|need to|can|may) (?:eat|have|get|aim for) (?:about |only |up to )?\\d[\\d,]{2,} ?(?:k?cal(?:orie)?s?|kilocalories)',
      '(?:your|my) (?:calorie|energy|weight|kcal) (?:goal|target|limit|budget)',
      '(?:cut|drop|save|lose|eat) (?:out )?(?:about |around |only )?\\d[\\d,]* ?(?:k?cal(?:orie)?s?|kilocalories) (?:less |fewer |more )?(?:a|per|each|every) (?:day|week)',
      '(?:your|my) (?:goal|target|ideal) weight',
      '(?:write|fill|put) (?:down |in )?your (?:height|weight|bmi|waist)',
      '(?:work out|calculate|find|know) your (?:bmi|body mass index|ideal weight|calorie needs?)',
    ],
  },
  {
    code: 'S12',
    refusal: 'R12',
    what: 'is about eating so little that it is medical treatment',
    instead: 'Say that such plans need a clinic; the care team runs them.',
    unlessDenied: true,
    patterns: [
      'replac(?:e|es|ing) (?:all|your|two|three|every|most) (?:of )?(?:your )?meals? (?:with|by) (?:shakes?|juices?|smoothies|soups?|powders?)',
      '(?:total )?meal[- ]replacements? (?:plan|diet|shakes? (?:for|instead))',
      '(?:very[- ]low[- ]calorie|crash) (?:diet|plan)',
      '(?:eat|have|get|stay (?:under|below)|only|under|less than|at most) (?:about |only |up to )?(?:[1-9]\\d{2}|1,?[01]\\d{2}) ?(?:k?cal(?:orie)?s?|kilocalories) (?:a|per|each|in a|the whole) day',
      '(?:an? )?(?:[1-9]\\d{2}|1,?[01]\\d{2})[- ](?:k?cal(?:orie)?) (?:diet|plan|day)',
    ],
  },
  {
    code: 'S13',
    refusal: 'R13',
    what: 'plans a fast or a diet of one thing',
    instead: 'Use gap-grid to show what it leaves out. For a fast of faith, point to the care team.',
    unlessDenied: true,
    patterns: [
      'fast(?:ing)? (?:for|of) (?:\\d+|a|one|two|three|twelve|sixteen|twenty) (?:hours?|days?)',
      '(?:16|18|20|14|12) ?[:/] ?(?:8|6|4|10|12) (?:fast|fasting|plan|method|window)',
      '(?:eat|eating) only (?:between|from) \\d{1,2}(?:[.:]\\d\\d)? ?(?:am|pm)?',
      '(?:juice|water|soup|smoothie|cabbage|grapefruit|raw)[- ](?:only )?(?:cleanse|fast|diet|detox) (?:for|of|day|plan)',
      '(?:one|two) meals? (?:a|per|each) day',
      'stop eating (?:at|by|after|before) (?:\\d|noon)',
      'eat(?:ing)? (?:only )?(?:with)?in (?:a |an )?\\d+.hours?|eating window|time[- ]restricted eating',
      '(?:eat|drink) (?:nothing but|only) (?:juice|water|soup|fruit|raw food|cabbage|smoothies)',
    ],
  },
  {
    code: 'S14',
    refusal: 'R17',
    what: 'names the dose of a supplement',
    instead: 'Name the nutrient and foods that hold it; the care team names a dose.',
    unlessDenied: false,
    patterns: [
      `${DOSE}\\b[^.?!]{0,50}\\b${SUPPLEMENT}\\b`,
      `\\b${SUPPLEMENT}\\b[^.?!]{0,50}\\b${DOSE}`,
      `take (?:a |an |one |two |\\d+ )?(?:daily )?${SUPPLEMENT} (?:of|with) ${DOSE}`,
    ],
  },
  {
    code: 'S15',
    refusal: 'R22',
    what: 'types a temperature',
    instead: 'Let safe-food print it: it comes from the one table, rounded the safe way.',
    unlessDenied: false,
    unless: 'ovens?|bake[ds]?|baking|roast(?:ed|ing)?|outside|weather',
    patterns: [
      '\\d{2,3} ?(?:°|º|degrees?) ?(?:F|C|Fahrenheit|Celsius)?(?![\\p{L}])',
      '\\d{2,3} ?(?:Fahrenheit|Celsius)',
    ],
  },
  {
    code: 'S15',
    refusal: 'R23',
    what: 'teaches a method that can poison when it goes wrong',
    instead: 'Leave it out, and point to the extension office or a tested book.',
    unlessDenied: true,
    patterns: [
      '(?:can|canning|bottle|bottling|jar|jarring)(?:ned)? (?:your own|at home|beans at home|vegetables at home|meat at home|them yourself)',
      'home[- ]?(?:canning|canned|bottled|cured)',
      '(?:garlic|herbs?|peppers?) (?:in|under|covered with) (?:olive |vegetable )?oil\\b[^.?!]{0,60}\\b(?:keep|store|leave|sit|shelf|counter)',
      '(?:cure|curing|cured) (?:your own |the )?(?:meat|ham|bacon|fish) (?:at home|yourself)',
      '(?:grow|sprout)(?:ing)? (?:your own )?(?:sprouts|beans|seeds) (?:in a jar|at home|on the counter)',
      '(?:put|add|cook)(?:ing)? (?:the )?(?:dry|dried|raw) (?:red )?(?:kidney|cannellini) beans?\\b[^.?!]{0,60}\\bslow cooker',
    ],
  },
  {
    code: 'S15',
    refusal: 'R28',
    what: 'offers risky food to people who must not have it',
    instead: 'Use the cooked or pasteurized form.',
    unlessDenied: true,
    rooms: 'frail',
    patterns: [
      '(?:try|use|enjoy|have|eat|add|choose|drink|serve)(?:s|ing)? (?:some |more |a |the )?(?:raw (?:milk|fish|egg|eggs|sprouts|oysters|cookie dough)|unpasteurized (?:milk|juice|cheese)|runny eggs?|rare (?:meat|burgers?|beef)|sushi|cold (?:deli )?(?:cuts|meats?))',
    ],
  },
];
