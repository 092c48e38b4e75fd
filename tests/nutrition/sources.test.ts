import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { MET_ROWS } from '../../src/nutrition/index.js';
import { sourceFiles } from '../house/source.js';

/** Ids of `assets/sources.yaml`, read without the program's reader. */
const ENTRIES = new Set(
  [...readFileSync('assets/sources.yaml', 'utf8').matchAll(/^- id: (\S+)$/gm)].map((m) => m[1] ?? ''),
);

/** What stands where a source's id could and needs no entry, each with the reason. */
const NO_ENTRY: Readonly<Record<string, string>> = {
  lesson: 'what the author wrote',
  house: 'a figure of our own',
  'common practice': 'nobody published it first; pages say so',
  'definition of the units': 'exact by definition',
  'density of ethanol': 'a constant of nature',
  'natural logarithm of 2': 'a constant of arithmetic',
  'group average, common practice': 'rough yields, from memory, said to be so',
  'exchange lists for diabetes teaching, common practice': 'taught in many wordings, from memory',
  'metric cup and spoons, common practice': 'a kitchen measure that no rule defines',
  'Australian cup and spoons, common practice': 'a kitchen measure that no rule defines',
  'cup of 200 mL, common practice': 'a kitchen measure that no rule defines',
  'general factors, USDA Agriculture Handbook 74; 21 CFR 101.9(c)(1)(i)(B)':
    'a handbook and a rule by number',
};
/** Rules are found by their number and are named as they stand. */
const RULE = /^(?:\d+ CFR |Regulation \(E[CU]\) |Codex CXG |NIST Handbook )/;
/** Short names that look like an id with a year and are none. */
const NO_SOURCE = new Set([
  // Editions of the guidance, whose sources are dga-2020-2025 and dga-2025-2030.
  'us-2020',
  'us-2025',
  // Reports behind nasem-dri; a working names that id with the report's year.
  'calcium-1997',
  'b-1998',
  'antioxidants-2000',
  'micronutrients-2001',
  'macronutrients-2005',
  'water-2005',
  'calcium-2011',
  'sodium-2019',
]);

const FILES = sourceFiles('src/nutrition').map(({ path, text }) => ({
  path,
  text: text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/\/\/.*$/gm, ''),
}));
const literals = (pattern: RegExp) =>
  FILES.flatMap(({ path, text }) => [...text.matchAll(pattern)].map((m) => ({ path, words: m[1] ?? '' })));
/** The id that a source begins with; a record's number or a table may follow it. */
const isKnown = (words: string) => ENTRIES.has(words.split(' ')[0] ?? '');

describe('every source that the core names', () => {
  it('has an entry when it is written as an id with a year', () => {
    const ids = literals(/'([a-z][a-z0-9]*(?:-[a-z0-9]+)*-(?:19|20)\d\d(?: \d+)?)'/g);
    const sources = ids.filter(({ words }) => !NO_SOURCE.has(words));
    expect(sources.length).toBeGreaterThan(15);
    expect(sources.filter(({ words }) => !isKnown(words))).toEqual([]);
    const written = new Set(ids.map(({ words }) => words));
    expect([...NO_SOURCE].filter((words) => !written.has(words))).toEqual([]);
  });

  it('has an entry, is a rule by its number, or needs none for a reason', () => {
    const named = [
      ...literals(/\bsource: '([^']+)'/g),
      ...literals(/\b[A-Z_]*SOURCE = '([^']+)'/g),
      // The fourth argument of `input`, where it is written out.
      ...literals(/\binput\((?:[^()']|'[^']*'|\([^()]*\))*?,\s*'[^']*',\s*'([^']+)'/g),
    ];
    expect(named.length).toBeGreaterThan(40);
    const bare = named.filter(
      ({ words }) => !isKnown(words) && !RULE.test(words) && !Object.hasOwn(NO_ENTRY, words),
    );
    expect(bare).toEqual([]);
    const written = FILES.map(({ text }) => text).join('\n');
    expect(Object.keys(NO_ENTRY).filter((words) => !written.includes(`'${words}'`))).toEqual([]);
  });

  it('has an entry for each edition of the activity values', () => {
    const editions = new Set(MET_ROWS.map(({ edition }) => `compendium-${edition}`));
    expect([...editions].filter((id) => !ENTRIES.has(id))).toEqual([]);
  });

  it('has no exception that has an entry', () => {
    expect([...Object.keys(NO_ENTRY), ...NO_SOURCE].filter((words) => ENTRIES.has(words))).toEqual([]);
  });
});
