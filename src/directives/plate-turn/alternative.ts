import type { Alternative } from '../../figures/index.js';
import type { ViewContext } from '../contract.js';
import { capital, fittingLabel } from '../words.js';
import type { TurnResult } from './compute.js';
import { FORM_TERMS } from './keys.js';
import type { Values } from './schema.js';
import { freshName, laneText, lostWords, movesAt, needWords, oldName, swapWords } from './words.js';

/** What changed, moved and is lost, in three layers. */
export function alternativeOf(values: Values, computed: TurnResult, context: ViewContext): Alternative {
  const { say, text, where, level } = context;
  const needs = needWords(values, context);
  const form = say(FORM_TERMS[computed.form]);
  const swaps = swapWords(values, computed, context);
  const moves = where === 'slide' ? [] : movesAt(computed, context);
  const dishes = level !== 'short' || where === 'slide';
  const lanes = moves.map((move) =>
    say('reading-lane', { nutrient: move.nutrient, text: laneText(move, context) }),
  );
  return {
    label: fittingLabel([
      ...(swaps === '' ? [] : [say('label', { form, needs, swaps })]),
      say('label-bare', { form }),
    ]),
    reading: [
      dishes ? say('reading-start', { form, needs }) : say('reading-start-short', { needs }),
      swaps === '' ? say('nothing-swapped') : say('swapped', { swaps }),
      ...(lanes.length > 0 ? [say('reading-lanes', { lanes: lanes.join('; ') })] : []),
      lostWords(computed, context),
    ].join(' '),
    table:
      moves.length > 0
        ? {
            caption: say('caption'),
            head: [say('head-nutrient'), capital(say('key-before')), capital(say('key-after'))],
            rows: moves.map(({ nutrient, before, after }) => [
              nutrient,
              text(before.number),
              text(after.number),
            ]),
          }
        : {
            caption: say('caption-blank'),
            head: [capital(say('key-before')), capital(say('key-after'))],
            rows:
              values.swaps.length > 0
                ? values.swaps.map((swap) => [oldName(swap, computed), freshName(swap, computed)])
                : computed.before.map(({ words }) => [words, words]),
          },
  };
}

/** The dish as it is; which foods go is left to the learner. */
export function blankAlternative(values: Values, computed: TurnResult, context: ViewContext): Alternative {
  const { say } = context;
  const form = say(FORM_TERMS[computed.form]);
  return {
    label: say('label-blank', { form }),
    reading: `${say('label-blank', { form })} ${say('reading-blank', { needs: needWords(values, context) })}`,
    table: {
      caption: say('caption-blank'),
      head: [say('head-food'), say('head-goes')],
      rows: computed.before.map(({ words }) => [words, say('to-fill')]),
    },
  };
}
