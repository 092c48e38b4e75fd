import {
  boxesOf,
  type Caution,
  type Output,
  type Pulled,
  sizeFor,
  slotsOf,
  withoutWeight,
} from '../cautions/index.js';
import type { Report } from '../diagnostics/index.js';
import type { CautionLine, Deck, Sheet } from '../document/index.js';
import type { Pages } from '../layout/index.js';
import { type Built, blocksOf, figuresOf, inlinesOf, pageText, plain, spoilsOf, textOf } from './built.js';
import { checkProblem } from './codes.js';

/** Sheets that carry the lesson's cautions; review sheets list them in their own way. */
const GUARDED: ReadonlySet<Sheet['kind']> = new Set(['handout', 'worksheet', 'key', 'staff']);

export interface CautionsKeptInput {
  /** What the lesson pulls, from its source. */
  readonly pulled: readonly Pulled[];
  readonly built: readonly Built[];
  /** Standard lines that an output needs. */
  readonly standing: (built: Built) => readonly Pulled[];
}

/**
 * S17: every caution that the source pulls stands in every output. Boxes stand once, in the block, with
 * the wording of the level, whole and in order; notes stand beside their figure; standard lines stand on
 * the page. On finished pages the same words are found again, each caution on one page, boxes before the
 * first figure that they guard.
 */
export function checkCautionsKept(input: CautionsKeptInput, report: Report): void {
  const { built, standing } = input;
  for (const output of built) {
    const noWeight = output.kind === 'sheet' && output.sheet.weightFree;
    const pulled = noWeight ? withoutWeight(input.pulled) : input.pulled;
    const isCards = output.kind === 'sheet' && output.sheet.kind === 'cards';
    if (output.kind === 'sheet' && !isCards && !GUARDED.has(output.sheet.kind)) continue;
    const tell = (message: string, at: Caution) =>
      report.add(
        checkProblem('S17', `${output.name}: ${message}`, {
          place: at.at,
          hint: 'Nothing may leave a caution out. Mend the output; the text is as the register has it.',
          spoils: spoilsOf(output),
        }),
      );
    if (isCards) {
      checkCards(output, pulled, standing(output), tell);
      continue;
    }
    const lines = linesOf(output, tell, pulled);
    checkBlock(lines, output, pulled, tell);
    checkBeside(output, pulled, tell);
    checkStanding(output, standing(output), tell);
    if (output.pages) checkPages(output.pages, output, pulled, standing(output), tell);
  }
}

type Tell = (message: string, at: Caution) => void;

const outputOf = (built: Built): Output => {
  if (built.kind === 'deck') return 'slides';
  const { kind } = built.sheet;
  return kind === 'review' || kind === 'notes' || kind === 'prices' ? 'staff' : kind;
};

/** The lines of the block; on a deck those of its caution slides, which must come before what they guard. */
function linesOf(output: Built, tell: Tell, pulled: readonly Pulled[]): readonly CautionLine[] {
  if (output.kind === 'sheet') return output.sheet.cautions.lines;
  const { slides } = output.deck;
  const guards = (id: string) =>
    pulled.filter((p) => p.caution.kind === 'box' && p.reasons.some((r) => r.directive === id));
  slides.forEach((slide, i) => {
    if (slide.stage.kind !== 'show') return;
    const before = new Set(linesBefore(output.deck, i));
    for (const p of guards(slide.stage.block.figure.id))
      if (!before.has(p.caution.id))
        tell(
          `\`${p.caution.id}\` does not stand before slide ${slide.number}, whose figure it guards.`,
          p.caution,
        );
  });
  return slides.flatMap((s) => (s.stage.kind === 'caution' ? s.stage.block.lines : []));
}

function linesBefore(deck: Deck, index: number): readonly string[] {
  return deck.slides
    .slice(0, index)
    .flatMap((s) => (s.stage.kind === 'caution' ? s.stage.block.lines.map((l) => l.id) : []));
}

function checkBlock(
  lines: readonly CautionLine[],
  output: Built,
  pulled: readonly Pulled[],
  tell: Tell,
): void {
  const boxes = boxesOf(pulled);
  for (const p of boxes) {
    const own = lines.filter((l) => l.id === p.caution.id);
    if (own.length === 0) tell(`the caution \`${p.caution.id}\` is missing.`, p.caution);
    // On a deck a stop line stands on its figure's own slide too.
    const again = output.kind === 'deck' && p.caution.severity === 'stop';
    if (own.length > 1 && !again)
      tell(`the caution \`${p.caution.id}\` stands ${own.length} times.`, p.caution);
    for (const line of own) {
      if (line.heading !== p.caution.heading)
        tell(`\`${p.caution.id}\` stands under ${line.heading}; it is ${p.caution.heading}.`, p.caution);
      if (!wordingOf(p, output).test(textOf(line.inlines)))
        tell(
          `\`${p.caution.id}\` does not have its wording for this level: "${textOf(line.inlines)}".`,
          p.caution,
        );
    }
  }
  const order = [...new Set(lines.map((l) => l.id))].filter((id) => boxes.some((p) => p.caution.id === id));
  const inOrder = boxes.filter((p) => order.includes(p.caution.id));
  const wrong = inOrder.find((p, i) => p.caution.id !== order[i]);
  if (wrong) tell(`the cautions are out of order at \`${wrong.caution.id}\`.`, wrong.caution);
}

