import { ok, type Result, refuse } from './result.js';

/** Units of time in kitchens. Exact: a minute is 60 seconds, an hour 60 minutes, a day 24 hours (SI brochure, table 8). */
const SECONDS = { s: 1, min: 60, h: 3600, days: 86_400 } as const;
export type TimeUnit = keyof typeof SECONDS;

/** A length of time. */
export interface Time {
  readonly value: number;
  readonly unit: TimeUnit;
}

export function isTimeUnit(unit: string): unit is TimeUnit {
  return Object.hasOwn(SECONDS, unit);
}

/** The same time in another unit. */
export function convertTime({ value, unit }: Time, to: TimeUnit): Time {
  return { value: unit === to ? value : (value * SECONDS[unit]) / SECONDS[to], unit: to };
}

/**
 * Whether food that stood or was stored so long may be kept: up to the limit and on it, yes; over it, no. A time below
 * zero, or one that is no number, is refused and never passes as safe.
 */
export function withinTime(found: Time, limit: Time): Result<boolean> {
  if (!(found.value >= 0) || !(limit.value > 0) || !Number.isFinite(found.value + limit.value))
    return refuse('A time has to be zero or more.', 'Write how long the food stood.');
  return ok(convertTime(found, limit.unit).value <= limit.value);
}
