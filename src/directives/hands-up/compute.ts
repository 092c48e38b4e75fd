import { kebab } from '../../document/index.js';
import {
  answersInAll,
  type Count,
  FEWEST_FOR_PERCENT,
  peopleABox,
  shareOfAnswers,
} from '../../nutrition/index.js';
import type { Computed, ComputedNumber } from '../contract.js';
import type { Option, Round, Values } from './schema.js';

/** Boxes in a row of the grid; once counted, an answer has two rows of them. */
export const BOXES = { line: 15, single: 30 } as const;

export interface Told {
  /** Id of the count and, from twenty answers, of its percentage. */
  readonly count: string;
  readonly percent?: string;
  readonly people: number;
}

export interface HandsResult extends Computed {
  /** By round, then by option; no rounds when nothing was counted. */
  readonly told: readonly (readonly Told[])[];
  /** Ids of the sums, by round. */
  readonly all: readonly string[];
  /** People that one box stands for, and the id of that number where it is more than one. */
  readonly worth: number;
  readonly box?: string;
}

/** Counts, their sums and, from twenty answers in each round, percentages. */
export function compute(values: Values): HandsResult {
  const { id, options, rounds } = values;
  const numbers: ComputedNumber[] = [];
  const hands = rounds.map((_, index) =>
    options.map(({ people }, place): Count => ({ name: `answer_${place + 1}`, people: people[index] ?? 0 })),
  );
  const many = hands.every((counts) => answersInAll(counts).value >= FEWEST_FOR_PERCENT);
  const all: string[] = [];
  const told = rounds.map((round, index) => {
    const counts = hands[index] ?? [];
    const sum = answersInAll(counts);
    const when = round === 'count' ? '' : ` ${round}`;
    const sumId = round === 'count' ? `${id}.all` : `${id}.all-${round}`;
    all.push(sumId);
    numbers.push({ ...numberOf(sumId, sum.value, ''), ...sum.working, what: `people who answered${when}` });
    return options.map((option, place): Told => {
      const one = counts[place] ?? { name: '', people: 0 };
      const names = idsOf(id, option, round);
      numbers.push({
        ...numberOf(names.count, one.people, ''),
        formula: 'people',
        inputs: [{ name: 'people', value: one.people, unit: 'people', source: 'lesson' }],
        what: `people who answered "${option.words}"${when}`,
      });
      const share = many ? shareOfAnswers(one.name, counts) : undefined;
      if (!share) return { count: names.count, people: one.people };
      numbers.push({
        ...numberOf(names.percent, share.value, '%'),
        ...share.working,
        what: `share of "${option.words}"${when}`,
      });
      return { count: names.count, percent: names.percent, people: one.people };
    });
  });
  const largest = Math.max(0, ...hands.flat().map(({ people }) => people));
  const worth = peopleABox(largest, rounds.length > 1 ? BOXES.line : BOXES.single);
  const box = worth > 1 ? { box: `${id}.box` } : {};
  if (box.box)
    numbers.push({
      ...numberOf(box.box, worth, ''),
      formula: 'people',
      inputs: [{ name: 'people', value: worth, unit: 'people', source: 'house' }],
      what: 'people that one box of the tally stands for',
    });
  return { numbers, facts: { foods: [], nutrients: [] }, told, all, worth, ...box };
}

function idsOf(id: string, { words }: Option, round: Round) {
  const row = `${id}.${kebab(words)}`;
  return round === 'count'
    ? { count: `${row}.count`, percent: `${row}.percent` }
    : { count: `${row}.${round}`, percent: `${row}.${round}-percent` };
}

function numberOf(id: string, value: number, unit: string) {
  return { id, value, unit, decimals: 0, sources: [] };
}
