import {
  type Food,
  judgeSwap,
  type NeedFinding,
  type NeedName,
  nearestPassing,
  testDish,
  testIngredients,
  testNeeds,
} from '../../nutrition/index.js';
import type { ComputeContext } from '../contract.js';
import { quoted, readProblem } from '../problems.js';
import type { PublishedFood } from '../published.js';
import type { Swap, Values } from './schema.js';

/** It is not said whether coconut counts as a nut, so that it is no pass for those who avoid nuts. */
const SETTINGS = { coconut: 'not said' } as const;

/** Why a food of the dish has to go, or that it may stay. */
export interface Verdict {
  readonly index: number;
  readonly goes: boolean;
  /** Why it goes, or under which condition it stays; none where it just stays. */
  readonly reasons: readonly string[];
}

/** Every food of the dish tested against every need. What is not known goes too. */
export function verdictsOf(foods: readonly PublishedFood[], needs: readonly NeedName[]): Verdict[] {
  return foods.map(({ food }, index) => {
    const findings = testNeeds(food, needs, SETTINGS).flatMap((one) => one.findings);
    const bad = findings.filter(({ kind }) => kind !== 'only if');
    return {
      index,
      goes: bad.length > 0,
      reasons: [...new Set((bad.length > 0 ? bad : findings).map(({ reason }) => reason))],
    };
  });
}

/** Foods that have to go and have no swap, each with the nearest foods that pass; false when there are any. */
export function allReplaced(
  { needs, offers, swaps, place }: Values,
  foods: readonly PublishedFood[],
  verdicts: readonly Verdict[],
  { report }: ComputeContext,
): boolean {
  const left = verdicts.filter(
    ({ goes, index }) => goes && !swaps.some(({ old }) => old.food.id === foods[index]?.food.id),
  );
  for (const { index, reasons } of left) {
    const food = foods[index]?.food;
    if (!food) continue;
    const near = nearestPassing(food, offers, needs, SETTINGS).map(({ name }) => name);
    report.add(
      readProblem(
        'directives/need',
        {
          reason: `${food.name} has no swap and does not pass ${needs.join(', ')}. ${reasons.join(' ')}`,
          hint:
            near.length > 0
              ? `Write a row for it, with one of the nearest that pass: ${near.join('; ')}.`
              : 'No food of its kind in the table passes; leave it out of the dish.',
          near,
        },
        place,
      ),
    );
  }
  return left.length === 0;
}

/** Refuses a new food that breaks a need or may break one, and offers the nearest that pass; its conditions otherwise. */
export function judged(
  { fresh }: Swap,
  { needs, offers }: Values,
  { report, refuse }: ComputeContext,
): readonly string[] | undefined {
  const { food, piece } = fresh;
  const swap = judgeSwap(food, needs, SETTINGS, offers);
  if (swap.ok) return swap.value.conditions;
  const verdict = testNeeds(food, needs, SETTINGS).find(
    (one) => one.verdict === 'breaks' || one.verdict === 'not known',
  );
  const finding = verdict?.findings.find(({ kind }) => kind !== 'only if');
  refuse('R02', piece.place, { allergen: whatOf(finding), need: verdict?.need ?? needs.join(', ') });
  report.add(readProblem('directives/need', swap, piece.place));
  return undefined;
}

function whatOf(finding: NeedFinding | undefined): string {
  if (!finding) return 'a food';
  return finding.kind === 'not known' ? `what may be ${finding.group} (it is not known)` : finding.group;
}

/** The new dish as a whole, and the words beside it that are no food of the tables; false after a problem. */
export function wholePasses(
  { needs, needPlace }: Values,
  foods: readonly { readonly food: Food }[],
  beside: readonly string[],
  { report }: ComputeContext,
): boolean {
  const together = foods.map(({ food }) => ({ food, settings: SETTINGS }));
  const faults = needs.flatMap((need) => {
    const alone = new Set(
      foods.flatMap(({ food }) =>
        testNeeds(food, [need], SETTINGS).flatMap((one) => one.findings.map(({ reason }) => reason)),
      ),
    );
    const dish = testDish(together, need).findings.filter(
      ({ kind, reason }) => kind !== 'only if' && !alone.has(reason),
    );
    const words = beside.filter(
      (text) => testIngredients(text, need, SETTINGS.coconut).verdict !== 'nothing found',
    );
    return [
      ...dish.map(({ reason }) => ({ reason: `${need}: ${reason}`, hint: 'Swap one of them.' })),
      ...words.map((text) => ({
        reason: `${quoted(text)} beside the dish cannot be tested for ${need}.`,
        hint: 'Write it as a food of the tables with its amount, or leave it out of the dish.',
      })),
    ];
  });
  for (const fault of faults) report.add(readProblem('directives/need', fault, needPlace));
  return faults.length === 0;
}
