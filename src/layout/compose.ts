import { createReport, type Place, type Problem, type Report } from '../diagnostics/index.js';
import type { Block, Sheet } from '../document/index.js';
import type { Ink } from '../figures/index.js';
import type { Fonts } from '../text/index.js';
import type { Desk, FigureTools, PaperBox } from './desk.js';
import { breakPages, type PlacedPage } from './flow.js';
import { createOutline, outlineOf } from './outline.js';
import type { Pages } from './pages.js';
import { cautionBoxes } from './parts/caution.js';
import { type DraftMark, layDraftMark } from './parts/draft.js';
import { type Footer, layFooter } from './parts/footer.js';
import { type Mark, mastheadBox, smallMastheadBox } from './parts/masthead.js';
import { noticeBoxes } from './parts/notices.js';
import { paintRule, RULE_AND_SPACE, sectionBoxes, sectionsOf } from './parts/section.js';
import { sourcesBoxes } from './parts/sources.js';
import { createPen, type PageDraft } from './pen.js';
import { layoutProblem } from './problems.js';
import { createTree } from './structure.js';
import { gridFor, type Paper, SECTION_SPACE, SPACE } from './tokens.js';
import { typeFor } from './type.js';
import { createTypesetter } from './typeset.js';

/** What one kind of sheet does in its own way. */
export interface SheetPlan {
  /** A band with the message and a large emblem, or a small title with a mark. */
  readonly masthead: 'band' | { readonly mark?: Mark };
  /** Badges of heads and questions. */
  readonly numbers: ReadonlyMap<Block, number>;
  /** Pages that one piece of paper has; more are reported. */
  readonly mostPages?: number;
  /** The slack is used to come down to so many pages; more are no fault. */
  readonly aimPages?: number;
}

export interface PaperOptions {
  readonly paper: Paper;
  readonly ink: Ink;
  readonly fonts: Fonts;
  readonly figures: FigureTools;
  /** ISO day that the build depends on. */
  readonly date: string;
  readonly subject?: string;
}

/**
 * Space that may give, in the order in which it is taken: first in the figures, then above sections.
 * `price` is what it costs, in the measure of page breaks: it is paid only for better pages.
 */
const SLACK = [
  { figures: 0, section: SECTION_SPACE.loose, price: 0 },
  { figures: 0.5, section: SECTION_SPACE.loose, price: 3 },
  { figures: 1, section: SECTION_SPACE.loose, price: 6 },
  { figures: 1, section: SECTION_SPACE.tight, price: 9 },
] as const;
type Slack = (typeof SLACK)[number];
/** A last page filled less than this is worth all the slack if that saves the page. */
const NEARLY_EMPTY = 0.12;

/**
 * Lays a sheet out on pages. Where it needs more pages than it may have, or leaves one half empty, the
 * slack is used; lines that are still too much are reported and the sheet is built all the same.
 */
export function compose(sheet: Sheet, plan: SheetPlan, options: PaperOptions, report: Report): Pages {
  let chosen = layOut(sheet, plan, options, SLACK[0]);
  for (const slack of SLACK.slice(1)) {
    if (!couldGain(chosen, plan, slack.price)) break;
    const tighter = layOut(sheet, plan, options, slack);
    if (better(tighter, chosen, plan)) chosen = tighter;
  }
  for (const problem of chosen.problems) report.add(problem);
  reportLength(sheet, plan, chosen, report);
  return paint(sheet, chosen, options);
}

function couldGain(chosen: Attempt, plan: SheetPlan, price: number): boolean {
  return (
    chosen.pages.length > (plan.aimPages ?? Number.POSITIVE_INFINITY) ||
    lastIsNearlyEmpty(chosen) ||
    chosen.cost > price
  );
}

/** Fewer pages where there are too many or the last is nearly empty; else more even ones for their price. */
function better(tighter: Attempt, chosen: Attempt, plan: SheetPlan): boolean {
  if (tighter.pages.length !== chosen.pages.length) {
    const tooMany = chosen.pages.length > (plan.aimPages ?? Number.POSITIVE_INFINITY);
    return tighter.pages.length < chosen.pages.length && (tooMany || lastIsNearlyEmpty(chosen));
  }
  return tighter.cost < chosen.cost;
}

function lastIsNearlyEmpty({ pages, room }: Attempt): boolean {
  return pages.length > 1 && (pages.at(-1)?.depth ?? room) < NEARLY_EMPTY * room;
}

interface Attempt {
  readonly desk: Desk;
  readonly pages: readonly PlacedPage<PageDraft>[];
  readonly room: number;
  /** Of the page breaks and of the slack that was used. */
  readonly cost: number;
  readonly problems: readonly Problem[];
  readonly footer: Footer;
  readonly draft: DraftMark | undefined;
}

