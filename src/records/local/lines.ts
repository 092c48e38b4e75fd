import { z } from 'zod';
import type { Place, Report } from '../../diagnostics/index.js';
import { readYaml, shaped } from '../yaml.js';
import { isDay, monthsLater } from './calendar.js';
import { localProblem } from './codes.js';

/** A phone line of a site, as words that fit after "Call". */
export interface LocalLine {
  readonly key: string;
  /** What pages print within the shelf life. */
  readonly say: string;
  /** What pages print past it: true without the number. */
  readonly instead: string;
  readonly what: string;
  readonly dated: string;
  /** Last day of the shelf life. */
  readonly until: string;
  readonly source: string;
  readonly place: Place;
}

export interface LocalLines {
  readonly site: string;
  readonly invented: boolean;
  readonly all: readonly LocalLine[];
  get(key: string): LocalLine | undefined;
}

export const day = z.string().refine(isDay, 'should be a day such as 2027-03-01');
export const months = z.number().int().min(1).max(120);
const words = z.string().trim().min(1, 'holds no words');
export const linesShape = z.strictObject({
  site: words,
  invented: z.boolean(),
  lines: z.record(
    z.string().regex(/^[a-z]+(-[a-z]+)*$/, 'should be lower-case words joined by hyphens'),
    z.strictObject({
      say: words,
      instead: words,
      what: words,
      dated: day,
      keep_months: months,
      source: words,
    }),
  ),
});

/** Lines of no site: every slot that needs one stays unfilled, and says so where it is used. */
export const NO_LINES: LocalLines = { site: '', invented: false, all: [], get: () => undefined };

/**
 * Reads a site's `lines.yaml`. `on` is the day of the build: lines past their shelf life, dated after
 * it, or with a number that an invented site may not print are reported; a file that cannot be read
 * gives no lines.
 */
export function readLines(text: string, file: string, on: string, report: Report): LocalLines {
  const fault = (message: string, more: { place: Place; hint?: string }) =>
    localProblem('local/shape', message, more);
  const yaml = readYaml(text, file, fault, report);
  const data = yaml && shaped(linesShape, yaml, fault, report);
  if (!data) return NO_LINES;
  const all = Object.entries(data.lines).map(([key, line]): LocalLine => {
    const place = yaml.place(['lines', key]);
    const until = monthsLater(line.dated, line.keep_months);
    reportAge(`The line \`${key}\``, line.dated, until, on, yaml.place(['lines', key, 'dated']), report);
    if (data.invented) reportNumber(key, line.say, yaml.place(['lines', key, 'say']), report);
    return {
      key,
      say: line.say,
      instead: line.instead,
      what: line.what,
      dated: line.dated,
      until,
      source: line.source,
      place,
    };
  });
  const byKey = new Map(all.map((line) => [line.key, line]));
  return { site: data.site, invented: data.invented, all, get: (key) => byKey.get(key) };
}

/** What to print for a line on a day, and whether it is past its shelf life. */
export function lineOn(line: LocalLine, on: string): { readonly text: string; readonly old: boolean } {
  const old = on > line.until;
  return { text: old ? line.instead : line.say, old };
}

export function reportAge(
  what: string,
  dated: string,
  until: string,
  on: string,
  place: Place,
  report: Report,
): void {
  reportAhead(what, dated, on, place, report);
  if (on > until)
    report.add(
      localProblem('local/line-old', `${what} was good until ${until}; the build is of ${on}.`, {
        place,
        hint: 'Check it, then write the new day into `dated`.',
      }),
    );
}

export function reportAhead(what: string, dated: string, on: string, place: Place, report: Report): void {
  if (dated > on)
    report.add(
      localProblem('local/date-ahead', `${what} is dated ${dated}, after the day of the build, ${on}.`, {
        place,
        hint: 'Write the day on which it was written or last called.',
      }),
    );
}

/** Emergency numbers are short; every other run of seven digits or more is a number that may ring. */
function reportNumber(key: string, say: string, place: Place, report: Report): void {
  for (const m of say.matchAll(/\d[\d\s().-]*\d/g)) {
    const digits = m[0].replace(/\D/g, '');
    if (digits.length <= 4 || /^55501\d\d$/.test(digits)) continue;
    report.add(
      localProblem(
        'local/invented-number',
        `The line \`${key}\` of an invented site prints ${m[0].trim()}.`,
        {
          place,
          hint: 'Use a number from 555-0100 to 555-0199.',
          actual: m[0].trim(),
        },
      ),
    );
  }
}
