import { describe, expect, it } from 'vitest';
import type { Sheet } from '../../src/document/index.js';
import { collisions, outsideSafe, placedTexts, spoken, structureFaults } from '../layout/reading.js';
import { handout } from '../layout/sample.js';
import { layOut } from './lay-out.js';

const plain = handout('plain');

const cases: readonly (readonly [string, Partial<Sheet>])[] = [
  [
    'a title of three lines',
    { title: 'Beans, peas and lentils, canned, frozen or dried, in three ways for a family of four' },
  ],
  ['a message of one line', { message: [{ text: 'Rinse.' }] }],
  ['a long message', { message: [{ text: 'Every kind of bean fills you up for little money. '.repeat(4) }] }],
  ['no picture of that name', { emblem: '' }],
  ['no message', { message: [] }],
  [
    'a strip too long for one line',
    {
      strip: {
        start: 'Pinewater Family Clinic and Lantern Street Hall',
        end: 'Take-home sheet · a talk in February for everybody who shops and cooks',
      },
    },
  ],
  [
    'a long interpreter line',
    {
      interpreter: {
        parts: Array.from({ length: 14 }, () => ({ text: 'Intérprete gratis', language: 'es' })),
      },
    },
  ],
  [
    'a long word of caution',
    {
      cautions: {
        whoToAsk: 'your doctor, nurse, pharmacist, dietitian or midwife',
        lines: [
          { id: 'a', heading: 'Ask first', word: 'Before you start, ask', inlines: [{ text: 'Ask.' }] },
        ],
      },
    },
  ],
  ['no sources and no interpreter', { sources: [] }],
];

describe.each(cases)('a handout with %s', (_, more) => {
  const sheet = { ...plain, ...more };

  it.each(['letter', 'a4'] as const)('keeps its letters apart and inside the margin on %s', (paper) => {
    const { pages } = layOut(sheet, { paper });
    expect(collisions(pages)).toEqual([]);
    expect(pages.pages.flatMap(outsideSafe)).toEqual([]);
    expect(structureFaults(pages)).toEqual([]);
    expect(spoken(pages)).toContain(sheet.title);
  });
});

describe('the body', () => {
  it('ends above the footer, which is higher when its lines are more', () => {
    const short = layOut(plain).pages;
    const tall = layOut({
      ...plain,
      interpreter: {
        parts: Array.from({ length: 14 }, () => ({ text: 'Intérprete gratis', language: 'es' })),
      },
    }).pages;
    for (const pages of [short, tall]) {
      const foot = placedTexts(pages).filter((t) => t.page === 0 && /Intérprete/.test(t.text));
      const top = Math.min(...foot.map((t) => t.bounds.top));
      const body = placedTexts(pages).filter(
        (t) =>
          t.page === 0 &&
          !/Intérprete|interpreter|BEANS3|Food data|Page|مترجم|Entèprèt|Thông|免费/.test(t.text),
      );
      expect(Math.max(...body.map((t) => t.bounds.bottom))).toBeLessThan(top);
    }
  });

  it.each([
    ['with', 258, plain.interpreter],
    ['without', 264, { parts: [] }],
  ] as const)(
    'ends by the line of the grid on Letter, %s an interpreter line (%d mm)',
    (_, limit, interpreter) => {
      const line = (index: number) => ({ kind: 'paragraph' as const, inlines: [{ text: `line ${index}` }] });
      const blocks = Array.from({ length: 80 }, (__, index) => line(index));
      const { interpreter: ___, ...bare } = plain;
      const sheet = {
        ...bare,
        kind: 'notes' as const,
        blocks,
        ...(interpreter?.parts.length ? { interpreter } : {}),
      };
      const { pages } = layOut(sheet);
      const bottoms = placedTexts(pages)
        .filter((t) => t.page === 0 && t.text.startsWith('line '))
        .map((t) => (t.bounds.bottom * 25.4) / 72);
      expect(Math.max(...bottoms)).toBeLessThanOrEqual(limit);
      // No more than a line and its space above are left over.
      expect(Math.max(...bottoms)).toBeGreaterThan(limit - 9);
    },
  );
});
