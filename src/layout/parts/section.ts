import type { Block } from '../../document/index.js';
import { BADGE_INDENT, layBadge } from '../blocks/badge.js';
import { layBlocks } from '../blocks/index.js';
import { BREAK, type Desk, keptWithNext, type PaperBox } from '../desk.js';
import { addArtifact, type PageDraft } from '../pen.js';
import { layoutProblem } from '../problems.js';
import { paintText, type SetText } from '../rows.js';
import type { Draft } from '../structure.js';
import { SPACE } from '../tokens.js';
import type { TypeRole } from '../type.js';

type Heading = Block & { readonly kind: 'heading' };

/** A head and what stands under it; blocks before the first head make a section without one. */
export interface Section {
  readonly head?: Heading;
  readonly blocks: readonly Block[];
}

export function sectionsOf(blocks: readonly Block[]): Section[] {
  const sections: { head?: Heading; blocks: Block[] }[] = [];
  for (const block of blocks) {
    if (block.kind === 'heading' && block.level === 2) sections.push({ head: block, blocks: [] });
    else if (sections.length === 0) sections.push({ blocks: [block] });
    else sections.at(-1)?.blocks.push(block);
  }
  return sections;
}

/** The rule that opens a section: heavy over the rail, light from there on. The step marks the axis' rail. */
export function paintRule(desk: Desk, page: PageDraft, top: number): void {
  const { pen, grid } = desk;
  const { colors, strokes } = pen;
  const light = strokes.hair;
  addArtifact(page, 'layout', [
    pen.rect(grid.side, top, grid.rail, strokes.bold, { fill: colors.ink }),
    pen.rect(grid.side + grid.rail, top, grid.measure - grid.rail, light, { fill: colors.ink }),
  ]);
}

export const RULE_AND_SPACE = SPACE.ruleHeight + SPACE.ruleToHead;
/** More lines than this push the text too far from its head. */
const MOST_LINES = 3;

/** What stands in the rail at the start of a section, and how deep it reaches below the rule. */
export interface RailHead {
  readonly height: number;
  paint(page: PageDraft, top: number): void;
}

export function layHead(
  desk: Desk,
  node: Draft,
  head: Heading,
  number: number | undefined,
  role: TypeRole,
): RailHead {
  const { set, grid, pen, report } = desk;
  const badge = number === undefined ? undefined : layBadge(desk, node, number);
  const inset = badge ? BADGE_INDENT : 0;
  const text = set.inlines(node, head.inlines, {
    width: grid.rail - inset,
    role,
    balance: true,
    place: head.place,
  });
  if (text.rows.length > MOST_LINES) {
    report.add(
      layoutProblem(
        'layout/long-head',
        `“${text.text.trim()}” takes ${text.rows.length} lines in the rail.`,
        {
          hint: 'Say it in fewer words.',
          actual: `${text.rows.length} lines`,
          expected: [`at most ${MOST_LINES}`],
          ...(head.place ? { place: head.place } : {}),
        },
      ),
    );
  }
  return railHead(desk, text, (page, top) => {
    badge?.(page, grid.side, top);
    paintText(page, pen, text, grid.side + inset, top);
  });
}

function railHead(desk: Desk, text: SetText, paint: RailHead['paint']): RailHead {
  return { height: Math.max(text.height, desk.type.head.leading), paint };
}

/** Rule, head in the rail, and the blocks beside and under it. */
export function sectionBoxes(
  desk: Desk,
  section: Section,
  options: { readonly before: number; readonly numbers: ReadonlyMap<Block, number> },
): PaperBox[] {
  const { tree, grid, type } = desk;
  desk.outline.restart();
  const parent = section.head ? tree.add(tree.root, 'Sect') : tree.root;
  const head = section.head
    ? layHead(
        desk,
        tree.add(parent, desk.outline.role(2)),
        section.head,
        options.numbers.get(section.head),
        type.head,
      )
    : undefined;
  const opening: PaperBox = {
    height: RULE_AND_SPACE,
    before: options.before,
    keep: 'must',
    cost: BREAK.section,
    opens: true,
    railFrom: 0,
    ...(head ? { railUntil: RULE_AND_SPACE + head.height } : {}),
    paint(page, top) {
      paintRule(desk, page, top);
      head?.paint(page, top + RULE_AND_SPACE);
    },
  };
  const column = { x: grid.axis, width: grid.column };
  const boxes = layBlocks(desk, section.blocks, column, parent, options.numbers);
  // A head alone makes no section: it is kept with whatever comes next.
  return boxes.length > 0 ? [opening, ...boxes] : keptWithNext([opening]);
}
