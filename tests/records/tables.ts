import { existsSync, readFileSync } from 'node:fs';
import type { RecordFiles } from '../../src/records/index.js';

/** The project's own tables. */
export const ASSETS: RecordFiles = {
  read: (path) => (existsSync(`assets/${path}`) ? readFileSync(`assets/${path}`, 'utf8') : undefined),
};

/** A table as rows by heading, read without the program's own reader. */
export function plainRows(path: string): Record<string, string>[] {
  const lines = readFileSync(`assets/${path}`, 'utf8')
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'));
  const headings = (lines[0] ?? '').split('\t');
  return lines
    .slice(1)
    .map((line) =>
      Object.fromEntries(line.split('\t').map((cell, i) => [headings[i] ?? `extra ${i}`, cell])),
    );
}

/** The parts of a cell. */
export function parts(cell: string | undefined): string[] {
  return (cell ?? '')
    .split(';')
    .map((part) => part.trim())
    .filter((part) => part !== '');
}
