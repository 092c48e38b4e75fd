import { mm } from './geometry.js';
import type { Words } from './pen.js';
import type { Sheet } from './sheet.js';
import { CAP_HEIGHT, RAIL } from './tokens.js';

const NAME_LEADING = 1.18;
const NOTE_LEADING = 1.25;
const MOST_LINES = 3;

export interface RowNames {
  /** In the rail: from the track's middle up and down. */
  readonly above: number;
  readonly below: number;
  /** Without a rail: height of the line above the lane. */
  readonly height: number;
  /** In the rail `y` is the track's middle; without one, the top. */
  readonly put: (y: number) => void;
}

/** A row's name with its note: in the rail beside the row, or on a line above it. */
export function drawNames(
  sheet: Sheet,
  { name, note = '' }: { readonly name: string; readonly note?: string },
  reject: (words: string) => void,
  small: Words = { ...sheet.type.note, color: sheet.pen.palette.slate },
): RowNames {
  const { pen, type, axis } = sheet;
  if (!sheet.rail) {
    const title = pen.set(name, type.name);
    const after = pen.set(note, small);
    const beside = title.width + mm(4) + after.width <= pen.width;
    if (title.width > pen.width) reject(name);
    if (after.width > pen.width) reject(note);
    const first = type.name.size * NAME_LEADING;
    const height = beside || note === '' ? first : first + small.size * NOTE_LEADING;
    return {
      above: 0,
      below: 0,
      height: height + mm(1),
      put: (y) => {
        pen.put(title, 0, y + type.name.size * 0.8);
        if (note === '') return;
        if (beside) pen.put(after, title.width + mm(4), y + type.name.size * 0.8);
        else pen.put(after, 0, y + first + small.size * 0.8);
      },
    };
  }
  const measure = Math.min(RAIL, axis - mm(3));
  const title = pen.paragraph(name, type.name, measure, { balance: true });
  const under = pen.paragraph(note, small, measure, { balance: true });
  if (title.overflow || title.lines.length > MOST_LINES) reject(name);
  if (under.overflow || under.lines.length > MOST_LINES) reject(note);
  const [nameStep, noteStep] = [type.name.size * NAME_LEADING, small.size * NOTE_LEADING];
  // From the top of the first capital to the last baseline, with a hair between name and note.
  const cap = type.name.size * CAP_HEIGHT;
  const noteHeight = under.lines.length === 0 ? 0 : under.lines.length * noteStep + mm(0.3);
  const block = cap + (title.lines.length - 1) * nameStep + noteHeight;
  const descent = type.name.size * 0.22;
  return {
    above: block / 2 + mm(0.4),
    below: block / 2 + descent,
    height: 0,
    put: (y) => {
      const first = y - block / 2 + cap;
      pen.putParagraph(title, 0, measure, first, nameStep);
      const last = first + (title.lines.length - 1) * nameStep;
      pen.putParagraph(under, 0, measure, last + noteStep + mm(0.3), noteStep);
    },
  };
}
