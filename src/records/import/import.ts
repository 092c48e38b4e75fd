import type { Report } from '../../diagnostics/index.js';
import type { NutrientName } from '../../nutrition/food.js';
import { problem } from '../codes.js';
import type { Cell } from '../table.js';
import { type CsvReader, type CsvRow, createCsvReader } from './csv.js';
import { ANSWERS, NAMES, unitOf } from './nutrients.js';

/** The files of a download in the order in which they are read, with the headings that are used. */
export const IMPORT_FILES = [
  { file: 'nutrient.csv', headings: ['id', 'name', 'unit_name', 'nutrient_nbr'] },
  { file: 'measure_unit.csv', headings: ['id', 'name'] },
  { file: 'food.csv', headings: ['fdc_id', 'data_type', 'description', 'publication_date'] },
  { file: 'food_nutrient.csv', headings: ['fdc_id', 'nutrient_id', 'amount'] },
  {
    file: 'food_portion.csv',
    headings: ['fdc_id', 'amount', 'measure_unit_id', 'portion_description', 'modifier', 'gram_weight'],
  },
] as const;
export type ImportFile = (typeof IMPORT_FILES)[number]['file'];

/** Kinds of foods that are imported. Their amounts stand per 100 g. */
const TYPES: readonly string[] = ['foundation_food', 'sr_legacy_food', 'survey_fndds_food'];

/** One food of a download. */
export interface ImportedFood {
  /** FoodData Central's own number, `fdc_id`. */
  readonly number: string;
  readonly description: string;
  /** `foundation_food`, `sr_legacy_food` or `survey_fndds_food`. */
  readonly type: string;
  /** ISO date on which it was published; blank if the download gives none. */
  readonly date: string;
  /** Per 100 g; `null` is not known. */
  readonly per100g: Readonly<Record<NutrientName, number | null>>;
  /** Household weights in the download's words. */
  readonly weights: readonly { readonly words: string; readonly grams: number }[];
}

/** What was passed over, how often and why. */
export interface Skipped {
  readonly count: number;
  readonly what: string;
}

/** A download that is read file by file. */
export interface Import {
  /** A reader of one file. Ask for them in the order of `IMPORT_FILES`. */
  reader(name: ImportFile, file: string): CsvReader;
  /** The foods in the order of food.csv that have any of our nutrients, and all that was skipped. */
  finish(): { readonly foods: readonly ImportedFood[]; readonly skipped: readonly Skipped[] };
}

interface Draft {
  readonly number: string;
  readonly description: string;
  readonly type: string;
  readonly date: string;
  readonly values: Float64Array;
  readonly ranks: Uint8Array;
  readonly weights: { readonly words: string; readonly grams: number }[];
}

/**
 * Starts to read a CSV download of USDA FoodData Central. Only foundation, SR Legacy and survey foods are
 * taken: their amounts stand per 100 g, while those of branded foods may stand per 100 mL. Blank and
 * negative amounts are not known. Everything passed over is counted with its reason. A malformed row, id
 * or number, a nutrient in another unit and a food that stands twice are reported at their place, and the
 * reader of that file answers false.
 */
