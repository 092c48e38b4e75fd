import type { Report } from '../../diagnostics/index.js';
import type { Deck, Inline, Slide } from '../../document/index.js';
import type { Drawing, FigureSpec, Frame, FrameMaker, Ink, Mark, SignName } from '../../figures/index.js';
import type { Page, Pages } from '../../layout/index.js';
import { createTree, type Draft, type Tree } from '../../layout/structure.js';
import { type Fonts, setParagraph } from '../../text/index.js';
import { createEasel, type Easel } from './easel.js';
import { slideProblem } from './problems.js';
import { paintStage } from './stages.js';
import { SHELF, SLIDE, STAGE_WIDTH, TITLES, TYPE } from './tokens.js';

/** What the deck asks of fonts and figures. */
export interface SlideTools {
  readonly fonts: Fonts;
  readonly frames: FrameMaker;
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
export async function layOutDeck(deck: Deck, tools: SlideTools, report: Report): Promise<Pages> {
  const tree = createTree();
  const titles = new Map<string, number>();
  const pages: Page[] = [];
  for (const [index, slide] of deck.slides.entries()) {
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
    pages.push(await paintSlide(slide, index, deck, tools, tree, report));
  }
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

async function paintSlide(
  slide: Slide,
  index: number,
  deck: Deck,
  tools: SlideTools,
  tree: Tree,
  report: Report,
): Promise<Page> {
  const section = tree.add(tree.root, 'Sect');
  const { fonts, ink, frames } = tools;
  const { language, direction } = deck;
  const name = `Slide ${slide.number}`;
  const easel = createEasel({ fonts, language, direction, ink, tree, report, name });
  const title = setTitle(slide, easel);
  const shelf = easel.set(slide.shelf, TYPE.small, SHELF_WIDTH);
  const over = shelf.lines.length - SHELF.most;
  if (over > 0) {
    report.add(
      slideProblem('slides/too-long', `${name}, shelf: ${over} lines too many.`, {
        hint: 'Shorten the notes or the basis, or show fewer things on the slide.',
      }),
    );
  }
  const { stage } = slide;
  // Frames are laid out from the left; the easel mirrors what it paints.
  const frame = await frames({
    master: stage.kind,
    format: '16:9',
    shelfLines: shelf.lines.length >= 4 ? 4 : shelf.lines.length === 3 ? 3 : 2,
    titleHeight: title.height,
    ...('question' in stage ? { columns: Math.max(1, stage.question.choices.length) } : {}),
    direction: 'ltr',
  });
  paintWall(easel, frame);
  const at = frame.box('title');
  easel.words(tree.add(section, index === 0 ? 'H1' : 'H2'), title, at.x, at.y, at.width);
  paintStage(slide, { frame, floor: frame.box('shelf').y, page: index }, section, easel, tools);
  paintShelf(shelf, section, easel, frame);
  paintNumber(slide, easel, frame);
  if (deck.draft) paintDraft(deck.draft, easel);
  return {
    width: SLIDE.width * SLIDE.pointsPerPixel,
    height: SLIDE.height * SLIDE.pointsPerPixel,
    items: easel.items,
  };
}

/** The words of the shelf, clear of the slide's number. */
const SHELF_WIDTH = STAGE_WIDTH - SHELF.clear - SHELF.number;
/** Room for the one sentence, or for the head of an activity beside its minutes. */
const LARGE_WIDTH = 800;

/** The wall and the shelf's front: the background, the same on every slide. */
function paintWall(easel: Easel, frame: Frame): void {
  const { colors } = easel;
  const shelf = frame.box('shelf');
  easel.backdrop([
    easel.rect({ x: 0, y: 0, width: frame.width, height: shelf.y }, { fill: colors.screen }),
    easel.rect(shelf, { fill: colors.tint }),
    easel.rect({ ...shelf, height: SHELF.line }, { fill: colors.ink }),
  ]);
}

type SetWords = ReturnType<Easel['set']>;

/** The title at the largest size that takes one line, or two; large ones as balanced lines. */
function setTitle(slide: Slide, easel: Easel): SetWords {
  const { kind } = slide.stage;
  const large =
    kind === 'open' ? TYPE.open : kind === 'say' ? TYPE.sentence : kind === 'do' ? TYPE.head : undefined;
  const tooLong = (lines: number, most: number) => {
    if (lines <= most) return;
    easel.report.add(
      slideProblem('slides/too-long', `${easel.name}: the title takes ${lines} lines.`, {
        hint: `${most} at most.`,
      }),
    );
  };
  if (large) {
    const title = easel.set(slide.title, large, LARGE_WIDTH, { lookHere: true, balance: kind !== 'do' });
    tooLong(title.lines.length, kind === 'say' ? 5 : 3);
    return title;
  }
  const tries = TITLES.map((type) =>
    easel.set(slide.title, type, STAGE_WIDTH, { lookHere: kind !== 'caution' }),
  );
  const [first] = tries;
  const title =
    tries.find((t) => t.lines.length === 1) ??
    tries.find((t) => t.lines.length <= 2) ??
    tries.at(-1) ??
    first;
  if (!title) throw new Error('No size is left for a title.');
  tooLong(title.lines.length, 2);
  return title;
}

/** Notes, basis and sources stand on the shelf's front edge: content, never an artifact. */
function paintShelf(shelf: SetWords, section: Draft, easel: Easel, frame: Frame): void {
  if (shelf.lines.length === 0) return;
  const box = frame.box('words');
  const free = box.height - Math.min(SHELF.most, shelf.lines.length) * SHELF.leading;
  easel.words(easel.tree.add(section, 'P'), shelf, box.x, box.y + free / 2, SHELF_WIDTH);
}

function paintNumber(slide: Slide, easel: Easel, frame: Frame): void {
  const box = frame.box('number');
  const number = easel.set([{ text: String(slide.number), strong: true }], TYPE.small, box.width, {
    align: 'end',
  });
  const marks = number.lines.map(
    (line): Mark => ({
      kind: 'text',
      x: easel.left(box.x, box.width),
      baseline: box.y + line.baseline,
      line,
    }),
  );
  easel.backdrop(marks);
}

/** While a Stop stands, every slide says so. */
function paintDraft(words: string, easel: Easel): void {
  const type = { size: 32, leading: 42, weight: 800 } as const;
  const text = easel.set([{ text: words, strong: true }], type, STAGE_WIDTH, { color: easel.colors.white });
  const width = text.width + 32;
  const box = { x: SLIDE.width - width, y: 0, width, height: 46 };
  const line = text.lines[0];
  if (!line) return;
  const x = easel.left(box.x + 16, text.width) - line.x;
  easel.backdrop([
    easel.rect(box, { fill: easel.colors.ink }),
    { kind: 'text', x, baseline: 2 + line.baseline, line },
  ]);
}
