import type { Block } from '../../document/index.js';

/** What a learner works on. */
function isTask(block: Block): boolean {
  switch (block.kind) {
    case 'question':
    case 'write':
    case 'card':
    // On a key a reason stands in the place of what was to be written.
    case 'why':
      return true;
    case 'figure':
      return block.figure.mode !== 'shown';
    case 'table':
      return block.rows.some((row) => row.some((cell) => cell.field));
    default:
      return false;
  }
}

/**
 * Numbers of the tasks, by the block that shows the badge: a head whose section holds one question or
 * other task, else each question. A section with nothing to do has no number.
 */
export function numberTasks(blocks: readonly Block[]): ReadonlyMap<Block, number> {
  const numbers = new Map<Block, number>();
  let head: Block | undefined;
  let tasks: Block[] = [];
  const close = () => {
    const questions = tasks.filter((block) => block.kind === 'question');
    const badged = head && questions.length <= 1 ? (tasks.length > 0 ? [head] : []) : questions;
    for (const block of badged) numbers.set(block, numbers.size + 1);
  };
  for (const block of blocks) {
    if (block.kind === 'heading' && block.level === 2) {
      close();
      head = block;
      tasks = [];
    } else if (isTask(block)) tasks.push(block);
  }
  close();
  return numbers;
}
