import type { Attribute } from '../../lesson/index.js';
import { type Amount, type MassUnit, screen, YOUNGEST_FOR_WEIGHT } from '../../nutrition/index.js';
import type { ReadContext } from '../contract.js';
import { quoted, readProblem } from '../problems.js';
import { ACTIVITIES, type Activity, type Example, type Height, WHO, type Who } from './schema.js';

/** Words that make an example somebody's own, or a goal of it. */
const PERSONAL =
  /\b(?:you|yours?|yourself|my|mine|me|i|our|we|us|reader|patient|client|member|participant|learner|name|named|goal|target|ideal)\b/i;
/** People for whom the model is not made. */
const NOT_FOR =
  /\b(?:pregnan\w*|expecting|breast-?feeding|nursing|child\w*|kid|kids|teen\w*|girl|boy|baby|infant|toddler)\b/i;

/** Whether words make the chart somebody's own or are about people whom it is not for; then they are refused. */
export function refusedWords({ value, place }: Attribute, { refuse }: ReadContext): boolean {
  if (PERSONAL.test(value)) refuse('R09', place);
  else if (NOT_FOR.test(value)) refuse('R10', place);
  else return false;
  return true;
}

interface Found {
  who?: Who;
  age?: number;
  height?: Height;
  weight?: Amount<MassUnit>;
  activity?: Activity;
}

/** Reads `woman, 45, 165 cm, 82 kg, mostly sitting`. Refuses whoever content on weight is not for. */
export function readExample(written: Attribute, context: ReadContext): Example | undefined {
  const { report, refuse } = context;
  const { value, place } = written;
  if (refusedWords(written, context)) return undefined;
  const wrong = (reason: string, hint: string): undefined =>
    report.add(readProblem('pace-chart/example', { reason, hint }, place)) as undefined;
  const found: Found = {};
  for (const words of value.split(',').map((part) => part.trim())) {
    const one = readPart(words);
    const [key] = Object.keys(one) as (keyof Found)[];
    if (key === undefined)
      return wrong(
        `${quoted(words)} is nothing that the invented adult has.`,
        'Write woman, 45, 165 cm, 82 kg, mostly sitting; or man, 45, 5 ft 9 in, 210 lb.',
      );
    if (found[key] !== undefined) return wrong(`The example has its ${key} twice.`, 'Write each once.');
    Object.assign(found, one);
  }
  const { who = 'adult', age = null, height, weight, activity } = found;
  if (!height || !weight)
    return wrong(`The example has no ${height ? 'weight' : 'height'}.`, 'Add both, such as 165 cm, 82 kg.');
  const may = screen({ age: age ?? YOUNGEST_FOR_WEIGHT, height, weight });
  if (may.ok) return { who, age, height, weight, place, ...(activity ? { activity } : {}) };
  if (/\bage under\b|\bmass index below\b/.test(may.reason)) refuse('R10', place);
  else wrong(may.reason, 'Check the numbers and their units.');
  return undefined;
}

const NUMBER = '(\\d{1,3}(?:\\.\\d{1,2})?)';
const FEET = new RegExp(`^(\\d) ?(?:ft|feet|foot)(?: ${NUMBER} ?(?:in|inches))?$`, 'i');
const LENGTH = new RegExp(`^${NUMBER} ?(cm|m|in|inches)$`, 'i');
const MASS = new RegExp(`^${NUMBER} ?(kg|lb|lbs|pounds)$`, 'i');
const PERSON = new RegExp(`^(?:an? )?(?:invented |made-up )?(${WHO.join('|')}|person)$`, 'i');
const AGE = /^(\d{1,3})(?: years?(?: old)?)?$/i;

function readPart(words: string): Found {
  const person = PERSON.exec(words);
  if (person) return { who: WHO.find((who) => who === person[1]?.toLowerCase()) ?? 'adult' };
  const age = AGE.exec(words);
  if (age) return { age: Number(age[1]) };
  const feet = FEET.exec(words);
  if (feet) return { height: { value: Number(feet[1]) * 12 + Number(feet[2] ?? 0), unit: 'in' } };
  const long = LENGTH.exec(words);
  if (long) {
    const unit = long[2]?.toLowerCase();
    return { height: { value: Number(long[1]), unit: unit === 'm' || unit === 'cm' ? unit : 'in' } };
  }
  const heavy = MASS.exec(words);
  if (heavy)
    return { weight: { value: Number(heavy[1]), unit: heavy[2]?.toLowerCase() === 'kg' ? 'kg' : 'lb' } };
  const activity = ACTIVITIES.find((one) => one === words.toLowerCase());
  return activity ? { activity } : {};
}
