import { type Passage, sentencesOf } from '../cautions/index.js';
import type { Place, Report } from '../diagnostics/index.js';
import type { Numbers, ShownNumber } from '../document/index.js';
import { judgeRinseClaim, type RinseClaim, type RinseKind, type Treatment } from '../nutrition/index.js';
import { checkProblem } from './codes.js';

export interface RinseClaimsInput {
  /** Running text, notes, options and alternatives of the lesson. */
  readonly passages: readonly Passage[];
  readonly numbers: Numbers;
}

/** Shares in words, as parts of one. */
const SHARES: readonly (readonly [RegExp, number])[] = [
  [
    /\b(?:almost|nearly) (?:all|everything)\b|\ball (?:of )?(?:the|its|that|their) (?:salt|sodium)\b|\bevery bit of\b/i,
    1,
  ],
  [/\bmost (?:of )?(?:the|its|that) (?:salt|sodium)\b/i, 0.75],
  [/\bthree[- ]quarters?\b|¾/i, 0.75],
  [/\btwo[- ]thirds?\b|⅔/i, 2 / 3],
  [/\bhalf(?! (?:a )?(?:cup|can|hour|minute|serving))\b|\bhalves\b/i, 0.5],
  [/\b(?:a|one)[- ]third\b|⅓/i, 1 / 3],
  [/\b(?:a|one)[- ]quarter(?! cup)\b/i, 0.25],
  [/\b(?:a|one)[- ]fifth\b/i, 0.2],
  [/\b(?:a|one)[- ]tenth\b/i, 0.1],
];
const PERCENT = /(\d+(?:\.\d+)?)\s*(?:%|percent|per cent)/gi;
const RINSES = /\b(?:rins|drain|wash)(?:e|es|ed|ing|s)?\b/i;
const GOES = /\b(?:tak|remov|cut|wash|rins|get|drop|los|fall|leav|go|pour|lower|reduc|drain)\w*\b/i;
const SALT = /\b(?:salt|sodium)\b/i;

/**
 * N18: a sentence that says which share of the salt goes when food is rinsed or drained is held against
 * the published range on the studies' basis, the label value with the liquid; a share in percent must
 * name that basis in its passage, and a denied share claims nothing. English only. Numbers of a rinse figure must rest on a loss that some
 * study published and on a label that counts the liquid.
 */
export function checkRinseClaims({ passages, numbers }: RinseClaimsInput, report: Report): void {
  for (const passage of passages)
    for (const { text } of sentencesOf(passage.text)) {
      if (!RINSES.test(text) || !SALT.test(text) || !GOES.test(text)) continue;
      for (const claim of claimsIn(text)) judge(claim, text, passage, report);
    }
  for (const number of numbers.all)
    if (number.inputs.some((i) => i.name === 'loss_low')) rests(number, report);
}

interface Found extends RinseClaim {
  readonly words: string;
  readonly percent: boolean;
}

function claimsIn(sentence: string): Found[] {
  const percents = [...sentence.matchAll(PERCENT)].map((m) => ({
    words: m[0],
    share: Number(m[1]) / 100,
    percent: true,
    says: saysAround(sentence, m.index, m.index + m[0].length),
  }));
  const words = SHARES.flatMap(([pattern, share]) => {
    const m = pattern.exec(sentence);
    return m
      ? [{ words: m[0], share, percent: false, says: saysAround(sentence, m.index, m.index + m[0].length) }]
      : [];
  });
  return [...percents, ...words.slice(0, 1)].filter((claim) => !denied(sentence, claim.words));
}

/** "Rinsing does not take all the salt" claims nothing about how much goes. */
function denied(sentence: string, words: string): boolean {
  return /\b(?:not|never|cannot)\b|n['’]t\b/i.test(sentence.slice(0, sentence.indexOf(words)));
}

function saysAround(sentence: string, from: number, to: number): RinseClaim['says'] {
  const before = sentence.slice(Math.max(0, from - 14), from).toLowerCase();
  const after = sentence.slice(to, to + 10).toLowerCase();
  if (/(?:at least|more than|over)\s*(?:about )?$/.test(before) || /^\s*or more/.test(after))
    return 'at least';
  if (/(?:up to|as much as|at most|less than)\s*$/.test(before) || /^\s*or less/.test(after)) return 'up to';
  return 'about';
}

function judge(claim: Found, sentence: string, passage: Passage, report: Report): void {
  const about = {
    basis: basisOf(claim, passage.text),
    kind: kindOf(passage.text),
    treatment: treatmentOf(sentence),
  };
  const judged = judgeRinseClaim(claim, about);
  if (judged.ok) return;
  report.add(
    checkProblem('N18', `"${claim.words}" is said to go away. ${judged.reason}`, {
      ...placed(passage.place),
      hint: judged.hint ?? 'Say the range.',
      actual: sentence,
    }),
  );
}

const placed = (place: Place | undefined) => (place ? { place } : {});

/** A share in plain words is read on the label's basis; a percentage has to name it. */
function basisOf(claim: Found, text: string) {
  if (/\b(?:already drained|drained label|label of the drained)\b/i.test(text))
    return { state: 'drained' as const };
  const named = /\b(?:label|with (?:the|its|their) liquid|in the can|can says|solids and liquid)\b/i.test(
    text,
  );
  return named || !claim.percent ? { state: 'with liquid' as const } : null;
}

function kindOf(text: string): RinseKind {
  if (/\btuna\b/i.test(text)) return 'tuna';
  if (/\bcottage cheese\b/i.test(text)) return 'cottage cheese';
  const pods = /\b(?:green|string|wax) beans\b/gi;
  const beans = /\b(?:beans?|chickpeas?|lentils?)\b/i.test(text.replace(pods, ''));
  const vegetables = /\b(?:vegetables?|corn|green peas|peas)\b/i.test(text) || pods.test(text);
  return vegetables && !beans ? 'vegetables' : 'beans';
}

function treatmentOf(sentence: string): Treatment {
  return /\b(?:rins|wash)/i.test(sentence) ? 'drained and rinsed' : 'drained';
}

/** A number that rests on a loss says which study found it, and that the label counts the liquid. */
function rests(number: ShownNumber, report: Report): void {
  const tell = (message: string, hint: string) =>
    report.add(checkProblem('N18', `\`${number.id}\` (${number.what}) ${message}`, { hint }));
  const label = number.inputs.find((i) => i.name === 'label');
  // A share has no label to start from; an amount has.
  if (number.unit !== '%' && (!label || !/with liquid/.test(label.unit)))
    tell(
      'starts from a label that does not count the liquid, or from none.',
      'Take a label with the liquid.',
    );
  const losses = number.inputs.filter((i) => i.name === 'loss_low' || i.name === 'loss_high');
  for (const loss of losses)
    if (loss.value === null || loss.value < 0 || loss.value >= 1 || loss.source === '')
      tell(`rests on ${loss.name}, which no study published.`, 'Use the loss of a published study.');
}
