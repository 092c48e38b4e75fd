import { readdirSync, readFileSync } from 'node:fs';
import { type Facts, loadRegister, NO_FACTS, type Register, type Setting } from '../../src/cautions/index.js';
import { createReport } from '../../src/diagnostics/index.js';
import { type LocalLines, readLines } from '../../src/records/local/index.js';

const FOLDER = 'assets/cautions';
export const DAY = '2026-12-01';

export function registerTexts() {
  return readdirSync(FOLDER)
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => ({ file: `${FOLDER}/${name}`, text: readFileSync(`${FOLDER}/${name}`, 'utf8') }));
}

const loaded = createReport();
/** The register as it stands in the assets; a test holds that it loads without a problem. */
export const register: Register = loadRegister(registerTexts(), loaded);
export const loadProblems = loaded.problems;

export const lines: LocalLines = readLines(
  readFileSync('assets/local/lantern-street/lines.yaml', 'utf8'),
  'assets/local/lantern-street/lines.yaml',
  DAY,
  createReport(),
);

export function setting(over: Partial<Setting> = {}): Setting {
  return {
    register,
    output: 'handout',
    level: 'plain',
    language: 'en',
    on: DAY,
    lines,
    country: 'us',
    ...over,
  };
}

/** What the lesson on beans and peas holds: its topics, its three directives and a few of its sentences. */
export const BEANS: Facts = {
  ...NO_FACTS,
  guidance: 'us-2025',
  topics: ['fiber up', 'sodium down', 'cans', 'dried beans'].map((name, i) => ({
    name,
    place: { file: 'lesson.md', line: 8, column: 10 + i },
  })),
  directives: [
    {
      name: 'form-compare',
      id: 'pinto',
      place: { file: 'lesson.md', line: 20, column: 1 },
      nutrients: ['sodium', 'fiber'],
      foods: [
        { food: { name: 'pinto beans, dried, cooked', flags: [] } },
        { food: { name: 'pinto beans, canned, drained', flags: ['canned'] } },
      ],
    },
    {
      name: 'rinse-drop',
      id: 'rinse',
      place: { file: 'lesson.md', line: 30, column: 1 },
      nutrients: ['sodium'],
      foods: [{ food: { name: 'black beans, canned', flags: ['canned'] } }],
    },
    {
      name: 'quiz',
      id: 'q1',
      place: { file: 'lesson.md', line: 40, column: 1 },
      nutrients: ['sodium'],
      foods: [{ food: { name: 'pinto beans, canned, drained', flags: ['canned'] } }],
    },
  ],
  texts: [
    'Beans fill you up for little money. One cup has a lot of fiber.',
    'Drain the can, then rinse the beans under cold water. Count slowly to 30.',
    'Soak dry beans overnight. Use herbs, garlic powder and lime in place of salt.',
    'Mash the beans for a fast supper, or add a cup of tomato puree.',
    'Canned chickpeas drop into a salad. Walk the two cans round the room.',
    'Some vitamins leave with the water. Work out which can has the least sodium.',
  ].map((text, i) => ({
    text,
    where: 'text' as const,
    place: { file: 'lesson.md', line: 50 + i, column: 1 },
  })),
};
