import type { Quantity, Unit } from './quantity.js';

/** One named number that goes into a formula. */
export interface Input {
  /** Letters a to z, digits and `_`, starting with a letter: the name that the formula uses. */
  readonly name: string;
  /** `null` is not known; the formula then has no value. */
  readonly value: number | null;
  readonly unit: string;
  /**
   * Id of a source, with the record's number where it has one; `lesson` for what the author wrote, `house` for
   * a figure of our own; for a unit, the rule that defines it.
   */
  readonly source: string;
  readonly note?: string;
}

/**
 * How a number was worked out, so that anybody can work it out again.
 * `formula` uses + - * / ( ), numbers, the names of the inputs, `min(…)` and `max(…)`. A range has two
 * parts, `low = …; high = …`. A sum with unknown parts stands over the known parts only; the quantity
 * then says `atLeast`.
 */
export interface Working {
  readonly formula: string;
  readonly inputs: readonly Input[];
}

/** A quantity together with how it was got. `estimated` is true when any weight or factor in it was estimated. */
export interface Worked<U extends Unit = Unit> {
  readonly quantity: Quantity<U>;
  readonly working: Working;
  readonly estimated: boolean;
}

/** The source of what the author wrote in the lesson. */
export const FROM_LESSON = 'lesson';

const NAME = /^[a-z][a-z0-9_]*$/;
const TAKEN: ReadonlySet<string> = new Set(['min', 'max', 'low', 'high']);

/** Makes an input. A name outside the allowed letters is a bug of ours and throws. */
export function input<V extends number | null>(
  name: string,
  value: V,
  unit: string,
  source: string,
  note?: string,
): Input & { readonly value: V } {
  if (!NAME.test(name) || TAKEN.has(name)) throw new Error(`"${name}" cannot name an input.`);
  return { name, value, unit, source, ...(note === undefined ? {} : { note }) };
}

/** An item with the name it has in a formula. */
export interface Named<T> {
  readonly name: string;
  readonly item: T;
}

/**
 * Gives items different input names made from words, in order: `Pinto beans, dry` becomes
 * `pinto_beans_dry`. Words without a Latin letter or digit become `part`; a repeat gets `_2`, `_3` …
 */
export function nameInputs<T>(items: readonly T[], words: (item: T) => string): Named<T>[] {
  const used = new Set<string>(TAKEN);
  return items.map((item) => {
    const plain = words(item)
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '_')
      .replace(/^_+|_+$/g, '');
    const name = freeName(plain === '' ? 'part' : /^[a-z]/.test(plain) ? plain : `n_${plain}`, used);
    used.add(name);
    return { name, item };
  });
}

/**
 * Puts one working in the place of an input of another, so that the whole story stands in one formula.
 * Inputs that are the same in both are kept once; an inner name that means something else outside is renamed.
 * Throws when `outer` has no input of that name, which is a bug of ours.
 */
export function substitute(outer: Working, name: string, inner: Working): Working {
  if (!outer.inputs.some((i) => i.name === name)) throw new Error(`The formula has no input "${name}".`);
  const kept = outer.inputs.filter((i) => i.name !== name);
  const used = new Set([...TAKEN, ...kept.map((i) => i.name), ...inner.inputs.map((i) => i.name)]);
  const renamed = new Map<string, string>();
  const added: Input[] = [];
  for (const one of inner.inputs) {
    const other = kept.find((i) => i.name === one.name);
    if (other === undefined) {
      added.push(one);
    } else if (!sameInput(other, one)) {
      const fresh = freeName(one.name, used);
      used.add(fresh);
      renamed.set(one.name, fresh);
      added.push({ ...one, name: fresh });
    }
  }
  const innerFormula = replaceNames(inner.formula, renamed);
  const put = NAME.test(innerFormula) ? innerFormula : `(${innerFormula})`;
  return {
    formula: replaceNames(outer.formula, new Map([[name, put]])),
    inputs: outer.inputs.flatMap((i) => (i.name === name ? added : [i])),
  };
}

/** One formula over several workings; `formula` is written with their names, which differ from one another. */
export function combine(formula: string, parts: readonly Named<Working>[]): Working {
  const outer: Working = { formula, inputs: parts.map(({ name }) => input(name, null, '', '')) };
  return parts.reduce((so, { name, item }) => substitute(so, name, item), outer);
}

/** The working of a number that is taken as it stands. */
export function asGiven(given: Input): Working {
  return { formula: given.name, inputs: [given] };
}

function sameInput(a: Input, b: Input): boolean {
  return a.value === b.value && a.unit === b.unit && a.source === b.source && a.note === b.note;
}

function freeName(name: string, used: ReadonlySet<string>): string {
  if (!used.has(name)) return name;
  let number = 2;
  while (used.has(`${name}_${number}`)) number += 1;
  return `${name}_${number}`;
}

function replaceNames(formula: string, by: ReadonlyMap<string, string>): string {
  return formula.replace(/[a-z][a-z0-9_]*/g, (name) => by.get(name) ?? name);
}
