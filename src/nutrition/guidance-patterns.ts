import { ENERGY_NEEDS_2020, PATTERNS_2020 } from './guidance-2020.js';
import { PATTERN_2025 } from './guidance-2025.js';
import type { Published } from './published.js';
import { inWords, ok, type Result, refuse } from './result.js';

/**
 * Editions of the US dietary guidelines: 2020-2025, and 2025-2030 of 7 January 2026. There is no default, and
 * numbers of two editions never stand together: they count differently (cup-equivalents and servings).
 */
export const GUIDANCE_EDITIONS = ['us-2020', 'us-2025'] as const;
export type GuidanceEdition = (typeof GUIDANCE_EDITIONS)[number];

/** Ids of the sources of the editions. */
export const GUIDANCE_SOURCES: Readonly<Record<GuidanceEdition, string>> = {
  'us-2020': 'dga-2020-2025',
  'us-2025': 'dga-2025-2030',
};

export const DAILY_GROUPS = [
  'vegetables',
  'fruit',
  'grains',
  'whole grains',
  'refined grains',
  'dairy',
  'protein foods',
  'oils',
] as const;
export type DailyGroup = (typeof DAILY_GROUPS)[number];

export const WEEKLY_GROUPS = [
  'dark green vegetables',
  'red and orange vegetables',
  'beans, peas and lentils',
  'starchy vegetables',
  'other vegetables',
  'meats, poultry and eggs',
  'nuts, seeds and soy',
] as const;
export type WeeklyGroup = (typeof WEEKLY_GROUPS)[number];

/** One energy level of the 2020 pattern. */
export interface PatternRow {
  readonly kcal: number;
  readonly daily: Readonly<Record<DailyGroup, number>>;
  readonly weekly: Readonly<Record<WeeklyGroup, number>>;
  readonly seafoodPerWeek: { readonly low: number; readonly high: number };
  readonly otherUsesKcal: number;
}

export type PatternUnit = 'cup-equivalent' | 'ounce-equivalent' | 'g' | 'kcal' | 'serving';

/** One amount of a pattern. `low` and `high` are the same where one figure is given, `null` where it is not known. */
export interface PatternAmount extends Published {
  readonly edition: GuidanceEdition;
  readonly kcal: number;
  readonly group: DailyGroup | WeeklyGroup | 'seafood' | 'other uses';
  /** Weekly amounts are not daily ones; nobody divides them by seven. */
  readonly per: 'day' | 'week';
  readonly low: number | null;
  readonly high: number | null;
  readonly unit: PatternUnit;
}

/** The energy levels of both editions, in kcal. Up to 1400 they are for children of 2 to 8 years. */
export const PATTERN_LEVELS: readonly number[] = PATTERNS_2020.map(({ kcal }) => kcal);

/**
 * The food groups of an edition at an energy level in kcal a day. Refuses a level that the edition does not
 * print: patterns are not drawn between two levels. Of the 2025 edition only part of the level of 2000 is known;
 * all else has `null`, which is not known and not none.
 */
export function patternAt(edition: GuidanceEdition, kcal: number): Result<readonly PatternAmount[]> {
  const row = PATTERNS_2020.find((one) => one.kcal === kcal);
  if (row === undefined) {
    return refuse(
      `There is no pattern at ${kcal} kcal.`,
      `Take one of the printed levels: ${inWords(PATTERN_LEVELS.map(String))}.`,
      nearestLevels(kcal),
    );
  }
  return ok(edition === 'us-2020' ? amounts2020(row) : amounts2025(kcal));
}

/** How active somebody is, in the words of the 2020 edition. */
export const GUIDANCE_ACTIVITIES = ['sedentary', 'moderately active', 'active'] as const;
export type GuidanceActivity = (typeof GUIDANCE_ACTIVITIES)[number];

/**
 * The energy need that an edition prints for an age from 2 years, a sex and an activity, in kcal a day: a level
 * for choosing a pattern, not a measurement. Bands end on the birthday. Refuses under 2 years, ages that are no
 * age, and the 2025 edition, whose table is not known.
 */
