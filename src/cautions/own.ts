import { nearest, type Place, type Report } from '../diagnostics/index.js';
import type { Level } from '../reading/index.js';
import { isDay } from '../records/index.js';
import { cautionProblem } from './codes.js';
import type { Rewording } from './facts.js';
import { type Caution, type Heading, type Register, type Severity, SIZES, type Size } from './register.js';
import { slotsOf } from './slots.js';

/** A `caution` as it stands in a lesson. */
export interface WrittenCaution {
  readonly id?: string;
  readonly attributes: ReadonlyMap<string, { readonly value: string; readonly place: Place }>;
  /** `short = …`, `plain = …`, `fuller = …`. */
  readonly rows: readonly { readonly text: string; readonly place: Place }[];
  readonly place: Place;
}

export interface OwnContext {
  readonly register: Register;
  /** Language of the lesson. */
  readonly language: string;
  /** The day of the build. */
  readonly on: string;
  /** The level whose block it stands in, if any. */
  readonly level?: Level;
  /** Whether a source exists; every source passes when this is missing. */
  readonly hasSource?: (id: string) => boolean;
}

/** What a `caution` of a lesson means. */
export type ReadCaution =
  /** `::caution{id=…}`: an entry of the register. */
  | { readonly kind: 'called'; readonly id: string; readonly place: Place }
  /** With everything that an entry needs. */
  | { readonly kind: 'own'; readonly caution: Caution }
  /** In a `level` block: other words for a caution that stands elsewhere. */
  | { readonly kind: 'reworded'; readonly rewordings: readonly Rewording[] };

const SEVERITIES: Readonly<Record<string, { readonly severity: Severity; readonly heading: Heading }>> = {
  stop: { severity: 'stop', heading: 'Stop' },
  'every time': { severity: 'stop', heading: 'Every time' },
  'ask first': { severity: 'ask first', heading: 'Ask first' },
};

/**
 * Reads one `caution` of a lesson. A lesson's own needs `severity`, `source`, `review-by` not yet past
 * and all three wordings; what is missing is reported at its place. A caution in a `level` block without
 * these only rewords: it never removes anything. Nothing comes back when there is no id to go by.
 */
export function readCaution(
  written: WrittenCaution,
  context: OwnContext,
  report: Report,
): ReadCaution | undefined {
  const { id, place } = written;
  const trouble = (message: string, hint: string, at: Place = place) =>
    report.add(cautionProblem('cautions/own', message, { place: at, hint }));
  if (id === undefined) {
    trouble(
      'This caution has no id.',
      'Write `id=` with an id of the register, or a new one for the lesson’s own.',
    );
    return undefined;
  }
  const rows = wordings(written, trouble);
  const bare = written.attributes.size <= (written.attributes.has('id') ? 1 : 0);
  if (bare && rows.size === 0) return { kind: 'called', id, place };
  if (bare && context.level !== undefined) return reworded(id, context.level, rows, place, trouble);
  return own(id, written, rows, context, report, trouble);
}

type Trouble = (message: string, hint: string, at?: Place) => void;
type Rows = ReadonlyMap<Size, { readonly text: string; readonly place: Place }>;

function wordings(written: WrittenCaution, trouble: Trouble): Rows {
  const found = new Map<Size, { text: string; place: Place }>();
  for (const row of written.rows) {
    const m = /^\s*([^\s=]+)\s*=\s*([\s\S]*)$/.exec(row.text);
    const name = m?.[1] ?? '';
    const text = (m?.[2] ?? '').trim();
    const size = SIZES.find((s) => s === name);
    if (!size) {
      const near = nearest(name, SIZES)[0];
      trouble(
        m ? `\`${name}\` is no wording of a caution.` : 'This row is no wording.',
        near ? `Did you mean \`${near} = …\`?` : 'Write `short = …`, `plain = …` and `fuller = …`.',
        row.place,
      );
    } else if (found.has(size)) trouble(`The ${size} wording stands twice.`, 'Keep one of them.', row.place);
    else if (text === '')
      trouble(`The ${size} wording is empty.`, 'Write what to print at that level.', row.place);
    else if (slotsOf(text).length > 0)
      trouble('A lesson’s own caution cannot have slots.', 'Write the words themselves.', row.place);
    else found.set(size, { text, place: row.place });
  }
  return found;
}

