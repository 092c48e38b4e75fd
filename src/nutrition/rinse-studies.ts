/** Kinds of canned or packed food that somebody has measured before and after draining or rinsing. */
export type RinseKind = 'beans' | 'vegetables' | 'tuna' | 'cottage cheese';
export type Treatment = 'drained' | 'drained and rinsed';

/** One published finding: which share of the sodium was gone. */
export interface RinseStudy {
  /** Id of a source in assets/sources.yaml. */
  readonly source: string;
  readonly kind: RinseKind;
  readonly treatment: Treatment;
  /** Shares from 0 to 1; both the same when one figure was published. */
  readonly lossLow: number;
  readonly lossHigh: number;
  /** What the loss is measured from. Where it is not stated, no label value can be turned into a result. */
  readonly basis: 'label value for solids and liquid' | 'not stated';
  /** What was done, in a few words. */
  readonly method: string;
}

const WITH_LIQUID = 'label value for solids and liquid';

/**
 * The findings. They disagree, so results are ranges over all of a kind.
 * - `duyff-2011`: Duyff RL, Mount JR, Jones JB. J Culin Sci Technol 2011;9:106-112. Five kinds of canned beans,
 *   sodium per label serving. Two minutes of draining 36%; with ten seconds of rinsing 41%.
 * - `kitchen-tests-beans`: laboratory tests of home methods by a bean canner and by a cooking magazine, known
 *   from summaries. Draining 8%; rinsing 30 seconds 20%, 60 seconds 27%; four beans 20.7% to 26.5%.
 * - `haytowitz-2011`: Haytowitz DB, USDA. FASEB J 2011;25(S1):609.3, abstract. mg per 100 g of total can
 *   contents, drained, rinsed: green beans 231, 231, 214; peas 261, 244, 231; corn 205, 185, 162. That is
 *   a loss of 0 to 10% drained and 7 to 21% rinsed.
 * - `usda-rinse-summary-2013`: printed summaries of the same USDA work give 9 to 23% drained and rinsed.
 * - `vermeulen-1983`: Vermeulen RT, Sedor FA, Kimm SYS. J Am Diet Assoc 1983;82:394-396, abstract. Three minutes
 *   of rinsing: tuna 80%, cottage cheese 63%; the abstract does not say what the loss is measured from.
 */
export const RINSE_STUDIES: readonly RinseStudy[] = [
  study('duyff-2011', 'beans', 'drained', 0.36, 0.36, WITH_LIQUID, 'drained for 2 minutes'),
  study('kitchen-tests-beans', 'beans', 'drained', 0.08, 0.08, WITH_LIQUID, 'drained'),
  study(
    'duyff-2011',
    'beans',
    'drained and rinsed',
    0.41,
    0.41,
    WITH_LIQUID,
    'drained, rinsed for 10 seconds, drained',
  ),
  study(
    'kitchen-tests-beans',
    'beans',
    'drained and rinsed',
    0.2,
    0.27,
    WITH_LIQUID,
    'drained, rinsed for 30 to 60 seconds',
  ),
  study('haytowitz-2011', 'vegetables', 'drained', 0, 0.1, WITH_LIQUID, 'drained for 2 minutes'),
  study(
    'haytowitz-2011',
    'vegetables',
    'drained and rinsed',
    0.07,
    0.21,
    WITH_LIQUID,
    'drained, rinsed with 3.5 liters of water, drained',
  ),
  study(
    'usda-rinse-summary-2013',
    'vegetables',
    'drained and rinsed',
    0.09,
    0.23,
    WITH_LIQUID,
    'drained and rinsed',
  ),
  study('vermeulen-1983', 'tuna', 'drained and rinsed', 0.8, 0.8, 'not stated', 'rinsed for 3 minutes'),
  study(
    'vermeulen-1983',
    'cottage cheese',
    'drained and rinsed',
    0.63,
    0.63,
    'not stated',
    'rinsed for 3 minutes',
  ),
];

/** A food whose liquid is a sauce cannot be drained of it. */
const IN_SAUCE = /\b(?:baked|refried|chili|sauce|cream|creamed|soup|dip)\b/;
const BEANS =
  /^(?:(?:large|small|dark|light|mixed) )*(?:(?:pinto|black|black turtle|kidney|red kidney|white kidney|navy|great northern|cannellini|white|pink|red|cranberry|roman|lima|butter|fava|broad|garbanzo) )?beans?$/;
const DRY_PEAS = /^(?:chickpeas?|garbanzos?|cowpeas?|(?:black[- ]?eyed|crowder) peas?)$/;
const VEGETABLES =
  /^(?:(?:cut|whole|french-style|french style) )*(?:(?:green|snap|string|wax) beans?|(?:(?:sweet|green|garden|young|early|small) )*peas?|(?:(?:sweet|yellow|white|whole kernel) )*corn)$/;

/**
 * The studied kind that a food belongs to, by its plain name (`pinto beans, canned`), or `null` when nobody
 * measured it. Beans are the kinds that are also sold dry; green beans, corn and peas are the vegetables. Foods
 * in a sauce (baked, refried, creamed) are none, and neither are mixtures and other beans such as soybeans.
 */
export function rinseKindOf(name: string): RinseKind | null {
  const whole = name.toLowerCase().replace(/\s+/g, ' ').trim();
  if (IN_SAUCE.test(whole)) return null;
  const head = whole
    .replace(/,.*$/, '')
    .replace(/\bcanned\b/, '')
    .replace(/\s+/g, ' ')
    .trim();
  if (/^(?:[a-z0-9%-]+ )*cottage cheese$/.test(head)) return 'cottage cheese';
  if (/^(?:[a-z-]+ )*tuna$/.test(head)) return 'tuna';
  if (VEGETABLES.test(head)) return 'vegetables';
  return BEANS.test(head) || DRY_PEAS.test(head) ? 'beans' : null;
}

function study(
  source: string,
  kind: RinseKind,
  treatment: Treatment,
  lossLow: number,
  lossHigh: number,
  basis: RinseStudy['basis'],
  method: string,
): RinseStudy {
  return { source, kind, treatment, lossLow, lossHigh, basis, method };
}
