// Contract

/** `stop` withholds what it spoils (a proof is still built), `ask` needs a reviewer's reason, `hint` is advice. */
export type Severity = 'stop' | 'ask' | 'hint';

/** A spot in a source file. Lines and columns count from 1, columns in UTF-16 units, as editors show them. */
export interface Place {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly endLine?: number;
  readonly endColumn?: number;
}

/** What a problem spoils; a missing list means all of that kind. */
export interface Spoils {
  readonly levels?: readonly string[];
  readonly languages?: readonly string[];
  readonly outputs?: readonly string[];
}

/** One thing that is wrong, as data. `code` is stable and never reused, as `folder/what` or `N03`. */
export interface Problem {
  readonly code: string;
  readonly severity: Severity;
  /** What is wrong, in one plain sentence. */
  readonly message: string;
  /** What to do about it. */
  readonly hint?: string;
  readonly place?: Place;
  readonly actual?: string;
  readonly expected?: readonly string[];
  readonly spoils?: Spoils;
}

/** What `check --explain CODE` prints: the rule, why it is there and how to fix it. */
export interface CodeInfo {
  readonly severity: Severity;
  /** One sentence: the rule. */
  readonly rule: string;
  /** Why it matters and what to do, two to four sentences. */
  readonly about: string;
}

/** A folder's codes, severity declared once with the code. Keys are whole codes. */
export type CodeTable = Readonly<Record<string, CodeInfo>>;

/** Where phases put problems. */
export interface Report {
  readonly problems: readonly Problem[];
  add(problem: Problem): void;
}

/** A fresh report that drops exact repeats (same code, place and message). */
export function createReport(): Report {
  const problems: Problem[] = [];
  const seen = new Set<string>();
  return {
    problems,
    add(problem) {
      const key = JSON.stringify([problem.code, problem.place ?? null, problem.message]);
      if (seen.has(key)) return;
      seen.add(key);
      problems.push(problem);
    },
  };
}

/**
 * Binds a table of codes to a function that makes problems, so that a code's severity cannot
 * differ from place to place and an undeclared code does not compile.
 */
export function problemsOf<T extends CodeTable>(table: T) {
  return (
    code: keyof T & string,
    message: string,
    more: Omit<Problem, 'code' | 'severity' | 'message'> = {},
  ): Problem => {
    const info = table[code];
    if (info === undefined) throw new Error(`Code ${code} is not in its table.`);
    return { code, severity: info.severity, message, ...more };
  };
}

/** Problems in a stable order: by file, line, column, then code. Those without a place come first. */
export function sortProblems(problems: readonly Problem[]): Problem[] {
  const key = (p: Problem) => p.place;
  return [...problems].sort((a, b) => {
    const x = key(a);
    const y = key(b);
    if (!x || !y) return x ? 1 : y ? -1 : compareText(a.code, b.code);
    return (
      compareText(x.file, y.file) || x.line - y.line || x.column - y.column || compareText(a.code, b.code)
    );
  });
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
