/** What a value of a formula is: a school grade, ease (high is easy) or an index (high is hard). */
export type Scale = 'grade' | 'ease' | 'index';

/** How the formula is known: from the publication, from copies of it that agree, or from memory. */
export type Checked = 'publication' | 'copies' | 'memory';

/** Something that limits what a value is worth. */
export interface Warning {
  readonly code: 'short-passage' | 'few-sentences' | 'unreliable';
  readonly says: string;
}

/** One formula over one passage. */
export interface Score {
  readonly id: string;
  readonly name: string;
  readonly scale: Scale;
  /** Unrounded and not clamped: ease may pass 100, a grade may be negative. `null` when it cannot be worked out. */
  readonly value: number | null;
  /** Why there is no value. */
  readonly why?: string;
  /** The words that the source gives for the value. */
  readonly band?: string;
  /** With + - * / ( ), `sqrt(…)`, numbers and the names of the inputs. */
  readonly formula: string;
  readonly inputs: readonly { readonly name: string; readonly value: number | null }[];
  readonly source: string;
  readonly checked: Checked;
  /** What the formula was made for. */
  readonly madeFor: string;
  readonly warnings: readonly Warning[];
}

type Given<I extends string> = { readonly [K in I]: number };
export type Maybe<I extends string> = { readonly [K in I]: number | null };

interface Definition<I extends string>
  extends Pick<Score, 'id' | 'name' | 'scale' | 'source' | 'checked' | 'madeFor'> {
  readonly inputs: readonly I[];
  readonly formula: string | ((given: Given<I>) => string);
  readonly work: (given: Given<I>) => number;
  readonly band?: (value: number) => string;
  readonly warn?: (given: Given<I>) => readonly Warning[];
}

/** A formula that gives a score from counts. It has no value, and says why, where counts are missing or zero. */
export interface Formula<I extends string> {
  readonly id: string;
  readonly score: (counts: Maybe<I>) => Score;
}

const snake = (name: string) => name.replace(/[A-Z]/gu, (letter) => `_${letter.toLowerCase()}`);

export function defineFormula<I extends string>(definition: Definition<I>): Formula<I> {
  const { inputs: names, formula, work, band, warn, ...about } = definition;
  const score = (counts: Maybe<I>): Score => {
    const inputs = names.map((name) => ({ name: snake(name), value: counts[name] }));
    const given = Object.fromEntries(names.map((name) => [name, counts[name] ?? Number.NaN])) as Given<I>;
    const text = typeof formula === 'string' ? formula : formula(given);
    const base = { ...about, formula: text, inputs };
    const missing = names.filter((name) => counts[name] === null);
    const worked = work(given);
    if (missing.length > 0 || !Number.isFinite(worked)) {
      const why =
        missing.length > 0
          ? `Not counted here: ${missing.map(snake).join(', ').replaceAll('_', ' ')}.`
          : 'There is nothing to divide by: no words or no sentences.';
      return { ...base, value: null, why, warnings: [] };
    }
    return {
      ...base,
      value: worked,
      ...(band ? { band: band(worked) } : {}),
      warnings: warn?.(given) ?? [],
    };
  };
  return { id: definition.id, score };
}

/** Words for a value by the lowest bound that it passes; bounds from high to low, the last without one. */
export function bandOf(value: number, bands: readonly (readonly [above: number, words: string])[]): string {
  return (bands.find(([above]) => value > above) ?? bands.at(-1))?.[1] ?? '';
}
