import type { Report } from '../diagnostics/index.js';
import type { Block } from '../document/index.js';
import type { Pages, StructureNode } from '../layout/index.js';
import { type Built, blocksOf, plain, spoilsOf, textOf } from './built.js';
import { checkProblem } from './codes.js';

export interface StructureInput {
  readonly built: readonly Built[];
}

/**
 * A04, before any file is written: titles and languages are there, headings step down without a gap, tables
 * have heads for every column, and on laid-out pages all content is tagged, each tag once, figures with
 * alternative and place. The writer looks again at the finished file.
 */
export function checkStructure({ built }: StructureInput, report: Report): void {
  for (const output of built) {
    const tell: Tell = (message, hint, block) =>
      report.add(
        checkProblem('A04', `${output.name}: ${message}`, {
          ...(block?.place ? { place: block.place } : {}),
          hint,
          spoils: spoilsOf(output),
        }),
      );
    checkTitle(output, tell);
    if (output.kind === 'sheet') checkHeadings(output.sheet.blocks, tell);
    for (const block of blocksOf(output)) if (block.kind === 'table') checkTable(block, tell);
    if (output.pages) checkPages(output.pages, tell);
  }
}

type Tell = (message: string, hint: string, block?: Block) => void;

function checkTitle(output: Built, tell: Tell): void {
  const { title, language } = output.kind === 'deck' ? output.deck : output.sheet;
  if (plain(title) === '') tell('it has no title.', 'Write `title:` at the top of the lesson.');
  if (plain(language) === '') tell('it has no language.', 'Write `language:` at the top of the lesson.');
  if (output.kind !== 'deck') return;
  for (const slide of output.deck.slides)
    if (textOf(slide.title) === '')
      tell(`slide ${slide.number} has no title.`, 'Begin the slide with a heading.');
}

/** The title is level 1, so the first heading is 2 and each next one at most one deeper. */
function checkHeadings(blocks: readonly Block[], tell: Tell): void {
  let last = 1;
  for (const block of blocks) {
    if (block.kind !== 'heading') continue;
    const words = textOf(block.inlines);
    if (words === '') tell('a heading has no words.', 'Write the heading, or take it out.', block);
    if (block.level > last + 1)
      tell(
        `the heading "${words}" is level ${block.level} after level ${last}.`,
        `Make it level ${last + 1}.`,
        block,
      );
    last = block.level;
  }
}

function checkTable(block: Block & { readonly kind: 'table' }, tell: Tell): void {
  const empty = block.head.filter((cell) => textOf(cell.inlines) === '').length;
  // The corner over a column of row heads may be empty.
  const corner =
    block.rowHeads && block.head[0] !== undefined && textOf(block.head[0].inlines) === '' ? 1 : 0;
  if (block.head.length === 0 || empty - corner > 0)
    tell(
      'a table has a column without a head.',
      'Give every column a head that names what stands in it.',
      block,
    );
  if (block.rows.some((row) => row.length !== block.head.length))
    tell(
      'a table has a row with more or fewer cells than its head.',
      'Give every row one cell for each column.',
      block,
    );
}

const HEADING: Readonly<Record<string, number>> = { H1: 1, H2: 2, H3: 3, H4: 4 };

function checkPages(pages: Pages, tell: Tell): void {
  const inside = 'This is a fault of the program: report it with the lesson.';
  if (plain(pages.title) === '') tell('the pages have no title.', 'Write `title:` at the top of the lesson.');
  if (plain(pages.language) === '')
    tell('the pages have no language.', 'Write `language:` at the top of the lesson.');
  const nodes = all(pages.structure);
  const ids = new Map(nodes.map((n) => [n.id, n]));
  if (ids.size < nodes.length) tell('an element of the structure stands twice.', inside);
  const used = new Set<string>();
  for (const item of pages.pages.flatMap((p) => p.items)) {
    if (item.kind === 'artifact') continue;
    const node = ids.get(item.node);
    if (!node)
      tell(`something on a page belongs to \`${item.node}\`, which the structure does not have.`, inside);
    else if (item.kind === 'link' && node.role !== 'Link') tell(`a link belongs to a ${node.role}.`, inside);
    used.add(item.node);
  }
  let last = 0;
  for (const node of nodes) {
    if (node.role === 'Figure') {
      if (plain(node.alt ?? '') === '')
        tell('a figure on a page has no alternative text.', 'Give the figure its alternative.');
      if (!node.box) tell('a figure on a page has no place.', inside);
      if (!used.has(node.id)) tell('a figure of the structure is on no page.', inside);
    }
    if (node.role === 'Table' && !all(node).some((n) => n.role === 'TH'))
      tell('a table on a page has no header cells.', inside);
    if (node.role === 'TH' && !node.scope) tell('a header cell does not say what it heads.', inside);
    const level = HEADING[node.role];
    if (level === undefined) continue;
    if (level > last + 1)
      tell(
        `the pages step from heading level ${last} to ${level}.`,
        last === 0 ? 'Give the pages a title of level 1.' : `Make it level ${last + 1}.`,
      );
    last = level;
  }
}

/** A node and all below it, in reading order. */
function all(node: StructureNode): StructureNode[] {
  return [node, ...node.children.flatMap(all)];
}