export function startImport(report: Report): Import {
  const nutrients = new Map<string, { readonly index: number; readonly rank: number } | null>();
  const units = new Map<string, string>();
  const drafts = new Map<string, Draft>();
  const counts = new Map<string, number>();
  const skip = (what: string): true => {
    counts.set(what, (counts.get(what) ?? 0) + 1);
    return true;
  };
  const wrong = (cell: Cell, message: string): false => {
    const hint = 'Unpack the download again, and do not change its files.';
    report.add(problem('records/import-value', message, { place: cell.place, hint, actual: cell.text }));
    return false;
  };
  const id = (cell: Cell): string | undefined => {
    if (/^\d{1,12}$/.test(cell.text)) return cell.text;
    wrong(cell, `"${cell.text}" is no id: an id is digits.`);
    return undefined;
  };
  /** A number; blank is `null`; what is neither is reported and `undefined`. */
  const number = (cell: Cell): number | null | undefined => {
    if (cell.text === '') return null;
    if (/^[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d{1,2})?$/.test(cell.text)) return Number(cell.text);
    wrong(cell, `"${cell.text}" is no number.`);
    return undefined;
  };

  const takes: Readonly<Record<ImportFile, (row: CsvRow) => boolean>> = {
    'nutrient.csv'(row) {
      const key = id(row.cell('id'));
      if (key === undefined) return false;
      const answer = ANSWERS.get(row.cell('nutrient_nbr').text.replace(/\.0$/, ''));
      const unit = row.cell('unit_name');
      if (answer && unit.text.toUpperCase() !== unitOf(answer.name))
        return wrong(
          unit,
          `${row.cell('name').text} is in "${unit.text}"; ${unitOf(answer.name)} was expected.`,
        );
      const what = answer ? { index: NAMES.indexOf(answer.name), rank: answer.rank } : null;
      nutrients.set(key, what);
      // Some survey downloads point to a nutrient by its number. Ids have four digits, numbers three.
      if (answer && !nutrients.has(row.cell('nutrient_nbr').text))
        nutrients.set(row.cell('nutrient_nbr').text, what);
      return true;
    },
    'measure_unit.csv'(row) {
      const key = id(row.cell('id'));
      if (key === undefined) return false;
      const name = tidy(row.cell('name').text);
      units.set(key, name === 'undetermined' ? '' : name);
      return true;
    },
    'food.csv'(row) {
      const key = id(row.cell('fdc_id'));
      if (key === undefined) return false;
      const type = row.cell('data_type').text;
      if (type === 'branded_food')
        return skip('branded foods: their amounts may stand per 100 mL, and only those per 100 g are read');
      if (!TYPES.includes(type))
        return skip(`foods of the type "${type}": samples and steps behind a food, not foods to name`);
      const description = tidy(row.cell('description').text);
      if (description === '') return skip('foods without a description');
      if (drafts.has(key)) return wrong(row.cell('fdc_id'), `Food ${key} stands twice.`);
      const date = row.cell('publication_date');
      if (date.text !== '' && !/^\d{4}-\d{2}-\d{2}$/.test(date.text))
        return wrong(date, `"${date.text}" is no date such as 2024-10-31.`);
      drafts.set(key, {
        number: key,
        description,
        type,
        date: date.text,
        values: new Float64Array(NAMES.length).fill(Number.NaN),
        ranks: new Uint8Array(NAMES.length).fill(255),
        weights: [],
      });
      return true;
    },
    'food_nutrient.csv'(row) {
      const [food, nutrient] = [id(row.cell('fdc_id')), id(row.cell('nutrient_id'))];
      const amount = number(row.cell('amount'));
      if (food === undefined || nutrient === undefined || amount === undefined) return false;
      const draft = drafts.get(food);
      if (!draft) return skip('amounts of foods that are not imported');
      const answer = nutrients.get(nutrient);
      if (answer === undefined) return skip('amounts of nutrients that nutrient.csv does not have');
      if (answer === null) return skip('amounts of nutrients that the program does not use');
      if (amount === null) return skip('amounts left blank: not known');
      if (amount < 0) return skip('amounts below zero: not known');
      const before = draft.ranks[answer.index] ?? 255;
      if (before === answer.rank) {
        if (draft.values[answer.index] === amount) return true;
        draft.values[answer.index] = Number.NaN;
        return skip('amounts that differ for one nutrient of one food: not known');
      }
      if (before < answer.rank) return skip('amounts by a second method');
      if (before !== 255) skip('amounts by a second method');
      draft.ranks[answer.index] = answer.rank;
      draft.values[answer.index] = amount;
      return true;
    },
    'food_portion.csv'(row) {
      const food = id(row.cell('fdc_id'));
      const [amount, grams] = [number(row.cell('amount')), number(row.cell('gram_weight'))];
      if (food === undefined || amount === undefined || grams === undefined) return false;
      const draft = drafts.get(food);
      if (!draft) return skip('household weights of foods that are not imported');
      if (grams === null || grams <= 0) return skip('household weights without grams');
      const words = portionWords(row, amount, units);
      if (words === '') return skip('household weights without a measure');
      draft.weights.push({ words, grams });
      return true;
    },
  };

  return {
    reader: (name, file) =>
      createCsvReader(file, IMPORT_FILES.find((f) => f.file === name)?.headings ?? [], takes[name], report),
    finish() {
      const foods: ImportedFood[] = [];
      for (const draft of drafts.values()) {
        if (draft.values.some((value) => !Number.isNaN(value))) foods.push(foodOf(draft));
        else skip('foods without any amount that the program uses');
      }
      return { foods, skipped: [...counts].map(([what, count]) => ({ count, what })) };
    },
  };
}

function foodOf({ number, description, type, date, values, weights }: Draft): ImportedFood {
  const per100g = Object.fromEntries(
    NAMES.map((name, i) => {
      const value = values[i] ?? Number.NaN;
      return [name, Number.isNaN(value) ? null : value];
    }),
  ) as Record<NutrientName, number | null>;
  return { number, description, type, date, per100g, weights };
}

/** White space of any kind becomes one space, so that a cell stays in its line. */
function tidy(text: string): string {
  return text.replace(/[\s\p{Cc}]+/gu, ' ').trim();
}

/** `1 cup, chopped`; blank when the row says nothing that one could measure. */
function portionWords(row: CsvRow, amount: number | null, units: ReadonlyMap<string, string>): string {
  const unit = units.get(row.cell('measure_unit_id').text) ?? '';
  // Survey foods hold a code where others hold words.
  const modifier = tidy(row.cell('modifier').text).replace(/^\d+$/, '');
  const whole = tidy(row.cell('portion_description').text);
  if (amount === null) return /^quantity not specified$/i.test(whole) ? '' : whole;
  const parts = [unit, modifier, whole].filter((part) => part !== '');
  return parts.length === 0 ? '' : `${amount} ${parts.join(', ')}`;
}
