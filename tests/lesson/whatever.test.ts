import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Problem } from '../../src/diagnostics/index.js';
import type { InlineNode, Line, Part, Row } from '../../src/lesson/index.js';
import { FRONT, parseBody } from './known.js';

/** Pieces that mean something to Markdown, to directives or to neither. */
const PIECES = [
  ':::level{is=short}\n',
  '::::slide{minutes=2}\n',
  ':::say\n',
  '::::\n',
  ':::\n',
  '::show{figure=a}\n',
  '::write{label="x"}\n',
  '::: foo {a=b\n',
  ':::quiz{id=q basis="1 cup, ready to eat"}\n',
  '- Q: a\n',
  '  - b ; why = c\n',
  ...['> ', '- ', '1. ', '```\n', '~~~\n', '---\n', '===\n', '| a | b |\n', '|---|---|\n'],
  ...['text ', '9:30 ', ':n[a]{of=q} ', ':n[', '::', '{', '}', '"', '“', '[', ']', '(', ')'],
  ...['![a](pictures/a.png)', '<b>', '<!--', '-->', '*', '**', '_', '~~', '`', '\\', '&amp;'],
  ...['\n', '\n\n', '    ', '\t', 'é中', '[a]: http://x.org\n', '[^1]', '[^1]: x\n', '# H\n'],
  ...['\u0000', '\ud800', '\r\n', '\r', ' ; ', 'id=a ', ',', '#'],
];
const body = fc.array(fc.constantFrom(...PIECES), { maxLength: 60 }).map((pieces) => pieces.join(''));

const linesOf = (text: string) => (FRONT + text).replace(/\r\n?/g, '\n').split('\n');

function inside(problem: Problem, lines: readonly string[]): boolean {
  const { place } = problem;
  const line = place && lines[place.line - 1];
  return line !== undefined && place !== undefined && place.column >= 1 && place.column <= line.length + 1;
}

/** Every text and every line of words of a lesson, wherever it stands. */
function wordsIn(parts: readonly Part[]): (InlineNode | Line)[] {
  const deep = (nodes: readonly InlineNode[]): InlineNode[] =>
    nodes.flatMap((node) => ('children' in node ? deep(node.children) : [node]));
  const rows = (list: readonly Row[]): (InlineNode | Line)[] =>
    list.flatMap((row) => [row, ...deep(row.inlines), ...rows(row.rows)]);
  return parts.flatMap((part): (InlineNode | Line)[] => {
    if (part.kind === 'heading' || part.kind === 'paragraph') return deep(part.children);
    if (part.kind === 'list') return part.items.flatMap((item) => wordsIn(item.parts));
    if (part.kind === 'table') return [part.head, ...part.rows].flat().flatMap((cell) => deep(cell.children));
    if (part.kind === 'quote' || part.kind === 'holder') return wordsIn(part.parts);
    return part.kind === 'directive' ? [...part.text, ...rows(part.rows), ...wordsIn(part.parts)] : [];
  });
}

describe('whatever is written', () => {
  it('gives a problem inside the text, with words and a hint, and never throws', () => {
    fc.assert(
      fc.property(body, (text) => {
        const lines = linesOf(text);
        for (const problem of parseBody(text).problems) {
          expect(inside(problem, lines), JSON.stringify(problem)).toBe(true);
          expect(problem.message).toMatch(/[.!?]$/);
          expect(problem.hint ?? '').not.toBe('');
        }
      }),
      { numRuns: 600 },
    );
  });

  it('keeps the place of every word', () => {
    const at = (lines: readonly string[], line: number, column: number) =>
      lines[line - 1]?.slice(column - 1) ?? '';
    fc.assert(
      fc.property(body, (written) => {
        // Escapes and references are shorter in the text than in the source; others test them.
        const text = written.replace(/[\\&]|\p{Surrogate}|(?![\n\r\t])\p{Cc}/gu, ' ');
        const lines = linesOf(text);
        for (const word of wordsIn(parseBody(text).lesson?.parts ?? [])) {
          if ('marks' in word)
            for (const [index, mark] of word.marks.entries()) {
              const stretch = word.text.slice(mark.at, word.marks[index + 1]?.at).trimEnd();
              expect(at(lines, mark.line, mark.column).startsWith(stretch)).toBe(true);
            }
          else if (word.kind === 'text')
            expect(at(lines, word.place.line, word.place.column).startsWith(word.text.trimEnd())).toBe(true);
        }
      }),
      { numRuns: 600 },
    );
  });
});
