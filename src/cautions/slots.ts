import { formatList } from '../languages/index.js';
import type { FoodState } from '../nutrition/index.js';
import type { DirectiveFacts } from './facts.js';

/** A slot in braces: `{poison-line}`. */
export interface Slot {
  readonly name: string;
  readonly at: number;
  readonly end: number;
}

export function slotsOf(wording: string): Slot[] {
  return [...wording.matchAll(/\{([a-z]+(?:-[a-z]+)*)\}/g)].map((m) => ({
    name: m[1] ?? '',
    at: m.index,
    end: m.index + m[0].length,
  }));
}

/** States in which food is on the plate; a figure of such foods says "ready to eat" for all of them. */
const ON_THE_PLATE: ReadonlySet<FoodState> = new Set([
  'ready to eat',
  'cooked',
  'frozen, cooked',
  'canned, drained',
  'canned, drained and rinsed',
]);

/**
 * What fills the slots of the notes beside a directive's figure. Without a given `state` it is worked out
 * from the foods, in English only: in another language the directive has to say it.
 */
export function figureSlots(d: DirectiveFacts, language: string): Readonly<Record<string, string>> {
  const states = [...new Set(d.foods.flatMap((f) => f.food.state ?? []))];
  if (language !== 'en' || states.length === 0) return d.slots ?? {};
  const state = states.every((s) => ON_THE_PLATE.has(s)) ? 'ready to eat' : formatList(states, language);
  return { state, ...d.slots };
}