/** A level block may hold one wording only: the one of its level. */
function reworded(id: string, level: Level, rows: Rows, place: Place, trouble: Trouble): ReadCaution {
  const size: Size = level === 'staff' ? 'fuller' : level;
  for (const [name, row] of rows)
    if (name !== size)
      trouble(
        `The ${name} wording stands in the block of level ${level}.`,
        `Write \`${size} = …\` here.`,
        row.place,
      );
  const row = rows.get(size);
  if (!row) return { kind: 'called', id, place };
  return { kind: 'reworded', rewordings: [{ id, level, text: row.text, place: row.place }] };
}

function own(
  id: string,
  written: WrittenCaution,
  rows: Rows,
  context: OwnContext,
  report: Report,
  trouble: Trouble,
): ReadCaution | undefined {
  const { attributes, place } = written;
  if (context.register.get(id)) {
    trouble(
      `The register has a caution \`${id}\` already.`,
      'Call it with `::caution{id=…}`, or give the lesson’s own another id.',
    );
    return { kind: 'called', id, place };
  }
  const value = (name: string, example: string): string | undefined => {
    const given = attributes.get(name);
    if (given === undefined || given.value.trim() === '')
      trouble(
        `The caution \`${id}\` has no \`${name}\`.`,
        `Write \`${name}=${example}\`.`,
        given?.place ?? place,
      );
    return given?.value.trim() || undefined;
  };
  const severity = value('severity', '"ask first"');
  const source = value('source', 'the id of a source');
  const reviewBy = value('review-by', '2027-03-01');
  for (const size of SIZES)
    if (!rows.has(size))
      trouble(
        `The caution \`${id}\` has no ${size} wording.`,
        `Add \`- ${size} = …\`; a level must not lose it.`,
      );
  const kind = severity === undefined ? undefined : SEVERITIES[severity];
  if (severity !== undefined && !kind) {
    const near = nearest(severity, Object.keys(SEVERITIES))[0];
    trouble(
      `"${severity}" is no severity.`,
      near ? `Did you mean "${near}"?` : 'Write "stop", "every time" or "ask first".',
      attributes.get('severity')?.place ?? place,
    );
  }
  if (source !== undefined && context.hasSource && !context.hasSource(source))
    trouble(
      `There is no source \`${source}\`.`,
      'Add it to the sources, or write the id of one that stands there.',
      attributes.get('source')?.place ?? place,
    );
  if (reviewBy !== undefined)
    reviewed(id, reviewBy, context.on, attributes.get('review-by')?.place ?? place, report, trouble);

  // What is there prints even while something is missing, so that a proof never lacks a caution.
  const text = (size: Size) =>
    rows.get(size)?.text ?? rows.get('plain')?.text ?? [...rows.values()][0]?.text ?? '';
  if (text('short') === '') return undefined;
  return {
    kind: 'own',
    caution: {
      id,
      kind: 'box',
      title: id,
      ...(kind ?? SEVERITIES.stop ?? { severity: 'stop', heading: 'Stop' }),
      checks: [],
      who: 'as the lesson says',
      why: 'as the lesson says',
      tags: [],
      facts: [],
      place: ['block', 'figure', 'worksheet', 'slide'],
      apart: [],
      wordings: {
        [context.language]: { short: text('short'), plain: text('plain'), fuller: text('fuller') },
      },
      basis: source === undefined ? [] : [{ fact: 'as the source says', mark: 'lesson', source }],
      confirm: 'A dietitian or pharmacist: all of it.',
      reviewMonths: 12,
      at: place,
      own: { source: source ?? '', reviewBy: reviewBy ?? '' },
    },
  };
}

function reviewed(
  id: string,
  reviewBy: string,
  on: string,
  place: Place,
  report: Report,
  trouble: Trouble,
): void {
  if (!isDay(reviewBy)) trouble(`"${reviewBy}" is no day.`, 'Write it as 2027-03-01.', place);
  else if (on > reviewBy)
    report.add(
      cautionProblem(
        'cautions/review-past',
        `The caution \`${id}\` was to be reviewed by ${reviewBy}; the build is of ${on}.`,
        {
          place,
          hint: 'Let its owner read it again, then write the next day.',
        },
      ),
    );
}
