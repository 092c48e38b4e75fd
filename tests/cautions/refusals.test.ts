import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { register } from './register-files.js';

/** Refusals that stand under another name in the code: the rule that tells them, and the test that meets it. */
const UNDER_ANOTHER_NAME: Readonly<Record<string, { readonly code: string; readonly test: string }>> = {
  R15: { code: 'S18', test: 'tests/checks/words.test.ts' },
  R16: { code: 'cautions/withheld', test: 'tests/directives/hands-up/cases.md' },
  R18: { code: 'S14', test: 'tests/checks/safety.test.ts' },
  R19: { code: 'S13', test: 'tests/checks/safety.test.ts' },
  R21: { code: 'S08', test: 'tests/checks/safety.test.ts' },
  R25: { code: 'S17', test: 'tests/checks/cautions-kept.test.ts' },
  R26: { code: 'N18', test: 'tests/directives/rinse-drop/cases.md' },
  R30: { code: 'cautions/old-line', test: 'tests/cautions/block.test.ts' },
  R32: { code: 'E03', test: 'tests/checks/safety.test.ts' },
};

/** Refusals that nothing can meet before their directive is there. */
const WAITING: Readonly<Record<string, string>> = {
  R31: 'split-dose, which places supplements on a day, is not there yet',
};

function filesBelow(folder: string, wanted: RegExp): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => wanted.test(name))
    .map((name) => `${folder}/${name}`);
}

describe('every refusal of the register', () => {
  const sources = filesBelow('src', /\.ts$/).map((path) => readFileSync(path, 'utf8'));
  const tests = filesBelow('tests', /\.(?:ts|md)$/)
    .filter((path) => path !== 'tests/cautions/refusals.test.ts')
    .map((path) => readFileSync(path, 'utf8'));

  it.each(register.refusals.map(({ id }) => id))(
    '%s is met in the code and held by a test, or says what it waits for',
    (id) => {
      if (id in WAITING) return expect(sources.some((text) => text.includes(`'${id}'`))).toBe(false);
      const other = UNDER_ANOTHER_NAME[id];
      if (!other) {
        expect(sources.some((text) => text.includes(`'${id}'`))).toBe(true);
        return expect(tests.some((text) => text.includes(id))).toBe(true);
      }
      expect(sources.some((text) => text.includes(other.code))).toBe(true);
      return expect(readFileSync(other.test, 'utf8')).toContain(other.code);
    },
  );
});
