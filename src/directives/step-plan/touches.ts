import { isSpoken, type Spoken } from '../../languages/index.js';
import type { Portioned, Touch } from './schema.js';
import { TOUCHES } from './schema.js';

/** Words of one language that say what a step touches, and what is never built. */
interface Words {
  readonly touches: Readonly<Record<Touch, RegExp>>;
  /** Fasting by the clock, and plans of one single thing. */
  readonly fasting: RegExp;
}

const CUT =
  '(?:cut\\p{L}*|skip\\p{L}*|swap\\p{L}*|trad\\p{L}*|replac\\p{L}*|drop\\p{L}*|less|fewer|reduc\\p{L}*|limit\\p{L}*|leav\\p{L}*|stop\\p{L}*|without|switch\\p{L}*|hal(?:f|ve)\\p{L}*|smaller|no|avoid\\p{L}*|give up|instead|in place of|rather than|(?:choose|choosing|pick|have|drink)(?= .*over)|delay\\p{L}*|miss\\p{L}*)';
/** Behind what there is less of. */
const LESS = 'less|fewer|smaller|out|away';
const ADD = '(?:add\\p{L}*|drink\\p{L}*|more|raise\\p{L}*|have|extra|increase\\p{L}*|sip\\p{L}*)';
const SWEET_DRINK =
  '(?:juices?|sodas?|colas?|soft drinks?|pop|lemonades?|sweet (?:tea|drink)s?|sweet\\p{L}* drinks?|sugary drinks?|sports drinks?|energy drinks?)';
const MEAL = '(?:meals?|breakfasts?|lunch\\p{L}*|dinners?|suppers?)';
const STARCH =
  '(?:snacks?|starch\\p{L}*|carb\\p{L}*|sugar\\p{L}*|sweet\\p{L}*|desserts?|cand\\p{L}*|cookies?|cakes?|bread|rice|pasta|noodles?|potato\\p{L}*|tortillas?|cereals?)';

/** Whole words in the order in which they stand, with anything between them. */
function words(...parts: readonly string[]): RegExp {
  return new RegExp(
    `(?<![\\p{L}\\p{N}])${parts.join('(?![\\p{L}\\p{N}]).*(?<![\\p{L}\\p{N}])')}(?![\\p{L}\\p{N}])`,
    'iu',
  );
}

/** What is done before the thing, or that there is less of it behind. */
function either(before: string, thing: string, behind: string): RegExp {
  return new RegExp(`${words(before, thing).source}|${words(thing, `(?:${behind})`).source}`, 'iu');
}

/** Any of these. */
function anyOf(...lists: readonly RegExp[]): RegExp {
  return new RegExp(lists.map(({ source }) => source).join('|'), 'iu');
}

