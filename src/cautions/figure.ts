import type { Report } from '../diagnostics/index.js';
import type { Block, CautionBlock, CautionLine } from '../document/index.js';
import { formatList, sayFrom } from '../languages/index.js';
import { boxesOf, cautionBlock } from './block.js';
import type { Pulled } from './facts.js';
import { HEADINGS, type Heading } from './register.js';
import { cautionTerms, headingKey } from './terms.js';
import { type CautionInline, type Setting, wordsOf } from './wording.js';

/** A sentence that stands beside a figure, with the cautions that it carries or points to. */
export interface FigureSentence {
  readonly inlines: readonly CautionInline[];
  readonly cautions: readonly string[];
}

/** Cautions that a directive pulls, not the lesson as a whole. */
export function pulledBy(pulled: readonly Pulled[], directive: string): readonly Pulled[] {
  return pulled.filter((p) => p.reasons.some((r) => r.directive === directive));
}

/** Notes of a figure: those that the directive pulls and that stand at figures. */
export function notesOf(pulled: readonly Pulled[], directive: string): readonly Pulled[] {
  return pulledBy(pulled, directive).filter(
    (p) => p.caution.kind === 'note' && p.caution.place.includes('figure'),
  );
}

function noteSentences(
  pulled: readonly Pulled[],
  directive: string,
  setting: Setting,
  report: Report,
): readonly FigureSentence[] {
  // What is for staff alone stands on the leader's page, and nowhere else.
  const notes = pulledBy(pulled, directive).filter(
    ({ caution }) =>
      caution.kind === 'note' &&
      (caution.place.includes('figure') || (setting.output === 'staff' && caution.place.includes('staff'))),
  );
  return notes.map((p) => {
    const slots = { ...setting.slots, ...p.slots[directive] };
    return { inlines: wordsOf(p, { ...setting, slots }, report), cautions: [p.caution.id] };
  });
}

/**
 * What stands beside a figure on paper: each note whole, then one pointer to the lines of the sheet's
 * block, such as `Stop, line 1.` and `Ask first, lines 1, 2, and 3.` Lines count from 1 in each heading.
 */
export function figureCautions(
  pulled: readonly Pulled[],
  directive: string,
  setting: Setting,
  report: Report,
): readonly FigureSentence[] {
  const notes = noteSentences(pulled, directive, setting, report);
  const pointer = pointerTo(pulled, directive, setting.language);
  return pointer ? [...notes, pointer] : notes;
}

/** The same as blocks of a sheet. */
export function figureCautionBlocks(
  pulled: readonly Pulled[],
  directive: string,
  setting: Setting,
  report: Report,
): readonly Block[] {
  return figureCautions(pulled, directive, setting, report).map((s) => ({ kind: 'figure-caution', ...s }));
}

function pointerTo(
  pulled: readonly Pulled[],
  directive: string,
  language: string,
): FigureSentence | undefined {
  const boxes = boxesOf(pulled);
  const here = guarded(pulled, directive);
  if (here.length === 0) return undefined;
  const say = sayFrom(cautionTerms, language);
  const words = HEADINGS.flatMap((heading) => {
    const lines = boxes.filter((p) => p.caution.heading === heading);
    const numbers = lines.flatMap((p, i) => (here.includes(p) ? [String(i + 1)] : []));
    if (numbers.length === 0) return [];
    return [
      say(numbers.length === 1 ? 'line' : 'lines', {
        heading: say(headingKey(heading)),
        lines: formatList(numbers, language),
      }),
    ];
  });
  return { inlines: [{ text: words.join(' ') }], cautions: here.map((p) => p.caution.id) };
}

/** Boxes that a figure points to. */
function guarded(pulled: readonly Pulled[], directive: string): readonly Pulled[] {
  return boxesOf(pulledBy(pulled, directive)).filter((p) => p.caution.place.includes('figure'));
}

/** What a slide with a figure carries. */
export interface SlideCautions {
  /** Sentences for the shelf, first: each note whole. */
  readonly notes: readonly FigureSentence[];
  /** Stop lines, which stand on the figure's own slide too. */
  readonly stops: readonly CautionLine[];
  /** Headings to point to, for `slidePointer`. */
  readonly headings: readonly Heading[];
}

export function slideFigureCautions(
  pulled: readonly Pulled[],
  directive: string,
  setting: Setting,
  report: Report,
): SlideCautions {
  const notes = noteSentences(pulled, directive, setting, report);
  const here = guarded(pulled, directive);
  const stops = here.filter((p) => p.caution.severity === 'stop');
  return {
    notes,
    stops: cautionBlock(stops, setting, report).lines,
    headings: HEADINGS.filter((h) => here.some((p) => p.caution.heading === h)),
  };
}

/** `Stop: slide 4. Ask first: slide 4.` for the shelf of a figure's slide. */
export function slidePointer(headings: readonly Heading[], slide: number, language: string): string {
  const say = sayFrom(cautionTerms, language);
  return headings.map((h) => say('slide', { heading: say(headingKey(h)), slide })).join(' ');
}

/**
 * The boxes of the deck in steps of at most `most` lines, in order. They stand before the first figure
 * slide that pulls any, on one slide of as many steps; no line is split and none is left out.
 */
export function slideCautions(
  pulled: readonly Pulled[],
  setting: Setting,
  report: Report,
  most = 5,
): readonly CautionBlock[] {
  const block = cautionBlock(pulled, { ...setting, output: 'slides' }, report);
  const steps: CautionBlock[] = [];
  for (let i = 0; i < block.lines.length; i += most)
    steps.push({ ...block, lines: block.lines.slice(i, i + most) });
  return steps;
}
