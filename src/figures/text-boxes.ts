import { type FontFace, type GlyphRun, glyphPath, type Line } from '../text/index.js';
import type { Mark, Matrix, TextInk } from './drawing.js';
import { type Box, IDENTITY, multiply, transformBox, union } from './geometry.js';

/** Where words stand in a drawing: the box around their ink. */
export interface TextBox {
  readonly box: Box;
  readonly words: string;
}

/** Boxes of letters in font units, y up, kept as long as the font is. */
const letterBoxes = new WeakMap<FontFace, Map<number, Box | undefined>>();

/** The box around a letter's outline and handles, y down; `undefined` for a space. */
function letterBox(font: FontFace, glyph: number): Box | undefined {
  let boxes = letterBoxes.get(font);
  if (!boxes) {
    boxes = new Map();
    letterBoxes.set(font, boxes);
  }
  if (boxes.has(glyph)) return boxes.get(glyph);
  const numbers = (glyphPath(font, glyph).match(/-?[\d.]+(?:e-?\d+)?/g) ?? []).map(Number);
  let box: Box | undefined;
  for (let i = 0; i + 1 < numbers.length; i += 2) {
    const [x, y] = [numbers[i] ?? 0, -(numbers[i + 1] ?? 0)];
    box = union(box, { left: x, top: y, right: x, bottom: y });
  }
  boxes.set(glyph, box);
  return box;
}

function runBox(run: GlyphRun<TextInk>, x: number, baseline: number): Box | undefined {
  const scale = run.size / run.font.unitsPerEm;
  let pen = x + run.x;
  let box: Box | undefined;
  for (const glyph of run.glyphs) {
    const own = letterBox(run.font, glyph.id);
    if (own) box = union(box, transformBox([scale, 0, 0, scale, pen + glyph.dx, baseline - glyph.dy], own));
    pen += glyph.advance;
  }
  return box;
}

/** The box around a line's ink; `undefined` for spaces. */
export function lineBox(line: Line<TextInk>, x: number, baseline: number): Box | undefined {
  return line.runs.reduce<Box | undefined>((box, run) => union(box, runBox(run, x, baseline)), undefined);
}

/** The boxes of all words that show, in the order in which they are drawn. */
export function textBoxes(marks: readonly Mark[], at: Matrix = IDENTITY): TextBox[] {
  return marks.flatMap((mark): TextBox[] => {
    if (mark.kind === 'group') return textBoxes(mark.marks, mark.at ? multiply(at, mark.at) : at);
    if (mark.kind !== 'text' || mark.hidden) return [];
    const box = lineBox(mark.line, mark.x, mark.baseline);
    return box ? [{ box: transformBox(at, box), words: mark.line.text.trim() }] : [];
  });
}
