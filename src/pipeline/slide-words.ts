import type { Block, Inline, Slide } from '../document/index.js';

/** All that a slide says but its title, in the order in which it is read: for files whose words are outlines. */
export function slideWords({ stage, shelf, notes = 0 }: Slide): string {
  return [textOf(shelf.slice(0, notes)), ...onStage(stage), textOf(shelf.slice(notes))]
    .map((words) => words.replace(/\s+/gu, ' ').trim())
    .filter(Boolean)
    .join(' ');
}

function onStage(stage: Slide['stage']): readonly string[] {
  switch (stage.kind) {
    case 'open':
      return [`${stage.audience}.`];
    case 'say':
      return [];
    case 'words':
      return stage.blocks.flatMap(ofBlock);
    case 'show':
      return [stage.block.figure.alternative.reading];
    case 'ask':
    case 'answer':
      return [
        textOf(stage.question.prompt),
        ...stage.question.choices.map(({ letter, inlines, key }) =>
          [`${letter}. ${textOf(inlines)}`, ...(key ? [key.value] : [])].join(': ').concat('.'),
        ),
      ];
    case 'do':
      return [...(stage.said ? [`${stage.said}.`] : []), ...numbered(stage.steps.map(textOf))];
    case 'caution':
      return stage.block.lines.map(({ word, inlines }) => `${word}: ${textOf(inlines)}`);
    case 'sources':
      return stage.sources.map(({ number, words }) => `${number}. ${words}`);
  }
}

function ofBlock(block: Block): readonly string[] {
  if (block.kind === 'list') {
    const items = block.items.map((item) => item.flatMap(ofBlock).join(' '));
    return block.ordered ? numbered(items, block.start) : items;
  }
  return 'inlines' in block ? [textOf(block.inlines)] : [];
}

const numbered = (items: readonly string[], start = 1) =>
  items.map((item, index) => `${start + index}. ${item}`);

function textOf(inlines: readonly Inline[]): string {
  return inlines.map((inline) => inline.text).join('');
}
