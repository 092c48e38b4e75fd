import type { Block, Deck, Inline, Slide } from '../document/index.js';
import { direction } from '../languages/index.js';
import { type HolderPart, select } from '../lesson/index.js';
import { slideProblem } from '../outputs/slides/index.js';
import type { ComputedLesson } from './compute.js';
import { cautionSlides } from './deck-cautions.js';
import { openingShelf, slidesOf, type UnplacedSlide } from './deck-slide.js';
import type { DeckTools } from './deck-tools.js';
import { pageTerms } from './terms.js';

/** The slides of a lesson in the order of the text, caution slides before the first figure, sources at the end. */
export async function makeDeck(lesson: ComputedLesson, tools: DeckTools): Promise<Deck> {
  const { language, level } = tools.viewer.audience;
  const parts = select(lesson.lesson, { level, output: 'slides' });
  const holders = parts.filter((p): p is HolderPart => p.kind === 'holder' && p.name === 'slide');
  // A directive may be written here to be shown on a slide; words would be lost.
  for (const part of parts)
    if (part.kind !== 'holder' && part.kind !== 'directive')
      tools.problem(
        slideProblem('slides/no-place', `A ${part.kind} for the slides stands in no slide.`, {
          place: part.place,
          hint: 'Put it into a slide.',
        }),
      );
  const own = holders.flatMap((holder, index) => slidesOf(holder, index === 0, tools));
  const slides = opensWithFigure(own) ? [openingSlide(lesson.lesson.front.title, tools), ...own] : own;
  // A stop line that leads a figure stands with it, after the caution slides.
  const firstFigure = slides.findIndex(
    (slide) => slide.figure !== undefined || slide.stage.kind === 'caution',
  );
  const before = firstFigure < 0 ? slides.length : firstFigure;
  const cautions = cautionSlides(tools);
  const ordered = [...slides.slice(0, before), ...cautions, ...slides.slice(before), ...noticeSlide(tools)];
  const placed = numbered(ordered, cautions[0], tools);
  return {
    language,
    direction: direction(language),
    title: lesson.lesson.front.title,
    slides: [...placed, ...(await sourceSlides(placed.at(-1)?.number ?? 0, tools))],
    stamp: tools.stamp,
    ...(tools.draft ? { draft: tools.draft } : {}),
  };
}

/** A figure keeps the whole shelf of its slide, so that what the first slide says needs one of its own. */
function opensWithFigure([first]: readonly UnplacedSlide[]): boolean {
  return first !== undefined && (first.figure !== undefined || first.stage.kind === 'caution');
}

function openingSlide(title: string, tools: DeckTools): UnplacedSlide {
  return {
    title: [{ text: title }],
    stage: { kind: 'open', audience: tools.audience, pictures: [] },
    shelf: openingShelf(tools),
    stops: [],
    minutes: 0,
    say: [],
    do: [],
    step: false,
  };
}

/** Numbers the slides (steps share one) and fills what depends on it: pointers and sources on the shelf. */
function numbered(
  slides: readonly UnplacedSlide[],
  caution: UnplacedSlide | undefined,
  tools: DeckTools,
): Slide[] {
  let count = 0;
  const numbers = slides.map((slide) => (slide.step ? count : ++count));
  const cautionNumber = caution ? (numbers[slides.indexOf(caution)] ?? 0) : 0;
  return slides.map(({ step: _, figure, stops, ...slide }, index) => {
    const notes =
      figure === undefined
        ? stops
        : [...tools.shelf.figure(figure, cautionNumber, stops.length > 0), ...stops];
    return {
      ...slide,
      id: `s${index + 1}`,
      number: numbers[index] ?? 0,
      shelf: tools.sources.number([...notes, ...strongSources(slide.shelf)]),
      ...(notes.length > 0 ? { notes: notes.length } : {}),
    };
  });
}

const SENTENCE_END = /[.?!؟。]\s+/gu;

/** The sentence that names the sources is strong, so that it is found among the others. */
function strongSources(shelf: readonly Inline[]): readonly Inline[] {
  const cite = shelf.findIndex((inline) => inline.cite !== undefined);
  if (cite < 0) return shelf;
  const strong = (inline: Inline): Inline => ({ ...inline, strong: true });
  const lead = shelf[cite - 1];
  const before = shelf.slice(0, Math.max(0, cite - 1));
  const rest = shelf.slice(cite).map(strong);
  if (!lead) return rest;
  const end = [...lead.text.matchAll(SENTENCE_END)].at(-1);
  const at = end ? end.index + end[0].length : 0;
  const pieces = [{ ...lead, text: lead.text.slice(0, at) }, strong({ ...lead, text: lead.text.slice(at) })];
  return [...before, ...pieces.filter(({ text }) => text !== ''), ...rest];
}

/** Notices are told when the talk is over; a slide holds them all, since there are few. */
function noticeSlide({ notices, viewer }: DeckTools): UnplacedSlide[] {
  if (notices.length === 0) return [];
  const blocks = notices.map((text): Block => ({ kind: 'paragraph', inlines: [{ text }] }));
  return [
    {
      title: [{ text: pageTerms(viewer.audience.language)('notices') }],
      stage: { kind: 'words', blocks },
      shelf: [],
      stops: [],
      minutes: 0,
      say: [],
      do: [],
      step: false,
    },
  ];
}

async function sourceSlides(last: number, tools: DeckTools): Promise<Slide[]> {
  const say = pageTerms(tools.viewer.audience.language);
  const { review, dataDate, version } = tools.stamp;
  const shelf = [
    { text: [review, dataDate, ''].filter(Boolean).join(' ').concat(' ') },
    { text: version, strong: true },
  ];
  const title = (index: number) => [
    { text: index === 0 ? say('slide-sources') : say('slide-sources-more', { part: index + 1 }) },
  ];
  const parts = await tools.fits.sources(tools.sources.list(), title(1), shelf);
  return parts.map((sources, index) => ({
    id: `sources-${index + 1}`,
    number: last + 1 + index,
    title: title(index),
    stage: { kind: 'sources', sources },
    shelf,
    minutes: 0,
    say: [],
    do: [],
  }));
}
