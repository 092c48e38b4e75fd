import type { Inline } from '../../document/index.js';
import type { Easel } from './easel.js';
import type { StageSpace } from './space.js';

/** A brick a minute: width, height, pitch across and down, and how many stand in a row. */
interface Bricks {
  readonly width: number;
  readonly height: number;
  readonly across: number;
  readonly down: number;
  readonly row: number;
}

const USUAL: Bricks = { width: 40, height: 44, across: 46, down: 50, row: 10 };
/** Where so many minutes are planned that two rows do not hold them. */
const MANY: Bricks = { width: 28, height: 28, across: 32, down: 32, row: 15 };
const BELOW_WORDS = 10;

const bricksFor = (minutes: number) => (minutes > 2 * USUAL.row ? MANY : USUAL);

/** The words stand above the bricks, and both end at the stage's edge. */
export function minutesWidth(minutes: number): number {
  if (minutes <= 0) return 0;
  const { across, row, width } = bricksFor(minutes);
  return Math.max(240, (Math.min(minutes, row) - 1) * across + width);
}

/** A brick a minute, at the top end; the words stand above them. */
export function paintMinutes(minutes: number, said: string, space: StageSpace, easel: Easel): void {
  if (minutes <= 0) return;
  const box = space.frame.box('minutes');
  const words: Inline[] = [{ text: said }];
  const { minutes: type } = easel.types;
  const set = easel.set(words, type, box.width, { align: 'end' });
  if (said !== '') easel.words(easel.tree.add(space.section, 'P'), set, box.x, box.y);
  const { width, height, across, down, row } = bricksFor(minutes);
  const end = box.x + box.width;
  const top = box.y + type.leading + BELOW_WORDS;
  easel.backdrop(
    Array.from({ length: minutes }, (_, index) => {
      const inRow = Math.min(row, minutes - Math.floor(index / row) * row);
      const x = end - width - (inRow - 1 - (index % row)) * across;
      const y = top + Math.floor(index / row) * down;
      return easel.rect({ x, y, width, height }, { fill: easel.palette.ink });
    }),
  );
}
