import { type Passage, sentencesOf } from '../cautions/index.js';
import type { Place, Report } from '../diagnostics/index.js';
import { checkProblem } from './codes.js';

const BODY =
  '(?:body|bodies|waist|waistline|belly|bellies|hips?|thighs?|weight|figure|jeans|clothes|dress|he|she|person|people|woman|women|man|men)';
const CALORIES = '(?:k?cals?|calories?|kilocalories?)';
const ASKS =
  '(?:raise (?:a|your) hand|put up (?:a|your) hand|hands? up|show of hands|who here|who of you|how many of you|which of you|stand up)';
const WEIGHT =
  '(?:your weight|you weigh|weighs? (?:too|more than|less than)|overweight|obese|(?:lose|lost|gained) weight|on a diet|dieting|body size)';
const PRIVATE =
  '(?:diabetes|pregnant|sick|ill|illness|high blood pressure|you earn|your income|food stamps|(?:get|gets|use|uses|receive|on) (?:food )?benefits|immigra[a-z]+|papers|legal status)';

interface Rule {
  readonly what: string;
  readonly instead: string;
  /** English; each is looked for in one sentence, whatever the case. */
  readonly patterns: readonly string[];
}

const RULES: readonly Rule[] = [
  {
    what: 'compares bodies',
    instead: 'Show food, kitchens or shoes, or a gain that is not weight.',
    patterns: [
      `before[- ](?:and|or)[- ]after\\b[^.?!]{0,160}\\b${BODY}`,
      `${BODY}\\b[^.?!]{0,160}\\bbefore[- ](?:and|or)[- ]after`,
      'silhouettes?',
    ],
  },
  {
    what: 'trades food for exercise',
    instead: 'Leave calories out of talk about moving; say how it makes people feel.',
    patterns: [
      `${CALORIES} burn(?:ed|t|s)?`,
      `burn(?:s|ed|ing|t)? (?:off )?(?:(?:about|up to|the|those|these|some|more|extra|many|\\d[\\d,]*) )*${CALORIES}`,
      'burn(?:s|ed|ing|t)? (?:off )?(?:the |your |belly |body )*fat',
      'burn(?:s|ed|ing)? (?:it|this|that|them) off',
      '(?:walk|work|run|jog|sweat|dance|exercise)(?:s|ed|ing)? (?:this|that|it|them)(?: [a-z]+){0,2} off',
      '(?:walk|work|run|jog|sweat|exercise)(?:s|ed|ing)? off (?:the|that|this|your|a|an)',
      'earn(?:s|ed|ing)? (?:your|that|this|a) (?:dessert|treat|food|meal|snack|cookie|cake)',
      'minutes? of [a-z]+ (?:to|for) (?:burn|make up|work off)',
    ],
  },
  {
    what: 'is about weighing people',
    instead: 'Nobody is weighed. Kitchen scales are fine.',
    patterns: [
      '(?:bathroom|body|weighing) scales?',
      '(?:step|stand)(?:s|ped|ping|ing)? (?:on|onto|off|up on) (?:the|a|your) scales?',
      'weigh(?:s|ed|ing)? (?:yourself|yourselves|themselves|himself|herself|each other|everyone|people|patients|the group)',
      'weigh(?:s|ed|ing)? in (?:every|each|once|at|on|weekly|daily|today)',
      'weigh-ins?',
    ],
  },
  {
    what: 'measures bodies',
    instead: 'Nobody is measured.',
    patterns: [
      'tape measures?\\b[^.?!]{0,160}\\b(?:body|waist|belly|hips?|thighs?|arms?|yourself|each other)',
      '(?:waist|belly|hips?|body)\\b[^.?!]{0,160}\\btape measures?',
      "measur(?:e|es|ed|ing) (?:your|her|his|their|each other[’']s) (?:waist|belly|hips?|body|bodies|thighs?)",
      'waist (?:size|circumference|measurements?)',
    ],
  },
  {
    what: 'counts clothes sizes',
    instead: 'Name a gain that is not weight, such as sleep or energy.',
    patterns: [
      '(?:drop|dropped|lose|lost|down|go down) (?:a|one|two|three|\\d) (?:dress |clothes |pant |jeans )?sizes?',
      'dress sizes?',
      '(?:fit|fits|fitting|get|squeeze) (?:back )?into (?:your|her|his|my|those|that|the|old) (?:[a-z]+ )?(?:jeans|clothes|dress|pants|suit|skirt)',
    ],
  },
  {
    what: 'asks about weight in public',
    instead: 'Ask about a habit: "Do you rinse canned beans?"',
    patterns: [
      'how much do you weigh',
      'what (?:do you weigh|(?:is|was) your (?:weight|bmi))',
      'your (?:goal|current|starting|start) weight',
      'have you (?:lost|gained) weight',
      'how much (?:weight )?have you (?:lost|gained)',
      "guess (?:her|his|their|the) (?:person[’']s )?weight",
      `${ASKS}\\b[^.?!]{0,160}\\b${WEIGHT}`,
    ],
  },
  {
    what: 'asks in public about what is private',
    instead: 'Ask about a habit that nobody minds to show.',
    patterns: [`${ASKS}\\b[^.?!]{0,160}\\b${PRIVATE}`],
  },
];

const COMPILED = RULES.map((rule) => ({
  ...rule,
  patterns: rule.patterns.map((p) => new RegExp(`\\b(?:${p})\\b`, 'i')),
}));

export interface BodiesInput {
  /** Running text, notes, options, alternatives and file names of the lesson. */
  readonly passages: readonly Passage[];
  /** Language of the passages; the words are looked for in English only. */
  readonly language: string;
}

/**
 * S18: sentences that compare bodies, trade food for exercise, weigh or measure people, or ask about
 * weight or private matters in public, in text, notes, options, alternatives and file names. What a
 * kitchen does stays free: scales for food, before and after rinsing, beans that burned.
 */
export function checkBodies({ passages, language }: BodiesInput, report: Report): void {
  if (language !== 'en') return;
  for (const passage of passages) {
    const text = passage.where === 'file name' ? passage.text.replace(/[-_./]+/g, ' ') : passage.text;
    for (const sentence of sentencesOf(text))
      for (const { patterns, what, instead } of COMPILED) {
        const m = patterns.map((p) => p.exec(sentence.text)).find((found) => found !== null);
        if (!m) continue;
        report.add(
          checkProblem('S18', `"${m[0]}" in ${passage.where} ${what}.`, {
            ...(passage.place
              ? { place: spot(passage.place, passage.text, sentence.at + m.index, m[0]) }
              : {}),
            hint: instead,
            actual: sentence.text,
          }),
        );
      }
  }
}

/** The place of a hit when the passage is one stretch of a line, else the passage's own. */
function spot(place: Place, text: string, at: number, words: string): Place {
  if (place.endLine !== place.line || place.endColumn !== place.column + text.length) return place;
  const column = place.column + at;
  return {
    file: place.file,
    line: place.line,
    column,
    endLine: place.line,
    endColumn: column + words.length,
  };
}
