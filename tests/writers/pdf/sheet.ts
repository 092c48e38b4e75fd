import type { Mark, TextInk } from '../../../src/figures/index.js';
import type { Item, Page, Pages, StructureNode } from '../../../src/layout/index.js';
import { type Span, setParagraph, type TextStyle } from '../../../src/text/index.js';
import { fontsOnDisk, style } from '../../text/fonts-on-disk.js';

const fonts = fontsOnDisk();

export interface Words {
  readonly x?: number;
  readonly width?: number;
  readonly hidden?: boolean;
  readonly color?: string;
}

/** Text set as marks, from `y` down. */
export function words(
  text: string | readonly Span<TextInk>[],
  y: number,
  { x = 40, width = 400, hidden = false, color = '#000000', ...change }: Words & Partial<TextStyle> = {},
): { readonly marks: readonly Mark[]; readonly bottom: number } {
  const spans = typeof text === 'string' ? [{ text, data: { color } }] : text;
  const { lines } = setParagraph(fonts, spans, style(change), { width });
  let top = y;
  const marks = lines.map((line): Mark => {
    const mark: Mark = { kind: 'text', x, baseline: top + line.baseline, line, hidden };
    top += line.height;
    return mark;
  });
  return { marks, bottom: top };
}

/** A page that fills from the top. */
export interface Sheet {
  readonly items: Item[];
  y: number;
  /** Content of a node: text below what is there. */
  say(node: string, text: string | readonly Span<TextInk>[], options?: Words & Partial<TextStyle>): void;
  /** Text of an artifact. */
  aside(text: string, options?: Words & Partial<TextStyle>): void;
  /** Content of a node: marks, taking up `height`. */
  draw(node: string, marks: readonly Mark[], height?: number): void;
}

export function createSheet(): Sheet {
  const sheet: Sheet = {
    items: [],
    y: 40,
    say(node, text, options) {
      const { marks, bottom } = words(text, sheet.y, options);
      sheet.items.push({ kind: 'content', node, marks });
      sheet.y = bottom + 6;
    },
    aside(text, options) {
      const { marks, bottom } = words(text, sheet.y, options);
      sheet.items.push({ kind: 'artifact', of: 'pagination', marks });
      sheet.y = bottom + 6;
    },
    draw(node, marks, height = 0) {
      sheet.items.push({ kind: 'content', node, marks });
      sheet.y += height;
    },
  };
  return sheet;
}

export function node(
  id: string,
  role: StructureNode['role'],
  children: readonly StructureNode[] = [],
  more: Partial<StructureNode> = {},
): StructureNode {
  return { id, role, children, ...more };
}

/** Pages of 480 by 800 points. */
export function pagesOf(
  sheets: readonly { readonly items: readonly Item[] }[],
  structure: StructureNode,
  more: Partial<Pages> = {},
): Pages {
  const pages: Page[] = sheets.map(({ items }) => ({ width: 480, height: 800, items }));
  return {
    title: 'Beans & peas <three ways>',
    language: 'en',
    direction: 'ltr',
    pages,
    structure,
    outline: [],
    date: '2026-03-01',
    ...more,
  };
}

export function rectangle(x: number, y: number, width: number, height: number): string {
  return `M${x} ${y}L${x + width} ${y}L${x + width} ${y + height}L${x} ${y + height}Z`;
}
