import type { Problem, Severity } from './problem.js';

export interface FormatOptions {
  /** The text of a file, so that the line can be shown; `undefined` when it is not known. */
  readonly source?: (file: string) => string | undefined;
  /** ANSI colors; only for a terminal. */
  readonly color?: boolean;
}

const WORD: Readonly<Record<Severity, string>> = { stop: 'Stop', ask: 'Ask', hint: 'Hint' };
const INK: Readonly<Record<Severity, string>> = {
  stop: '\u001b[1;31m',
  ask: '\u001b[1;33m',
  hint: '\u001b[1;36m',
};

/**
 * A problem as people read it: place, kind and code, then the sentence, the source line with a mark
 * under the spot, and what to do. Control characters of the source are shown as spaces.
 */
export function formatProblem(problem: Problem, options: FormatOptions = {}): string {
  const paint = (text: string, ink: string) => (options.color ? `${ink}${text}\u001b[0m` : text);
  const { place } = problem;
  const where = place ? `${place.file}:${place.line}:${place.column}  ` : '';
  const lines = [`${where}${paint(`${WORD[problem.severity]} ${problem.code}`, INK[problem.severity])}`];
  lines.push(`  ${problem.message}`);
  const text = place && options.source?.(place.file);
  if (place && text !== undefined) {
    const line = text.split(/\r\n|\n|\r/)[place.line - 1];
    if (line !== undefined && line.trim() !== '')
      lines.push(...excerpt(line, place.column, place.endLine === place.line ? place.endColumn : undefined));
  }
  if (problem.hint) lines.push(`  ${paint('To do:', '\u001b[1m')} ${problem.hint}`);
  return lines.join('\n');
}

function excerpt(line: string, column: number, end: number | undefined): string[] {
  const from = Math.max(0, column - 61);
  // biome-ignore lint/suspicious/noControlCharactersInRegex: a lesson may hold control characters; a terminal must not see them.
  const clean = line.slice(from, from + 100).replace(/[\u0000-\u001f\u007f-\u009f]/g, ' ');
  const mark = Math.max(1, Math.min((end ?? column + 1) - column, 100 - (column - 1 - from)));
  return [`    ${clean}`, `    ${' '.repeat(column - 1 - from)}${'^'.repeat(mark)}`];
}

/** One closing line: how many of each kind, or that there are none. */
export function formatSummary(problems: readonly Problem[]): string {
  const count = (s: Severity) => problems.filter((p) => p.severity === s).length;
  const parts = (['stop', 'ask', 'hint'] as const)
    .map((s) => [count(s), s] as const)
    .filter(([n]) => n > 0)
    .map(([n, s]) => `${n} ${s}${n === 1 ? '' : 's'}`);
  return parts.length ? parts.join(', ') : 'No problems.';
}
