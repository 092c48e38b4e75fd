import type { Block, Choice } from '../../document/index.js';
import type { FrameBox, Mark } from '../../figures/index.js';
import { circlePath } from '../../figures/shapes.js';
import type { Draft } from '../../layout/structure.js';
import type { Easel, SetWords } from './easel.js';
import type { StageSpace } from './space.js';
import { LINES, type SlideType } from './tokens.js';
import type { SlideTools } from './tools.js';

type Question = Block & { readonly kind: 'question' };

const COLUMNS = ['column-1', 'column-2', 'column-3', 'column-4'] as const;
const DISC = 32;
/** From a column's edge to its disc, and from the disc to the words beside or below it. */
const INSIDE = 26;
const TOP = 24;
const BESIDE = 16;
const BELOW = 12;
/** Between words, value and vessel. */
const BETWEEN = 12;
/** Vessels of a question and of its answer; smaller than the last one they are not seen. */
const VESSEL = { ask: 200, answer: 150, least: 90 } as const;

/** The words of all options in one way to set them. */
interface Options {
  readonly words: readonly SetWords[];
  /** Where the words stand, from the column's corner. */
  readonly at: { readonly x: number; readonly y: number };
  /** Below the words and discs, from the column's top. */
  readonly bottom: number;
}

function setOptions(
  choices: readonly Choice[],
  type: SlideType,
  below: boolean,
  width: number,
  easel: Easel,
): Options {
  const at = below
    ? { x: INSIDE, y: TOP + 2 * DISC + BELOW }
    : // The first line stands level with the disc's middle, two lines with the disc.
      { x: INSIDE + 2 * DISC + BESIDE, y: TOP + Math.max(0, (2 * DISC - 2 * type.leading) / 2) };
  const room = width - at.x - BESIDE;
  const words = choices.map((choice) => easel.set(choice.inlines, type, room));
  const high = Math.max(0, ...words.map(({ height }) => at.y + height));
  return { words, at, bottom: Math.max(high, TOP + 2 * DISC) };
}

/**
 * Columns from the title to the shelf, open below. The answer keeps the places; it frames the right
 * column, fills its disc and shows all values.
 */
export function paintQuestion(
  question: Question,
  answered: boolean,
  space: StageSpace,
  easel: Easel,
  tools: SlideTools,
): void {
  const { choices } = question;
  const columns = choices.flatMap((_, index) => {
    const name = COLUMNS[index];
    return name ? [space.frame.box(name)] : [];
  });
  const [first] = columns;
  if (!first) return;
  if (choices.length > columns.length)
    easel.problem(
      'slides/too-long',
      `the question has ${choices.length} options; a slide holds ${columns.length}.`,
      'Leave some out, or ask twice.',
    );
  const { types } = easel;
  const room = space.floor - first.y;
  // The question leaves the room that its answer's values take, so that nothing moves.
  const fits = ({ words, bottom }: Options) =>
    words.every(({ overflow }) => !overflow) && bottom + BETWEEN + types.rightValue.leading + BETWEEN <= room;
  const ways = types.option.flatMap((type) =>
    [false, true].map((below) => setOptions(choices, type, below, first.width, easel)),
  );
  const options = ways.find(fits) ?? ways.at(-1);
  if (!options) return;
  const over = options.bottom + 2 * BETWEEN + types.rightValue.leading - room;
  if (over > 0)
    easel.problem(
      'slides/too-long',
      `the options are ${Math.ceil(over)} pixels too high.`,
      'Use fewer words for them, or a shorter question.',
    );
  const values = answered ? setValues(choices, first.width, easel) : [];
  const deepest = Math.max(0, ...values.map((words) => words?.lines[0]?.baseline ?? 0));
  const list = easel.tree.add(space.section, 'L', { numbering: 'UpperAlpha' });
  columns.forEach((column, index) => {
    const choice = choices[index];
    const words = options.words[index];
    if (!choice || !words) return;
    const looked = answered && choice.key?.right === true;
    easel.backdrop(columnMarks(column, space.floor, looked, easel));
    const row = easel.tree.add(list, 'LI');
    paintLetter(choice.letter, column, looked, easel.tree.add(row, 'Lbl'), easel);
    const body = easel.tree.add(row, 'LBody');
    easel.words(body, words, column.x + options.at.x, column.y + options.at.y);
    const value = values[index];
    if (!value) return;
    // All values stand on one baseline.
    const down = deepest - (value.lines[0]?.baseline ?? 0);
    easel.words(body, value, column.x + INSIDE, column.y + options.bottom + BETWEEN + down);
  });
  paintVessels(choices, columns, options, values, space, easel, tools);
}

