import type { Block, Inline, Stage } from '../../document/index.js';
import type { Swaps } from '../../figures/index.js';
import type { View, ViewContext } from '../contract.js';
import { capital, citeList } from '../words.js';
import { alternativeOf } from './alternative.js';
import { type BoardResult, type BoardSwap, lostIn } from './compute.js';
import type { Values } from './schema.js';
import { changeText, conditionsOf, lanesOf, lostWords, namesOf, pairOf, toldOf } from './words.js';
import { exerciseOf } from './worksheet.js';

/** Pairs with what changes and what is lost; on a slide one at a time; on a worksheet, which foods fit. */
export function view(values: Values, computed: BoardResult, context: ViewContext): View {
  const { where } = context;
  const basis = basisLine(values, computed, context);
  if (where === 'slide')
    return {
      blocks: [],
      stages: computed.swaps.map((swap): Stage => {
        const block = { kind: 'figure', figure: figureOf(values, [swap], computed, context) } as const;
        // Steps of one slide are told apart by their titles.
        const title = [{ text: capital(pairOf(swap, computed, context)) }];
        return { kind: 'show', block, ...(computed.swaps.length > 1 ? { title } : {}) };
      }),
      shelf: basis,
    };
  if (where === 'worksheet' || where === 'key')
    return { blocks: [...exerciseOf(values, computed, context), { kind: 'basis', inlines: basis }] };
  return {
    blocks: [
      { kind: 'figure', figure: figureOf(values, computed.swaps, computed, context) },
      ...told(computed, context),
      { kind: 'basis', inlines: basis },
    ],
  };
}

/** What has to be said of each swap, then of all of them. */
function told(computed: BoardResult, context: ViewContext): Block[] {
  const { say, level } = context;
  const { swaps, notes } = computed;
  const items = swaps.map((swap): Block[] => [
    {
      kind: 'paragraph',
      inlines: [
        { text: `${capital(pairOf(swap, computed, context))}. `, strong: true },
        ...toldOf(swap, context),
      ],
    },
  ]);
  const all = [...(swaps.some(({ iodine }) => iodine) && level !== 'short' ? [say('iodine')] : []), ...notes];
  return [
    { kind: 'list', ordered: false, items },
    ...(all.length > 0 ? [{ kind: 'paragraph' as const, inlines: [{ text: all.join(' ') }] }] : []),
  ];
}

function figureOf(
  { id }: Values,
  shown: readonly BoardSwap[],
  computed: BoardResult,
  context: ViewContext,
): Swaps {
  const { say, list, level, where } = context;
  const slide = where === 'slide';
  const noted = level !== 'short' || slide;
  const rows = shown.map((swap) => {
    const { old, fresh } = namesOf(swap, computed);
    const side = (name: string, { food, portion }: BoardSwap['row']['old']) => ({
      picture: food.picture,
      name: capital(name),
      note: noted ? portion.words : '',
    });
    return {
      old: side(old, swap.row.old),
      fresh: side(fresh, swap.row.fresh),
      job: list(swap.row.job),
      lanes: lanesOf(swap, context).map((change) => ({
        name: capital(change.nutrient),
        before: change.before.value,
        after: change.after.value,
        text: changeText(change, context),
        numbers: [change.before.number, change.after.number],
      })),
      lost: slide ? slideWords(swap, context) : lostWords(swap, context),
    };
  });
  return {
    kind: 'swaps',
    id,
    mode: 'shown',
    rows,
    words: { before: say('key-before'), after: say('key-after') },
    numbers: rows.flatMap(({ lanes }) => lanes.flatMap(({ numbers }) => numbers)),
    alternative: alternativeOf(shown, computed, context),
  };
}

/** The shelf is the same for all swaps, so what each loses and hangs on stands in its own figure. */
function slideWords(swap: BoardSwap, context: ViewContext): string {
  const conditions = conditionsOf(swap, context);
  const told = lostIn(swap).length > 0 || conditions.length === 0 ? [lostWords(swap, context)] : [];
  return [...told, ...conditions].join(' ');
}

/** The amounts that the numbers hold for. On a worksheet only what goes, since what comes would be the answer. */
function basisLine({ needs }: Values, computed: BoardResult, context: ViewContext): Inline[] {
  const { say, list, cite, where } = context;
  const blank = where === 'worksheet' || where === 'key';
  const portion = ({ portion: { words: amount }, words }: BoardSwap['row']['old']) =>
    say('portion', { amount, food: words });
  const { swaps, estimated, sources } = computed;
  const old = [...new Set(swaps.map(({ row }) => portion(row.old)))].join('; ');
  const pairs = swaps
    .map(({ row }) => say('pair', { fresh: portion(row.fresh), old: portion(row.old) }))
    .join('; ');
  return [
    {
      text: `${where === 'slide' ? say('basis-slide') : blank ? say('basis-old', { foods: old }) : say('basis', { pairs: capital(pairs) })} `,
    },
    ...(needs.length > 0 && !blank ? [{ text: `${say('needs', { needs: list(needs) })} ` }] : []),
    ...(estimated.length > 0 && !blank ? [{ text: `${say('estimated', { foods: list(estimated) })} ` }] : []),
    { text: say('sources', { count: sources.length }) },
    ...citeList(sources, cite),
    { text: '.' },
  ];
}
