import { createReport, type Problem } from '../../../src/diagnostics/index.js';
import type { Deck } from '../../../src/document/index.js';
import {
  createFrames,
  draw,
  type Ink,
  type Mark,
  shelfMarks,
  textBoxes,
  vessel,
} from '../../../src/figures/index.js';
import type { Page, Pages, StructureNode } from '../../../src/layout/index.js';
import { layOutDeck, type SlideTools } from '../../../src/outputs/slides/index.js';
import { fonts } from '../../figures/samples.js';

export { fonts };
export const frames = createFrames();

export interface Laid {
  readonly pages: Pages;
  readonly problems: readonly Problem[];
  readonly codes: readonly string[];
}

/** Lays a deck out as the program does, with real figures. */
export async function layOut(deck: Deck, ink: Ink = 'color'): Promise<Laid> {
  const report = createReport();
  const { language, direction } = deck;
  const tools: SlideTools = {
    fonts,
    frames,
    ink,
    date: '2027-02-01',
    sign: (sign, size) => shelfMarks(sign, size, ink),
    picture: (name) => vessel(name, ink),
    draw(spec, width, height) {
      const options = {
        fonts,
        medium: 'screen',
        ink,
        level: 'plain',
        language,
        direction,
        width,
        height,
      } as const;
      const drawn = draw(spec, options);
      for (const found of drawn.problems) report.add(found);
      return drawn.drawing;
    },
  };
  const pages = await layOutDeck(deck, tools, report);
  return { pages, problems: report.problems, codes: report.problems.map((p) => p.code) };
}

/** Points to pixels of the slide: CSS has 96 to the inch, PDF 72. */
const PIXELS = 96 / 72;

