import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { DIRECTIVES } from '../../src/directives/list.js';
import { casesIn, runCases, viewsOf } from './cases.js';
import { readSnippet } from './desk.js';

/** Every folder of `src/directives/` brings its README and its cases; nothing has to be listed here. */
const FOLDERS = readdirSync('src/directives', { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map((entry) => entry.name);

for (const name of FOLDERS) {
  runCases(`src/directives/${name}/README.md`);
  runCases(`tests/directives/${name}/cases.md`);
}

describe('the first example of a README, on every page and at every level', () => {
  it.each(DIRECTIVES.map(({ schema }) => schema.name))('%s', async (name) => {
    const [first] = casesIn(`src/directives/${name}/README.md`);
    const text = first ? viewsOf(readSnippet(first.snippet)) : '';
    // A caution prints nothing where it stands.
    if (name === 'caution') expect(text.replace(/^==.*$/gm, '').trim()).toBe('');
    else await expect(text).toMatchFileSnapshot(`${name}/expected/views.txt`);
  });
});