/** Lines at the top and both sides, down to the shelf; the right column is white inside. */
function columnMarks(column: FrameBox, floor: number, looked: boolean, easel: Easel): Mark[] {
  const { palette } = easel;
  const width = looked ? LINES.frame : LINES.box;
  const left = easel.left(column.x, column.width);
  const [x1, x2] = [left + width / 2, left + column.width - width / 2];
  const y = column.y + width / 2;
  const box = { ...column, height: floor - column.y };
  return [
    ...(looked ? [easel.rect(box, { fill: palette.paper })] : []),
    {
      kind: 'shape',
      path: `M${x1} ${floor}L${x1} ${y}L${x2} ${y}L${x2} ${floor}`,
      stroke: { color: looked ? palette.accent : palette.ink, width },
    },
  ];
}

function paintLetter(letter: string, column: FrameBox, looked: boolean, node: Draft, easel: Easel): void {
  const { palette, types } = easel;
  const [x, y] = [column.x + INSIDE, column.y + TOP];
  const color = looked ? palette.accent : palette.ink;
  easel.content(node, [
    {
      kind: 'shape',
      path: circlePath(easel.left(x, 2 * DISC) + DISC, y + DISC, DISC - LINES.disc / 2),
      fill: looked ? palette.accent : palette.paper,
      stroke: { color, width: LINES.disc },
    },
  ]);
  const look = { align: 'center', color: looked ? palette.paper : palette.ink } as const;
  const words = easel.set([{ text: letter }], types.letter, 2 * DISC, look);
  // The letter's baseline stands 0.355 of its size below the middle of the disc.
  const baseline = words.lines[0]?.baseline ?? 0;
  easel.words(node, words, x, y + DISC + 0.355 * types.letter.size - baseline);
}

/** The values of an answered question; that of the right option is larger and petrol. */
function setValues(choices: readonly Choice[], width: number, easel: Easel): (SetWords | undefined)[] {
  const { types, palette } = easel;
  return choices.map(({ key }) => {
    if (!key) return undefined;
    const text = { text: key.value, ...(key.number ? { number: key.number } : {}) };
    const look = key.right ? { color: palette.accent } : {};
    const sizes = [...(key.right ? [types.rightValue] : []), types.value, ...types.option];
    const set = sizes.map((type) => easel.set([text], type, width - INSIDE - BESIDE, look));
    return set.find(({ overflow, lines }) => !overflow && lines.length === 1) ?? set.at(-1);
  });
}

/**
 * A vessel in each column, all of one size: below the words and values, or beside the values where the
 * stage is low, or none where there is no room at all.
 */
function paintVessels(
  choices: readonly Choice[],
  columns: readonly FrameBox[],
  options: Options,
  values: readonly (SetWords | undefined)[],
  space: StageSpace,
  easel: Easel,
  tools: SlideTools,
): void {
  const [first] = columns;
  if (!first) return;
  const words = first.y + options.bottom;
  const high = Math.max(0, ...values.map((value) => value?.height ?? 0));
  const widest = Math.max(0, ...values.map((value) => value?.width ?? 0));
  const answered = values.length > 0;
  const most = Math.min(answered ? VESSEL.answer : VESSEL.ask, first.width - 2 * BESIDE);
  const value = answered ? words + BETWEEN + high : words;
  const under = Math.min(most, space.floor - value - BETWEEN);
  const beside = Math.min(most, space.floor - words - BETWEEN, first.width - INSIDE - widest - 2 * BESIDE);
  const stands = answered && under < VESSEL.least ? beside : under;
  if (stands < VESSEL.least) return;
  const size = Math.floor(stands);
  columns.forEach((column, index) => {
    const sign = choices[index]?.sign;
    if (!sign) return;
    const end = column.width - BESIDE - size;
    const dx = !answered ? (column.width - size) / 2 : stands === under ? INSIDE : end;
    const at = { x: column.x + dx, y: space.floor, width: size, height: size };
    easel.backdrop([easel.drawing(tools.sign(sign, size), at, 1)]);
  });
}
