import { kebab } from '../../document/index.js';
import type { DirectivePart, Line, Row } from '../../lesson/index.js';
import { isSmallCount, MOST_PEOPLE } from '../../nutrition/index.js';
import type { ReadContext } from '../contract.js';
import { quoted, readProblem } from '../problems.js';
import { firstOf, type Piece, placeIn, splitRow } from '../row.js';
import { privateMatter } from './private.js';
import {
  FEWEST_OPTIONS,
  MOST_OPTIONS,
  type Option,
  type Round,
  schema,
  USUAL_MINUTES,
  type Values,
} from './schema.js';

const ROUNDS: readonly Round[] = ['count', 'before', 'after'];

/** Reads the question, its options and what was counted; whatever cannot be read is reported at its place. */
export function read(part: DirectivePart, context: ReadContext): Values | undefined {
  const { id, text, rows } = part;
  const { report } = context;
  if (!id) return undefined;
  const [question, second] = text;
  const fault = (reason: string, hint: string, place = part.place) =>
    report.add(readProblem('hands-up/question', { reason, hint }, place));
  if (!question || second)
    fault(
      question ? 'A show of hands asks one question.' : 'This show of hands asks nothing.',
      'Write the question on a line of its own above the list.',
      second?.place,
    );
  if (rows.length < FEWEST_OPTIONS || rows.length > MOST_OPTIONS)
    fault(
      `A show of hands takes ${FEWEST_OPTIONS} to ${MOST_OPTIONS} answers, and this one has ${rows.length}.`,
      'Write each as "- always".',
    );
  const open = [...text, ...rows].filter((line) => isOpenTo(line, context));
  const options = rows.flatMap((row) => readOption(row, context) ?? []);
  const rounds = roundsOf(rows);
  const even = rounds !== undefined && sameRounds(rows, rounds, context);
  const asked = question && !second && rows.length >= FEWEST_OPTIONS && rows.length <= MOST_OPTIONS;
  if (!asked || !even || open.length < text.length + rows.length || options.length < rows.length)
    return undefined;
  if (!apart(options, context)) return undefined;
  return { id, minutes: minutesOf(part), question: question.inlines, options, rounds };
}

/** A number of minutes that is none was reported when the lesson was read. */
function minutesOf(part: DirectivePart): number {
  const { kind } = schema.attributes.minutes ?? {};
  const minutes = Number(part.attributes.get('minutes')?.value ?? USUAL_MINUTES);
  const sound =
    kind?.is === 'whole' && Number.isInteger(minutes) && minutes >= kind.from && minutes <= kind.to;
  return sound ? minutes : USUAL_MINUTES;
}

/** Whether words may be asked in a group; what is private is refused at its place. */
function isOpenTo(line: Line, { refuse, language, report }: ReadContext): boolean {
  const matter = privateMatter(line.text, language);
  if (matter) refuse('R16', placeIn(line, matter.at, matter.words.length));
  const unfit = firstOf(line.inlines, ['picture', 'link', 'cite', 'number']);
  if (unfit)
    report.add(
      readProblem(
        'hands-up/question',
        { reason: 'A question and its answers hold words only.', hint: 'Put it on a line above or below.' },
        unfit.place,
      ),
    );
  return !matter && !unfit;
}

function readOption(row: Row, { report }: ReadContext): Option | undefined {
  const { main, facts, strays } = splitRow(row);
  const known = new Set<string>(['then', ...ROUNDS]);
  const wrong = [...strays, ...[...facts].flatMap(([name, value]) => (known.has(name) ? [] : [value]))];
  for (const piece of wrong)
    report.add(
      readProblem(
        'directives/row-fact',
        {
          reason: `An answer knows only then, count, before and after, and not ${quoted(piece.text)}.`,
          hint: 'Write "- always ; then = skip the rinse slide".',
        },
        piece.place,
      ),
    );
  for (const { place } of row.rows)
    report.add(readProblem('hands-up/question', { reason: 'An answer holds no list.' }, place));
  if (main.text === '') {
    report.add(readProblem('hands-up/question', { reason: 'This answer holds no words.' }, main.place));
    return undefined;
  }
  const counted = ROUNDS.flatMap((round) => facts.get(round) ?? []);
  const people = counted.map((piece) => readPeople(piece, report));
  if (people.includes(undefined)) return undefined;
  const then = facts.get('then');
  return {
    words: main.text,
    inlines: main.inlines,
    ...(then?.text ? { next: then.inlines } : {}),
    people: people.flatMap((count) => count ?? []),
    place: main.place,
  };
}

/** A whole number of people; a count so small that it may point to somebody is not kept (L09). */
function readPeople(piece: Piece, report: ReadContext['report']): number | undefined {
  const people = /^\d{1,3}$/.test(piece.text) ? Number(piece.text) : undefined;
  if (people === undefined)
    report.add(
      readProblem(
        'hands-up/count',
        {
          reason: `${quoted(piece.text)} is no count of people.`,
          hint: `Write a number from 0 to ${MOST_PEOPLE}.`,
        },
        piece.place,
      ),
    );
  else if (isSmallCount(people)) {
    report.add(
      readProblem(
        'L09',
        {
          reason: `A count of ${people} may point to somebody.`,
          hint: 'Leave the counts out, or put answers together until each has none or more than 10.',
        },
        piece.place,
      ),
    );
    return undefined;
  }
  return people;
}

/** What was counted, by the first answer that has a count. */
function roundsOf(rows: readonly Row[]): readonly Round[] {
  const first = rows
    .map((row) => splitRow(row).facts)
    .find((facts) => ROUNDS.some((round) => facts.has(round)));
  return first ? ROUNDS.filter((round) => first.has(round)) : [];
}

/** Every answer has a count in the same rounds: once, or before and after. */
function sameRounds(rows: readonly Row[], rounds: readonly Round[], { report }: ReadContext): boolean {
  const told = rounds.join(' ');
  const sound = ['', 'count', 'before after'].includes(told);
  const odd = rows.find((row) => ROUNDS.filter((round) => splitRow(row).facts.has(round)).join(' ') !== told);
  const at = odd ?? (sound ? undefined : rows[0]);
  if (!at) return true;
  report.add(
    readProblem(
      'hands-up/count',
      {
        reason: 'Not every answer was counted in the same way.',
        hint: 'Give each answer "; count = 12", or each "; before = 12 ; after = 20", or none.',
      },
      at.place,
    ),
  );
  return false;
}

/** Two answers that ids cannot tell apart, and one without a letter or digit, have no number of their own. */
function apart(options: readonly Option[], { report }: ReadContext): boolean {
  const names = options.map(({ words }) => kebab(words));
  const same = options.find((_, index) => names[index] === '' || names.indexOf(names[index] ?? '') < index);
  if (same)
    report.add(
      readProblem(
        'hands-up/question',
        {
          reason: `${quoted(same.words)} cannot be told from the other answers.`,
          hint: 'Write each answer in words of its own.',
        },
        same.place,
      ),
    );
  return same === undefined;
}
