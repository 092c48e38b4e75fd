import { type Passage, sentencesOf } from '../cautions/index.js';
import type { Report } from '../diagnostics/index.js';
import { checkProblem } from './codes.js';
import { placeIn } from './safety/place.js';

/** A rule that binds from a day on. Days are ISO; `before` is the day that was announced first. */
export interface RuleDay {
  readonly rule: string;
  readonly whom: string;
  readonly binds: string;
  readonly before?: string;
  readonly standard?: string;
  readonly source: string;
  readonly words: RegExp;
}

const SECTION_504 = { standard: 'WCAG 2.1, level AA', source: '91 FR 25496 (2026-05-11); 45 CFR 84.84' };
const WEB_RULE = /\bsection 504\b/i;

export const RULE_DAYS: readonly RuleDay[] = [
  {
    rule: 'the web rule of Section 504',
    whom: '15 or more employees',
    binds: '2027-05-11',
    before: '2026-05-11',
    words: WEB_RULE,
    ...SECTION_504,
  },
  {
    rule: 'the web rule of Section 504',
    whom: 'fewer than 15 employees',
    binds: '2028-05-10',
    before: '2027-05-10',
    words: WEB_RULE,
    ...SECTION_504,
  },
  {
    rule: 'the new rule for the word "healthy"',
    whom: 'labels',
    binds: '2028-02-25',
    source: '89 FR 106064 (2024-12-27); 21 CFR 101.65(d)',
    words:
      /\bhealthy\b[^.?!]{0,60}\b(?:rule|claim|label|FDA)|(?:rule|claim|label|FDA)\b[^.?!]{0,60}\bhealthy\b/i,
  },
];

/** Words that say a rule is in force. */
const SETTLED =
  /\b(?:must now|now (?:must|requires?|means|has to|have to)|is (?:already|now) (?:required|in force|law)|already requires?)\b/i;

/** The rules that bind an employer of so many people from which day on. */
export function webRuleFor(employees: number): RuleDay | undefined {
  const [large, small] = RULE_DAYS;
  return employees >= 15 ? large : small;
}

export interface RuleDaysInput {
  readonly passages: readonly Passage[];
  readonly language: string;
  /** The day of the build. */
  readonly on: string;
}

/** E09: a sentence says that a rule is in force which binds only from a later day. */
export function checkRuleDays({ passages, language, on }: RuleDaysInput, report: Report): void {
  if (language !== 'en') return;
  for (const passage of passages)
    for (const sentence of sentencesOf(passage.text)) {
      const settled = SETTLED.exec(sentence.text);
      const later = RULE_DAYS.filter(({ words, binds }) => binds > on && words.test(sentence.text)).at(-1);
      if (!settled || !later) continue;
      report.add(
        checkProblem(
          'E09',
          `"${settled[0]}" in ${passage.where}: ${later.rule} binds from ${later.binds} (${later.whom}).`,
          {
            ...placeIn(passage, sentence.at + settled.index, settled[0]),
            hint: `Say the day, or what holds until then. Source: ${later.source}.`,
            actual: sentence.text,
          },
        ),
      );
    }
}
