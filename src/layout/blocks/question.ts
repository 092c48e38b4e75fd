import type { Block, Choice, Inline } from '../../document/index.js';
import { BREAK, type Desk, type PaperBox, rowBoxes, type Slot, together, under } from '../desk.js';
import { addArtifact, addContent, type PageDraft } from '../pen.js';
import { paintText, type SetText } from '../rows.js';
import type { Draft } from '../structure.js';
import { mm } from '../tokens.js';
import { BADGE_INDENT, layBadge } from './badge.js';
import { answerLook } from './text.js';

type Question = Block & { readonly kind: 'question' };

const BOX = mm(5.4);
const BOX_GAP = mm(2.6);
const COLUMN_GAP = mm(4);
const ROW_GAP = mm(2);
const BOX_LINE = 1.25;

/**
 * A question with boxes to check: in columns when every choice takes two lines at most there, else
 * one below the other. On the key the right box is ticked and the reasons stand below on tint.
 */
export function questionBoxes(
  desk: Desk,
  block: Question,
  at: Slot,
  parent: Draft,
  number?: number,
): PaperBox[] {
  const { tree, set, type } = desk;
  const badge = number === undefined ? undefined : layBadge(desk, tree.add(parent, 'P'), number);
  const slot = badge ? { x: at.x + BADGE_INDENT, width: at.width - BADGE_INDENT } : at;
  const prompt = set.inlines(tree.add(parent, 'P'), block.prompt, {
    width: slot.width,
    role: type.body,
    place: block.place,
  });
  const asked = rowBoxes(desk, prompt, slot, { before: mm(4.2), cost: BREAK.item });
  const first = asked[0];
  const labeled =
    first && badge ? [under(first, (page, top) => badge(page, at.x, top)), ...asked.slice(1)] : asked;
  return together([
    ...labeled,
    ...(block.choices.length > 0 ? [choicesBox(desk, block, slot, parent)] : []),
    ...answerBoxes(desk, block, slot, parent),
  ]);
}

function choicesBox(desk: Desk, block: Question, at: Slot, parent: Draft): PaperBox {
  const { tree, set, type } = desk;
  const columns = columnsFor(desk, block.choices, at.width);
  const cell = (at.width - (columns - 1) * COLUMN_GAP) / columns;
  const list = tree.add(parent, 'L', { numbering: 'UpperAlpha' });
  const choices = block.choices.map((choice) => {
    const item = tree.add(list, 'LI');
    const label = tree.add(item, 'Lbl');
    const right = choice.key?.right ?? false;
    // The signs are read aloud as what they are, in any language.
    const box = tree.add(label, 'Form', { alt: `${right ? '☑' : '☐'} ${choice.letter}` });
    const letter = tree.add(label, 'Span');
    const text = set.parts(
      [
        { node: letter, inlines: [{ text: `${choice.letter} ` }], weight: 800 },
        { node: tree.add(item, 'LBody'), inlines: choice.inlines },
      ],
      { width: cell - BOX - BOX_GAP, role: type.body, place: block.place },
    );
    return { box, text, right };
  });
  const rows = Math.ceil(choices.length / columns);
  const heights = Array.from({ length: rows }, (_, row) =>
    Math.max(BOX, ...choices.slice(row * columns, (row + 1) * columns).map((c) => c.text.height)),
  );
  const tops = heights.map((_, row) => heights.slice(0, row).reduce((sum, h) => sum + h + ROW_GAP, 0));
  return {
    height: (tops.at(-1) ?? 0) + (heights.at(-1) ?? 0),
    before: mm(2.4),
    keep: false,
    cost: BREAK.part,
    paint(page, top) {
      choices.forEach((choice, index) => {
        const x = at.x + (index % columns) * (cell + COLUMN_GAP);
        const y = top + (tops[Math.floor(index / columns)] ?? 0);
        paintBox(desk, page, choice.box, x, y + (type.body.leading - BOX) / 2, choice.right);
        paintText(page, desk.pen, choice.text, x + BOX + BOX_GAP, y);
      });
    },
  };
}

/** As many columns as there are choices if each then takes two lines at most, else two, else one. */
function columnsFor(desk: Desk, choices: readonly Choice[], width: number): number {
  const { set, type } = desk;
  const fits = (columns: number) => {
    const room = (width - (columns - 1) * COLUMN_GAP) / columns - BOX - BOX_GAP;
    return choices.every((choice) => {
      const words = [{ text: `${choice.letter} `, strong: true }, ...choice.inlines];
      const longest = words
        .flatMap((i) => i.text.split(' ').map((text) => ({ ...i, text })))
        .map((word) => set.measure([word], type.body));
      return Math.max(...longest) <= room && set.measure(words, type.body) <= 1.7 * room;
    });
  };
  const count = choices.length;
  const wishes = count <= 3 ? [count] : count === 4 ? [4, 2] : [3, 2];
  return wishes.find(fits) ?? 1;
}

function paintBox(desk: Desk, page: PageDraft, node: Draft, x: number, y: number, ticked: boolean): void {
  const { pen } = desk;
  const { colors } = pen;
  const frame = pen.rect(x, y, BOX, BOX, {
    fill: colors.paper,
    stroke: { color: colors.ink, width: BOX_LINE },
    radius: mm(0.6),
  });
  const inset = mm(1.1);
  const tick = pen.rect(x + inset, y + inset, BOX - 2 * inset, BOX - 2 * inset, { fill: colors.ink });
  addContent(page, node, ticked ? [frame, tick] : [frame]);
}

/** The answer and each choice's value and reason, in one panel. */
function answerBoxes(desk: Desk, block: Question, at: Slot, parent: Draft): PaperBox[] {
  const { tree, set, pen, type } = desk;
  const pad = mm(2.4);
  const width = at.width - 2 * pad;
  const texts: SetText[] = [];
  if (block.answer && block.answer.length > 0) {
    const role = { ...type.why, weight: 600 } as const;
    texts.push(set.inlines(tree.add(parent, 'P'), block.answer, { width, role, place: block.place }));
  }
  for (const { letter, key } of block.choices) {
    if (!key || (key.value === '' && key.why === '')) continue;
    const inlines: Inline[] = [
      { text: letter, strong: true },
      ...printedValue(key),
      ...(key.why === '' ? [] : [{ text: `${key.value === '' ? ' ' : ' · '}${key.why}` }]),
    ];
    texts.push(set.inlines(tree.add(parent, 'P'), inlines, { width, role: type.why, place: block.place }));
  }
  if (texts.length === 0) return [];
  const height = texts.reduce((sum, t) => sum + t.height, 0) + mm(2);
  return [
    {
      height,
      before: mm(1.8),
      keep: false,
      cost: BREAK.part,
      paint(page, top) {
        addArtifact(page, 'background', [pen.rect(at.x, top, at.width, height, answerLook(desk))]);
        let y = top + mm(0.9);
        for (const text of texts) y = paintText(page, pen, text, at.x + pad, y);
      },
    },
  ];
}

/** The value of a choice as printed, with its number, so that it can be traced. */
function printedValue({ value, number }: NonNullable<Choice['key']>): Inline[] {
  if (value === '') return [];
  return [{ text: ` ${value}`, emphasis: true, ...(number === undefined ? {} : { number }) }];
}
