/**
 * The closed language of triggers:
 *
 *     condition = group { " or " group }
 *     group     = test { " and " test }
 *     test      = name [ "(" value { "|" value } ")" ] [ " in " directive { "|" directive } ]
 *
 * A test holds when any of its values does. `set` takes `name=value|value`.
 */
export const TESTS = {
  tag: 'the lesson names one of these topics',
  guidance: 'the lesson follows one of these editions',
  audience: 'one of these is in the audience, said or assumed',
  stated: 'one of these is in the audience because the lesson says so',
  directive: 'one of these directives is used',
  food: 'a food carries one of these flags',
  new: 'the replacement side of a swap carries one of these flags',
  contains: 'a food contains one of these, or nobody knows whether it does',
  nutrient: 'one of these is compared, ranked or set as a goal',
  set: 'a directive has this setting with one of these values',
  word: 'one of the words that the trigger lists stands in a text',
  pulled: 'one of these cautions is pulled',
  severity: 'a caution of this severity is pulled',
  heading: 'a caution with this heading is pulled',
  medicine: 'a pulled caution names a medicine',
  says: 'a pulled caution says these words',
  output: 'the page is one of these',
} as const;
export type TestName = keyof typeof TESTS;

export interface Test {
  readonly name: TestName;
  /** For `set`, the name of the setting. */
  readonly key?: string;
  readonly values: readonly string[];
  /** Only in these directives. */
  readonly within: readonly string[];
}

/** Any of the groups holds when all of its tests do. */
export type Condition = readonly (readonly Test[])[];

/** Tests that need no value. */
const BARE: ReadonlySet<string> = new Set(['word', 'medicine']);
/** Tests that can be held to one directive. */
const NARROW: ReadonlySet<string> = new Set(['food', 'new', 'contains', 'nutrient', 'set', 'word']);

/** Reads a condition; a text that is none gives the reason instead. */
export function parseCondition(text: string): Condition | { readonly wrong: string } {
  const groups: Test[][] = [];
  for (const group of outside(text, ' or ')) {
    const tests: Test[] = [];
    for (const one of outside(group, ' and ')) {
      const test = parseTest(one.trim());
      if ('wrong' in test) return test;
      tests.push(test);
    }
    groups.push(tests);
  }
  return groups;
}

function parseTest(text: string): Test | { readonly wrong: string } {
  const m = /^([a-z]+)(?:\(([^()]*)\))?(?: in ([a-z|-]+))?$/.exec(text);
  const name = m?.[1];
  if (!m || name === undefined) return { wrong: `"${text}" is no test` };
  if (!isTest(name)) return { wrong: `"${name}" is no test; tests are ${Object.keys(TESTS).join(', ')}` };
  const within = m[3]?.split('|') ?? [];
  if (within.length > 0 && !NARROW.has(name)) return { wrong: `"${name}" cannot be held to a directive` };
  if (m[2] === undefined)
    return BARE.has(name) ? { name, values: [], within } : { wrong: `"${name}" needs a value in brackets` };
  if (BARE.has(name)) return { wrong: `"${name}" takes no value` };
  const [key, list] = name === 'set' ? cut(m[2]) : [undefined, m[2]];
  if (list === undefined) return { wrong: 'set needs name=value' };
  const values = list.split('|').map((v) => v.trim());
  if (values.some((v) => v === '')) return { wrong: `"${text}" has an empty value` };
  return { name, ...(key === undefined ? {} : { key }), values, within };
}

function cut(text: string): readonly [string, string | undefined] {
  const at = text.indexOf('=');
  return at < 0 ? [text, undefined] : [text.slice(0, at).trim(), text.slice(at + 1)];
}

function isTest(name: string): name is TestName {
  return Object.hasOwn(TESTS, name);
}

/** Splits where the word stands outside brackets, since a value may hold " or " and " and ". */
function outside(text: string, word: string): string[] {
  const parts: string[] = [];
  let depth = 0;
  let from = 0;
  for (let i = 0; i < text.length; i++) {
    if (text[i] === '(') depth++;
    else if (text[i] === ')') depth--;
    else if (depth === 0 && text.startsWith(word, i)) {
      parts.push(text.slice(from, i));
      i += word.length - 1;
      from = i + 1;
    }
  }
  parts.push(text.slice(from));
  return parts;
}
