import type { View } from '../directives/contract.js';
import type { Block, CautionBlock, Inline, Slide, Stage } from '../document/index.js';
import type { HolderPart, Part } from '../lesson/index.js';
import { slideProblem } from '../outputs/slides/index.js';
import type { DeckTools } from './deck-tools.js';
import { pageTerms } from './terms.js';
import type { Viewer } from './viewer.js';

/** A slide before it has its number. */
export type UnplacedSlide = Omit<Slide, 'id' | 'number' | 'notes'> & {
  /** True when it has the number of the slide before. */
  readonly step: boolean;
  /** Id of the directive that it shows. */
  readonly figure?: string;
  /** Stop lines that stand on the shelf, before the basis. */
  readonly stops: readonly Inline[];
};

type Base = Pick<UnplacedSlide, 'title' | 'minutes' | 'say' | 'do' | 'cut' | 'place'>;

/** One slide of the lesson: a slide, or several steps where a directive has several stages. */
export function slidesOf(holder: HolderPart, first: boolean, tools: DeckTools): UnplacedSlide[] {
  const { viewer } = tools;
  const { parts, place } = holder;
  const heading = parts.find((p) => p.kind === 'heading');
  const inside = (name: string) =>
    parts.flatMap((p) => (p.kind === 'holder' && p.name === name ? p.parts : []));
  const cut = holder.attributes.get('cut')?.value;
  const base: Base = {
    title: heading ? viewer.inlines(heading.children) : [],
    minutes: Number(holder.attributes.get('minutes')?.value ?? 0),
    say: viewer.blocks(inside('say')),
    do: viewer.blocks(inside('do')),
    ...(cut ? { cut: Number(cut) } : {}),
    place,
  };
  const rest = parts.filter((p) => p !== heading && p.kind !== 'holder');
  const pictures = listOf(holder, 'pictures');
  for (const part of rest) {
    const view = part.kind === 'directive' ? viewer.view(part) : undefined;
    if (!view?.stages?.length) continue;
    for (const other of rest) if (other !== part) leftOut(other, 'beside its figure or question', tools);
    if (pictures.length > 0) leftOutPictures(holder, 'beside its figure or question', tools);
    return figureSteps(view, base, tools);
  }
  const opens = first || heading?.level === 1;
  const shelf = first ? openingShelf(tools) : [];
  const stage = opens ? openStage(rest, pictures, tools) : plainStage(holder, rest, base, pictures, tools);
  return [{ ...base, stage, shelf, stops: [], step: false }];
}

/** What the first slide says to everybody, and where the talk is. */
export function openingShelf({ shelf, where }: DeckTools): readonly Inline[] {
  return where ? [...shelf.first, { text: ` ${where}` }] : shelf.first;
}

/** What a slide cannot show is said, never dropped in silence. */
function leftOut(part: Part, where: string, tools: DeckTools): void {
  const what = part.kind === 'directive' ? `the directive ${part.name}` : `a ${part.kind}`;
  tools.problem(
    slideProblem('slides/no-place', `On this slide there is no place for ${what} ${where}.`, {
      place: part.place,
      hint: 'Give it a slide of its own, or put it into say or do.',
    }),
  );
}

function leftOutPictures(holder: HolderPart, where: string, tools: DeckTools): void {
  tools.problem(
    slideProblem('slides/no-place', `On this slide there is no place for its pictures ${where}.`, {
      place: holder.attributes.get('pictures')?.place ?? holder.place,
      hint: 'Take them out of `pictures`.',
    }),
  );
}

function openStage(rest: readonly Part[], pictures: readonly string[], tools: DeckTools): Stage {
  for (const part of rest) leftOut(part, 'beside the title of the talk', tools);
  return { kind: 'open', audience: tools.audience, pictures };
}

