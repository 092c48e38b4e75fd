import type { ViewContext } from '../contract.js';
import { shortName } from '../dish-names.js';
import type { Move, TurnResult } from './compute.js';
import type { Swap, Values } from './schema.js';

export function needWords({ needs }: Values, { list }: ViewContext): string {
  return list(needs);
}

/** A food's short name among all foods of both dishes. */
export function oldName({ old }: Swap, computed: TurnResult): string {
  return shortName(
    computed.before.find(({ food }) => food.id === old.food.id)?.words ?? old.words,
    allWords(computed),
  );
}

export function freshName({ fresh }: Swap, computed: TurnResult): string {
  return shortName(fresh.words, allWords(computed));
}

function allWords({ before, after }: TurnResult): string[] {
  return [...new Set([...before, ...after].map(({ words }) => words))];
}

/** How many lines of what moved stand on a page: none for beginning readers, and never fewer than what is lost. */
export function movesAt({ moves }: TurnResult, { level, where }: ViewContext): readonly Move[] {
  if (level === 'short' && where !== 'key') return [];
  const lost = moves.filter((move) => move.lost).length;
  const most = level === 'fuller' || level === 'staff' || where === 'staff' ? 6 : 3;
  return moves.slice(0, Math.max(most, Math.min(lost, 6)));
}

export function laneText({ before, after, lost }: Move, { say, text }: ViewContext): string {
  return say(lost ? 'lane-lost' : 'lane', { before: text(before.number), after: text(after.number) });
}

export function swapWords(values: Values, computed: TurnResult, { say }: ViewContext): string {
  return values.swaps
    .map((swap) => say('swap', { old: oldName(swap, computed), fresh: freshName(swap, computed) }))
    .join('; ');
}

export function lostWords({ lost }: TurnResult, { say, list }: ViewContext): string {
  return lost.length > 0 ? say('lost', { nutrients: list(lost) }) : say('lost-none');
}
