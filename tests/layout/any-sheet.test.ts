import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createReport } from '../../src/diagnostics/index.js';
import type { Block, Inline, Sheet } from '../../src/document/index.js';
import { compose, type Pages, type StructureNode } from '../../src/layout/index.js';
import {
  collisions,
  nodesOf,
  nodesWith,
  outsideSafe,
  placedTexts,
  spoken,
  structureFaults,
} from './reading.js';
import { bricks, cautions, handout, INTERPRETER, lanes } from './sample.js';
import { fonts, plainFigures } from './tools.js';

/**
 * Sheets of any blocks in any order. Every word is numbered, so that a lost, doubled or misplaced one
 * shows at once.
 */
type Shape =
  | { readonly kind: 'heading'; readonly level: 2 | 3 | 4; readonly words: number }
  | { readonly kind: 'paragraph' | 'basis' | 'figure-caution' | 'why'; readonly words: number }
  | { readonly kind: 'list' | 'quote'; readonly ordered: boolean; readonly items: readonly number[] }
  | {
      readonly kind: 'table';
      readonly columns: number;
      readonly rows: readonly number[];
      readonly head: boolean;
    }
  | { readonly kind: 'figure'; readonly lanes: boolean }
  | { readonly kind: 'choose'; readonly items: number }
  | { readonly kind: 'question'; readonly words: number; readonly choices: number; readonly key: boolean }
  | { readonly kind: 'write'; readonly lines: number };

const count = (max: number) => fc.integer({ min: 1, max });
const shape: fc.Arbitrary<Shape> = fc.oneof(
  {
    weight: 3,
    arbitrary: fc.record({
      kind: fc.constant('heading' as const),
      level: fc.constantFrom(2 as const, 3 as const, 4 as const),
      words: count(5),
    }),
  },
  {
    weight: 5,
    arbitrary: fc.record({
      kind: fc.constantFrom(
        'paragraph' as const,
        'basis' as const,
        'figure-caution' as const,
        'why' as const,
      ),
      words: count(90),
    }),
  },
  {
    weight: 2,
    arbitrary: fc.record({
      kind: fc.constantFrom('list' as const, 'quote' as const),
      ordered: fc.boolean(),
      items: fc.array(count(40), { minLength: 1, maxLength: 6 }),
    }),
  },
  {
    weight: 2,
    arbitrary: fc.record({
      kind: fc.constant('table' as const),
      columns: count(5),
      rows: fc.array(count(8), { minLength: 1, maxLength: 25 }),
      head: fc.boolean(),
    }),
  },
  fc.record({ kind: fc.constant('figure' as const), lanes: fc.boolean() }),
  fc.record({ kind: fc.constant('choose' as const), items: count(3) }),
  fc.record({
    kind: fc.constant('question' as const),
    words: count(30),
    choices: count(5),
    key: fc.boolean(),
  }),
  fc.record({ kind: fc.constant('write' as const), lines: count(4) }),
);

function blocksOf(shapes: readonly Shape[]): { readonly blocks: Block[]; readonly words: string[] } {
  const words: string[] = [];
  const say = (number: number): Inline[] => {
    const text: string[] = [];
    for (let i = 0; i < number; i += 1) {
      // Lengths from two to ten letters, as in a text.
      const word = `${'beansandpeas'.slice(0, 1 + ((words.length * 7) % 8))}${words.length}`;
      words.push(word);
      text.push(word);
    }
    return [{ text: text.join(' ') }];
  };
  const blockOf = (s: Shape): Block => {
    switch (s.kind) {
      case 'heading':
        return { kind: 'heading', level: s.level, inlines: say(s.words) };
      case 'figure-caution':
        return { kind: s.kind, inlines: say(s.words), cautions: [] };
      case 'paragraph':
      case 'basis':
      case 'why':
        return { kind: s.kind, inlines: say(s.words) };
      case 'list':
        return {
          kind: 'list',
          ordered: s.ordered,
          items: s.items.map((n) => [{ kind: 'paragraph', inlines: say(n) }]),
        };
      case 'quote':
        return { kind: 'quote', blocks: s.items.map((n) => ({ kind: 'paragraph', inlines: say(n) })) };
      case 'table': {
        const row = (n: number) => Array.from({ length: s.columns }, () => ({ inlines: say(n) }));
        const head = s.head ? row(2) : [];
        return { kind: 'table', head, rows: s.rows.map(row), rowHeads: true };
      }
      case 'figure':
        return { kind: 'figure', figure: s.lanes ? lanes : bricks };
      case 'choose':
        return {
          kind: 'choose',
          items: Array.from({ length: s.items }, () => ({ letter: '·', inlines: say(6) })),
        };
      case 'question': {
        const prompt = say(s.words);
        const choices = Array.from({ length: s.choices }, () => ({
          letter: '·',
          inlines: say(4),
          ...(s.key ? { key: { right: true, value: '', why: '' } } : {}),
        }));
        return { kind: 'question', id: 'q', prompt, choices, ...(s.key ? { answer: say(5) } : {}) };
      }
      case 'write':
        return { kind: 'write', label: (say(3)[0] ?? { text: '' }).text, lines: s.lines };
    }
  };
  return { blocks: shapes.map(blockOf), words };
}

