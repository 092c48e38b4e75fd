import type { Inline } from '../../document/index.js';
import type { ViewContext } from '../contract.js';
import { shortName } from '../dish-names.js';
import { capital, withNumbers } from '../words.js';
import { type BoardResult, type BoardSwap, lostIn } from './compute.js';
import type { Change } from './compute-changes.js';

/** A food's name among all foods of the board. */
export function namesOf(
  { row }: BoardSwap,
  { swaps }: BoardResult,
): { readonly old: string; readonly fresh: string } {
  const all = [...new Set(swaps.flatMap((one) => [one.row.old.words, one.row.fresh.words]))];
  return { old: shortName(row.old.words, all), fresh: shortName(row.fresh.words, all) };
}

export function pairOf(swap: BoardSwap, computed: BoardResult, { say }: ViewContext): string {
  return say('pair', namesOf(swap, computed));
}

/** A change of which both sides are known. */
export type KnownChange = Change & {
  readonly before: { readonly value: number };
  readonly after: { readonly value: number };
};

/** What moved by less than this share of the Daily Value is not worth a line. House rule. */
const LEAST_MOVE = 0.02;

/** The nutrients that change most, what is lost first, then what is the food's job: none for beginning readers, three, or six. */
export function lanesOf(
  { row, changes }: BoardSwap,
  { where, level, text }: ViewContext,
): readonly KnownChange[] {
  if (level === 'short' && where !== 'slide') return [];
  const known = changes.filter(
    (one): one is KnownChange => one.before.value !== null && one.after.value !== null,
  );
  const rank = ({ lost, nutrient }: Change) => (lost === true ? 0 : row.brings.includes(nutrient) ? 1 : 2);
  const most = where !== 'slide' && (level === 'fuller' || level === 'staff' || where === 'staff') ? 6 : 3;
  return (
    known
      // What is printed alike on both sides shows no change.
      .filter(({ moved, before, after }) => moved > LEAST_MOVE && text(before.number) !== text(after.number))
      .toSorted((a, b) => rank(a) - rank(b) || b.moved - a.moved)
      .slice(0, most)
  );
}

export function changeText({ before, after, lost }: Change, { say, text }: ViewContext): string {
  return say(lost === true ? 'change-lost' : 'change', {
    before: text(before.number),
    after: text(after.number),
  });
}

export function lostWords(swap: BoardSwap, { say, list }: ViewContext): string {
  const lost = lostIn(swap);
  return lost.length > 0 ? say('lost', { nutrients: list(lost) }) : say('lost-none');
}

/** Under which conditions a swap holds, for wherever it is shown. */
export function conditionsOf({ changes, conditions }: BoardSwap, { say, list }: ViewContext): string[] {
  const added = changes.flatMap((change) => (change.added ? [change.nutrient] : []));
  return [
    ...(added.length > 0 ? [say('added', { nutrients: list(added) })] : []),
    ...conditions.map(capital),
  ];
}

/** What has to stand beside a swap: what is lost, what was added, what is not known, under which condition it fits, its cost. */
export function toldOf(swap: BoardSwap, context: ViewContext): Inline[] {
  const { say, list, number, date, level, where } = context;
  const { row, changes, costs } = swap;
  const named = (which: (change: Change) => boolean) =>
    changes.flatMap((change) => (which(change) ? [change.nutrient] : []));
  const short = level === 'short' && where !== 'staff';
  const full = level === 'fuller' || level === 'staff' || where === 'staff';
  const open = named(({ lost }) => lost === null);
  const unknown = named(
    ({ before, after, lost }) => lost !== null && (before.value === null || after.value === null),
  );
  const words = [
    ...(row.use === undefined ? [] : [say('use', { use: row.use })]),
    lostWords(swap, context),
    ...(open.length > 0 && !short ? [say('open', { nutrients: list(open) })] : []),
    ...(unknown.length > 0 && full ? [say('unknown', { nutrients: list(unknown) })] : []),
    ...conditionsOf(swap, context),
  ];
  const inlines: Inline[] = [{ text: words.join(' ') }];
  if (!costs || short) return inlines;
  const slots = { shop: costs.shop, date: date(costs.day) };
  return [
    ...inlines,
    { text: ' ' },
    ...withNumbers((numbers) => say('cost', { ...slots, ...numbers }), {
      before: number(costs.before),
      after: number(costs.after),
    }),
  ];
}
