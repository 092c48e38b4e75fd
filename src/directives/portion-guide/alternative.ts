import type { Alternative } from '../../figures/index.js';
import type { ViewContext } from '../contract.js';
import { capital, fittingLabel } from '../words.js';
import type { Guide, PouredRow } from './compute.js';

const HOLDS = { cup: 'cup', tbsp: 'tablespoon', tsp: 'teaspoon' } as const;
export const UNITS = ['cup', 'tbsp', 'tsp'] as const;

/** The id of what a measure holds. */
export function holdsId(id: string, unit: (typeof UNITS)[number], { suffix }: Guide): string {
  return `${id}.${HOLDS[unit]}${suffix}`;
}

/** The measures that the guide uses, largest first. */
export function unitsIn({ rows }: Guide): readonly (typeof UNITS)[number][] {
  return UNITS.filter((unit) => rows.some((row) => row.unit === unit));
}

/** `cup 240 mL and tablespoon 15 mL`. */
export function holdsWords(id: string, guide: Guide, { say, text, list }: ViewContext): string {
  return list(unitsIn(guide).map((unit) => `${say(unit).toLowerCase()} ${text(holdsId(id, unit, guide))}`));
}

/** The figure in words, in three layers; a blank one holds no weight. */
export function alternativeOf(
  id: string,
  guide: Guide,
  amountsOf: (row: PouredRow) => readonly string[],
  context: ViewContext,
): Alternative {
  const { say, list, text, where } = context;
  const blank = where === 'worksheet';
  const rows = guide.rows.map((row) =>
    say('reading-row', { food: row.words, amounts: amountsOf(row).join(', ') }),
  );
  // A level that shows no weight has no column for it; a blank leaves it to the learner.
  const weighed = blank || guide.rows.some((row) => amountsOf(row).length > 1);
  return {
    label: fittingLabel([
      say('label', { foods: list(guide.rows.map((row) => row.words)) }),
      say('label-bare'),
    ]),
    reading: [
      `${capital(rows.join('; '))}.`,
      say('reading-holds', { measures: holdsWords(id, guide, context) }),
      say('reading-line', { line: text(`${id}.line`) }),
    ].join(' '),
    table: {
      caption: say('caption'),
      head: [say('food'), say('usual'), ...(weighed ? [say('weight')] : [])],
      rows: guide.rows.map((row) => {
        const [first = '', ...rest] = amountsOf(row);
        const weight = blank ? say('to-fill') : rest.join(', ');
        return [capital(row.words), first, ...(weighed ? [weight] : [])];
      }),
    },
  };
}
