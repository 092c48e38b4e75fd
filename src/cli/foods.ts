import { closeSync, openSync, readdirSync, readFileSync, readSync } from 'node:fs';
import { join } from 'node:path';
import { formatProblem } from '../diagnostics/format.js';
import { createReport, type Report } from '../diagnostics/problem.js';
import { formatQuantity } from '../languages/format.js';
import { type Food, NUTRIENTS, type NutrientName } from '../nutrition/food.js';
import { RELEASE_SOURCE } from '../records/columns.js';
import { type FinderFiles, type FoundFood, type FoundFoods, findFoods } from '../records/finder.js';
import { IMPORTED_FOLDER, type OpenImport, openImported } from '../records/import/table.js';
import { type Call, type Option, optionLines, readCall, UsageError } from './arguments.js';
import { findWorkspace, isFolder, PROGRAM } from './disk.js';

const OPTIONS: Readonly<Record<string, Option>> = {
  most: { type: 'string', value: 'COUNT', help: 'how many foods to show whole (3 when left out)' },
};

const HELP = `platework foods <words>
platework foods import <folder>

Finds foods by words of their names, in English or by the other names that they have, and forgives a
letter or two. Everyday foods, which lessons may name, come first; then the rest of the release. Shows
each food's state, household measures and main nutrients, per 100 g and per usual portion. What the
release does not say is "not known"; it is not zero.

"import" reads the CSV download of USDA FoodData Central: platework foods import --help says more.

${optionLines(OPTIONS)}
`;

/** The nutrients that a card shows, in this order. */
const MAIN: readonly NutrientName[] = [
  'energy',
  'protein',
  'carbohydrate',
  'fiber',
  'sugars',
  'added sugars',
  'fat',
  'saturated fat',
  'sodium',
  'potassium',
  'calcium',
  'iron',
];
/** Names of further foods that are listed under those shown whole. */
const LISTED = 12;

export async function run(args: readonly string[]): Promise<number> {
  if (args[0] === 'import') return (await import('./foods-import.js')).run(args.slice(1));
  const call = readCall(args, OPTIONS);
  if (call.flag('help')) {
    process.stdout.write(HELP);
    return 0;
  }
  const words = call.words.join(' ');
  if (!/[\p{L}\p{N}]/u.test(words)) throw new UsageError('Say which food: platework foods <words>.');
  const report = createReport();
  const found = findFoods(words, mostOf(call), programTables(), report, importedTables(call, report));
  for (const problem of report.problems) process.stderr.write(`${formatProblem(problem)}\n\n`);
  if (call.flag('json')) process.stdout.write(`${JSON.stringify(forMachines(words, found), null, 2)}\n`);
  else process.stdout.write(tell(words, found));
  return found.hits.length > 0 ? 0 : 1;
}

function mostOf(call: Call): number {
  const most = call.text('most') ?? '3';
  if (/^[1-9]\d{0,2}$/.test(most)) return Number(most);
  throw new UsageError(`--most needs a count from 1 to 999, and got "${most}".`);
}

/** The program's own tables on disk. A line of the release is read from its place, without the rest. */
function programTables(): FinderFiles {
  const full = (path: string) => join(PROGRAM, 'assets', path);
  return {
    read: (path) => readFileSync(full(path), 'utf8'),
    part(path, start, length) {
      const file = openSync(full(path), 'r');
      try {
        const bytes = Buffer.alloc(length);
        return bytes.toString('utf8', 0, readSync(file, bytes, 0, length, start));
      } finally {
        closeSync(file);
      }
    },
  };
}

/** The tables that were imported into the workspace, if the command is called in one. */
function importedTables(call: Call, report: Report): readonly OpenImport[] {
  const given = call.text('workspace');
  if (given !== undefined && !isFolder(given)) throw new UsageError(`There is no folder ${given}.`);
  const root = given ?? findWorkspace(process.cwd());
  const folder = root === undefined ? undefined : join(root, IMPORTED_FOLDER);
  if (folder === undefined || !isFolder(folder)) return [];
  const files = readdirSync(folder)
    .filter((name) => name.endsWith('.tsv'))
    .sort();
  return files.map((name) =>
    openImported(readFileSync(join(folder, name), 'utf8'), `${IMPORTED_FOLDER}/${name}`, report),
  );
}

