import type { Alternative } from '../../figures/index.js';
import type { ViewContext } from '../contract.js';
import { capital, fittingLabel } from '../words.js';
import { type BoardResult, type BoardSwap, lostIn } from './compute.js';
import { changeText, lanesOf, namesOf, pairOf } from './words.js';

/** The swaps that are drawn, in three layers: pairs with their jobs, what changes, what is lost. */
export function alternativeOf(
  shown: readonly BoardSwap[],
  computed: BoardResult,
  context: ViewContext,
): Alternative {
  const { say, list, text } = context;
  const count = shown.length;
  const pairs = shown.map((swap) => {
    const pair = pairOf(swap, computed, context);
    return swap.row.job.length > 0 ? say('reading-job', { pair, job: list(swap.row.job) }) : pair;
  });
  const lanes = shown.flatMap((swap) => {
    const told = lanesOf(swap, context).map((change) =>
      say('reading-lane', { nutrient: change.nutrient, text: changeText(change, context) }),
    );
    return told.length > 0 ? [`${namesOf(swap, computed).fresh}: ${told.join(', ')}`] : [];
  });
  const lost = shown.flatMap((swap) =>
    lostIn(swap).length > 0
      ? [say('reading-lost-of', { nutrients: list(lostIn(swap)), fresh: namesOf(swap, computed).fresh })]
      : [],
  );
  const rows = shown.flatMap((swap) =>
    lanesOf(swap, context).map(({ nutrient, before, after }) => [
      capital(pairOf(swap, computed, context)),
      nutrient,
      text(before.number),
      text(after.number),
    ]),
  );
  return {
    label: fittingLabel([
      say('label', { pairs: shown.map((swap) => pairOf(swap, computed, context)).join('; ') }),
      say('label-bare', { count }),
    ]),
    reading: [
      say('reading', { pairs: pairs.join('; ') }),
      ...(lanes.length > 0 ? [say('reading-lanes', { lanes: lanes.join('; ') })] : []),
      lost.length > 0 ? say('reading-lost', { lost: lost.join('; ') }) : say('lost-none'),
    ].join(' '),
    table:
      rows.length > 0
        ? {
            caption: say('caption'),
            head: [say('head-swap'), say('head-nutrient'), say('head-old'), say('head-fresh')],
            rows,
          }
        : {
            caption: say('caption'),
            head: [say('head-old'), say('head-fresh')],
            rows: shown.map((swap) => {
              const { old, fresh } = namesOf(swap, computed);
              return [old, fresh];
            }),
          },
  };
}
