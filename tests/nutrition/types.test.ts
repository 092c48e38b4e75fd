import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

it('refuses to compile sums over mixed units', { timeout: 120_000 }, () => {
  const compiler = fileURLToPath(new URL('../../node_modules/typescript/bin/tsc', import.meta.url));
  const file = fileURLToPath(new URL('mixed-units.ts', import.meta.url));
  const flags = [
    '--ignoreConfig',
    '--noEmit',
    '--strict',
    '--exactOptionalPropertyTypes',
    '--noUncheckedIndexedAccess',
  ];
  const settings = ['--target', 'es2023', '--module', 'nodenext', '--skipLibCheck', '--types', 'node'];
  let output = '';
  try {
    execFileSync(process.execPath, [compiler, ...flags, ...settings, file], { encoding: 'utf8' });
  } catch (error) {
    output = String((error as { stdout?: unknown }).stdout ?? error);
  }
  expect(output).toBe('');
});
