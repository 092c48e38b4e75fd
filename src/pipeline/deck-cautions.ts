import type { CautionLine, Inline } from '../document/index.js';
import type { UnplacedSlide } from './deck-slide.js';
import type { DeckTools } from './deck-tools.js';
import { pageTerms } from './terms.js';

/** All boxes of the deck on slides of their own, each line whole, and what every deck says on their shelves. */
export function cautionSlides(tools: DeckTools): UnplacedSlide[] {
  const shelves = shelvesOf(tools);
  const tallest = shelves.toSorted((a, b) => lengthOf(b) - lengthOf(a))[0] ?? tools.shelf.stop;
  const parts = inParts(tools.fits.cautions(tools.cautions.lines, tallest), shelves.length);
  return parts.map((lines, index) => {
    // More shelves than lines: the rest stays together, and the layout tells what does not fit.
    const rest = index === parts.length - 1 ? shelves.slice(index) : shelves.slice(index, index + 1);
    return cautionSlide(lines, rest.length > 0 ? spaced(rest) : tools.shelf.stop, index, tools);
  });
}

/** Sentences on as few shelves as they fit; each says that the wording is not confirmed, while it is not. */
function shelvesOf({ shelf, fits }: DeckTools): (readonly Inline[])[] {
  const filled: (readonly Inline[])[][] = [];
  for (const sentence of shelf.caution) {
    const last = filled.at(-1);
    if (last && fits.shelf(spaced([...last, sentence, shelf.stop]))) last.push(sentence);
    else filled.push([sentence]);
  }
  return filled.map((sentences) => spaced([...sentences, shelf.stop]));
}

/** The same lines in order in at least so many parts, the longest parted first. */
function inParts(
  parts: readonly (readonly CautionLine[])[],
  least: number,
): readonly (readonly CautionLine[])[] {
  const longest = parts.reduce((best, part, i) => (part.length > (parts[best]?.length ?? 0) ? i : best), 0);
  const lines = parts[longest] ?? [];
  if (parts.length >= least || lines.length < 2) return parts;
  const half = Math.ceil(lines.length / 2);
  const more = [
    ...parts.slice(0, longest),
    lines.slice(0, half),
    lines.slice(half),
    ...parts.slice(longest + 1),
  ];
  return inParts(more, least);
}

function spaced(groups: readonly (readonly Inline[])[]): readonly Inline[] {
  return groups
    .filter((group) => group.length > 0)
    .flatMap((group, index) => (index > 0 ? [{ text: ' ' }, ...group] : group));
}

function lengthOf(shelf: readonly Inline[]): number {
  return shelf.reduce((sum, { text }) => sum + text.length, 0);
}

function cautionSlide(
  lines: readonly CautionLine[],
  shelf: readonly Inline[],
  index: number,
  tools: DeckTools,
): UnplacedSlide {
  const say = pageTerms(tools.viewer.audience.language);
  const title = index === 0 ? say('caution-title') : say('caution-title-more', { part: index + 1 });
  return {
    title: [{ text: title }],
    stage: { kind: 'caution', block: { lines, whoToAsk: tools.cautions.whoToAsk } },
    shelf,
    stops: [],
    minutes: 0,
    say: [{ kind: 'paragraph', inlines: [{ text: say('caution-say') }] }],
    do: [],
    step: index > 0,
  };
}
