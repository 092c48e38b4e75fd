import { isAlias, isMap, isNode, isPair, isScalar, isSeq, LineCounter, parseDocument, visit } from 'yaml';
import { z } from 'zod';
import { nearest, type Place, type Report } from '../diagnostics/index.js';
import { LANGUAGES } from '../languages/index.js';
import { problem } from './codes.js';
import type { FrontMatter } from './front-matter.js';
import { isRefusedName } from './names.js';
import { isDay } from './read-attributes.js';
import { placeAt, type Source } from './source.js';

/** Editions of guidance that a lesson may follow; there is no default. */
export const EDITIONS = ['us-2020', 'us-2025', 'none'] as const;

const words = z
  .string('takes words; put them in quotes if they are all digits')
  .trim()
  .min(1, 'is empty')
  .max(200, 'is longer than 200 characters')
  .refine((text) => !/[\p{Cc}\p{Cs}\u2028\u2029]/u.test(text), 'holds a line end or a control character');
const list = (what: z.ZodType<string>) =>
  z.array(what, 'takes a list, such as [one, two]').min(1, 'is empty; name at least one');
const id = z
  .string('takes an id')
  .regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/, 'is no id; write lower-case words joined by hyphens');
const day = z.string('takes a day, such as 2027-03-01').refine(isDay, 'is no day; write it as 2027-03-01');

/** What a lesson's front matter may say; the help lines go into the JSON Schema for editors. */
const shape = z.strictObject({
  title: words.describe('Printed at the top of every sheet and on the first slide.'),
  minutes: z
    .int('takes a whole number of minutes')
    .min(5, 'is below 5')
    .max(240, 'is above 240')
    .describe('Length of the talk.'),
  audience: words.describe('Whom the talk is for, as on the first slide: adults who shop and cook.'),
  objectives: list(words)
    .max(6, 'names more than six')
    .describe('What people can do by the end; each begins with a verb.'),
  guidance: z
    .enum(EDITIONS, `takes one of ${EDITIONS.join(', ')}`)
    .describe('The edition of the guidance that the lesson follows; there is no default.'),
  topics: z
    .array(words, 'takes a list, such as [fiber up, cans]')
    .describe('What the lesson is about; topics pull their cautions.'),
  sources: z
    .array(id, 'takes a list of ids, such as [usda-sr28]')
    .optional()
    .describe('Ids of sources in assets/sources.yaml.'),
  review: z
    .union(
      [
        z.literal('none'),
        z
          .strictObject({ role: words, date: day, next: day })
          .refine((review) => review.next > review.date, { path: ['next'], error: 'is not after date' }),
      ],
      'takes none, or role, date and next',
    )
    .describe('none, or who reviewed it (role), when (date) and by when to check again (next).'),
  author: words.optional().describe('Role of who wrote it.'),
  month: z
    .int('takes a whole number')
    .min(1, 'is below 1')
    .max(12, 'is above 12')
    .optional()
    .describe('Month of the talk, 1 to 12.'),
  emblem: id.optional().describe('Name of the picture at the top of the sheets.'),
  code: z
    .string('takes letters and digits')
    .regex(/^[A-Z][A-Z0-9]{1,9}$/, 'takes two to ten capital letters and digits')
    .optional()
    .describe('Short code that pages print.'),
  language: z
    .enum(LANGUAGES, `takes one of ${LANGUAGES.join(', ')}`)
    .optional()
    .describe('Language of the lesson; en when left out.'),
  site: id.optional().describe('Folder name of the local pack.'),
});
type Shape = z.infer<typeof shape>;

/** The same as JSON Schema, for editors. */
export function frontMatterJsonSchema(): unknown {
  return {
    ...z.toJSONSchema(shape, { io: 'input', unrepresentable: 'any' }),
    title: 'Front matter of a lesson',
  };
}

export interface ReadFront {
  /** Nothing when the front matter cannot be read at all. */
  readonly front: FrontMatter | undefined;
  /** Line on which the body begins. */
  readonly bodyLine: number;
  readonly titlePlace: Place;
}

/** Reads what stands between the two `---` at the top. Every mistake is reported at its line and column. */
export function readFront(source: Source, slug: string | undefined, report: Report): ReadFront {
  const top = placeAt(source, 1, 1);
  const first = source.lines.findIndex((line) => line.trim() !== '');
  const found = source.lines[first]?.trimEnd() === '---';
  if (!found || first > 0)
    report.add(
      problem('lesson/front-matter-missing', 'This lesson does not begin with its front matter.', {
        place: top,
        hint: found
          ? 'Delete the blank lines above the first line of hyphens.'
          : 'Put a line of three hyphens on line 1, the front matter below it, and another such line after it.',
      }),
    );
  if (!found) return { front: undefined, bodyLine: 1, titlePlace: top };
  const end = source.lines.findIndex((line, index) => index > first && /^(?:---|\.\.\.)\s*$/.test(line));
  if (end < 0) {
    report.add(
      problem('lesson/front-matter-unclosed', 'The front matter that opens here is not closed.', {
        place: top,
        hint: 'Put a line that holds only three hyphens after its last key.',
      }),
    );
    return { front: undefined, bodyLine: source.lines.length + 1, titlePlace: top };
  }
  const front = readYaml(source, { from: first + 1, to: end }, slug, report);
  return { front, bodyLine: end + 2, titlePlace: front?.places.get('title') ?? top };
}

