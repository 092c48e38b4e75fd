import { slotsOf, standingLines } from '../cautions/index.js';
import { type CodeTable, type Problem, problemsOf } from '../diagnostics/index.js';
import { priceNeeds } from './price-form.js';
import { type Desk, settingFor } from './sheets.js';

export const fillCodes = {
  'pipeline/to-fill': {
    severity: 'ask',
    rule: 'A site’s pack holds what its lessons need: prices, places and phone lines.',
    about:
      'Only what this lesson needs is counted. Write prices into prices.csv from the price form, places into site.yaml and lines into lines.yaml, each with the day on which it was found.',
  },
} as const satisfies CodeTable;
const problem = problemsOf(fillCodes);

/** What a site still lacks for one lesson, by kind and in words. */
export interface ToFill {
  readonly prices: readonly string[];
  readonly places: readonly string[];
  readonly lines: readonly string[];
}

/** Prices that nobody wrote down, the hall and a shop where there is none, and lines that the cautions call for. */
export function toFill(desk: Desk): ToFill {
  const { computed, pulled, local, facts } = desk;
  const { site, lines, prices } = local;
  const needs = priceNeeds(computed);
  const shops = prices.shops.filter(({ id }) => id !== site?.hall?.id);
  const standing = standingLines(pulled, facts, settingFor(desk, 'handout', 'plain'));
  const called = [...pulled, ...standing].flatMap(({ caution }) =>
    Object.values(caution.wordings.en ?? {}).flatMap(slotsOf),
  );
  const names = called.map(({ name }) => name).filter((name) => /-(?:line|number)$/.test(name));
  return {
    prices: needs.filter(({ last }) => last === undefined).map(({ food }) => food.name),
    places: [
      ...(site?.hall ? [] : ['the place where talks are held']),
      ...(needs.length > 0 && shops.length === 0 ? ['a shop'] : []),
    ],
    lines: [...new Set(names)].filter((name) => lines.get(name) === undefined),
  };
}

/** One line such as "To fill in for willow-bend: 2 prices, 2 places, 1 phone line.", and then which. */
export function fillProblem(desk: Desk): Problem | undefined {
  const { site } = desk.local;
  if (!site) return undefined;
  const { prices, places, lines } = toFill(desk);
  const counts = [
    counted(prices.length, 'price'),
    counted(places.length, 'place'),
    counted(lines.length, 'phone line'),
  ].filter((words) => words !== '');
  if (counts.length === 0) return undefined;
  const listed = (what: string, items: readonly string[]) =>
    items.length === 0 ? '' : `${what}: ${items.join('; ')}.`;
  return problem('pipeline/to-fill', `To fill in for ${site.id}: ${counts.join(', ')}.`, {
    hint: [listed('Prices', prices), listed('Places', places), listed('Phone lines', lines)]
      .filter(Boolean)
      .join(' '),
    actual: counts.join(', '),
    expected: [...prices, ...places, ...lines],
  });
}

function counted(count: number, word: string): string {
  return count === 0 ? '' : `${count} ${word}${count === 1 ? '' : 's'}`;
}
