import type { Pulled } from '../cautions/index.js';
import { createReport, type Problem, type Report, sortProblems } from '../diagnostics/index.js';
import { checkAll } from './check.js';
import { draftCodes } from './drafts.js';
import { type BuiltFile, figuresOf, type Job, jobsFor, type LaidOut, reviewJobs } from './jobs.js';
import { makeManifest } from './manifest.js';
import { numbersFile } from './numbers.js';
import { readLesson } from './read.js';
import { readSettings, SETTINGS_FILE } from './settings.js';
import { type Drawers, loadDrawers, loadTables, type Tables } from './tables.js';
import { readText, type Workspace } from './workspace.js';

export interface BuildOptions {
  /** ISO day that everything dated is held against. */
  readonly on: string;
  /** Told before each file is made. */
  readonly progress?: (step: Progress) => void;
}

export interface Progress {
  readonly lesson: string;
  readonly file: string;
  readonly done: number;
  readonly of: number;
}

/** One built lesson: all its files, or none when its text cannot be read. */
export interface Built {
  readonly lesson: string;
  readonly files: readonly BuiltFile[];
  readonly problems: readonly Problem[];
  /** Every caution with all that pulled it; none when the text cannot be read. */
  readonly pulled: readonly Pulled[];
}

/** What several lessons of one run share: tables, fonts, pictures and settings, loaded once. */
export interface Workshop {
  readonly workspace: Workspace;
  readonly tables: Tables;
  readonly drawers: Drawers;
  readonly settings: ReturnType<typeof readSettings>;
  /** Problems of the tables and settings themselves. */
  readonly problems: readonly Problem[];
}

export function openWorkshop(workspace: Workspace): Workshop {
  const report = createReport();
  const settings = readSettings(readText(workspace.read, SETTINGS_FILE), report);
  const tables = loadTables(workspace, report);
  return { workspace, tables, drawers: loadDrawers(workspace), settings, problems: report.problems };
}

/** Builds every file of a lesson. The same text, tables and day give the same bytes. */
export async function buildLesson(shop: Workshop, lesson: string, options: BuildOptions): Promise<Built> {
  const report = createReport();
  for (const found of shop.problems) report.add(found);
  const desk = readLesson(shop.workspace, lesson, shop.tables, shop.settings, options.on, report);
  if (!desk) return { lesson, files: [], problems: sortProblems(report.problems), pulled: [] };
  const files: BuiltFile[] = [];
  const jobs = jobsFor(desk, shop);
  const steps = 2 * jobs.length;
  const tell = (job: Job, done: number) => options.progress?.({ lesson, file: job.name, done, of: steps });
  // First everything is laid out, then all of it is looked at together, then it is written.
  const isDraft = (job: Job) => draftCodes(report.problems, job.target).length > 0;
  const laid: LaidOut[] = [];
  for (const [index, job] of jobs.entries()) {
    tell(job, index);
    laid.push(await job.layOut(isDraft(job)));
  }
  for (const level of shop.settings.levels) files.push(...figuresOf(desk, shop, level, report));
  checkAll(
    desk,
    laid.map((one) => one.built),
    report,
  );
  for (const [index, job] of jobs.entries()) {
    tell(job, jobs.length + index);
    const one = laid[index];
    if (one) files.push(...(await finish(job, one, report)));
  }
  for (const job of reviewJobs(desk, shop, report))
    files.push(...(await finish(job, await job.layOut(isDraft(job)), report)));
  files.push({ path: 'numbers.json', bytes: jsonBytes(numbersFile(desk)) });
  files.push({ path: 'manifest.json', bytes: jsonBytes(makeManifest(desk, files)) });
  return { lesson, files, problems: sortProblems(report.problems), pulled: desk.pulled };
}

/**
 * Writes one output. What a Stop spoils, found before or in its own pages or in the finished file, is
 * made again with the mark of a draft on every page.
 */
async function finish(job: Job, laid: LaidOut, report: Report): Promise<readonly BuiltFile[]> {
  const codesNow = (more: readonly Problem[]) => draftCodes([...report.problems, ...more], job.target);
  let current = laid;
  const remake = async () => {
    if (!current.draft) current = await job.layOut(true);
  };
  if (codesNow(current.problems).length > 0) await remake();
  const own = createReport();
  let files = await job.write(current, codesNow(current.problems), own);
  if (own.problems.some((p) => p.severity === 'stop') && !current.draft) {
    await remake();
    files = await job.write(current, codesNow([...current.problems, ...own.problems]), own);
  }
  for (const found of [...current.problems, ...own.problems]) report.add(found);
  return files;
}

function jsonBytes(value: unknown): Uint8Array {
  return new TextEncoder().encode(`${JSON.stringify(value, null, 2)}\n`);
}