function readYaml(
  source: Source,
  lines: { readonly from: number; readonly to: number },
  slug: string | undefined,
  report: Report,
): FrontMatter | undefined {
  const text = source.lines.slice(lines.from, lines.to).join('\n');
  const counter = new LineCounter();
  const yaml = parseDocument(text, {
    lineCounter: counter,
    prettyErrors: false,
    uniqueKeys: true,
    keepSourceTokens: false,
  });
  const at = (offset: number, to?: number): Place => {
    const start = counter.linePos(offset);
    const stop = to === undefined ? undefined : counter.linePos(to);
    return placeAt(
      source,
      start.line + lines.from,
      start.col,
      stop && stop.line === start.line ? stop.col : undefined,
    );
  };
  let broken = false;
  for (const error of yaml.errors) {
    broken = true;
    const twice = error.code === 'DUPLICATE_KEY';
    report.add(
      twice
        ? problem('lesson/front-key', 'This key stands twice.', {
            place: at(error.pos[0]),
            hint: 'Keep one of them.',
          })
        : problem('lesson/yaml', `The front matter cannot be read here: ${sentence(error.message)}`, {
            place: at(error.pos[0]),
            hint: 'Put quotes around a value that holds a colon; indent with blanks, never with tabs.',
          }),
    );
  }
  for (const warning of yaml.warnings) {
    broken = true;
    report.add(
      problem('lesson/yaml-feature', 'A tag (!) is not used in a front matter.', {
        place: at(warning.pos[0]),
        hint: 'Write the value out.',
      }),
    );
  }
  const places = new Map<string, Place>();
  let unsafe = false;
  visit(yaml, (_, node) => {
    const feature =
      isPair(node) && !isScalar(node.key)
        ? 'A key that is no word'
        : isAlias(node)
          ? 'An alias (*)'
          : isNode(node) && 'anchor' in node && node.anchor
            ? 'An anchor (&)'
            : isNode(node) && node.tag?.startsWith('!')
              ? 'A tag (!)'
              : undefined;
    if (feature === undefined) return;
    unsafe = true;
    const where = isPair(node) ? node.key : node;
    const offset = isNode(where) ? (where.range?.[0] ?? 0) : 0;
    report.add(
      problem('lesson/yaml-feature', `${feature} is not used in a front matter.`, {
        place: at(offset),
        hint: 'Write the value out.',
      }),
    );
  });
  if (broken || unsafe) return undefined;
  if (!isMap(yaml.contents)) {
    report.add(
      problem('lesson/yaml', 'The front matter holds no keys.', {
        place: placeAt(source, lines.from + 1, 1),
        hint: 'Write title: and the other keys, one a line.',
      }),
    );
    return undefined;
  }
  collectPlaces(yaml.contents, '', at, places, report);
  const read = shape.safeParse(yaml.toJS({ maxAliasCount: 0 }));
  const data = read.success
    ? read.data
    : repaired(yaml.toJS({ maxAliasCount: 0 }), read.error, places, placeAt(source, 1, 1), report);
  return data && frontOf(data, slug, places);
}

function sentence(message: string): string {
  const first = message.split('\n')[0] ?? '';
  return /[.!?]$/.test(first) ? first : `${first}.`;
}

/** Where every value stands, by its path; keys that programs treat in special ways are refused. */
function collectPlaces(
  node: unknown,
  path: string,
  at: (from: number, to?: number) => Place,
  places: Map<string, Place>,
  report: Report,
): void {
  const below = (name: string | number) => (path === '' ? String(name) : `${path}.${name}`);
  if (isMap(node)) {
    for (const pair of node.items) {
      if (!isPair(pair) || !isScalar(pair.key)) continue;
      const name = String(pair.key.value);
      const [from = 0, to] = pair.key.range ?? [];
      if (isRefusedName(name))
        report.add(
          problem('lesson/refused-name', `“${name}” cannot be a key.`, {
            place: at(from, to),
            hint: 'Delete it.',
            actual: name,
          }),
        );
      places.set(`${below(name)}#key`, at(from, to));
      const value = isNode(pair.value) ? pair.value.range : undefined;
      places.set(below(name), value ? at(value[0], value[1]) : at(from, to));
      collectPlaces(pair.value, below(name), at, places, report);
    }
  } else if (isSeq(node)) {
    node.items.forEach((item, index) => {
      const range = isNode(item) ? item.range : undefined;
      if (range) places.set(below(index), at(range[0], range[1]));
      collectPlaces(item, below(index), at, places, report);
    });
  }
}

