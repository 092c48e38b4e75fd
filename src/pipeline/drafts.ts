import type { Problem } from '../diagnostics/index.js';

/** What a Stop may spoil: one output at one level in one language. */
export interface Target {
  readonly output: string;
  readonly level: string;
  readonly language: string;
}

/** Codes of the Stops that withhold an output; it is then built as a proof that says so on every page. */
export function draftCodes(problems: readonly Problem[], target: Target): string[] {
  const hit = (list: readonly string[] | undefined, value: string) =>
    list === undefined || list.includes(value);
  const codes = problems
    .filter((p) => p.severity === 'stop')
    .filter(
      ({ spoils }) =>
        hit(spoils?.outputs, target.output) &&
        hit(spoils?.levels, target.level) &&
        hit(spoils?.languages, target.language),
    )
    .map((p) => p.code);
  return [...new Set(codes)].sort();
}
