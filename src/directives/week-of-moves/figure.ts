import type { WeekBricks } from '../../figures/index.js';
import type { ViewContext } from '../contract.js';
import { fittingLabel } from '../words.js';
import { counts, type DayCount, type WeekResult } from './compute.js';
import type { Values } from './schema.js';

/** The week as bricks. A blank knows no minutes: it waits for the reader's own week. */
export function figureOf(values: Values, computed: WeekResult, context: ViewContext): WeekBricks {
  const { say, text, where } = context;
  const { id } = values;
  const blank = where === 'worksheet';
  const shown = computed.days.filter(counts);
  return {
    kind: 'week-bricks',
    id,
    mode: blank ? 'blank' : where === 'key' ? 'key' : 'shown',
    days: computed.days.map((day) => ({
      name: say(day.day),
      moderate: blank ? 0 : day.moderate,
      vigorous: blank ? 0 : day.vigorous,
      text: blank || !counts(day) ? '' : text(`${id}.${day.day}.bricks`),
      number: blank || !counts(day) ? `${id}.brick` : `${id}.${day.day}.bricks`,
      strength: !blank && day.strength,
      balance: !blank && day.balance,
    })),
    sum: {
      ...(blank ? { moderate: 0, vigorous: 0 } : computed.sum),
      text: blank ? '' : text(`${id}.total`),
      number: blank ? `${id}.brick` : `${id}.total`,
    },
    goals: ['goal-from', 'goal-to'].map((name, i) => ({
      at: computed.goals[i] ?? 0,
      words: text(`${id}.${name}`),
    })),
    words: {
      days: say('days-head'),
      sum: say('sum-head'),
      brick: say('brick', { brick: text(`${id}.brick`) }),
      vigorous: say('vigorous-key'),
      strength: say('strength-key'),
      balance: say('balance-key'),
      balanceLetter: say('balance-letter'),
    },
    numbers: [
      `${id}.brick`,
      `${id}.goal-from`,
      `${id}.goal-to`,
      ...(blank ? [] : [`${id}.total`, ...shown.map(({ day }) => `${id}.${day}.bricks`)]),
    ],
    alternative: {
      label: fittingLabel([say('label', endsOf(values)), say('label-bare')]),
      reading: blank
        ? say('reading-blank', goalSlots(id, context))
        : readingOf(values, computed, shown, context),
      table: {
        caption: say('caption'),
        head: [say('day'), say('minutes'), say('marks')],
        rows: computed.days.map((day) => [
          say(day.day),
          blank ? say('to-fill') : counts(day) ? text(`${id}.${day.day}.bricks`) : say('none'),
          blank ? say('to-fill') : marksOf(day, context),
        ]),
      },
    },
  };
}

/** The first and the last move, which set this week apart from others. */
function endsOf({ moves }: Values): { readonly first: string; readonly last: string } {
  return { first: moves[0]?.name ?? '', last: moves.at(-1)?.name ?? '' };
}

function goalSlots(id: string, { text }: ViewContext): Record<string, string> {
  return { brick: text(`${id}.brick`), from: text(`${id}.goal-from`), to: text(`${id}.goal-to`) };
}

function readingOf(
  { id }: Values,
  { days }: WeekResult,
  shown: readonly DayCount[],
  context: ViewContext,
): string {
  const { say, text, list } = context;
  const named = (which: (day: DayCount) => boolean) => days.filter(which).map(({ day }) => say(day));
  const strength = named((day) => day.strength);
  const balance = named((day) => day.balance);
  const each = shown.map(({ day }) =>
    say('reading-day', { day: say(day), minutes: text(`${id}.${day}.bricks`) }),
  );
  return [
    each.length > 0 ? say('reading-days', { days: list(each) }) : say('reading-none'),
    say('reading-sum', { ...goalSlots(id, context), total: text(`${id}.total`) }),
    ...(strength.length > 0 ? [say('reading-strength', { days: list(strength) })] : []),
    ...(balance.length > 0 ? [say('reading-balance', { days: list(balance) })] : []),
  ].join(' ');
}

function marksOf({ strength, balance }: DayCount, { say, list }: ViewContext): string {
  const marks = [...(strength ? [say('strength')] : []), ...(balance ? [say('balance')] : [])];
  return marks.length > 0 ? list(marks) : say('none');
}
