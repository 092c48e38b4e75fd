import { createReport, type Problem, sortProblems } from '../diagnostics/index.js';
import { type BuiltFile, jobsFor } from './jobs.js';
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
  if (!desk) return { lesson, files: [], problems: sortProblems(report.problems) };
  const files: BuiltFile[] = [];
  const jobs = jobsFor(desk, shop, report);
  for (const [done, job] of jobs.entries()) {
    options.progress?.({ lesson, file: job.name, done, of: jobs.length });
    files.push(...(await job.make()));
  }
  files.push({ path: 'numbers.json', bytes: jsonBytes(numbersFile(desk)) });
  files.push({ path: 'manifest.json', bytes: jsonBytes(makeManifest(desk, files)) });
  return { lesson, files, problems: sortProblems(report.problems) };
}

function jsonBytes(value: unknown): Uint8Array {
  return new TextEncoder().encode(`${JSON.stringify(value, null, 2)}\n`);
}
