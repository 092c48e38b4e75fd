import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ROOT } from './source.js';

/** What git does not keep, as `.gitignore` says, and git itself. */
const LEFT_OUT = new Set(['.git', 'node_modules', 'out', 'coverage']);
/** Leaves a test out by name where a reader of PDFs is not installed; the script in `.ci/` installs them all. */
const MAY_SKIP = 'tests/writers/pdf/tools.ts';
const BINARY = /\.(ttf|otf|png|jpe?g|pdf|woff2?)$/;
const CODE = /^(src|tests)\/.*\.(ts|mjs)$/;

/** Every file of the tree with forward slashes, in a stable order. */
function allFiles(folder = ROOT): string[] {
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => !(folder === ROOT && LEFT_OUT.has(entry.name)))
    .flatMap((entry) => {
      const path = join(folder, entry.name);
      return entry.isDirectory() ? allFiles(path) : [relative(ROOT, path).split(sep).join('/')];
    })
    .sort();
}

interface TextFile {
  readonly path: string;
  readonly text: string;
}

const paths = allFiles();
const texts: readonly TextFile[] = paths
  .filter((path) => !BINARY.test(path))
  .map((path) => ({ path, text: readFileSync(join(ROOT, path), 'utf8') }));

/** Lines of files that match, as `path:line`. */
function linesWith(files: readonly TextFile[], pattern: RegExp): string[] {
  return files.flatMap(({ path, text }) =>
    text
      .split('\n')
      .flatMap((line, index) =>
        pattern.test(line) ? [`${path}:${index + 1}: ${line.trim().slice(0, 120)}`] : [],
      ),
  );
}

/** A path that exists on one machine only. The parts stand apart so that this file does not match itself. */
const MACHINE_PATH = new RegExp(
  `(^|["'\`\\s(=:]|file://)(/(${['home', 'root', 'Users', 'work', 'tmp', 'var', 'opt'].join('|')})/|[A-Z]:\\\\(Users|work))`,
);
/** A host that packages come from; a lock file or a doc that names one ties the build to it. */
const PACKAGE_HOST = /\bregistry\.[a-z]+\.|"resolved"\s*:/i;
const UNFINISHED = new RegExp(`\\b(${['TO' + 'DO', 'FIX' + 'ME', 'X' + 'XX'].join('|')})\\b`);
const HALF_RUN = /\b(it|test|describe|suite)\.(only|skip|todo|fails)\b|\b(fit|xit|fdescribe|xdescribe)\(/;
/** Words, joined by hyphens or dots, in folders. Windows tells no large letters from small ones. */
const FILE_NAME = /^(\.?[a-z0-9]+([._-][a-z0-9]+)*\/)*\.?[a-z0-9]+([._-][a-zA-Z0-9]+)*$/;
const LOUD_NAMES = ['README.md', 'DEVELOPERS.md', 'LICENSE', 'LICENSES.md'];

const badNames = (files: readonly string[]) =>
  files.filter((path) => {
    const name = path.split('/').at(-1) ?? '';
    return !FILE_NAME.test(LOUD_NAMES.includes(name) ? path.toLowerCase() : path);
  });

describe('the tree', () => {
  it('names no path of one machine', () => {
    expect(linesWith(texts, MACHINE_PATH)).toEqual([]);
  });

  it('names no host that packages come from', () => {
    expect(linesWith(texts, PACKAGE_HOST)).toEqual([]);
  });

  it('ends every line of text with one line feed, and every text with one', () => {
    expect(texts.filter(({ text }) => text.includes('\r')).map(({ path }) => path)).toEqual([]);
    expect(texts.filter(({ text }) => text !== '' && !text.endsWith('\n')).map(({ path }) => path)).toEqual(
      [],
    );
  });

  it('has names that every system can hold, and none that differ only in large letters', () => {
    expect(badNames(paths)).toEqual([]);
    const small = paths.map((path) => path.toLowerCase());
    expect(small.filter((path, index) => small.indexOf(path) !== index)).toEqual([]);
    expect(paths.filter((path) => path.length > 120)).toEqual([]);
  });

  it('leaves nothing for later in code, and runs every test', () => {
    const code = texts.filter(({ path }) => CODE.test(path) && path !== 'tests/house/tidy.test.ts');
    expect(code.length).toBeGreaterThan(100);
    expect(linesWith(code, UNFINISHED)).toEqual([]);
    expect(
      linesWith(
        code.filter(({ path }) => path !== MAY_SKIP),
        HALF_RUN,
      ),
    ).toEqual([]);
  });

  it('keeps expected files small enough to be read', () => {
    const big = texts.filter(({ path, text }) => /\/expected\//.test(path) && text.length > 20 * 1024);
    expect(big.map(({ path }) => path)).toEqual([]);
  });

  it('is never published, runs on Node 20, and pins every package', () => {
    const manifest = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')) as {
      readonly private?: boolean;
      readonly engines?: { readonly node?: string };
      readonly dependencies: Readonly<Record<string, string>>;
      readonly devDependencies: Readonly<Record<string, string>>;
    };
    expect(manifest.private).toBe(true);
    expect(manifest.engines?.node).toBe('>=20');
    const loose = Object.entries({ ...manifest.dependencies, ...manifest.devDependencies }).filter(
      ([, version]) => !/^\d+\.\d+\.\d+$/.test(version),
    );
    expect(loose).toEqual([]);
  });
});

describe('each of these rules has been seen to fail', () => {
  const one = (text: string): TextFile[] => [{ path: 'src/x.ts', text }];
  it.each([
    ['a path of one machine', MACHINE_PATH, `const a = '/${'home'}/ann/lesson.md';`],
    ['one on Windows', MACHINE_PATH, `open C:\\${'Users'}\\ann`],
    ['a host of packages', PACKAGE_HOST, `"${'resolved'}": "https://packages.example.org/a.tgz"`],
    ['the host by its name', PACKAGE_HOST, `npm --${'registry'}=https://registry.${'example'}.org`],
    ['unfinished work', UNFINISHED, `// ${'TO'}DO: later`],
    ['a test that runs alone', HALF_RUN, `it.${'only'}('x', () => {});`],
    ['a test that is left out', HALF_RUN, `describe.${'skip'}('x', () => {});`],
  ])('%s', (_, pattern, line) => {
    expect(linesWith(one(`// fine\n${line}\n`), pattern)).toHaveLength(1);
  });

  it('a name with blanks, with large letters, or with a colon', () => {
    expect(badNames(['src/My File.ts', 'src/Thing.ts', 'src/a:b.ts', 'src/a/good-name.test.ts'])).toEqual([
      'src/My File.ts',
      'src/Thing.ts',
      'src/a:b.ts',
    ]);
  });
});
