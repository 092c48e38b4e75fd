import type { ShownNumber } from '../document/index.js';
import type { Desk } from './sheets.js';

/** Every number of a lesson with its formula, inputs and sources: `numbers.json`. Language-free but for `text`. */
export interface NumbersFile {
  readonly lesson: string;
  readonly editions: { readonly guidance: string; readonly foods: Readonly<Record<string, string>> };
  readonly numbers: readonly ShownNumber[];
}

export function numbersFile(desk: Desk): NumbersFile {
  const { lesson, numbers } = desk.computed;
  return {
    lesson: lesson.slug ?? '',
    editions: editionsOf(desk),
    numbers: numbers.all.map((number) => ({ ...number, text: number.text.replaceAll('\u00a0', ' ') })),
  };
}

/** The guidance and the newest data that a lesson's numbers rest on. */
export function editionsOf(desk: Desk): NumbersFile['editions'] {
  const { lesson, numbers } = desk.computed;
  const foods = numbers.all.flatMap((n) => (n.food ? [[n.food.source, n.food.date] as const] : []));
  return {
    guidance: lesson.front.guidance,
    foods: Object.fromEntries(foods.toSorted(([a], [b]) => (a < b ? -1 : 1))),
  };
}
