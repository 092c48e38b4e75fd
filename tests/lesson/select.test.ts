import { describe, expect, it } from 'vitest';
import { type Choice, type Part, select } from '../../src/lesson/index.js';
import { parseBody } from './known.js';

const BODY = `All read this.

:::level{is=short}
Short words.
:::

:::level{is=fuller}
Fuller words.
:::

Between.

:::level{is=plain}
Only plain.
:::

:::::only{out=slides}
Only on slides.
:::::

::::slide{minutes=3}
## A slide

:::level{is=short}
Short on the slide.
:::
::::

::::worksheet
On the worksheet.
::::

::::staff
For the leader.
::::
`;

function words(parts: readonly Part[]): string[] {
  return parts.flatMap((part) => {
    if (part.kind === 'paragraph')
      return part.children.map((node) => (node.kind === 'text' ? node.text : ''));
    return part.kind === 'holder' ? words(part.parts) : [];
  });
}

describe('the parts for an audience', () => {
  const { lesson, found } = parseBody(BODY);
  const chosen = (level: Choice['level'], output: Choice['output']) =>
    words(lesson ? select(lesson, { level, output }) : []);

  it('come from a lesson without mistakes', () => {
    expect(found).toEqual([]);
  });

  it.each([
    ['short', ['All read this.', 'Short words.', 'Between.', 'Only plain.']],
    ['plain', ['All read this.', 'Fuller words.', 'Between.', 'Only plain.']],
    ['fuller', ['All read this.', 'Fuller words.', 'Between.', 'Only plain.']],
  ] as const)('at %s: its own words, or those of the next fuller level', (level, expected) => {
    expect(chosen(level, 'handout')).toEqual(expected);
  });

  it('are what only an output has', () => {
    expect(chosen('plain', 'worksheet')).toEqual(['On the worksheet.']);
    expect(chosen('plain', 'staff')).toEqual(['For the leader.']);
    expect(chosen('short', 'slides')).toEqual(['Only on slides.', 'Short on the slide.']);
  });

  it('never hand out what is only for the leader', () => {
    const { lesson: two } = parseBody(':::level{is=short}\nShort.\n:::\n\n:::level{is=staff}\nNotes.\n:::\n');
    const at = (level: Choice['level']) => words(two ? select(two, { level, output: 'handout' }) : []);
    expect([at('short'), at('plain'), at('fuller'), at('staff')]).toEqual([
      ['Short.'],
      ['Short.'],
      ['Short.'],
      ['Notes.'],
    ]);
  });
});

describe('level blocks that only look like neighbors', () => {
  it('stay apart when what stands between them is opened, or is for another output', () => {
    const level = (is: string, text: string) => `::::level{is=${is}}\n${text}\n::::\n`;
    const { lesson } = parseBody(
      [
        level('short', 'First, short.'),
        level('plain', 'First, plain.'),
        `:::::only{out=handout}\n${level('short', 'Only, short.')}\n${level('plain', 'Only, plain.')}:::::\n`,
        level('short', 'Second, short.'),
        level('plain', 'Second, plain.'),
        '::::slide{minutes=2}\n## A slide\n::::\n',
        level('short', 'Third, short.'),
        level('plain', 'Third, plain.'),
      ].join('\n'),
    );
    const chosen = (output: Choice['output']) =>
      words(lesson ? select(lesson, { level: 'short', output }) : []);
    expect(chosen('handout')).toEqual(['First, short.', 'Only, short.', 'Second, short.', 'Third, short.']);
    expect(chosen('weightfree')).toEqual(['First, short.', 'Second, short.', 'Third, short.']);
  });
});
