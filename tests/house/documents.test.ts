import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { describe, expect, it } from 'vitest';
import { filesBelow, ROOT, type SourceFile, sourceFiles } from './source.js';

/** The two documents for people who come new, which name paths, packages and commands. */
const DOCUMENTS = ['README.md', 'DEVELOPERS.md'] as const;

/** Folders and files at the top: what begins with one of them in a document is a path of ours. */
const TOP = readdirSync(ROOT).filter((name) => !['.git', 'node_modules', 'out', 'coverage'].includes(name));

const read = (path: string) => readFileSync(join(ROOT, path), 'utf8');
/** Fenced code shows examples of things that are still to be made. */
const withoutFences = (text: string) => text.replace(/^(`{3,}|~{3,})[\s\S]*?^\1\s*$/gm, '');

interface Manifest {
  readonly scripts: Readonly<Record<string, string>>;
  readonly dependencies: Readonly<Record<string, string>>;
  readonly devDependencies: Readonly<Record<string, string>>;
}
const manifest = JSON.parse(read('package.json')) as Manifest;

/** Paths of the tree that a text names, in links and in code: without anchors, places and patterns. */
function pathsIn(text: string, file: string): string[] {
  const plain = withoutFences(text);
  const links = [...plain.matchAll(/\]\(([^)\s]+)\)/g)]
    .map((m) => m[1] ?? '')
    .filter((to) => !/^(https?:|mailto:|tel:|#)/.test(to))
    .map((to) => posix.join(posix.dirname(file), to.replace(/#.*$/, '')));
  const code = [...plain.matchAll(/`([^`\n]+)`/g)]
    .map((m) => m[1] ?? '')
    .filter((span) => TOP.some((name) => span === name || span.startsWith(`${name}/`)))
    .filter((span) => !/[<>*{}…\s]/.test(span));
  return [...links, ...code].map((path) => path.replace(/\/$/, ''));
}

/** Scripts that a text calls with `npm run` or `npm test`. */
function scriptsIn(text: string): string[] {
  return [...text.matchAll(/\bnpm (?:run ([a-z:-]+)|(test)\b)/g)].map((m) => m[1] ?? m[2] ?? '');
}

/** The part of a document under a heading of the second level. */
function section(text: string, heading: string): string {
  const parts = text.split(/^## /m);
  const found = parts.find((part) => part.startsWith(`${heading}\n`));
  if (found === undefined) throw new Error(`There is no section "${heading}".`);
  return found;
}

/** Files of the core that speak of workings and have no formula of their own, with the reason. */
const NO_FORMULA: Readonly<Record<string, string>> = {
  'src/nutrition/reckoned.ts': 'the shape of a result with its working',
  'src/nutrition/working.ts': 'the shape of a working, and how two are put together',
};

/** Whether code gives results with a working, or works with such results. */
function makesWorkings({ text }: SourceFile): boolean {
  const code = text.replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '');
  return /\b(?:Working|Worked|Reckoned|EnergyEstimate)\b/.test(code);
}

/** The table of formulas: what, formula, source, file, test. */
function formulaRows(text: string) {
  const rows = section(text, 'Formulas').matchAll(
    /^\| [^|]+ \| [^|]+ \| [^|]+ \| `([a-z0-9/.-]+\.ts)` \| `(tests\/[^`]+)` \|$/gm,
  );
  return [...rows].map(([, file = '', test = '']) => ({
    file: file.includes('/') ? file : `src/nutrition/${file}`,
    test,
  }));
}

describe('the documents', () => {
  it.each(DOCUMENTS)('%s names only paths that exist', (file) => {
    const paths = pathsIn(read(file), file);
    expect(paths.length).toBeGreaterThan(5);
    expect(paths.filter((path) => !existsSync(join(ROOT, path)))).toEqual([]);
  });

  it('call only scripts that exist, and so does the code', () => {
    const ours = [...filesBelow('src'), ...filesBelow('tests'), ...filesBelow('assets')]
      .filter((path) => /\.(ts|mjs|md|ya?ml)$/.test(path))
      .filter((path) => path !== 'tests/house/documents.test.ts');
    const called = [...DOCUMENTS, ...ours].flatMap((file) =>
      scriptsIn(read(file))
        .filter((script) => !Object.hasOwn(manifest.scripts, script))
        .map((script) => `${file}: ${script}`),
    );
    expect(called).toEqual([]);
  });

  it('README.md leads with the two commands', () => {
    const readme = read('README.md');
    const first = readme.indexOf('npm ci && npm run build');
    const second = readme.indexOf('npm ci && npm test');
    expect(first).toBeGreaterThan(0);
    expect(second).toBeGreaterThan(first);
    expect(readme.slice(0, first)).not.toMatch(/^## /m);
  });

  it('DEVELOPERS.md has a row for every folder of src, and no other', () => {
    const rows = [...section(read('DEVELOPERS.md'), 'The folders').matchAll(/^\| `([a-z]+)\/` \|/gm)];
    const folders = [...new Set(filesBelow('src').map((path) => path.split('/')[1] ?? ''))];
    const named = rows.map((row) => row[1] ?? '');
    expect(folders.filter((folder) => !named.includes(folder))).toEqual([]);
    expect(named.length).toBe(new Set(named).size);
  });

  it('DEVELOPERS.md gives every dependency its reason, and no other', () => {
    const rows = section(read('DEVELOPERS.md'), 'Decisions').matchAll(/^\| ((?:`[^`]+`(?:, )?)+)/gm);
    const named = [...rows].flatMap((row) =>
      [...(row[1] ?? '').matchAll(/`([^`]+)`/g)].map((m) => m[1] ?? ''),
    );
    const used = [...Object.keys(manifest.dependencies), ...Object.keys(manifest.devDependencies)];
    expect(used.filter((name) => !named.includes(name))).toEqual([]);
    expect(named.filter((name) => !used.includes(name))).toEqual([]);
  });

  it('DEVELOPERS.md names every formula of the core with its file and a test that exists', () => {
    const rows = formulaRows(read('DEVELOPERS.md'));
    expect(rows.length).toBeGreaterThan(50);
    expect(
      rows.filter(({ file, test }) => ![file, test].every((path) => existsSync(join(ROOT, path)))),
    ).toEqual([]);
    const named = new Set(rows.map(({ file }) => file));
    const makers = sourceFiles('src/nutrition').filter(makesWorkings);
    expect(makers.length).toBeGreaterThan(35);
    const bare = makers.map(({ path }) => path).filter((path) => !named.has(path));
    expect(bare).toEqual(Object.keys(NO_FORMULA));
  });
});

describe('each rule for documents has been seen to fail', () => {
  it('a path in a link and a path in code, but none in a fence or a pattern', () => {
    const text =
      'See [a](src/no-such/x.ts#top), `tests/gone.ts`, `src/<name>/` and [w](https://a.b).\n```\nsrc/later\n```\n';
    expect(pathsIn(text, 'README.md')).toEqual(['src/no-such/x.ts', 'tests/gone.ts']);
  });

  it('a script', () => {
    expect(scriptsIn('Run `npm run make:nothing` or npm test.')).toEqual(['make:nothing', 'test']);
  });

  it('a row of the table of formulas, and a file that needs one', () => {
    const text =
      '## Formulas\n\n| a | `b` | c | `d.ts` | `tests/e.test.ts` |\n| a | `b` | c | `tests/e.test.ts` |\n';
    expect(formulaRows(text)).toEqual([{ file: 'src/nutrition/d.ts', test: 'tests/e.test.ts' }]);
    expect(makesWorkings({ path: '', text: 'export function f(): Worked<"g"> {}' })).toBe(true);
    expect(makesWorkings({ path: '', text: '/** A Working. */ const a = 1; // Worked' })).toBe(false);
  });
});
