import { isSpoken, type Spoken } from '../../languages/index.js';
import type { Often } from './schema.js';

/** Words that count, and verbs that begin an action. Whole words. */
interface Grammar {
  readonly numbers: Readonly<Record<string, number>>;
  /** Counts a thing: a digit, a number in words, or an article. */
  readonly counted: RegExp;
  readonly joined: RegExp;
  readonly often: RegExp;
}

const NUMBERS = {
  a: 1,
  an: 1,
  one: 1,
  once: 1,
  two: 2,
  twice: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
};
const NUMBER = `(?:${Object.keys(NUMBERS).join('|')}|\\d{1,2})`;
const VERB =
  '(?:add|ask|avoid|bake|boil|bring|buy|carry|check|choose|chop|cook|cut|dance|drain|drink|eat|fill|freeze|give|go|grill|halve|have|join|keep|leave|limit|make|measure|mix|move|order|pack|pick|plan|plant|play|pour|prepare|put|read|reduce|replace|rinse|roast|serve|set|share|skip|sleep|soak|start|steam|stop|stretch|swap|switch|take|trade|try|turn|use|walk|wash|watch|weigh|write)';

const LISTS: Readonly<Record<Spoken, Grammar>> = {
  en: {
    numbers: NUMBERS,
    counted:
      /[\d½¼¾]|(?<!\p{L})(?:an?|one|two|three|four|five|six|seven|eight|nine|ten|once|twice|half|double|every|each|daily|weekly)(?!\p{L})/iu,
    joined: new RegExp(
      `(?<!\\p{L})(?:and|then|&|\\+)\\s+(?:then\\s+|also\\s+)?${VERB}(?:\\s+(?!(?:every|each|a|an|per)\\s+(?:day|week))\\p{L}|\\s+\\d)`,
      'iu',
    ),
    often: new RegExp(
      `(?:(?<!\\p{L})(${NUMBER})(?: times| days| nights| mornings| evenings)? )?` +
        '(?:(?:an?|every|each|per|the) (day|week|night|morning|evening|breakfast|lunch|dinner|supper)(?!\\p{L})|(daily|weekly)(?!\\p{L}))',
      'iu',
    ),
  },
};

/** Whether two actions stand in one step: a second verb after "and". Languages without a list are not looked at. */
export function isTwoActions(action: string, language: string): boolean {
  return isSpoken(language) && LISTS[language].joined.test(action);
}

/** Whether the words count what is done. Languages without a list count as counted. */
export function isCounted(action: string, language: string): boolean {
  return !isSpoken(language) || LISTS[language].counted.test(action);
}

/** How often, in the words of the step: `a day`, `twice a week`, `every day`; nothing where they do not say. */
export function oftenIn(action: string, language: string): Often | undefined {
  if (!isSpoken(language)) return undefined;
  const { often, numbers } = LISTS[language];
  const found = often.exec(action);
  if (!found) return undefined;
  const [, count, period = '', adverb = ''] = found;
  // "the week" is no count of times, and "the day" neither.
  if (/\bthe (?:day|week|night|morning|evening)\b/i.test(found[0])) return undefined;
  const times = count === undefined ? 1 : (numbers[count.toLowerCase()] ?? Number(count));
  return times > 0 ? { times, per: /week/i.test(period + adverb) ? 'week' : 'day' } : undefined;
}

/** `7 a week`, `2 a day`, as the fact `times` is written. */
export function readTimes(words: string): Often | undefined {
  const found = /^(\d{1,2}) (?:times )?(?:an?|per) (day|week)$/i.exec(words.trim().replace(/\s+/g, ' '));
  const times = Number(found?.[1]);
  const per = found?.[2]?.toLowerCase();
  const most = per === 'day' ? 12 : 42;
  return (per === 'day' || per === 'week') && times >= 1 && times <= most ? { times, per } : undefined;
}
