import { nearest } from '../../diagnostics/index.js';
import { kebab } from '../../document/index.js';
import type { DirectivePart, Row } from '../../lesson/index.js';
import type { ReadContext } from '../contract.js';
import { quoted, readProblem } from '../problems.js';
import { type Piece, readFact, splitRow } from '../row.js';
import { DAYS, type Day, KINDS, type MoveRow, type Values } from './schema.js';

const MOST_MOVES = 21;
/** More than four hours of one thing is a slip more often than a day. */
const MOST_MINUTES = 240;
const EXAMPLE = 'Write Mon: walk = 20 min moderate.';

/** Reads the moves of the week. Whatever cannot be read is reported at its place, and then nothing is shown. */
export function read(part: DirectivePart, context: ReadContext): Values | undefined {
  const { report } = context;
  const moves = part.rows.map((row) => readRow(row, context));
  const known = moves.flatMap((one) => one ?? []);
  if (part.rows.length === 0 || known.length > MOST_MOVES) {
    const reason =
      part.rows.length === 0 ? 'The week has no move.' : `${known.length} moves are too many to show.`;
    const hint = part.rows.length === 0 ? EXAMPLE : `Show at most ${MOST_MOVES}.`;
    report.add(readProblem('directives/rows', { reason, hint }, part.bodyPlace));
    return undefined;
  }
  if (!part.id || moves.includes(undefined) || !apart(known, context)) return undefined;
  return {
    id: part.id,
    group: part.attributes.get('for')?.value === 'older-adult' ? 'older adult' : 'adult',
    moves: known,
    place: part.place,
  };
}

/** One row is one day with one move or more, parted by semicolons. */
function readRow(row: Row, context: ReadContext): MoveRow[] | undefined {
  const { main, facts, strays } = splitRow(row);
  const [, dayWords = '', rest = ''] = /^([^:=]*):(.*)$/s.exec(main.text) ?? [];
  const day = dayOf(dayWords);
  if (day === undefined) {
    const near = nearest(dayWords.trim().toLowerCase(), Object.keys(LONG_NAMES));
    const hint = near.length > 0 ? `Did you mean ${near[0]}?` : EXAMPLE;
    context.report.add(
      readProblem(
        'directives/row-fact',
        { reason: `${quoted(main.text)} does not begin with a day of the week.`, hint },
        main.place,
      ),
    );
    return undefined;
  }
  const first = readFact({ text: rest.trim(), inlines: main.inlines, place: main.place });
  const pieces = [
    first ? { name: first.name, value: { ...first.value, place: main.place } } : undefined,
    ...[...facts].map(([name, value]) => ({ name, value })),
    ...strays.map(() => undefined),
  ];
  const moves = pieces.map((piece) => (piece ? readMove(day, piece.name, piece.value, context) : undefined));
  if (pieces.includes(undefined)) {
    const stray = first ? strays[0] : main;
    context.report.add(
      readProblem(
        'directives/row-fact',
        { reason: `${quoted(stray?.text ?? '')} does not say what is done for how long.`, hint: EXAMPLE },
        (stray ?? main).place,
      ),
    );
  }
  return moves.every((move) => move !== undefined) ? moves : undefined;
}

/** `20 min moderate`, and `seated` where it is done sitting. */
function readMove(
  day: Day,
  name: string,
  value: Piece,
  { report }: Pick<ReadContext, 'report'>,
): MoveRow | undefined {
  const refuse = (reason: string, hint: string): undefined =>
    report.add(readProblem('directives/move', { reason, hint }, value.place)) as undefined;
  const match = /^(\d{1,4}(?:\.\d)?)\s*(?:min|minutes?)\s+([a-z]+)(?:\s+(seated))?$/i.exec(value.text.trim());
  if (!match)
    return refuse(
      `${quoted(value.text)} does not give minutes and a kind.`,
      `Write minutes, then one of ${KINDS.join(', ')}: 20 min moderate.`,
    );
  const kind = KINDS.find((one) => one === match[2]?.toLowerCase());
  if (kind === undefined)
    return refuse(`"${match[2]}" is no kind of move.`, `Kinds are ${KINDS.join(', ')}.`);
  const minutes = Number(match[1]);
  if (!(minutes > 0 && minutes <= MOST_MINUTES))
    return refuse(
      `${match[1]} minutes of one thing cannot be shown.`,
      `Write from 1 to ${MOST_MINUTES} minutes.`,
    );
  const seated = match[3] !== undefined || /\b(chair|seated|sitting)\b/i.test(name);
  return { key: kebab(`${day} ${name}`), day, name, minutes, kind, seated, place: value.place };
}

const LONG_NAMES: Readonly<Record<string, Day>> = {
  monday: 'mon',
  tuesday: 'tue',
  wednesday: 'wed',
  thursday: 'thu',
  friday: 'fri',
  saturday: 'sat',
  sunday: 'sun',
};

function dayOf(words: string): Day | undefined {
  const word = words.trim().toLowerCase();
  return DAYS.find((day) => day === word) ?? (Object.hasOwn(LONG_NAMES, word) ? LONG_NAMES[word] : undefined);
}

/** The same thing twice on one day would share its id. */
function apart(moves: readonly MoveRow[], { report }: ReadContext): boolean {
  const twice = moves.find((move, i) => moves.findIndex((other) => other.key === move.key) < i);
  if (twice)
    report.add(
      readProblem(
        'directives/same-row',
        {
          reason: `"${twice.name}" stands twice on one day.`,
          hint: 'Add the minutes up, or name the two apart.',
        },
        twice.place,
      ),
    );
  return twice === undefined;
}
