import { type Passage, type Register, roomIn, sentencesOf } from '../../cautions/index.js';
import type { Report } from '../../diagnostics/index.js';
import { checkProblem } from '../codes.js';
import { placeIn } from './place.js';
import { WORD_RULES } from './refused-words.js';

const DENIED =
  /\b(?:no|not|never|none|nobody|nothing|without|avoid|stop|don['’]t|do not|can['’]t|cannot|isn['’]t|aren['’]t|won['’]t|myth|wrong|false|ask (?:your|first)|before you)\b/i;

const RULES = WORD_RULES.map(({ patterns, unless, ...rule }) => ({
  ...rule,
  unless: unless === undefined ? undefined : new RegExp(`\\b(?:${unless})\\b`, 'i'),
  patterns: patterns.map((p) => new RegExp(`(?<![\\p{L}\\p{N}])(?:${p})`, 'iu')),
}));

export interface RefusedWordsInput {
  /** Running text, notes, options, alternatives of the lesson. */
  readonly passages: readonly Passage[];
  /** Language of the passages; the words are looked for in English only. */
  readonly language: string;
  /** For whom the lesson is, in its own words. */
  readonly audience: string;
  readonly register: Register;
}

/**
 * Sentences that do what the register refuses whoever writes them: change a medicine, promise to heal, plan a fast,
 * forecast weight on a line, set a personal number, name a dose, type a temperature, teach a method that poisons. A
 * sentence that says no to it is left alone, where a no is what a lesson may say.
 */
export function checkRefusedWords(input: RefusedWordsInput, report: Report): void {
  const { passages, language, register } = input;
  if (language !== 'en') return;
  for (const passage of passages)
    for (const sentence of sentencesOf(passage.text))
      for (const rule of RULES) {
        if (rule.rooms && roomIn(input.audience, rule.rooms) === undefined) continue;
        if (rule.unless?.test(sentence.text)) continue;
        const m = rule.patterns.map((p) => p.exec(sentence.text)).find((found) => found !== null);
        if (!m || (rule.unlessDenied && denies(sentence.text, m))) continue;
        const refusal = register.refusals.find(({ id }) => id === rule.refusal);
        report.add(
          checkProblem(rule.code, `"${m[0]}" in ${passage.where} ${rule.what}. (${refusal?.id})`, {
            ...placeIn(passage, sentence.at + m.index, m[0]),
            hint: rule.instead,
            actual: sentence.text,
          }),
        );
      }
}

/** A no outside the hit itself: "stop your insulin" is no warning, "never stop your insulin" is one. */
function denies(sentence: string, { index, 0: words }: RegExpExecArray): boolean {
  return (
    DENIED.test(sentence.slice(0, index)) ||
    /^[^.?!]*\b(?:is|are) (?:a myth|wrong|not|never|unsafe|dangerous)\b/i.test(
      sentence.slice(index + words.length),
    )
  );
}
