import { closeSync, createReadStream, mkdirSync, openSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { createReport, formatProblem, type Report } from '../diagnostics/index.js';
import {
  IMPORT_FILES,
  IMPORTED_FOLDER,
  type ImportedFood,
  importedLines,
  type Skipped,
  startImport,
} from '../records/import/index.js';
import { isDay } from '../records/local/calendar.js';
import { type Call, type Option, optionLines, readCall, UsageError } from './arguments.js';
import { findWorkspace, isFile, isFolder } from './disk.js';
import { printJson } from './print.js';

const OPTIONS: Readonly<Record<string, Option>> = {
  release: { type: 'string', value: 'NAME', help: 'what the download is called (its folder when left out)' },
  date: {
    type: 'string',
    value: 'DAY',
    help: 'the day of the download (that in the name of its folder, or of its newest food)',
  },
};

const HELP = `platework foods import <folder>

Reads the CSV download of USDA FoodData Central, unpacked and unchanged: ${IMPORT_FILES.map((f) => f.file).join(', ')}.
Foundation, SR Legacy and survey foods go into one table of the workspace, ${IMPORTED_FOLDER}/<release>.tsv,
with the release and its date; "platework foods" finds them there. Says what it passed over and why. A
malformed file is refused with its line and column, and the table is written whole or not at all.

${optionLines(OPTIONS)}
`;

export async function run(args: readonly string[]): Promise<number> {
  const call = readCall(args, OPTIONS);
  if (call.flag('help')) {
    process.stdout.write(HELP);
    return 0;
  }
  const [folder, ...more] = call.words;
  if (folder === undefined || more.length > 0)
    throw new UsageError('Name one folder: platework foods import <folder>.');
  if (!isFolder(folder)) throw new UsageError(`There is no folder ${folder}.`);
  const lacking = IMPORT_FILES.filter(({ file }) => !isFile(join(folder, file))).map(({ file }) => file);
  if (lacking.length > 0)
    throw new UsageError(`${folder} lacks ${lacking.join(', ')}. Unpack the whole download there.`);
  const given = givenDate(call);
  const root = workspaceOf(call);
  const report = createReport();
  const read = await readAll(folder, report);
  if (!read) {
    for (const problem of report.problems) process.stderr.write(`${formatProblem(problem)}\n\n`);
    process.stderr.write('Nothing was imported; what was there before is untouched.\n');
    return 1;
  }
  const { foods, skipped } = read;
  if (foods.length === 0)
    throw new UsageError(`${folder} holds no food to import. ${skippedLines(skipped).join(' ')}`.trim());
  const release = (call.text('release') ?? basename(resolve(folder))).replace(/\s+/g, ' ').trim();
  const date = given ?? dateOf(release, foods);
  const file = `${IMPORTED_FOLDER}/${fileNameOf(release)}.tsv`;
  writeWhole(join(root, file), importedLines({ release, date, foods }));
  if (call.flag('json')) printJson({ file, release, date, foods: foods.length, skipped });
  else
    process.stdout.write(
      `${file}: ${foods.length} foods of ${release}, ${date}\n${skippedLines(skipped)
        .map((line) => `  ${line}\n`)
        .join('')}`,
    );
  return 0;
}

function givenDate(call: Call): string | undefined {
  const date = call.text('date');
  if (date === undefined || isDay(date)) return date;
  throw new UsageError(`--date needs a day such as 2024-10-31, and got "${date}".`);
}

function workspaceOf(call: Call): string {
  const given = call.text('workspace');
  const root = given ?? findWorkspace(process.cwd());
  if (root !== undefined && isFolder(root)) return root;
  throw new UsageError(
    given
      ? `There is no folder ${given}.`
      : 'There is no lessons/ here or above. Go to your workspace, or name it with --workspace DIR.',
  );
}

/** Streams all files, one after the other; nothing when one of them is refused. */
async function readAll(folder: string, report: Report) {
  const task = startImport(report);
  for (const { file } of IMPORT_FILES) {
    const path = join(folder, file);
    const reader = task.reader(file, path);
    if (process.stderr.isTTY) process.stderr.write(`\r\u001b[K${file}`);
    let fine = true;
    for await (const piece of createReadStream(path, { encoding: 'utf8', highWaterMark: 1 << 18 })) {
      fine = reader.push(String(piece));
      if (!fine) break;
    }
    fine = reader.end() && fine;
    if (process.stderr.isTTY) process.stderr.write('\r\u001b[K');
    if (!fine) return undefined;
  }
  return task.finish();
}

/** The day in the name of the release, or else the newest day on which one of its foods was published. */
function dateOf(release: string, foods: readonly ImportedFood[]): string {
  const named = /\d{4}-\d{2}-\d{2}/.exec(release)?.[0];
  if (named !== undefined && isDay(named)) return named;
  // ISO dates sort as text.
  return (
    foods
      .map((food) => food.date)
      .sort()
      .at(-1) || 'not known'
  );
}

function fileNameOf(release: string): string {
  const name = release
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 80);
  return name || 'fooddata-central';
}

function skippedLines(skipped: readonly Skipped[]): readonly string[] {
  return skipped.map(({ count, what }) => `skipped ${count.toLocaleString('en-US')} ${what}`);
}

/** Writes lines beside the target first; only a whole file takes the old one's place. */
function writeWhole(target: string, lines: Iterable<string>): void {
  const fresh = `${target}.new`;
  mkdirSync(dirname(target), { recursive: true });
  try {
    const file = openSync(fresh, 'w');
    try {
      let batch = '';
      for (const line of lines) {
        batch += `${line}\n`;
        if (batch.length < 1 << 16) continue;
        writeFileSync(file, batch);
        batch = '';
      }
      writeFileSync(file, batch);
    } finally {
      closeSync(file);
    }
    renameSync(fresh, target);
  } catch (error) {
    rmSync(fresh, { force: true });
    throw error;
  }
}
