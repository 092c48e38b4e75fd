import { type EnergyShare, input } from '../../nutrition/index.js';
import type { ComputedNumber } from '../contract.js';
import { FACTORS, type Grams } from './compute-grams.js';

/**
 * What the worksheet gives and its key works out: grams to a whole gram, so that the arithmetic on the key comes out
 * as printed. A share may differ by a point from the one that is drawn, which comes from unrounded grams.
 */
export function workedNumbers(id: string, parts: readonly EnergyShare[], grams: Grams): ComputedNumber[] {
  const given = parts.map((part) => ({ part, whole: Math.round(grams[part].quantity.value ?? 0) }));
  const inputs = given.map(({ part, whole }) => input(part, whole, 'g', 'house', 'to a whole gram'));
  const sum = parts.map((part) => `${part} * ${FACTORS[part]}`).join(' + ');
  const total = given.reduce((so, { part, whole }) => so + whole * FACTORS[part], 0);
  const number = (
    name: string,
    value: number,
    unit: string,
    formula: string,
    what: string,
    of: typeof inputs,
  ): ComputedNumber => ({
    id: `${id}.${name}`,
    value,
    unit,
    decimals: 0,
    formula,
    inputs: of,
    sources: [],
    what,
  });
  // Amounts this small hold nothing to work with.
  if (total === 0) return [];
  return [
    ...given.flatMap(({ part, whole }) => {
      const own = inputs.filter((one) => one.name === part);
      const kcal = whole * FACTORS[part];
      return [
        number(`${part}.given`, whole, 'g', part, `grams of ${part} that the worksheet gives`, own),
        number(
          `${part}.worked`,
          kcal,
          'kcal',
          `${part} * ${FACTORS[part]}`,
          `energy of the given ${part}`,
          own,
        ),
        number(
          `${part}.worked-share`,
          (kcal / total) * 100,
          '%',
          `${part} * ${FACTORS[part]} / (${sum}) * 100`,
          `share of the given ${part}`,
          inputs,
        ),
      ];
    }),
    number('worked', total, 'kcal', sum, 'energy of all given grams', inputs),
  ];
}
