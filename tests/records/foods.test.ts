import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createReport, type Problem } from '../../src/diagnostics/index.js';
import { isFood, loadFoods, recordCodes } from '../../src/records/index.js';
import { ASSETS, plainRows } from './tables.js';

const loaded = createReport();
const foods = loadFoods(ASSETS, loaded);
const find = (name: string) => {
  const found = foods.find(name);
  return isFood(found) ? found.name : found.near;
};
const found = (name: string) => {
  const food = foods.find(name);
  if (!isFood(food)) throw new Error(`${name} was not found; near: ${food.near.join(' | ')}`);
  return food;
};

describe('the project’s own tables', () => {
  it('load without a problem, and nothing in them is left out', () => {
    for (const name of foods.names) found(name);
    expect(loaded.problems).toEqual([]);
    expect(foods.names).toEqual(plainRows('foods/everyday.tsv').map((row) => row.name));
  });

  it('give each food its record', () => {
    const beans = found('pinto beans, canned, drained');
    expect(beans).toMatchObject({
      id: 'pinto-beans-canned-drained',
      kind: 'pinto beans',
      form: 'canned, drained',
      state: 'canned, drained',
      plate: ['protein', 'grain or starch'],
      flags: ['canned'],
      record: {
        source: 'usda-sr28',
        number: '16146',
        description: 'Beans, pinto, canned, drained solids',
        date: '2015-09',
      },
    });
    // USDA SR28, ABBREV.txt, food 16146.
    expect(beans.per100g).toMatchObject({
      energy: 114,
      protein: 6.99,
      fiber: 5.5,
      sodium: 239,
      'vitamin D': 0,
      'vitamin A': null,
      selenium: null,
    });
  });

  it('say where a household measure comes from, and which are estimated', () => {
    expect(found('pinto beans, canned, drained').measures).toEqual([
      { name: 'can', grams: 277, source: 'usda-sr28', note: '1 can, drained solids' },
      {
        name: 'cup',
        grams: 169,
        source: 'house',
        note: 'the cup of the drained and rinsed beans in the release, 16345',
        estimated: true,
      },
    ]);
    expect(found('banana').measures.at(-1)).toEqual({
      name: 'medium',
      grams: 118,
      source: 'usda-sr28',
      note: '1 medium (7" to 7-7/8" long)',
    });
  });

  it('reckon a usual portion from the measures', () => {
    expect(found('pinto beans, canned, drained').usual).toEqual({
      words: '1/2 cup',
      grams: 84.5,
      // The release has no cup of the drained can; the table takes that of the rinsed one.
      estimated: true,
    });
    expect(found('black beans, dry').usual.estimated).toBeUndefined();
    expect(found('black beans, dry').usual.grams).toBe(194 / 4);
    // One ounce is 28.349523125 g (international avoirdupois pound of 1959).
    expect(found('almonds').usual.grams).toBe(28.349523125);
  });

  it('give the column that Daily Values are stated in', () => {
    // USDA SR28, ABBREV.txt, food 11457 (spinach, raw): folate 194 µg DFE, vitamin A 469 µg RAE, K 482.9 µg.
    expect(found('spinach, raw').per100g).toMatchObject({
      folate: 194,
      'vitamin A': 469,
      'vitamin K': 482.9,
    });
    // Food 01077 (whole milk): vitamin D 1.3 µg, which the release also gives as 51 IU.
    expect(found('whole milk').per100g['vitamin D']).toBe(1.3);
    // Food 08120 (oats) is not fortified; food 20081 (white flour): 183 µg folate, 291 µg DFE.
    expect(found('wheat flour, white').per100g.folate).toBe(291);
  });

  it('know added sugars only of a food that is nothing but itself', () => {
    expect(found('banana').per100g['added sugars']).toBe(0);
    expect(found('whole milk').per100g['added sugars']).toBe(0);
    expect(found('pinto beans, canned, drained').per100g['added sugars']).toBeNull();
    expect(found('white bread').per100g['added sugars']).toBeNull();
    expect(found('sugar').per100g['added sugars']).toBeNull();
  });

  it('tell what a food contains, with what is not known kept apart', () => {
    expect(found('soy sauce').contains).toMatchObject({
      soy: 'yes',
      wheat: 'yes',
      gluten: 'yes',
      milk: 'no',
    });
    expect(found('oats, cooked').contains).toMatchObject({ gluten: 'unknown', wheat: 'no' });
    expect(found('white bread').contains).toMatchObject({ wheat: 'yes', milk: 'unknown', sesame: 'unknown' });
    expect(new Set(Object.values(found('apple').contains))).toEqual(new Set(['no']));
  });
});

