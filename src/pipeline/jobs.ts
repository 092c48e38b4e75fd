import type { Built } from '../checks/index.js';
import { createReport, type Problem, type Report } from '../diagnostics/index.js';
import type { Sheet } from '../document/index.js';
import type { Ink } from '../figures/index.js';
import { figureTools, type Pages, type Paper } from '../layout/index.js';
import type { HolderName } from '../lesson/index.js';
import { layOutSheet } from '../outputs/paper.js';
import { layOutDeck } from '../outputs/slides/index.js';
import type { Level } from '../reading/index.js';
import { writePdf } from '../writers/pdf/index.js';
import { deckFor } from './deck-for.js';
import { draftCodes, type Target } from './drafts.js';
import { figureFiles, slideFiles, slideTools } from './pictures-out.js';
import { priceFormRows, priceNeeds } from './price-form.js';
import type { HandoutLevel, Settings } from './settings.js';
import {
  type Desk,
  hasCards,
  leadersParts,
  makeCards,
  makeNotes,
  makePriceForm,
  makeReview,
  makeSheet,
  makeWeightFree,
  type SheetKind,
} from './sheets.js';
import type { Drawers } from './tables.js';
import { weightPlaces } from './weight.js';

/** A file as it will stand below the lesson's folder in `out/`. */
export interface BuiltFile {
  readonly path: string;
  readonly bytes: Uint8Array;
  /** The version code printed on its pages. */
  readonly version?: string;
  readonly pages?: number;
  /** Codes of the Stops for which it is a proof only. */
  readonly draft?: readonly string[];
}

/** An output on its pages, before it is written. */
export interface LaidOut {
  readonly built: Built;
  readonly pages: Pages;
  readonly version: string;
  /** True when every page says that it is a draft. */
  readonly draft: boolean;
  readonly problems: readonly Problem[];
}

/** One output of a lesson: laid out first, looked at with all others, then written. */
export interface Job {
  readonly name: string;
  readonly target: Target;
  readonly layOut: (draft: boolean) => Promise<LaidOut>;
  readonly write: (laid: LaidOut, codes: readonly string[], report: Report) => Promise<readonly BuiltFile[]>;
}

/** What jobs of one lesson share. */
export interface Shop {
  readonly drawers: Drawers;
  readonly settings: Settings;
}

/**
 * Every output of one lesson in one language but the review sheet, in the order in which they are made.
 * A worksheet, a leader's page, notes and slides are made where the lesson has something for them.
 */
export function jobsFor(desk: Desk, shop: Shop): readonly Job[] {
  const { paper: papers, levels } = shop.settings;
  const has = (name: HolderName) =>
    desk.computed.lesson.parts.some((part) => part.kind === 'holder' && part.name === name);
  const sheets = papers.flatMap((paper): SheetTask[] => [
    ...levels.flatMap((level): SheetTask[] => [
      { kind: 'handout', level, paper, ink: 'color', name: `handout-${level}-${paper}.pdf` },
      { kind: 'handout', level, paper, ink: 'one', name: `handout-${level}-oneink-${paper}.pdf` },
      { kind: 'worksheet', level, paper, ink: 'color', name: `worksheet-${level}-${paper}.pdf` },
      { kind: 'key', level, paper, ink: 'color', name: `worksheet-${level}-key-${paper}.pdf` },
    ]),
    ...(weightPlaces(desk.computed).length > 0 ? weightFreeTasks(levels, paper) : []),
    { kind: 'cards', level: 'plain', paper, ink: 'one', name: `cards-${paper}.pdf` },
    { kind: 'prices', level: 'staff', paper, ink: 'one', name: `price-form-${paper}.pdf` },
    { kind: 'staff', level: 'staff', paper, ink: 'color', name: `staff-${paper}.pdf` },
    { kind: 'notes', level: 'staff', paper, ink: 'color', name: `notes-${paper}.pdf` },
  ]);
  const wanted = sheets.filter(({ kind }) => {
    if (kind === 'worksheet' || kind === 'key') return has('worksheet');
    if (kind === 'staff') return has('staff') || leadersParts(desk, []).length > 0;
    if (kind === 'cards') return hasCards(desk);
    if (kind === 'prices') return priceNeeds(desk.computed).length > 0;
    return kind === 'notes' ? has('slide') : true;
  });
  const jobs = wanted.map((task) => sheetJob(desk, shop, task));
  return has('slide') ? [...jobs, deckJob(desk, shop)] : jobs;
}

/** The review sheets: they list what the checks found in all others, so they come last. */
export function reviewJobs(desk: Desk, shop: Shop, report: Report): readonly Job[] {
  return shop.settings.paper.map((paper) =>
    sheetJob(
      desk,
      shop,
      { kind: 'review', level: 'staff', paper, ink: 'color', name: `review-${paper}.pdf` },
      report,
    ),
  );
}

