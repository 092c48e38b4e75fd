import { nearest } from '../../diagnostics/nearest.js';
import { ok, type Refusal, type Result, refuse } from '../../nutrition/index.js';
import { nearWords } from '../../nutrition/spelling.js';
import type { Calculation, Field } from './contract.js';
import { CALCULATIONS } from './list.js';

/** The calculation of a name or another name of it; a refusal offers the nearest. */
export function calculationNamed(name: string): Result<Calculation> {
  const wanted = name.toLowerCase();
  const found =
    CALCULATIONS.find((one) => one.name === wanted) ?? CALCULATIONS.find((one) => one.also?.includes(wanted));
  if (found) return ok(found);
  const names = CALCULATIONS.flatMap((one) => [one.name, ...(one.also ?? [])]);
  const near = [...nearWords(wanted, names), ...nearest(wanted, names, 3)];
  const byWords = CALCULATIONS.filter((one) =>
    wanted.split(/[^a-z0-9]+/).some((word) => word.length > 2 && one.what.toLowerCase().includes(word)),
  ).map((one) => one.name);
  const offered = [...new Set([...near, ...byWords])].slice(0, 3);
  return refuse(
    `There is no calculation "${name}".`,
    'platework calc --list shows them all.',
    offered.length > 0 ? offered : undefined,
  );
}

/** What was written for each input, by name, and what it means or why it means nothing. */
export interface Given {
  readonly written: Readonly<Record<string, string>>;
  readonly values: Result<Readonly<Record<string, unknown>>>;
}

/**
 * Reads `name=value` words for the inputs of a calculation. Everything that is wrong is told at once: words
 * without a name, names that it does not have, values that cannot be read, and inputs that are missing.
 */
export function readGiven(calculation: Calculation, words: readonly string[]): Given {
  const faults: string[] = [];
  const written = pairsOf(calculation, words, faults);
  const values: Record<string, unknown> = {};
  for (const [name, field] of Object.entries(calculation.inputs)) {
    const text = written[name];
    if (text === undefined) {
      if (field.otherwise !== undefined) values[name] = field.otherwise.value;
      else
        faults.push(`${name} is missing: ${field.help}. Write ${name}=${sampleOf(calculation, name, field)}`);
      continue;
    }
    const read = field.read(text);
    if (read.ok) values[name] = read.value;
    else
      faults.push(
        `${name}="${clipped(text)}": ${read.reason}${read.hint === undefined ? '' : ` ${read.hint}`}`,
      );
  }
  return { written, values: faults.length > 0 ? faulty(calculation, faults) : ok(values) };
}

function faulty({ name }: Calculation, faults: readonly string[]): Refusal {
  return refuse(faults.join('\n'), `platework calc ${name} --help shows its inputs.`);
}

function pairsOf(calculation: Calculation, words: readonly string[], faults: string[]) {
  const names = Object.keys(calculation.inputs);
  const written: Record<string, string> = {};
  for (const word of words) {
    const at = word.indexOf('=');
    const name = at < 1 ? '' : word.slice(0, at).trim().toLowerCase();
    if (name === '') {
      faults.push(`"${word}" has no name. Write name=value, with quotes around spaces: name="2 cups".`);
    } else if (!names.includes(name)) {
      const near = nearest(name, names, 3);
      faults.push(
        `${calculation.name} has no input "${name}".${near.length > 0 ? ` Did you mean ${near.join(' or ')}?` : ` It has ${names.join(', ')}.`}`,
      );
    } else if (Object.hasOwn(written, name)) {
      faults.push(`${name} stands twice. Write it once.`);
    } else {
      written[name] = word.slice(at + 1).trim();
    }
  }
  return written;
}

/** How an input may be written: as in the example, else one of its choices or units. */
function sampleOf({ example }: Calculation, name: string, { choices, units }: Field): string {
  const own = example.find((word) => word.startsWith(`${name}=`))?.slice(name.length + 1);
  const sample = own ?? choices?.[0] ?? `2${units[0] ?? ''}`;
  return quoted(sample);
}

/** Enough of what was written to know it again. */
function clipped(text: string): string {
  return text.length > 60 ? `${text.slice(0, 60)}…` : text;
}

/** A value as a shell takes it. */
export function quoted(value: string): string {
  return /^[\w.,:%/+-]+$/.test(value) ? value : `"${value}"`;
}

/** A call of a calculation as it would be typed. */
export function callWords(calculation: Calculation): string {
  const words = calculation.example.map((word) => {
    const at = word.indexOf('=');
    return `${word.slice(0, at + 1)}${quoted(word.slice(at + 1))}`;
  });
  return ['platework calc', calculation.name, ...words].join(' ');
}
