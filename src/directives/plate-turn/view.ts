import type { Block, Inline } from '../../document/index.js';
import type { DishTurn, TurnLane } from '../../figures/index.js';
import type { View, ViewContext } from '../contract.js';
import { countersOf, FILL, TEXTURES } from '../dish-looks.js';
import { capital, citeList } from '../words.js';
import { alternativeOf, blankAlternative } from './alternative.js';
import type { TurnResult } from './compute.js';
import { FORM_TERMS, KIND_TERMS, LETTER_TERMS } from './keys.js';
import type { Values } from './schema.js';
import { freshName, laneText, lostWords, movesAt, needWords, oldName } from './words.js';

/** Both dishes with what changed and what is lost; on a worksheet, which foods have to go. */
export function view(values: Values, computed: TurnResult, context: ViewContext): View {
  const { where } = context;
  const figure = figureOf(values, computed, context);
  const basis = basisLine(computed, context);
  const told = tell(computed, context);
  if (where === 'slide')
    return {
      blocks: [],
      stages: [{ kind: 'show', block: { kind: 'figure', figure } }],
      shelf: [{ text: `${lostWords(computed, context)} ` }, ...basis],
    };
  if (where === 'worksheet')
    return {
      blocks: [
        foodTable(values, computed, context),
        { kind: 'figure', figure },
        { kind: 'basis', inlines: basis },
      ],
    };
  const blocks: Block[] = [
    ...(where === 'key' ? [foodTable(values, computed, context), reasons(computed, context)] : []),
    { kind: 'figure', figure },
    { kind: 'basis', inlines: basis },
  ];
  // The basis stands right under the figure; what is lost is said in the size of the text.
  const words: Block = { kind: where === 'key' ? 'why' : 'paragraph', inlines: [{ text: told.join(' ') }] };
  return { blocks: [...blocks.slice(0, -1), words, ...blocks.slice(-1)] };
}

function tell(computed: TurnResult, context: ViewContext): string[] {
  const { say, list, level } = context;
  const { open, conditions, notes, iodine } = computed;
  const short = level === 'short';
  return [
    lostWords(computed, context),
    ...(open.length > 0 && !short ? [say('open', { nutrients: list(open) })] : []),
    ...(iodine && !short ? [say('iodine')] : []),
    ...conditions.map(capital),
    ...notes,
  ];
}

function figureOf(values: Values, computed: TurnResult, context: ViewContext): DishTurn {
  const { say, where, level } = context;
  const blank = where === 'worksheet';
  const counters = (side: 'before' | 'after') => {
    const foods = computed[side];
    return countersOf(side === 'before' ? computed.partsBefore : computed.partsAfter, foods, (part) => {
      const food = foods[part.index];
      const changed = food !== undefined && 'fresh' in food && food.fresh === true;
      return { name: '', note: '', ...(changed ? { changed } : {}) };
    });
  };
  const lanes = blank || where === 'slide' ? [] : lanesOf(computed, context);
  return {
    kind: 'dish-turn',
    id: values.id,
    mode: blank ? 'blank' : where === 'key' ? 'key' : 'shown',
    shape: computed.form,
    kinds: FILL.map((kind) => ({ letter: say(LETTER_TERMS[kind]), texture: TEXTURES[kind] })),
    before: { title: say('before'), foods: counters('before') },
    ...(blank ? {} : { after: { title: capital(needWords(values, context)), foods: counters('after') } }),
    dishes: blank || level !== 'short' || where === 'slide',
    swaps: blank ? [] : swapsOf(values, computed, context),
    lanes,
    lost: blank ? '' : lostWords(computed, context),
    words: {
      before: say('key-before'),
      after: blank ? capital(needWords(values, context)) : say('key-after'),
      changed: say('key-changed'),
    },
    numbers: lanes.flatMap(({ numbers }) => numbers),
    alternative: blank
      ? blankAlternative(values, computed, context)
      : alternativeOf(values, computed, context),
  };
}

function swapsOf(values: Values, computed: TurnResult, { say, level }: ViewContext): DishTurn['swaps'] {
  const short = level === 'short';
  return values.swaps.map((swap) => {
    const { old, fresh, countsAs } = swap;
    const was = computed.before.find(({ food }) => food.id === old.food.id);
    const amount = fresh.portion.words;
    const kind = countsAs ? say(KIND_TERMS[countsAs]) : '';
    return {
      old: {
        picture: old.food.picture,
        name: capital(oldName(swap, computed)),
        note: short ? '' : (was?.portion.words ?? ''),
      },
      fresh: {
        picture: fresh.food.picture,
        name: capital(freshName(swap, computed)),
        note: short ? '' : countsAs ? say('counted', { amount, kind }) : amount,
      },
    };
  });
}

function lanesOf(computed: TurnResult, context: ViewContext): TurnLane[] {
  return movesAt(computed, context).map((move) => ({
    name: capital(move.nutrient),
    before: move.before.value,
    after: move.after.value,
    text: laneText(move, context),
    numbers: [move.before.number, move.after.number],
  }));
}

/** Every food of the dish: does it go or stay? */
function foodTable(values: Values, computed: TurnResult, context: ViewContext): Block {
  const { say, where } = context;
  const text = (words: string) => ({ inlines: [{ text: words }] });
  return {
    kind: 'table',
    caption: say('ask', { needs: needWords(values, context) }),
    head: [text(say('head-food')), text(say('head-goes'))],
    rows: computed.verdicts.map(({ index, goes }) => {
      const food = computed.before[index]?.words ?? '';
      const answer = where === 'key' ? { answer: say(goes ? 'goes' : 'stays') } : {};
      return [text(food), { inlines: [], field: { label: say('field-goes', { food }), ...answer } }];
    }),
    rowHeads: true,
  };
}

/** Why each food goes, and what a food that stays hangs on. */
function reasons({ verdicts }: TurnResult, { say }: ViewContext): Block {
  const said = verdicts.flatMap((verdict) => verdict.reasons.map(capital));
  return {
    kind: 'why',
    inlines: [{ text: [say('why'), ...(said.length > 0 ? said : [say('nothing-swapped')])].join(' ') }],
  };
}

function basisLine(computed: TurnResult, context: ViewContext): Inline[] {
  const { say, list, cite, where } = context;
  const blank = where === 'worksheet' || where === 'key';
  const form = capital(say(FORM_TERMS[computed.form]));
  // The dish as it was stands on worksheet and key alike; the new one would give the answers away.
  const foods = (blank ? computed.before : computed.after).map(({ portion, words }) =>
    say('portion', { amount: portion.words, food: words }),
  );
  const basis =
    where === 'slide'
      ? say('basis-slide')
      : say(computed.serves === 1 ? 'basis-one' : 'basis-many', {
          form,
          people: computed.serves,
          foods: foods.join('; '),
        });
  return [
    { text: `${basis} ` },
    ...(computed.estimated.length > 0 && !blank
      ? [{ text: `${say('estimated', { foods: list(computed.estimated) })} ` }]
      : []),
    { text: say('sources', { count: computed.sources.length }) },
    ...citeList(computed.sources, cite),
    { text: '.' },
  ];
}
