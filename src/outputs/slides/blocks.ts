import type { Block, Inline } from '../../document/index.js';
import type { Draft } from '../../layout/structure.js';
import type { Easel, SetWords } from './easel.js';
import type { SlideType } from './tokens.js';

/** More are not followed. */
export const MOST_ITEMS = 4;
const BETWEEN_BLOCKS = 16;
const BETWEEN_ITEMS = 14;
/** From the edge of a list to its words. */
const LABEL = 60;
const BULLET = 16;

interface SetList {
  readonly kind: 'list';
  readonly ordered: boolean;
  readonly start: number;
  readonly items: readonly SetWords[];
}
interface SetParagraphs {
  readonly kind: 'paragraph';
  readonly words: SetWords;
}

/** Words and lists of a stage, set and not yet painted. */
export interface SetBlocks {
  readonly height: number;
  readonly type: SlideType;
  readonly blocks: readonly (SetList | SetParagraphs)[];
}

/** Sets paragraphs and lists; every other block is left out here and reported by `checkBlocks`. */
export function setBlocks(
  blocks: readonly Block[],
  type: SlideType,
  width: number,
  easel: Easel,
  balance = false,
): SetBlocks {
  const set = blocks.flatMap((block): (SetList | SetParagraphs)[] => {
    if (block.kind === 'list') {
      const items = block.items.map((item) => easel.set(runOn(item), type, width - LABEL));
      return [{ kind: 'list', ordered: block.ordered, start: block.start ?? 1, items }];
    }
    if (block.kind === 'heading') {
      const inlines = block.inlines.map((inline) => ({ ...inline, strong: true }));
      return [{ kind: 'paragraph', words: easel.set(inlines, type, width) }];
    }
    if (!('inlines' in block)) return [];
    return [{ kind: 'paragraph', words: easel.set(block.inlines, type, width, { balance }) }];
  });
  const heights = set.map(heightOf);
  const between = Math.max(0, heights.length - 1) * BETWEEN_BLOCKS;
  return { blocks: set, type, height: heights.reduce((a, b) => a + b, between) };
}

function heightOf(block: SetList | SetParagraphs): number {
  if (block.kind === 'paragraph') return block.words.height;
  const between = Math.max(0, block.items.length - 1) * BETWEEN_ITEMS;
  return block.items.reduce((sum, item) => sum + item.height, between);
}

/** Paragraphs of one point, each on a line of its own. */
function runOn(blocks: readonly Block[]): readonly Inline[] {
  return blocks.flatMap((block, index) => {
    if (!('inlines' in block)) return [];
    const [first, ...rest] = block.inlines;
    return index > 0 && first ? [{ ...first, breakBefore: true }, ...rest] : block.inlines;
  });
}

/** Reports what does not stand on a slide, and lists that nobody follows. */
export function checkBlocks(blocks: readonly Block[], easel: Easel): void {
  const refuse = (block: Block) =>
    easel.problem(
      'slides/no-place',
      `a ${block.kind} does not stand on a slide.`,
      'Use ::show for a figure, or leave it to the sheet.',
    );
  for (const block of blocks) {
    if (block.kind !== 'list') {
      if (!('inlines' in block)) refuse(block);
      continue;
    }
    checkCount(block.items.length, easel);
    for (const inner of block.items.flat()) if (!('inlines' in inner)) refuse(inner);
  }
}

export function checkCount(items: number, easel: Easel): void {
  if (items > MOST_ITEMS)
    easel.problem(
      'slides/too-long',
      `the list has ${items} points; a slide holds ${MOST_ITEMS}.`,
      'Part the slide in two, or leave some to the notes.',
    );
}

/** Paints set blocks; returns the y of their lower edge. */
export function paintBlocks(set: SetBlocks, x: number, y: number, section: Draft, easel: Easel): number {
  let top = y;
  set.blocks.forEach((block, index) => {
    if (index > 0) top += BETWEEN_BLOCKS;
    if (block.kind === 'list') paintList(block, set.type, x, top, section, easel);
    else easel.words(easel.tree.add(section, 'P'), block.words, x, top);
    top += heightOf(block);
  });
  return top;
}

function paintList(list: SetList, type: SlideType, x: number, y: number, section: Draft, easel: Easel): void {
  const node = easel.tree.add(section, 'L', { numbering: list.ordered ? 'Decimal' : 'Disc' });
  let top = y;
  list.items.forEach((words, index) => {
    const row = easel.tree.add(node, 'LI');
    const label = easel.tree.add(row, 'Lbl');
    if (list.ordered) {
      const number = [{ text: String(list.start + index), strong: true }];
      easel.words(label, easel.set(number, type, LABEL), x, top);
    } else {
      const at = { x: x + 4, y: top + (type.leading - BULLET) / 2, width: BULLET, height: BULLET };
      easel.content(label, [easel.rect(at, { fill: easel.palette.ink })]);
    }
    easel.words(easel.tree.add(row, 'LBody'), words, x + LABEL, top);
    top += words.height + BETWEEN_ITEMS;
  });
}
