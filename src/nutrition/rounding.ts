/**
 * Rounding as arithmetic. How many digits a page shows is decided where pages are made; values in
 * this folder stay unrounded.
 */

/**
 * The multiple of `step` nearest to `value`; halves go away from zero. A value that is a multiple but for
 * the noise of binary fractions counts as that multiple, so 2.675 to 0.01 is 2.68.
 * Throws on a step that is not above zero and on numbers that are not finite: a bug of ours.
 */
export function roundTo(value: number, step: number): number {
  const units = inSteps(value, step);
  const whole = nearlyWhole(units) ?? Math.sign(units) * Math.floor(Math.abs(units) + 0.5 + NOISE);
  return fromSteps(whole, step);
}

/** A range widened to multiples of `step`: the low end goes down, the high end up, ends on a step stay. */
export function roundOutward(
  range: { readonly low: number; readonly high: number },
  step: number,
): { low: number; high: number } {
  const low = inSteps(range.low, step);
  const high = inSteps(range.high, step);
  return {
    low: fromSteps(nearlyWhole(low) ?? Math.floor(low), step),
    high: fromSteps(nearlyWhole(high) ?? Math.ceil(high), step),
  };
}

const NOISE = 1e-9;

function inSteps(value: number, step: number): number {
  if (!(step > 0) || !Number.isFinite(step)) throw new RangeError(`Cannot round to steps of ${step}.`);
  if (!Number.isFinite(value)) throw new RangeError(`Cannot round ${value}.`);
  return value / step;
}

function nearlyWhole(units: number): number | null {
  const whole = Math.round(units);
  return Math.abs(units - whole) <= NOISE * Math.max(1, Math.abs(units)) ? whole : null;
}

/** Multiplying back leaves noise such as 0.30000000000000004; the digits of the step say where to cut it. */
function fromSteps(whole: number, step: number): number {
  const digits = Math.min(20, decimalsOf(step));
  return Number((whole * step).toFixed(digits)) + 0;
}

function decimalsOf(step: number): number {
  const [mantissa = '', exponent = '0'] = String(step).split('e');
  const written = mantissa.split('.')[1]?.length ?? 0;
  return Math.max(0, written - Number(exponent));
}
