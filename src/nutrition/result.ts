/** Why something cannot be done, in words for the author of a lesson; never an exception. */
export interface Refusal {
  readonly ok: false;
  /** What is wrong, in one plain sentence. */
  readonly reason: string;
  /** What to do about it. */
  readonly hint?: string;
  /** Right names close to what was written, or the choices there are; best first. */
  readonly near?: readonly string[];
}

/** A value, or the reason why there is none. */
export type Result<T> = { readonly ok: true; readonly value: T } | Refusal;

/** Wraps a value that could be worked out. */
export function ok<T>(value: T): { readonly ok: true; readonly value: T } {
  return { ok: true, value };
}

/** Makes a refusal; `near` is left out when it is empty. */
export function refuse(reason: string, hint?: string, near: readonly string[] = []): Refusal {
  return {
    ok: false,
    reason,
    ...(hint === undefined ? {} : { hint }),
    ...(near.length === 0 ? {} : { near }),
  };
}

/** A list in a sentence: `a`, `a and b`, `a, b and c`. For messages only; pages take their lists elsewhere. */
export function inWords(items: readonly string[]): string {
  const last = items.at(-1) ?? '';
  return items.length < 2 ? last : `${items.slice(0, -1).join(', ')} and ${last}`;
}
