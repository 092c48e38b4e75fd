import { loadRegister, type Register } from '../cautions/index.js';
import type { Report } from '../diagnostics/index.js';
import { createFrames, type FrameMaker, loadPictures, type Pictures } from '../figures/index.js';
import {
  type Foods,
  isTaken,
  loadFoods,
  loadSources,
  loadTerms,
  SOURCES_FILE,
  type Sources,
  TERMS_FILE,
  type TermList,
  withSources,
} from '../records/index.js';
import {
  LOCAL_FOODS_FILE,
  LOCAL_NOTICES_FILE,
  LOCAL_PRICES_FILE,
  type LocalLines,
  type LocalPrices,
  NO_LINES,
  NO_PRICES,
  type Notice,
  noPricesAt,
  noticeSource,
  readLines,
  readLocalFoods,
  readNotices,
  readPrices,
  readSite,
  type Site,
} from '../records/local/index.js';
import { type Fonts, loadFonts, SUBSET_ENGINE } from '../text/index.js';
import { readText, type Workspace } from './workspace.js';

/** Tables and packs that every lesson of a workspace shares. */
export interface Tables {
  readonly foods: Foods;
  readonly sources: Sources;
  readonly terms: TermList;
  readonly register: Register;
}

/** The site of a lesson: its lines, places, prices and notices, each with a date. */
export interface Local {
  readonly site?: Site;
  readonly lines: LocalLines;
  readonly prices: LocalPrices;
  readonly notices: readonly Notice[];
}

const REGISTER = [
  'a-salts-and-fluids',
  'b-carbohydrate',
  'c-weight',
  'd-medicines-and-foods',
  'directives',
  'e-patterns',
  'f-allergens',
  'flags',
  'g-children-and-swallowing',
  'h-food-safety',
  'i-activity',
  'lines',
  'notes',
  'refusals',
  'sources',
  'topics',
  'values',
];

/** Loads the program's tables. A missing part of the cautions' register is our own mistake and throws. */
export function loadTables(workspace: Workspace, report: Report): Tables {
  const text = (path: string) => readText(workspace.asset, path);
  const foods = loadFoods({ read: text }, report);
  const sources = loadSources(text(SOURCES_FILE) ?? '', report);
  const terms = loadTerms(text(TERMS_FILE) ?? '', report);
  const register = loadRegister(
    REGISTER.map((name) => {
      const file = `cautions/${name}.yaml`;
      const found = text(file);
      if (found === undefined)
        throw new Error(`assets/${file} is missing: without it cautions would be lost.`);
      return { file: `assets/${file}`, text: found };
    }),
    report,
  );
  return { foods, sources, terms, register };
}

/**
 * Reads the pack of a site: the workspace's own, or the program's example. Prices name foods of these tables; no
 * notice takes the id of one of their sources.
 */
export function loadLocal(
  workspace: Workspace,
  site: string | undefined,
  { foods, sources }: Pick<Tables, 'foods' | 'sources'>,
  on: string,
  report: Report,
): Local {
  if (site === undefined) return { lines: NO_LINES, prices: NO_PRICES, notices: [] };
  const read = (name: string) => packFile(workspace, site, name);
  const linesFile = read('lines.yaml');
  const siteFile = read('site.yaml');
  const lines = linesFile ? readLines(linesFile.text, linesFile.file, on, report) : NO_LINES;
  const found = siteFile ? readSite(siteFile.text, siteFile.file, lines, on, report) : undefined;
  const noticesFile = read(LOCAL_NOTICES_FILE);
  const context = { lines, on, isTaken: (id: string) => isTaken(sources, id) };
  const notices = noticesFile ? readNotices(noticesFile.text, noticesFile.file, context, report) : [];
  if (!found) return { lines, prices: NO_PRICES, notices };
  const prices = read(LOCAL_PRICES_FILE);
  return {
    lines,
    notices,
    site: found,
    prices: prices ? readPrices(prices.text, prices.file, found, foods, report) : noPricesAt(found),
  };
}

/** A file of a site's pack. */
function packFile(workspace: Workspace, site: string, name: string) {
  const path = `local/${site}/${name}`;
  const text = readText(workspace.read, `assets/${path}`) ?? readText(workspace.asset, path);
  return text === undefined ? undefined : { text, file: `assets/${path}` };
}

/** The tables with the foods that a site knows from labels, each label a source. */
export function withLocalFoods(
  tables: Tables,
  workspace: Workspace,
  site: string | undefined,
  on: string,
  report: Report,
): Tables {
  const found = site === undefined ? undefined : packFile(workspace, site, LOCAL_FOODS_FILE);
  if (!found) return tables;
  const local = readLocalFoods(found.text, found.file, on, report);
  return {
    ...tables,
    foods: tables.foods.with(local, report),
    sources: withSources(
      tables.sources,
      local.map((one) => one.source),
    ),
  };
}

/** The tables with the notices of a site among the sources: a lesson's own caution may rest on one. */
export function withNotices(tables: Tables, { notices }: Pick<Local, 'notices'>): Tables {
  return { ...tables, sources: withSources(tables.sources, notices.map(noticeSource)) };
}

/** Fonts and pictures, read when first needed. */
export interface Drawers {
  readonly fonts: Fonts;
  readonly pictures: Pictures;
  readonly frames: FrameMaker;
}

export function loadDrawers(workspace: Workspace): Drawers {
  const bytes = (path: string): Uint8Array => {
    const found = workspace.asset(path);
    if (!found) throw new Error(`assets/${path} is missing.`);
    return found;
  };
  return {
    fonts: loadFonts(
      (path) => bytes(`fonts/${path}`),
      () => workspace.module(SUBSET_ENGINE),
    ),
    frames: createFrames(),
    pictures: loadPictures((path) => readText(workspace.asset, path)),
  };
}