export interface Words {
  readonly text: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export const marksOf = (page: Page | undefined): readonly Mark[] =>
  (page?.items ?? []).flatMap((item) => (item.kind === 'link' ? [] : item.marks));

/** Lines of words that show, with the box around their ink in pixels. */
export function wordsOn(page: Page | undefined): Words[] {
  return textBoxes(marksOf(page))
    .filter(({ words }) => words !== '')
    .map(({ box, words }) => ({
      text: words.replaceAll('\u00a0', ' '),
      left: box.left * PIXELS,
      top: box.top * PIXELS,
      right: box.right * PIXELS,
      bottom: box.bottom * PIXELS,
    }));
}

/** Sizes of all words that show, in pixels. */
export function sizesOn(
  marks: readonly Mark[],
  scale = PIXELS,
): { readonly size: number; readonly text: string }[] {
  return marks.flatMap((mark) => {
    if (mark.kind === 'group') return sizesOn(mark.marks, scale * Math.abs(mark.at?.[3] ?? 1));
    return mark.kind === 'text' && !mark.hidden
      ? mark.line.runs
          .filter((run) => run.text.trim() !== '')
          .map((run) => ({ size: run.size * scale, text: run.text }))
      : [];
  });
}

/** The shelf's upper edge: the heavy line over the whole width. */
export function shelfOf(page: Page | undefined): number {
  const heavy = shapesOn(marksOf(page)).find(
    ({ right, left, bottom, top }) => right - left > 1279 && Math.abs(bottom - top - 6) < 0.1,
  );
  if (!heavy) throw new Error('The slide has no shelf.');
  return heavy.top;
}

export interface Shape {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly fill?: string;
  readonly stroke?: { readonly color: string; readonly width: number };
}

/** Boxes around the points of all shapes outside rotated groups, in pixels. */
export function shapesOn(marks: readonly Mark[], at = { scale: PIXELS, x: 0, y: 0 }): Shape[] {
  return marks.flatMap((mark): Shape[] => {
    if (mark.kind === 'group') {
      const [a, b, , , e, f] = mark.at ?? [1, 0, 0, 1, 0, 0];
      if (b !== 0) return [];
      return shapesOn(mark.marks, { scale: at.scale * a, x: at.x + e * at.scale, y: at.y + f * at.scale });
    }
    if (mark.kind !== 'shape') return [];
    const numbers = (mark.path.match(/-?[\d.]+/g) ?? []).map(Number);
    const xs = numbers.filter((_, i) => i % 2 === 0).map((x) => at.x + x * at.scale);
    const ys = numbers.filter((_, i) => i % 2 === 1).map((y) => at.y + y * at.scale);
    return [
      {
        left: Math.min(...xs),
        right: Math.max(...xs),
        top: Math.min(...ys),
        bottom: Math.max(...ys),
        ...(typeof mark.fill === 'string' ? { fill: mark.fill } : {}),
        ...(mark.stroke ? { stroke: { color: mark.stroke.color, width: mark.stroke.width * at.scale } } : {}),
      },
    ];
  });
}

type Box = Pick<Shape, 'left' | 'top' | 'right' | 'bottom'>;

const meet = (a: Box, b: Box) =>
  Math.min(a.right, b.right) - Math.max(a.left, b.left) > 0.5 &&
  Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 0.5;

/** Boxes around the pictures that stand on the shelf: drawings in the background. */
export function picturesOn(page: Page | undefined): Box[] {
  const drawn = (page?.items ?? []).flatMap((item) => (item.kind === 'artifact' ? item.marks : []));
  return drawn
    .flatMap((mark) => (mark.kind === 'group' ? mark.marks : []))
    .filter((mark) => mark.kind === 'group')
    .map((mark) => {
      const shapes = shapesOn([{ kind: 'group', at: [0.75, 0, 0, 0.75, 0, 0], marks: [mark] }]);
      return {
        left: Math.min(...shapes.map(({ left }) => left)),
        top: Math.min(...shapes.map(({ top }) => top)),
        right: Math.max(...shapes.map(({ right }) => right)),
        bottom: Math.max(...shapes.map(({ bottom }) => bottom)),
      };
    });
}

/**
 * What is wrong with where words stand: outside stage and shelf, across the shelf's edge, on other words
 * or on a picture.
 */
export function smudges(page: Page | undefined): string[] {
  const lines = wordsOn(page);
  const shelf = shelfOf(page);
  const found: string[] = [];
  const pictures = picturesOn(page);
  for (const [index, a] of lines.entries()) {
    // A letter may lean out of its line (a large j by 5 pixels); a draft's tab stands above the stage.
    if (a.left < 48 || a.right > 1232 || a.top < 0 || a.bottom > 720)
      found.push(`“${a.text}” stands outside.`);
    if (a.top < shelf && a.bottom > shelf + 1) found.push(`“${a.text}” stands on the shelf's edge.`);
    for (const b of lines.slice(index + 1)) if (meet(a, b)) found.push(`“${a.text}” stands on “${b.text}”.`);
    if (pictures.some((picture) => meet(a, picture))) found.push(`“${a.text}” stands on a picture.`);
  }
  return found;
}

/** Every page's smudges and words under 24 points, each with its page. */
export function faults(pages: Pages): string[] {
  return pages.pages.flatMap((page, index) => [
    ...smudges(page).map((fault) => `page ${index + 1}: ${fault}`),
    ...sizesOn(marksOf(page))
      .filter(({ size }) => size < 32 - 0.01)
      .map(({ size, text }) => `page ${index + 1}: “${text}” has ${size} pixels.`),
  ]);
}

/** Roles of a page's part of the structure with what they say, two blanks a level. */
export function outlineOf(pages: Pages, page: number): string[] {
  const section = pages.structure.children[page];
  const said = new Map<string, string>();
  for (const item of pages.pages[page]?.items ?? [])
    if (item.kind === 'content') said.set(item.node, `${said.get(item.node) ?? ''}${textOf(item.marks)}`);
  const lines: string[] = [];
  const visit = (node: StructureNode, depth: number): void => {
    const own = (said.get(node.id) ?? '').replace(/\s+/gu, ' ').trim();
    lines.push(`${'  '.repeat(depth)}${node.role}${own === '' ? '' : ` ${own}`}`);
    for (const child of node.children) visit(child, depth + 1);
  };
  for (const child of section?.children ?? []) visit(child, 0);
  return lines;
}

export function textOf(marks: readonly Mark[]): string {
  return marks
    .map((mark) => (mark.kind === 'text' ? mark.line.text : mark.kind === 'group' ? textOf(mark.marks) : ''))
    .join('');
}

/** Ids of all elements of a structure, in reading order. */
export function idsOf(node: StructureNode): string[] {
  return [node.id, ...node.children.flatMap(idsOf)];
}
