import type { AdultFigures } from './adult.js';
import { known, notKnown } from './arithmetic.js';
import type { Checked } from './published.js';
import { whenKnown } from './reckoned.js';
import { input, substitute, type Worked, type Working } from './working.js';

/** One row of a published table of straight-line equations in kcal a day. */
export interface EnergyRow {
  /** Id of a source in assets/sources.yaml. */
  readonly source: string;
  readonly checked: Checked;
  readonly note?: string;
  readonly constant: number;
  readonly perKg: number;
  /** Per cm or per m of height, as the table prints it; left out where the equation takes no height. */
  readonly perHeight?: { readonly each: number; readonly unit: 'cm' | 'm' };
  readonly perYear?: number;
}

/** Energy of a day in kcal as an equation gives it for a group; individuals differ by hundreds of kcal. */
export interface EnergyEstimate extends Worked<'kcal'> {
  readonly checked: Checked;
  /** What the equation is, in a few words: the publication and its form. */
  readonly equation: string;
  readonly cautions: readonly string[];
}

/**
 * Works out one row for one adult: constant + per kg × weight + per cm (or m) × height + per year × age, in
 * kcal a day. Not known when a figure that the row uses is not known.
 */
export function fromRow(
  row: EnergyRow,
  figures: AdultFigures,
): Pick<EnergyEstimate, 'quantity' | 'working' | 'estimated' | 'checked'> {
  const terms: { name: string; unit: string; each: number; figure: keyof AdultFigures; times: number }[] = [
    { name: 'per_kg', unit: 'kcal per kg', each: row.perKg, figure: 'weight', times: 1 },
  ];
  if (row.perHeight !== undefined) {
    const { each, unit } = row.perHeight;
    const times = unit === 'm' ? 100 : 1;
    terms.push({ name: `per_${unit}`, unit: `kcal per ${unit}`, each, figure: 'height', times });
  }
  if (row.perYear !== undefined) {
    terms.push({ name: 'per_year', unit: 'kcal per year', each: row.perYear, figure: 'age', times: 1 });
  }
  const outer: Working = {
    formula: [
      'constant',
      ...terms.map(({ name, figure, times }) => `${name} * ${figure}${times === 1 ? '' : ` / ${times}`}`),
    ].join(' + '),
    inputs: [
      input('constant', row.constant, 'kcal', row.source, row.note),
      ...terms.flatMap(({ name, unit, each, figure }) => [
        input(name, each, unit, row.source, row.note),
        input(figure, figures[figure].value, figures[figure].unit, ''),
      ]),
    ],
  };
  const values = Object.fromEntries(terms.map(({ name, figure }) => [name, figures[figure].value]));
  const value = whenKnown(values, (all) =>
    terms.reduce((so, { name, each, times }) => so + (each * Number(all[name])) / times, row.constant),
  );
  return {
    quantity: value === null ? notKnown('kcal') : known(value, 'kcal'),
    working: terms.reduce((so, { figure }) => substitute(so, figure, figures[figure].working), outer),
    estimated: true,
    checked: row.checked,
  };
}
