import type { View } from '../directives/contract.js';
import type { CautionBlock, Deck, Inline, Slide, SourceLine, Stage, Stamp } from '../document/index.js';
import { direction } from '../languages/index.js';
import type { HolderPart, Part } from '../lesson/index.js';
import type { ComputedLesson } from './compute.js';
import { pageTerms } from './terms.js';
import type { Viewer } from './viewer.js';

/** What a deck is put together from, beside the lesson's slides. */
export interface DeckTools {
  readonly viewer: Viewer;
  /** Caution slides, each whole; they stand before the first figure. */
  readonly cautions: readonly CautionBlock[];
  /** Sentences of the register for the shelf: of the first slide, of caution slides and of a figure. */
  readonly shelf: {
    readonly first: readonly Inline[];
    readonly caution: readonly Inline[];
    readonly figure: (id: string, cautionSlide: number) => readonly Inline[];
    /** Whether so many words stand on the shelf. */
    readonly fits: (shelf: readonly Inline[]) => boolean;
  };
  /** Stop lines of a figure, whole: they stand on the figure's own slide too. */
  readonly stops: (id: string) => CautionBlock | undefined;
  readonly stamp: Stamp;
  readonly draft?: string;
  /** Gives sources their numbers and lists those that were met. */
  readonly sources: {
    readonly number: (inlines: readonly Inline[]) => Inline[];
    readonly list: () => readonly SourceLine[];
  };
  /** Place and day of the talk, on the first slide. */
  readonly where: string;
  /** Whom the talk is for, on the first slide. */
  readonly audience: string;
}

type Unplaced = Omit<Slide, 'id' | 'number'> & { readonly step: boolean; readonly figure?: string };

/** The slides of a lesson in the order of the text, caution slides before the first figure, sources at the end. */
export function makeDeck(lesson: ComputedLesson, tools: DeckTools): Deck {
  const { language } = tools.viewer.audience;
  const holders = lesson.lesson.parts.filter(
    (p): p is HolderPart => p.kind === 'holder' && p.name === 'slide',
  );
  const slides = holders.flatMap((holder, index) => slidesOf(holder, index === 0, tools));
  // A stop line that leads a figure stands with it, after the caution slides.
  const firstFigure = slides.findIndex(
    (slide) => slide.figure !== undefined || slide.stage.kind === 'caution',
  );
  const before = firstFigure < 0 ? slides.length : firstFigure;
  const cautions = tools.cautions.map((block, index) => cautionSlide(block, index, tools));
  const ordered = [...slides.slice(0, before), ...cautions, ...slides.slice(before)];
  return {
    language,
    direction: direction(language),
    title: lesson.lesson.front.title,
    slides: withSources(numbered(ordered, cautions[0], tools), tools),
    stamp: tools.stamp,
    ...(tools.draft ? { draft: tools.draft } : {}),
  };
}

/** Numbers the slides (steps share one) and fills what depends on it: pointers and sources on the shelf. */
function numbered(slides: readonly Unplaced[], caution: Unplaced | undefined, tools: DeckTools): Slide[] {
  let count = 0;
  const numbers = slides.map((slide) => (slide.step ? count : ++count));
  const cautionNumber = caution ? (numbers[slides.indexOf(caution)] ?? 0) : 0;
  return slides.map(({ step: _, figure, ...slide }, index) => {
    const pointers = figure === undefined ? [] : tools.shelf.figure(figure, cautionNumber);
    const shelf = [...pointers, ...slide.shelf];
    return { ...slide, id: `s${index + 1}`, number: numbers[index] ?? 0, shelf: tools.sources.number(shelf) };
  });
}

function withSources(slides: readonly Slide[], tools: DeckTools): Slide[] {
  const say = pageTerms(tools.viewer.audience.language);
  const all = tools.sources.list();
  const last = slides.at(-1)?.number ?? 0;
  const pages: Slide[] = [];
  for (let from = 0; from < all.length; from += SOURCES_A_SLIDE) {
    pages.push({
      id: `sources-${pages.length + 1}`,
      number: last + 1 + pages.length,
      title: [{ text: say('slide-sources') }],
      stage: { kind: 'sources', sources: all.slice(from, from + SOURCES_A_SLIDE) },
      shelf: [
        { text: `${tools.stamp.review} ${tools.stamp.dataDate} ` },
        { text: tools.stamp.version, strong: true },
      ],
      minutes: 0,
      say: [],
      do: [],
    });
  }
  return [...slides, ...pages];
}

const SOURCES_A_SLIDE = 5;

function cautionSlide(block: CautionBlock, index: number, tools: DeckTools): Unplaced {
  const say = pageTerms(tools.viewer.audience.language);
  const title = index === 0 ? say('caution-title') : say('caution-title-more', { part: index + 1 });
  return {
    title: [{ text: title }],
    stage: { kind: 'caution', block },
    shelf: tools.shelf.caution,
    minutes: 0,
    say: [{ kind: 'paragraph', inlines: [{ text: say('caution-say') }] }],
    do: [],
    step: index > 0,
  };
}

