import { z } from 'zod';
import type { Place, Report } from '../../diagnostics/index.js';
import {
  type Food,
  type FoodState,
  type Measure,
  NUTRIENTS,
  type NutrientName,
  type PlateKind,
} from '../../nutrition/food.js';
import { PLATES, readContains, readUsual, STATES } from '../everyday.js';
import { idOf, nameKey, splitName } from '../names.js';
import type { Source } from '../sources.js';
import type { Cell } from '../table.js';
import { readYaml, shaped, type YamlText } from '../yaml.js';
import { monthsLater } from './calendar.js';
import { localProblem } from './codes.js';
import { day, months } from './lines.js';

/** Where a site's foods stand, beside its `lines.yaml`. */
export const LOCAL_FOODS_FILE = 'foods.yaml';

/** A food that a site knows from a label, with the label as its source. */
export interface LocalFood {
  readonly food: Food;
  readonly source: Source;
  /** Names as written, for the place of a name that another food has. */
  readonly names: readonly Cell[];
}

const words = z.string().trim().min(1, 'holds no words');
const grams = z.number().positive('should be more than 0').max(100_000);
const nutrient = z.enum(Object.keys(NUTRIENTS) as [NutrientName, ...NutrientName[]]);
const entry = z.strictObject({
  name: words,
  aliases: z.array(words).default([]),
  kind: words.optional(),
  form: words.optional(),
  state: z.enum(STATES as [FoodState, ...FoodState[]]).default('ready to eat'),
  plate: z
    .array(z.enum(PLATES as [PlateKind, ...PlateKind[]]))
    .min(1)
    .max(2),
  serving: z.strictObject({ words, grams }),
  label: z.partialRecord(nutrient, words),
  contains: words,
  picture: words.default('jar'),
  flags: z.array(words).default([]),
  source: words,
  dated: day,
  keep_months: months,
});
export const foodsShape = z.strictObject({ site: words, foods: z.array(entry) });
type Entry = z.infer<typeof entry>;

/**
 * Reads a site's `foods.yaml`: foods that no table has, with the values of their labels for one serving.
 * What a label does not say is not known. An entry that is not whole, a value in another unit than the
 * nutrient's, a portion that is none, and a label whose parts weigh more than its serving are reported and
 * left out; a label past its shelf life on the day `on`, or dated after it, is reported and still used.
 */
export function readLocalFoods(text: string, file: string, on: string, report: Report): readonly LocalFood[] {
  const fault = (message: string, more: { place: Place; hint?: string }) =>
    localProblem('local/shape', message, more);
  const yaml = readYaml(text, file, fault, report);
  const data = yaml && shaped(foodsShape, yaml, fault, report);
  if (!yaml || !data) return [];
  return data.foods.flatMap((one, i) => {
    const before = report.problems.length;
    const food = readOne(one, (path) => ['foods', i, ...path], yaml, report);
    if (report.problems.length > before) return [];
    reportAge(one, yaml.place(['foods', i, 'dated']), on, report);
    return [food];
  });
}

type At = (path: readonly PropertyKey[]) => readonly PropertyKey[];

function readOne(one: Entry, at: At, yaml: YamlText, report: Report): LocalFood {
  const wrong = (cell: Cell, message: string, hint: string) =>
    report.add(localProblem('local/shape', message, { place: cell.place, hint, actual: cell.text }));
  const cell = (path: readonly PropertyKey[], text: string): Cell => ({ text, place: yaml.place(at(path)) });
  const id = `label-${idOf(one.name)}`;
  const measure = measureOf(one, id);
  const serving = cell(['serving', 'words'], one.serving.words);
  const usual = readUsual(serving, measure ? [measure] : [], wrong);
  const per100g = perHundred(one, at, yaml, wrong);
  const { head, tail } = splitName(nameKey(one.name));
  const food: Food = {
    id: idOf(one.name),
    name: one.name,
    aliases: one.aliases,
    state: one.state,
    kind: one.kind ?? head,
    form: one.form ?? (tail || 'ready to eat'),
    plate: one.plate,
    measures: measure ? [measure] : [],
    usual: usual ?? { words: one.serving.words, grams: one.serving.grams },
    contains: readContains(cell(['contains'], one.contains), wrong),
    picture: one.picture,
    flags: one.flags,
    per100g,
    record: { source: id, number: id, description: `${one.name} (label)`, date: one.dated },
  };
  return {
    food,
    source: {
      id,
      authors: ['Package label'],
      year: Number(one.dated.slice(0, 4)),
      title: one.name,
      where: one.source,
      kind: 'label',
      dataDate: one.dated,
      seen: 'whole',
    },
    names: [cell(['name'], one.name), ...one.aliases.map((alias, i) => cell(['aliases', i], alias))],
  };
}

