import { formatProblem, formatSummary, type Problem } from '../diagnostics/index.js';
import { readText, type Workspace } from '../pipeline/workspace.js';

/** Prints problems for people, each with its source line, and a closing count. */
export function printProblems(
  problems: readonly Problem[],
  workspace: Workspace,
  to: NodeJS.WriteStream,
): void {
  const color = usesColor(to);
  const source = (file: string) => readText(workspace.read, file);
  for (const problem of problems) to.write(`${formatProblem(problem, { source, color })}\n\n`);
  to.write(`${formatSummary(problems)}\n`);
}

export function usesColor(stream: NodeJS.WriteStream): boolean {
  return stream.isTTY === true && process.env.NO_COLOR === undefined;
}

export function hasStop(problems: readonly Problem[]): boolean {
  return problems.some((problem) => problem.severity === 'stop');
}

export function printJson(value: unknown): void {
  process.stdout.write(`${JSON.stringify(value, null, 2)}\n`);
}