const anySheet = fc.record({
  shapes: fc.array(shape, { maxLength: 24 }),
  level: fc.constantFrom('short' as const, 'plain' as const, 'fuller' as const),
  direction: fc.constantFrom('ltr' as const, 'rtl' as const),
  paper: fc.constantFrom('letter' as const, 'a4' as const),
  ink: fc.constantFrom('color' as const, 'one' as const),
  interpreter: fc.boolean(),
});
type AnySheet = typeof anySheet extends fc.Arbitrary<infer T> ? T : never;

function layOut(any: AnySheet): {
  readonly pages: Pages;
  readonly words: readonly string[];
  readonly sheet: Sheet;
} {
  const { blocks, words } = blocksOf(any.shapes);
  const { interpreter: _, ...plain } = handout('plain');
  const sheet: Sheet = {
    ...plain,
    level: any.level,
    direction: any.direction,
    cautions: cautions(any.level),
    blocks,
    ...(any.interpreter && INTERPRETER ? { interpreter: INTERPRETER } : {}),
  };
  const options = { paper: any.paper, ink: any.ink, fonts, figures: plainFigures, date: '2027-02-01' };
  return {
    pages: compose(sheet, { masthead: 'band', numbers: new Map() }, options, createReport()),
    words,
    sheet,
  };
}

/** Pages on which content of these elements stands. */
function pagesOf(pages: Pages, node: StructureNode): number[] {
  const ids = new Set(nodesOf(node).map((n) => n.id));
  return pages.pages.flatMap((page, index) =>
    page.items.some((item) => item.kind === 'content' && ids.has(item.node)) ? [index] : [],
  );
}

type Laid = ReturnType<typeof layOut>;

/** What must hold for every sheet, by name. */
const RULES: Readonly<Record<string, (laid: Laid) => void>> = {
  'says every word once, in the order in which it was written': ({ pages, words }) => {
    const numbered = spoken(pages)
      .split(' ')
      .filter((w) => /^[a-z]+\d+$/.test(w));
    expect(numbered).toEqual(words);
  },

  'keeps letters apart and inside the printer’s margin': ({ pages }) => {
    expect(collisions(pages)).toEqual([]);
    expect(pages.pages.flatMap(outsideSafe)).toEqual([]);
  },

  'has a whole structure, headings without gaps': ({ pages }) => {
    expect(structureFaults(pages)).toEqual([]);
  },

  'never parts a caution, a row of a table or a figure': ({ pages, sheet }) => {
    for (const node of [...nodesWith(pages, 'TR'), ...nodesWith(pages, 'Figure')])
      expect(pagesOf(pages, node).length).toBeLessThanOrEqual(1);
    for (const node of nodesWith(pages, 'Sect').filter((n) => n.title))
      expect(pagesOf(pages, node)).toEqual([0]);
    for (const line of sheet.cautions.lines)
      expect(spoken({ ...pages, pages: pages.pages.slice(0, 1) })).toContain(
        line.inlines.map((i) => i.text).join(''),
      );
  },

  'never strands a heading at the foot of a page': ({ pages }) => {
    const order = pages.pages.flatMap((page, index) =>
      page.items.flatMap((item) => (item.kind === 'content' ? [{ node: item.node, page: index }] : [])),
    );
    const heads = new Set(
      nodesOf(pages.structure)
        .filter((n) => /^H[2-4]$/.test(n.role))
        .map((n) => n.id),
    );
    order.forEach(({ node, page }, index) => {
      const next = order.slice(index + 1).find((o) => o.node !== node);
      if (heads.has(node) && next) expect(next.page).toBe(page);
    });
  },

  'leaves no line of a paragraph alone on a page': ({ pages }) => {
    const texts = placedTexts(pages);
    for (const node of nodesWith(pages, 'P')) {
      const lines = texts.filter((t) => t.node === node.id);
      const byPage = new Map<number, Set<number>>();
      for (const line of lines) {
        const set = byPage.get(line.page) ?? new Set<number>();
        byPage.set(line.page, set.add(Math.round(line.bounds.bottom)));
      }
      if (byPage.size > 1) for (const set of byPage.values()) expect(set.size).toBeGreaterThan(1);
    }
  },

  'repeats the header of a table on every page that goes on with it': ({ pages }) => {
    const texts = placedTexts(pages);
    for (const table of nodesWith(pages, 'Table')) {
      const head = table.children.find((c) => c.role === 'THead');
      const cell = head?.children[0]?.children[0];
      const visible = pagesOf(pages, table).filter((p) => texts.some((t) => t.page === p));
      if (!cell || visible.length < 2) continue;
      const words = texts.find((t) => t.node === cell.id)?.text;
      for (const page of visible) expect(texts.some((t) => t.page === page && t.text === words)).toBe(true);
    }
  },
};

describe('any sheet', () => {
  it(`keeps these rules: ${Object.keys(RULES).join('; ')}`, () => {
    fc.assert(
      fc.property(anySheet, (any) => {
        const laid = layOut(any);
        for (const [rule, check] of Object.entries(RULES)) {
          try {
            check(laid);
          } catch (error) {
            throw new Error(`It breaks the rule: ${rule}.`, { cause: error });
          }
        }
      }),
      { numRuns: 40 },
    );
  }, 120_000);
});
