import { expect, it } from 'vitest';
import { sourceFiles } from '../../house/source.js';
import { NOT_ASKED_FOR } from './not-asked-for.js';

const code = (text: string) => text.replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '');
const called = sourceFiles('src/cli/calc')
  .map(({ text }) => code(text))
  .join('\n');
const isCalled = (name: string) => new RegExp(`\\b${name}\\b`).test(called);

/** Functions that a file of formulas gives to others. */
const formulas = sourceFiles('src/nutrition')
  .filter(({ text }) => /\b(?:Working|Worked|Reckoned|EnergyEstimate)\b/.test(code(text)))
  .flatMap(({ path, text }) =>
    [...code(text).matchAll(/^export (?:async )?function (\w+)/gm)].map(([, name = '']) => ({ name, path })),
  );
const listed = new Map(
  NOT_ASKED_FOR.flatMap(({ names, because }) => names.map((name) => [name, because] as const)),
);

it('reaches every formula of the core from the command line, or says why not', () => {
  expect(formulas.length).toBeGreaterThan(100);
  const missing = formulas.filter(({ name }) => !isCalled(name) && !listed.has(name));
  expect(
    missing.map(({ name, path }) => `${path}: ${name}`),
    'Add a calculation in src/cli/calc, or a reason in tests/cli/calc/not-asked-for.ts.',
  ).toEqual([]);
});

it('gives no reason for what is reached', () => {
  expect([...listed.keys()].filter(isCalled)).toEqual([]);
});
