import type { Block, Inline } from '../../document/index.js';
import type { View, ViewContext } from '../contract.js';
import { citeList, withNumbers } from '../words.js';
import { sureCard } from './card.js';
import type { PlanResult } from './compute.js';
import { figureOf, longName, type Place, placesOf } from './figure.js';
import { PORTION } from './keys.js';
import type { StepRow, Values } from './schema.js';

/** Tiles of one slide. */
const ON_SLIDE = 3;

/** The plan as a strip; on a worksheet one's own, with how sure one is. Its key shows a sample and no answers. */
export function view(values: Values, computed: PlanResult, context: ViewContext): View {
  const { where, say, level } = context;
  const places = placesOf(values, context);
  const figure = (some: readonly Place[]): Block & { kind: 'figure' } => ({
    kind: 'figure',
    figure: figureOf(values, computed, context, some),
  });
  const basis = basisLine(values, computed, context, places);
  if (where === 'slide')
    return {
      blocks: [],
      stages: threes(places).map((some, index) => ({
        kind: 'show',
        block: figure(some),
        ...(index > 0 ? { title: [{ text: thenWords(some, context) }] } : {}),
      })),
      shelf: basis,
    };
  const paragraph = (...said: readonly string[]): Block => ({
    kind: 'paragraph',
    inlines: [{ text: said.join(' ') }],
  });
  const strip: Block[] = [figure(places), { kind: 'basis', inlines: basis }];
  if (where === 'worksheet') return { blocks: [paragraph(say('own')), ...strip, sureCard(values, context)] };
  if (where === 'key') return { blocks: [paragraph(say('sample')), ...strip, sureCard(values, context)] };
  if (where === 'staff') return { blocks: [paragraph(say('leader'), say('leader-private')), ...strip] };
  const fuller = level === 'fuller' || level === 'staff';
  return { blocks: [paragraph(say(fuller ? 'intro-fuller' : 'intro')), ...strip] };
}

function threes(places: readonly Place[]): Place[][] {
  return places.length === 0 ? [] : [places.slice(0, ON_SLIDE), ...threes(places.slice(ON_SLIDE))];
}

/** The title of further steps. */
function thenWords(places: readonly Place[], context: ViewContext): string {
  const [first, last] = [longName(places[0], context), longName(places.at(-1), context)];
  return context.say(first === last ? 'next-one' : 'next', { first, last });
}

/** What was counted for each effect, and where it is from; a blank has no effects. */
function basisLine(
  values: Values,
  { effects, sources, estimated }: PlanResult,
  context: ViewContext,
  places: readonly Place[],
): Inline[] {
  const { say, where, cite } = context;
  const told: Inline[] = [{ text: say('told') }];
  if (where === 'worksheet') return told;
  // A shelf is small: amounts of food and of what is rinsed stand in the tiles themselves.
  const all = places.flatMap(({ step }) => (step && effects.has(step.key) ? [step] : []));
  const slide = where === 'slide';
  const steps = slide
    ? all.filter(({ key, change }) => change && 'nutrient' in (effects.get(key)?.of ?? {}))
    : all;
  return [
    ...told,
    ...steps.flatMap((step) => [
      { text: ' ' },
      ...counted(values, step, effects.get(step.key)?.basis, context),
    ]),
    ...estimated.map((portion) => ({ text: ` ${say('estimated', { portion })}` })),
    ...(sources.length > 0
      ? [{ text: ` ${say('sources', { count: sources.length })}` }, ...citeList(sources, cite), { text: '.' }]
      : []),
  ];
}

function counted(
  { id }: Values,
  { key, month, change, often }: StepRow,
  basis: string | undefined,
  { say, number }: ViewContext,
): Inline[] {
  const named = { month: say(month) };
  if (!change) return [{ text: say('rinsed', { ...named, basis: basis ?? '' }) }];
  const food = { ...named, food: change.words, portion: change.portion.words };
  if (!often) return [{ text: say('portion', food) }];
  return withNumbers((slots) => say(PORTION[often.per], { ...food, ...slots }), {
    times: number(`${id}.${key}.times`),
  });
}
