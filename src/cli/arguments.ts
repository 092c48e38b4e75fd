import { parseArgs } from 'node:util';
import { nearest } from '../diagnostics/index.js';

/** A mistake in how a command was called: printed without a trace, exit code 2. */
export class UsageError extends Error {}

export interface Option {
  readonly type: 'string' | 'boolean';
  readonly multiple?: boolean;
  /** What stands after the name in the help: `DIR`, `DAY`. */
  readonly value?: string;
  readonly help: string;
}

export interface Call {
  readonly words: readonly string[];
  readonly flag: (name: string) => boolean;
  readonly text: (name: string) => string | undefined;
}

export const SHARED: Readonly<Record<string, Option>> = {
  workspace: {
    type: 'string',
    value: 'DIR',
    help: 'the folder that holds lessons/ (found from here upward when left out)',
  },
  on: {
    type: 'string',
    value: 'DAY',
    help: 'the day that dates are checked against, as 2027-02-14 (today when left out)',
  },
  json: { type: 'boolean', help: 'print for machines' },
  help: { type: 'boolean', help: 'print this' },
};

/** Reads the words after the command's name; unknown options are named with the nearest right one. */
export function readCall(args: readonly string[], own: Readonly<Record<string, Option>>): Call {
  const options = { ...own, ...SHARED };
  const config = Object.fromEntries(Object.entries(options).map(([name, o]) => [name, { type: o.type }]));
  const { values, positionals, tokens } = parseArgs({
    args: [...args],
    options: config,
    allowPositionals: true,
    strict: false,
    tokens: true,
  });
  for (const token of tokens ?? []) {
    if (token.kind !== 'option') continue;
    const known = options[token.name];
    if (!known) {
      const near = nearest(token.name, Object.keys(options))[0];
      throw new UsageError(`There is no option ${token.rawName}.${near ? ` Did you mean --${near}?` : ''}`);
    }
    if (known.type === 'string' && (token.value === undefined || token.value === ''))
      throw new UsageError(`--${token.name} needs a value: --${token.name} ${known.value ?? 'TEXT'}.`);
    if (known.type === 'boolean' && token.value !== undefined)
      throw new UsageError(`--${token.name} takes no value.`);
  }
  return {
    words: positionals,
    flag: (name) => values[name] === true,
    text: (name) => (typeof values[name] === 'string' ? values[name] : undefined),
  };
}

/** The day to check against: `--on`, or today by the machine's own clock. */
export function dayOf(call: Call): string {
  const on = call.text('on');
  if (on === undefined) {
    const now = new Date();
    const two = (n: number) => String(n).padStart(2, '0');
    return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  }
  if (!/^\d{4}-\d{2}-\d{2}$/.test(on) || new Date(`${on}T00:00:00Z`).toJSON()?.slice(0, 10) !== on)
    throw new UsageError(`--on needs a day such as 2027-02-14, and got "${on}".`);
  return on;
}

/** The option lines of a help text, aligned. */
export function optionLines(own: Readonly<Record<string, Option>>): string {
  const rows = Object.entries({ ...own, ...SHARED }).map(
    ([name, o]) => [`--${name}${o.value ? ` ${o.value}` : ''}`, o.help] as const,
  );
  const width = Math.max(...rows.map(([name]) => name.length));
  return rows.map(([name, help]) => `  ${name.padEnd(width)}  ${help}`).join('\n');
}
