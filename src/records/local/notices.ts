import { z } from 'zod';
import { nearest, type Place, type Report } from '../../diagnostics/index.js';
import type { Source } from '../sources.js';
import { type Fault, readYaml, shaped, type YamlText } from '../yaml.js';
import { monthsLater } from './calendar.js';
import { localProblem } from './codes.js';
import { day, type LocalLines, lineOn, months, reportAhead } from './lines.js';
import { inSentences, NOTICE_LIMITS, typedNumber } from './notice-words.js';

/** Where a site's notices stand, beside its `lines.yaml`. */
export const LOCAL_NOTICES_FILE = 'notices.yaml';

/** Where a notice can print. */
export const NOTICE_PAGES = ['handout', 'worksheet', 'slides', 'leader'] as const;
export type NoticePage = (typeof NOTICE_PAGES)[number];

/** One or two sentences of a site that somebody answers for, good for some time. */
export interface Notice {
  readonly id: string;
  /** With the phone lines filled in for the day of the build. */
  readonly words: string;
  readonly from?: string;
  /** The last day on which it prints: its own, or the end of its shelf life. */
  readonly until: string;
  readonly dated: string;
  /** Who says it. */
  readonly source: string;
  readonly print: readonly NoticePage[];
  readonly place: Place;
}

const words = z.string().trim().min(1, 'holds no words');
const entry = z.strictObject({
  id: z
    .string()
    .regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/, 'is no id; write lower-case words joined by hyphens')
    .describe('Name of the notice; a caution of a lesson may name it as its source.'),
  words: words
    .max(NOTICE_LIMITS.characters, `takes at most ${NOTICE_LIMITS.characters} characters`)
    .describe(
      `One or two plain sentences of at most ${NOTICE_LIMITS.words} words; phone lines as {food-help-line}.`,
    ),
  from: day.optional().describe('First day on which it prints.'),
  until: day.optional().describe('Last day on which it prints.'),
  dated: day.describe('Day on which it was written or last asked about.'),
  keep_months: months.describe('Shelf life in months.'),
  source: words.max(120, 'takes at most 120 characters').describe('Who says it.'),
  print: z
    .array(z.enum(NOTICE_PAGES))
    .min(1, 'names no page; leave it out for the leader’s page alone')
    .default(['leader'])
    .describe('Where it prints.'),
});
export const noticesShape = z.strictObject({ site: words, notices: z.array(entry).max(60) });
type Entry = z.infer<typeof entry>;

export interface NoticeContext {
  readonly lines: LocalLines;
  /** The day of the build. */
  readonly on: string;
  /** Whether an id stands for a source already. */
  readonly isTaken: (id: string) => boolean;
}

/**
 * Reads a site's `notices.yaml`. Reported at their places and left out: an id that stands twice or for a source, more
 * than two sentences or thirty words, a phone number that is typed instead of named, a line that the site does not
 * have, and days in the wrong order. A notice past its last day, or dated after the day of the build, is reported.
 */
export function readNotices(
  text: string,
  file: string,
  context: NoticeContext,
  report: Report,
): readonly Notice[] {
  const fault: Fault = (message, more) => localProblem('local/shape', message, more);
  const yaml = readYaml(text, file, fault, report);
  const data = yaml && shaped(noticesShape, yaml, fault, report);
  if (!yaml || !data) return [];
  const seen = new Set<string>();
  const notices = data.notices.flatMap((one, index) => {
    const before = report.problems.length;
    const notice = readOne(one, index, yaml, context, seen, report);
    seen.add(one.id);
    if (report.problems.length > before) return [];
    reportDays(notice, yaml.place(['notices', index, 'dated']), one, context.on, report);
    return [notice];
  });
  reportRoom(notices, context.on, report);
  return notices;
}