/** The measure of a serving such as `2 slices`, with the grams of one. Servings in g or oz need none. */
function measureOf({ serving }: Entry, source: string): Measure | undefined {
  const [, whole = '0', top = '0', bottom = '1', plain = '0', unit = ''] =
    /^(?:(?:(\d+) )?(\d+)\/(\d+)|(\d+(?:\.\d+)?)) (.+)$/.exec(serving.words) ?? [];
  const count = Number(whole) + Number(top) / Number(bottom) + Number(plain);
  if (!(count > 0 && Number.isFinite(count)) || unit === 'g' || unit === 'oz') return undefined;
  const name = count > 1 ? unit.replace(/s$/, '') : unit;
  return { name, grams: serving.grams / count, source, note: `serving on the label: ${serving.words}` };
}

type Wrong = (cell: Cell, message: string, hint: string) => void;

function perHundred(one: Entry, at: At, yaml: YamlText, wrong: Wrong): Food['per100g'] {
  const values = Object.fromEntries(Object.keys(NUTRIENTS).map((name) => [name, null])) as Record<
    NutrientName,
    number | null
  >;
  const given = new Map<string, number>();
  for (const name of Object.keys(NUTRIENTS) as NutrientName[]) {
    const text = one.label[name];
    if (text === undefined) continue;
    const { unit } = NUTRIENTS[name];
    const [, amount, written = ''] = /^(\d+(?:\.\d+)?) ?(\p{L}+)$/u.exec(text) ?? [];
    const same = written.replace(/^(?:mcg|ug|μg)$/, 'µg') === unit;
    if (amount === undefined || !same) {
      const cell = { text, place: yaml.place(at(['label', name])) };
      wrong(
        cell,
        `"${text}" is no amount of ${name}.`,
        `Write the number of the label in ${unit}, such as: 5 ${unit}. Leave out what the label does not say.`,
      );
      continue;
    }
    given.set(name, Number(amount));
    values[name] = (Number(amount) * 100) / one.serving.grams;
  }
  const sum = ['protein', 'fat', 'carbohydrate'].reduce((total, name) => total + (given.get(name) ?? 0), 0);
  // Each of the three may be rounded up by half a gram.
  if (sum > one.serving.grams + 1.5) {
    const cell = { text: String(one.serving.grams), place: yaml.place(at(['serving', 'grams'])) };
    wrong(
      cell,
      `Protein, fat and carbohydrate weigh ${sum} g, more than the serving, ${one.serving.grams} g.`,
      'The values and the grams must be of the same serving. Look at the label again.',
    );
  }
  return values;
}

function reportAge({ name, dated, keep_months }: Entry, place: Place, on: string, report: Report): void {
  const until = monthsLater(dated, keep_months);
  if (dated > on)
    report.add(
      localProblem(
        'local/date-ahead',
        `The label of ${name} is dated ${dated}, after the day of the build, ${on}.`,
        {
          place,
          hint: 'Write the day on which the label was read.',
        },
      ),
    );
  if (on > until)
    report.add(
      localProblem('local/food-old', `The label of ${name} was good until ${until}; the build is of ${on}.`, {
        place,
        hint: 'Read the label again, mend what changed, then write the new day into `dated`.',
      }),
    );
}
