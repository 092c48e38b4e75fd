import { type DailyPercent, type DailyValueName, percentOfDailyValue } from './daily-values.js';
import type { Contains } from './food.js';
import type { Published } from './published.js';
import type { MassUnit, Quantity } from './quantity.js';
import { ok, type Result, refuse } from './result.js';
import { unitRatio } from './units.js';

/** Words that a US label may use for what a food has plenty of. */
export type SourceWord = 'high' | 'good source' | 'none' | 'not known';

/** What a US label may say of a vitamin, a mineral, fiber or protein. */
export interface SourceClaim extends Published {
  readonly word: SourceWord;
  readonly share: DailyPercent;
  /** What has to stand beside the word. */
  readonly say: readonly string[];
}

/** Claims of plenty are not made on what the same label wants less of. */
const NOT_OF: ReadonlySet<string> = new Set([
  'fat',
  'saturated fat',
  'cholesterol',
  'carbohydrate',
  'sodium',
  'added sugars',
]);

/** The share of the Daily Value behind a claim of plenty. */
function shareOf(name: DailyValueName, quantity: Quantity<MassUnit>): Result<DailyPercent> {
  return NOT_OF.has(name)
    ? refuse(`A label makes no claim of plenty of ${name}.`, 'Name a vitamin, a mineral, fiber or protein.')
    : percentOfDailyValue(name, quantity);
}

/** 10 to 19 percent of the Daily Value is a good source, 20 percent or more is high; unrounded. */
export function sourceWord(percent: number | null, atLeast = false): SourceWord {
  if (percent === null) return 'not known';
  if (percent >= 20 - NOISE) return 'high';
  if (percent >= 10 - NOISE) return atLeast ? 'not known' : 'good source';
  return atLeast ? 'not known' : 'none';
}
/** The noise of binary fractions, in percent. */
const NOISE = 1e-9;

/**
 * What a label may say of the unrounded amount in one reference amount: high from 20 percent of the Daily Value for
 * adults, good source from 10. Fiber in a food that is not low in fat has to state the total fat beside the word;
 * when that is not known, it is asked for. Only for the US: the EU and the Codex count by reference values of
 * their own, which this core does not hold. Source: 21 CFR 101.54(b) to (d). Refuses nutrients without a Daily
 * Value and what labels want less of.
 */
export function sourceClaim(
  name: DailyValueName,
  perReferenceAmount: Quantity<MassUnit>,
  lowFat: Contains,
): Result<SourceClaim> {
  const share = shareOf(name, perReferenceAmount);
  if (!share.ok) return share;
  const word = sourceWord(share.value.percent, share.value.atLeast);
  const claims = word === 'high' || word === 'good source';
  const say: string[] = [];
  if (claims && name === 'fiber' && lowFat !== 'yes') say.push('state the total fat beside the claim');
  if (claims && name === 'protein') say.push('correct the protein for its quality first');
  return ok({ word, share: share.value, say, source: '21 CFR 101.54(b) to (d)', checked: 'copies' });
}

/**
 * "More", "added" or "enriched": at least 10 percent of the Daily Value more than the food that it names, per
 * reference amount, unrounded. Source: 21 CFR 101.54(e). Refuses as `sourceClaim` does.
 */
export function moreClaim(
  name: DailyValueName,
  food: Quantity<MassUnit>,
  reference: Quantity<MassUnit>,
): Result<{ readonly allowed: Contains; readonly morePercent: number | null } & Published> {
  const more = shareOf(name, food);
  if (!more.ok) return more;
  const { of, atLeast, percent } = more.value;
  const before = reference.value === null ? null : reference.value * unitRatio(reference.unit, of.unit);
  const inexact = atLeast || reference.atLeast;
  const morePercent =
    percent === null || before === null || inexact ? null : percent - (before / of.value) * 100;
  return ok({
    allowed: morePercent === null ? 'unknown' : morePercent >= 10 - NOISE ? 'yes' : 'no',
    morePercent,
    source: '21 CFR 101.54(e)',
    checked: 'copies',
  });
}
