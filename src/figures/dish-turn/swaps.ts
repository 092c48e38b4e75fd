import { drawArrow } from '../arrow.js';
import { type PictureOf, paperCounter } from '../dish/counter.js';
import { mm } from '../geometry.js';
import type { Sheet } from '../sheet.js';
import type { DishTurn, TurnSide } from '../spec.js';
import { paperLines } from '../tokens.js';

const SMALL = mm(5);
/** From the middle of a pair to each of its counters. */
const HALF = mm(13);
const MOST_BETWEEN = 2;

/** Draws the swaps between the dishes, a pair a row with its words under it; false when they do not fit there. */
export function fitBetween(
  sheet: Sheet,
  swaps: DishTurn['swaps'],
  from: number,
  to: number,
  middle: number,
  reach: number,
  pictureOf: PictureOf,
): boolean {
  const { pen, type } = sheet;
  if (swaps.length > MOST_BETWEEN) return false;
  const room = (to - from) / 2 - mm(1.5);
  const [nameStep, noteStep] = [type.label.size * 1.18, type.note.size * 1.25];
  const set = (side: TurnSide, strong: boolean) => ({
    name: pen.paragraph(side.name, { ...type.label, weight: strong ? 700 : 400 }, room, {
      align: 'center',
      balance: true,
    }),
    note: pen.paragraph(side.note, { ...type.note, color: pen.palette.slate }, room, { align: 'center' }),
  });
  const rows = swaps.map(({ old, fresh }) => ({
    old,
    fresh,
    words: [set(old, false), set(fresh, true)] as const,
  }));
  const highOf = (words: (typeof rows)[number]['words']) =>
    Math.max(...words.map(({ name, note }) => name.lines.length * nameStep + note.lines.length * noteStep));
  const heights = rows.map(({ words }) => 2 * SMALL + mm(2) + highOf(words));
  const whole = heights.reduce((so, one) => so + one, 0) + mm(4) * (rows.length - 1);
  const over = rows.some(({ words }) => words.some(({ name, note }) => name.overflow || note.overflow));
  if (room < mm(18) || over || whole > 2 * reach) return false;
  const x = (from + to) / 2;
  const apart = Math.min(HALF, room / 2 + mm(1));
  let y = middle - whole / 2;
  for (const [i, { old, fresh, words }] of rows.entries()) {
    const center = y + SMALL;
    paperCounter(pen, x - apart, center, SMALL, { picture: old.picture }, pictureOf);
    paperCounter(pen, x + apart, center, SMALL, { picture: fresh.picture, marked: true }, pictureOf);
    arrow(sheet, x - apart + SMALL + mm(2), x + apart - SMALL - mm(2), center);
    for (const [k, { name, note }] of words.entries()) {
      const left = x + (k === 0 ? -1 : 1) * (room / 2 + mm(0.75)) - room / 2;
      const first = center + SMALL + mm(2) + type.label.size * 0.8;
      pen.putParagraph(name, left, room, first, nameStep);
      pen.putParagraph(note, left, room, first + name.lines.length * nameStep, noteStep);
    }
    y += (heights[i] ?? 0) + mm(4);
  }
  return true;
}

/** The swaps as rows of their own, old food at the start and new food at the end. Returns where they end. */
export function drawSwapRows(
  sheet: Sheet,
  swaps: DishTurn['swaps'],
  y: number,
  pictureOf: PictureOf,
  reject: (words: string) => void,
): number {
  const { pen, type, axis, big } = sheet;
  const radius = big ? mm(8.5) : mm(6);
  const gap = mm(big ? 16 : 14);
  const half = (pen.width - axis - gap) / 2;
  const room = half - 2 * radius - mm(3);
  const [nameStep, noteStep] = [type.name.size * 1.18, type.label.size * 1.25];
  let top = y;
  for (const { old, fresh } of swaps) {
    const sides = [old, fresh].map((side) => ({
      side,
      name: pen.paragraph(side.name, type.name, room),
      note: pen.paragraph(side.note, type.label, room),
    }));
    const words = ({ name, note }: (typeof sides)[number]) =>
      name.lines.length * nameStep + note.lines.length * noteStep;
    const height = Math.max(2 * radius + mm(1), ...sides.map(words));
    const center = top + height / 2;
    for (const [i, one] of sides.entries()) {
      const x = axis + i * (half + gap) + radius + mm(0.6);
      if (one.name.overflow) reject(one.side.name);
      if (one.note.overflow) reject(one.side.note);
      paperCounter(pen, x, center, radius, { picture: one.side.picture, marked: i === 1 }, pictureOf);
      const [left, first] = [x + radius + mm(2.4), center - words(one) / 2];
      pen.putParagraph(one.name, left, room, first + type.name.size * 0.88, nameStep);
      pen.putParagraph(
        one.note,
        left,
        room,
        first + one.name.lines.length * nameStep + type.label.size * 0.88,
        noteStep,
      );
    }
    arrow(sheet, axis + half + mm(1.5), axis + half + gap - mm(1.5), center);
    top += height + mm(2.4);
  }
  return top;
}

function arrow({ pen }: Sheet, from: number, to: number, y: number): void {
  drawArrow(pen, { from, to, y, head: mm(2.2), width: paperLines.firm, color: pen.palette.ink });
}
