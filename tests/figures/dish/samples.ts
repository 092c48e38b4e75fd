import { readFileSync } from 'node:fs';
import { type Dish, type DishShape, type DishTurn, loadPictures } from '../../../src/figures/index.js';

/** Every figure needs one; what it says is no matter here. */
const alternative = { label: 'Sample', reading: 'Sample.', table: { caption: '', head: [], rows: [] } };
const pictures = loadPictures((path) => readFileSync(`assets/${path}`, 'utf8'));
export const picture = pictures.picture;
export const SHAPES: readonly DishShape[] = ['bowl', 'plate', 'tray', 'lunch-box', 'shared-pot'];

const kind = (
  letter: string,
  texture: Dish['kinds'][number]['texture'],
  word: string,
  parts: number,
  goal: number,
) =>
  ({
    letter,
    texture,
    word,
    name: `${parts} of 12: ${word.toLowerCase()}`,
    notes: ['foods of this kind, with their amounts', 'foods'],
    parts,
    text: String(parts),
    number: `dish.${letter}`,
    goal,
    goalText: String(goal),
    look: 'there',
  }) as const;

/** A dish of these foods, each with its kind (0 produce, 1 protein, 2 grain) and its counters. */
export function dishOf(
  foods: readonly (readonly [name: string, kind: number, parts: number])[],
  change: Partial<Dish> = {},
): Dish {
  const sum = (of: number) => foods.reduce((so, [, own, parts]) => so + (own === of ? parts : 0), 0);
  return {
    kind: 'dish',
    id: 'supper',
    mode: 'shown',
    alternative,
    numbers: [],
    shape: 'bowl',
    by: 'food',
    kinds: [
      kind('V', 'waves', 'Vegetables and fruit', sum(0), 6),
      kind('P', 'bars', 'Protein', sum(1), 3),
      kind('G', 'dots', 'Grain, starch', sum(2), 3),
    ],
    foods: foods.map(([name, own, parts]) => ({
      kind: own,
      picture: 'mango',
      name,
      note: `${parts} of 12 parts`,
      number: `dish.${name}`,
      parts,
    })),
    bar: { own: 'this dish', goal: 'the goal' },
    beside: 'beside it: water',
    ...change,
  };
}

export const supper = dishOf([
  ['Green peppers', 0, 4],
  ['Mango', 0, 2],
  ['Pinto beans', 1, 3],
  ['Brown rice', 2, 3],
]);
export const blankSupper: Dish = {
  ...supper,
  mode: 'blank',
  foods: [],
  kinds: supper.kinds.map(({ number: _, ...one }) => ({ ...one, name: '', notes: [], parts: 0, text: '' })),
};

const side = (name: string, note: string) => ({ picture: 'mango', name, note });
export const turn: DishTurn = {
  kind: 'dish-turn',
  id: 'turned',
  mode: 'shown',
  alternative,
  numbers: [],
  shape: 'plate',
  kinds: supper.kinds,
  before: { title: 'The dish as it was', foods: supper.foods },
  after: {
    title: 'Vegan and gluten-free',
    foods: supper.foods.map((food, i) => ({ ...food, changed: i > 1 })),
  },
  dishes: true,
  swaps: [
    { old: side('Salmon', '3 oz'), fresh: side('Lentils', '3/4 cup') },
    { old: side('Couscous', '1 cup'), fresh: side('Quinoa', '1 cup') },
  ],
  lanes: [
    { name: 'Vitamin B12', before: 2.4, after: 0, text: '2 µg to 0 µg, lost', numbers: ['t.a', 't.b'] },
    { name: 'Fiber', before: 7, after: 22, text: '7 g to 22 g', numbers: ['t.c', 't.d'] },
    { name: 'Iron', before: 2, after: 2, text: '2 mg to 2 mg', numbers: ['t.e', 't.f'] },
  ],
  lost: 'Lost: vitamin B12.',
  words: { before: 'before', after: 'after', changed: 'ringed: changed' },
};
