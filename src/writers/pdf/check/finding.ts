/** A rule that a finished file breaks. */
export interface Finding {
  /** Clause of ISO 14289-1 (PDF/UA-1) that the rule comes from. */
  readonly rule: string;
  /** What is wrong, in one plain sentence. */
  readonly message: string;
  /** Number of the page, from 1. */
  readonly page?: number;
}

/** Collects findings; the same finding on the same page counts once. */
export interface Findings {
  readonly all: readonly Finding[];
  add(rule: string, message: string, page?: number): void;
}

export function createFindings(): Findings {
  const all: Finding[] = [];
  const seen = new Set<string>();
  return {
    all,
    add(rule, message, page) {
      const key = `${rule} ${page ?? ''} ${message}`;
      if (seen.has(key)) return;
      seen.add(key);
      all.push({ rule, message, ...(page === undefined ? {} : { page }) });
    },
  };
}
