// Contract

/** One input of a formula: a named number with its unit and where it comes from. */
export interface NumberInput {
  readonly name: string;
  readonly value: number | null;
  readonly unit: string;
  /** Id of a source, or `lesson` for what the author wrote, or `house` for our own rule. */
  readonly source: string;
  readonly note?: string;
}

/**
 * One number that something shows. `value` is not rounded; `text` is what pages print.
 * `formula` is plain arithmetic over the inputs' names; a range has `low = …; high = …`.
 */
export interface ShownNumber {
  /** `<directive id>.<name>` or `<directive id>.<row>.<name>`, rows in kebab-case. */
  readonly id: string;
  readonly value: number | null;
  readonly low?: number;
  readonly high?: number;
  readonly atLeast?: boolean;
  /** Printed with so many decimals at most instead of two figures: for what is counted, clocked or paid, and for ratios. */
  readonly decimals?: number;
  /** Rounded this way only, when it is a limit that rounding must not loosen: heat up, cold down. */
  readonly rounds?: 'up' | 'down';
  readonly text: string;
  readonly unit: string;
  readonly formula: string;
  readonly inputs: readonly NumberInput[];
  /** Ids in assets/sources.yaml. */
  readonly sources: readonly string[];
  /** What the number is, in words: `sodium in 1/2 cup of pinto beans, canned, drained`. */
  readonly what: string;
  /** The food-table row behind it, if any. */
  readonly food?: {
    readonly id: string;
    readonly source: string;
    readonly number: string;
    readonly description: string;
    readonly date: string;
  };
  readonly only?: { readonly languages?: readonly string[]; readonly levels?: readonly string[] };
}

/** Every number of a lesson, found by id. */
export interface Numbers {
  readonly all: readonly ShownNumber[];
  get(id: string): ShownNumber | undefined;
}

export function numbersOf(all: readonly ShownNumber[]): Numbers {
  const byId = new Map(all.map((n) => [n.id, n]));
  return { all, get: (id) => byId.get(id) };
}

/** A row's words as they stand in an id: lower case, words joined by hyphens, nothing else. */
export function kebab(words: string): string {
  return words
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '');
}
