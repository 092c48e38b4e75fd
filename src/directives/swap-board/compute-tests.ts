import type { Place } from '../../diagnostics/index.js';
import { type Food, judgeSwap, NEEDS, type NeedFinding, testNeeds } from '../../nutrition/index.js';
import type { ComputeContext } from '../contract.js';
import { readProblem } from '../problems.js';
import type { SwapRow, Values } from './schema.js';

/** It is not said whether coconut counts as a nut, so that it is no pass for those who avoid nuts. */
export const SETTINGS = { coconut: 'not said' } as const;

/** What has to be so for the new food, one sentence each; nothing after a refusal. */
export function judged(row: SwapRow, values: Values, context: ComputeContext): readonly string[] | undefined {
  const safe = safeForRoom(row, values, context);
  const { food, piece } = row.fresh;
  const swap = judgeSwap(food, values.needs, SETTINGS, values.offers);
  if (swap.ok) return safe ? swap.value.conditions : undefined;
  const verdict = testNeeds(food, values.needs, SETTINGS).find(
    (one) => one.verdict === 'breaks' || one.verdict === 'not known',
  );
  const finding = verdict?.findings.find(({ kind }) => kind !== 'only if');
  context.refuse('R02', piece.place, {
    allergen: whatOf(finding),
    need: verdict?.need ?? values.needs.join(', '),
  });
  context.report.add(readProblem('directives/need', swap, piece.place));
  return undefined;
}

function whatOf(finding: NeedFinding | undefined): string {
  if (!finding) return 'a food';
  return finding.kind === 'not known' ? `what may be ${finding.group} (it is not known)` : finding.group;
}

const has = (food: Food, ...flags: readonly string[]) => food.flags.some((flag) => flags.includes(flag));

/** Foods that some rooms are not shown at all, whatever they need. */
function safeForRoom({ old, fresh }: SwapRow, { rooms }: Values, { refuse }: ComputeContext): boolean {
  const refused: (readonly [string, Place])[] = [];
  if (rooms.has('no potassium salt') && has(fresh.food, 'potassium-chloride'))
    refused.push(['R01', fresh.piece.place]);
  if (rooms.has('infants') && (has(fresh.food, 'honey') || fresh.food.contains.honey === 'yes'))
    refused.push(['R03', fresh.piece.place]);
  const drink = [old, fresh].find(({ food }) => has(food, 'cow-milk-drink', 'plant-drink', 'rice-drink'));
  if (rooms.has('infants') && drink) refused.push(['R04', drink.piece.place]);
  else if (rooms.has('small children') && has(fresh.food, 'rice-drink'))
    refused.push(['R04', fresh.piece.place]);
  for (const [id, place] of refused) refuse(id, place);
  return refused.length === 0;
}

/** Lines of the needs, each once; what concerns one kind of need stands in its own caution too. */
export function notesOf({ needs }: Values): readonly string[] {
  return [...new Set(needs.flatMap((need) => NEEDS[need].notes))];
}

/**
 * For each row a food that surely breaks a need, for the worksheet: the author's, or the one most like the new food.
 * First those that break a need which the old food kept: that is the slip which a swap invites.
 */
export function trapsOf(values: Values): Food[] {
  const { rows, needs, offers } = values;
  if (needs.length === 0) return [];
  const breaks = (food: Food) =>
    testNeeds(food, needs, SETTINGS).flatMap(({ need, verdict }) => (verdict === 'breaks' ? [need] : []));
  // A trap that nobody chose must not call for cautions that the board does not call for itself.
  const quiet = new Set([
    ...QUIET,
    ...rows.flatMap(({ old, fresh }) => [...old.food.flags, ...fresh.food.flags]),
  ]);
  const traps: Food[] = [];
  for (const { old, fresh, trap } of rows) {
    const kept = needs.filter((need) => !breaks(old.food).includes(need));
    const taken = new Set([
      ...rows.flatMap((row) => [row.old.food.id, row.fresh.food.id]),
      ...traps.map(({ id }) => id),
    ]);
    const score = (food: Food) =>
      2 * food.flags.filter((flag) => fresh.food.flags.includes(flag)).length +
      (breaks(food).some((need) => kept.includes(need)) ? 3 : 0);
    const found =
      trap ??
      offers
        .filter(
          (food) =>
            !taken.has(food.id) &&
            food.flags.every((flag) => quiet.has(flag)) &&
            [old.food, fresh.food].some(
              (one) => one.plate.some((kind) => food.plate.includes(kind)) || sharesDrink(one, food),
            ) &&
            breaks(food).length > 0,
        )
        .toSorted((a, b) => score(b) - score(a) || (a.name < b.name ? -1 : 1))[0];
    if (found && !traps.some(({ id }) => id === found.id)) traps.push(found);
  }
  return traps;
}

/** Flags of allergens and of plant drinks, whose cautions stand on every board. */
const QUIET = ['soy', 'tree-nut', 'oat', 'plant-drink', 'calcium-added'];

function sharesDrink(one: Food, other: Food): boolean {
  return has(one, 'plant-drink', 'cow-milk-drink') && has(other, 'plant-drink', 'cow-milk-drink');
}
