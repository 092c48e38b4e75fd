import { withNumbers } from '../directives/words.js';
import type { Block, Deck, Inline, Slide } from '../document/index.js';
import { formatList } from '../languages/index.js';
import { pageTerms } from './terms.js';

const NBSP = '\u00a0';

/** All steps of one slide, and when it begins, in minutes from the start of the talk. */
interface Timed {
  readonly steps: readonly Slide[];
  readonly start: number;
  readonly minutes: number;
}

/** A section a slide, after the lengths that the talk can have. */
export function noteBlocks(deck: Deck): Block[] {
  const slides = timed(deck);
  return [...lengths(slides, deck.language), ...slides.flatMap((slide) => section(slide, deck.language))];
}

/** Slides with their times: each begins when all before it have had their minutes. */
function timed({ slides }: Deck): Timed[] {
  const numbers = [...new Set(slides.map((slide) => slide.number))];
  let start = 0;
  return numbers.map((number) => {
    const steps = slides.filter((slide) => slide.number === number);
    const minutes = steps.reduce((sum, step) => sum + step.minutes, 0);
    const slide = { steps, start, minutes };
    start += minutes;
    return slide;
  });
}

/** Minutes as hours and minutes: `0:07`. */
export function clock(minutes: number): string {
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`;
}

/** How long the talk takes, and what is left of it without the slides that a shorter talk leaves out. */
function lengths(slides: readonly Timed[], language: string): Block[] {
  const say = pageTerms(language);
  const sum = (some: readonly Timed[]) => some.reduce((total, { minutes }) => total + minutes, 0);
  const cuts = [...new Set(slides.flatMap(cutOf))].sort((a, b) => b - a);
  const shorter = cuts.map((length) => {
    const dropped = slides.filter((slide) => cutOf(slide).some((cut) => cut >= length));
    const numbers = dropped.map(({ steps }) => String(steps[0]?.number ?? ''));
    return say('notes-shorter', {
      length,
      count: numbers.length,
      slides: formatList(numbers, language),
      left: sum(slides) - sum(dropped),
    });
  });
  const words = [say('notes-whole', { count: sum(slides) }), ...shorter].join(' ');
  return [{ kind: 'paragraph', inlines: [{ text: words }] }];
}

function cutOf({ steps }: Timed): number[] {
  return steps.flatMap(({ cut }) => (cut === undefined ? [] : [cut])).slice(0, 1);
}

function section({ steps, start, minutes }: Timed, language: string): Block[] {
  const say = pageTerms(language);
  // A stop line that leads a figure has no notes of its own.
  const main = steps.find(({ stage }) => stage.kind !== 'caution') ?? steps[0];
  if (!main) return [];
  const extent = [
    ...(minutes > 0 ? [say('minutes', { count: minutes })] : []),
    ...(steps.length > 1 ? [say('notes-steps', { count: steps.length })] : []),
  ].join(', ');
  const title = main.title.map((inline): Inline => ({ ...inline, strong: true }));
  const leads = steps.some(({ stage }) => stage.kind === 'caution') && main.stage.kind !== 'caution';
  const told = (text: string): Block => ({ kind: 'paragraph', inlines: [{ text }] });
  return [
    {
      kind: 'heading',
      level: 2,
      inlines: [
        { text: `${clock(start)} ` },
        { text: say('notes-slide', { number: main.number }), breakBefore: true },
      ],
    },
    {
      kind: 'paragraph',
      inlines: extent === '' ? title : [...title, { text: ` (${extent.replaceAll(' ', NBSP)})` }],
    },
    ...cutOf({ steps, start, minutes }).map((length) => told(say('notes-cut', { length }))),
    ...(leads ? [told(say('notes-stop'))] : []),
    ...labelled(say('do'), main.do),
    ...labelled(say('say'), main.say),
    ...steps.flatMap(({ stage }) => (stage.kind === 'answer' ? answer(stage.question, language) : [])),
  ];
}

function labelled(word: string, blocks: readonly Block[]): Block[] {
  const [first, ...rest] = blocks;
  if (!first) return [];
  const label: Inline = { text: `${word}: `, strong: true };
  if (first.kind === 'paragraph') return [{ ...first, inlines: [label, ...first.inlines] }, ...rest];
  return [{ kind: 'paragraph', inlines: [{ ...label, text: `${word}:` }] }, first, ...rest];
}

/** The right option first, then what is to be said of the others: the slide has no room for it. */
function answer(question: Block & { readonly kind: 'question' }, language: string): Block[] {
  const say = pageTerms(language);
  const told = [...question.choices]
    .sort((a, b) => Number(b.key?.right ?? false) - Number(a.key?.right ?? false))
    .flatMap(({ letter, key }): Inline[] => {
      if (!key) return [];
      const why = key.why.replace(/[.\s]+$/u, '');
      const value: Inline = { text: key.value, ...(key.number ? { number: key.number } : {}) };
      const sentence = withNumbers((slots) => say('notes-option', { letter, why, ...slots }), { value });
      return [...sentence, { text: ' ' }];
    });
  return told.length === 0
    ? []
    : [{ kind: 'paragraph', inlines: [{ text: `${say('notes-answer')}: `, strong: true }, ...told] }];
}
