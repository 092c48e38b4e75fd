import type { Alternative } from '../../figures/index.js';
import type { ViewContext } from '../contract.js';
import { capital, fittingLabel } from '../words.js';
import type { CompareResult } from './compute.js';
import type { Values } from './schema.js';

type Lanes = CompareResult['lanes'];

/** The figure in words, in three layers. A blank one names rows and measures and gives no value. */
export function alternativeOf(
  values: Values,
  lanes: Lanes,
  context: ViewContext,
  blank: boolean,
): Alternative {
  const { say, list, text } = context;
  const measures = lanes.map((lane) => lane.nutrient);
  const food = capital(values.food);
  const basis = values.basis.words;
  const forms = values.rows.length;
  return {
    label: fittingLabel([
      say('label', { food, forms, lanes: list(measures), basis }),
      say('label-many', { food, forms, lanes: lanes.length, basis }),
      say('label-bare', { forms }),
    ]),
    reading: [
      say('reading-rows', { basis, rows: rowsInWords(values, context) }),
      ...(blank
        ? [say('reading-blank', { count: lanes.length, lanes: list(measures) })]
        : [...lanesInWords(lanes, context), ...lookInWords(values, lanes, context)]),
    ].join(' '),
    table: {
      caption: say('caption', { food, basis }),
      head: [say('form'), ...measures.map(capital)],
      rows: values.rows.map((row) => [
        say('row', { letter: row.letter, form: row.words }),
        ...lanes.map((lane) =>
          blank ? say('to-fill') : text(lane.dots.find((dot) => dot.letter === row.letter)?.number ?? ''),
        ),
      ]),
    },
  };
}

function rowsInWords(values: Values, { say }: ViewContext): string {
  return values.rows
    .map((row) => say('reading-row', { letter: row.letter, form: row.words }))
    .join(say('and-then'));
}

/** A sentence for each lane, or for two where there are many: a reading has five sentences at most. */
function lanesInWords(lanes: Lanes, context: ViewContext): string[] {
  const size = lanes.length > MOST_LANE_SENTENCES ? 2 : 1;
  const each = lanes.map((lane) => laneInWords(lane, context));
  return each.flatMap((_, index) =>
    index % size === 0 ? [`${capital(each.slice(index, index + size).join(context.say('and-lane')))}.`] : [],
  );
}
const MOST_LANE_SENTENCES = 3;

function laneInWords(lane: Lanes[number], { say, text, list }: ViewContext): string {
  const known = lane.dots
    .flatMap((dot) => (dot.value === null ? [] : [{ ...dot, value: dot.value }]))
    .toSorted((a, b) => a.value - b.value);
  const open = lane.dots.filter((dot) => dot.value === null).map((dot) => dot.letter);
  const dots = known
    .map((dot) => say('reading-dot', { letter: dot.letter, value: text(dot.number) }))
    .join(say('and-then'));
  const key =
    open.length === 0 ? 'reading-lane' : known.length > 0 ? 'reading-lane-open' : 'reading-lane-none';
  return say(key, { lane: lane.nutrient, dots, letters: list(open) });
}

function lookInWords(values: Values, lanes: Lanes, { say }: ViewContext): string[] {
  const arrow = arrowOf(values, lanes);
  return arrow ? [say('reading-look', arrow)] : [];
}

/** The figure's arrow; none where one of its ends is not known. */
export function arrowOf(
  values: Values,
  lanes: Lanes,
): { readonly from: string; readonly to: string; readonly word: string } | undefined {
  const row = values.rows.find((r) => r.look);
  if (!row?.look) return undefined;
  const { from, word } = row.look;
  const known = (letter: string) =>
    lanes[0]?.dots.some((dot) => dot.letter === letter && dot.value !== null) ?? false;
  return known(from) && known(row.letter) ? { from, to: row.letter, word } : undefined;
}
