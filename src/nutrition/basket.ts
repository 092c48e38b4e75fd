import { type Currency, type Money, money, writeMoney } from './money.js';
import type { Reckoned } from './reckoned.js';
import { ok, type Result, refuse } from './result.js';
import { FROM_LESSON, input, nameInputs } from './working.js';

/** One food of a week's list. */
export interface BasketRow {
  readonly food: string;
  /** Grams that the week uses, from zero up. */
  readonly needs: number;
  /** Grams at home from the week before; 0 when there is none. */
  readonly onHand: number;
  /** Grams in one package, above zero. */
  readonly packageGrams: number;
  /** Price of one package; `null` when it is not known. */
  readonly price: Money | null;
  /** Whether benefits pay for it; `null` when no local rule says so. */
  readonly eligible: boolean | null;
}

/** A row with what is bought: only whole packages. */
export interface BasketLine extends BasketRow {
  readonly packages: number;
  /** Cost of the packages; `null` when the price is not known. */
  readonly cost: Money | null;
  /** Grams left for the week after. */
  readonly carriesOver: number;
}

/** A week's list on a set sum. */
export interface Basket {
  readonly lines: readonly BasketLine[];
  /** Sum of the known costs; `atLeast` when the price of something bought is not known. */
  readonly total: Money;
  readonly atLeast: boolean;
  /** Budget minus total, below zero when it is over; `null` while a price is not known. */
  readonly left: Money | null;
  /** True when the known costs alone are above the budget. */
  readonly over: boolean;
  /** Sum of what benefits pay for; `null` when no rule, or no price, is known for something that is bought. */
  readonly eligible: Money | null;
  /** Cents for one person and day, unrounded; not known while a price is not known. */
  readonly perPersonDay: Reckoned<'cents per person and day'>;
}

/** What the list is for. */
export interface BasketPlan {
  readonly budget: Money;
  /** Whole, one or more. */
  readonly people: number;
  readonly days: number;
}

/** Whole packages needed for so many grams, after what is at home is used. */
export function packagesFor(needs: number, packageGrams: number, onHand = 0): number {
  return Math.max(0, Math.ceil((needs - onHand) / packageGrams - 1e-9));
}

/**
 * Buys a week's list in whole packages. What is left of them carries over and is the next week's `onHand`. Refused:
 * no rows, amounts that are not numbers or below zero, packages of nothing, two currencies, a budget below zero, and
 * people or days that are no whole number of one or more.
 */
export function fillBasket(rows: readonly BasketRow[], plan: BasketPlan): Result<Basket> {
  const { budget, people, days } = plan;
  const wrong = faultOf(rows, plan);
  if (wrong !== null) return refuse(wrong, 'Correct the row.');
  const { currency } = budget;
  const lines = rows.map((row) => lineOf(row));
  const bought = lines.filter(({ packages }) => packages > 0);
  const total = sumOf(lines, currency);
  const atLeast = bought.some(({ cost }) => cost === null);
  const open = bought.some(({ cost, eligible }) => eligible === null || (eligible && cost === null));
  const paid = bought.filter(({ eligible }) => eligible === true);
  const named = nameInputs(bought, ({ food }) => food);
  const sum = named.map(({ name }) => name).join(' + ');
  return ok({
    lines,
    total,
    atLeast,
    left: atLeast ? null : money(budget.cents - total.cents, currency),
    over: total.cents > budget.cents,
    eligible: open ? null : sumOf(paid, currency),
    perPersonDay: {
      value: atLeast ? null : total.cents / people / days,
      unit: 'cents per person and day',
      working: {
        formula: `(${sum === '' ? '0' : sum}) / people_here / days_here`,
        inputs: [
          ...named.map(({ name, item }) => input(name, item.cost?.cents ?? null, 'cents', FROM_LESSON)),
          input('people_here', people, 'people', FROM_LESSON),
          input('days_here', days, 'days', FROM_LESSON),
        ],
      },
    },
  });
}

/** A change of one or two rows of a list that brings it within the budget. */
export interface BasketAnswer {
  /** The places of the changed rows, from 0, and the rows in their place. */
  readonly changes: readonly { readonly place: number; readonly row: BasketRow }[];
  readonly total: Money;
}

/**
 * Up to `most` ways to bring a list within its budget by putting other rows in the place of one or two, searched in
 * order: single changes before pairs, earlier rows first. None when there is no way. Rows with no price are never
 * part of an answer. Refuses what `fillBasket` refuses, and a list in which a price is not known.
 */
export function withinBudget(
  rows: readonly BasketRow[],
  choices: readonly { readonly place: number; readonly row: BasketRow }[],
  plan: BasketPlan,
  most = 3,
): Result<readonly BasketAnswer[]> {
  const now = fillBasket(rows, plan);
  if (!now.ok) return now;
  if (now.value.atLeast) return refuse('A price in the list is not known.', 'Write every price of the list.');
  const changes = choices.filter(({ place }) => rows[place] !== undefined);
  const pairs = changes.flatMap((a, i) =>
    changes.slice(i + 1).flatMap((b) => (a.place === b.place ? [] : [[a, b]])),
  );
  const answers: BasketAnswer[] = [];
  for (const set of [...changes.map((one) => [one]), ...pairs]) {
    if (answers.length === most) break;
    const next = rows.map((row, place) => set.find((one) => one.place === place)?.row ?? row);
    const filled = fillBasket(next, plan);
    if (filled.ok && !filled.value.atLeast && !filled.value.over) {
      answers.push({ changes: set, total: filled.value.total });
    }
  }
  return ok(answers);
}

function lineOf(row: BasketRow): BasketLine {
  const packages = packagesFor(row.needs, row.packageGrams, row.onHand);
  const carriesOver = Math.max(0, row.onHand + packages * row.packageGrams - row.needs);
  const { price } = row;
  return { ...row, packages, carriesOver, cost: price && money(price.cents * packages, price.currency) };
}

function sumOf(lines: readonly BasketLine[], currency: Currency): Money {
  return money(
    lines.reduce((so, { cost }) => so + (cost?.cents ?? 0), 0),
    currency,
  );
}

function faultOf(rows: readonly BasketRow[], { budget, people, days }: BasketPlan): string | null {
  if (rows.length === 0) return 'The list is empty.';
  if (budget.cents < 0) return `A budget of ${writeMoney(budget)} is none.`;
  if (!Number.isInteger(people) || people < 1) return `${people} people cannot eat.`;
  if (!Number.isInteger(days) || days < 1) return `${days} days are no time.`;
  for (const { food, needs, onHand, packageGrams, price } of rows) {
    if (!(needs >= 0 && onHand >= 0) || !Number.isFinite(needs + onHand))
      return `The amount of ${food} is no amount.`;
    if (!(packageGrams > 0) || !Number.isFinite(packageGrams)) return `A package of ${food} holds nothing.`;
    if (price !== null && price.currency !== budget.currency)
      return `The price of ${food} is in another currency.`;
    if (price !== null && price.cents < 0) return `The price of ${food} is below zero.`;
  }
  return null;
}
