import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { program } from '../lessons/program.js';
import { ROOT } from './source.js';

/** The directive that DEVELOPERS.md adds, step by step, followed to the letter in a copy of the program. */
const GUIDE = readFileSync(join(ROOT, 'DEVELOPERS.md'), 'utf8').replaceAll('\r\n', '\n');
/** Below `out/`, which is not kept, so that packages are found from there. */
const COPY = join(ROOT, 'out', '.worked-example');

/** Fenced files of the guide whose first line names their path, in a comment. */
function filesOf(text: string): ReadonlyMap<string, string> {
  const fences = text.matchAll(/^(`{3,})(?:ts|markdown)\n(?:\/\/ |<!-- )(\S+)(?: -->)?\n([\s\S]*?)^\1$/gm);
  return new Map([...fences].map(([, , path = '', body = '']) => [path, body]));
}

function put(path: string, text: string): void {
  mkdirSync(dirname(join(COPY, path)), { recursive: true });
  writeFileSync(join(COPY, path), text);
}

/** A file of the tree with the guide's line in it, unless somebody who follows the guide has put it there. */
function change(path: string, line: RegExp, add: (text: string) => string): void {
  const text = readFileSync(join(ROOT, path), 'utf8').replaceAll('\r\n', '\n');
  const changed = line.test(text) ? text : add(text);
  if (!line.test(changed)) throw new Error(`${path} has no place for the new line.`);
  put(path, changed);
}

const files = filesOf(GUIDE);
const yaml = /^```yaml\n( {2}holds:\n[\s\S]*?)^```$/m.exec(GUIDE)?.[1] ?? '';

describe('the worked example of DEVELOPERS.md', () => {
  beforeAll(() => {
    rmSync(COPY, { recursive: true, force: true });
    cpSync(join(ROOT, 'src'), join(COPY, 'src'), { recursive: true });
    cpSync(join(ROOT, 'tsconfig.json'), join(COPY, 'tsconfig.json'));
    for (const [path, text] of files) if (path.startsWith('src/')) put(path, text);
    change('src/directives/list.ts', /\.\/holds\//, (text) =>
      text
        .replace(/^/, "import { holds } from './holds/index.js';\n")
        .replace(/(DIRECTIVES: .*\[)/, '$1holds, '),
    );
    change('assets/cautions/directives.yaml', /^ {2}holds:$/m, (text) =>
      text.replace(/^directives:\n/m, `directives:\n${yaml}`),
    );
  });
  afterAll(() => rmSync(COPY, { recursive: true, force: true }));

  it('has a file for each step', () => {
    expect([...files.keys()].toSorted()).toEqual([
      'src/directives/holds/README.md',
      'src/directives/holds/compute.ts',
      'src/directives/holds/index.ts',
      'src/directives/holds/read.ts',
      'src/directives/holds/schema.ts',
      'src/directives/holds/terms.ts',
      'src/directives/holds/view.ts',
      'tests/directives/holds/cases.md',
      'tests/directives/holds/compute.test.ts',
    ]);
    expect(yaml).toMatch(/^ {2}holds:\n {4}always: /);
  });

  it('compiles, and builds a lesson', { timeout: 120_000 }, async () => {
    const compiler = join(ROOT, 'node_modules/typescript/bin/tsc');
    let complaints = '';
    try {
      execFileSync(process.execPath, [compiler, '-p', COPY], { encoding: 'utf8' });
    } catch (error) {
      complaints = String((error as { stdout?: unknown }).stdout ?? error);
    }
    expect(complaints).toBe('');

    const load = (path: string) =>
      import(/* @vite-ignore */ pathToFileURL(join(COPY, 'out/.program/pipeline', path)).href);
    const build = (await load('build.js')) as typeof import('../../src/pipeline/build.js');
    const space = (await load('workspace.js')) as typeof import('../../src/pipeline/workspace.js');
    const register = readFileSync(join(COPY, 'assets/cautions/directives.yaml'));
    const example = /^```markdown\n(::holds[^\n]*\n)```/m.exec(
      files.get('src/directives/holds/README.md') ?? '',
    )?.[1];
    const workspace = space.memoryWorkspace(
      { 'lessons/one/lesson.md': `${FRONT}${example}`, 'assets/cautions/directives.yaml': register },
      program,
    );
    const built = await build.buildLesson(build.openWorkshop(workspace), 'one', { on: '2026-11-25' });
    expect(built.problems.filter(({ severity }) => severity === 'stop')).toEqual([]);
    const numbers = built.files.find(({ path }) => path === 'numbers.json');
    const told = JSON.parse(new TextDecoder().decode(numbers?.bytes)) as {
      readonly numbers: readonly { readonly id: string; readonly text?: string }[];
    };
    expect(told.numbers.map(({ id }) => id)).toEqual(['can.amount']);
    expect(JSON.stringify(told)).toContain('400');
  });
});

const FRONT = `---
title: One number
minutes: 10
audience: adults
objectives: [read one number]
guidance: us-2025
site: lantern-street
topics: [cooking]
sources: [usda-sr28]
review: none
---

# One number

What a cup of beans holds.

## Beans

`;
