import type { Report } from '../../diagnostics/index.js';
import type { Deck, Inline, Slide } from '../../document/index.js';
import type { Frame } from '../../figures/index.js';
import type { Page, Pages } from '../../layout/index.js';
import { createTree, type Tree } from '../../layout/structure.js';
import { createEasel, type Easel, type SetWords } from './easel.js';
import { hide } from './hidden.js';
import { slideProblem } from './problems.js';
import { paintDraft, paintNumber, paintWall, setShelf, shelfLines, shelfPainter } from './shelf.js';
import { paintStage, stageFits } from './stages.js';
import { checkTitle, titlesOf } from './title.js';
import { SHELF, SLIDE, STAGE_WIDTH } from './tokens.js';
import type { SlideTools } from './tools.js';
import { checkWords } from './words.js';

/**
 * A deck as pages of 16 : 9, a page a step, tagged, with a bookmark a slide. What does not fit is
 * reported and set all the same, so that a draft shows it.
 */
export async function layOutDeck(deck: Deck, tools: SlideTools, report: Report): Promise<Pages> {
  checkTitles(deck, report);
  const tree = createTree();
  const plans = await Promise.all(deck.slides.map((slide) => planSlide(slide, deck, tools, tree, report)));
  const pages: Page[] = [];
  for (const [index, plan] of sharingPlaces(plans).entries())
    pages.push(await paintSlide(plan, index, deck, tools));
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

function checkTitles({ slides }: Deck, report: Report): void {
  const seen = new Map<string, Slide>();
  for (const slide of slides) {
    const title = textOf(slide.title);
    const before = seen.get(title);
    if (before)
      report.add(
        slideProblem(
          'slides/same-title',
          `Slides ${before.number} and ${slide.number} have the same title: “${title}”.`,
          { hint: 'Give each its own.', ...(slide.place ? { place: slide.place } : {}) },
        ),
      );
    else seen.set(title, slide);
  }
}

function outlineOf(deck: Deck): Pages['outline'] {
  return deck.slides.flatMap((slide, page) => {
    const isStep = deck.slides[page - 1]?.number === slide.number;
    return isStep ? [] : [{ title: `${slide.number}. ${textOf(slide.title)}`, page }];
  });
}

function textOf(inlines: readonly Inline[]): string {
  return inlines.map((inline) => inline.text).join('');
}

/** Between a title and the question below it. */
const ABOVE_PROMPT = 8;

/** A slide's words before they have places. */
interface Plan {
  readonly slide: Slide;
  readonly easel: Easel;
  /** Nothing where the stage takes all the room: the title is then heard and not seen. */
  readonly title?: SetWords;
  /** The question itself, where the title is another sentence. */
  readonly prompt?: SetWords;
  readonly headHeight: number;
  readonly shelf: SetWords;
  readonly shelfLines: 2 | 3 | 4;
}

async function planSlide(
  slide: Slide,
  deck: Deck,
  tools: SlideTools,
  tree: Tree,
  report: Report,
): Promise<Plan> {
  const { fonts, ink } = tools;
  const { language, direction } = deck;
  const { stage } = slide;
  const name = `Slide ${slide.number}`;
  const place = slide.place ? { place: slide.place } : {};
  const easel = createEasel({ fonts, language, direction, ink, tree, report, name, ...place });
  const any = await frameFor(slide, SHELF.least, 0, tools);
  const shelf = setShelf(slide.shelf, slide.notes ?? 0, any, easel);
  const common = { slide, easel, shelf, shelfLines: shelfLines(shelf) };
  if (stage.kind === 'caution') return { ...common, headHeight: 0 };
  const prompt = setPrompt(slide, easel);
  const titles = titlesOf(slide, easel);
  let title = titles.at(-1);
  for (const one of titles) {
    const frame = await frameFor(slide, common.shelfLines, one.height, tools);
    if (!stageFits(slide, frame, easel)) continue;
    title = one;
    break;
  }
  return {
    ...common,
    ...(title ? { title } : {}),
    ...(prompt ? { prompt } : {}),
    headHeight: (title?.height ?? 0) + (prompt ? ABOVE_PROMPT + prompt.height : 0),
  };
}

/** The question below a title that is another sentence: on one line if it can be, never under 36 pixels. */
function setPrompt({ title, stage }: Slide, easel: Easel): SetWords | undefined {
  const prompt =
    'question' in stage ? stage.question.prompt : stage.kind === 'show' ? stage.prompt : undefined;
  if (!prompt || says(title, prompt)) return undefined;
  const sizes = easel.types.text.map((type) => easel.set(prompt, type, STAGE_WIDTH, { balance: true }));
  return sizes.find(({ lines }) => lines.length === 1) ?? sizes[0];
}

function says(title: readonly Inline[], prompt: readonly Inline[]): boolean {
  const plain = (inlines: readonly Inline[]) => textOf(inlines).replace(/\s+/gu, ' ').trim();
  return plain(title) === plain(prompt);
}

/** Frames are laid out from the left; the easel mirrors what it paints. */
function frameFor(slide: Slide, lines: 2 | 3 | 4, titleHeight: number, tools: SlideTools): Promise<Frame> {
  const { stage } = slide;
  const columns = 'question' in stage ? Math.min(4, Math.max(1, stage.question.choices.length)) : undefined;
  return tools.frames({
    master: stage.kind,
    format: '16:9',
    shelfLines: lines,
    titleHeight,
    ...(columns === undefined ? {} : { columns }),
  });
}

/** Steps of one figure or question have one head and one shelf in height, so that nothing moves. */
function sharingPlaces(plans: readonly Plan[]): readonly Plan[] {
  return plans.map((plan) => {
    const own = contentOf(plan.slide);
    if (own === undefined) return plan;
    const steps = plans.filter(({ slide }) => slide.number === plan.slide.number && contentOf(slide) === own);
    return {
      ...plan,
      headHeight: Math.max(...steps.map(({ headHeight }) => headHeight)),
      shelfLines: steps.map((step) => step.shelfLines).sort((a, b) => b - a)[0] ?? SHELF.least,
    };
  });
}

/** What the steps of one slide have in common. */
function contentOf({ stage }: Slide): string | undefined {
  if (stage.kind === 'show') return `figure ${stage.block.figure.id}`;
  return 'question' in stage ? `question ${stage.question.id}` : undefined;
}

async function paintSlide(plan: Plan, page: number, deck: Deck, tools: SlideTools): Promise<Page> {
  const { slide, easel, title, prompt } = plan;
  const { tree } = easel;
  const section = tree.add(tree.root, 'Sect');
  const frame = await frameFor(slide, plan.shelfLines, plan.headHeight, tools);
  const shelf = shelfPainter(slide, plan.shelf, section, frame, easel);
  checkWords(slide, easel);
  paintWall(frame, easel);
  const at = frame.box('title');
  const heading = tree.add(section, page === 0 ? 'H1' : 'H2');
  if (title) {
    checkTitle(slide, title, easel);
    easel.words(heading, title, at.x, at.y);
  } else hide(heading, textOf(slide.title), at.y, easel);
  if (prompt) easel.words(tree.add(section, 'P'), prompt, at.x, at.y + (title?.height ?? 0) + ABOVE_PROMPT);
  // Notes are read before what they guard, basis and sources after it.
  shelf.notes();
  paintStage(slide, { frame, floor: frame.box('shelf').y, page, section }, easel, tools);
  shelf.basis();
  paintNumber(slide, frame, easel);
  if (deck.draft) paintDraft(deck.draft, frame, easel);
  return {
    width: SLIDE.width * SLIDE.pointsPerPixel,
    height: SLIDE.height * SLIDE.pointsPerPixel,
    items: easel.items,
  };
}
