import type { Block, Inline, Stage } from '../../document/index.js';
import type { Dish, DishKindLook } from '../../figures/index.js';
import type { DishKindName } from '../../nutrition/index.js';
import type { View, ViewContext } from '../contract.js';
import { countersOf, FILL, TEXTURES } from '../dish-looks.js';
import { capital, citeList, withNumbers } from '../words.js';
import { alternativeOf, blankAlternative, lettersIn } from './alternative.js';
import type { MapResult } from './compute.js';
import { BAR_TERMS, EXTENT_TERMS, FORM_TERMS, KIND_TERMS, LACKS_TERMS, LETTER_TERMS } from './keys.js';
import type { Values } from './schema.js';
import {
  besideFoods,
  besideLines,
  besideNames,
  counts,
  foodsOf,
  foodWords,
  kindsIn,
  leftOver,
  nameOf,
} from './words.js';

/** The dish with what stands beside it; on a slide it fills kind by kind. */
export function view(values: Values, computed: MapResult, context: ViewContext): View {
  const { where } = context;
  const basis = basisLine(values, computed, context);
  const kinds = kindsIn(computed);
  if (where === 'slide')
    return {
      blocks: [],
      stages: kinds.map((kind, i): Stage => {
        const figure = figureOf(
          values,
          computed,
          context,
          kinds.slice(0, i + 1),
          kinds.length > 1 ? kind : undefined,
        );
        return {
          kind: 'show',
          block: { kind: 'figure', figure },
          title: titleOf(kind, values, computed, context),
        };
      }),
      shelf: basis,
    };
  if (where === 'worksheet' || where === 'key') return { blocks: exercise(values, computed, context, basis) };
  const blocks: Block[] = [{ kind: 'figure', figure: figureOf(values, computed, context, kinds) }];
  const lines = [...besideLines(values, context), ...lacksLine(computed, context)];
  if (lines.length > 0) blocks.push({ kind: 'paragraph', inlines: [{ text: lines.join(' ') }] });
  const totals = totalsLine(values, context);
  if (totals.length > 0) blocks.push({ kind: 'paragraph', inlines: totals });
  return { blocks: [...blocks, { kind: 'basis', inlines: basis }] };
}

function figureOf(
  values: Values,
  computed: MapResult,
  context: ViewContext,
  there: readonly DishKindName[],
  newest?: DishKindName,
): Dish {
  const { say, text, where, list } = context;
  const blank = where === 'worksheet';
  const numbers = counts(context) && !blank;
  const slide = where === 'slide';
  const form = say(FORM_TERMS[values.form]);
  const kinds = FILL.flatMap((name): DishKindLook[] => {
    const kind = computed.kinds.find((one) => one.kind === name);
    if (!kind) return [];
    const goal = `${values.id}.${name.replaceAll(' ', '-')}.goal`;
    const [long, short] = (['after', 'none'] as const).map((amounts) =>
      foodsOf(name, values, computed, context, amounts).join('; '),
    );
    const named = {
      kind: say(KIND_TERMS[name]),
      parts: numbers ? text(kind.number) : '',
      foods: list(foodsOf(name, values, computed, context, 'none')),
    };
    return [
      {
        letter: say(LETTER_TERMS[name]),
        texture: TEXTURES[name],
        word: say(BAR_TERMS[name]),
        name: blank
          ? ''
          : !numbers
            ? capital(say('kind-extent', { ...named, extent: say(EXTENT_TERMS[kind.extent]) }))
            : slide
              ? say('kind-slide', named)
              : capital(named.kind),
        notes: blank
          ? []
          : slide && numbers
            ? [long ?? '', short ?? '']
            : [numbers ? say('kind-parts', named) : named.foods],
        parts: blank ? 0 : kind.parts,
        text: numbers ? text(kind.number) : '',
        ...(numbers ? { number: kind.number } : {}),
        goal: computed.goals[name],
        goalText: counts(context) ? text(goal) : '',
        ...(counts(context) ? { goalNumber: goal } : {}),
        look: !there.includes(name) ? 'waiting' : name === newest ? 'new' : 'there',
      },
    ];
  });
  const beside = (['drink', 'fat', 'calcium', 'other'] as const).flatMap((one) =>
    slide ? besideNames(values, one) : besideFoods(values, context, one),
  );
  const shown = computed.kinds.filter(({ kind, parts }) => parts > 0 && there.includes(kind));
  const parts = computed.parts.filter(({ kind, parts: own }) => own > 0 && there.includes(kind));
  const goals =
    values.goal && there.length === kindsIn(computed).length
      ? FILL.map((name) => `${values.id}.${name.replaceAll(' ', '-')}.goal`)
      : [];
  return {
    kind: 'dish',
    id: values.id,
    mode: blank ? 'blank' : where === 'key' ? 'key' : 'shown',
    shape: values.form,
    by: numbers ? 'food' : 'kind',
    kinds,
    foods: blank
      ? []
      : countersOf(computed.parts, values.foods, (part) => {
          const food = values.foods[part.index];
          const said = numbers ? say('food-parts', { parts: text(part.number) }) : '';
          return {
            name: capital(nameOf(part.index, values)),
            note: food?.countsAs
              ? say('counted', { food: said, kind: say(KIND_TERMS[food.countsAs]) })
              : said,
            ...(numbers ? { number: part.number } : {}),
          };
        }),
    ...(values.goal && counts(context)
      ? {
          bar: slide
            ? { own: say('own-slide'), goal: say('goal-slide') }
            : { own: say('own', { form }), goal: say('goal') },
        }
      : {}),
    beside: !blank && beside.length > 0 ? say('beside-slide', { foods: list(beside) }) : '',
    numbers: numbers
      ? [...shown.map(({ number }) => number), ...parts.map(({ number }) => number), ...goals]
      : [],
    alternative: blank
      ? blankAlternative(values, computed, context)
      : alternativeOf(values, computed, context, there),
  };
}

