import type { ReadContext } from '../contract.js';
import { readFoodRow } from '../food-row.js';
import { quoted, readProblem } from '../problems.js';
import type { Piece, RowPieces } from '../row.js';
import { oftenIn, readTimes } from './action.js';
import { type Often, type Portioned, type StepRow, TOLD } from './schema.js';

type Effect = Pick<StepRow, 'often' | 'change' | 'rinse'>;
const FACTS = ['less', 'more', 'rinse', 'times', 'tells'] as const;

/** What the facts of a row say: a food less or more, a rinse, how often; nothing after a problem. */
export function readEffect(
  { facts, strays }: RowPieces,
  action: string,
  context: ReadContext,
): Effect | undefined {
  const { report, language } = context;
  const wrong = (reason: string, hint: string, { place }: Piece): undefined =>
    report.add(readProblem('directives/row-fact', { reason, hint }, place)) as undefined;
  const [stray] = strays;
  if (stray)
    return wrong(
      `${quoted(stray.text)} is no fact of a step, or stands twice.`,
      `Facts are ${FACTS.join(', ')}, each once.`,
      stray,
    );
  for (const [name, piece] of facts)
    if (!FACTS.some((fact) => fact === name))
      return wrong(`${quoted(name)} is no fact of a step.`, `Facts are ${FACTS.join(', ')}.`, piece);
  const [less, more, rinse, times, tells] = FACTS.map((name) => facts.get(name));
  const [first, second] = [less, more, rinse].filter((piece) => piece !== undefined);
  if (second)
    return wrong(
      'A step tells one change.',
      'Keep one of less, more and rinse; a step is one action.',
      second,
    );
  const written = times && readTimes(times.text);
  if (times && !written)
    return wrong(
      `${quoted(times.text)} is not how often.`,
      'Write times = 7 a week, or times = 1 a day.',
      times,
    );
  const often = written ?? oftenIn(action, language);
  const told = tells && TOLD.find((name) => name === tells.text.trim().toLowerCase());
  if (tells && (!told || !(less ?? more)))
    return wrong(
      `${quoted(tells.text)} cannot be told of this step.`,
      `With less or more a step tells ${TOLD.join(', ')}.`,
      tells,
    );
  if (rinse) {
    const of = readRinse(rinse, wrong);
    return of && { ...of, ...(often ? { often } : {}) };
  }
  if (!first) return often ? { often } : {};
  const change = readChange(first, less ? 'less' : 'more', context);
  if (!change) return undefined;
  if (!written && isUnclear(action, change, often)) {
    const hint = `Write times = 1 a ${often?.per ?? 'day'} when the amount is for all of them, else how many times.`;
    return wrong(`How often ${quoted(first.text)} is meant is not clear.`, hint, first);
  }
  return { change: { ...change, ...(told ? { tells: told } : {}) }, ...(often ? { often } : {}) };
}

function readChange(piece: Piece, way: Portioned['way'], context: ReadContext): Portioned | undefined {
  const row = readFoodRow(piece, context);
  if (!row) return undefined;
  const { food, portion, amount, words } = row;
  return { way, food, portion, amount, words, place: piece.place };
}

function readRinse(
  piece: Piece,
  wrong: (reason: string, hint: string, piece: Piece) => undefined,
): Pick<StepRow, 'rinse'> | undefined {
  const id = /^@(\S+)$/.exec(piece.text.trim())?.[1];
  if (!id) return wrong(`${quoted(piece.text)} names no figure.`, 'Write rinse = @rinse, by its id.', piece);
  return { rinse: { id, place: piece.place } };
}

/** "Two drinks a day" beside the amount of one: nobody knows for which of both the amount stands. */
function isUnclear(action: string, { amount }: Portioned, often: Often | undefined): boolean {
  if (!often) return false;
  if ((action.match(/(?<!\p{L})(?:an?|per|each|every) (?:day|week)(?!\p{L})/giu) ?? []).length > 1)
    return true;
  const count = /(?<![\p{L}\d])(\d{1,2}|two|three|four|five|six|seven|eight|nine|ten)(?![\p{L}\d])/iu.exec(
    action,
  )?.[1];
  if (count === undefined) return false;
  const words = ['two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];
  const value = words.includes(count.toLowerCase()) ? words.indexOf(count.toLowerCase()) + 2 : Number(count);
  return value > 1 && value !== amount?.count && value !== often.times;
}