function readOne(
  one: Entry,
  index: number,
  yaml: YamlText,
  { lines, on, isTaken }: NoticeContext,
  seen: ReadonlySet<string>,
  report: Report,
): Notice {
  const at = (key: keyof Entry) => yaml.place(['notices', index, key]);
  const wrong = (key: keyof Entry, message: string, hint: string) =>
    report.add(localProblem('local/shape', message, { place: at(key), hint, actual: String(one[key]) }));
  if (seen.has(one.id)) wrong('id', `The notice \`${one.id}\` stands twice.`, 'Keep one of the two.');
  else if (isTaken(one.id))
    wrong('id', `\`${one.id}\` already stands for a source.`, 'Give the notice another id.');
  if (one.from !== undefined && one.until !== undefined && one.until < one.from)
    wrong(
      'until',
      `The notice \`${one.id}\` ends on ${one.until}, before it begins on ${one.from}.`,
      'Correct one of the two days.',
    );
  for (const key of ['words', 'source'] as const) {
    const number = typedNumber(one[key]);
    if (number === undefined) continue;
    const line = lines.all.find(({ say }) => say.includes(number));
    report.add(
      localProblem('local/notice-number', `The notice \`${one.id}\` types the number ${number}.`, {
        place: at(key),
        hint:
          key === 'source'
            ? 'Write only who says it.'
            : line
              ? `Write {${line.key}}: the pages print the line from lines.yaml.`
              : 'Write the number as a line into lines.yaml, and its name in braces here, such as {food-help-line}.',
        actual: number,
      }),
    );
  }
  const filled = filledIn(one.words, lines, on, (message, hint) => wrong('words', message, hint));
  const length = inSentences(filled);
  if (length !== undefined) wrong('words', `The words of \`${one.id}\` ${length.fault}.`, length.hint);
  const shelf = monthsLater(one.dated, one.keep_months);
  return {
    id: one.id,
    words: filled,
    ...(one.from === undefined ? {} : { from: one.from }),
    until: one.until !== undefined && one.until < shelf ? one.until : shelf,
    dated: one.dated,
    source: one.source,
    print: [...new Set(one.print)],
    place: at('words'),
  };
}

/** The words with each `{line}` as pages print it on the day: past its shelf life without the number. */
function filledIn(
  text: string,
  lines: LocalLines,
  on: string,
  wrong: (message: string, hint: string) => void,
): string {
  const filled = text.replace(/\s+/gu, ' ').replace(/\{([^{}]*)\}/g, (slot, key: string) => {
    const line = lines.get(key);
    if (line) return lineOn(line, on).text;
    const near = nearest(
      key,
      lines.all.map((one) => one.key),
    )[0];
    wrong(
      `There is no line \`${key}\` for the slot ${slot}.`,
      near ? `Did you mean {${near}}?` : 'Write it into lines.yaml.',
    );
    return '';
  });
  if (/[{}]/.test(filled))
    wrong('A brace has no partner.', 'Write the name of a line between two: {food-help-line}.');
  return filled;
}

function reportDays(
  { id, until, dated }: Notice,
  place: Place,
  one: Entry,
  on: string,
  report: Report,
): void {
  reportAhead(`The notice \`${id}\``, dated, on, place, report);
  if (on <= until) return;
  const ended = one.until === until;
  report.add(
    localProblem('local/notice-old', `The notice \`${id}\` was good until ${until}; the build is of ${on}.`, {
      place,
      hint: ended
        ? 'Take it out, or write its next days.'
        : 'Ask who says it, then write the new day into `dated`, or take it out.',
    }),
  );
}

/** So many have room on one page beside the lesson; the leader's page holds all. */
const MOST = 2;

/** Notices for one kind of page on a day: none before its first day, none past its last. */
export function noticesFor(notices: readonly Notice[], page: NoticePage, on: string): readonly Notice[] {
  const current = currentFor(notices, page, on);
  return page === 'leader' ? current : current.slice(0, MOST);
}

function currentFor(notices: readonly Notice[], page: NoticePage, on: string): readonly Notice[] {
  return notices.filter(
    ({ from, until, print }) => print.includes(page) && on <= until && (from === undefined || from <= on),
  );
}

function reportRoom(notices: readonly Notice[], on: string, report: Report): void {
  for (const page of NOTICE_PAGES) {
    const [extra] = page === 'leader' ? [] : currentFor(notices, page, on).slice(MOST);
    if (extra)
      report.add(
        localProblem('local/notice-room', `On ${on} there is no room for \`${extra.id}\` on the ${page}.`, {
          place: extra.place,
          hint: `Two notices before it print there on that day. Give them other days, or take \`${page}\` out of \`print\`.`,
        }),
      );
  }
}

/** A notice as a source of what a lesson says. */
export function noticeSource(notice: Notice): Source {
  return {
    id: notice.id,
    authors: [notice.source],
    year: Number(notice.dated.slice(0, 4)),
    title: notice.words.replace(/[.\s]+$/u, ''),
    where: 'Local notice',
    brief: `${notice.source.replace(/[.\s]+$/u, '')}: local notice, ${notice.dated.slice(0, 4)}`,
    kind: 'notice',
    dataDate: notice.dated,
    seen: 'whole',
  };
}
