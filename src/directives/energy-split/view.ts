import type { Block, Inline } from '../../document/index.js';
import type { ShareRows } from '../../figures/index.js';
import type { View, ViewContext } from '../contract.js';
import { capital, citeList, fittingLabel, withNumbers } from '../words.js';
import type { PartOfEnergy, SplitResult } from './compute.js';
import { exercise, reasons } from './exercise.js';
import type { Values } from './schema.js';

/** Rows of bricks, what they say in a sentence, and the basis line; on a worksheet the sum to work out. */
export function view(values: Values, computed: SplitResult, context: ViewContext): View {
  const { where, level } = context;
  const figure: Block & { kind: 'figure' } = { kind: 'figure', figure: figureOf(values, computed, context) };
  if (where === 'slide')
    return { blocks: [], stages: [{ kind: 'show', block: figure }], shelf: shelf(values, computed, context) };
  const basis: Block = { kind: 'basis', inlines: basisLine(values, computed, context) };
  const noPlan =
    values.as === 'what is missing' ? [paragraph([{ text: context.say('no-plan'), strong: true }])] : [];
  if (where === 'worksheet' || where === 'key')
    return {
      blocks: [
        ...noPlan,
        ...exercise(values, computed, context),
        figure,
        ...(where === 'key' ? reasons(values, computed, context) : []),
        basis,
      ],
    };
  const more = level === 'fuller' || level === 'staff';
  return {
    blocks: [
      ...noPlan,
      paragraph([{ text: sentences(computed, context).join(' ') }]),
      figure,
      ...(more ? [table(values, computed, context), ...therapy(values, computed, context)] : []),
      basis,
    ],
  };
}

function paragraph(inlines: readonly Inline[]): Block {
  return { kind: 'paragraph', inlines };
}

/** One sentence at `short`; from `plain` on also where each part lies. */
function sentences({ parts, most }: SplitResult, { say, level, list }: ViewContext): string[] {
  if (!most) return [say('lead-open')];
  const lead = say(most.half ? 'lead-half' : 'lead-most', { part: say(most.part) });
  const lies = (['under', 'inside', 'over'] as const).flatMap((where) => {
    const there = parts.filter((part) => part.lies === where).map(({ part }) => say(part));
    if (there.length === 0) return [];
    return [say('row-range', { count: there.length, parts: list(there), lies: say(where) })];
  });
  return level === 'short' || lies.length === 0 ? [lead] : [lead, `${capital(list(lies))}.`];
}

function figureOf(values: Values, computed: SplitResult, context: ViewContext): ShareRows {
  const { say, text, where } = context;
  const { id } = values;
  const blank = where === 'worksheet';
  const { parts } = computed;
  return {
    kind: 'share-rows',
    id,
    mode: blank ? 'blank' : where === 'key' ? 'key' : 'shown',
    rows: parts.map(({ part, share, range }) => ({
      name: capital(say(part)),
      // A blank knows no share, so that nothing can give it away.
      share: blank ? null : share,
      text: blank ? '' : text(`${id}.${part}.share`),
      number: blank ? `${id}.brick` : `${id}.${part}.share`,
      ...(range ? { range: { ...range, words: text(`${id}.${part}.range`) } } : {}),
    })),
    words: { brick: say('brick', { brick: text(`${id}.brick`) }), range: say('range') },
    numbers: [
      `${id}.brick`,
      ...parts.flatMap(({ part, range }) => [
        ...(blank ? [] : [`${id}.${part}.share`]),
        ...(range ? [`${id}.${part}.range`] : []),
      ]),
    ],
    alternative: {
      label: fittingLabel([
        say('label', endsOf(values)),
        say('label-short', endsOf(values)),
        say('label-bare'),
      ]),
      reading: [
        blank ? say('lead-blank') : (sentences(computed, { ...context, level: 'short' })[0] ?? ''),
        ...parts.map((part) => rowInWords(id, part, blank, context)),
      ].join(' '),
      table: {
        caption: say('caption'),
        head: [say('part'), say('share'), say('usual')],
        rows: parts.map(({ part, range }) => [
          capital(say(part)),
          blank ? say('to-fill') : text(`${id}.${part}.share`),
          range ? text(`${id}.${part}.range`) : say('no-range'),
        ]),
      },
    },
  };
}

/** The first and the last food, which set this example apart from others. */
function endsOf({ meals }: Values): { readonly first: string; readonly last: string } {
  const foods = meals.flatMap((meal) => meal.foods);
  return { first: foods[0]?.words ?? '', last: foods.at(-1)?.words ?? '' };
}

