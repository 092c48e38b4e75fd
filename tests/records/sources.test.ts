import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { createReport, type Problem } from '../../src/diagnostics/index.js';
import { RINSE_STUDIES } from '../../src/nutrition/rinse-studies.js';
import { isFood, isSource, loadFoods, loadSources, sourceWords } from '../../src/records/index.js';
import { ASSETS } from './tables.js';

const TEXT = readFileSync('assets/sources.yaml', 'utf8');
const loaded = createReport();
const sources = loadSources(TEXT, loaded);
const found = (id: string) => {
  const source = sources.find(id);
  if (!isSource(source)) throw new Error(`${id} was not found.`);
  return source;
};

describe('the project’s list of sources', () => {
  it('loads without a problem, every entry', () => {
    expect(loaded.problems).toEqual([]);
    expect(sources.all.length).toBe(TEXT.match(/^- id:/gm)?.length);
  });

  it.each([
    'usda-sr28',
    'duyff-2011',
    'haytowitz-2011',
    'kitchen-tests-beans',
    'fda-daily-values',
    'rickman-2007',
    'dga-2020-2025',
    'dga-2025-2030',
  ])('has %s', (id) => {
    expect(found(id).id).toBe(id);
  });

  it('has every source that a food, a measure or a rinsing study names', () => {
    const foods = loadFoods(ASSETS, createReport());
    const named = new Set(RINSE_STUDIES.map((study) => study.source));
    for (const name of foods.names) {
      const food = foods.find(name);
      if (!isFood(food)) continue;
      named.add(food.record.source);
      // `house` marks a weight of our own; it is no source.
      for (const measure of food.measures) if (measure.source !== 'house') named.add(measure.source);
      expect(found(food.record.source).dataDate).toBe(food.record.date);
    }
    expect([...named].filter((id) => !isSource(sources.find(id)))).toEqual([]);
  });

  it('says of each how it was read, and what of it when it was not read whole', () => {
    for (const source of sources.all)
      if (source.seen !== 'whole') expect(source.note, source.id).toBeTruthy();
  });
});

describe('a source', () => {
  // The journal's own title, volume and pages, as its abstract page gives them (doi 10.1080/15428052.2011.582405).
  it('prints who, when, what and where', () => {
    expect(sourceWords(found('duyff-2011'))).toBe(
      'Duyff RL, Mount JR, Jones JB (2011). Sodium reduction in canned beans after draining, rinsing. Journal of Culinary Science & Technology 9:106–112.',
    );
    expect(sourceWords(found('kitchen-tests-beans'))).toMatch(
      /^a bean canner, a cooking magazine's laboratory\. \[Kitchen tests/,
    );
  });

  it('is found by its id only, and near ids are offered', () => {
    expect(sources.find('usda-sr27')).toEqual({ near: ['usda-sr28'] });
    expect(sources.find('rickman')).toEqual({ near: ['rickman-2007'] });
    for (const id of ['', '__proto__', 'constructor', 'x'.repeat(100_000)])
      expect(sources.find(id)).toEqual({ near: [] });
  });
});

const GOOD = `- id: one-2001
  authors: [A B]
  year: 2001
  title: Title
  where: Place
  kind: study
  seen: whole
`;

function load(text: string) {
  const report = createReport();
  return { sources: loadSources(text, report, 'sources.yaml'), problems: report.problems };
}
const spot = (problem: Problem) => [problem.code, problem.place?.line, problem.place?.column];

describe('a list that is not right', () => {
  it('keeps dates as they are written', () => {
    const { sources: some, problems } = load(`${GOOD}  accessed: 2026-01-31\n  dataDate: 2015\n`);
    expect(problems).toEqual([]);
    expect(some.all[0]).toMatchObject({ accessed: '2026-01-31', dataDate: '2015', year: 2001 });
    expect(load(GOOD.replace('year: 2001', 'year: unknown')).sources.all.map((s) => s.year)).toEqual([null]);
  });

  it.each<[string, string, [string, number, number][]]>([
    ['no list', 'id: one', [['records/sources', 1, 1]]],
    ['nothing', '', [['records/sources', 1, 1]]],
    ['no YAML', '- id: "one\n', [['records/sources', 2, 1]]],
    ['an id that is none', GOOD.replace('one-2001', 'One 2001'), [['records/source', 1, 7]]],
    ['a missing title', GOOD.replace('  title: Title\n', ''), [['records/source', 1, 3]]],
    ['a blank place', GOOD.replace('Place', '" "'), [['records/source', 5, 10]]],
    ['nobody', GOOD.replace('[A B]', '[]'), [['records/source', 2, 12]]],
    ['a year that is none', GOOD.replace('year: 2001', 'year: soon'), [['records/source', 3, 9]]],
    ['a kind that is none', GOOD.replace('study', 'rumor'), [['records/source', 6, 9]]],
    ['no word on how it was read', GOOD.replace('seen: whole', 'seen: yes'), [['records/source', 7, 9]]],
    [
      'a misspelled field',
      GOOD.replace('title:', 'titel:'),
      [
        ['records/source', 1, 3],
        ['records/source', 4, 3],
      ],
    ],
    ['an address that is none', `${GOOD}  url: example\n`, [['records/source', 8, 8]]],
    ['a day that is none', `${GOOD}  accessed: 2026-1-3\n`, [['records/source', 8, 13]]],
    ['an id twice', GOOD + GOOD, [['records/twice', 8, 7]]],
    ['an id that means something else', GOOD.replace('one-2001', 'house'), [['records/twice', 1, 7]]],
    ['an entry that is a word', `- one\n${GOOD}`, [['records/source', 1, 3]]],
  ])('points to %s', (_what, text, spots) => {
    const { problems } = load(text);
    expect(problems.map(spot)).toEqual(spots);
  });

  it('leaves out only what is wrong', () => {
    const { sources: some } = load(`${GOOD.replace('study', 'rumor').replace('one', 'two')}${GOOD}`);
    expect(some.all.map((source) => source.id)).toEqual(['one-2001']);
  });
});
