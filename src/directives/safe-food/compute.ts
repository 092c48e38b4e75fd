import {
  isTimeUnit,
  onOtherScale,
  safeRounding,
  type TemperatureUnit,
  withinTime,
} from '../../nutrition/index.js';
import type { ComputeContext, Computed, ComputedNumber, Measures } from '../contract.js';
import { readProblem } from '../problems.js';
import { ALL_FOOD, FOUND, type Found, LINES, type Limit, type Limits, type Values } from './schema.js';

/** A thing that is found, with the answer; `number` is how long it stood or was kept. */
export interface Judged {
  readonly found: Found;
  readonly keep: boolean;
  readonly number?: string;
  readonly limit?: string;
}

/** What readers of one family of measures see: the ids of the numbers that fill each limit's slot. */
export interface Card {
  readonly slots: Readonly<Record<string, readonly string[]>>;
  readonly sources: readonly string[];
  readonly judged: readonly Judged[];
}

export interface SafeResult extends Computed {
  readonly cards: Readonly<Record<Measures, Card>>;
}

/** Limits that a card may also need where a country's table has them. */
const IF_KNOWN = ['rest-time', 'core-time', 'hot-day', 'hot-day-time'];

/** Every limit as a number, temperatures on both scales, and each thing found held against its limit. */
export function compute(values: Values, { report }: ComputeContext): SafeResult | undefined {
  const us = cardOf(values, values.us, '');
  const metric = cardOf(values, values.metric, '-metric');
  const lacking = us.lacking ?? metric.lacking;
  if (lacking !== undefined) {
    report.add(readProblem('safe-food/topic', { reason: `The register holds no ${lacking}.` }, values.place));
    return undefined;
  }
  const settings = { topic: values.topics, ...(values.tasting ? { tasting: ['yes'] } : {}) };
  return {
    numbers: [...us.numbers, ...metric.numbers],
    facts: { foods: [], nutrients: [], settings },
    cards: { us: us.card, metric: metric.card },
  };
}

function cardOf(values: Values, limits: Limits, suffix: string) {
  const needed = [...values.topics.map((topic) => LINES[topic]), ALL_FOOD].flatMap((lines) => [
    ...lines.limits,
  ]);
  const names = [...new Set([...needed, ...IF_KNOWN.filter((name) => limits[name])])];
  const numbers: ComputedNumber[] = [];
  const slots: Record<string, readonly string[]> = {};
  let lacking: string | undefined;
  for (const name of names) {
    const limit = limits[name];
    const made = limit?.source
      ? limitNumbers(`${values.id}.${name}`, limit, limit.source, suffix)
      : undefined;
    if (!made) lacking ??= name;
    else {
      numbers.push(...made);
      const one = values.units === 'F' ? '°F' : values.units === 'C' ? '°C' : undefined;
      slots[name] = made.filter(({ unit }) => !one || !/^°/.test(unit) || unit === one).map(({ id }) => id);
    }
  }
  const judged = FOUND.filter((found) => values.topics.includes(found.topic)).flatMap((found) => {
    const one = judge(values.id, found, limits, suffix);
    if (one?.made) numbers.push(one.made);
    return one ? [one.judged] : [];
  });
  const sources = [...new Set(numbers.flatMap((number) => number.sources))];
  return { numbers, lacking, card: { slots, sources, judged: judged.slice(0, MOST_FOUND) } };
}

const MOST_FOUND = 6;

/** A temperature on both scales, each rounded the safe way; a time as it is. */
function limitNumbers(id: string, limit: Limit, source: string, suffix: string): ComputedNumber[] {
  const { value, unit, kind, for: what } = limit;
  const own = {
    value,
    unit,
    formula: 'limit',
    inputs: [{ name: 'limit', value, unit, source }],
    sources: [source],
    what,
    decimals: 0,
  };
  if (kind === undefined || !isScale(unit)) return [{ ...own, id: `${id}${suffix}` }];
  const other = onOtherScale({ value, unit }, source);
  const rounds = safeRounding(kind);
  const name = (scale: TemperatureUnit) => `${id}.${scale === '°F' ? 'fahrenheit' : 'celsius'}${suffix}`;
  return [
    { ...own, id: name(unit), rounds },
    {
      ...own,
      ...other.working,
      id: name(other.unit),
      value: other.value,
      unit: other.unit,
      rounds,
      what: `${what}, rounded the safe way`,
    },
  ];
}

function isScale(unit: string): unit is TemperatureUnit {
  return unit === '°F' || unit === '°C';
}

function judge(
  id: string,
  found: Found,
  limits: Limits,
  suffix: string,
): { readonly judged: Judged; readonly made?: ComputedNumber } | undefined {
  if ('keep' in found) return { judged: { found, keep: found.keep } };
  const limit = limits[found.limit];
  if (!limit || !isTimeUnit(limit.unit)) return undefined;
  const value = limit.value + found.over;
  const keep = withinTime({ value, unit: limit.unit }, { value: limit.value, unit: limit.unit });
  if (!keep.ok) return undefined;
  const number = `${id}.${found.says}${suffix}`;
  return {
    judged: { found, keep: keep.value, number, limit: found.limit },
    made: {
      id: number,
      value,
      unit: limit.unit,
      decimals: 1,
      formula: 'limit + over',
      inputs: [
        { name: 'limit', value: limit.value, unit: limit.unit, source: limit.source ?? 'house' },
        { name: 'over', value: found.over, unit: limit.unit, source: 'house', note: 'clear of the limit' },
      ],
      sources: [],
      what: 'how long the thing of the exercise stood or was kept',
    },
  };
}
