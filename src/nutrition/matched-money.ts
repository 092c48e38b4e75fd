import { type Money, money } from './money.js';
import type { Reckoned } from './reckoned.js';
import { ok, type Result, refuse } from './result.js';
import { FROM_LESSON, input, substitute, type Working } from './working.js';

/** How own money is matched: so much for each so much of one's own, up to a cap. */
export interface MatchRule {
  readonly gives: number;
  readonly forEach: number;
  /** The most that is given; `null` for no cap. */
  readonly cap: Money | null;
  /** Tokens come in this many cents; what is given is rounded down to whole ones. */
  readonly token: number;
}

/** Own and matched money, each whole cents. */
export interface Matched {
  readonly own: Money;
  readonly matched: Money;
  readonly total: Money;
  /** `own + min(own * gives / for_each, cap)` before tokens are rounded down. */
  readonly working: Working;
  /** True when the cap kept back part of the match. */
  readonly capped: boolean;
}

/**
 * Reads a match such as `1 to 1` or `2 to 1`: the first is given for each of the second. Refuses anything else
 * and numbers that are not above zero.
 */
export function readMatch(text: string): Result<{ readonly gives: number; readonly forEach: number }> {
  const found = /^\s*(\d+(?:\.\d+)?)\s+to\s+(\d+(?:\.\d+)?)\s*$/i.exec(text);
  const [gives, forEach] = [Number(found?.[1]), Number(found?.[2])];
  if (!(gives > 0 && forEach > 0)) {
    return refuse(`"${text}" does not say how money is matched.`, 'Write given to own, such as 1 to 1.');
  }
  return ok({ gives, forEach });
}

/**
 * What own and matched money make: own + min(own × rate, cap), the match rounded down to whole tokens. Refuses money
 * below zero, two currencies, and a rule that gives nothing.
 */
export function matchMoney(own: Money, rule: MatchRule): Result<Matched> {
  const { gives, forEach, cap, token } = rule;
  const positive = gives > 0 && forEach > 0 && Number.isInteger(token) && token > 0;
  if (!positive)
    return refuse('The rule matches nothing.', 'Write a match such as 1 to 1, and tokens of a cent or more.');
  if (own.cents < 0 || (cap !== null && cap.cents < 0)) {
    return refuse('Money to spend cannot be less than zero.', 'Write a sum such as 10.00.');
  }
  if (cap !== null && cap.currency !== own.currency) {
    return refuse('The cap is in another currency.', 'Write both in one currency.');
  }
  const full = (own.cents * gives) / forEach;
  const given = Math.min(full, cap?.cents ?? full);
  const matched = Math.floor(given / token + 1e-9) * token;
  const ratio = [
    input('own', own.cents, 'cents', FROM_LESSON),
    input('gives', gives, 'cents', FROM_LESSON),
    input('for_each', forEach, 'cents', FROM_LESSON),
  ];
  return ok({
    own,
    matched: money(matched, own.currency),
    total: money(own.cents + matched, own.currency),
    working:
      cap === null
        ? { formula: 'own + own * gives / for_each', inputs: ratio }
        : {
            formula: 'own + min(own * gives / for_each, cap)',
            inputs: [...ratio, input('cap', cap.cents, 'cents', FROM_LESSON)],
          },
    capped: given < full,
  });
}

/** What a sum buys of a food. */
export interface CupsBought extends Reckoned<'cups'> {
  /** Whole cups, rounded down: nobody buys more than the money. `null` when the cost is not known. */
  readonly whole: number | null;
}

/** How many cups a sum buys: `total / cost`. A cost that is not known gives a count that is not known. */
export function cupsFor(total: Money, cost: Reckoned<'cents'>): Result<CupsBought> {
  if (cost.value !== null && !(cost.value > 0))
    return refuse('A cup that costs nothing has no count.', 'Write its price.');
  if (total.cents < 0)
    return refuse('Money to spend cannot be less than zero.', 'Write a sum such as 10.00.');
  const outer: Working = {
    formula: 'total / cost',
    inputs: [input('total', total.cents, 'cents', FROM_LESSON), input('cost', null, '', '')],
  };
  const value = cost.value === null ? null : total.cents / cost.value;
  const working = substitute(outer, 'cost', cost.working);
  return ok({ value, unit: 'cups', working, whole: value === null ? null : Math.floor(value + 1e-9) });
}
