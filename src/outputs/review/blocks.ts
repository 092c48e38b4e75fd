import type { Problem } from '../../diagnostics/index.js';
import type { Block, Cell, Inline, NumberInput, ShownNumber } from '../../document/index.js';

/** A caution as the reviewer needs to see it. */
export interface CautionForReview {
  readonly id: string;
  readonly heading: string;
  /** As printed, with its level. */
  readonly wordings: readonly { readonly level: string; readonly text: string }[];
  /** What pulled it: a topic, a food, a directive. */
  readonly pulledBy: readonly string[];
  /** What a professional still has to confirm; empty when nothing. */
  readonly toConfirm: string;
  /** Who confirmed it and when, or nothing. */
  readonly confirmed?: string;
}

/** Printed terms of the review sheet, in the reader's language. */
export interface ReviewWords {
  readonly numbers: string;
  readonly cautions: string;
  readonly problems: string;
  readonly number: string;
  readonly shown: string;
  readonly how: string;
  readonly from: string;
  readonly caution: string;
  readonly words: string;
  readonly pulledBy: string;
  readonly toConfirm: string;
  readonly unconfirmed: string;
  readonly problem: string;
  readonly toDo: string;
  readonly place: string;
  readonly unrounded: string;
  readonly notKnown: string;
  readonly none: string;
}

export interface ForReview {
  readonly numbers: readonly ShownNumber[];
  readonly cautions: readonly CautionForReview[];
  readonly problems: readonly Problem[];
  /** What is to be said of the sheets without weight; nothing when there are none. */
  readonly weightFree?: string;
  readonly words: ReviewWords;
  /** A source's words by its id; the id itself stands in for one that is not listed. */
  readonly sourceOf: (id: string) => string;
}

/**
 * Blocks of the review sheet: every caution with what pulled it and what awaits confirmation, every
 * problem, every number with its food row, formula, inputs, source and date.
 */
export function reviewBlocks({
  numbers,
  cautions,
  problems,
  weightFree,
  words,
  sourceOf,
}: ForReview): Block[] {
  return [
    heading(words.cautions),
    ...listed(
      words.none,
      [words.caution, words.words, words.pulledBy, words.toConfirm],
      cautions.map((caution) => cautionRow(caution, words)),
    ),
    ...(weightFree === undefined ? [] : [{ kind: 'paragraph' as const, inlines: [{ text: weightFree }] }]),
    heading(words.problems),
    ...listed(words.none, [words.problem, words.toDo, words.place], problems.map(problemRow)),
    heading(words.numbers),
    ...listed(
      words.none,
      [words.number, words.shown, words.how],
      numbers.map((number) => numberRow(number, words)),
    ),
    ...sourceList(numbers, words, sourceOf),
  ];
}

function heading(text: string): Block {
  return { kind: 'heading', level: 2, inlines: [{ text }] };
}

function listed(none: string, head: readonly string[], rows: readonly (readonly Cell[])[]): Block[] {
  if (rows.length === 0) return [{ kind: 'paragraph', inlines: [{ text: none }] }];
  return [{ kind: 'table', head: head.map((text) => ({ inlines: [{ text }] })), rows, rowHeads: true }];
}

/** Lines of a cell, each on a line of its own. */
function cell(...lines: readonly (string | Inline)[]): Cell {
  const inlines = lines
    .map((line) => (typeof line === 'string' ? { text: line } : line))
    .filter((inline) => inline.text !== '');
  return {
    inlines: inlines.map((inline, index) => (index === 0 ? inline : { ...inline, breakBefore: true })),
  };
}

function cautionRow(caution: CautionForReview, words: ReviewWords): Cell[] {
  const state = caution.confirmed ?? words.unconfirmed;
  return [
    cell(caution.heading, caution.id),
    cell(...sameWords(caution.wordings)),
    cell(caution.pulledBy.join('; ')),
    cell({ text: state, strong: caution.confirmed === undefined }, caution.toConfirm),
  ];
}

/** Levels that print the same words stand together. */
function sameWords(wordings: CautionForReview['wordings']): string[] {
  const texts = [...new Set(wordings.map(({ text }) => text))];
  return texts.map((text) => {
    const levels = wordings.filter((w) => w.text === text).map((w) => w.level);
    return `${levels.join(', ')}: ${text}`;
  });
}

function problemRow(problem: Problem): Cell[] {
  const { place } = problem;
  return [
    cell({ text: problem.code }, problem.message),
    cell(problem.hint ?? ''),
    cell(place ? `${place.file}:${place.line}:${place.column}` : ''),
  ];
}

function numberRow(number: ShownNumber, words: ReviewWords): Cell[] {
  const { food } = number;
  return [
    cell(number.what, number.id),
    cell(
      { text: number.text, strong: true, number: number.id },
      `${words.unrounded} ${unrounded(number, words)}`,
    ),
    cell(
      number.formula,
      number.inputs.map((input) => inputLine(input, words)).join('; '),
      food ? `${food.source} ${food.number}: ${food.description} (${food.date})` : '',
    ),
  ];
}

/** Every source behind the numbers, once, in full words. */
function sourceList(
  numbers: readonly ShownNumber[],
  words: ReviewWords,
  sourceOf: (id: string) => string,
): Block[] {
  const ids = [...new Set(numbers.flatMap((number) => number.sources))];
  if (ids.length === 0) return [];
  const items = ids.map((id): Block[] => [
    { kind: 'paragraph', inlines: [{ text: `${id}: ${sourceOf(id)}` }] },
  ]);
  return [heading(words.from), { kind: 'list', ordered: false, items }];
}

function unrounded(number: ShownNumber, words: ReviewWords): string {
  const unit = number.unit === '' ? '' : ` ${number.unit}`;
  if (number.low !== undefined && number.high !== undefined)
    return `${plain(number.low)} … ${plain(number.high)}${unit}`;
  if (number.value === null) return words.notKnown;
  return `${number.atLeast ? '≥ ' : ''}${plain(number.value)}${unit}`;
}

function inputLine(input: NumberInput, words: ReviewWords): string {
  const value = input.value === null ? words.notKnown : `${plain(input.value)} ${input.unit}`.trim();
  return `${input.name} = ${value} [${input.source}]${input.note ? ` ${input.note}` : ''}`;
}

/** Enough digits to check by hand, without the noise of binary fractions. */
function plain(value: number): string {
  return String(Number(value.toPrecision(8)));
}
