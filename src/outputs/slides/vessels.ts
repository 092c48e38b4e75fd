import type { Mark } from '../../figures/index.js';
import type { Box, Easel } from './easel.js';
import type { StageSpace } from './space.js';
import { SLIDE, STAGE_WIDTH } from './tokens.js';
import type { SlideTools } from './tools.js';

const BETWEEN = 16;
/** Room between words and a picture beside them, and below them. */
const CLEAR = { across: 24, down: 12 } as const;
/** Smaller ones are not seen from the back row. */
const SMALLEST = 100;

/**
 * Pictures stand in a row on the shelf at the reading end, as large as the words on the stage let them,
 * at most `wanted`. What has no room, or does not exist, is a problem and not a smudge.
 */
export function paintVessels(
  names: readonly string[],
  wanted: number,
  space: StageSpace,
  easel: Easel,
  tools: SlideTools,
): void {
  const drawings = names.flatMap((name) => {
    const drawing = tools.picture(name);
    if (!drawing)
      easel.problem(
        'slides/no-picture',
        `there is no picture "${name}".`,
        'Use can, jar, sack, bag, sieve, pot, cup or the name of a food picture.',
      );
    return drawing ? [drawing] : [];
  });
  const count = drawings.length;
  if (count === 0) return;
  const row = (size: number): Box => {
    const width = count * size + (count - 1) * BETWEEN;
    return { x: SLIDE.side + STAGE_WIDTH - width, y: space.floor - size, width, height: size };
  };
  const fits = (size: number) =>
    row(size).x >= SLIDE.side && easel.taken.every((words) => !touches(row(size), words));
  let size = wanted;
  while (size > SMALLEST && !fits(size)) size -= 4;
  if (!fits(size)) {
    easel.problem(
      'slides/too-long',
      `there is no room for ${count === 1 ? 'the picture' : `${count} pictures`}.`,
      'Cut words, or leave pictures out.',
    );
    return;
  }
  const { x, y } = row(size);
  const marks = drawings.map((drawing, index): Mark => {
    const box = { x: x + index * (size + BETWEEN), y, width: size, height: size };
    return easel.drawing(drawing.marks, box, size / drawing.height);
  });
  easel.backdrop(marks);
}

function touches(picture: Box, words: Box): boolean {
  return (
    picture.x < words.x + words.width + CLEAR.across &&
    words.x < picture.x + picture.width + CLEAR.across &&
    picture.y < words.y + words.height + CLEAR.down &&
    words.y < picture.y + picture.height + CLEAR.down
  );
}
