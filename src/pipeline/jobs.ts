import { createReport, type Report } from '../diagnostics/index.js';
import type { Block, Deck, Inline, Sheet } from '../document/index.js';
import {
  type Drawing,
  draw,
  type FigureSpec,
  type Ink,
  type SignName,
  shelfMarks,
  vessel,
} from '../figures/index.js';
import { direction } from '../languages/index.js';
import type { FigureTools, Pages, Paper } from '../layout/index.js';
import { layOutSheet } from '../outputs/paper.js';
import { layOutDeck } from '../outputs/slides/index.js';
import type { Level } from '../reading/index.js';
import { writePdf } from '../writers/pdf/index.js';
import { writePng } from '../writers/png/index.js';
import { writeSvg } from '../writers/svg/index.js';
import { deckFor } from './deck-for.js';
import { draftCodes } from './drafts.js';
import type { Settings } from './settings.js';
import { type Desk, makeNotes, makeReview, makeSheet } from './sheets.js';
import type { Drawers } from './tables.js';

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

/** One thing to make: one file, or the pictures of a deck. */
export interface Job {
  readonly name: string;
  readonly make: () => Promise<readonly BuiltFile[]>;
}

interface Shop {
  readonly drawers: Drawers;
  readonly settings: Settings;
}

/** Everything that is made of one lesson in one language, in the order in which it is made. */
export function jobsFor(desk: Desk, shop: Shop, report: Report): readonly Job[] {
  const { paper: papers, levels } = shop.settings;
  const sheets = papers.flatMap((paper) => [
    ...levels.flatMap((level) => [
      sheetJob(desk, shop, report, 'handout', level, paper, 'color', `handout-${level}-${paper}.pdf`),
      sheetJob(desk, shop, report, 'handout', level, paper, 'one', `handout-${level}-oneink-${paper}.pdf`),
      sheetJob(desk, shop, report, 'worksheet', level, paper, 'color', `worksheet-${level}-${paper}.pdf`),
      sheetJob(desk, shop, report, 'key', level, paper, 'color', `worksheet-${level}-key-${paper}.pdf`),
    ]),
    sheetJob(desk, shop, report, 'staff', 'staff', paper, 'color', `staff-${paper}.pdf`),
    sheetJob(desk, shop, report, 'notes', 'staff', paper, 'color', `notes-${paper}.pdf`),
  ]);
  const reviews = papers.map((paper) =>
    sheetJob(desk, shop, report, 'review', 'staff', paper, 'color', `review-${paper}.pdf`),
  );
  return [
    ...levels.map((level) => figuresJob(desk, shop, report, level)),
    ...sheets,
    deckJob(desk, shop, report),
    ...reviews,
  ];
}

function sheetJob(
  desk: Desk,
  shop: Shop,
  lessonReport: Report,
  kind: Sheet['kind'],
  level: Level,
  paper: Paper,
  ink: Ink,
  name: string,
): Job {
  const make = async (): Promise<readonly BuiltFile[]> => {
    const spoils = { outputs: [kind], levels: [level], languages: [desk.language] };
    const target = { output: kind, level, language: desk.language };
    const attempt = async (draft: boolean) => {
      const report = createReport();
      const sheet = sheetFor(desk, shop, kind, level, draft, lessonReport, report);
      const options = {
        paper,
        ink,
        fonts: shop.drawers.fonts,
        figures: figureTools(shop),
        date: desk.on,
        subject: sheet.strip.end,
      };
      const pages = layOutSheet(sheet, options, report);
      const bytes = await writePdf(pages, { name, spoils }, report);
      return { sheet, pages, bytes, report };
    };
    const first = await attempt(draftCodes(lessonReport.problems, target).length > 0);
    const codes = draftCodes([...lessonReport.problems, ...first.report.problems], target);
    // What went wrong while the pages were laid out makes them a proof too, and every page must say so.
    const last = codes.length > 0 && first.sheet.stamp.draft === undefined ? await attempt(true) : first;
    for (const found of last.report.problems) lessonReport.add(found);
    return [built(desk, name, last.bytes, last.sheet.stamp.version, last.pages, codes)];
  };
  return { name, make };
}

function sheetFor(
  desk: Desk,
  shop: Shop,
  kind: Sheet['kind'],
  level: Level,
  draft: boolean,
  lessonReport: Report,
  report: Report,
): Sheet {
  switch (kind) {
    case 'handout':
    case 'worksheet':
    case 'key':
    case 'staff':
      return makeSheet(desk, kind, level, draft, report);
    case 'notes':
      return makeNotes(desk, deckFor(desk, shop.drawers.fonts, draft, report), draft);
    case 'review':
      return makeReview(desk, draft, lessonReport);
  }
}

function built(
  desk: Desk,
  name: string,
  bytes: Uint8Array,
  version: string,
  pages: Pages,
  draft: readonly string[],
): BuiltFile {
  return { path: `${desk.language}/${name}`, bytes, version, pages: pages.pages.length, draft };
}

