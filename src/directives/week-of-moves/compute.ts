import {
  activityWeek,
  aerobicWeek,
  asGiven,
  FROM_LESSON,
  input,
  type Met,
  WEEK_GOAL,
  type Working,
} from '../../nutrition/index.js';
import type { ComputeContext, Computed, ComputedNumber } from '../contract.js';
import { readProblem } from '../problems.js';
import { DAYS, type Day, type MoveRow, type Values } from './schema.js';

/** Minutes of one day that count, vigorous ones doubled. */
export interface DayCount {
  readonly day: Day;
  readonly moderate: number;
  readonly vigorous: number;
  readonly strength: boolean;
  readonly balance: boolean;
}

export interface WeekResult extends Computed {
  readonly days: readonly DayCount[];
  readonly sum: { readonly moderate: number; readonly vigorous: number };
  /** Minutes a week at the lower and the upper end. */
  readonly goals: readonly [number, number];
  readonly aerobic: Met;
  readonly strength: boolean;
  /** `null` where it is not asked. */
  readonly balance: boolean | null;
  readonly seated: number;
  readonly light: number;
}

/** The small step that a page offers. House rule. */
const STEP = 10;

/**
 * Adds the week up: moderate minutes + 2 × vigorous ones against 150 to 300, days with strength work against 2, and
 * balance work for older adults. Moves done sitting count like others.
 */
export function compute(values: Values, { report }: ComputeContext): WeekResult | undefined {
  const { id, moves, group } = values;
  const week = activityWeek(
    moves.map(({ day, kind, minutes }) => ({ day: DAYS.indexOf(day) + 1, kind, minutes })),
    group,
  );
  if (!week.ok) {
    report.add(readProblem('directives/move', week, values.place));
    return undefined;
  }
  const days = DAYS.map((day) => countDay(day, moves));
  const over = days.find(({ moderate, vigorous }) => moderate + vigorous > MOST_A_DAY);
  if (over) {
    const reason = `${over.moderate + over.vigorous} minutes count on one day; a column holds ${MOST_A_DAY}.`;
    const place = moves.find(({ day }) => day === over.day)?.place ?? values.place;
    report.add(readProblem('directives/move', { reason, hint: 'Spread them over the week.' }, place));
    return undefined;
  }
  const { equivalent, meetsAerobic, meetsStrength, meetsBalance, strengthDays, missing } = week.value;
  const seated = moves.filter((move) => move.seated).length;
  const [moderate, vigorous] = [minutesOf(moves, 'moderate'), minutesOf(moves, 'vigorous')];
  const { from, to } = WEEK_GOAL.moderate;
  const guide = (name: string, value: number, unit: string) => input(name, value, unit, WEEK_GOAL.source);
  const short: Working = {
    formula: `max(0, from - (${equivalent.working.formula}))`,
    inputs: [guide('from', from, 'min'), ...equivalent.working.inputs],
  };
  return {
    numbers: [
      ...moves.map((move) =>
        number(id, `${move.key}.minutes`, 'min', `minutes of ${move.name}`, move.minutes),
      ),
      ...days.filter(counts).flatMap(({ day }) => dayNumbers(id, day, moves)),
      number(id, 'moderate', 'min', 'moderate minutes of the week', moderate),
      number(id, 'vigorous', 'min', 'vigorous minutes of the week', vigorous),
      number(id, 'total', 'min', 'minutes of the week that count', equivalent.value, equivalent.working),
      number(id, 'missing', 'min', 'minutes to the lower end', missing, short),
      number(id, 'strength-days', 'day', 'days with strength work', strengthDays),
      number(id, 'seated', '', 'moves that are done sitting', seated),
      number(
        id,
        'step',
        'min',
        'a small step on one day',
        STEP,
        asGiven(input('step', STEP, 'min', 'house')),
      ),
      number(
        id,
        'brick',
        'min',
        'minutes that a brick stands for',
        STEP,
        asGiven(input('brick', STEP, 'min', 'house')),
      ),
      number(
        id,
        'twice',
        '',
        'moderate minutes that a vigorous one counts as',
        WEEK_GOAL.vigorousCounts,
        asGiven(guide('counts', WEEK_GOAL.vigorousCounts, 'moderate min per vigorous min')),
      ),
      number(
        id,
        'goal-from',
        '',
        'minutes a week at the lower end',
        from,
        asGiven(guide('goal', from, 'min')),
      ),
      number(id, 'goal-to', '', 'minutes a week at the upper end', to, asGiven(guide('goal', to, 'min'))),
      number(
        id,
        'goal-days',
        'day',
        'days a week with strength work',
        WEEK_GOAL.strengthDays,
        asGiven(guide('goal', WEEK_GOAL.strengthDays, 'day')),
      ),
      {
        id: `${id}.goal`,
        value: null,
        low: from,
        high: to,
        unit: 'min',
        decimals: 0,
        formula: 'low = least; high = most',
        inputs: [guide('least', from, 'min'), guide('most', to, 'min')],
        sources: [WEEK_GOAL.source],
        what: 'moderate minutes a week that the guidelines ask of adults',
      },
    ],
    facts: { foods: [], nutrients: [], settings: { for: [group], words: moves.some(hot) ? ['heat'] : [] } },
    days,
    sum: { moderate, vigorous: WEEK_GOAL.vigorousCounts * vigorous },
    goals: [from, to],
    aerobic: meetsAerobic,
    strength: meetsStrength,
    balance: meetsBalance,
    seated,
    light: moves.filter(({ kind }) => kind === 'light').length,
  };
}
const MOST_A_DAY = 240;
/** Heat, sweat or drinking more in a move's name: sodium and fluids then matter. English, as the register's words. */
const HOT = /\b(hot|heat|sweat\w*|sauna|drink\w*)\b/i;
const hot = ({ name }: MoveRow) => HOT.test(name);

