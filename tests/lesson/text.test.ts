import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { InlineNode, Part } from '../../src/lesson/index.js';
import { parseBody } from './known.js';

function words(nodes: readonly InlineNode[]): string {
  return nodes
    .map((node) => {
      if (node.kind === 'text' || node.kind === 'code' || node.kind === 'term') return node.text;
      return 'children' in node ? words(node.children) : '';
    })
    .join('');
}

function textOf(parts: readonly Part[]): string {
  return parts
    .map((part) => (part.kind === 'paragraph' || part.kind === 'heading' ? words(part.children) : ''))
    .join('\n');
}

describe('colons in running text', () => {
  it.each([
    'The talk starts at 9:30 and ends at 10:10.',
    'Mix 1:3, or fruit:veg 2:1.',
    'Write to mailto:a@b.org or x.org:80/path.',
    'A ratio of 10:t and :smile: stay.',
    'Note:this and C:\\beans stay too.',
    'At 6:30pm:sharp, table:n and a:b:c.',
    'Ranges such as 100~200 and 3~4 stay.',
  ])('%s', (line) => {
    const { lesson, found } = parseBody(line);
    expect(found).toEqual([]);
    expect(textOf(lesson?.parts ?? [])).toBe(line.replaceAll('\\\\', '\\'));
  });

  it('keep every character, whatever stands around them', () => {
    const piece = fc.constantFrom(
      'a',
      ':',
      ' ',
      '9',
      'n',
      'cite',
      't',
      '::',
      ':b',
      '.',
      '/',
      '@',
      '3:4',
      'é',
      '中',
    );
    fc.assert(
      fc.property(fc.array(piece, { minLength: 1, maxLength: 14 }), (pieces) => {
        const line = `x${pieces.join('')}x`;
        const { lesson } = parseBody(line);
        return textOf(lesson?.parts ?? []).replace(/\s+/g, ' ') === line.replace(/\s+/g, ' ');
      }),
      { numRuns: 500 },
    );
  });
});

describe('what is read in running text', () => {
  const body = [
    'It has :n[sodium]{of=pinto row="canned, drained"} (:cite[usda-sr28]), :t[added sugars] too.',
    '',
    ':::form-compare{id=pinto food="pinto beans" basis="1 cup, ready to eat" show="sodium"}',
    '- canned, drained',
    '- canned, drained and rinsed',
    ':::',
  ].join('\n');
  it('are numbers, sources and terms with a label', () => {
    const { lesson, found } = parseBody(body);
    expect(found).toEqual([]);
    const [first] = lesson?.parts ?? [];
    const kinds = first?.kind === 'paragraph' ? first.children.map((node) => node.kind) : [];
    expect(kinds).toEqual(['text', 'number', 'text', 'cite', 'text', 'term', 'text']);
  });

  it('keep their places', () => {
    const { lesson } = parseBody(body);
    const [first] = lesson?.parts ?? [];
    const number =
      first?.kind === 'paragraph' ? first.children.find((node) => node.kind === 'number') : undefined;
    expect([number?.place.column, number?.place.endColumn]).toEqual([8, 50]);
  });
});

describe('rows of a directive', () => {
  it('keep their words, escapes resolved, and lead back to the source', () => {
    const { lesson, found } = parseBody(
      [
        ':::quiz{id=q basis="1 cup, ready to eat"}',
        '- Q: Which \\*one\\* has',
        '  the least?',
        '  - peas ; why = a & b',
        '  - beans ; why = 2*3*4',
        '  - answer = min(sodium)',
        ':::',
      ].join('\n'),
    );
    expect(found).toEqual([]);
    const [quiz] = lesson?.parts ?? [];
    const row = quiz?.kind === 'directive' ? quiz.rows[0] : undefined;
    expect(row?.text).toBe('Q: Which *one* has the least?');
    expect(row?.rows.map((r) => r.text)).toEqual([
      'peas ; why = a & b',
      'beans ; why = 2*3*4',
      'answer = min(sodium)',
    ]);
    const mark = row?.marks.at(-1);
    expect(mark).toMatchObject({ at: 19, column: 3 });
  });
});
