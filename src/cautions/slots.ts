/** A slot in braces: `{poison-line}`. */
export interface Slot {
  readonly name: string;
  readonly at: number;
  readonly end: number;
}

export function slotsOf(wording: string): Slot[] {
  return [...wording.matchAll(/\{([a-z]+(?:-[a-z]+)*)\}/g)].map((m) => ({
    name: m[1] ?? '',
    at: m.index,
    end: m.index + m[0].length,
  }));
}
