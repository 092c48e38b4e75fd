import type { Block, Cell, Choice, Inline } from './blocks.js';

type Change = (inlines: readonly Inline[]) => readonly Inline[];

/** The same blocks with all running text passed through `change`, in reading order. */
export function mapInlines(blocks: readonly Block[], change: Change): Block[] {
  return blocks.map((block) => mapBlock(block, change));
}

function mapBlock(block: Block, change: Change): Block {
  switch (block.kind) {
    case 'heading':
    case 'paragraph':
    case 'basis':
    case 'figure-caution':
    case 'why':
      return { ...block, inlines: change(block.inlines) };
    case 'list':
      return { ...block, items: block.items.map((item) => mapInlines(item, change)) };
    case 'table': {
      const cells = (row: readonly Cell[]) => row.map((cell) => ({ ...cell, inlines: change(cell.inlines) }));
      return { ...block, head: cells(block.head), rows: block.rows.map(cells) };
    }
    case 'quote':
      return { ...block, blocks: mapInlines(block.blocks, change) };
    case 'choose':
      return { ...block, items: block.items.map((item) => ({ ...item, inlines: change(item.inlines) })) };
    case 'question': {
      const prompt = change(block.prompt);
      const choices = block.choices.map((choice): Choice => ({ ...choice, inlines: change(choice.inlines) }));
      return { ...block, prompt, choices, ...(block.answer ? { answer: change(block.answer) } : {}) };
    }
    case 'card':
      return {
        ...block,
        cautions: block.cautions.map((caution) => ({ ...caution, inlines: change(caution.inlines) })),
      };
    case 'figure':
    case 'picture':
    case 'write':
      return block;
  }
}

/** Every number that blocks show in running text, in a figure or on a key, each id once, in reading order. */
export function numbersIn(blocks: readonly Block[]): string[] {
  const found = new Set<string>();
  const collect: Change = (inlines) => {
    for (const inline of inlines) if (inline.number !== undefined) found.add(inline.number);
    return inlines;
  };
  const figures = (list: readonly Block[]): void => {
    for (const block of list) {
      if (block.kind === 'figure') for (const id of block.figure.numbers) found.add(id);
      else if (block.kind === 'question') {
        for (const { key } of block.choices) if (key?.number !== undefined) found.add(key.number);
      } else if (block.kind === 'quote') figures(block.blocks);
      else if (block.kind === 'list') for (const item of block.items) figures(item);
    }
  };
  mapInlines(blocks, collect);
  figures(blocks);
  return [...found];
}
