import type { Place, Report } from '../diagnostics/index.js';
import {
  CONTENTS,
  type Contains,
  type Content,
  type FoodState,
  type PlateKind,
  type UsualPortion,
} from '../nutrition/food.js';
import { problem } from './codes.js';
import { fiveDigits } from './release.js';
import { type Cell, partsOf, readTable, type TableRow } from './table.js';

/** A household measure as the table writes it; `weight` points to a household weight of the release. */
export interface WrittenMeasure {
  readonly name: string;
  readonly grams: number;
  readonly from:
    | { readonly kind: 'weight'; readonly weight: 1 | 2 }
    | { readonly kind: 'source'; readonly source: string; readonly note: string }
    | { readonly kind: 'estimated'; readonly why: string };
  readonly place: Place;
}

/** One row of the table of everyday foods, before its record is looked up. */
export interface EverydayRow {
  readonly name: Cell;
  readonly aliases: readonly Cell[];
  readonly kind: Cell;
  readonly kindAliases: readonly Cell[];
  readonly form: string;
  readonly number: Cell;
  readonly description: Cell;
  readonly state: FoodState;
  readonly plate: readonly PlateKind[];
  readonly measures: readonly WrittenMeasure[];
  readonly usual: UsualPortion;
  readonly contains: Readonly<Record<Content, Contains>>;
  /** True if the food is nothing but itself, so that no sugar was added. */
  readonly single: boolean;
  readonly picture: string;
  readonly flags: readonly string[];
}

export const EVERYDAY_HEADINGS = [
  'name',
  'aliases',
  'kind',
  'kind aliases',
  'form',
  'number',
  'description',
  'state',
  'plate',
  'measures',
  'usual',
  'contains',
  'single food',
  'picture',
  'flags',
] as const;

export const STATES: readonly FoodState[] = [
  'raw',
  'dry',
  'cooked',
  'canned, with liquid',
  'canned, drained',
  'canned, drained and rinsed',
  'frozen, unprepared',
  'frozen, cooked',
  'ready to eat',
];
export const PLATES: readonly PlateKind[] = [
  'vegetable',
  'fruit',
  'grain or starch',
  'protein',
  'dairy or calcium',
  'fat',
  'drink',
  'seasoning',
];
/** Exact by definition; the release rounds it to 28.35. */
const GRAMS_PER_OUNCE = 28.349523125;

/**
 * Reads the table of everyday foods. A row whose name, kind, state, plate or usual portion cannot be
 * read is reported and left out; a measure that cannot be read is left out of its row; what a food
 * contains counts as not known where it cannot be read.
 */
export function readEveryday(text: string, file: string, report: Report): readonly EverydayRow[] {
  return readTable(text, file, EVERYDAY_HEADINGS, report).flatMap((row) => readRow(row, report) ?? []);
}

function readRow(row: TableRow, report: Report): EverydayRow | undefined {
  const wrong = (cell: Cell, message: string, hint: string, expected?: readonly string[]) => {
    report.add(
      problem('records/value', message, {
        place: cell.place,
        hint,
        actual: cell.text,
        ...(expected && { expected }),
      }),
    );
  };
  const filled = (heading: string): Cell | undefined => {
    const cell = row.cell(heading);
    if (cell.text !== '') return cell;
    wrong(cell, `The ${heading} of a food is blank.`, `Write its ${heading}.`);
    return undefined;
  };
  const oneOf = <T extends string>(cell: Cell, allowed: readonly T[], what: string): T | undefined => {
    const found = allowed.find((value) => value === cell.text);
    if (found === undefined)
      wrong(cell, `"${cell.text}" is no ${what}.`, `Write one of: ${allowed.join(' | ')}.`, allowed);
    return found;
  };

  const name = filled('name');
  const kind = filled('kind');
  const form = filled('form');
  const number = filled('number');
  const picture = filled('picture');
  const state = oneOf(row.cell('state'), STATES, 'state of a food');
  const plate = partsOf(row.cell('plate')).map((part) => oneOf(part, PLATES, 'kind of the plate'));
  if (plate.length === 0) filled('plate');
  const measures = readMeasures(row.cell('measures'), wrong);
  const usual = readUsual(row.cell('usual'), measures, wrong);
  const contains = readContains(row.cell('contains'), wrong);
  const single = oneOf(row.cell('single food'), ['yes', 'no'], 'answer to "single food"');
  const plates = plate.filter((kind) => kind !== undefined);
  if (!name || !kind || !form || !number || !picture || !state || !usual || plates.length === 0)
    return undefined;
  if (plates.length < plate.length) return undefined;
  return {
    name,
    aliases: partsOf(row.cell('aliases')),
    kind,
    kindAliases: partsOf(row.cell('kind aliases')),
    form: form.text,
    number: { ...number, text: fiveDigits(number.text) },
    description: row.cell('description'),
    state,
    plate: plates,
    measures,
    usual,
    contains,
    single: single === 'yes',
    picture: picture.text,
    flags: partsOf(row.cell('flags')).map((flag) => flag.text),
  };
}

