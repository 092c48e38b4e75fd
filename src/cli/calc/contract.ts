import type { Checked, Food, Result, Working } from '../../nutrition/index.js';

/** One input of a calculation: what may be written, and what is made of it. */
export interface Field<T = unknown> {
  readonly help: string;
  /** Units that fit, the usual one first; none for words and pure numbers. */
  readonly units: readonly string[];
  /** The words that may be written, when there are few. */
  readonly choices?: readonly string[];
  /** What the formula takes, in words, such as `19 to 78`. Outside it the formula itself refuses. */
  readonly range?: string;
  /** Whether `unknown` may be written. */
  readonly orUnknown?: true;
  /** What stands when it is left out; a field without it is needed. */
  readonly otherwise?: { readonly value: T; readonly words: string };
  readonly read: (text: string) => Result<T>;
}

export type Fields = Readonly<Record<string, Field>>;
export type Values<F extends Fields> = {
  readonly [K in keyof F]: F[K] extends Field<infer T> ? T : never;
};

/** A value with how it was got. */
export interface Shown {
  readonly name: string;
  /** Unrounded; a word where the formula gives one; `null` is not known. */
  readonly value: number | string | null | { readonly low: number; readonly high: number };
  readonly unit: string;
  readonly atLeast?: boolean;
  /** What the formula says of the value, in a few words. */
  readonly says?: string;
  readonly working?: Working;
}

/** What a calculation gives. */
export interface Answer {
  readonly results: readonly Shown[];
  /** What has to be minded with it, one sentence each. */
  readonly cautions?: readonly string[];
  /** Further sources, beside those of the calculation and of its workings. */
  readonly sources?: readonly string[];
  /** How well the row of the table that was used is checked. */
  readonly checked?: Checked;
}

/** The foods, for the few calculations that begin from one. */
export interface Shelf {
  readonly food: (name: string) => Result<Food>;
  readonly forms: (kind: string) => Result<readonly Food[]>;
}

/** How a calculation is written down. Adding one is adding this to a file and to the list. */
export interface CalculationSpec<F extends Fields> {
  /** The field's word for it, in kebab-case. */
  readonly name: string;
  /** Other names that people know it by. */
  readonly also?: readonly string[];
  readonly what: string;
  readonly inputs: F;
  /** The words of a call that is run in the tests and printed in the help. */
  readonly example: readonly string[];
  /** Whom or what the formula holds for. */
  readonly holdsFor: string;
  /** Ids of `assets/sources.yaml`, or a rule in words. */
  readonly sources: readonly string[];
  /** True for the energy and weight of people: then it is always said that it is for no person. */
  readonly ofPeople?: true;
  readonly compute: (values: Values<F>, shelf: Shelf) => Result<Answer>;
}

/** A calculation of the list. */
export interface Calculation extends Omit<CalculationSpec<Fields>, 'compute'> {
  readonly compute: (values: Readonly<Record<string, unknown>>, shelf: Shelf) => Result<Answer>;
}

/** Puts a calculation into the form of the list; its inputs give `compute` its types. */
export function calculation<const F extends Fields>(spec: CalculationSpec<F>): Calculation {
  return { ...spec, compute: (values, shelf) => spec.compute(values as Values<F>, shelf) };
}