/** Reports every issue, then reads again without the values that have one. */
function repaired(
  data: unknown,
  error: z.ZodError,
  places: ReadonlyMap<string, Place>,
  top: Place,
  report: Report,
): Shape | undefined {
  const whole: Record<string, unknown> = { ...STAND_INS };
  const given = typeof data === 'object' && data !== null ? (data as Record<string, unknown>) : {};
  const keys = Object.keys(shape.shape);
  const bad = new Set<string>();
  const meant = misspelt(given, keys);
  for (const issue of flat(error.issues)) {
    const path = issue.path.map(String);
    bad.add(path[0] ?? '');
    if (path.length === 1 && meant.has(path[0] ?? '')) continue;
    if (issue.code === 'unrecognized_keys') {
      for (const key of issue.keys) {
        if (isRefusedName(key)) continue;
        const full = [...path, key].join('.');
        const near = nearest(key, path.length === 0 ? keys : ['role', 'date', 'next']);
        const place = places.get(`${full}#key`) ?? top;
        report.add(
          problem('lesson/front-key', `The front matter knows no “${full}”.`, {
            place,
            hint: near[0] ? `Did you mean ${near[0]}?` : `Keys: ${keys.join(', ')}.`,
            actual: key,
            expected: near,
          }),
        );
      }
      continue;
    }
    const name = path.join('.');
    const place = places.get(name);
    if (place === undefined) {
      const parent = path.slice(0, -1).join('.');
      report.add(
        problem('lesson/front-missing', `The front matter does not say “${name}”.`, {
          place: places.get(parent) ?? top,
          hint: `Add ${path.at(-1)}: … ${helpOf(name)}`,
          expected: [name],
        }),
      );
    } else
      report.add(problem('lesson/front-value', `“${name}” ${issue.message}.`, { place, hint: helpOf(name) }));
  }
  for (const key of keys) if (key in given && !bad.has(key)) whole[key] = given[key];
  const kinds = shape.shape as Readonly<Record<string, z.ZodType>>;
  for (const [key, written] of meant)
    if (kinds[key]?.safeParse(given[written]).success) whole[key] = given[written];
  const again = shape.safeParse(whole);
  return again.success ? again.data : undefined;
}

/** Keys that are missing but stand misspelt: what was meant, and what was written. */
function misspelt(given: Readonly<Record<string, unknown>>, keys: readonly string[]): Map<string, string> {
  const absent = keys.filter((key) => !Object.hasOwn(given, key));
  const odd = Object.keys(given).filter((key) => !keys.includes(key) && !isRefusedName(key));
  return new Map(odd.flatMap((key) => nearest(key, absent).map((near) => [near, key] as const)));
}

/** Issues of a union that no member took are those of the member that came nearest. */
function flat(issues: readonly z.core.$ZodIssue[]): z.core.$ZodIssue[] {
  return issues.flatMap((issue) => {
    if (issue.code !== 'invalid_union') return [issue];
    const nearestMember = issue.errors.find((errors) =>
      errors.every((e) => e.path.length > 0 || e.code === 'unrecognized_keys'),
    );
    return nearestMember && nearestMember.length > 0
      ? flat(nearestMember.map((e) => ({ ...e, path: [...issue.path, ...e.path] })))
      : [issue];
  });
}

function helpOf(name: string): string {
  const key = name.split('.')[0] ?? '';
  return (shape.shape as Record<string, { description?: string }>)[key]?.description ?? '';
}

/** What stands in a proof for a key that is missing or cannot be used. */
const STAND_INS: Shape = {
  title: 'No title',
  minutes: 40,
  audience: 'not said',
  objectives: ['not said'],
  guidance: 'none',
  topics: [],
  review: 'none',
};

function frontOf(data: Shape, slug: string | undefined, places: ReadonlyMap<string, Place>): FrontMatter {
  const {
    title,
    minutes,
    audience,
    objectives,
    guidance,
    topics,
    sources = [],
    review,
    language = 'en',
  } = data;
  const optional = Object.fromEntries(
    (['author', 'month', 'emblem', 'site'] as const).flatMap((key) =>
      data[key] === undefined ? [] : [[key, data[key]]],
    ),
  );
  return {
    title,
    minutes,
    audience,
    objectives,
    guidance,
    topics,
    sources,
    review,
    language,
    code: data.code ?? codeOf(slug ?? title),
    places,
    ...optional,
  };
}

/** `beans-three-ways` → `BEANSTW`: the first word, then the first letters of the others. */
function codeOf(slug: string): string {
  const [first = 'LESSON', ...rest] = slug
    .toUpperCase()
    .replace(/[^A-Z0-9]+/g, ' ')
    .trim()
    .split(' ');
  return `${first.slice(0, 6)}${rest.map((word) => word[0]).join('')}`.slice(0, 10);
}
