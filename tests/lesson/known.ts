import { createReport, type Problem, sortProblems } from '../../src/diagnostics/index.js';
import { DIRECTIVES } from '../../src/directives/list.js';
import { type Lesson, parseLesson } from '../../src/lesson/index.js';

export const FILE = 'lessons/test/lesson.md';
export const KNOWN = DIRECTIVES.map((directive) => directive.schema);

export const FRONT = `---
title: A test
minutes: 40
audience: anyone
objectives: [compare two cans]
guidance: us-2025
topics: [cans]
review: none
---
`;

export interface Parsed {
  readonly lesson: Lesson | undefined;
  readonly problems: readonly Problem[];
  /** `line:column code`, in the order of the text. */
  readonly found: readonly string[];
}

export function parse(text: string | Uint8Array): Parsed {
  const report = createReport();
  const lesson = parseLesson(text, FILE, KNOWN, report);
  const problems = sortProblems(report.problems);
  return { lesson, problems, found: problems.map((p) => `${p.place?.line}:${p.place?.column} ${p.code}`) };
}

/** The same for a body below a front matter without mistakes; lines count from the body's first. */
export function parseBody(body: string): Parsed {
  const { lesson, problems } = parse(FRONT + body);
  const from = FRONT.split('\n').length - 1;
  return {
    lesson,
    problems,
    found: problems.map((p) => `${(p.place?.line ?? 0) - from}:${p.place?.column} ${p.code}`),
  };
}
