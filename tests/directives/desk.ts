import { readFileSync } from 'node:fs';
import { createReport, type Problem, type Report, sortProblems } from '../../src/diagnostics/index.js';
import type { View, Where } from '../../src/directives/contract.js';
import { DIRECTIVES } from '../../src/directives/list.js';
import type { Block } from '../../src/document/index.js';
import { type DirectivePart, type Lesson, type Part, parseLesson } from '../../src/lesson/index.js';
import { type ComputedLesson, computeLesson, type ReadTables } from '../../src/pipeline/compute.js';
import { createViewer, type Viewer } from '../../src/pipeline/viewer.js';
import { LEVELS, type Level } from '../../src/reading/index.js';
import {
  loadFoods,
  loadSources,
  loadTerms,
  readLines,
  readLocalFoods,
  readPrices,
  readSite,
  SOURCES_FILE,
  TERMS_FILE,
} from '../../src/records/index.js';
import { register } from '../cautions/register-files.js';
import { ASSETS } from '../records/tables.js';

export const DAY = '2026-12-01';

const loading = createReport();
/** The project's own tables, with the prices of the invented site, loaded once for all tests of a file. */
const pack = (name: string) => readFileSync(`assets/local/lantern-street/${name}`, 'utf8');
export const foods = loadFoods(ASSETS, loading);
const lines = readLines(pack('lines.yaml'), 'lines.yaml', DAY, loading);
const site = readSite(pack('site.yaml'), 'site.yaml', lines, DAY, loading);
if (!site) throw new Error('The invented site could not be read.');
const itsFoods = foods.with(readLocalFoods(pack('foods.yaml'), 'foods.yaml', DAY, loading), loading);
const prices = readPrices(pack('prices.csv'), 'prices.csv', site, itsFoods, loading);
const sources = loadSources(readFileSync(`assets/${SOURCES_FILE}`, 'utf8'), loading);
const terms = loadTerms(readFileSync(`assets/${TERMS_FILE}`, 'utf8'), loading);
export const tables: ReadTables = { foods, sources, terms, register, prices, on: DAY };

export const PLACES: readonly Where[] = ['handout', 'worksheet', 'key', 'slide', 'staff'];
/** Every place with every level that can stand there. */
export const AUDIENCES = PLACES.flatMap((where) => LEVELS.map((level) => ({ where, level })));

const FRONT = `---
title: A lesson for tests
minutes: 30
audience: adults
objectives:
  - try a directive
guidance: us-2025
topics: [cans]
sources: [usda-sr28]
review: none
---

# A lesson for tests

`;
const FRONT_LINES = FRONT.split('\n').length - 1;

export interface Read {
  readonly lesson: Lesson | undefined;
  readonly computed: ComputedLesson | undefined;
  /** By place; lines count from the first line of the snippet. */
  readonly problems: readonly Problem[];
}

/** A stretch of a lesson through the real parser and computing. */
export function readSnippet(snippet: string): Read {
  const report = createReport();
  const known = DIRECTIVES.map((directive) => directive.schema);
  const lesson = parseLesson(FRONT + snippet, 'lessons/test/lesson.md', known, report);
  const computed = lesson ? computeLesson(lesson, tables, report) : undefined;
  return { lesson, computed, problems: sortProblems(report.problems.map(moved)) };
}

function moved(problem: Problem): Problem {
  const { place } = problem;
  return place ? { ...problem, place: { ...place, line: place.line - FRONT_LINES } } : problem;
}

/** A lesson made of parts, without its text. */
export function computeParts(parts: readonly Part[], report: Report, audience = 'adults'): ComputedLesson {
  const place = { file: 'lesson.md', line: 1, column: 1 };
  const lesson: Lesson = {
    file: 'lesson.md',
    slug: 'test',
    text: '',
    titlePlace: place,
    parts,
    front: {
      title: 'A lesson for tests',
      minutes: 30,
      audience,
      objectives: [],
      guidance: 'us-2025',
      topics: [],
      sources: [],
      review: 'none',
      code: 'TEST',
      language: 'en',
      places: new Map(),
    },
  };
  return computeLesson(lesson, tables, report);
}

/** The view of one directive for one audience. */
export function viewOf(
  computed: ComputedLesson,
  part: DirectivePart,
  where: Where,
  level: Level,
): View | undefined {
  return viewerOf(computed, where, level).view(part);
}

/** What a whole lesson says to one audience. */
export function blocksOf(computed: ComputedLesson, where: Where, level: Level): readonly Block[] {
  return viewerOf(computed, where, level).blocks(computed.lesson.parts);
}

function viewerOf(computed: ComputedLesson, where: Where, level: Level): Viewer {
  return createViewer(
    computed,
    { where, level, language: 'en', measures: 'us' },
    () => undefined,
    () => [],
    terms,
    createReport(),
  );
}

/** `2:3 N03` for each problem. */
export function spots(problems: readonly Problem[]): string[] {
  return problems.map(({ code, place }) => `${place ? `${place.line}:${place.column} ` : ''}${code}`);
}
