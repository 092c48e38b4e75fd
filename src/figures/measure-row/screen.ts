import type { Problem } from '../../diagnostics/index.js';
import type { Drawn, DrawOptions } from '../options.js';
import { finish, outside } from '../sheet.js';
import type { MeasurePour, MeasureRow } from '../spec.js';
import { createStage, type Stage, tooHigh, tooMany } from '../stage.js';
import { screenLines, screenType } from '../tokens.js';
import { drawBowl, stack } from './bowl.js';
import { shapeOf } from './vessels.js';

const MOST_POURS = 4;
const HANDLE = 116;
const THICK = 22;
const LEADER = 64;
const GAP = 26;
const POUR_GAP = 14;
/** Pixels for a millimeter of the measure: as large as fits. */
const LARGEST = 4.6;
const SMALLEST = 1.5;
const STEP = 42;
/** From the top of a block to the first baseline, and to the middle of its capitals. */
const NAME_UP = 26;
const LEAD = 15;

/** Cups and spoons on a slide, all to one scale and as large as fits. */
export function drawMeasuresOnScreen(spec: MeasureRow, options: DrawOptions): Drawn {
  const stage = createStage(options);
  const { pen, width, height } = stage;
  const problems: Problem[] = [];
  const count = spec.vessels.reduce((sum, vessel) => sum + vessel.pours.length, 0);
  if (count > MOST_POURS) problems.push(tooMany(spec.id, 'foods', count, MOST_POURS, 'foods='));
  const shapes = spec.vessels.map((vessel) => ({ vessel, shape: shapeOf(vessel) }));
  const widest = Math.max(1, ...shapes.map(({ shape }) => shape.width));
  let scale = LARGEST;
  let plan = planRows(stage, shapes, scale);
  while (plan.height > height && scale > SMALLEST) {
    scale -= 0.1;
    plan = planRows(stage, shapes, scale);
  }
  if (plan.height > height) problems.push(tooHigh(spec.id, plan.height - height));
  const wordsAt = HANDLE + widest * scale + LEADER;
  const spare = Math.max(0, height - plan.height) / 2;
  let y = spare + LEAD;
  for (const { vessel, shape, rows, height: high } of plan.rows) {
    const look = {
      scale,
      line: screenLines.box,
      fillLine: screenLines.shelf,
      handle: HANDLE - 4,
      thick: THICK,
    };
    drawBowl(pen, vessel, shape, HANDLE, y, look);
    pen.take(HANDLE, y, shape.width * scale, shape.height * scale, 'the measure');
    for (const { block, top, level } of rows) {
      if (wordsAt + block.width > width) problems.push(outside(spec.id, block.name));
      block.put(wordsAt, y - LEAD + top);
      const [fx, fy] = [HANDLE + level.to * scale, y + level.y * scale];
      const to = y + top;
      pen.circle(fx, fy, 6, { fill: pen.palette.ink });
      pen.poly(
        [
          [fx, fy],
          [Math.max(fx, wordsAt - 46), fy],
          [wordsAt - 20, to],
          [wordsAt - 12, to],
        ],
        { edge: pen.palette.ink, width: screenLines.track },
      );
    }
    y += high + GAP;
  }
  return finish(pen, spec.id, height, problems);
}

type Shaped = { readonly vessel: MeasureRow['vessels'][number]; readonly shape: ReturnType<typeof shapeOf> };

function planRows(stage: Stage, shapes: readonly Shaped[], scale: number) {
  const rows = shapes.map(({ vessel, shape }) => {
    const pours = vessel.pours.toSorted((a, b) => b.share - a.share);
    const blocks = pours.map((pour) => setPour(stage, pour));
    const levels = pours.map((pour) => shape.level(pour.share));
    const tops = stack(
      blocks.map((block, i) => ({ wanted: (levels[i]?.y ?? 0) * scale, height: block.height })),
      POUR_GAP,
    );
    const placed = blocks.flatMap((block, i) => {
      const level = levels[i];
      return level ? [{ block, top: tops[i] ?? 0, level }] : [];
    });
    const words = Math.max(0, ...placed.map(({ block, top }) => top + block.height));
    return { vessel, shape, rows: placed, height: Math.max(shape.height * scale, words) };
  });
  const height = rows.reduce((sum, row) => sum + row.height, 0) + Math.max(0, rows.length - 1) * GAP;
  return { rows, height: height + LEAD };
}

/** The name, and below it the amount with what it comes to. */
function setPour({ pen }: Stage, pour: MeasurePour) {
  const name = pen.set(pour.name, screenType.label);
  const amount = pen.set(pour.amount, { ...screenType.value, number: pour.number });
  const tail = [...(pour.how ? [{ text: pour.how }] : []), ...pour.under].map(({ text, number }) => ({
    text: `, ${text}`,
    data: { color: pen.palette.ink, ...(number ? { number } : {}) },
  }));
  const after = pen.set(tail, screenType.note);
  const second = NAME_UP + STEP;
  return {
    height: second + 12,
    name: pour.name,
    width: Math.max(name.width, amount.width + after.width),
    put(x: number, top: number) {
      pen.put(name, x, top + NAME_UP);
      pen.put(amount, x, top + second);
      pen.put(after, x + amount.width, top + second);
    },
  };
}
