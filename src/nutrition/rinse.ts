import type { Basis } from './basis.js';
import type { Amount, Range } from './quantity.js';
import { ok, type Refusal, type Result, refuse } from './result.js';
import { RINSE_STUDIES, type RinseKind, type RinseStudy, type Treatment } from './rinse-studies.js';
import { FROM_LESSON, input, type Working } from './working.js';

/**
 * Up to this much sodium in a label serving, rinsing has little left to take away. The figure is the limit
 * of "low sodium" in 21 CFR 101.61(b)(4); to use it here is a house rule.
 */
export const LITTLE_TO_LOSE: Amount<'mg'> = { value: 140, unit: 'mg' };

/** What draining or rinsing is worked out from. */
export interface RinseQuestion {
  /** Sodium in one label serving. */
  readonly label: Amount<'mg'>;
  /** The serving that the label counts; `null` when the author did not say. */
  readonly basis: Pick<Basis, 'state'> | null;
  /** `null` for a food that nobody measured. */
  readonly kind: RinseKind | null;
  readonly treatment: Treatment;
  /** Id of the label or other source of the sodium. */
  readonly labelSource?: string;
  /** True when the can says "no salt added". */
  readonly noSaltAdded?: boolean;
}

/** One study's finding for this label. */
export interface StudyFinding {
  readonly study: RinseStudy;
  readonly after: Range<'mg'>;
}

/** What is left and what is gone, unrounded, over all studies of the kind. */
export interface RinseRange {
  /** Sodium left in the serving. Formula: `low = label * (1 - loss_high); high = label * (1 - loss_low)`. */
  readonly after: Range<'mg'>;
  readonly working: Working;
  /** Sodium that went away. */
  readonly gone: Range<'mg'>;
  readonly goneWorking: Working;
  /** The shares that went away, from 0 to 1. */
  readonly losses: { readonly low: number; readonly high: number };
  readonly findings: readonly StudyFinding[];
  /** True when two studies have no value in common. */
  readonly disagree: boolean;
  /** True for "no salt added" and for labels at or under `LITTLE_TO_LOSE`. */
  readonly littleToLose: boolean;
}

/**
 * The range of sodium left after draining, or draining and rinsing, on the studies' own basis: the label
 * value for solids and liquid. Refused when the label's sodium is not above zero, when the basis is not
 * known or already drained, and when no study measured this kind and treatment on that basis.
 */
export function rinseRange(question: RinseQuestion): Result<RinseRange> {
  const { label } = question;
  if (!(label.value > 0) || !Number.isFinite(label.value)) {
    return refuse('The sodium on the label has to be above zero.', 'Write the label value, such as 460 mg.');
  }
  const basis = wrongBasis(question.basis);
  if (basis !== null) return basis;
  const found = studiesOf(question.kind, question.treatment);
  if (!found.ok) return found;
  const studies = found.value;
  const low = lowest(studies);
  const high = highest(studies);
  const sources = (end: number) =>
    studies
      .filter((study) => study.lossLow === end || study.lossHigh === end)
      .map((study) => study.source)
      .join(', ');
  const inputs = [
    input('label', label.value, 'mg sodium per serving with liquid', question.labelSource ?? FROM_LESSON),
    input('loss_low', low, 'share of the label value', sources(low), question.treatment),
    input('loss_high', high, 'share of the label value', sources(high), question.treatment),
  ];
  return ok({
    after: left(label, low, high),
    working: { formula: 'low = label * (1 - loss_high); high = label * (1 - loss_low)', inputs },
    gone: { low: label.value * low, high: label.value * high, unit: 'mg' },
    goneWorking: { formula: 'low = label * loss_low; high = label * loss_high', inputs },
    losses: { low, high },
    findings: studies.map((study) => ({ study, after: left(label, study.lossLow, study.lossHigh) })),
    disagree: studies.some((a) => studies.some((b) => a.lossHigh < b.lossLow)),
    littleToLose: question.noSaltAdded === true || label.value <= LITTLE_TO_LOSE.value,
  });
}

/** What a lesson says about the loss: `at least a quarter`, `up to 40%`, `about 30%`. */
export interface RinseClaim {
  readonly says: 'at least' | 'up to' | 'about';
  /** From 0 to 1. */
  readonly share: number;
}

/**
 * Whether the published range bears out a claim, on the studies' basis only. "At least" holds when every
 * study found that much; "up to" and "about" hold when the share lies inside the range.
 * Refused for the reasons of `rinseRange`, and with the range when the claim goes beyond it.
 */
export function judgeRinseClaim(
  claim: RinseClaim,
  about: Pick<RinseQuestion, 'basis' | 'kind' | 'treatment'>,
): Result<{ readonly low: number; readonly high: number }> {
  const basis = wrongBasis(about.basis);
  if (basis !== null) return basis;
  const found = studiesOf(about.kind, about.treatment);
  if (!found.ok) return found;
  const low = lowest(found.value);
  const high = highest(found.value);
  const inside = claim.share >= low - NOISE && claim.share <= high + NOISE;
  const holds = claim.says === 'at least' ? claim.share > 0 && claim.share <= low + NOISE : inside;
  if (holds) return ok({ low, high });
  return refuse(
    `Studies found that ${percent(low)} to ${percent(high)} of the sodium goes away when ${about.kind} are ${about.treatment}; "${claim.says} ${percent(claim.share)}" is not what they found.`,
    'Say the range.',
  );
}

const NOISE = 1e-9;

function wrongBasis(basis: RinseQuestion['basis']): Refusal | null {
  if (basis?.state === 'with liquid') return null;
  if (basis?.state === 'drained' || basis?.state === 'drained and rinsed') {
    return refuse(
      'The label counts the food already drained, and the studies start from the food with its liquid.',
      'Take a label that counts the liquid, or leave the figure out.',
    );
  }
  return refuse(
    'It is not known whether the label counts the liquid.',
    'Write the basis of the label, such as 1/2 cup, with liquid.',
  );
}

function studiesOf(kind: RinseKind | null, treatment: Treatment): Result<readonly RinseStudy[]> {
  const all = RINSE_STUDIES.filter((study) => study.kind === kind && study.treatment === treatment);
  const [first] = all;
  if (kind === null || first === undefined) {
    const food = kind ?? 'this food';
    return refuse(
      `No study of ${food}, ${treatment}, is known, so nothing can be said about what goes away.`,
      'Studies: beans; green beans, corn and peas.',
    );
  }
  const usable = all.filter((study) => study.basis !== 'not stated');
  if (usable.length > 0) return ok(usable);
  return refuse(
    `The study of ${kind} (${first.source}) does not say what its loss is measured from, so a label value cannot be turned into a result.`,
    'Leave the figure out.',
  );
}

function lowest(studies: readonly RinseStudy[]): number {
  return Math.min(...studies.map((study) => study.lossLow));
}

function highest(studies: readonly RinseStudy[]): number {
  return Math.max(...studies.map((study) => study.lossHigh));
}

function left(label: Amount<'mg'>, lossLow: number, lossHigh: number): Range<'mg'> {
  return { low: label.value * (1 - lossHigh), high: label.value * (1 - lossLow), unit: 'mg' };
}

function percent(share: number): string {
  return `${Math.round(share * 100)}%`;
}
