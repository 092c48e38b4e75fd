import { type Checked, FOR_THE_TOOL, type Input, type Refusal } from '../../nutrition/index.js';
import type { Answer, Calculation, Shown } from './contract.js';

/** How well a row is checked, in words. */
const CHECKED: Readonly<Record<Checked, string>> = {
  publication: 'read in the publication',
  copies: 'read in independent copies that agree',
  memory: 'from memory, not compared with the source',
  unsettled: 'unsettled: read it again in the source before leaning on it',
};

/** What the author of a lesson writes is, here, what the call gives. */
export function sourceIn({ source }: Pick<Input, 'source'>): string {
  return source === 'lesson' ? 'given' : source;
}

/** A number for people: six significant digits, or all of a whole number. */
export function sixDigits(value: number): string {
  return digits(value, 6);
}

function digits(value: number, most: number): string {
  if (Number.isInteger(value)) return String(value);
  const whole = Math.max(1, Math.floor(Math.log10(Math.abs(value))) + 1);
  return String(Number(value.toPrecision(Math.min(100, Math.max(most, whole)))));
}

/** A result as one line: its name, value, unit and what is said of it. */
export function valueLine({ name, value, unit, atLeast, says }: Shown): string {
  return `${name}: ${atLeast ? 'at least ' : ''}${valueWords(value)}${unit === '' || value === null ? '' : ` ${unit}`}${says === undefined ? '' : ` (${says})`}`;
}

function valueWords(value: Shown['value']): string {
  if (value === null) return 'not known';
  if (typeof value === 'string') return value;
  if (typeof value === 'number') return sixDigits(value);
  const [low, high] = [sixDigits(value.low), sixDigits(value.high)];
  return low === high ? low : `${low} to ${high}`;
}

function workingLines({ working }: Shown): string[] {
  if (working === undefined) return [];
  const cells = working.inputs.map((input) => [
    input.name,
    `${input.value === null ? 'not known' : digits(input.value, 10)} ${input.unit}`.trim(),
    `${sourceIn(input)}${input.note === undefined ? '' : `: ${input.note}`}`,
  ]);
  const width = (column: number) => Math.max(...cells.map((row) => (row[column] ?? '').length));
  const [first, second] = [width(0), width(1)];
  return [
    ...formulaLines(working.formula),
    ...cells.map(([name = '', value = '', source = '']) =>
      `    ${name.padEnd(first)}  ${value.padEnd(second)}  ${source}`.trimEnd(),
    ),
  ];
}

/** A range has two parts, each with its name. */
function formulaLines(formula: string): string[] {
  return formula.includes(';') ? formula.split(/;\s*/).map((part) => `  ${part}`) : [`  = ${formula}`];
}

/** An answer for people: each result with its working, then what it holds for, cautions and sources. */
export function tellAnswer(calculation: Calculation, answer: Answer, sources: readonly string[]): string {
  const blocks = answer.results.map((one) => [valueLine(one), ...workingLines(one)]);
  const lines = blocks.flatMap((block, at) => {
    const before = blocks[at - 1];
    return before !== undefined && (block.length > 1 || before.length > 1) ? ['', ...block] : block;
  });
  return visible([...lines, '', ...closing(calculation, answer, sources)]);
}

function closing({ holdsFor, ofPeople }: Calculation, answer: Answer, sources: readonly string[]): string[] {
  const rows: (readonly [string, string])[] = [
    ...(ofPeople ? [['Use', FOR_THE_TOOL] as const] : []),
    ['Holds for', holdsFor],
    ...(answer.cautions ?? []).map((caution, at) => [at === 0 ? 'Mind' : '', caution] as const),
    ...(answer.checked === undefined ? [] : [['Row', CHECKED[answer.checked]] as const]),
    ...sources.map((source, at) => [at === 0 ? 'Source' : '', source] as const),
  ];
  return rows.map(([key, value]) => `${key.padEnd(9)}  ${value}`);
}

/** A refusal for people. */
export function tellRefusal({ reason, hint, near }: Refusal, ofPeople = false): string {
  const lines = [
    `Refused: ${reason}`,
    ...(hint === undefined ? [] : [hint]),
    ...(near === undefined || near.length === 0 ? [] : [`Near it: ${near.join('; ')}.`]),
    ...(ofPeople ? [`Use: ${FOR_THE_TOOL}.`] : []),
  ];
  return visible(lines);
}

/** Lines as a terminal may see them: what was typed cannot steer it. */
function visible(lines: readonly string[]): string {
  return `${lines.join('\n').replace(/(?!\n)\p{Cc}/gu, ' ')}\n`;
}
