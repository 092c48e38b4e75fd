import type { Inline } from '../../document/index.js';
import type { StepTile, StepTiles } from '../../figures/index.js';
import type { ViewContext } from '../contract.js';
import { capital, fittingLabel, withNumbers } from '../words.js';
import type { PlanResult } from './compute.js';
import { LONG } from './keys.js';
import type { Month, StepRow, Values } from './schema.js';

/** A tile's place in the strip: a step, or a month in which the steps before go on. */
export interface Place {
  readonly at: number;
  readonly month: Month;
  readonly step?: StepRow;
}

const BLANKS = { short: 3, usual: 6 } as const;
const FIRST = 3;

/** All tiles of the plan: its steps, and months without a new one. Beginning readers see the first three steps. */
export function placesOf({ months, steps }: Values, { where, level }: ViewContext): readonly Place[] {
  if (where === 'worksheet')
    return months
      .slice(0, level === 'short' ? BLANKS.short : BLANKS.usual)
      .map((month, at): Place => ({ at, month }));
  const own = steps.map((step): Place => ({ at: step.at, month: step.month, step }));
  if (where === 'slide') return own;
  if (level === 'short') return own.slice(0, FIRST);
  return months.flatMap((month, at) => {
    const here = own.filter((place) => place.at === at);
    return here.length > 0 ? here : [{ at, month }];
  });
}

/** The strip; a blank has lines to write on in place of steps. */
export function figureOf(
  values: Values,
  computed: PlanResult,
  context: ViewContext,
  places: readonly Place[],
): StepTiles {
  const { say, where } = context;
  const blank = where === 'worksheet';
  const marked = blank ? undefined : markedAt(values, context);
  const rows = places.map((place) => ({
    place,
    effect: blank ? [] : effectOf(place.step, computed, context),
  }));
  const now = places.filter(({ at }) => at === marked);
  const ends = { first: longName(places[0], context), last: longName(places.at(-1), context) };
  return {
    kind: 'step-tiles',
    id: values.id,
    mode: blank ? 'blank' : where === 'key' ? 'key' : 'shown',
    tiles: rows.map(
      ({ place, effect }): StepTile => ({
        month: say(place.month),
        action: blank ? '' : capital(place.step?.action ?? say('keep')),
        effect: effect.map(({ text, number }) => ({ text, ...(number === undefined ? {} : { number }) })),
        current: place.at === marked,
      }),
    ),
    words: { boxes: say('boxes') },
    numbers: [...new Set(rows.flatMap(({ effect }) => effect.flatMap(({ number }) => number ?? [])))],
    alternative: {
      label: fittingLabel([say(ends.first === ends.last ? 'label-one' : 'label', ends)]),
      reading: blank
        ? say('reading-blank', ends)
        : [
            `${rows.map(({ place, effect }) => told(place, effect, context)).join('; ')}.`,
            say('reading-boxes'),
            ...now.slice(0, 1).map((place) => say('reading-now', { month: longName(place, context) })),
          ].join(' '),
      table: {
        caption: say('caption'),
        head: [say('month'), say('step'), say('change')],
        rows: rows.map(({ place, effect }) => [
          longName(place, context),
          blank ? say('to-fill') : (place.step?.action ?? say('keep')),
          blank ? say('to-fill') : effect.length > 0 ? wordsOf(effect) : say('nothing-told'),
        ]),
      },
    },
  };
}

/** Measures that are no thing of their own: seven medium oranges, and not seven medium of orange. */
const SIZES: ReadonlySet<string> = new Set(['small', 'medium', 'large', 'extra large', 'each', 'whole']);

/** What a step changes, as running text with its number; nothing where it tells nothing. */
function effectOf(
  step: StepRow | undefined,
  { effects }: PlanResult,
  { say, number }: ViewContext,
): readonly Inline[] {
  const effect = step && effects.get(step.key);
  if (!effect) return [];
  const { way, per, of, known, basis = '' } = effect;
  const amount = { amount: number(effect.number) };
  const change = say(way);
  if ('nutrient' in of) {
    const nutrient = say(of.nutrient);
    if (!known) return withNumbers((slots) => say('unknown', { ...slots, nutrient }), amount);
    return withNumbers(
      (slots) => say(per, { basis, effect: say('nutrient', { ...slots, change, nutrient }) }),
      amount,
    );
  }
  const { food, measure, bare } = of;
  const form = bare && (measure === '' || SIZES.has(measure)) ? 'food-sized' : bare ? 'food-measure' : 'food';
  return withNumbers(
    (slots) =>
      say(per, { basis, effect: say(form, { ...slots, food, measure, change }).replace(/ +(?=[ :])/g, '') }),
    amount,
  );
}

/** This month, or the first that is shown where the plan shows none for it. */
function markedAt(values: Values, context: ViewContext): number | undefined {
  const places = placesOf(values, context);
  return (places.find(({ at }) => at === values.now) ?? places[0])?.at;
}

function told(place: Place, effect: readonly Inline[], context: ViewContext): string {
  const { say } = context;
  const month = longName(place, context);
  if (!place.step) return say('reading-keep', { month });
  const { action } = place.step;
  return effect.length > 0
    ? say('reading-effect', { month, action, effect: wordsOf(effect) })
    : say('reading-step', { month, action });
}

function wordsOf(inlines: readonly Inline[]): string {
  return inlines.map(({ text }) => text).join('');
}

export function longName(place: Place | undefined, { say }: ViewContext): string {
  return place ? say(LONG[place.month]) : '';
}
