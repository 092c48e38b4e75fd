import { callWords } from './call.js';
import type { Calculation, Field } from './contract.js';
import { AREAS } from './list.js';

/** How an input is written: its units or choices, and its range. */
function kindWords({ units, choices, range, orUnknown }: Field): string {
  const shown = choices === undefined ? '' : listed(choices);
  return [shown, units.join(', '), range ?? '', orUnknown ? 'or unknown' : '']
    .filter((part) => part !== '')
    .join('; ');
}

/** Long lists of choices are cut; a wrong choice offers the nearest. */
function listed(choices: readonly string[]): string {
  const most = 12;
  const cut = choices.slice(0, most).join(' | ');
  return choices.length > most ? `${cut} | … ${choices.length - most} more` : cut;
}

function inputLines(calculation: Calculation, whole: boolean): string[] {
  const rows = Object.entries(calculation.inputs).map(([name, field]) => {
    const { help, otherwise } = field;
    const need = otherwise === undefined ? 'needed' : `else ${otherwise.words}`;
    const shown = whole && field.choices ? { ...field, choices: [field.choices.join(' | ')] } : field;
    const kind = kindWords(shown);
    return [name, need, kind === '' ? help : `${help} [${kind}]`] as const;
  });
  const width = (at: 0 | 1) => Math.max(...rows.map((row) => row[at].length));
  return rows.map(([name, need, text]) => `    ${name.padEnd(width(0))}  ${need.padEnd(width(1))}  ${text}`);
}

/** All calculations with their inputs and a call to copy. */
export function listText(): string {
  return AREAS.map(({ heading, entries }) =>
    [
      heading,
      ...entries.flatMap((one) => [
        '',
        `  ${namesOf(one)}: ${one.what}`,
        ...inputLines(one, false),
        `    ${callWords(one)}`,
      ]),
      '',
    ].join('\n'),
  ).join('\n');
}

/** Names only, one line each. */
export function namesText(): string {
  const width = Math.max(...AREAS.flatMap(({ entries }) => entries.map(({ name }) => name.length)));
  return AREAS.map(({ heading, entries }) =>
    [`${heading}:`, ...entries.map(({ name, what }) => `  ${name.padEnd(width)}  ${what}`)].join('\n'),
  ).join('\n');
}

function namesOf({ name, also }: Calculation): string {
  return also === undefined ? name : `${name} (also ${also.join(', ')})`;
}

/** One calculation: its inputs, what it holds for, its sources and an example. */
export function helpOf(calculation: Calculation): string {
  const { what, holdsFor, sources } = calculation;
  return `platework calc ${calculation.name} name=value …

${namesOf(calculation)}: ${what}.

${inputLines(calculation, true).join('\n')}

  Holds for  ${holdsFor}
  Source     ${sources.join('; ')}
  Example    ${callWords(calculation)}
`;
}

/** One calculation for machines. */
export function forMachines(calculation: Calculation) {
  const { name, also = [], what, inputs, holdsFor, sources, ofPeople = false } = calculation;
  return {
    name,
    also,
    what,
    inputs: Object.entries(inputs).map(([input, field]) => ({
      name: input,
      help: field.help,
      units: field.units,
      choices: field.choices ?? null,
      range: field.range ?? null,
      unknown: field.orUnknown ?? false,
      needed: field.otherwise === undefined,
      otherwise: field.otherwise?.words ?? null,
    })),
    holdsFor,
    sources,
    ofPeople,
    example: callWords(calculation),
  };
}
