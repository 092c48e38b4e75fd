import type { Block, Inline, Slide } from '../../document/index.js';
import type { Easel } from './easel.js';

/** A house figure for the plain level, which slides are written in. */
const MOST_WORDS = 35;

/** Reports a slide that is read rather than looked at. Figures, cautions, shelf and sources do not count. */
export function checkWords(slide: Slide, easel: Easel): void {
  const count = wordsOn(slide);
  if (count > MOST_WORDS)
    easel.problem(
      'slides/wordy',
      `${count} words stand on the stage; ${MOST_WORDS} is about the most.`,
      'Cut words, or say them instead.',
    );
}

function wordsOn({ title, stage }: Slide): number {
  const head = count(title);
  switch (stage.kind) {
    case 'open':
      return head + count([{ text: stage.audience }]);
    case 'words':
      return head + ofBlocks(stage.blocks);
    case 'do':
      return head + stage.steps.reduce((sum, step) => sum + count(step), 0);
    case 'ask':
    case 'answer':
      return head + stage.question.choices.reduce((sum, choice) => sum + count(choice.inlines), 0);
    case 'say':
    case 'show':
      return head;
    case 'caution':
    case 'sources':
      return 0;
  }
}

function ofBlocks(blocks: readonly Block[]): number {
  return blocks.reduce((sum, block) => {
    if (block.kind === 'list') return sum + ofBlocks(block.items.flat());
    return 'inlines' in block ? sum + count(block.inlines) : sum;
  }, 0);
}

/** Words between blanks; what has no letter or digit is none. */
function count(inlines: readonly Inline[]): number {
  const text = inlines.map((inline) => inline.text).join('');
  return text.split(/\s+/u).filter((word) => /[\p{L}\p{N}]/u.test(word)).length;
}