function rowInWords(
  id: string,
  { part, range }: PartOfEnergy,
  blank: boolean,
  { say, text }: ViewContext,
): string {
  const name = capital(say(part));
  const slots = range ? { part: name, range: text(`${id}.${part}.range`) } : { part: name };
  if (blank) return say(range ? 'reading-blank-row' : 'reading-blank-bare', slots);
  return say(range ? 'reading-row' : 'reading-row-bare', { ...slots, share: text(`${id}.${part}.share`) });
}

/** Grams, energy and share of each part, beside the range. */
function table({ id }: Values, { parts }: SplitResult, { say, number }: ViewContext): Block {
  const cell = (inline: Inline) => ({ inlines: [inline], align: 'end' as const });
  const head = (words: string, end = true) => ({
    inlines: [{ text: words }],
    ...(end ? { align: 'end' as const } : {}),
  });
  return {
    kind: 'table',
    head: [
      head(say('part'), false),
      head(say('grams')),
      head(say('energy')),
      head(say('share')),
      head(say('usual')),
    ],
    rowHeads: true,
    rows: [
      ...parts.map(({ part, range }) => [
        { inlines: [{ text: capital(say(part)) }] },
        cell(number(`${id}.${part}.grams`)),
        cell(number(`${id}.${part}.energy`)),
        cell(number(`${id}.${part}.share`)),
        cell(range ? number(`${id}.${part}.range`) : { text: say('no-range') }),
      ]),
    ],
  };
}

/** The ratio in grams, and whose treatment such eating is; for readers only where there is much fat. */
function therapy(
  { id }: Values,
  { ratio, parts }: SplitResult,
  { say, number, level }: ViewContext,
): Block[] {
  const fatty = parts.some(({ part, lies }) => part === 'fat' && lies === 'over');
  if (!ratio || (level !== 'staff' && !fatty)) return [];
  return [
    paragraph([
      ...withNumbers((slots) => say('ratio', slots), { ratio: number(`${id}.ratio`) }),
      { text: ' ' },
      ...withNumbers((slots) => say('therapy', slots), { therapy: number(`${id}.therapy`) }),
    ]),
  ];
}

function exampleWords({ of, as }: Values, { say }: ViewContext): string {
  if (of === 'meal') return say('meal');
  return say(as === 'plan' ? 'plan' : as === 'what is missing' ? 'missing' : 'example');
}

function basisLine(values: Values, computed: SplitResult, context: ViewContext): Inline[] {
  const { say, number, list } = context;
  const { id, meals } = values;
  const eaten = meals.map(({ name, foods }) =>
    say('eaten-meal', { meal: capital(name), foods: foods.map(({ words }) => words).join('; ') }),
  );
  const factor = (part: string) => [part, number(`${id}.${part}.factor`)] as const;
  const drink = computed.numbers.some((one) => one.id === `${id}.alcohol.factor`);
  const counted = Object.fromEntries(
    ['carbohydrate', 'protein', 'fat', ...(drink ? ['alcohol'] : [])].map(factor),
  );
  return [
    { text: `${exampleWords(values, context)} ${eaten.join(' ')} ` },
    ...(context.where === 'worksheet'
      ? []
      : [...withNumbers((slots) => say('total', slots), { energy: number(`${id}.energy`) }), { text: ' ' }]),
    ...(computed.unknown.length > 0 ? [{ text: `${say('open', { foods: list(computed.unknown) })} ` }] : []),
    ...withNumbers((slots) => say(drink ? 'counted-alcohol' : 'counted', slots), counted),
    { text: ' ' },
    ...sourcesOf(values, computed, context),
  ];
}

function shelf(values: Values, computed: SplitResult, context: ViewContext): Inline[] {
  const { say, number } = context;
  const example = exampleWords(values, context);
  const energy = { energy: number(`${values.id}.energy`) };
  return [
    ...withNumbers((slots) => say(values.beside ? 'shelf' : 'shelf-bare', { ...slots, example }), energy),
    { text: ' ' },
    ...(values.as === 'what is missing' ? [{ text: `${say('no-plan')} ` }] : []),
    ...sourcesOf(values, computed, context),
  ];
}

function sourcesOf({ beside }: Values, { sources }: SplitResult, { say, cite }: ViewContext): Inline[] {
  const all = [...sources, ...(beside ? ['dri-macronutrients-2005'] : [])];
  return [{ text: say('sources', { count: all.length }) }, ...citeList(all, cite), { text: '.' }];
}
