import type { Pulled, Reason } from '../cautions/index.js';

/** One caution with what pulled it, for machines. */
export interface Pull {
  readonly caution: string;
  readonly severity: string;
  /** Editor's rules that it serves. */
  readonly checks: readonly string[];
  readonly reasons: readonly Reason[];
}

export function pullOf({ caution, reasons }: Pulled): Pull {
  return { caution: caution.id, severity: caution.severity, checks: caution.checks, reasons };
}

/** For people: the caution, then a line for each topic, row or sentence that pulled it, with its place. */
export function pullLines(pulled: readonly Pulled[]): string[] {
  return pulled.flatMap(({ caution, reasons }) => [
    `  ${caution.id} (${[caution.severity, ...caution.checks].join(', ')})`,
    ...reasons.map((reason) => `    ${where(reason)}${reason.says}${sentenceOf(reason)}`),
  ]);
}

function where({ place }: Reason): string {
  return place ? `${place.file}:${place.line}:${place.column}  ` : '';
}

function sentenceOf({ sentence }: Reason): string {
  return sentence === undefined ? '' : `: ${sentence}`;
}
