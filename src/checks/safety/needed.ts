import { type DirectiveFacts, type Passage, type Pulled, sentencesOf } from '../../cautions/index.js';
import type { Place, Report } from '../../diagnostics/index.js';
import { checkProblem } from '../codes.js';
import { NEED_RULES, type NeedRule } from './needed-cautions.js';
import { placeIn } from './place.js';

const RULES = NEED_RULES.map((rule) => ({
  rule,
  patterns: (rule.patterns ?? []).map(
    (p) => new RegExp(`(?<![\\p{L}\\p{N}])(?:${p})(?![\\p{L}\\p{N}])`, 'iu'),
  ),
}));

export interface NeededCautionsInput {
  readonly passages: readonly Passage[];
  readonly directives: readonly DirectiveFacts[];
  readonly topics: readonly { readonly name: string; readonly place?: Place }[];
  readonly pulled: readonly Pulled[];
  readonly language: string;
}

/**
 * S01 to S16: where a lesson plainly holds the content, its cautions have to be pulled. This looks apart from the
 * register's own triggers, so that a lost trigger or a caution taken off in haste cannot pass in silence.
 */
export function checkNeededCautions(input: NeededCautionsInput, report: Report): void {
  const pulled = new Set(input.pulled.map(({ caution }) => caution.id));
  for (const { rule, patterns } of RULES) {
    const lost = rule.needs.filter((id) => !pulled.has(id));
    if (lost.length === 0) continue;
    const sign = byTopic(rule, input) ?? byFood(rule, input) ?? byWords(patterns, input);
    if (!sign) continue;
    const names = lost.map((id) => `\`${id}\``).join(' and ');
    report.add(
      checkProblem(rule.code, `${sign.says}: the lesson holds ${rule.what} and not the caution ${names}.`, {
        ...(sign.place ? { place: sign.place } : {}),
        hint: `Call it with ::caution{id=${lost[0]}}, take its entry out of \`unpull\`, or take the content out.`,
        actual: sign.says,
        expected: lost,
      }),
    );
  }
}

interface Sign {
  readonly says: string;
  readonly place?: Place;
}

function byTopic(rule: NeedRule, { topics }: NeededCautionsInput): Sign | undefined {
  const topic = topics.find(({ name }) => rule.topics?.includes(name));
  return topic && { says: `Topic ${topic.name}`, ...(topic.place ? { place: topic.place } : {}) };
}

function byFood(rule: NeedRule, { directives }: NeededCautionsInput): Sign | undefined {
  for (const directive of directives)
    for (const { food, place = directive.place } of directive.foods)
      if (food.flags.some((flag) => rule.flags?.includes(flag)))
        return { says: `${food.name} in ${directive.name}`, ...(place ? { place } : {}) };
  return undefined;
}

function byWords(patterns: readonly RegExp[], { passages, language }: NeededCautionsInput): Sign | undefined {
  if (language !== 'en') return undefined;
  for (const passage of passages)
    for (const sentence of sentencesOf(passage.text))
      for (const pattern of patterns) {
        const m = pattern.exec(sentence.text);
        if (m)
          return { says: `"${m[0]}" in ${passage.where}`, ...placeIn(passage, sentence.at + m.index, m[0]) };
      }
  return undefined;
}
