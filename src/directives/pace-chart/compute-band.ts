import {
  type Adult,
  BAND_OVER,
  bandOn,
  dayOfMonth,
  GUIDELINE_FLOOR,
  input,
  intakeFlag,
  LOWEST_BMI,
  ruleOfThumb,
  unitRatio,
  usefulLoss,
  type WeightBand,
  weightBand,
  weightBaseline,
} from '../../nutrition/index.js';
import type { ComputeContext, Computed, ComputedNumber } from '../contract.js';
import { readProblem } from '../problems.js';
import { type ExerciseLine, exerciseLines } from './compute-lines.js';
import { marksFor, monthOfDay, postMonths } from './compute-months.js';
import {
  exampleNumbers,
  given,
  inUnit,
  lessNumber,
  number,
  span,
  UNITS,
  type WeightUnit,
} from './compute-numbers.js';
import type { BandValues } from './schema.js';

/** A place of the band, in the unit of its scale. */
export interface Point {
  readonly month: number;
  readonly least: number;
  readonly most: number;
}

/** The band in one unit. */
export interface Scale {
  readonly points: readonly Point[];
  readonly marks: readonly number[];
  readonly posts: readonly Point[];
  readonly gains: { readonly low: number; readonly high: number };
}

export interface BandResult extends Computed {
  readonly show: 'band';
  readonly scales: Readonly<Record<WeightUnit, Scale>>;
  /** Months of the posts, by which their numbers are called; the last is `stop` where the band stops. */
  readonly posts: readonly (number | 'stop')[];
  readonly stopped: boolean;
  /** Whether the rules of thumb can be held against it: one change from the start. */
  readonly ruled: boolean;
  readonly lines: readonly ExerciseLine[];
}

/** The larger of the two changes that the 2013 AHA/ACC/TOS guideline names, kcal a day; no group material goes beyond. */
const MOST_KCAL = 750;
/** A band that stops sooner shows nothing: the example is not one for eating less. */
const FEWEST_DAYS = 56;
const POINTS = 60;
/** A stop after so much of the months leaves no room beside it for its words; they stand below. */
const LATE = 0.6;

/** The dynamic model at the change, run over what the figure states. Refuses what is unsafe before anything is drawn. */
export function computeBand(values: BandValues, context: ComputeContext): BandResult | undefined {
  const { id, months } = values;
  const adult = adultOf(values);
  const band = safeBand(values, adult, context);
  if (!band) return undefined;
  const end = band.stopped ? monthOfDay(band.lastDay) : months;
  const named = postMonths(months, band.stopped ? end : undefined);
  const posts = [...named, ...(band.stopped ? (['stop'] as const) : [])];
  const dayOf = (post: number | 'stop') =>
    post === 'stop' ? band.lastDay : Math.min(dayOfMonth(post), band.lastDay);
  const scaleOf = (unit: WeightUnit): Scale => {
    const each = unitRatio('kg', unit);
    const at = (day: number): Point => {
      const found = bandOn(band, day);
      const { low, high } = found.ok ? found.value.range : { low: 0, high: 0 };
      return {
        month: Math.min(monthOfDay(day), end),
        least: Math.max(0, -high * each),
        most: Math.max(0, -low * each),
      };
    };
    const points = Array.from({ length: POINTS + 1 }, (_, index) =>
      at(Math.round((band.lastDay * index) / POINTS)),
    );
    const gains = usefulLoss(values.example.weight);
    const to = unitRatio(values.example.weight.unit, unit);
    return {
      points,
      marks: marksFor(points.at(-1)?.most ?? 0, band.stopped && end > months * LATE),
      posts: posts.map((post) => at(dayOf(post))),
      gains: gains.ok
        ? { low: (gains.value.low ?? 0) * to, high: (gains.value.high ?? 0) * to }
        : { low: 0, high: 0 },
    };
  };
  const scales = { lb: scaleOf('lb'), kg: scaleOf('kg') };
  const ruled = values.steps.length === 1 && !band.stopped;
  return {
    show: 'band',
    numbers: [
      ...exampleNumbers(id, values.example),
      ...statedNumbers(values),
      ...posts.flatMap((post) => postNumbers(id, post, dayOf(post), band)),
      ...(band.stopped ? [stopNumber(id, band.lastDay)] : []),
      ...UNITS.flatMap((unit) => [
        ...scales[unit].marks.map((at) =>
          given(`${id}.mark-${at}.${unit}`, 'mark', at, unit, 'house', 'a mark on the axis of the band'),
        ),
        gainsNumber(values, unit),
        ...(ruled ? ruleNumbers(values, unit) : []),
      ]),
    ],
    facts: { foods: [], nutrients: [], settings: { show: ['band'] } },
    scales,
    posts,
    stopped: band.stopped,
    ruled,
    lines: exerciseLines(adult, values),
  };
}

function adultOf({ example }: BandValues): Adult {
  const { age, height, weight } = example;
  return { sex: example.who === 'man' ? 'male' : 'female', age, height, weight };
}

