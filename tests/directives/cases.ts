import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Where } from '../../src/directives/contract.js';
import type { DirectivePart, Part } from '../../src/lesson/index.js';
import { isLevel, type Level } from '../../src/reading/index.js';
import { AUDIENCES, PLACES, type Read, readSnippet, spots, viewOf } from './desk.js';
import { outline } from './strings.js';

/** A snippet of a lesson and what stands beside it. */
export interface Case {
  readonly title: string;
  /** Line of the file on which the snippet's fence opens. */
  readonly line: number;
  readonly snippet: string;
  /** `2:3 N03`: problems, all of them, in order. */
  readonly problems: readonly string[];
  /** `pinto.canned-drained.sodium = 400 mg`: numbers as printed. */
  readonly numbers: readonly string[];
  /** `handout plain has words`, `worksheet short lacks words`. */
  readonly views: readonly { where: Where; level: Level; has: boolean; words: string }[];
}

/**
 * Cases of a Markdown file: each block fenced as `markdown` is a snippet of a lesson; a block fenced as
 * `text` right after it says what is expected. Without one, no problems are.
 */
export function casesIn(file: string): readonly Case[] {
  const lines = readFileSync(file, 'utf8').split('\n');
  const cases: Case[] = [];
  let title = '';
  for (let i = 0; i < lines.length; i++) {
    const line = lines[i] ?? '';
    const heading = /^#+ (.*)/.exec(line)?.[1];
    if (heading) title = heading;
    const fence = /^(`{3,})(markdown|text)$/.exec(line);
    if (!fence) continue;
    const start = i + 1;
    while (i + 1 < lines.length && lines[i + 1] !== fence[1]) i++;
    const body = lines.slice(start, i + 1);
    i++;
    const last = cases.at(-1);
    if (fence[2] === 'markdown')
      cases.push({
        title,
        line: start,
        snippet: `${body.join('\n')}\n`,
        problems: [],
        numbers: [],
        views: [],
      });
    else if (last) cases[cases.length - 1] = withExpected(last, body, file);
  }
  return cases;
}

function withExpected(one: Case, lines: readonly string[], file: string): Case {
  const problems: string[] = [];
  const numbers: string[] = [];
  const views: Case['views'][number][] = [];
  for (const line of lines.filter(Boolean)) {
    const view = /^(\w+) (\w+) (has|lacks) (.+)$/.exec(line);
    const where = PLACES.find((place) => place === view?.[1]);
    const level = view?.[2] ?? '';
    if (where && isLevel(level))
      views.push({ where, level, has: view?.[3] === 'has', words: view?.[4] ?? '' });
    else if (/^\d+:\d+ \S+$/.test(line)) problems.push(line);
    else if (/^\S+ = .+$/.test(line)) numbers.push(line);
    else throw new Error(`${file}: "${line}" under "${one.title}" says nothing that a test can hold.`);
  }
  return { ...one, problems, numbers, views };
}

/** Runs every case of a file as a test of its own. */
export function runCases(file: string): void {
  const cases = casesIn(file);
  describe(file, () => {
    it('holds cases', () => expect(cases.length).toBeGreaterThan(0));
    it.each(cases.map((one) => [`line ${one.line}: ${one.title}`, one] as const))('%s', (_, one) => {
      const read = readSnippet(one.snippet);
      expect(spots(read.problems)).toEqual(one.problems);
      expect(numbersOf(read, one)).toEqual(one.numbers);
      for (const view of one.views) {
        const text = textOf(read, view.where, view.level);
        if (view.has) expect(text).toContain(view.words);
        else expect(text).not.toContain(view.words);
      }
      // What was computed can be shown everywhere.
      for (const { where, level } of AUDIENCES) textOf(read, where, level);
    });
  });
}

function numbersOf({ computed }: Read, { numbers }: Case): string[] {
  return numbers.map((line) => {
    const id = line.split(' = ')[0] ?? '';
    const found = computed?.numbers.get(id);
    return `${id} = ${found?.text.replaceAll('\u00a0', ' ') ?? 'no such number'}`;
  });
}

function textOf({ lesson, computed }: Read, where: Where, level: Level): string {
  if (!lesson || !computed) return '';
  return directivesIn(lesson.parts)
    .flatMap((part) => {
      const view = viewOf(computed, part, where, level);
      return view ? outline(view) : [];
    })
    .join('\n')
    .replaceAll('\u00a0', ' ');
}

export function directivesIn(parts: readonly Part[]): readonly DirectivePart[] {
  return parts.flatMap((part) => {
    if (part.kind === 'directive') return [part, ...directivesIn(part.parts)];
    if (part.kind === 'holder' || part.kind === 'quote') return directivesIn(part.parts);
    return [];
  });
}

/** What a snippet's directives show everywhere, once for each way that they look. */
export function viewsOf({ lesson, computed }: Read): string {
  if (!lesson || !computed) return '';
  const seen = new Map<string, string[]>();
  for (const { where, level } of AUDIENCES) {
    const text = textOf({ lesson, computed, problems: [] }, where, level);
    seen.set(text, [...(seen.get(text) ?? []), `${where} ${level}`]);
  }
  return [...seen].map(([text, places]) => `== ${places.join(', ')}\n${text}\n`).join('\n');
}