export function guidanceEnergyNeed(
  edition: GuidanceEdition,
  sex: 'female' | 'male',
  years: number,
  activity: GuidanceActivity,
): Result<number> {
  if (edition !== 'us-2020') {
    return refuse(
      `The energy needs of ${GUIDANCE_SOURCES[edition]} are not known.`,
      'Name the level yourself.',
    );
  }
  const row = ENERGY_NEEDS_2020[sex].findLast(({ from }) => years >= from);
  if (row === undefined || !(years < 130)) {
    return refuse(`The edition gives no energy need at ${years} years.`, 'It begins at 2 years.');
  }
  const [sedentary, moderate, active] = row.kcal;
  return ok(activity === 'sedentary' ? sedentary : activity === 'active' ? active : moderate);
}

/** The one edition that all items belong to. Refuses items of two editions, and no items at all. */
export function oneEdition(items: readonly { readonly edition: GuidanceEdition }[]): Result<GuidanceEdition> {
  const [first, ...more] = new Set(items.map(({ edition }) => edition));
  if (first === undefined)
    return refuse('No edition of the guidance is named.', 'Name one; there is no default.');
  return more.length === 0
    ? ok(first)
    : refuse(
        `Numbers of ${inWords([first, ...more])} stand together.`,
        'Take all of them from one edition; the editions count differently.',
      );
}

const DAILY_UNITS: Readonly<Record<DailyGroup, PatternUnit>> = {
  vegetables: 'cup-equivalent',
  fruit: 'cup-equivalent',
  grains: 'ounce-equivalent',
  'whole grains': 'ounce-equivalent',
  'refined grains': 'ounce-equivalent',
  dairy: 'cup-equivalent',
  'protein foods': 'ounce-equivalent',
  oils: 'g',
};

function weeklyUnit(group: WeeklyGroup): PatternUnit {
  return group === 'meats, poultry and eggs' || group === 'nuts, seeds and soy'
    ? 'ounce-equivalent'
    : 'cup-equivalent';
}

function amounts2020(row: PatternRow): readonly PatternAmount[] {
  const base = {
    edition: 'us-2020',
    kcal: row.kcal,
    source: `${GUIDANCE_SOURCES['us-2020']} table A3-2`,
    checked: 'copies',
  } as const;
  const day = { ...base, per: 'day' } as const;
  const week = { ...base, per: 'week' } as const;
  return [
    ...DAILY_GROUPS.map((group) => ({
      ...day,
      group,
      low: row.daily[group],
      high: row.daily[group],
      unit: DAILY_UNITS[group],
      ...(group === 'whole grains' ? { note: 'at least' } : {}),
    })),
    ...WEEKLY_GROUPS.map((group) => ({
      ...week,
      group,
      low: row.weekly[group],
      high: row.weekly[group],
      unit: weeklyUnit(group),
    })),
    { ...week, group: 'seafood', ...row.seafoodPerWeek, unit: 'ounce-equivalent' },
    {
      ...day,
      group: 'other uses',
      low: row.otherUsesKcal,
      high: row.otherUsesKcal,
      unit: 'kcal',
      note: 'at most',
    },
  ];
}

function amounts2025(kcal: number): readonly PatternAmount[] {
  return DAILY_GROUPS.map((group) => {
    const given = PATTERN_2025.kcal === kcal ? PATTERN_2025.daily[group] : undefined;
    return {
      edition: 'us-2025',
      kcal,
      group,
      per: 'day',
      low: given?.low ?? null,
      high: given?.high ?? null,
      unit: 'serving',
      source: GUIDANCE_SOURCES['us-2025'],
      checked: 'copies',
    };
  });
}

function nearestLevels(kcal: number): string[] {
  return [...PATTERN_LEVELS]
    .sort((a, b) => Math.abs(a - kcal) - Math.abs(b - kcal))
    .slice(0, 2)
    .map(String);
}
