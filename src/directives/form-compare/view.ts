import type { Block, Inline } from '../../document/index.js';
import type { DotLanes, Lane } from '../../figures/index.js';
import type { View, ViewContext } from '../contract.js';
import { signOf } from '../sign.js';
import { capital, citeList } from '../words.js';
import type { CompareResult } from './compute.js';
import type { Values } from './schema.js';

/** The figure with its basis line; on paper the "choose this when" row stands between them. */
export function view(values: Values, computed: CompareResult, context: ViewContext): View {
  const figure = figureOf(values, computed, context);
  const basis = basisLine(values, computed, context);
  if (context.where === 'slide')
    return { blocks: [], stages: [{ kind: 'show', block: { kind: 'figure', figure } }], shelf: basis };
  const choose = values.rows.flatMap((row) =>
    row.choose ? [{ letter: row.letter, inlines: [{ text: row.choose }] }] : [],
  );
  const blocks: Block[] = [{ kind: 'figure', figure }];
  if (choose.length > 0 && context.where === 'handout' && context.level !== 'short')
    blocks.push({ kind: 'choose', items: choose });
  blocks.push({ kind: 'basis', inlines: basis });
  return { blocks };
}

function figureOf(values: Values, computed: CompareResult, context: ViewContext): DotLanes {
  const mode = context.where === 'worksheet' ? 'blank' : context.where === 'key' ? 'key' : 'shown';
  const lanes = lanesAt(computed, context);
  return {
    kind: 'dot-lanes',
    id: values.id,
    mode,
    rows: values.rows.map((row) => ({
      letter: row.letter,
      sign: signOf(row.food),
      words: capital(row.words),
    })),
    lanes: lanes.map((lane, index): Lane => {
      const look = index === 0 && mode !== 'blank' ? values.rows.find((row) => row.look) : undefined;
      return {
        name: capital(lane.nutrient),
        ...(lane.nutrient === 'sodium' ? { note: context.say('sodium-note') } : {}),
        dots: lane.dots.map((dot) => ({
          letter: dot.letter,
          value: dot.value,
          text: context.text(dot.number),
          number: dot.number,
        })),
        ...(look?.look ? { look: { from: look.look.from, to: look.letter, word: look.look.word } } : {}),
      };
    }),
    numbers: mode === 'blank' ? [] : lanes.flatMap((lane) => lane.dots.map((dot) => dot.number)),
    alternative: alternative(values, lanes, context, mode === 'blank'),
  };
}

/** A level may drop rows of the figure, never its basis: one measure at `short`, three at `plain`. */
function lanesAt(computed: CompareResult, { level, where }: ViewContext): CompareResult['lanes'] {
  const most = where === 'slide' ? 3 : level === 'short' ? 1 : level === 'plain' ? 3 : computed.lanes.length;
  return computed.lanes.slice(0, most);
}

function alternative(
  values: Values,
  lanes: CompareResult['lanes'],
  context: ViewContext,
  blank: boolean,
): DotLanes['alternative'] {
  const { say, list, text } = context;
  const names = lanes.map((lane) => lane.nutrient);
  const words = new Map(values.rows.map((row) => [row.letter, row.words]));
  const basis = values.basis.words;
  return {
    label: say('label', { food: capital(values.food), count: lanes.length, lanes: list(names), basis }),
    reading: blank
      ? say('reading-blank', {
          lanes: list(names),
          letters: list(values.rows.map((row) => `${row.letter}, ${row.words}`)),
        })
      : lanes
          .map((lane) =>
            say('reading-lane', {
              lane: capital(lane.nutrient),
              dots: dotsInOrder(lane.dots)
                .map((dot) =>
                  say('reading-dot', {
                    letter: dot.letter,
                    form: words.get(dot.letter) ?? '',
                    value: text(dot.number),
                  }),
                )
                .join('; '),
            }),
          )
          .join(' '),
    table: {
      caption: say('caption', { food: capital(values.food), basis }),
      head: [say('form'), ...names.map(capital)],
      rows: values.rows.map((row) => [
        `${row.letter}, ${row.words}`,
        ...lanes.map((lane) =>
          blank ? say('to-fill') : text(lane.dots.find((dot) => dot.letter === row.letter)?.number ?? ''),
        ),
      ]),
    },
  };
}

/** Lowest first; what is not known stands last. */
function dotsInOrder(dots: CompareResult['lanes'][number]['dots']): CompareResult['lanes'][number]['dots'] {
  const place = (value: number | null) => value ?? Number.POSITIVE_INFINITY;
  return dots.toSorted((a, b) => place(a.value) - place(b.value));
}

function basisLine(values: Values, computed: CompareResult, context: ViewContext): Inline[] {
  const { say, list } = context;
  const sentences = [say('basis', { basis: capital(values.basis.words), food: values.food })];
  const { labelRows, estimated } = computed;
  if (labelRows.length > 0)
    sentences.push(say(labelRows.length === 1 ? 'label-row' : 'label-rows', { letters: list(labelRows) }));
  // The screen says "not known" at the dot; its shelf has no room to say it twice.
  const open = lanesAt(computed, context).some((lane) => lane.dots.some((dot) => dot.value === null));
  if (open && context.where !== 'slide') sentences.push(say('not-known'));
  if (estimated.length > 0) sentences.push(say('estimated', { letters: list(estimated) }));
  const sources = [...new Set(computed.numbers.flatMap((number) => number.sources))];
  return [
    { text: `${sentences.join(' ')} ${say(sources.length === 1 ? 'source' : 'sources')}` },
    ...citeList(sources, context.cite),
    { text: '.' },
  ];
}
