import type { CostRung, CostRungs } from '../../figures/index.js';
import type { View, ViewContext } from '../contract.js';
import { signOf } from '../sign.js';
import { capital } from '../words.js';
import { alternativeOf, type Shown } from './alternative.js';
import type { CupCostResult } from './compute.js';
import type { Values } from './schema.js';
import { basisLine, isWhole, kindOf, lineOf, tellsSales } from './words.js';
import { worksheetBlocks } from './worksheet.js';

/** The ladder with its basis line; on a worksheet the sum to work out instead, and on its key the answers. */
export function view(values: Values, computed: CupCostResult, context: ViewContext): View {
  const { where } = context;
  if (where === 'worksheet' || where === 'key') {
    // As they were written: the order of costs would be half the answer.
    const named = values.rows.flatMap((row) => {
      const rung = computed.rungs.find((one) => one.row === row);
      return rung ? [{ rung, name: row.words }] : [];
    });
    const inlines = basisLine(values, named, computed, context);
    return { blocks: [...worksheetBlocks(values, computed, context), { kind: 'basis', inlines }] };
  }
  const shown = shownAt(values, computed, context);
  if (where === 'handout' && values.handout === 'line') {
    const named = shown.map(({ rung, drawn }) => ({ rung, name: uncapital(drawn.words) }));
    const basis = basisLine(values, named, computed, context);
    return { blocks: [lineOf(values, named, context), { kind: 'basis', inlines: basis }] };
  }
  const figure = figureOf(values, computed, shown, context);
  const lettered = shown.map(({ rung, drawn }) => ({ rung, name: drawn.letter }));
  const basis = basisLine(values, lettered, computed, context, `${values.id}.brick`);
  if (where === 'slide')
    return { blocks: [], stages: [{ kind: 'show', block: { kind: 'figure', figure } }], shelf: basis };
  return {
    blocks: [
      { kind: 'figure', figure },
      { kind: 'basis', inlines: basis },
    ],
  };
}

/** A level may drop rungs and cents, never shop, day or basis: three rungs at `short` and on the screen. */
const FEW = 3;

const LETTERS = ['A', 'B', 'C', 'D'] as const;

function shownAt({ id, rows }: Values, { rungs }: CupCostResult, context: ViewContext): readonly Shown[] {
  const { where, level, say, text } = context;
  const few = where === 'slide' || level === 'short';
  const oneKind = kindOf(rows) !== undefined;
  return rungs.slice(0, few ? FEW : rungs.length).map((rung, index): Shown => {
    const { eaten } = rung.row.plated;
    const number = `${id}.${rung.name}.${isWhole(context) ? 'bricks' : 'cost'}`;
    const drawn: CostRung = {
      letter: LETTERS[index] ?? '',
      sign: signOf(eaten),
      words: capital(oneKind ? eaten.form : eaten.name),
      value: rung.cost,
      ...(rung.cost === null ? { text: say('ask') } : { text: text(number), number }),
    };
    return { rung, drawn };
  });
}

function figureOf(
  values: Values,
  { worth, marks }: CupCostResult,
  shown: readonly Shown[],
  context: ViewContext,
): CostRungs {
  const { id } = values;
  const paper = context.where !== 'slide';
  return {
    kind: 'cost-rungs',
    id,
    mode: 'shown',
    worth,
    whole: isWhole(context),
    rungs: shown.map(({ drawn }) => drawn),
    posts:
      paper && shown.some(({ rung }) => rung.cost !== null)
        ? marks.map(({ at, number }) => ({ at, number, words: context.text(number) }))
        : [],
    numbers: [
      ...shown.flatMap(({ drawn }) => drawn.number ?? []),
      `${id}.brick`,
      ...(paper ? marks.map(({ number }) => number) : []),
    ],
    alternative: alternativeOf(values, shown, kindOf(values.rows), tellsSales(context), context),
  };
}

/** Forms and names of foods begin small in running text. */
function uncapital(words: string): string {
  return words.charAt(0).toLocaleLowerCase('en') + words.slice(1);
}