/** Every copy of a goal card carries each caution that stands on cards, in its short wording. */
function checkCards(output: Built, pulled: readonly Pulled[], standing: readonly Pulled[], tell: Tell): void {
  const cards = blocksOf(output).flatMap((block) => (block.kind === 'card' ? [block] : []));
  const printed = (output.pages?.pages ?? []).map(pageText).join(' ');
  const copies = cards.reduce((sum, card) => sum + card.copies, 0);
  const needed = [...boxesOf(pulled), ...standing].filter(({ caution }) => caution.place.includes('card'));
  for (const p of needed) {
    const wording = wordingOf(p, output, true);
    const bare = cards.some(({ cautions }) => !cautions.some(({ inlines }) => wording.test(textOf(inlines))));
    if (bare) tell(`the caution \`${p.caution.id}\` is missing on a card.`, p.caution);
    else if (output.pages && (printed.match(new RegExp(wording, 'gu')) ?? []).length < copies)
      tell(`\`${p.caution.id}\` does not stand on every copy of the card.`, p.caution);
  }
}

/** Notes stand beside their figure, whole. */
function checkBeside(output: Built, pulled: readonly Pulled[], tell: Tell): void {
  const figures = new Set(figuresOf(output).map((f) => f.id));
  const texts =
    output.kind === 'sheet'
      ? blocksOf(output).flatMap((b) => (b.kind === 'figure-caution' ? [textOf(b.inlines)] : []))
      : output.deck.slides.map((s) => textOf(s.shelf));
  for (const p of pulled) {
    if (p.caution.kind !== 'note' || !p.caution.place.includes('figure')) continue;
    const here = p.reasons.some((r) => r.directive !== undefined && figures.has(r.directive));
    if (here && !texts.some((t) => wordingOf(p, output, true).test(t)))
      tell(`the note \`${p.caution.id}\` is missing beside its figure.`, p.caution);
  }
}

function checkStanding(output: Built, lines: readonly Pulled[], tell: Tell): void {
  const text = allText(output);
  for (const p of lines)
    if (!wordingOf(p, output, true).test(text)) tell(`the line \`${p.caution.id}\` is missing.`, p.caution);
}

/** Everything a reader finds in an output but its cautions. */
function allText(output: Built): string {
  const blocks = blocksOf(output).map((b) => textOf(inlinesOf(b)));
  const standing = output.kind === 'sheet' ? textOf(output.sheet.cautions.standing?.inlines ?? []) : '';
  return [standing, ...blocks].join(' ');
}

/**
 * The finished pages say each caution again, all of it on one page. A box comes before the figures, which
 * the structure tree shows: its text stands before the first figure's.
 */
function checkPages(
  pages: Pages,
  output: Built,
  pulled: readonly Pulled[],
  standing: readonly Pulled[],
  tell: Tell,
): void {
  const texts = pages.pages.map(pageText);
  const figures = new Set(figuresOf(output).map((f) => f.id));
  const needed = [
    ...boxesOf(pulled),
    ...standing,
    ...pulled.filter(
      (p) =>
        p.caution.kind === 'note' &&
        p.caution.place.includes('figure') &&
        p.reasons.some((r) => r.directive !== undefined && figures.has(r.directive)),
    ),
  ];
  for (const p of needed) {
    const wording = wordingOf(p, output, true);
    if (texts.some((t) => wording.test(t))) continue;
    if (wording.test(texts.join(' '))) tell(`\`${p.caution.id}\` is split over two pages.`, p.caution);
    else tell(`\`${p.caution.id}\` is not on the finished pages.`, p.caution);
  }
}

/**
 * The wording that an output must have, with anything in its slots. `within` finds it inside more text.
 * A lesson's own words for a level are as good as the register's there.
 */
function wordingOf(p: Pulled, output: Built, within = false): RegExp {
  const level = output.kind === 'deck' ? 'plain' : output.sheet.level;
  const language = output.kind === 'deck' ? output.deck.language : output.sheet.language;
  // Cards are small: they have the short wording at any size of type.
  const at = outputOf(output) === 'cards' ? 'short' : level;
  const own = output.kind === 'sheet' ? p.reworded[at] : undefined;
  const text = own ?? p.caution.wordings[language]?.[sizeFor(p, at, outputOf(output))];
  if (text === undefined) return /(?!)/;
  let pattern = '';
  let from = 0;
  for (const slot of slotsOf(text)) {
    pattern += `${quoted(text.slice(from, slot.at))}.+?`;
    from = slot.end;
  }
  pattern += quoted(text.slice(from));
  return new RegExp(within ? pattern : `^${pattern}$`, 'u');
}

/** Blanks match any run of blanks; everything else itself. */
function quoted(text: string): string {
  return text
    .split(/\s+/)
    .map((word) => plain(word).replace(/[\\^$.*+?()[\]{}|/]/g, '\\$&'))
    .join('\\s+');
}
