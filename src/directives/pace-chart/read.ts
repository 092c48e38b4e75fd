import type { Attribute, DirectivePart } from '../../lesson/index.js';
import type { ReadContext } from '../contract.js';
import { quoted, readProblem } from '../problems.js';
import { written } from '../written.js';
import { readExample, refusedWords } from './example.js';
import type { ChangeStep, Values } from './schema.js';

const MONTHS = 12;
const MOST_STEPS = 6;

/** Reads the example and what changes. A reader's own numbers, and people whom it is not for, are refused. */
export function read(part: DirectivePart, context: ReadContext): Values | undefined {
  const { report } = context;
  const { id, place } = part;
  const show = part.attributes.get('show')?.value;
  const who = written(part, 'example');
  if (!id || !who || (show !== 'band' && show !== 'pace')) return undefined;
  const example = readExample(who, context);
  const change = written(part, 'change');
  const lose = written(part, 'to-lose');
  const [wanted, other] = show === 'band' ? [change, lose] : [lose, change];
  const [name, otherName] =
    show === 'band' ? (['change', 'to-lose'] as const) : (['to-lose', 'change'] as const);
  const code = show === 'band' ? 'pace-chart/change' : 'pace-chart/to-lose';
  if (other)
    report.add(
      readProblem(
        code,
        { reason: `show=${show} takes no ${otherName}.`, hint: `Leave ${otherName} out.` },
        other.place,
      ),
    );
  if (!wanted) {
    report.add(readProblem(code, { reason: `show=${show} needs ${name}.`, hint: `Add ${name}="…".` }, place));
    return undefined;
  }
  if (other || refusedWords(wanted, context)) return undefined;
  if (show === 'pace') {
    const toLose = readMass(wanted, context);
    return example && toLose ? { show, id, example, toLose, place } : undefined;
  }
  const months = wholeOf(part, 'months', MONTHS, 1, 36);
  const steps = readSteps(wanted, months, context);
  if (example && (example.who === 'adult' || example.age === null)) {
    const missing = example.who === 'adult' ? 'woman or man' : 'an age';
    report.add(
      readProblem(
        'pace-chart/example',
        { reason: `The model of a band needs ${missing}.`, hint: 'Write woman, 45, 165 cm, 82 kg.' },
        example.place,
      ),
    );
    return undefined;
  }
  if (!example || !steps) return undefined;
  const seed = wholeOf(part, 'seed', 0, 0, 999_999);
  return { show, id, example, steps, months, seed, place, changePlace: wanted.place };
}

/** What is out of bounds was reported when the lesson was read. */
function wholeOf(part: DirectivePart, name: string, other: number, from: number, to: number): number {
  const value = Number(part.attributes.get(name)?.value ?? other);
  return Number.isInteger(value) && value >= from && value <= to ? value : other;
}

function readMass({ value, place }: Attribute, { report }: ReadContext) {
  const m = /^(\d{1,3}(?:\.\d)?) ?(kg|lb|lbs|pounds)$/i.exec(value.trim());
  if (m && Number(m[1]) > 0)
    return { value: Number(m[1]), unit: m[2]?.toLowerCase() === 'kg' ? ('kg' as const) : ('lb' as const) };
  report.add(
    readProblem(
      'pace-chart/to-lose',
      { reason: `${quoted(value)} is no amount to lose.`, hint: 'Write it with its unit, such as 60 lb.' },
      place,
    ),
  );
  return undefined;
}

const STEP =
  /^(\d{1,4}) ?(?:kcal|calories?|kilocalories) (?:a|per|each) day(?: less)?(?: from month (\d{1,2}))?$/i;

/** `100 kcal a day; 200 kcal a day from month 4`: each is all that is eaten less from then on. */
function readSteps({ value, place }: Attribute, months: number, { report }: ReadContext) {
  const wrong = (reason: string, hint: string): undefined =>
    report.add(readProblem('pace-chart/change', { reason, hint }, place)) as undefined;
  const steps: ChangeStep[] = [];
  for (const words of value.split(';').map((part) => part.trim())) {
    const m = STEP.exec(words);
    const [kcal, fromMonth] = [Number(m?.[1]), Number(m?.[2] ?? 1)];
    if (!m || kcal === 0)
      return wrong(
        `${quoted(words)} is no change that can be drawn.`,
        'Write how much less is eaten, such as 250 kcal a day; or 200 kcal a day from month 4.',
      );
    const before = steps.at(-1);
    if (before ? fromMonth <= before.fromMonth || kcal <= before.kcal : fromMonth !== 1)
      return wrong(
        before
          ? `${quoted(words)} does not come after and above the step before it.`
          : 'The first step does not begin with month 1.',
        'Let the change begin at month 1 and grow by steps.',
      );
    if (fromMonth > months)
      return wrong(
        `Month ${fromMonth} lies after the last month, ${months}.`,
        'Write more months, or fewer steps.',
      );
    steps.push({ fromMonth, kcal });
  }
  const [first, ...more] = steps;
  if (!first || steps.length > MOST_STEPS)
    return wrong(`${steps.length} steps are more than ${MOST_STEPS}.`, 'Use fewer steps.');
  return [first, ...more] as const;
}