function tell(words: string, { hits, shown, near }: FoundFoods): string {
  if (hits.length === 0) {
    const names = near.map((hit) => `  ${hit.name}\n`).join('');
    return `No food answers to "${words}". The nearest:\n${names}`;
  }
  const guessed = hits.some((hit) => hit.guess)
    ? `No food answers to "${words}" as it is written. The nearest:\n\n`
    : '';
  const cards = shown.map(card).join('\n');
  const rest = hits.slice(shown.length);
  if (rest.length === 0) return guessed + cards;
  const names = rest.slice(0, LISTED).map((hit) => `  ${hit.name ?? `${hit.number}  ${hit.description}`}\n`);
  const more =
    rest.length > LISTED ? `  and ${rest.length - LISTED} more; --most shows more of them whole\n` : '';
  return `${guessed}${cards}\nAlso:\n${names.join('')}${more}`;
}

function card(found: FoundFood): string {
  const { number, description } = found.hit;
  const from = 'release' in found ? found.release : `${RELEASE_SOURCE.source}, ${RELEASE_SOURCE.date}`;
  const usual = 'food' in found ? found.food.usual : undefined;
  const per100g = valuesOf(found);
  const rows = MAIN.map((name): readonly string[] => [
    name,
    amount(name, per100g[name], 100),
    ...(usual ? [amount(name, per100g[name], usual.grams)] : []),
  ]);
  const head =
    'food' in found
      ? ofFood(found.food)
      : 'row' in found
        ? ofRecord(`${description} (in the release only; lessons cannot name it)`, found.row.weights)
        : ofRecord(`${description} (imported; lessons cannot name it)`, found.imported.weights);
  return [
    head.name,
    ...head.facts.map(([what, value]) => `  ${what.padEnd(14)}${value}`),
    `  ${'Record'.padEnd(14)}${from}, food ${number}: ${description}`,
    ...[['', 'per 100 g', ...(usual ? [`per ${usual.words}`] : [])], ...rows].map(
      (cells) => `  ${columns(cells)}`,
    ),
    '',
  ].join('\n');
}

function valuesOf(found: FoundFood): Food['per100g'] {
  if ('food' in found) return found.food.per100g;
  return 'row' in found ? found.row.per100g : found.imported.per100g;
}

function columns([name = '', ...amounts]: readonly string[]): string {
  return `${name.padEnd(14)}${amounts.map((text) => text.padStart(20)).join('')}`.trimEnd();
}

function amount(name: NutrientName, value: number | null, grams: number): string {
  const unit = NUTRIENTS[name].unit;
  const shown = formatQuantity({ value: value === null ? null : (value * grams) / 100, unit }, 'en');
  return shown.replaceAll('\u00a0', ' ');
}

interface Head {
  readonly name: string;
  readonly facts: readonly (readonly [string, string])[];
}

function ofFood(food: Food): Head {
  const measures = food.measures.map(
    (m) => `${m.name} ${plain(m.grams)} g${m.estimated ? ' (estimated)' : ''}`,
  );
  const usual = `${food.usual.words}, ${plain(food.usual.grams)} g${food.usual.estimated ? ' (estimated)' : ''}`;
  const others = food.aliases.length > 0 ? [['Other names', food.aliases.join('; ')] as const] : [];
  return {
    name: food.name,
    facts: [
      ['Kind', `${food.kind}; ${food.form}`],
      ...others,
      ['State', food.state],
      ['Measures', measures.join('; ') || 'not known'],
      ['Usual', usual],
    ],
  };
}

/** A food whose state and portion nobody has written down: the description must say them. */
function ofRecord(
  name: string,
  weights: readonly ({ readonly words: string; readonly grams: number } | undefined)[],
): Head {
  const measures = weights.flatMap((w) => (w ? [`${w.words}: ${plain(w.grams)} g`] : []));
  return {
    name,
    facts: [
      ['State', 'as the description says'],
      ['Measures', measures.join('; ') || 'not known'],
      ['Usual', 'not known'],
    ],
  };
}

/** Grams as the tables give them; a tenth is enough to measure by. */
function plain(grams: number): string {
  return String(Math.round(grams * 10) / 10);
}

function forMachines(words: string, { hits, shown, near }: FoundFoods) {
  const foods = shown.map((found) => {
    const food = 'food' in found ? found.food : 'row' in found ? found.row : found.imported;
    return { ...food, per100g: food.per100g, ...(found.hit.guess && { guess: true }) };
  });
  return { words, found: hits.length, foods, others: hits.slice(shown.length), near };
}
