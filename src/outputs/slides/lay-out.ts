import type { Report } from '../../diagnostics/index.js';
import type { Deck, Inline, Slide } from '../../document/index.js';
import type { Drawing, FigureSpec, Ink, Mark, SignName } from '../../figures/index.js';
import type { Page, Pages } from '../../layout/index.js';
import { createTree, type Draft, type Tree } from '../../layout/structure.js';
import { type Fonts, type Paragraph, setParagraph } from '../../text/index.js';
import { createEasel, type Easel } from './easel.js';
import { slideProblem } from './problems.js';
import { paintStage } from './stages.js';
import { SHELF, SLIDE, STAGE_WIDTH, TITLES, TYPE } from './tokens.js';

/** What the deck asks of fonts and figures. */
export interface SlideTools {
  readonly fonts: Fonts;
  readonly ink: Ink;
  /** Draws a figure for a stage of this size. */
  readonly draw: (spec: FigureSpec, width: number, height: number) => Drawing;
  /** The vessel of a form, its left edge at 0 and its foot on y = 0. */
  readonly sign: (sign: SignName, size: number) => readonly Mark[];
  /** A vessel or food picture by name, in its own box; nothing when there is none. */
  readonly picture: (name: string) => Drawing | undefined;
  /** ISO day of the build. */
  readonly date: string;
}

/** A deck as pages of 16 : 9, a page a step, tagged, with a bookmark a slide. */
export function layOutDeck(deck: Deck, tools: SlideTools, report: Report): Pages {
  const tree = createTree();
  const titles = new Map<string, number>();
  const pages = deck.slides.map((slide, index) => {
    const title = textOf(slide.title);
    const before = titles.get(title);
    if (before !== undefined) {
      report.add(
        slideProblem(
          'slides/same-title',
          `Slides ${before} and ${slide.number} have the same title: “${title}”.`,
          { hint: 'Give each its own.' },
        ),
      );
    }
    titles.set(title, slide.number);
    return paintSlide(slide, index, deck, tools, tree, report);
  });
  return {
    title: deck.title,
    language: deck.language,
    direction: deck.direction,
    pages,
    structure: tree.finish(),
    outline: outlineOf(deck),
    date: tools.date,
  };
}

/** Whether words stand on the shelf in as many lines as it may have. */
export function shelfFits(words: readonly Inline[], language: string, fonts: Fonts): boolean {
  const spans = words.map((inline) => ({
    text: inline.text,
    ...(inline.strong ? { weight: 800 as const } : {}),
  }));
  const style = { language, direction: 'ltr' as const, ...TYPE.small };
  return setParagraph(fonts, spans, style, { width: SHELF_WIDTH }).lines.length <= SHELF.most;
}

function outlineOf(deck: Deck): Pages['outline'] {
  return deck.slides.flatMap((slide, page) => {
    const isStep = deck.slides[page - 1]?.number === slide.number;
    return isStep ? [] : [{ title: `${slide.number}. ${textOf(slide.title)}`, page }];
  });
}

function textOf(inlines: Slide['title']): string {
  return inlines.map((inline) => inline.text).join('');
}

function paintSlide(
  slide: Slide,
  index: number,
  deck: Deck,
  tools: SlideTools,
  tree: Tree,
  report: Report,
): Page {
  const section = tree.add(tree.root, 'Sect');
  const easel = createEasel({
    fonts: tools.fonts,
    language: deck.language,
    direction: deck.direction,
    ink: tools.ink,
    tree,
    report,
    name: `Slide ${slide.number}`,
  });
  const shelf = easel.set(slide.shelf, TYPE.small, SHELF_WIDTH);
  if (shelf.lines.length > SHELF.most) {
    report.add(
      slideProblem(
        'slides/too-long',
        `Slide ${slide.number}, shelf: ${shelf.lines.length - SHELF.most} lines too many.`,
        { hint: 'Shorten the notes or the basis, or show fewer things on the slide.' },
      ),
    );
  }
  const lines = Math.min(SHELF.most, Math.max(SHELF.least, shelf.lines.length));
  const shelfHeight = SHELF.line + SHELF.padding + lines * SHELF.leading;
  const floor = SLIDE.height - shelfHeight;
  paintWall(easel, floor, shelfHeight);
  const heading = tree.add(section, index === 0 ? 'H1' : 'H2');
  const below = paintTitle(slide, heading, easel);
  paintStage(slide, { y: below, floor, page: index }, section, easel, tools);
  paintShelf(slide, shelf, section, easel, floor, shelfHeight);
  if (deck.draft) paintDraft(deck.draft, easel);
  return {
    width: SLIDE.width * SLIDE.pointsPerPixel,
    height: SLIDE.height * SLIDE.pointsPerPixel,
    items: easel.items,
  };
}

