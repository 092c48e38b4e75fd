import type { Paragraph } from '../../text/index.js';
import type { TextInk } from '../drawing.js';
import { mm } from '../geometry.js';
import type { Sheet } from '../sheet.js';
import { CAP_HEIGHT } from '../tokens.js';
import type { Lead } from './places.js';
import type { DishSize, Reach } from './vessel.js';

/** Words of one food or kind beside the dish. */
export interface Member {
  readonly name: string;
  readonly note: string;
  readonly number?: string;
}

/** From the dish's edge to the end of a leader, and on to the words. */
const LEADER = mm(3.2);
const WORDS = mm(1.6);
const APART = mm(1.6);
const MOST_LINES = 7;

interface Label {
  readonly lead: Lead;
  readonly name: Paragraph<TextInk>;
  readonly note: Paragraph<TextInk>;
  readonly top: number;
  readonly height: number;
  readonly x: number;
  readonly width: number;
}

export interface DishAt {
  readonly x: number;
  readonly y: number;
  readonly size: DishSize;
  readonly reach: Reach;
}

/** Words with level leaders to the ends of rows; nothing where they would not fit beside the dish. */
export function fitLabels(
  sheet: Sheet,
  members: readonly Member[],
  leads: readonly Lead[],
  dish: DishAt,
): readonly Label[] | undefined {
  const { pen, type, axis } = sheet;
  const [nameStep, noteStep] = steps(sheet);
  const labels = leads.map((lead): Label | undefined => {
    const member = members[lead.member];
    if (!member) return undefined;
    const start = lead.at.end === 'start';
    const edge = dish.reach.x + LEADER + WORDS;
    const from = start ? axis : dish.x + edge;
    const width = start ? dish.x - edge - axis : pen.width - dish.x - edge;
    if (width < mm(12)) return undefined;
    const align = start ? 'end' : 'start';
    const name = pen.paragraph(member.name, type.name, width, { align });
    const note = pen.paragraph(
      member.note,
      { ...type.label, ...(member.number ? { number: member.number } : {}) },
      width,
      { align },
    );
    const lines = name.lines.length + note.lines.length;
    if (name.overflow || note.overflow || lines > MOST_LINES) return undefined;
    const height = name.lines.length * nameStep + note.lines.length * noteStep + mm(0.4);
    return {
      lead,
      name,
      note,
      top: dish.y + lead.at.y * dish.size.pitch - height / 2,
      height,
      x: from,
      width,
    };
  });
  const whole = labels.flatMap((label) => label ?? []);
  if (whole.length < leads.length) return undefined;
  const clear = whole.every(
    (a, i) =>
      a.top >= 0 &&
      whole
        .slice(i + 1)
        .every(
          (b) =>
            a.lead.at.end !== b.lead.at.end ||
            a.top + a.height + APART <= b.top ||
            b.top + b.height + APART <= a.top,
        ),
  );
  return clear ? whole : undefined;
}

/** Leaders from dots on the counters' edges, and the words at their ends. Returns the foot of the lowest words. */
export function drawLabels(sheet: Sheet, labels: readonly Label[], dish: DishAt): number {
  const { pen, type } = sheet;
  const [nameStep, noteStep] = steps(sheet);
  for (const { lead, name, note, top, x, width } of labels) {
    const side = lead.at.end === 'start' ? -1 : 1;
    const y = dish.y + lead.at.y * dish.size.pitch;
    const from = dish.x + lead.at.x * dish.size.pitch + side * dish.size.radius;
    pen.line(from, y, dish.x + side * (dish.reach.x + LEADER), y, { width: 1 });
    pen.circle(from, y, mm(0.75), { fill: pen.palette.ink });
    const first = top + (nameStep - type.name.size) / 2 + type.name.size * 0.8;
    pen.putParagraph(name, x, width, first, nameStep);
    pen.putParagraph(
      note,
      x,
      width,
      top + name.lines.length * nameStep + mm(0.4) + noteStep * 0.76,
      noteStep,
    );
  }
  return Math.max(0, ...labels.map(({ top, height }) => top + height));
}

function steps({ type }: Sheet): readonly [number, number] {
  return [type.name.size * 1.18, type.label.size * 1.25];
}

/** The baseline at which capitals stand in the middle of y. */
export const centered = (y: number, size: number): number => y + (size * CAP_HEIGHT) / 2;
