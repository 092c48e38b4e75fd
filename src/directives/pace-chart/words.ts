import type { Inline } from '../../document/index.js';
import type { ViewContext } from '../contract.js';
import { withNumbers } from '../words.js';
import type { WeightUnit } from './compute-numbers.js';
import type { BandValues, Example } from './schema.js';

type Slots = Readonly<Record<string, string>>;

export function unitOf({ measures }: ViewContext): WeightUnit {
  return measures === 'us' ? 'lb' : 'kg';
}

export function whoOf({ who }: Example, { say }: ViewContext): string {
  return say(who);
}

/** Numbers of the directive by a short name, for slots. */
export function numbersBy(
  id: string,
  names: Slots,
  { number }: ViewContext,
): Readonly<Record<string, Inline>> {
  return Object.fromEntries(Object.entries(names).map(([slot, name]) => [slot, number(`${id}.${name}`)]));
}

/** The numbers of the invented adult in the reader's units. */
function exampleSlots({ age }: Example, context: ViewContext): Slots {
  const unit = unitOf(context);
  return {
    ...(age === null ? {} : { age: 'age' }),
    ...(unit === 'lb' ? { feet: 'feet', inches: 'inches' } : { height: 'height' }),
    weight: `example-${unit}`,
  };
}

/** `A made-up woman, 45, 5 ft 5 in, 181 lb, mostly sitting`, with more numbers for the words around it. */
export function withExample(
  id: string,
  example: Example,
  context: ViewContext,
  around: (told: string, slots: Slots) => string,
  more: Slots = {},
): Inline[] {
  const { say } = context;
  return withNumbers(
    (slots) => {
      const height =
        slots.height ?? say('feet-inches', { feet: slots.feet ?? '', inches: slots.inches ?? '' });
      const given = {
        who: whoOf(example, context),
        height,
        weight: slots.weight ?? '',
        age: slots.age ?? '',
      };
      const told = say(example.age === null ? 'example' : 'example-aged', given);
      const { activity } = example;
      return around(activity ? say('and-activity', { example: told, activity: say(activity) }) : told, slots);
    },
    numbersBy(id, { ...exampleSlots(example, context), ...more }, context),
  );
}

/** Slots of all steps of a change, for `stepsIn`. */
export function stepSlots({ steps }: BandValues): Slots {
  return Object.fromEntries(
    steps.flatMap(({ fromMonth }) => [
      [`c${fromMonth}`, `from-${fromMonth}.change`],
      ...(fromMonth === 1 ? [] : [[`m${fromMonth}`, `from-${fromMonth}.month`]]),
    ]),
  );
}

/** `100 calories less a day and 200 calories less from month 4`. */
export function stepsIn({ steps }: BandValues, slots: Slots, { say, list }: ViewContext): string {
  return list(
    steps.map(({ fromMonth }, index) =>
      index === 0
        ? say('step-first', { change: slots[`c${fromMonth}`] ?? '' })
        : say('step-from', { change: slots[`c${fromMonth}`] ?? '', month: slots[`m${fromMonth}`] ?? '' }),
    ),
  );
}

/** The same slots as printed text, for alternatives. */
export function asText(id: string, names: Slots, { text }: ViewContext): Slots {
  return Object.fromEntries(Object.entries(names).map(([slot, name]) => [slot, text(`${id}.${name}`)]));
}

/** Sentences side by side. */
export function joined(sentences: readonly (readonly Inline[])[]): Inline[] {
  return sentences.flatMap((sentence, index) => [...(index > 0 ? [{ text: ' ' }] : []), ...sentence]);
}