const NUMBER_WIDTH = 60;
/** The words of the shelf, clear of the slide's number. */
const SHELF_WIDTH = STAGE_WIDTH - SHELF.clear - NUMBER_WIDTH;

/** The wall and the shelf's front: the background, the same on every slide. */
function paintWall(easel: Easel, floor: number, height: number): void {
  const { colors } = easel;
  easel.backdrop([
    easel.rect({ x: 0, y: 0, width: SLIDE.width, height: floor }, { fill: colors.screen }),
    easel.rect({ x: 0, y: floor, width: SLIDE.width, height }, { fill: colors.tint }),
    easel.rect({ x: 0, y: floor, width: SLIDE.width, height: SHELF.line }, { fill: colors.ink }),
  ]);
}

/** Paints the title at the largest size that takes two lines at most; returns where the stage goes on. */
function paintTitle(slide: Slide, node: Draft, easel: Easel): number {
  const { kind } = slide.stage;
  if (kind === 'open' || kind === 'say' || kind === 'do') return paintLargeTitle(slide, node, easel);
  const tries = TITLES.map((type) =>
    easel.set(slide.title, type, STAGE_WIDTH, { lookHere: kind !== 'caution' }),
  );
  const title =
    tries.find((t) => t.lines.length === 1) ?? tries.find((t) => t.lines.length <= 2) ?? tries.at(-1);
  if (!title) return SLIDE.top;
  if (title.lines.length > 2)
    easel.report.add(
      slideProblem('slides/too-long', `${easel.name}: the title takes ${title.lines.length} lines.`, {
        hint: 'Two lines at most.',
      }),
    );
  easel.words(node, title, SLIDE.side, SLIDE.top, STAGE_WIDTH);
  return SLIDE.top + title.height + 20;
}

function paintLargeTitle(slide: Slide, node: Draft, easel: Easel): number {
  const { kind } = slide.stage;
  const type = kind === 'open' ? TYPE.open : kind === 'say' ? TYPE.sentence : TYPE.head;
  const hasPicture = (kind === 'say' && slide.stage.picture !== undefined) || (kind === 'do' && true);
  const width = kind === 'say' && !hasPicture ? STAGE_WIDTH - 80 : 800;
  const title = easel.set(slide.title, type, width, { lookHere: true, balance: kind !== 'do' });
  if (title.lines.length > 5)
    easel.report.add(
      slideProblem('slides/too-long', `${easel.name}: the sentence takes ${title.lines.length} lines.`, {
        hint: 'Four at most.',
      }),
    );
  easel.words(node, title, SLIDE.side, SLIDE.top + 10, width);
  return SLIDE.top + 10 + title.height + 24;
}

/** Notes, basis and sources stand on the shelf's front edge: content, never an artifact. */
function paintShelf(
  slide: Slide,
  shelf: Paragraph<never> | ReturnType<Easel['set']>,
  section: Draft,
  easel: Easel,
  floor: number,
  height: number,
): void {
  const { tree } = easel;
  if (shelf.lines.length > 0) {
    const free = height - SHELF.line - Math.min(SHELF.most, shelf.lines.length) * SHELF.leading;
    easel.words(
      tree.add(section, 'P'),
      shelf as ReturnType<Easel['set']>,
      SLIDE.side,
      floor + SHELF.line + free / 2,
      SHELF_WIDTH,
    );
  }
  const number = easel.set([{ text: String(slide.number), strong: true }], TYPE.small, NUMBER_WIDTH, {
    align: 'end',
  });
  const top = floor + SHELF.line + (height - SHELF.line - SHELF.leading) / 2;
  const marks = number.lines.map((line) => ({
    kind: 'text' as const,
    x: easel.left(SLIDE.side + STAGE_WIDTH - NUMBER_WIDTH, NUMBER_WIDTH),
    baseline: top + line.baseline,
    line,
  }));
  easel.backdrop(marks);
}

/** While a Stop stands, every slide says so. */
function paintDraft(words: string, easel: Easel): void {
  const text = easel.set(
    [{ text: words, strong: true }],
    { size: 32, leading: 42, weight: 800 },
    STAGE_WIDTH,
    { color: easel.colors.white },
  );
  const width = text.width + 32;
  const box = { x: SLIDE.width - width, y: 0, width, height: 46 };
  const line = text.lines[0];
  if (!line) return;
  easel.backdrop([
    easel.rect(box, { fill: easel.colors.ink }),
    { kind: 'text', x: easel.left(box.x + 16, text.width) - line.x, baseline: 2 + line.baseline, line },
  ]);
}
