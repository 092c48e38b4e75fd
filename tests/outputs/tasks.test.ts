import { describe, expect, it } from 'vitest';
import type { Block } from '../../src/document/index.js';
import { numberTasks } from '../../src/outputs/worksheet/index.js';
import { bricks } from '../layout/sample.js';

const head = (text: string): Block => ({ kind: 'heading', level: 2, inlines: [{ text }] });
const text: Block = { kind: 'paragraph', inlines: [{ text: 'Read this first.' }] };
const question = (id: string): Block => ({ kind: 'question', id, prompt: [{ text: id }], choices: [] });
const write: Block = { kind: 'write', label: 'I will', lines: 2 };

function numbered(blocks: readonly Block[]): (string | number)[] {
  const numbers = numberTasks(blocks);
  return blocks.flatMap((block): (string | number)[] => {
    const number = numbers.get(block);
    if (number === undefined) return [];
    return block.kind === 'heading'
      ? [`${block.inlines[0]?.text} ${number}`]
      : block.kind === 'question'
        ? [`${block.id} ${number}`]
        : [number];
  });
}

describe('numbers of tasks', () => {
  it('stand at the head of a section with one thing to do', () => {
    expect(
      numbered([
        head('Rinse'),
        text,
        { kind: 'figure', figure: { ...bricks, mode: 'blank' } },
        head('Plan'),
        write,
      ]),
    ).toEqual(['Rinse 1', 'Plan 2']);
  });

  it('pass over a section with nothing to do, and a figure that is only shown', () => {
    expect(numbered([head('Look'), { kind: 'figure', figure: bricks }, head('Plan'), write])).toEqual([
      'Plan 1',
    ]);
  });

  it('stand at each question where a section holds several', () => {
    expect(
      numbered([head('Quiz'), question('q1'), question('q2'), head('One more'), question('q3')]),
    ).toEqual(['q1 1', 'q2 2', 'One more 3']);
  });

  it('stand at questions before the first head', () => {
    expect(numbered([question('q1'), head('Plan'), write])).toEqual(['q1 1', 'Plan 2']);
  });

  it('count a table with boxes to fill, and not one without', () => {
    const table = (field: boolean): Block => ({
      kind: 'table',
      head: [],
      rowHeads: false,
      rows: [[{ inlines: [], ...(field ? { field: { label: 'Sodium' } } : {}) }]],
    });
    expect(numbered([head('Read'), table(true), head('Look'), table(false)])).toEqual(['Read 1']);
  });
});