function figureTools({ drawers }: Shop): FigureTools {
  return {
    draw(spec, request, report) {
      const { slack, place, ...rest } = request;
      const drawn = draw(spec, {
        ...rest,
        fonts: drawers.fonts,
        medium: 'paper',
        level: levelOf(request.level),
        slack: 1 - slack,
      });
      for (const found of drawn.problems) report.add(place && !found.place ? { ...found, place } : found);
      return drawn.drawing;
    },
    picture: (name, ink) => drawers.pictures.picture(name, ink),
  };
}

/** Staff pages draw their figures as the plain sheet does. */
function levelOf(level: Level): Exclude<Level, 'staff'> {
  return level === 'staff' ? 'plain' : level;
}

/** The paper figures of the handout as SVG files, in color. */
function figuresJob(desk: Desk, shop: Shop, lessonReport: Report, level: Exclude<Level, 'staff'>): Job {
  const name = `figures, ${level}`;
  const make = async (): Promise<readonly BuiltFile[]> => {
    const report = createReport();
    const sheet = makeSheet(desk, 'handout', level, false, report);
    const width = COLUMN;
    return figuresIn(sheet.blocks).map((figure) => {
      const drawn = draw(figure, {
        fonts: shop.drawers.fonts,
        medium: 'paper',
        ink: 'color',
        level,
        language: desk.language,
        direction: direction(desk.language),
        width,
      });
      for (const found of [...report.problems, ...drawn.problems]) lessonReport.add(found);
      const svg = writeSvg(drawn.drawing, {
        title: figure.alternative.label,
        description: figure.alternative.reading,
        language: desk.language,
        unit: 'pt',
        background: '#ffffff',
      });
      return { path: `${desk.language}/figures/${figure.id}-${level}.svg`, bytes: utf8(svg) };
    });
  };
  return { name, make };
}

/** The whole measure of a Letter page in points: 183.9 mm. */
const COLUMN = (183.9 * 72) / 25.4;

function figuresIn(blocks: readonly Block[]): FigureSpec[] {
  return blocks.flatMap((block) => {
    if (block.kind === 'figure') return [block.figure];
    if (block.kind === 'quote') return figuresIn(block.blocks);
    return block.kind === 'list' ? block.items.flatMap(figuresIn) : [];
  });
}

/** The deck as PDF, and each page as SVG and PNG. */
function deckJob(desk: Desk, shop: Shop, lessonReport: Report): Job {
  const target = { output: 'slides', level: 'plain', language: desk.language };
  const make = async (): Promise<readonly BuiltFile[]> => {
    const attempt = async (draft: boolean) => {
      const report = createReport();
      const deck = deckFor(desk, shop.drawers.fonts, draft, report);
      const pages = layOutDeck(deck, slideTools(desk, shop, report), report);
      const bytes = await writePdf(
        pages,
        { name: 'slides.pdf', spoils: { outputs: ['slides'], languages: [desk.language] } },
        report,
      );
      return { deck, pages, bytes, report };
    };
    const first = await attempt(draftCodes(lessonReport.problems, target).length > 0);
    const codes = draftCodes([...lessonReport.problems, ...first.report.problems], target);
    const last = codes.length > 0 && first.deck.draft === undefined ? await attempt(true) : first;
    for (const found of last.report.problems) lessonReport.add(found);
    const { version } = last.deck.stamp;
    const pictures = last.pages.pages.flatMap((page, index): BuiltFile[] => {
      const slide = last.deck.slides[index];
      const marks = page.items.flatMap((item) => (item.kind === 'link' ? [] : item.marks));
      const svg = writeSvg(
        { width: page.width, height: page.height, marks },
        {
          title: textOf(slide?.title ?? []),
          description: describe(slide),
          language: desk.language,
          unit: 'pt',
        },
      );
      const at = `${desk.language}/slides/${String(index + 1).padStart(2, '0')}`;
      return [
        { path: `${at}.svg`, bytes: utf8(svg), version, draft: codes },
        { path: `${at}.png`, bytes: writePng(svg, { width: 1920 }), version, draft: codes },
      ];
    });
    return [built(desk, 'slides.pdf', last.bytes, version, last.pages, codes), ...pictures];
  };
  return { name: 'slides.pdf', make };
}

function describe(slide: Deck['slides'][number] | undefined): string {
  if (!slide) return '';
  const figure = slide.stage.kind === 'show' ? slide.stage.block.figure.alternative.reading : '';
  return [figure, textOf(slide.shelf)].filter(Boolean).join(' ');
}

function textOf(inlines: readonly Inline[]): string {
  return inlines.map((inline) => inline.text).join('');
}

function utf8(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}

function slideTools(desk: Desk, { drawers }: Shop, report: Report) {
  return {
    fonts: drawers.fonts,
    ink: 'color' as const,
    date: desk.on,
    sign: (sign: SignName, size: number) => shelfMarks(sign, size, 'color'),
    picture: (name: string): Drawing | undefined =>
      vessel(name, 'color') ?? drawers.pictures.picture(name, 'color'),
    draw: (spec: FigureSpec, width: number, height: number) => {
      const drawn = draw(spec, {
        fonts: drawers.fonts,
        medium: 'screen',
        ink: 'color',
        level: 'plain',
        language: desk.language,
        direction: direction(desk.language),
        width,
        height,
      });
      for (const found of drawn.problems) report.add(found);
      return drawn.drawing;
    },
  };
}