type Wrong = (cell: Cell, message: string, hint: string, expected?: readonly string[]) => void;

/** `cup 240 [1]; can 425 [usda-sr28: 1 can]; cup 169 [estimated: why]`, or `none`. */
function readMeasures(cell: Cell, wrong: Wrong): readonly WrittenMeasure[] {
  if (cell.text === 'none') return [];
  const measures: WrittenMeasure[] = [];
  for (const part of partsOf(cell)) {
    const found = /^(\S.*?) (\d+(?:\.\d+)?) \[(?:([12])|([a-z][a-z0-9-]*): ([^[\]]+))\]$/.exec(part.text);
    const [, name = '', grams = '', weight, source = '', note = ''] = found ?? [];
    if (found === null || Number(grams) === 0) {
      wrong(
        part,
        `"${part.text}" is no measure with its grams and source.`,
        'Write name, grams and source, such as: cup 240 [1], or cup 240 [usda-sr28: 1 cup], or cup 240 [estimated: why].',
      );
      continue;
    }
    if (measures.some((measure) => measure.name === name)) {
      wrong(part, `The measure "${name}" stands twice.`, 'Keep one of them.');
      continue;
    }
    measures.push({ name, grams: Number(grams), from: origin(weight, source, note), place: part.place });
  }
  if (cell.text === '') wrong(cell, 'The measures of a food are blank.', 'Write its measures, or none.');
  return measures;
}

function origin(weight: string | undefined, source: string, note: string): WrittenMeasure['from'] {
  if (weight !== undefined) return { kind: 'weight', weight: weight === '1' ? 1 : 2 };
  return source === 'estimated' ? { kind: 'estimated', why: note } : { kind: 'source', source, note };
}

/** `1/2 cup`, `2 slices`, `3 oz`: a count and one of the food's measures, ounces or grams. */
export function readUsual(
  cell: Cell,
  measures: readonly (Pick<WrittenMeasure, 'name' | 'grams'> & { readonly from?: WrittenMeasure['from'] })[],
  wrong: Wrong,
): UsualPortion | undefined {
  const [, whole = '0', top = '0', bottom = '1', plain = '0', name = ''] =
    /^(?:(?:(\d+) )?(\d+)\/(\d+)|(\d+(?:\.\d+)?)) (.+)$/.exec(cell.text) ?? [];
  const count = Number(whole) + Number(top) / Number(bottom) + Number(plain);
  const one = measures.find((measure) => measure.name === name || `${measure.name}s` === name);
  const grams = name === 'oz' ? GRAMS_PER_OUNCE : name === 'g' ? 1 : one?.grams;
  if (grams !== undefined && count > 0 && Number.isFinite(count))
    return {
      words: cell.text,
      grams: count * grams,
      ...(one?.from?.kind === 'estimated' && { estimated: true as const }),
    };
  wrong(
    cell,
    `"${cell.text}" is no usual portion in one of the food's measures.`,
    `Write a count and a measure, such as 1/2 cup; this food has ${[...measures.map((m) => m.name), 'oz', 'g'].join(', ')}.`,
  );
  return undefined;
}

/** `milk; soy?; others?` or `none`. What is not named is `no`; after `others?` it is not known. */
export function readContains(cell: Cell, wrong: Wrong): Readonly<Record<Content, Contains>> {
  const named = new Map<string, Contains>();
  let others: Contains = 'no';
  const parts = partsOf(cell);
  const fail = (part: Cell) => {
    others = 'unknown';
    wrong(
      part,
      part.text === ''
        ? 'What a food contains is blank.'
        : `"${part.text}" is nothing that a food may contain.`,
      `Write none, or any of: ${CONTENTS.join('; ')}; with ? after one that is not known, and others? if nothing else is known.`,
      CONTENTS,
    );
  };
  if (parts.length === 0) fail(cell);
  for (const part of parts) {
    const content = part.text.replace(/\?$/, '');
    if (part.text === 'others?') others = 'unknown';
    else if (part.text === 'none' && parts.length === 1) continue;
    else if (CONTENTS.some((known) => known === content) && !named.has(content))
      named.set(content, content === part.text ? 'yes' : 'unknown');
    else fail(part);
  }
  return Object.fromEntries(CONTENTS.map((content) => [content, named.get(content) ?? others])) as Record<
    Content,
    Contains
  >;
}
