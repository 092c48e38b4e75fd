import type { Block } from '../../document/index.js';
import { BREAK, type Desk, type PaperBox, type Slot } from '../desk.js';
import { addArtifact, type PageDraft } from '../pen.js';
import { layoutProblem } from '../problems.js';
import type { Draft } from '../structure.js';
import { mm } from '../tokens.js';
import { layCardBody } from './goal-card-body.js';
import { paintCuts } from './goal-card-cuts.js';

export type Card = Block & { readonly kind: 'card' };

const FRAME = { padding: mm(3), radius: mm(1.2) } as const;
/** From a cut line to the card's outline: more than a printer drifts, which is 2 mm. */
const INSIDE = mm(3.6);
/** Room for the cut marks above and below the cards. */
const MARKS = mm(5.4);
/** What title, footer and marks take of a page of cards. */
const AROUND = mm(70);

/** A card in the column, or over the whole measure as often as the sheet is to be cut. */
export function goalCardBoxes(desk: Desk, block: Card, at: Slot, parent: Draft): PaperBox[] {
  return block.cut ? cutSheets(desk, block, parent) : [oneCard(desk, block, at, parent)];
}

/** A card laid out for a width, frame and padding included. */
interface LaidCard {
  readonly height: number;
  paint(page: PageDraft, x: number, top: number, height: number): void;
}

function layCard(desk: Desk, block: Card, width: number, parent: Draft): LaidCard {
  const { pen, tree } = desk;
  const node = tree.add(parent, 'Div', { title: block.card.title });
  const body = layCardBody(desk, block, width - 2 * FRAME.padding, node);
  return {
    height: body.height + 2 * FRAME.padding,
    paint(page, x, top, height) {
      const look = { stroke: { color: pen.colors.ink, width: pen.strokes.line }, radius: FRAME.radius };
      addArtifact(page, 'layout', [pen.rect(x, top, width, height, look)]);
      body.paint(page, x + FRAME.padding, top + FRAME.padding);
    },
  };
}

function oneCard(desk: Desk, block: Card, at: Slot, parent: Draft): PaperBox {
  const card = layCard(desk, block, at.width, parent);
  return {
    height: card.height,
    before: mm(2),
    keep: false,
    cost: BREAK.part,
    paint: (page, top) => card.paint(page, at.x, top, card.height),
  };
}

interface Cut {
  readonly columns: number;
  readonly rows: number;
}
/** The wish first; where the cautions need more room, fewer cards stand on a sheet, and never fewer cautions. */
const CUTS: Readonly<Record<Card['copies'], readonly Cut[]>> = {
  4: [
    { columns: 2, rows: 2 },
    { columns: 1, rows: 2 },
    { columns: 1, rows: 1 },
  ],
  2: [
    { columns: 1, rows: 2 },
    { columns: 1, rows: 1 },
  ],
};

/** All copies of a card, on as many sheets as they need. */
function cutSheets(desk: Desk, block: Card, parent: Draft): PaperBox[] {
  const room = desk.grid.height - AROUND;
  const widthOf = ({ columns }: Cut) => desk.grid.measure / columns - 2 * INSIDE;
  // Tried out beside the tree, so that what is tried leaves nothing in it.
  const heightOf = (cut: Cut) => layCard(desk, block, widthOf(cut), { ...parent, children: [] }).height;
  const cuts = CUTS[block.copies];
  const fits = cuts.find((cut) => heightOf(cut) + 2 * INSIDE <= room / cut.rows);
  const cut = fits ?? { columns: 1, rows: 1 };
  const each = cut.columns * cut.rows;
  if (cut !== cuts[0])
    desk.report.add(
      layoutProblem(
        'layout/cards',
        `${block.copies} cards with their cautions do not fit on one sheet; ${each === 1 ? 'one stands' : 'two stand'} on each.`,
        {
          hint: block.copies === 4 ? 'Write copies=2, or part the lesson in two.' : 'Part the lesson in two.',
          ...(block.place ? { place: block.place } : {}),
        },
      ),
    );
  return Array.from({ length: block.copies / each }, () => cutSheet(desk, block, cut, room, parent));
}

/** One sheet of cards, with dashed lines between and marks outside. */
function cutSheet(desk: Desk, block: Card, { columns, rows }: Cut, room: number, parent: Draft): PaperBox {
  const { grid } = desk;
  const width = grid.measure / columns;
  const inner = width - 2 * INSIDE;
  const cards = Array.from({ length: columns * rows }, () => layCard(desk, block, inner, parent));
  const least = Math.max(...cards.map((card) => card.height)) + 2 * INSIDE;
  const height = rows === 1 ? least : Math.max(least, room / rows);
  return {
    height: rows * height + 2 * MARKS,
    before: 0,
    keep: false,
    cost: BREAK.section,
    railFrom: 0,
    paint(page, top) {
      const area = { x: grid.side, y: top + MARKS, width, height, columns, rows };
      paintCuts(desk, page, area);
      cards.forEach((card, index) => {
        const x = area.x + (index % columns) * width + INSIDE;
        const y = area.y + Math.floor(index / columns) * height + INSIDE;
        card.paint(page, x, y, height - 2 * INSIDE);
      });
    },
  };
}
