import { ok, type Result, refuse } from '../../nutrition/index.js';
import { nearWords } from '../../nutrition/spelling.js';
import type { Field } from './contract.js';

/** One of a few words. Hyphens serve for spaces; the first words of a longer choice are enough. */
export function choice<const O extends string>(options: readonly O[], help: string): Field<O> {
  return { help, units: [], choices: options, read: (text) => chosen(text, options) };
}

/** Any of a few words, with `;` between them; none when it is left out. */
export function several<const O extends string>(options: readonly O[], help: string): Field<readonly O[]> {
  return {
    help: `${help}; several with ; between them`,
    units: [],
    choices: options,
    otherwise: { value: [], words: 'none' },
    read: (text) => each(text, (one) => chosen(one, options)),
  };
}

/** A row of values, with `;` between them. */
export function listOf<T>(field: Field<T>): Field<readonly T[]> {
  const { otherwise: _, ...rest } = field;
  return {
    ...rest,
    help: `${field.help}; several with ; between them`,
    read: (text) => each(text, field.read),
  };
}

function each<T>(text: string, read: (one: string) => Result<T>): Result<readonly T[]> {
  const values: T[] = [];
  for (const one of text.split(';')) {
    if (one.trim() === '') continue;
    const found = read(one.trim());
    if (!found.ok) return found;
    values.push(found.value);
  }
  return ok(values);
}

function chosen<O extends string>(text: string, options: readonly O[]): Result<O> {
  const plain = (word: string) =>
    word
      .trim()
      .toLowerCase()
      .replace(/[-_\s]+/g, ' ');
  const wanted = plain(text);
  const found = options.find((one) => plain(one) === wanted);
  if (found !== undefined) return ok(found);
  const begun = options.filter(
    (one) => plain(one).startsWith(wanted) && /^(?=\W)/.test(plain(one).slice(wanted.length)),
  );
  const [only, ...more] = wanted === '' ? [] : begun;
  if (only !== undefined && more.length === 0) return ok(only);
  const near = nearWords(wanted, options, 3);
  return refuse(
    `"${text}" is none of the choices.`,
    near.length > 0
      ? `Did you mean ${near.join(' or ')}?`
      : `Write one of: ${options.slice(0, 40).join('; ')}.`,
  );
}