describe('finding a food', () => {
  // Names that lessons write; common practice, no source.
  it.each([
    ['Pinto Beans,  Canned, drained and rinsed', 'pinto beans, canned, drained and rinsed'],
    ['pinto beans, dry', 'pinto beans, dry'],
    ['pinto beans, canned', 'pinto beans, canned, with the liquid'],
    ['pinto beans, dried, cooked without salt', 'pinto beans, dried, cooked at home'],
    ['chickpeas, canned, rinsed', 'chickpeas, canned, drained and rinsed'],
    ['garbanzo beans, canned, drained', 'chickpeas, canned, drained'],
    ['garbanzos, dry', 'chickpeas, dry'],
    ['frijoles negros, dry', 'black beans, dry'],
    ['black beans, canned', 'black beans, canned, with the liquid'],
    ['gandules, cooked', 'pigeon peas, dried, cooked at home'],
    ['lentils, cooked', 'lentils, dried, cooked at home'],
    ['peas, canned, drained', 'green peas, canned, drained'],
    ['chicharos, frozen', 'green peas, frozen, boiled, no salt'],
    ['carrots, frozen', 'carrots, frozen, boiled, no salt'],
    ['spinach, cooked', 'spinach, fresh, boiled, no salt'],
    ['brown rice, cooked', 'brown rice, cooked'],
    ['green peppers, cooked', 'green peppers, fresh, boiled, no salt'],
    ['milk, cow', 'whole milk'],
    ['onions', 'onion, raw'],
    ['eggs', 'egg, raw'],
    ['orange', 'orange'],
    ['Piña', 'pineapple, raw'],
    ['scallion', 'scallions, raw'],
    ['peaches', 'peach, raw'],
    ['tomatoes, canned, no salt added', 'tomatoes, canned, no salt added'],
    ['tofu, calcium-set', 'tofu, firm, calcium-set'],
  ])('finds %s', (written, name) => {
    expect(find(written)).toBe(name);
  });

  it('does not guess among the forms of a kind, and offers them', () => {
    expect(find('pinto beans')).toEqual([
      'pinto beans, dry',
      'pinto beans, dried, cooked at home',
      'pinto beans, canned, with the liquid',
      'pinto beans, canned, drained',
      'pinto beans, canned, drained and rinsed',
    ]);
    expect(find('cabbage')).toEqual(['cabbage, raw', 'cabbage, fresh, boiled, no salt']);
    expect(find('black beans, canned, drained and rinsed')).toContain('black beans, canned, with the liquid');
  });

  it('offers up to five names that come near', () => {
    expect(find('spinich, cooked')).toEqual(expect.arrayContaining(['spinach, fresh, boiled, no salt']));
    expect(find('bananna')).toContain('banana');
  });

  it.each(['', ' ', ',', ', ,', '__proto__', 'constructor', 'x'.repeat(100_000), '\u0000', '日本'])(
    'finds nothing for %j, quickly',
    (name) => {
      const food = foods.find(name);
      expect(isFood(food)).toBe(false);
      expect(foods.forms(name)).toEqual([]);
      expect(isFood(foods.form(name, name))).toBe(false);
      expect(isFood(foods.form('pinto beans', name))).toBe(false);
    },
  );

  it('does not mind case, white space and a closing comma', () => {
    const style = fc.constantFrom(
      (name: string) => name.toUpperCase(),
      (name: string) => `  ${name.replace(/ /g, '   ')}\t`,
      (name: string) => name.replace(/, /g, ' ,'),
      (name: string) => `${name},`,
      (name: string) => name.normalize('NFD'),
    );
    fc.assert(
      fc.property(fc.constantFrom(...foods.names), style, (name, change) => {
        expect(find(change(name))).toBe(name);
      }),
    );
  });

  it('finds a food again by its aliases and by its kind and form', () => {
    for (const name of foods.names) {
      const food = found(name);
      for (const alias of food.aliases) expect(find(alias), alias).toBe(name);
      expect(foods.form(food.kind, food.form)).toBe(food);
      expect(foods.form(food.kind, name)).toBe(food);
      expect(foods.forms(food.kind)).toContain(food);
    }
  });
});