function layOut(sheet: Sheet, plan: SheetPlan, options: PaperOptions, slack: Slack): Attempt {
  const { fonts, figures, paper, ink } = options;
  const report = createReport();
  const grid = gridFor(paper);
  const tree = createTree();
  const pen = createPen(grid, sheet.direction, ink);
  const set = createTypesetter({
    fonts,
    tree,
    language: sheet.language,
    direction: sheet.direction,
    ink: pen.colors.ink,
    report,
  });
  const desk: Desk = {
    sheet,
    grid,
    pen,
    type: typeFor(sheet),
    tree,
    set,
    figures,
    report,
    slack: slack.figures,
    outline: createOutline(),
  };
  const draft =
    sheet.stamp.draft === undefined
      ? undefined
      : layDraftMark(desk, tree.add(tree.root, 'P'), sheet.stamp.draft);
  const boxes = sheetBoxes(desk, plan, slack.section);
  const footer = layFooter(desk, tree.add(tree.root, 'Sect'));
  const room = grid.height - grid.safe - footer.height - grid.clear - grid.top;
  const opening = {
    height: RULE_AND_SPACE,
    paint: (page: PageDraft, top: number) => paintRule(desk, page, top),
  };
  const { pages, cost } = breakPages(boxes, { height: room, opening });
  return { desk, pages, room, cost: cost + slack.price, problems: report.problems, footer, draft };
}

/** Title, message, cautions, notices, sections and sources, in this order on every sheet. */
function sheetBoxes(desk: Desk, plan: SheetPlan, sectionSpace: number): PaperBox[] {
  const { sheet } = desk;
  const band = plan.masthead === 'band' && sheet.message.length > 0;
  const mark =
    plan.masthead === 'band' ? { kind: 'emblem' as const, picture: sheet.emblem } : plan.masthead.mark;
  const masthead = band ? mastheadBox(desk) : smallMastheadBox(desk, mark);
  const cautions = cautionBoxes(desk, band ? SPACE.messageToCaution : SPACE.titleToCaution);
  const notices = noticeBoxes(desk);
  const sections = sectionsOf(sheet.blocks).flatMap((section) =>
    sectionBoxes(desk, section, { before: sectionSpace, numbers: plan.numbers }),
  );
  return [masthead, ...cautions, ...notices, ...sections, ...sourcesBoxes(desk, sectionSpace)];
}

function paint(sheet: Sheet, attempt: Attempt, options: PaperOptions): Pages {
  const { desk, pages, footer, draft } = attempt;
  const { grid, tree } = desk;
  const drafts = pages.map(({ boxes, openings }, index): PageDraft => {
    const page: PageDraft = { index, items: [] };
    draft?.(page, index === 0);
    for (const opening of openings) opening.paint(page, grid.top + opening.top);
    for (const { box, top } of boxes) box.paint(page, grid.top + top);
    footer.paint(page, index + 1, pages.length, index === pages.length - 1);
    return page;
  });
  return {
    title: sheet.title,
    language: sheet.language,
    direction: sheet.direction,
    ...(options.subject === undefined ? {} : { subject: options.subject }),
    pages: drafts.map(({ items }) => ({ width: grid.width, height: grid.height, items })),
    structure: tree.finish(),
    outline: outlineOf(tree.root, drafts),
    date: options.date,
  };
}

function reportLength(sheet: Sheet, plan: SheetPlan, { desk, pages, room }: Attempt, report: Report): void {
  for (const page of pages.filter((p) => p.over)) {
    const place = placeOn([page]) ?? placeOf(sheet.blocks);
    const lines = Math.ceil((page.depth - room) / desk.type.body.leading);
    report.add(
      layoutProblem(
        'layout/too-tall',
        `Something that may not be split is ${count(lines, 'line')} taller than a page.`,
        {
          hint: 'Make it shorter, or turn it into several.',
          ...(place ? { place } : {}),
        },
      ),
    );
  }
  const most = plan.mostPages;
  if (most === undefined || pages.length <= most) return;
  const over = pages.slice(most).reduce((sum, page) => sum + page.depth, 0);
  const lines = Math.ceil(over / desk.type.body.leading);
  const place = placeOn(pages.slice(most)) ?? placeOf(sheet.blocks);
  report.add(
    layoutProblem(
      'layout/too-long',
      `The sheet is ${count(lines, 'line')} too long for ${count(most, 'side')} of paper.`,
      {
        hint: `Cut about ${count(lines, 'line')}, or leave a part to a fuller level.${noticesHint(sheet)}`,
        actual: count(pages.length, 'page'),
        expected: [`at most ${most}`],
        ...(place ? { place } : {}),
      },
    ),
  );
}

function noticesHint({ notices = [] }: Sheet): string {
  return notices.length > 0 ? ' The notices take room too: leave them to another page.' : '';
}

function count(number: number, word: string): string {
  return `${number} ${word}${number === 1 ? '' : 's'}`;
}

/** Where the first thing on these pages that knows stands in the source. */
function placeOn(pages: readonly PlacedPage<PageDraft>[]): Place | undefined {
  return pages.flatMap((page) => page.boxes).find(({ box }) => box.place)?.box.place;
}

/** Where the sheet's words come from: its first block that knows. */
function placeOf(blocks: readonly Block[]): Place | undefined {
  return blocks.find((block) => block.place)?.place;
}
