import type { Spoils } from '../diagnostics/index.js';
import { type Block, type Deck, type Inline, mapInlines, type Sheet, type Slide } from '../document/index.js';
import type { FigureSpec, Mark } from '../figures/index.js';
import type { Page, Pages } from '../layout/index.js';

/** A finished output with its pages, when it was laid out. `name` is what problems call it. */
export type Built =
  | { readonly kind: 'sheet'; readonly name: string; readonly sheet: Sheet; readonly pages?: Pages }
  | { readonly kind: 'deck'; readonly name: string; readonly deck: Deck; readonly pages?: Pages };

/** What a problem in an output spoils: that output at its level, in its language. */
export function spoilsOf(built: Built): Spoils {
  return built.kind === 'deck'
    ? { outputs: ['slides'], languages: [built.deck.language] }
    : {
        outputs: [built.sheet.weightFree ? 'weightfree' : built.sheet.kind],
        levels: [built.sheet.level],
        languages: [built.sheet.language],
      };
}

export function languageOf(built: Built): string {
  return built.kind === 'deck' ? built.deck.language : built.sheet.language;
}

/** Blocks of an output in reading order, lists and quotes opened. Cautions stand apart from these. */
export function blocksOf(built: Built): readonly Block[] {
  return built.kind === 'sheet' ? opened(built.sheet.blocks) : built.deck.slides.flatMap(slideBlocks);
}

/** A slide's blocks: its title as a heading, its stage, its shelf, then what is said and done. */
export function slideBlocks(slide: Slide): readonly Block[] {
  return [
    { kind: 'heading', level: 2, inlines: slide.title },
    ...stageBlocks(slide),
    { kind: 'basis', inlines: slide.shelf },
    ...opened(slide.say),
    ...opened(slide.do),
  ];
}

function stageBlocks({ stage }: Slide): readonly Block[] {
  switch (stage.kind) {
    case 'say':
      return [{ kind: 'paragraph', inlines: stage.sentence }];
    case 'words':
      return opened(stage.blocks);
    case 'show':
      return [stage.block];
    case 'ask':
    case 'answer':
      return [stage.question];
    case 'do':
      return stage.steps.map((inlines) => ({ kind: 'paragraph', inlines }));
    case 'open':
    case 'caution':
    case 'sources':
      return [];
  }
}

export function opened(blocks: readonly Block[]): Block[] {
  return blocks.flatMap((block) => {
    if (block.kind === 'list') return block.items.flatMap(opened);
    if (block.kind === 'quote') return opened(block.blocks);
    return [block];
  });
}

/** All running text of a block, in order. */
export function inlinesOf(block: Block): readonly Inline[] {
  const found: Inline[] = [];
  mapInlines([block], (inlines) => {
    found.push(...inlines);
    return inlines;
  });
  return found;
}

export function figuresOf(built: Built): readonly FigureSpec[] {
  return blocksOf(built).flatMap((b) => (b.kind === 'figure' ? [b.figure] : []));
}

/** Text as it is compared: one blank between words, whatever kind of blank it was. */
export function plain(text: string): string {
  return text.replace(/\s+/gu, ' ').trim();
}

export function textOf(inlines: readonly { readonly text: string }[]): string {
  return plain(inlines.map((i) => i.text).join(''));
}

/** Everything that a page says in reading order, artifacts left out. */
export function pageText(page: Page): string {
  return plain(
    page.items
      .flatMap((item) => (item.kind === 'content' ? item.marks : []))
      .map(markText)
      .join(' '),
  );
}

function markText(mark: Mark): string {
  if (mark.kind === 'text') return mark.line.text;
  return mark.kind === 'group' ? mark.marks.map(markText).join(' ') : '';
}
