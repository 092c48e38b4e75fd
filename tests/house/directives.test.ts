import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { DIRECTIVES, SERVICE } from '../../src/directives/list.js';
import { directiveCodes } from '../../src/directives/problems.js';
import { fillSlots, SPOKEN, type Term } from '../../src/languages/index.js';
import type { KnownAttribute } from '../../src/lesson/index.js';
import { filesBelow, ROOT } from './source.js';

/** One folder of `src/directives/` with what stands in it and beside it. */
interface Folder {
  readonly name: string;
  /** Names of its own files. */
  readonly files: readonly string[];
  /** Names of the files in its folder of tests. */
  readonly tests: readonly string[];
  readonly readme: string;
  /** Its code but for the terms. */
  readonly code: string;
}

/** What the list knows of a folder. */
interface Listed {
  readonly name: string;
  readonly attributes: Readonly<Record<string, KnownAttribute>>;
  readonly terms?: Readonly<Record<string, Readonly<Record<string, Term>>>>;
}

const read = (path: string) => readFileSync(join(ROOT, path), 'utf8');
const sources = filesBelow('src/directives');
const tests = filesBelow('tests/directives');

const below = (paths: readonly string[], root: string, name: string) =>
  paths
    .filter((path) => path.startsWith(`${root}/${name}/`))
    .map((path) => path.slice(root.length + name.length + 2));

const folders: readonly Folder[] = [...new Set(sources.map((path) => path.split('/')[2] ?? ''))]
  .filter((name) => !name.endsWith('.ts'))
  .map((name) => {
    const files = below(sources, 'src/directives', name);
    const code = files.filter((file) => file.endsWith('.ts') && file !== 'terms.ts');
    return {
      name,
      files,
      tests: below(tests, 'tests/directives', name),
      readme: files.includes('README.md') ? read(`src/directives/${name}/README.md`) : '',
      code: code.map((file) => read(`src/directives/${name}/${file}`)).join('\n'),
    };
  });

const listed: readonly Listed[] = [
  ...DIRECTIVES.map(({ schema, terms }) => ({ name: schema.name, attributes: schema.attributes, terms })),
  ...SERVICE.map(({ name, attributes }) => ({ name, attributes })),
];

/** What is missing in a folder or beside it. */
function folderFaults(folder: Folder, list: readonly Listed[]): string[] {
  const { name, files, readme } = folder;
  const entries = list.filter((one) => one.name === name);
  const [entry] = entries;
  const faults: string[] = [];
  const need = (there: boolean, fault: string) => there || faults.push(`${name}: ${fault}`);
  need(entries.length === 1, 'has no one line in list.ts');
  need(files.includes('index.ts'), 'has no index.ts');
  need(files.includes('README.md'), 'has no README.md');
  need(folder.tests.includes('cases.md'), 'has no cases.md in its tests');
  if (entry?.terms) {
    need(files.includes('schema.ts'), 'has no schema.ts');
    need(files.includes('terms.ts'), 'has no terms.ts');
  }
  if (files.includes('compute.ts')) need(folder.tests.includes('compute.test.ts'), 'has no compute.test.ts');
  need(/^```markdown$/m.test(readme), 'shows no example');
  for (const [attribute, known] of Object.entries(entry?.attributes ?? {})) {
    const row = `| \`${attribute}\` | ${known.required ? 'required ' : ''}| ${known.help} |`;
    need(readme.includes(row), `README has no row ${row}`);
  }
  return faults;
}

/** Terms that a language lacks, slots that differ between languages, and terms that nothing says. */
function termFaults(folder: Pick<Folder, 'name' | 'code'>, { terms }: Listed): string[] {
  if (!terms) return [];
  const first = terms[SPOKEN[0]] ?? {};
  const keys = Object.keys(first);
  const perLanguage = SPOKEN.flatMap((language) => {
    const own = terms[language];
    if (!own) return [`${folder.name}: no terms in ${language}`];
    const odd = [
      ...keys.filter((key) => !(key in own)),
      ...Object.keys(own).filter((key) => !(key in first)),
    ];
    return [
      ...odd.map((key) => `${folder.name}: ${key} is not in every language (${language})`),
      ...keys
        .filter((key) => key in own && slots(own[key]) !== slots(first[key]))
        .map((key) => `${folder.name}: ${key} has other slots in ${language}`),
    ];
  });
  const unused = keys.filter((key) => !folder.code.includes(`'${key}'`));
  return [...perLanguage, ...unused.map((key) => `${folder.name}: nothing says ${key}`)];
}