export function counts({ moderate, vigorous }: DayCount): boolean {
  return moderate + vigorous > 0;
}

function countDay(day: Day, all: readonly MoveRow[]): DayCount {
  const moves = all.filter((move) => move.day === day);
  return {
    day,
    moderate: minutesOf(moves, 'moderate'),
    vigorous: WEEK_GOAL.vigorousCounts * minutesOf(moves, 'vigorous'),
    strength: moves.some(({ kind }) => kind === 'strength'),
    balance: moves.some(({ kind }) => kind === 'balance'),
  };
}

function minutesOf(moves: readonly MoveRow[], kind: MoveRow['kind']): number {
  return moves.filter((move) => move.kind === kind).reduce((sum, { minutes }) => sum + minutes, 0);
}

/** A day stands without its unit over a column, whose head names it, and with it in words. */
function dayNumbers(id: string, day: Day, all: readonly MoveRow[]): ComputedNumber[] {
  const of = (kind: MoveRow['kind']) =>
    all.filter((move) => move.day === day && move.kind === kind).map(({ minutes }) => minutes);
  const week = aerobicWeek(of('moderate'), of('vigorous'));
  if (!week.ok) return [];
  const { value, working } = week.value.equivalent;
  return [
    number(id, `${day}.counts`, 'min', `minutes that count on ${day}`, value, working),
    number(id, `${day}.bricks`, '', `minutes that count on ${day}`, value, working),
  ];
}

/** Counts and minutes are printed in full; without a working they are what the lesson says. */
function number(
  id: string,
  name: string,
  unit: string,
  what: string,
  value: number | null,
  working: Working = asGiven(input('count', value, unit, FROM_LESSON)),
): ComputedNumber {
  return { id: `${id}.${name}`, value, unit, decimals: 1, ...working, sources: sourcesOf(working), what };
}

function sourcesOf({ inputs }: Working): string[] {
  return inputs.some(({ source }) => source === WEEK_GOAL.source) ? [WEEK_GOAL.source] : [];
}
