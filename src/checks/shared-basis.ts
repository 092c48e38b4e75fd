import type { Place, Report } from '../diagnostics/index.js';
import type { Numbers } from '../document/index.js';
import { type Food, parseBasis, portionOnBasis } from '../nutrition/index.js';
import { checkProblem } from './codes.js';

/** A directive that sets foods side by side. */
export interface Comparison {
  readonly id: string;
  readonly place?: Place;
  /** As the author wrote it: `1 cup, ready to eat`. */
  readonly basis: string;
  readonly foods: readonly { readonly food: Food; readonly place?: Place }[];
}

export interface SharedBasisInput {
  readonly comparisons: readonly Comparison[];
  readonly numbers: Numbers;
}

/**
 * N03: each compared food stands on the basis that the figure names, and the numbers of one measure of a
 * figure name one basis and one unit. A food with its liquid on a ready-to-eat basis is the classic slip.
 */
export function checkSharedBasis({ comparisons, numbers }: SharedBasisInput, report: Report): void {
  for (const { id, place, basis, foods } of comparisons) {
    const read = parseBasis(basis);
    if (!read.ok) {
      report.add(
        checkProblem('N03', `\`${id}\` compares foods on "${basis}", which is no basis: ${read.reason}`, {
          ...at(place),
          hint: read.hint ?? 'Write one such as 1 cup, ready to eat.',
        }),
      );
      continue;
    }
    for (const { food, place: where } of foods) {
      const portion = portionOnBasis(food, read.value);
      if (portion.ok) continue;
      report.add(
        checkProblem('N03', `\`${id}\` sets ${food.name} on "${basis}": ${portion.reason}`, {
          ...at(where ?? place),
          hint: portion.hint ?? 'Take another form of the food, or another basis.',
        }),
      );
    }
  }
  const compared = new Set(comparisons.map(({ id }) => id));
  for (const [name, rows] of measures(numbers, compared)) {
    const units = new Set(rows.map((n) => n.unit));
    const bases = new Set(rows.flatMap((n) => basisIn(n.what) ?? []));
    const differ = (what: string, values: ReadonlySet<string>) =>
      report.add(
        checkProblem(
          'N03',
          `The rows of \`${name}\` do not share one ${what}: ${[...values].join(' and ')}.`,
          {
            hint: 'Put all rows of the figure on one basis.',
          },
        ),
      );
    if (units.size > 1) differ('unit', units);
    if (bases.size > 1) differ('basis', bases);
  }
}

const at = (place: Place | undefined) => (place ? { place } : {});

/** Numbers of one measure of one comparison: `pinto.*.sodium`. Swaps and steps have an amount of their own in each row. */
function measures(numbers: Numbers, compared: ReadonlySet<string>): ReadonlyMap<string, Numbers['all']> {
  const groups = new Map<string, Numbers['all'][number][]>();
  for (const number of numbers.all) {
    const parts = number.id.split('.');
    const [directive = ''] = parts;
    if (parts.length !== 3 || number.only !== undefined || !compared.has(directive)) continue;
    const name = `${directive}.*.${parts[2]}`;
    groups.set(name, [...(groups.get(name) ?? []), number]);
  }
  return groups;
}

/** `sodium in 1/2 cup of pinto beans` → `1/2 cup`. */
function basisIn(what: string): string | undefined {
  return /^.+? in (.+?) of /.exec(what)?.[1];
}
