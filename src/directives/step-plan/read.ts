import { roomIn } from '../../cautions/index.js';
import type { DirectivePart, Row } from '../../lesson/index.js';
import type { ReadContext } from '../contract.js';
import { quoted, readProblem } from '../problems.js';
import { splitRow } from '../row.js';
import { isCounted, isTwoActions } from './action.js';
import { readEffect } from './read-effect.js';
import { monthOf, readMonths } from './read-months.js';
import type { Month, StepRow, Values } from './schema.js';
import { plansFast, touchesOf } from './touches.js';

const EXAMPLE = 'Write Jan: swap one sweet drink a day for water.';
/** New steps in one month, and tiles of a strip. */
const MOST_A_MONTH = 2;
const MOST_STEPS = 12;
/** More does not stand in a tile. */
const LONGEST_ACTION = 90;

/** Reads the steps of the plan. Whatever cannot be read is reported at its place, and then nothing is shown. */
export function read(part: DirectivePart, context: ReadContext): Values | undefined {
  const { report } = context;
  const months = readMonths(part, context);
  if (part.rows.length === 0 || part.rows.length > MOST_STEPS) {
    const none = part.rows.length === 0;
    const reason = none ? 'The plan has no step.' : `${part.rows.length} steps are too many for one strip.`;
    const hint = none ? EXAMPLE : `Show at most ${MOST_STEPS}.`;
    report.add(readProblem('directives/rows', { reason, hint }, part.bodyPlace));
    return undefined;
  }
  if (!part.id || !months) return undefined;
  const rows = part.rows.map((row) => readStep(row, months.names, context));
  const steps = rows.flatMap((step) => step ?? []);
  if (steps.length < rows.length || !ordered(steps, context)) return undefined;
  return { id: part.id, months: months.names, now: months.now, steps: keyed(steps), place: part.place };
}

type Unkeyed = Omit<StepRow, 'key'>;

/** One row is a month, a colon and one action, with facts behind semicolons. */
function readStep(row: Row, months: readonly Month[], context: ReadContext): Unkeyed | undefined {
  const { report, refuse, language, front } = context;
  const pieces = splitRow(row);
  const { main } = pieces;
  const [, monthWords = '', words = ''] = /^([^:]*):(.*)$/s.exec(main.text) ?? [];
  const action = words
    .trim()
    .replace(/\s+/g, ' ')
    .replace(/[.;,]+$/, '');
  const stop = (reason: string, hint: string): undefined =>
    report.add(readProblem('step-plan/month', { reason, hint }, main.place)) as undefined;
  if (action === '') return stop(`${quoted(main.text)} is no month with a step.`, EXAMPLE);
  const month = monthOf(monthWords);
  if (!month) return stop(`${quoted(monthWords.trim())} is no month.`, EXAMPLE);
  const at = months.indexOf(month);
  if (at < 0)
    return stop(
      `${monthWords.trim()} is not in the plan, which has ${months.join(', ')}.`,
      'Change start or months, or the month of the row.',
    );
  if (plansFast(action, language)) {
    refuse('R13', main.place);
    return undefined;
  }
  if (action.length > LONGEST_ACTION) {
    const reason = `${quoted(action)} is longer than a tile holds.`;
    report.add(
      readProblem('directives/rows', { reason, hint: `Say it in ${LONGEST_ACTION} characters.` }, main.place),
    );
    return undefined;
  }
  const effect = readEffect(pieces, action, context);
  if (!effect) return undefined;
  const touches = touchesOf(action, effect.change, effect.rinse !== undefined, language);
  if (touches.includes('salt substitute') && roomIn(front.audience, 'no potassium salt') !== undefined) {
    refuse('R01', main.place);
    return undefined;
  }
  const countable = isCounted(action, language) || effect.change || effect.rinse || effect.often;
  const ask = (reason: string, hint: string) =>
    report.add(readProblem('step-plan/action', { reason, hint }, main.place));
  if (isTwoActions(action, language))
    ask(`${quoted(action)} is two actions in one step.`, 'Keep one, and make the other a step of its own.');
  if (!countable)
    ask(
      `Nobody can count ${quoted(action)}.`,
      'Say how much or how often, such as one cup, or twice a week.',
    );
  return { month, at, action, touches, ...effect, place: main.place };
}

/** Months follow each other, and no month starts more than two steps. */
function ordered(steps: readonly Unkeyed[], { report }: ReadContext): boolean {
  const back = steps.find(({ at }, i) => i > 0 && at < (steps[i - 1]?.at ?? 0));
  const third = steps.find(({ at }, i) => i >= MOST_A_MONTH && steps[i - MOST_A_MONTH]?.at === at);
  const wrong = back ?? third;
  if (!wrong) return true;
  const fault = back
    ? {
        reason: `${wrong.month} stands after a later month.`,
        hint: 'Write the steps in the order of the months.',
      }
    : {
        reason: `${wrong.month} starts more than ${MOST_A_MONTH} steps.`,
        hint: 'Small steps last; move one to another month.',
      };
  report.add(readProblem('step-plan/month', fault, wrong.place));
  return false;
}

/** `jan`, and `jan-2` for the second step of a month. */
function keyed(steps: readonly Unkeyed[]): StepRow[] {
  return steps.map((step, i) => ({
    ...step,
    key: steps[i - 1]?.month === step.month ? `${step.month}-2` : step.month,
  }));
}