type Base = Pick<Unplaced, 'title' | 'minutes' | 'say' | 'do' | 'cut'>;

/**
 * The stages of a figure or question as steps of one slide. Its stop lines stand on the shelf where
 * they fit, and otherwise as a step of their own before it.
 */
function figureSteps(view: View, base: Base, tools: DeckTools): Unplaced[] {
  const { viewer } = tools;
  const figure = view.shows === undefined ? {} : { figure: view.shows };
  const stop = view.shows === undefined ? undefined : tools.stops(view.shows);
  const said = stop ? stop.lines.flatMap((line) => [...line.inlines, { text: ' ' }]) : [];
  const shelf = [...said, ...(view.shelf ?? [])];
  const notes = view.shows === undefined ? [] : tools.shelf.figure(view.shows, 99);
  const fits = tools.shelf.fits([...notes, ...shelf]);
  const stages: Unplaced[] = (view.stages ?? []).map((stage) => ({
    ...base,
    title: stage.kind === 'answer' ? answerTitle(stage, viewer) : base.title,
    stage,
    shelf: fits ? shelf : (view.shelf ?? []),
    step: false,
    ...figure,
  }));
  const first = stop && !fits ? [stopStep(stop, base, tools)] : [];
  return [...first, ...stages].map((slide, index) =>
    index === 0 ? slide : { ...slide, step: true, minutes: 0 },
  );
}

function stopStep(block: CautionBlock, base: Base, tools: DeckTools): Unplaced {
  const say = pageTerms(tools.viewer.audience.language);
  const words = base.title.map((inline) => inline.text).join('');
  const title = [{ text: say('stop-title', { title: words }) }];
  return { ...base, title, stage: { kind: 'caution', block }, shelf: tools.shelf.caution, step: false };
}

/** One slide holder: a slide, or several steps where a directive has several stages. */
function slidesOf(holder: HolderPart, first: boolean, tools: DeckTools): Unplaced[] {
  const { viewer } = tools;
  const parts = holder.parts;
  const heading = parts.find((p) => p.kind === 'heading');
  const title = heading ? viewer.inlines(heading.children) : [];
  const inside = (name: string) =>
    parts.flatMap((p) => (p.kind === 'holder' && p.name === name ? p.parts : []));
  const cut = holder.attributes.get('cut')?.value;
  const base = {
    title,
    minutes: Number(holder.attributes.get('minutes')?.value ?? 0),
    say: viewer.blocks(inside('say')),
    do: viewer.blocks(inside('do')),
    ...(cut ? { cut: Number(cut) } : {}),
  };
  const directive = parts.find((p) => p.kind === 'directive');
  const view = directive ? viewer.view(directive) : undefined;
  if (view?.stages?.length) return figureSteps(view, base, tools);
  const words = parts.filter((p) => p !== heading && p.kind !== 'holder' && p !== directive);
  const pictures = listOf(holder, 'pictures');
  const shelf = first ? [...tools.shelf.first, ...(tools.where ? [{ text: ` ${tools.where}` }] : [])] : [];
  return [{ ...base, stage: stageOf(words, base, heading, pictures, first, tools), shelf, step: false }];
}

function stageOf(
  words: readonly Part[],
  base: Pick<Unplaced, 'title' | 'minutes' | 'do'>,
  heading: Part | undefined,
  pictures: readonly string[],
  first: boolean,
  tools: DeckTools,
): Stage {
  if (first || (heading?.kind === 'heading' && heading.level === 1))
    return { kind: 'open', audience: tools.audience, pictures };
  const [picture] = pictures;
  const blocks = tools.viewer.blocks(words);
  if (blocks.length > 0) return { kind: 'words', blocks, ...(picture ? { picture } : {}) };
  const steps = base.do.flatMap((block) =>
    block.kind === 'list' && block.ordered
      ? block.items.map((item) => item.flatMap((b) => (b.kind === 'paragraph' ? b.inlines : [])))
      : [],
  );
  if (steps.length > 0) return { kind: 'do', minutes: base.minutes, steps, pictures };
  return { kind: 'say', sentence: base.title, ...(picture ? { picture } : {}) };
}

function answerTitle(stage: Stage & { readonly kind: 'answer' }, viewer: Viewer): Inline[] {
  const right = stage.question.choices.find((choice) => choice.key?.right);
  return [
    {
      text: pageTerms(viewer.audience.language)('answer', {
        letter: right?.letter ?? '',
        why: right?.key?.why ?? '',
      }),
    },
  ];
}

function listOf(holder: HolderPart, name: string): readonly string[] {
  return (holder.attributes.get(name)?.value ?? '')
    .split(';')
    .map((word) => word.trim())
    .filter(Boolean);
}
