import { z } from 'zod';
import { nearest, type Report } from '../diagnostics/index.js';
import { problem } from './codes.js';
import { readYaml, shaped, type YamlText } from './yaml.js';

/** How a source was read before it was used. `restated`: only as others quote it. */
export type Seen = 'whole' | 'in part' | 'restated' | 'from memory';

/** Something that a number or a sentence rests on. */
export interface Source {
  /** Stable, lower case with hyphens, such as `usda-sr28`. */
  readonly id: string;
  /** People or organizations, at least one. */
  readonly authors: readonly string[];
  /** `null` when the year is not known. */
  readonly year: number | null;
  readonly title: string;
  /** Journal and pages, publisher or regulation. */
  readonly where: string;
  /** Fewer words for sheets and slides. */
  readonly brief?: string;
  readonly kind: (typeof KINDS)[number];
  readonly url?: string;
  /** ISO date of the day on which it was last read. */
  readonly accessed?: string;
  /** ISO date of the data, to the day, the month or the year. */
  readonly dataDate?: string;
  readonly seen: Seen;
  /** What was read of it, for reviewers. */
  readonly note?: string;
}

/** No source of that id, with up to five ids that come near it. */
export interface NearSources {
  readonly near: readonly string[];
}

/** The sources that lessons may name. */
export interface Sources {
  /** All sources in the order of the list. */
  readonly all: readonly Source[];
  /** A source by its id, exactly as written. */
  find(id: string): Source | NearSources;
}

/** Where the list stands under `assets/`. */
export const SOURCES_FILE = 'sources.yaml';

const KINDS = [
  'food table',
  'label',
  'notice',
  'study',
  'guideline',
  'regulation',
  'test report',
  'reference work',
  'web page',
] as const;
/** Words that stand where a source's id could and mean something else. */
const TAKEN = ['house', 'lesson', 'estimated'];

const words = z.string().trim().min(1, 'is blank');
const entry = z.strictObject({
  id: z.string().regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/, 'is no id; write lower-case words joined by hyphens'),
  authors: z.array(words).min(1, 'names nobody; write at least one author or organization'),
  year: z.union([z.number().int().min(1500).max(2200), z.literal('unknown')]),
  title: words,
  where: words,
  brief: words.optional(),
  kind: z.enum(KINDS),
  url: z
    .string()
    .regex(/^https:\/\/\S+$/, 'is no address; it begins with https://')
    .optional(),
  accessed: z
    .string()
    .regex(/^\d{4}-\d\d-\d\d$/, 'is no day; write it as 2026-01-31')
    .optional(),
  // YAML reads a year alone as a number.
  dataDate: z
    .union([z.string().regex(/^\d{4}(?:-\d\d){0,2}$/, 'is no date; write it as 2015-09'), z.number().int()])
    .optional(),
  seen: z.enum(['whole', 'in part', 'restated', 'from memory']),
  note: words.optional(),
});

/** Whether a lookup found a source. */
export function isSource(found: Source | NearSources): found is Source {
  return !('near' in found);
}

/**
 * Reads the list of sources. Reports text that is no YAML list (then there are no sources), and entries
 * that lack something, hold something unknown or repeat an id; those are left out.
 */
export function loadSources(text: string, report: Report, file = `assets/${SOURCES_FILE}`): Sources {
  const yaml = readYaml(text, file, (message, more) => problem('records/sources', message, more), report);
  const byId = new Map<string, Source>();
  for (const [index, value] of listOf(yaml, report).entries()) {
    const source = yaml && readSource(yaml, index, value, report);
    if (!source) continue;
    const before = byId.has(source.id) || TAKEN.includes(source.id);
    if (!before) byId.set(source.id, source);
    else {
      report.add(
        problem('records/twice', `The id "${source.id}" already stands for something else.`, {
          place: yaml.place([index, 'id']),
          hint: 'Give the source another id.',
          actual: source.id,
        }),
      );
    }
  }
  return sourcesOf(byId);
}

function sourcesOf(byId: ReadonlyMap<string, Source>): Sources {
  return {
    all: [...byId.values()],
    find: (id) => byId.get(id) ?? { near: id.length > 100 ? [] : nearest(id, byId.keys(), 5) },
  };
}

/** The sources with more of them after their own; an id that is taken stays with the first. */
export function withSources(sources: Sources, more: readonly Source[]): Sources {
  if (more.length === 0) return sources;
  const byId = new Map(sources.all.map((source) => [source.id, source]));
  for (const source of more) if (!byId.has(source.id)) byId.set(source.id, source);
  return sourcesOf(byId);
}

/** Whether an id cannot be given to another source. */
export function isTaken(sources: Sources, id: string): boolean {
  return TAKEN.includes(id) || isSource(sources.find(id));
}

function listOf(yaml: YamlText | undefined, report: Report): readonly unknown[] {
  if (!yaml || Array.isArray(yaml.value)) return yaml ? (yaml.value as readonly unknown[]) : [];
  report.add(
    problem('records/sources', 'The file holds no list of sources.', {
      place: yaml.place([]),
      hint: 'Begin each source with "- id:".',
    }),
  );
  return [];
}

function readSource(yaml: YamlText, index: number, value: unknown, report: Report): Source | undefined {
  const at = (path: readonly PropertyKey[]) => [index, ...path];
  const one: YamlText = {
    file: yaml.file,
    value,
    place: (path) => yaml.place(at(path)),
    keyPlace: (path) => yaml.keyPlace(at(path)),
  };
  const read = shaped(entry, one, (message, more) => problem('records/source', message, more), report);
  if (!read) return undefined;
  const { year, url, accessed, dataDate, note, brief, ...rest } = read;
  return {
    ...rest,
    year: year === 'unknown' ? null : year,
    ...(url !== undefined && { url }),
    ...(accessed !== undefined && { accessed }),
    ...(dataDate !== undefined && { dataDate: String(dataDate) }),
    ...(note !== undefined && { note }),
    ...(brief !== undefined && { brief }),
  };
}

/** A source as a list of sources prints it, in the language of the source: who, when, what, where. */
export function sourceWords(source: Source): string {
  const when = source.year === null ? '' : ` (${source.year})`;
  return `${source.authors.join(', ')}${when}. ${source.title}. ${source.where}.`;
}

/** A source as sheets and slides print it: its few words, or else all of them. */
export function sourceBrief(source: Source): string {
  return source.brief === undefined ? sourceWords(source) : `${source.brief}.`;
}
