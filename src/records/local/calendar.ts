/** Days of a month in the Gregorian calendar; month from 1 to 12. */
function daysIn(year: number, month: number): number {
  if (month === 2) return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}

function parts(iso: string): readonly [number, number, number] | undefined {
  const m = /^(\d{4})-(\d{2})-(\d{2})$/.exec(iso);
  if (!m) return undefined;
  const [year, month, day] = [Number(m[1]), Number(m[2]), Number(m[3])];
  return month >= 1 && month <= 12 && day >= 1 && day <= daysIn(year, month) ? [year, month, day] : undefined;
}

/** True for a day that exists, written as `2027-03-01`. */
export function isDay(text: string): boolean {
  return parts(text) !== undefined;
}

/**
 * The day so many months later; the last day of the month when the month is too short
 * (2026-08-31 and 6 months → 2027-02-28). Days written this way sort as text. Throws for no day.
 */
export function monthsLater(iso: string, months: number): string {
  const from = parts(iso);
  if (!from) throw new Error(`${iso} is no day.`);
  const [year, month, day] = from;
  const count = year * 12 + (month - 1) + months;
  const y = Math.floor(count / 12);
  const m = (count % 12) + 1;
  const pad = (n: number, width: number) => String(n).padStart(width, '0');
  return `${pad(y, 4)}-${pad(m, 2)}-${pad(Math.min(day, daysIn(y, m)), 2)}`;
}
