import type { Block, Cell } from '../../document/index.js';
import type { NeedVerdict } from '../../nutrition/index.js';
import type { ViewContext } from '../contract.js';
import { capital } from '../words.js';
import { type BoardResult, type Candidate, lostIn } from './compute.js';
import type { Values } from './schema.js';
import { pairOf } from './words.js';

const cell = (text: string): Cell => ({ inlines: [{ text }] });

/** Which foods fit, among some that do not; without a need, what each swap loses. The key says why. */
export function exerciseOf(values: Values, computed: BoardResult, context: ViewContext): Block[] {
  return values.needs.length > 0 ? fitting(values, computed, context) : losing(computed, context);
}

/** A column for each need, so that a swap is matched to the needs that it fits; one for all where there are many. */
function fitting({ needs }: Values, { candidates }: BoardResult, { say, list, where }: ViewContext): Block[] {
  const key = where === 'key';
  const columns = needs.length > MOST_COLUMNS ? [needs] : needs.map((need) => [need]);
  const table: Block = {
    kind: 'table',
    caption: say('ask', { needs: list(needs) }),
    head: [
      cell(say('head-food')),
      ...columns.map((asked) => cell(capital(say('head-fits', { needs: list(asked) })))),
    ],
    rows: candidates.map(({ words, verdicts }) => [
      cell(capital(words)),
      ...columns.map((asked): Cell => {
        const own = verdicts.filter(({ need }) => asked.includes(need));
        const answer = key ? { answer: say(answerOf(own)) } : {};
        return {
          inlines: [],
          field: { label: say('field-fits', { food: words, needs: list(asked) }), ...answer },
        };
      }),
    ]),
    rowHeads: true,
  };
  if (!key) return [table];
  return [table, { kind: 'why', inlines: [{ text: [say('why'), ...reasonsOf(candidates)].join(' ') }] }];
}
const MOST_COLUMNS = 3;

function answerOf(verdicts: readonly NeedVerdict[]): 'fits' | 'fits-if' | 'fits-not' | 'ask-label' {
  const is = (verdict: NeedVerdict['verdict']) => verdicts.some((one) => one.verdict === verdict);
  if (is('breaks')) return 'fits-not';
  return is('not known') ? 'ask-label' : is('only if') ? 'fits-if' : 'fits';
}

/** Why a food breaks a need, and what one that fits hangs on. What is only not known is said in the table. */
function reasonsOf(candidates: readonly Candidate[]): string[] {
  const reasons = candidates.flatMap(({ verdicts }) =>
    verdicts.flatMap(({ findings }) =>
      findings.flatMap(({ kind, reason }) => (kind === 'not known' ? [] : [reason])),
    ),
  );
  return [...new Set(reasons.map(capital))];
}

function losing(computed: BoardResult, context: ViewContext): Block[] {
  const { say, list, where } = context;
  return [
    {
      kind: 'table',
      caption: say('ask-bare'),
      head: [cell(say('head-swap')), cell(say('head-lost'))],
      rows: computed.swaps.map((swap) => {
        const pair = pairOf(swap, computed, context);
        const lost = lostIn(swap);
        const answer = where === 'key' ? { answer: lost.length > 0 ? list(lost) : say('nothing') } : {};
        return [
          cell(capital(pair)),
          { inlines: [], field: { label: say('field-lost', { pair }), ...answer } },
        ];
      }),
      rowHeads: true,
    },
  ];
}