/** The title of a step names what has come: its foods where they are few. */
function titleOf(kind: DishKindName, values: Values, computed: MapResult, context: ViewContext): Inline[] {
  const { say, number, list } = context;
  const found = computed.kinds.find((one) => one.kind === kind);
  if (!found) return [];
  const foods = list(
    computed.parts
      .filter((part) => part.kind === kind && part.parts > 0)
      .map(({ index }) => nameOf(index, values)),
  );
  const name = capital(foods.length <= LONGEST_TITLE ? foods : say(KIND_TERMS[kind]));
  if (!counts(context))
    return [{ text: say('slide-title-extent', { kind: name, extent: say(EXTENT_TERMS[found.extent]) }) }];
  return withNumbers((slots) => say('slide-title', { kind: name, ...slots }), {
    parts: number(found.number),
  });
}

const LONGEST_TITLE = 28;

/** Empty counters to letter, with the foods as they were served; on the key what is right, and why. */
function exercise(
  values: Values,
  computed: MapResult,
  context: ViewContext,
  basis: readonly Inline[],
): Block[] {
  const { say, number, where, list } = context;
  const foods = values.foods.filter((one) => one.fills);
  const blocks: Block[] = [
    { kind: 'paragraph', inlines: [{ text: say('fill-in', { letters: lettersIn(context) }) }] },
    {
      kind: 'list',
      ordered: false,
      items: foods.map((one): Block[] => [
        { kind: 'paragraph', inlines: [{ text: foodWords(one, context, 'before') }] },
      ]),
    },
    { kind: 'figure', figure: figureOf(values, computed, context, kindsIn(computed)) },
    { kind: 'basis', inlines: basis },
  ];
  if (where !== 'key') return blocks;
  const kinds = computed.kinds.filter(({ parts }) => parts > 0);
  const right = withNumbers(
    (slots) =>
      say('key-right', {
        kinds: list(
          kinds.map(({ kind }) =>
            say('key-kind', { letter: say(LETTER_TERMS[kind]), ends: slots[kind] ?? '' }),
          ),
        ),
      }),
    Object.fromEntries(kinds.map(({ kind, accepted }) => [kind, number(accepted)])),
  );
  const why = withNumbers(
    (slots) =>
      say('key-why', {
        shares: list(
          kinds.map(({ kind }) =>
            say('key-share', { kind: say(KIND_TERMS[kind]), share: slots[kind] ?? '' }),
          ),
        ),
      }),
    Object.fromEntries(kinds.map(({ kind, share }) => [kind, number(share)])),
  );
  return [...blocks, { kind: 'why', inlines: [...right, { text: ' ' }, ...why] }];
}

/** Fiber and sodium for readers who want more, and all totals for leaders. */
function totalsLine({ id }: Values, { say, number, where, level }: ViewContext): Inline[] {
  if (where !== 'staff' && level !== 'fuller' && level !== 'staff') return [];
  const all = where === 'staff' || level === 'staff';
  const names = all ? ['energy', 'protein', 'fiber', 'sodium', 'saturated-fat'] : ['fiber', 'sodium'];
  return withNumbers(
    (slots) => say(all ? 'totals-all' : 'totals', slots),
    Object.fromEntries(names.map((name) => [name, number(`${id}.${name}`)])),
  );
}

function lacksLine({ lacks }: MapResult, { say, list, level }: ViewContext): string[] {
  if (lacks.length === 0 || level === 'short') return [];
  return [say('lacks', { what: list(lacks.map((one) => say(LACKS_TERMS[one]))) })];
}

function basisLine(values: Values, computed: MapResult, context: ViewContext): Inline[] {
  const { say, list, cite, level, where } = context;
  const form = capital(say(FORM_TERMS[values.form]));
  const left = leftOver(values, computed);
  const tells = [
    where === 'slide'
      ? say('basis-slide')
      : say(values.serves === 1 ? 'basis-one' : 'basis-many', {
          form,
          people: values.serves,
          foods: values.foods
            .filter(({ fills }) => fills)
            .map((food) => foodWords(food, context, 'before'))
            .join('; '),
        }),
    // What got no counter is an answer of the worksheet.
    ...(left.length > 0 && where !== 'worksheet' ? [say('too-little', { foods: list(left) })] : []),
    ...(computed.estimated.length > 0 ? [say('estimated', { foods: list(computed.estimated) })] : []),
    ...(values.written.length > 0 && (level === 'fuller' || level === 'staff' || where === 'staff')
      ? [say('words-only', { foods: list(values.written.map(({ text }) => text)) })]
      : []),
  ];
  return [
    { text: `${tells.join(' ')} ` },
    { text: say('sources', { count: computed.sources.length }) },
    ...citeList(computed.sources, cite),
    { text: '.' },
  ];
}