/** Words, or else the numbered steps of `do`, or else the title alone. */
function plainStage(
  holder: HolderPart,
  rest: readonly Part[],
  base: Base,
  pictures: readonly string[],
  tools: DeckTools,
): Stage {
  const blocks = tools.viewer.blocks(rest);
  const steps = base.do.flatMap((block) =>
    block.kind === 'list' && block.ordered
      ? block.items.map((item) => item.flatMap((b) => (b.kind === 'paragraph' ? b.inlines : [])))
      : [],
  );
  if (blocks.length === 0 && steps.length > 0) {
    const said = pageTerms(tools.viewer.audience.language)('minutes', { count: base.minutes });
    return { kind: 'do', minutes: base.minutes, said, steps, pictures };
  }
  const [picture, ...more] = pictures;
  if (more.length > 0) leftOutPictures(holder, 'but the first one', tools);
  const beside = picture ? { picture } : {};
  return blocks.length > 0
    ? { kind: 'words', blocks, ...beside }
    : { kind: 'say', sentence: base.title, ...beside };
}

/**
 * The stages of a figure or question as steps of one slide. Its stop lines stand on the shelf where
 * they fit, and otherwise as a step of their own before it.
 */
function figureSteps(view: View, base: Base, tools: DeckTools): UnplacedSlide[] {
  const { viewer } = tools;
  const figure = view.shows === undefined ? {} : { figure: view.shows };
  const stop = view.shows === undefined ? undefined : tools.stops(view.shows);
  const said = stop ? stop.lines.flatMap((line) => [...line.inlines, { text: ' ' }]) : [];
  const shelf = view.shelf ?? [];
  const notes = view.shows === undefined ? [] : tools.shelf.figure(view.shows, MANY, said.length > 0);
  // Sources have no number yet; room is kept for two digits.
  const measured = [...notes, ...said, ...shelf].map((i) => (i.cite ? { ...i, text: String(MANY) } : i));
  const here = tools.fits.shelf(measured);
  const questions = (view.stages ?? []).filter((stage) => stage.kind === 'ask').length;
  const stages = (view.stages ?? []).map(
    (stage): UnplacedSlide => ({
      ...base,
      title: titleOf(stage, base.title, questions, viewer),
      stage,
      shelf,
      stops: here ? said : [],
      step: false,
      ...figure,
    }),
  );
  const first = stop && !here ? [stopStep(stop, base, tools)] : [];
  return [...first, ...stages].map((slide, index) =>
    index === 0 ? slide : { ...slide, step: true, minutes: 0 },
  );
}

const MANY = 99;

function stopStep(block: CautionBlock, base: Base, tools: DeckTools): UnplacedSlide {
  const say = pageTerms(tools.viewer.audience.language);
  const title = [{ text: say('stop-title', { title: textOf(base.title) }) }];
  const stage: Stage = { kind: 'caution', block };
  return { ...base, title, stage, shelf: tools.shelf.stop, stops: [], step: false };
}

/**
 * A question is its own title: where the slide has none, where the question says the slide's title
 * again, and where several questions share it.
 */
function titleOf(
  stage: Stage,
  title: readonly Inline[],
  questions: number,
  viewer: Viewer,
): readonly Inline[] {
  if (stage.kind === 'answer') return answerTitle(stage.question, viewer);
  if (stage.kind === 'show' && stage.title) return stage.title;
  const prompt =
    stage.kind === 'ask' ? stage.question.prompt : stage.kind === 'show' ? stage.prompt : undefined;
  if (!prompt) return title;
  const repeats = textOf(prompt).toLocaleLowerCase().includes(textOf(title).toLocaleLowerCase());
  return questions > 1 || repeats ? prompt : title;
}

const MARK = '\u0001';

/** "Answer: C. No salt went in." with the letter meant. */
function answerTitle(question: Block & { readonly kind: 'question' }, viewer: Viewer): Inline[] {
  const right = question.choices.find((choice) => choice.key?.right);
  const why = (right?.key?.why ?? '').replace(/[.\s]+$/u, '');
  const words = pageTerms(viewer.audience.language)('answer', { letter: MARK, why });
  return words
    .split(MARK)
    .flatMap((text, index) => [
      ...(index > 0 ? [{ text: right?.letter ?? '', strong: true }] : []),
      { text },
    ]);
}

function textOf(inlines: readonly Inline[]): string {
  return inlines.map((inline) => inline.text).join('');
}

function listOf(holder: HolderPart, name: string): readonly string[] {
  return (holder.attributes.get(name)?.value ?? '')
    .split(';')
    .map((word) => word.trim())
    .filter(Boolean);
}
