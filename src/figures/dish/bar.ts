import { mm } from '../geometry.js';
import type { Sheet } from '../sheet.js';
import type { Dish, DishKindLook } from '../spec.js';
import { flatTexture } from '../textures.js';
import { paperLines, RAIL } from '../tokens.js';
import { centered } from './labels.js';
import { COUNTERS } from './places.js';

/** A stretch of the bar: a kind with its first cell and its cells. */
interface Run {
  readonly kind: DishKindLook;
  readonly from: number;
  readonly cells: number;
  readonly text: string;
  readonly number?: string;
}

/** The last kind to be filled stands first. */
function runsOf(kinds: readonly DishKindLook[], goal: boolean): Run[] {
  let from = 0;
  return kinds.toReversed().flatMap((kind): Run[] => {
    const cells = goal ? kind.goal : kind.parts;
    const number = goal ? kind.goalNumber : kind.number;
    const run = { kind, from, cells, text: goal ? kind.goalText : kind.text, ...(number ? { number } : {}) };
    from += cells;
    return cells > 0 ? [run] : [];
  });
}

/** This dish over the goal, twelve cells each; lines join where kinds begin, slanted ones show where they differ. */
export function drawBar(sheet: Sheet, spec: Dish, y: number, reject: (words: string) => void): number {
  const { pen, type, axis, rail } = sheet;
  if (!spec.bar) return y;
  const height = Math.max(mm(5.2), type.label.size * 1.45);
  const cell = (pen.width - axis) / COUNTERS;
  const [own, goal] = [runsOf(spec.kinds, false), runsOf(spec.kinds, true)];
  const head = rail ? 0 : type.name.size * 1.3;
  const name = (words: string, top: number) => {
    const line = pen.set(words, { ...type.label, weight: 700 });
    if (line.width > (rail ? RAIL : pen.width)) reject(words);
    if (rail) pen.put(line, RAIL, centered(top + height / 2, type.label.size), 'end');
    else pen.put(line, 0, top - head + type.label.size);
  };
  const first = y + head;
  const second = first + height + (rail ? mm(3.6) : head + mm(2.2));
  if (rail && spec.mode !== 'blank')
    for (const run of own.slice(1)) {
      const other = goal.find(({ kind }) => kind === run.kind);
      if (!other) continue;
      const off = other.from !== run.from;
      pen.line(axis + run.from * cell, first + height, axis + other.from * cell, second, {
        edge: off ? pen.palette.accent : pen.palette.ink,
        width: off ? paperLines.bold : paperLines.hair,
      });
    }
  name(spec.bar.own, first);
  if (spec.mode === 'blank')
    for (let i = 0; i < COUNTERS; i++)
      pen.rect(axis + i * cell, first, cell, height, {
        fill: pen.palette.paper,
        edge: pen.palette.ink,
        width: 1,
      });
  else for (const run of own) drawRun(sheet, run, cell, first, height);
  name(spec.bar.goal, second);
  const bare = goal.filter((run) => !drawRun(sheet, run, cell, second, height));
  return drawLetters(sheet, bare, second + height, reject) + mm(0.3);
}

/** What a letter means, for kinds whose word found no room in the bar. */
function drawLetters(
  { pen, type, axis }: Sheet,
  runs: readonly Run[],
  y: number,
  reject: (words: string) => void,
): number {
  let [x, baseline] = [axis, y + type.note.size * 1.3];
  for (const { kind } of runs) {
    const line = pen.set(`${kind.letter}  ${kind.word}`, type.note);
    if (line.width > pen.width - axis) reject(kind.word);
    if (x > axis && x + line.width > pen.width) [x, baseline] = [axis, baseline + type.note.size * 1.3];
    pen.put(line, x, baseline);
    x += line.width + mm(6);
  }
  return runs.length > 0 ? baseline + type.note.size * 0.25 : y;
}

/** One kind in the bar. False when its word found no room. */

function drawRun(
  sheet: Sheet,
  { kind, from, cells, text, number }: Run,
  cell: number,
  y: number,
  height: number,
): boolean {
  const { pen, type, axis } = sheet;
  const [x, width] = [axis + from * cell, cells * cell];
  const spans = (lead: string) => [
    { text: lead, data: { color: pen.palette.ink } },
    { text, data: { color: pen.palette.ink, ...(number ? { number } : {}) } },
  ];
  const whole = pen.set(spans(`${kind.letter}  ${kind.word}  `), type.label);
  const line = whole.width + mm(3.4) <= width ? whole : pen.set(spans(`${kind.letter}  `), type.label);
  const label = Math.min(width, line.width + mm(3.4));
  pen.rect(x, y, width, height, { fill: pen.palette.paper });
  // A sliver of texture tells nothing.
  if (width - label > mm(4)) {
    const color = sheet.one ? pen.palette.ink : pen.palette.slate;
    pen.placeWide(x + label, width - label, y, [
      flatTexture(kind.texture, width - label, height, { medium: 'paper', color }),
    ]);
  }
  pen.rect(x, y, width, height, { edge: pen.palette.ink, width: 1 });
  pen.put(line, x + label / 2, centered(y + height / 2, type.label.size), 'middle');
  return line === whole;
}