describe('forms of a kind', () => {
  // The rows as authors write them in a comparison.
  it.each([
    ['pinto beans', 'dried, cooked at home', '16043'],
    ['pinto beans', 'canned, drained', '16146'],
    ['pinto beans', 'Canned, drained  and rinsed', '16345'],
    ['pinto beans', 'canned, with the liquid', '16044'],
    ['pinto beans', 'canned, with liquid', '16044'],
    ['peas', 'fresh, boiled, no salt', '11305'],
    ['peas', 'frozen, boiled, no salt', '11313'],
    ['peas', 'canned, drained', '11308'],
    ['peas', 'canned, no salt added, drained', '11813'],
    ['edamame', 'frozen, boiled, no salt', '11212'],
    ['frijoles pintos', 'dry', '16042'],
  ])('%s, %s is food %s', (kind, words, number) => {
    const food = foods.form(kind, words);
    expect(isFood(food) ? food.record.number : food.near).toBe(number);
  });

  it('are offered where the words fit none or several', () => {
    const none = foods.form('pinto beans', 'pickled');
    expect(isFood(none) ? [] : none.near.length).toBe(5);
    const several = foods.form('green lima beans', 'canned, no salt');
    expect(isFood(several) ? [] : several.near).toContain(
      'green lima beans, canned, no salt added, with the liquid',
    );
    expect(foods.form('pintos, perhaps', 'dry')).toEqual({ near: expect.any(Array) });
  });
});

describe('searching', () => {
  it('puts everyday foods first and then the rest of the release', () => {
    const hits = foods.search('pinto beans', 60);
    expect(hits.slice(0, 7).map((hit) => hit.name)).toEqual(
      foods.forms('pinto beans').map((food) => food.name),
    );
    expect(hits.slice(7).map((hit) => hit.number)).toContain('16343');
    expect(hits.slice(7).every((hit) => hit.name === undefined)).toBe(true);
    expect(new Set(hits.map((hit) => hit.number)).size).toBe(hits.length);
  });

  it('takes words in any order, from their beginnings, with other names of a kind', () => {
    expect(foods.search('drain pint can').map((hit) => hit.name)).toContain('pinto beans, canned, drained');
    expect(foods.search('frijoles negros').map((hit) => hit.name)).toContain('black beans, dry');
    expect(foods.search('  ')).toEqual([]);
    expect(foods.search('no such food at all')).toEqual([]);
    expect(foods.search('beans', 3)).toHaveLength(3);
  });

  it('gives any record of the release by number', () => {
    expect(foods.record('01001')).toMatchObject({ description: 'Butter, salted', group: '0100', refuse: 0 });
    expect(foods.record('1001')).toBe(foods.record('01001'));
    expect(foods.record('1001')?.weights).toEqual([
      { grams: 5, words: '1 pat,  (1" sq, 1/3" high)' },
      { grams: 14.2, words: '1 tbsp' },
    ]);
    for (const none of ['99999', '', 'x', '-1', '1e3', '123456']) expect(foods.record(none)).toBeUndefined();
  });
});

const RELEASE = ASSETS.read('foods/release.tsv') ?? '';
const HEAD = RELEASE.split('\n').find((line) => !line.startsWith('#')) ?? '';
const row = (number: string) => RELEASE.split('\n').find((line) => line.startsWith(`${number}\t`)) ?? '';
const EVERYDAY = (ASSETS.read('foods/everyday.tsv') ?? '').split('\n');
const EVERYDAY_HEAD = EVERYDAY.find((line) => !line.startsWith('#')) ?? '';
const everyday = (name: string) => EVERYDAY.find((line) => line.startsWith(`${name}\t`)) ?? '';
const DRAINED = everyday('pinto beans, canned, drained');

