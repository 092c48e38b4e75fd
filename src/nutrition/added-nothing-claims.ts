import { allHold } from './content-limits.js';
import type { Contains } from './food.js';
import type { Published } from './published.js';

/** What a rule lets a label say, and what has to stand beside it. */
export interface WordVerdict extends Published {
  readonly allowed: Contains;
  readonly say: readonly string[];
}

/** What is known of the sugar in a food and its making. */
export interface Sweetening {
  readonly sugarAdded: Contains;
  /** An ingredient that brings sugar, such as jam, juice concentrate or sweetened fruit. */
  readonly sugaryIngredient: Contains;
  /** A step that raises the sugars, such as enzymes on starch. */
  readonly processRaisesSugars: Contains;
  /** Whether the food that it stands in for is usually sweetened. */
  readonly usuallySweetened: Contains;
  readonly lowCalorie: Contains;
}

/**
 * "No added sugars": none added, no ingredient that brings sugar, no step that raises it, and a food that usually is
 * sweetened. A food that is not low in calories has to say so. Source: 21 CFR 101.60(c)(2).
 */
export function noAddedSugars(facts: Sweetening): WordVerdict {
  return {
    allowed: allHold([
      opposite(facts.sugarAdded),
      opposite(facts.sugaryIngredient),
      opposite(facts.processRaisesSugars),
      facts.usuallySweetened,
    ]),
    say: facts.lowCalorie === 'yes' ? [] : ['say that the food is not low in calories'],
    source: '21 CFR 101.60(c)(2)',
    checked: 'copies',
  };
}

/** What is known of the salt in a food and its making. */
export interface Salting {
  readonly saltAdded: Contains;
  /** Whether the food that it stands in for is usually salted. */
  readonly usuallySalted: Contains;
  readonly sodiumFree: Contains;
}

/**
 * "No salt added" or "unsalted": none added in the making, and a food that usually is salted. Unless it is sodium free
 * it has to say that it is not. Source: 21 CFR 101.61(c)(2).
 */
export function noSaltAdded(facts: Salting): WordVerdict {
  return {
    allowed: allHold([opposite(facts.saltAdded), facts.usuallySalted]),
    say: facts.sodiumFree === 'yes' ? [] : ['say that the food is not a sodium free food'],
    source: '21 CFR 101.61(c)(2)',
    checked: 'copies',
  };
}

/** Gluten, parts per million, must stay under this. */
export const GLUTEN_FREE_PPM = 20;

/** What is known of the gluten in a food. */
export interface GlutenFacts {
  /** Measured gluten in parts per million; `null` is not measured. */
  readonly ppm: number | null;
  /** Wheat, rye, barley or a crossbreed of them. */
  readonly glutenGrain: Contains;
  /** An ingredient made from such a grain from which the gluten was not removed. */
  readonly untreatedDerivative: Contains;
  /** Fermented or hydrolyzed: then the food must have met the rule before, for the gluten cannot be measured after. */
  readonly fermented: Contains;
  readonly glutenFreeBefore?: Contains;
}

/**
 * "Gluten-free" on a US label: under 20 parts per million, no gluten grain, no ingredient of one from which the gluten
 * was not removed. What is not known never passes as free. Whatever comes out, the package is read each time.
 * Source: 21 CFR 101.91, from memory. A reading below zero counts as not measured.
 */
export function glutenFree(facts: GlutenFacts): WordVerdict {
  const { ppm } = facts;
  const little: Contains = ppm === null || !(ppm >= 0) ? 'unknown' : ppm < GLUTEN_FREE_PPM ? 'yes' : 'no';
  const before: Contains = facts.fermented === 'no' ? 'yes' : (facts.glutenFreeBefore ?? 'unknown');
  return {
    allowed: allHold([little, opposite(facts.glutenGrain), opposite(facts.untreatedDerivative), before]),
    say: ['read the label each time'],
    source: '21 CFR 101.91',
    checked: 'memory',
  };
}

function opposite(answer: Contains): Contains {
  if (answer === 'unknown') return 'unknown';
  return answer === 'yes' ? 'no' : 'yes';
}