/** `count` picks a form and may stand in some of them only. */
function slots(term: Term | undefined): string {
  const words = typeof term === 'string' ? [term] : Object.values(term ?? {});
  const names = words.flatMap((text) => [...text.matchAll(/\{([a-z-]+)\}/g)].map((m) => m[1] ?? ''));
  return [...new Set(names.filter((name) => name !== 'count'))].sort().join(' ');
}

describe('every directive is one whole folder', () => {
  it.each(folders.map((folder) => [folder.name, folder] as const))('%s', (_, folder) => {
    expect(folderFaults(folder, listed)).toEqual([]);
    const entry = listed.find((one) => one.name === folder.name);
    expect(entry ? termFaults(folder, entry) : []).toEqual([]);
  });

  it('every line of the list has its folder', () => {
    expect(listed.map((one) => one.name).filter((name) => !folders.some((f) => f.name === name))).toEqual([]);
  });

  it('every folder of tests has its directive', () => {
    const names = new Set(
      tests.filter((path) => path.split('/').length > 3).map((path) => path.split('/')[2]),
    );
    expect([...names].filter((name) => !folders.some((folder) => folder.name === name))).toEqual([]);
  });

  it('every code of the table is reported somewhere, and a case or test shows it', () => {
    const code = sources.filter((path) => path.endsWith('.ts')).map(read);
    const shown = [...sources, ...tests].filter((path) => /\.(md|test\.ts)$/.test(path)).map(read);
    for (const name of Object.keys(directiveCodes)) {
      // Once in the table, and at least once where it is reported.
      const uses = code.reduce((sum, text) => sum + text.split(`'${name}'`).length - 1, 0);
      const declared = /\W/.test(name) ? 1 : 0;
      expect(uses, name).toBeGreaterThan(declared);
      expect(
        shown.some((text) => text.includes(name)),
        name,
      ).toBe(true);
    }
  });

  it('nothing outside asks which directive it is', () => {
    const names = DIRECTIVES.map(({ schema }) => schema.name).filter((name) => name.includes('-'));
    const outside = filesBelow('src').filter(
      (path) => path.endsWith('.ts') && !path.startsWith('src/directives/'),
    );
    expect(outside.filter((path) => names.some((name) => read(path).includes(`'${name}'`)))).toEqual([]);
  });
});

describe('each rule has been seen to fail', () => {
  const whole: Folder = {
    name: 'tally',
    files: ['README.md', 'compute.ts', 'index.ts', 'schema.ts', 'terms.ts'],
    tests: ['cases.md', 'compute.test.ts'],
    readme: '```markdown\n::tally{of=peas}\n```\n\n| `of` | required | what is counted |\n',
    code: "say('title')",
  };
  const entry: Listed = {
    name: 'tally',
    attributes: { of: { kind: { is: 'text' }, required: true, help: 'what is counted' } },
    terms: { en: { title: 'Tally of {food}' } },
  };

  it('a whole folder passes', () => {
    expect(folderFaults(whole, [entry])).toEqual([]);
    expect(termFaults(whole, entry)).toEqual([]);
  });

  it.each([
    ['no line in the list', whole, []],
    ['two lines in the list', whole, [entry, entry]],
    ['no index', { ...whole, files: whole.files.filter((file) => file !== 'index.ts') }, [entry]],
    ['no README', { ...whole, files: whole.files.filter((file) => file !== 'README.md') }, [entry]],
    ['no schema', { ...whole, files: whole.files.filter((file) => file !== 'schema.ts') }, [entry]],
    ['no terms', { ...whole, files: whole.files.filter((file) => file !== 'terms.ts') }, [entry]],
    ['no cases', { ...whole, tests: ['compute.test.ts'] }, [entry]],
    ['no test of its computing', { ...whole, tests: ['cases.md'] }, [entry]],
    ['no example', { ...whole, readme: whole.readme.replace('markdown', '') }, [entry]],
    [
      'another help line in the README',
      { ...whole, readme: whole.readme.replace('counted', 'told') },
      [entry],
    ],
  ] as const)('%s', (_, folder, list) => {
    expect(folderFaults(folder, list)).toHaveLength(1);
  });

  it.each([
    ['a term that nothing says', { en: { title: 'Tally', foot: 'Sum' } }],
    ['a language without terms', {}],
  ])('%s', (_, terms) => {
    expect(termFaults(whole, { ...entry, terms }).length).toBeGreaterThan(0);
  });

  it('slots that differ', () => {
    expect(slots('{a} of {b}')).not.toBe(slots('{a}'));
    expect(slots({ one: '{count} row of {a}', other: '{count} rows of {a}' })).toBe(slots('{a}'));
    expect(fillSlots('{a}', { a: 1 })).toBe('1');
  });
});
