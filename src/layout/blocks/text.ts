import type { Block } from '../../document/index.js';
import {
  BREAK,
  type Desk,
  type LayBlocks,
  type PaperBox,
  rowBoxes,
  type Slot,
  together,
  under,
  withSpace,
} from '../desk.js';
import { addArtifact } from '../pen.js';
import { paintText } from '../rows.js';
import type { Draft } from '../structure.js';
import { mm, SPACE } from '../tokens.js';

type Of<K extends Block['kind']> = Block & { readonly kind: K };

export function paragraphBoxes(desk: Desk, block: Of<'paragraph'>, at: Slot, parent: Draft): PaperBox[] {
  const node = desk.tree.add(parent, 'P');
  const text = desk.set.inlines(node, block.inlines, {
    width: at.width,
    role: desk.type.body,
    place: block.place,
  });
  return rowBoxes(desk, text, at, { before: SPACE.paragraph, cost: BREAK.paragraph });
}

/** A head of the third or fourth level stands above its text, at the axis. */
export function subheadBoxes(desk: Desk, block: Of<'heading'>, at: Slot, parent: Draft): PaperBox[] {
  const node = desk.tree.add(parent, desk.outline.role(block.level));
  const text = desk.set.inlines(node, block.inlines, {
    width: at.width,
    role: block.level === 4 ? desk.type.minorHead : desk.type.subhead,
    balance: true,
    place: block.place,
  });
  return rowBoxes(desk, text, at, { before: SPACE.subhead, cost: BREAK.subhead }).map((box) => ({
    ...box,
    keep: 'must' as const,
  }));
}

export function basisBoxes(desk: Desk, block: Of<'basis'>, at: Slot, parent: Draft): PaperBox[] {
  const node = desk.tree.add(parent, 'P');
  const text = desk.set.inlines(node, block.inlines, {
    width: at.width,
    role: desk.type.basis,
    color: desk.pen.colors.slate,
    place: block.place,
  });
  return together(rowBoxes(desk, text, at, { before: SPACE.figureToBasis, cost: BREAK.part }));
}

const CAUTION_BAR = mm(1.6);
const CAUTION_GAP = mm(2.4);

/** A caution beside its figure: an ink bar and words that are heavier than the text. */
export function figureCautionBoxes(
  desk: Desk,
  block: Of<'figure-caution'>,
  at: Slot,
  parent: Draft,
): PaperBox[] {
  const { pen } = desk;
  const node = desk.tree.add(parent, 'P');
  const inset = CAUTION_BAR + CAUTION_GAP;
  const text = desk.set.inlines(node, block.inlines, {
    width: at.width - inset,
    role: desk.type.figureCaution,
    place: block.place,
  });
  return [
    {
      height: text.height,
      before: SPACE.basisToCaution,
      keep: false,
      cost: BREAK.part,
      paint(page, top) {
        const bar = pen.rect(at.x, top, CAUTION_BAR, text.height, { fill: pen.colors.ink });
        addArtifact(page, 'layout', [bar]);
        paintText(page, pen, text, at.x + inset, top);
      },
    },
  ];
}

/** The reason on a key, on tint; in one ink an outline stands for the tint. */
export function whyBoxes(desk: Desk, block: Of<'why'>, at: Slot, parent: Draft): PaperBox[] {
  const { pen } = desk;
  const node = desk.tree.add(parent, 'P');
  const pad = mm(2.4);
  const text = desk.set.inlines(node, block.inlines, {
    width: at.width - 2 * pad,
    role: desk.type.why,
    place: block.place,
  });
  const height = text.height + mm(2);
  return [
    {
      height,
      before: SPACE.figureToBasis,
      keep: false,
      cost: BREAK.part,
      paint(page, top) {
        addArtifact(page, 'background', [pen.rect(at.x, top, at.width, height, answerLook(desk))]);
        paintText(page, pen, text, at.x + pad, top + mm(0.9));
      },
    },
  ];
}

/** How the ground of an answer looks: tint, and in one ink an outline instead. */
export function answerLook(desk: Desk) {
  const { colors, ink, strokes } = desk.pen;
  return ink === 'one'
    ? { fill: colors.paper, stroke: { color: colors.ink, width: strokes.hair } }
    : { fill: colors.tint };
}

const QUOTE_INSET = mm(5);

export function quoteBoxes(
  desk: Desk,
  block: Of<'quote'>,
  at: Slot,
  parent: Draft,
  lay: LayBlocks,
): PaperBox[] {
  const { pen } = desk;
  const node = desk.tree.add(parent, 'BlockQuote');
  const inner = lay(desk, block.blocks, { x: at.x + QUOTE_INSET, width: at.width - QUOTE_INSET }, node);
  return withSpace(inner, SPACE.subhead).map((box, index) =>
    under(box, (page, top) => {
      const above = index === 0 ? 0 : box.before;
      const stroke = { color: pen.colors.slate, width: pen.strokes.line };
      addArtifact(page, 'layout', [
        pen.line(at.x + mm(1), top - above, at.x + mm(1), top + box.height, stroke),
      ]);
    }),
  );
}
