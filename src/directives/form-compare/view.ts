import type { Block, Inline } from '../../document/index.js';
import type { DotLanes, Lane } from '../../figures/index.js';
import type { View, ViewContext } from '../contract.js';
import { signOf } from '../sign.js';
import { capital, citeList, withNumbers } from '../words.js';
import { alternativeOf, arrowOf } from './alternative.js';
import type { CompareResult } from './compute.js';
import type { Values } from './schema.js';

/** The figure with its basis line; on paper the "choose this when" row stands between them. */
export function view(values: Values, computed: CompareResult, context: ViewContext): View {
  const figure = figureOf(values, computed, context);
  const basis = basisLine(values, computed, context);
  if (context.where === 'slide')
    return { blocks: [], stages: [{ kind: 'show', block: { kind: 'figure', figure } }], shelf: basis };
  const choose = values.rows.flatMap((row) =>
    row.choose ? [{ letter: row.letter, inlines: context.inlines(row.choose) }] : [],
  );
  const blocks: Block[] = [{ kind: 'figure', figure }];
  if (choose.length > 0 && context.where === 'handout' && context.level !== 'short')
    blocks.push({ kind: 'choose', items: choose });
  blocks.push({ kind: 'basis', inlines: basis });
  return { blocks };
}

function figureOf(values: Values, computed: CompareResult, context: ViewContext): DotLanes {
  const mode = context.where === 'worksheet' ? 'blank' : context.where === 'key' ? 'key' : 'shown';
  const blank = mode === 'blank';
  const lanes = lanesAt(computed, context);
  const look = arrowOf(values, lanes);
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
      // A blank lane holds no dots at all, so that nothing can give its values away.
      const dots = blank ? [] : lane.dots;
      return {
        name: capital(lane.nutrient),
        ...(lane.nutrient === 'sodium' ? { note: context.say('sodium-note') } : {}),
        dots: dots.map((dot) => ({ ...dot, text: context.text(dot.number) })),
        ...(index === 0 && look && !blank ? { look } : {}),
      };
    }),
    numbers: blank ? [] : lanes.flatMap((lane) => lane.dots.map((dot) => dot.number)),
    alternative: alternativeOf(values, lanes, context, blank),
  };
}

/** A level may drop measures of the figure, never its basis: one at `short`, three at `plain` and on the screen. */
function lanesAt(computed: CompareResult, { level, where }: ViewContext): CompareResult['lanes'] {
  const most = where === 'slide' ? 3 : level === 'short' ? 1 : level === 'plain' ? 3 : computed.lanes.length;
  return computed.lanes.slice(0, most);
}

function basisLine(values: Values, computed: CompareResult, context: ViewContext): Inline[] {
  const { say, list } = context;
  const { labelRows, beforeCooking, estimated } = computed;
  const sentences: Inline[][] = [
    [{ text: say('basis', { food: capital(values.food), basis: values.basis.words }) }],
  ];
  const tell = (words: string) => sentences.push([{ text: words }]);
  if (labelRows.length > 0) tell(say('label-rows', { count: labelRows.length, letters: list(labelRows) }));
  if (beforeCooking.length > 0)
    tell(say('before-cooking', { count: beforeCooking.length, letters: list(beforeCooking) }));
  if (computed.weights.length > 0) sentences.push(weightsLine(computed, context));
  // The screen says "not known" at the dot and has no room to say it twice; a blank shows no value at all.
  const open = lanesAt(computed, context).some((lane) => lane.dots.some((dot) => dot.value === null));
  if (open && context.where !== 'slide' && context.where !== 'worksheet') tell(say('not-known'));
  if (estimated.length > 0)
    tell(say('estimated', { portion: values.basis.portion, letters: list(estimated) }));
  const sources = [...new Set(computed.numbers.flatMap((number) => number.sources))];
  return [
    ...sentences.flatMap((sentence) => [...sentence, { text: ' ' }]),
    { text: say('sources', { count: sources.length }) },
    ...citeList(sources, context.cite),
    { text: '.' },
  ];
}

/** What a whole package of each form weighs, since draining makes it lighter. */
function weightsLine({ weights }: CompareResult, { say, list, number }: ViewContext): Inline[] {
  return withNumbers(
    (slots) =>
      say('weights', {
        weights: list(
          weights.map(({ letter, number: id }) => say('weight', { letter, weight: slots[id] ?? '' })),
        ),
      }),
    Object.fromEntries(weights.map(({ number: id }) => [id, number(id)])),
  );
}