function load(everydayLines: string[], releaseLines: string[] = [HEAD, row('16146'), row('16043')]) {
  const report = createReport();
  const texts: Record<string, string> = {
    'foods/release.tsv': releaseLines.join('\n'),
    'foods/everyday.tsv': everydayLines.join('\n'),
  };
  return { foods: loadFoods({ read: (path) => texts[path] }, report), problems: report.problems };
}
const spot = (problem: Problem | undefined) =>
  problem && [problem.code, problem.place?.file, problem.place?.line, problem.place?.column];
const FILE = 'assets/foods/everyday.tsv';

describe('tables that are not right', () => {
  it('are reported when they are missing', () => {
    const report = createReport();
    const none = loadFoods({ read: () => undefined }, report);
    expect(report.problems.map((p) => [p.code, p.message])).toEqual([
      ['records/missing-table', 'The table assets/foods/release.tsv is missing.'],
      ['records/missing-table', 'The table assets/foods/everyday.tsv is missing.'],
    ]);
    expect(none.find('banana')).toEqual({ near: [] });
    expect(none.search('banana')).toEqual([]);
  });

  it('are read with other line ends, headings in another order and lost leading zeros', () => {
    const cells = (line: string) => line.split('\t').reverse().join('\t');
    const { foods: turned, problems } = load([cells(EVERYDAY_HEAD), cells(DRAINED)]);
    expect(problems).toEqual([]);
    expect(turned.names).toEqual(['pinto beans, canned, drained']);
    const butter = everyday('butter, salted').replace('\t01001\t', '\t1001\t');
    const windows = load(
      [`\uFEFF${EVERYDAY_HEAD}\r`, `${butter}\r`, '\r'],
      [`${HEAD}\r`, `${row('01001')}\r`],
    );
    expect(windows.problems).toEqual([]);
    const food = windows.foods.find('butter');
    expect(isFood(food) && food.record.number).toBe('01001');
    expect(isFood(food) && food.per100g.sodium).toBe(643);
  });

  // What is wrong, what is changed in the row of drained pinto beans, the code and the column.
  const at = (text: string) => DRAINED.indexOf(text) + 1;
  it.each<[string, string, string, keyof typeof recordCodes, number]>([
    ['a number that the release lacks', '\t16146\t', '\t16147\t', 'records/unknown-number', at('16146')],
    ['a number of another food', '\t16146\t', '\t16043\t', 'records/description', at('Beans, pinto')],
    ['a mistyped description', 'drained solids', 'drained solid', 'records/description', at('Beans, pinto')],
    [
      'a state that is none',
      '\tcanned, drained\tprotein',
      '\tcaned\tprotein',
      'records/value',
      at('canned, drained\tprotein'),
    ],
    [
      'a kind of the plate that is none',
      '; grain or starch',
      '; grains',
      'records/value',
      at('grain or starch'),
    ],
    ['grams that are not the release’s', 'can 277', 'can 276', 'records/weight', at('can 277')],
    ['a weight that the release lacks', 'can 277 [1]', 'can 277 [2]', 'records/weight', at('can 277')],
    ['a measure without a source', 'can 277 [1]', 'can 277', 'records/value', at('can 277')],
    ['a measure without grams', 'can 277 [1]', 'can 0 [1]', 'records/value', at('can 277')],
    ['a portion in no measure of the food', '\t1/2 cup\t', '\t1/2 mug\t', 'records/value', at('1/2 cup')],
    ['a portion of nothing', '\t1/2 cup\t', '\t1/0 cup\t', 'records/value', at('1/2 cup')],
    ['contents that are unknown to us', '\tnone\t', '\tmilk; nuts\t', 'records/value', at('none\t') + 6],
    ['contents left blank', '\tnone\t', '\t\t', 'records/value', at('none\t')],
    ['none beside something', '\tnone\t', '\tnone; milk\t', 'records/value', at('none\t')],
    ['no answer to “single food”', '\tno\t', '\tmaybe\t', 'records/value', at('no\tpinto')],
    ['a cell too few', '\tcanned', ' canned', 'records/cells', 1],
  ])('point to %s', (_what, from, to, code, column) => {
    expect(DRAINED).toContain(from);
    const { problems } = load([EVERYDAY_HEAD, '# a heading', DRAINED.replace(from, to)]);
    expect(problems.map(spot)).toEqual([[code, FILE, 3, column]]);
    expect(problems[0]?.hint).toBeTruthy();
  });

  it('never turn what cannot be read into a “no”', () => {
    const { foods: some } = load([EVERYDAY_HEAD, DRAINED.replace('\tnone\t', '\tmilk; nuts\t')]);
    const food = some.find('pinto beans, canned, drained');
    expect(isFood(food) && food.contains).toMatchObject({
      milk: 'yes',
      peanut: 'unknown',
      'tree nut': 'unknown',
    });
  });

  it('point to a name that stands twice, and keep the first', () => {
    const cooked = everyday('pinto beans, dried, cooked at home');
    const again = cooked.replace('\t', '\tpinto beans, canned, drained');
    const { foods: both, problems } = load([EVERYDAY_HEAD, DRAINED, again]);
    expect(problems.map(spot)).toEqual([['records/twice', FILE, 3, cooked.indexOf('\t') + 2]]);
    const food = both.find('pinto beans, canned, drained');
    expect(isFood(food) && food.record.number).toBe('16146');
  });

  it('point to headings that are missing, misspelled or twice', () => {
    const { foods: none, problems } = load([EVERYDAY_HEAD.replace('plate', 'plates'), DRAINED]);
    expect(problems).toMatchObject([
      { code: 'records/headings', place: { file: FILE, line: 1 }, expected: ['plate'] },
    ]);
    expect(problems[0]?.message).toBe(
      'The line of headings lacks "plate" and has "plates", not known or twice.',
    );
    expect(none.names).toEqual([]);
    expect(
      load([EVERYDAY_HEAD, DRAINED], [HEAD.replace('sodium (mg)', 'sodium (g)')]).problems,
    ).toMatchObject([
      { code: 'records/headings', expected: ['sodium (mg)'] },
      { code: 'records/unknown-number' },
    ]);
  });

  it('point to a cell of the release that is no number, which is then not known', () => {
    const broken = row('16146').replace('\t239\t', '\t2,39\t');
    const { foods: some, problems } = load([EVERYDAY_HEAD, DRAINED], ['# top', HEAD, row('16043'), broken]);
    expect(problems).toEqual([]);
    const food = some.find('pinto beans, canned, drained');
    expect(isFood(food) && food.per100g.sodium).toBeNull();
    expect(isFood(food) && food.per100g.fiber).toBe(5.5);
    expect(problems.map(spot)).toEqual([
      ['records/value', 'assets/foods/release.tsv', 4, row('16146').indexOf('\t239\t') + 2],
    ]);
  });

  it('point to rows of the release that are cut short, stand twice or have no number', () => {
    const cut = row('16146').split('\t').slice(0, 20).join('\t');
    const { problems } = load(
      [EVERYDAY_HEAD, DRAINED],
      [HEAD, row('16043'), cut, row('16043'), 'Beans\tx', 'x'],
    );
    expect(problems.map(spot)).toEqual([
      ['records/twice', 'assets/foods/release.tsv', 4, 1],
      ['records/value', 'assets/foods/release.tsv', 5, 1],
      ['records/value', 'assets/foods/release.tsv', 6, 1],
      ['records/cells', 'assets/foods/release.tsv', 3, 1],
      ['records/unknown-number', FILE, 2, at('16146')],
    ]);
  });

  it('never throw, whatever the text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), fc.string({ unit: 'binary' }), (one, two) => {
        const report = createReport();
        const some = loadFoods({ read: (path) => (path.includes('release') ? one : two) }, report);
        expect(some.names).toEqual([]);
      }),
    );
    fc.assert(
      fc.property(fc.array(fc.string(), { minLength: 15, maxLength: 15 }), (cells) => {
        load([EVERYDAY_HEAD, cells.join('\t')]).foods.find(cells[0] ?? '');
      }),
    );
  });
});

describe('codes', () => {
  it('are all explained', () => {
    for (const [code, info] of Object.entries(recordCodes)) {
      expect(code).toMatch(/^records\/[a-z-]+$/);
      expect(info.rule).toMatch(/^[A-Z].*\.$/);
      expect(info.about.split('. ').length).toBeGreaterThanOrEqual(2);
    }
  });
});
