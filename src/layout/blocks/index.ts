import type { Block, BlockKind } from '../../document/index.js';
import { type Desk, keptWithNext, type PaperBox, type Slot, together, withSpace } from '../desk.js';
import type { Draft } from '../structure.js';
import { SPACE } from '../tokens.js';
import { chooseBoxes } from './choose.js';
import { figureBoxes, pictureBoxes } from './figure.js';
import { goalCardBoxes } from './goal-card.js';
import { listBoxes } from './list.js';
import { questionBoxes } from './question.js';
import { tableBoxes } from './table.js';
import {
  basisBoxes,
  figureCautionBoxes,
  paragraphBoxes,
  quoteBoxes,
  subheadBoxes,
  whyBoxes,
} from './text.js';
import { writeBoxes } from './write.js';

/** What belongs to the block above it and never starts a page without it. */
const FOLLOWERS: ReadonlySet<BlockKind> = new Set(['choose', 'basis', 'figure-caution', 'why']);
/** What a paragraph right above introduces. */
const INTRODUCED: ReadonlySet<BlockKind> = new Set([
  'figure',
  'list',
  'table',
  'question',
  'write',
  'card',
  'picture',
]);

/**
 * Boxes of blocks one below the other. The first has no space above: whatever holds the blocks gives
 * it. `numbers` are the badges of questions.
 */
export function layBlocks(
  desk: Desk,
  blocks: readonly Block[],
  at: Slot,
  parent: Draft,
  numbers: ReadonlyMap<Block, number> = new Map(),
): PaperBox[] {
  return blocks.flatMap((block, index) => {
    const next = blocks[index + 1]?.kind;
    const boxes = layBlock(desk, block, at, parent, numbers);
    const spaced =
      index === 0 ? withSpace(boxes, 0) : withSpace(boxes, spaceAbove(block, blocks[index - 1], boxes));
    const bound =
      next !== undefined && (FOLLOWERS.has(next) || (block.kind === 'paragraph' && INTRODUCED.has(next)));
    return placed(bound ? keptWithNext(spaced) : spaced, block);
  });
}

/** The first box remembers where its block stands in the source. */
function placed(boxes: readonly PaperBox[], { place }: Block): PaperBox[] {
  return boxes.map((box, index) => (index === 0 && place ? { place, ...box } : box));
}

function layBlock(
  desk: Desk,
  block: Block,
  at: Slot,
  parent: Draft,
  numbers: ReadonlyMap<Block, number>,
): PaperBox[] {
  switch (block.kind) {
    case 'heading':
      return subheadBoxes(desk, block, at, parent);
    case 'paragraph':
      return paragraphBoxes(desk, block, at, parent);
    case 'basis':
      return basisBoxes(desk, block, at, parent);
    case 'figure-caution':
      return figureCautionBoxes(desk, block, at, parent);
    case 'list':
      return listBoxes(desk, block, at, parent, layBlocks);
    case 'table':
      return tableBoxes(desk, block, at, parent);
    case 'quote':
      return quoteBoxes(desk, block, at, parent, layBlocks);
    case 'figure':
      return figureBoxes(desk, block, parent);
    case 'choose':
      return chooseBoxes(desk, block, at, parent);
    case 'picture':
      return pictureBoxes(desk, block, at, parent);
    case 'question':
      return questionBoxes(desk, block, at, parent, numbers.get(block));
    case 'write':
      return together(writeBoxes(desk, block, at, parent));
    case 'card':
      return goalCardBoxes(desk, block, at, parent);
    case 'why':
      return whyBoxes(desk, block, at, parent);
    default:
      return block satisfies never;
  }
}

/** A block's own space above, or more where it follows something that needs air below. */
function spaceAbove(block: Block, above: Block | undefined, boxes: readonly PaperBox[]): number {
  const own = boxes[0]?.before ?? 0;
  if (block.kind !== 'paragraph' && block.kind !== 'list') return own;
  const afterFigure = above?.kind === 'figure' || above?.kind === 'choose' || above?.kind === 'basis';
  return afterFigure || above?.kind === 'figure-caution' ? SPACE.textToFigure : own;
}
