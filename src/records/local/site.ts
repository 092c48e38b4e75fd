import { z } from 'zod';
import type { Place, Report } from '../../diagnostics/index.js';
import { LANGUAGES } from '../../languages/index.js';
import { readYaml, shaped } from '../yaml.js';
import { monthsLater } from './calendar.js';
import { localProblem } from './codes.js';
import { day, type LocalLines, lineOn, months, reportAge } from './lines.js';

export interface LocalPlace {
  readonly id: string;
  readonly name: string;
  readonly what: string;
  /** Key of a phone line. */
  readonly line?: string;
  readonly dated: string;
  readonly until: string;
}

/** Who hands the pages out, and where. */
export interface Site {
  readonly id: string;
  readonly invented: boolean;
  readonly name: string;
  readonly town: string;
  /** Country whose temperatures and ages the cautions print, such as `us`. */
  readonly country: string;
  readonly languages: readonly string[];
  /** Where talks are held; missing while nobody has written it down. */
  readonly hall?: LocalPlace;
  readonly footer: string;
  readonly places: readonly LocalPlace[];
  readonly interpreter?: { readonly line: string; readonly words: Readonly<Record<string, string>> };
}

const words = z.string().trim().min(1, 'holds no words');
const tag = z.enum(LANGUAGES);
export const siteShape = z.strictObject({
  site: words,
  invented: z.boolean(),
  name: words,
  town: words,
  country: z.enum(['us', 'uk']),
  languages: z.array(tag).min(1),
  // A skeleton leaves these two empty until somebody knows them.
  hall: words.nullish(),
  footer: words,
  places: z.array(
    z.strictObject({
      id: words,
      name: words,
      what: words,
      line: words.optional(),
      dated: day,
      keep_months: months,
    }),
  ),
  interpreter: z.strictObject({ line: words, words: z.partialRecord(tag, words) }).nullish(),
});

/**
 * Reads a site's `site.yaml` against its lines. Reported: entries that are missing or not known, a
 * hall, a phone line or an interpreter's words that do not exist, places past their shelf life.
 */
export function readSite(
  text: string,
  file: string,
  lines: LocalLines,
  on: string,
  report: Report,
): Site | undefined {
  const fault = (message: string, more: { place: Place; hint?: string }) =>
    localProblem('local/shape', message, more);
  const yaml = readYaml(text, file, fault, report);
  const data = yaml && shaped(siteShape, yaml, fault, report);
  if (!data) return undefined;
  const wrong = (path: readonly PropertyKey[], message: string, hint: string) =>
    report.add(fault(message, { place: yaml.place(path), hint }));
  const places = data.places.map((p, i): LocalPlace => {
    const until = monthsLater(p.dated, p.keep_months);
    reportAge(p.name, p.dated, until, on, yaml.place(['places', i, 'dated']), report);
    if (p.line !== undefined && !lines.get(p.line))
      wrong(
        ['places', i, 'line'],
        `There is no line \`${p.line}\`.`,
        'Write it into lines.yaml, or take it out here.',
      );
    return {
      id: p.id,
      name: p.name,
      what: p.what,
      ...(p.line === undefined ? {} : { line: p.line }),
      dated: p.dated,
      until,
    };
  });
  const hall = places.find((p) => p.id === data.hall);
  if (!hall && data.hall)
    wrong(['hall'], `There is no place \`${data.hall}\`.`, 'Write the id of one of the places.');
  const { interpreter } = data;
  if (interpreter && !lines.get(interpreter.line))
    wrong(['interpreter', 'line'], `There is no line \`${interpreter.line}\`.`, 'Write it into lines.yaml.');
  for (const language of interpreter ? data.languages : [])
    if (!interpreter?.words[language])
      wrong(
        ['interpreter', 'words'],
        `The interpreter line has no words in \`${language}\`.`,
        `Add \`${language}: …\`.`,
      );
  if (!hall && data.hall) return undefined;
  return {
    id: data.site,
    invented: data.invented,
    name: data.name,
    town: data.town,
    country: data.country,
    languages: data.languages,
    ...(hall ? { hall } : {}),
    footer: data.footer,
    places,
    ...(interpreter
      ? {
          interpreter: {
            line: interpreter.line,
            words: interpreter.words as Readonly<Record<string, string>>,
          },
        }
      : {}),
  };
}

/** Words of one line in several languages. */
export interface InterpreterLine {
  readonly parts: readonly { readonly text: string; readonly language: string; readonly strong?: boolean }[];
}

/**
 * The interpreter line for readers of one language: their own words with the number, then the same
 * words in the town's other languages. Past the line's shelf life the number gives way to `instead`.
 * Nothing when the site has no words in the reader's language or no such line.
 */
export function interpreterLine(
  site: Site,
  lines: LocalLines,
  language: string,
  on: string,
): InterpreterLine | undefined {
  const { interpreter } = site;
  const own = interpreter?.words[language];
  const line = interpreter && lines.get(interpreter.line);
  if (!interpreter || own === undefined || !line) return undefined;
  const others = site.languages
    .filter((tag) => tag !== language)
    .flatMap((tag) => {
      const text = interpreter.words[tag];
      return text === undefined ? [] : [{ text, language: tag }];
    });
  return { parts: [{ text: `${own}: ${lineOn(line, on).text}`, language, strong: true }, ...others] };
}