/** The band, unless the register or the guideline speaks against the change or the example. */
function safeBand(
  values: BandValues,
  adult: Adult,
  { report, refuse }: ComputeContext,
): WeightBand | undefined {
  const { example, steps, months, changePlace } = values;
  const wrong = (reason: string, hint: string): undefined =>
    report.add(readProblem('pace-chart/change', { reason, hint }, changePlace)) as undefined;
  const most = Math.max(...steps.map(({ kcal }) => kcal));
  const baseline = weightBaseline({ adult, activity: BAND_OVER.activity[0] });
  if (!baseline.ok) {
    report.add(readProblem('pace-chart/example', baseline, example.place));
    return undefined;
  }
  const left = (baseline.value.intake.quantity.value ?? 0) - most;
  const flag = intakeFlag(adult.sex, left);
  if (flag === 'very-low-calorie') {
    refuse('R12', changePlace);
    return undefined;
  }
  if (flag !== 'ok')
    return wrong(
      `The change would leave the example less than ${GUIDELINE_FLOOR[adult.sex]} kcal a day, below the guideline’s range.`,
      'Make the change smaller, or choose another invented example.',
    );
  const plan = steps.map(({ fromMonth, kcal }) => ({
    fromDay: dayOfMonth(fromMonth - 1),
    change: { value: -kcal, unit: 'kcal' as const },
  }));
  // Compute knows no locale, so the stricter of 2 lb and 1 kg a week holds for both.
  const band = weightBand(adult, plan, months, 'lb');
  if (!band.ok) {
    // Age, index, change and intake were looked at, so what is left is the pace that is never drawn.
    refuse('R07', changePlace);
    return undefined;
  }
  if (band.value.pace.flag === 'too fast') refuse('R06', changePlace);
  if (most > MOST_KCAL)
    return wrong(
      `A change of ${most} kcal a day is more than ${MOST_KCAL}, the most that the guideline names.`,
      'Make the daily change smaller; a few hundred calories are a change that people keep.',
    );
  if (band.value.lastDay < FEWEST_DAYS && band.value.stopped) {
    refuse('R10', example.place);
    return undefined;
  }
  return band.value;
}

function postNumbers(id: string, post: number | 'stop', day: number, band: WeightBand): ComputedNumber[] {
  const found = bandOn(band, day);
  if (!found.ok) return [];
  const { range, working } = found.value;
  const [row, when] =
    post === 'stop' ? ['stop', 'where the band stops'] : [`month-${post}`, `after ${post} months`];
  return [
    ...(post === 'stop'
      ? []
      : [given(`${id}.${row}.months`, 'months', post, 'months', 'house', 'a month with a post on the band')]),
    ...UNITS.map((unit) =>
      lessNumber(
        `${id}.${row}.${unit}`,
        range,
        working,
        unit,
        `how much less the invented adult weighs ${when}`,
      ),
    ),
  ];
}

function stopNumber(id: string, day: number): ComputedNumber {
  return number(`${id}.stop.months`, {
    value: monthOfDay(day),
    unit: 'months',
    decimals: 0,
    rounds: 'down',
    formula: 'days / 365 * 12',
    inputs: [
      input('days', day, 'days', 'hall-2011', `the last day above a body mass index of ${LOWEST_BMI}`),
    ],
    what: 'months after which the band stops',
  });
}

/** What the band is run over, and where it stops. */
function statedNumbers({ id, steps, months }: BandValues): ComputedNumber[] {
  const { activity, fatPoints, kept } = BAND_OVER;
  return [
    ...steps.map(({ fromMonth, kcal }) =>
      given(
        `${id}.from-${fromMonth}.change`,
        'change',
        kcal,
        'kcal',
        'lesson',
        `less eaten a day from month ${fromMonth}`,
      ),
    ),
    ...steps.map(({ fromMonth }) =>
      given(
        `${id}.from-${fromMonth}.month`,
        'month',
        fromMonth,
        '',
        'lesson',
        'month from which a change holds',
      ),
    ),
    given(`${id}.months`, 'months', months, 'months', 'lesson', 'months that the band is drawn for'),
    span(`${id}.activity`, activity, '', 'house', 'activity levels that the band is run over', 1),
    given(
      `${id}.fat`,
      'points',
      fatPoints[1],
      '',
      'house',
      'points of body fat more and less that the band is run over',
    ),
    span(`${id}.kept`, [kept[0] * 100, kept[1] * 100], '%', 'house', 'share of the change that is kept to'),
    given(`${id}.lowest`, 'lowest', LOWEST_BMI, '', 'house', 'body mass index at which every band stops', 1),
  ];
}

function gainsNumber({ id, example }: BandValues, unit: WeightUnit): ComputedNumber {
  const { value } = example.weight;
  const each = unitRatio(example.weight.unit, unit);
  return number(`${id}.gains.${unit}`, {
    value: null,
    low: (value * 3 * each) / 100,
    high: (value * 5 * each) / 100,
    unit,
    formula: 'low = weight * from / 100 * each; high = weight * to / 100 * each',
    inputs: [
      input('weight', value, example.weight.unit, 'lesson'),
      input('from', 3, 'percent', 'aha-acc-tos-2013'),
      input('to', 5, 'percent', 'aha-acc-tos-2013'),
      input('each', each, `${unit} per ${example.weight.unit}`, 'definition of the units'),
    ],
    what: 'how much less from which health gains begin, for the invented adult',
  });
}

/** The published rules of thumb, as the band's check. */
function ruleNumbers({ id, steps }: BandValues, unit: WeightUnit): ComputedNumber[] {
  const { eventual, afterOneYear } = ruleOfThumb({ value: steps[0].kcal, unit: 'kcal' });
  const made = (name: string, { quantity, working }: typeof eventual, when: string) =>
    number(`${id}.${name}.${unit}`, {
      ...inUnit(quantity.value ?? 0, working, unit),
      what: `what the rule of thumb says of the change ${when}, for an average overweight adult`,
    });
  return [made('rule-year', afterOneYear, 'after about a year'), made('rule-end', eventual, 'in the end')];
}