function weightFreeTasks(levels: readonly HandoutLevel[], paper: Paper): SheetTask[] {
  return levels.flatMap((level): SheetTask[] => {
    const name = `handout-${level}-weightfree`;
    const task = { kind: 'handout' as const, level, paper, weightFree: true as const };
    return [
      { ...task, ink: 'color', name: `${name}-${paper}.pdf` },
      { ...task, ink: 'one', name: `${name}-oneink-${paper}.pdf` },
    ];
  });
}

interface SheetTask {
  readonly kind: SheetKind;
  readonly level: Level;
  readonly paper: Paper;
  readonly ink: Ink;
  readonly name: string;
  readonly weightFree?: true;
}

function sheetJob(desk: Desk, shop: Shop, task: SheetTask, found?: Report): Job {
  const { kind, level, paper, ink, name, weightFree } = task;
  const target = { output: weightFree ? 'weightfree' : kind, level, language: desk.language };
  const layOut = async (draft: boolean): Promise<LaidOut> => {
    const report = createReport();
    const sheet = weightFree
      ? makeWeightFree(desk, level, draft, report)
      : await sheetFor(desk, shop, kind, level, draft, report, found);
    const { drawers } = shop;
    const options = {
      paper,
      ink,
      fonts: drawers.fonts,
      figures: figureTools(drawers.fonts, drawers.pictures.picture),
      date: desk.on,
      subject: sheet.strip.end,
    };
    const pages = layOutSheet(sheet, options, report);
    return {
      built: { kind: 'sheet', name, sheet, pages },
      pages,
      version: sheet.stamp.version,
      draft,
      problems: report.problems,
    };
  };
  const write = pdfWriter(desk, name, target);
  const isFirst = kind === 'prices' && paper === shop.settings.paper[0];
  return { name, target, layOut, write: isFirst ? withRows(desk, write) : write };
}

/** Beside the form to write on, the same rows to type into. */
function withRows(desk: Desk, write: Job['write']): Job['write'] {
  return async (laid, codes, report) => {
    const bytes = new TextEncoder().encode(priceFormRows(priceNeeds(desk.computed)));
    return [...(await write(laid, codes, report)), { path: `${desk.language}/price-form.csv`, bytes }];
  };
}

async function sheetFor(
  desk: Desk,
  shop: Shop,
  kind: SheetKind,
  level: Level,
  draft: boolean,
  report: Report,
  found: Report | undefined,
): Promise<Sheet> {
  switch (kind) {
    case 'handout':
    case 'worksheet':
    case 'key':
    case 'staff':
      return makeSheet(desk, kind, level, draft, report);
    case 'cards':
      return makeCards(desk, draft, report);
    case 'prices':
      return makePriceForm(desk, draft);
    case 'notes':
      return makeNotes(desk, await deckFor(desk, shop.drawers, draft, report), draft);
    case 'review':
      return makeReview(desk, draft, found ?? report);
  }
}

function pdfWriter(desk: Desk, name: string, target: Target): Job['write'] {
  return async (laid, codes, report) => {
    const spoils = { outputs: [target.output], levels: [target.level], languages: [target.language] };
    const bytes = await writePdf(laid.pages, { name, spoils }, report);
    const draft = [...new Set([...codes, ...draftCodes(report.problems, target)])];
    return [
      {
        path: `${desk.language}/${name}`,
        bytes,
        version: laid.version,
        pages: laid.pages.pages.length,
        draft,
      },
    ];
  };
}

/** The deck as PDF, and each page as SVG and PNG. */
function deckJob(desk: Desk, shop: Shop): Job {
  const name = 'slides.pdf';
  const target = { output: 'slides', level: 'plain', language: desk.language };
  const writePages = pdfWriter(desk, name, target);
  return {
    name,
    target,
    async layOut(draft) {
      const report = createReport();
      const deck = await deckFor(desk, shop.drawers, draft, report);
      const pages = await layOutDeck(deck, slideTools(desk, shop.drawers, report), report);
      return {
        built: { kind: 'deck', name, deck, pages },
        pages,
        version: deck.stamp.version,
        draft,
        problems: report.problems,
      };
    },
    async write(laid, codes, report) {
      const files = await writePages(laid, codes, report);
      return laid.built.kind === 'deck'
        ? [...files, ...slideFiles(laid.built.deck, laid.pages, codes)]
        : files;
    },
  };
}

/** The paper figures of one handout as files. */
export function figuresOf(desk: Desk, shop: Shop, level: HandoutLevel, report: Report): readonly BuiltFile[] {
  const sheet = makeSheet(desk, 'handout', level, false, createReport());
  return figureFiles(sheet, level, shop.drawers, report);
}