const LISTS: Readonly<Record<Spoken, Words>> = {
  en: {
    touches: {
      'cuts carbohydrate': anyOf(
        either(CUT, `(?:${MEAL}|${STARCH}|${SWEET_DRINK}|calor\\p{L}*|kcal)`, LESS),
        words('(?:keto\\p{L}*|(?:low|no|zero|very low)[- ]carb\\p{L}*)'),
      ),
      'cuts sweet drinks': either(CUT, `(?:${SWEET_DRINK}|sugar)`, LESS),
      'skips a meal': anyOf(
        either(
          '(?:(?:skip|delay|miss|leav|push)\\p{L}*|without|no|later|fast(?! ?-?food))',
          `(?<!fast[- ]food )${MEAL}`,
          `${LESS}|later`,
        ),
        words('eat\\p{L}*', '(?:later|until (?:\\d.*|noon))'),
        words('(?:break\\p{L}*|keep\\p{L}*)', 'fast'),
      ),
      'cuts salt': words('(?:salt\\p{L}*|sodium|rins\\p{L}*|drain\\p{L}*|bouillon|soy sauce)'),
      'salt substitute': words(
        '(?:salt[- ](?:substitutes?|replacers?)|(?:lite|light|low[- ]sodium|potassium|mineral)[- ]salt|potassium chloride|other salt|salt[- ]alternatives?|(?:no|zero)[- ]sodium salt|sodium[- ]free salt)',
      ),
      'adds fiber': words('(?:fib(?:er|re)|bran|psyllium|high-fib(?:er|re).*)'),
      'adds water': words(ADD, '(?:(?<!(?:for|with) )water|fluids?|glass(?:es)? of (?:water|tea))'),
      'adds protein': words('(?:protein|whey)'),
      greens: words(
        '(?:greens|salads?|broccoli|kale|spinach|collards?|chard|brussels sprouts|lettuces?|parsley|cabbages?)',
      ),
      supplement: words(
        '(?:supplements?|vitamins?|multivitamins?|tablets?|pills?|capsules?|gumm(?:y|ies)|fish oil|protein powders?|whey|herbal.*|omega.*|magnesium|zinc|turmeric|biotin|melatonin)',
      ),
      activity: words(
        '(?:walk\\p{L}*|exercis\\p{L}*|run|running|jog\\p{L}*|swim\\p{L}*|danc\\p{L}*|cycl\\p{L}*|bik\\p{L}*|stairs|climb\\p{L}*|garden\\p{L}*|stretch\\p{L}*|yoga|gym|activity|active|move|moving|steps|squats?|push-?ups?|sit-?ups?|sports?|tennis|soccer|dumbbells?)',
      ),
      alcohol: words(
        '(?:alcohol\\p{L}*|wine|beers?|spirits|liquor|cocktails?|whisk\\p{L}*|vodka|rum|gin|cider|tequila|nightcaps?)',
      ),
    },
    fasting: new RegExp(
      '(?<![\\p{L}\\p{N}])(?:fasting(?: (?:days?|hours?|window|plan))?|' +
        '(?<!(?:walk|run|swim|danc|cycl|bik|mov|going|go)\\p{L}* |break\\p{L}* (?:the|your|my|a) )fast (?:for|until|till|from|on|every|each|one|two|three|a |\\d)|' +
        'eat(?:ing)? only (?:between|from|raw|juice|fruit|soup|one food)|only (?:juice|raw food)|' +
        '(?:juice|raw|raw food|soup|smoothie|water|fruit)[- ]only|' +
        '(?:juice|water|soup|smoothie|raw) (?:cleanse|fast|days?|diet|detox)|cleanse|detox|' +
        'eat(?:ing)? (?:only )?(?:with)?in (?:a |an )?\\d+.hours?|eating window|time[- ]restricted|one meal (?:a|per|each) day|' +
        'stop eating (?:at|by|after|before) (?:\\d|noon)|' +
        '(?:nothing|no food|no eating) (?:after|before|until|till) (?:\\d|noon)|' +
        '(?:16|18|20|14|12) ?[:/] ?(?:8|6|4|10|12))(?![\\p{L}\\p{N}])',
      'iu',
    ),
  },
};

/**
 * What a step touches, by its own words and by the food that comes or goes. In a language without lists it may
 * touch everything, so that no caution is lost.
 */
export function touchesOf(
  action: string,
  change: Portioned | undefined,
  rinses: boolean,
  language: string,
): Touch[] {
  if (!isSpoken(language)) return [...TOUCHES];
  const { touches } = LISTS[language];
  const byFood = change ? foodTouches(change) : [];
  return TOUCHES.filter(
    (touch) => touches[touch].test(action) || byFood.includes(touch) || (rinses && touch === 'cuts salt'),
  );
}

/** A value that is not known counts as one that matters. */
function foodTouches({ way, food, tells }: Portioned): Touch[] {
  const { plate, flags, per100g } = food;
  const some = (value: number | null, least: number) => value === null || value >= least;
  const starchy = some(per100g.carbohydrate, 5);
  const less = way === 'less';
  return [
    ...(less && starchy ? (['cuts carbohydrate'] as const) : []),
    ...(less && plate.includes('drink') && some(per100g.sugars, 2) ? (['cuts sweet drinks'] as const) : []),
    ...(tells === 'sodium' || (less && some(per100g.sodium, 300)) ? (['cuts salt'] as const) : []),
    ...(!less && plate.includes('protein') ? (['adds protein'] as const) : []),
    ...(!less && /^(?:drinking |tap |plain )?water\b/.test(food.name) ? (['adds water'] as const) : []),
    ...(flags.includes('leafy-green') ? (['greens'] as const) : []),
    ...(flags.includes('alcohol') ? (['alcohol'] as const) : []),
    ...(!less && flags.includes('potassium-chloride') ? (['salt substitute'] as const) : []),
  ];
}

/** Whether a step plans a fast, or eating of one thing alone. */
export function plansFast(action: string, language: string): boolean {
  return isSpoken(language) && LISTS[language].fasting.test(action);
}
