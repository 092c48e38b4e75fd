import type { z } from 'zod';
import { nearest, type Place, type Report } from '../diagnostics/index.js';
import { problem } from './codes.js';
import type { FrontMatter } from './front-matter.js';
import { helpOf, type Shape, STAND_INS, shape } from './front-shape.js';
import { type FrontYaml, readYaml } from './front-yaml.js';
import { isRefusedName } from './names.js';
import { placeAt, type Source } from './source.js';

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
  const yaml = readYaml(source, { from: first + 1, to: end }, report);
  const front = yaml && frontFrom(yaml, slug, top, report);
  return { front, bodyLine: end + 2, titlePlace: front?.places.get('title') ?? top };
}

function frontFrom(
  { data, places }: FrontYaml,
  slug: string | undefined,
  top: Place,
  report: Report,
): FrontMatter | undefined {
  const read = shape.safeParse(data);
  const front = read.success ? read.data : repaired(data, read.error, places, top, report);
  return front && frontOf(front, slug, places);
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
    (['unpull', 'tallies', 'author', 'month', 'emblem', 'site'] as const).flatMap((key) =>
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
