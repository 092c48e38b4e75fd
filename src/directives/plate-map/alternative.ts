import type { Alternative } from '../../figures/index.js';
import type { DishKindName } from '../../nutrition/index.js';
import type { ViewContext } from '../contract.js';
import { FILL } from '../dish-looks.js';
import { capital, fittingLabel } from '../words.js';
import type { MapResult } from './compute.js';
import { EXTENT_TERMS, FORM_TERMS, KIND_TERMS, LETTER_TERMS } from './keys.js';
import { BESIDE, type Values } from './schema.js';
import { besideLines, besideNames, counts, foodsOf, kindsIn, nameOf } from './words.js';

/** The dish in words, in three layers. At a step of a slide only the kinds that are there are told. */
export function alternativeOf(
  values: Values,
  computed: MapResult,
  context: ViewContext,
  there: readonly DishKindName[],
): Alternative {
  const { say, list, text } = context;
  const form = say(FORM_TERMS[values.form]);
  const numbers = counts(context);
  const kinds = computed.kinds.filter(({ kind, parts }) => parts > 0 && there.includes(kind));
  const all = there.length === kindsIn(computed).length;
  const told = kinds.map(({ kind, number, extent }) =>
    numbers
      ? say('reading-kind', { kind: capital(say(KIND_TERMS[kind])), parts: text(number) })
      : say('reading-kind-extent', {
          kind: capital(say(KIND_TERMS[kind])),
          extent: say(EXTENT_TERMS[extent]),
        }),
  );
  const parts = computed.parts.filter(({ kind, parts: own }) => own > 0 && there.includes(kind));
  const foods = parts.map((part) =>
    say('reading-food', { food: nameOf(part.index, values), parts: text(part.number) }),
  );
  const goals = FILL.map((kind) =>
    say('reading-food', {
      food: say(KIND_TERMS[kind]),
      parts: text(`${values.id}.${kind.replaceAll(' ', '-')}.goal`),
    }),
  );
  // One sentence, since a reading has five at most.
  const beside =
    context.where === 'slide'
      ? besideOn(values, context)
      : besideLines(values, context).join(' ').replaceAll('. ', '; ');
  return {
    label: labelOf(values, computed, context),
    reading: [
      say('reading-start', { form }),
      `${told.join('; ')}.`,
      ...(numbers ? [say('reading-foods', { foods: foods.join('; ') })] : []),
      ...(all
        ? [...(numbers && values.goal ? [say('reading-goal', { goals: goals.join('; ') })] : []), beside]
        : [say('reading-waiting')]),
    ]
      .filter(Boolean)
      .join(' '),
    table: {
      caption: say('caption', { form }),
      head: [say('head-food'), say('head-kind'), numbers ? say('head-parts') : say('head-extent', { form })],
      rows: numbers
        ? parts.map((part) => [
            nameOf(part.index, values),
            say(KIND_TERMS[part.kind]),
            say('cell-parts', { parts: text(part.number) }),
          ])
        : kinds.map(({ kind, extent }) => [
            list(foodsOf(kind, values, computed, context, 'none')),
            say(KIND_TERMS[kind]),
            say(EXTENT_TERMS[extent]),
          ]),
    },
  };
}

/** Empty counters, the letters to write, and the foods that are given. */
export function blankAlternative(values: Values, computed: MapResult, context: ViewContext): Alternative {
  const { say } = context;
  const form = say(FORM_TERMS[values.form]);
  return {
    label: say('label-blank', { form }),
    reading: `${say('label-blank', { form })} ${say('reading-blank', { letters: lettersIn(context) })}`,
    table: {
      caption: say('caption', { form }),
      head: [say('head-food'), say('head-kind'), say('head-parts')],
      rows: values.foods
        .filter((_, index) => computed.parts.some((part) => part.index === index))
        .map((food) => [food.words, say('to-fill'), say('to-fill')]),
    },
  };
}

export function lettersIn({ say, list }: ViewContext): string {
  return list(
    FILL.map((kind) =>
      say('reading-letters', { letter: say(LETTER_TERMS[kind]), kind: say(KIND_TERMS[kind]) }),
    ),
  );
}

function besideOn(values: Values, { say, list }: ViewContext): string {
  const names = [...BESIDE, 'other' as const].flatMap((one) => besideNames(values, one));
  return names.length > 0 ? `${capital(say('beside-slide', { foods: list(names) }))}.` : '';
}

function labelOf(values: Values, computed: MapResult, { say, list }: ViewContext): string {
  const form = say(FORM_TERMS[values.form]);
  const foods = computed.parts.filter(({ parts }) => parts > 0).map(({ index }) => nameOf(index, values));
  return fittingLabel([say('label', { form, foods: list(foods) }), say('label-bare', { form })]);
}
