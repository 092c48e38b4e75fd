/**
 * A number as PDF operand: at most `digits` decimals, no exponent, no trailing zeros, never `-0`.
 * A number that is not finite is a bug of ours and throws.
 */
export function operand(value: number, digits = 3): string {
  if (!Number.isFinite(value))
    throw new Error(`A drawing holds a coordinate that is not a number: ${value}.`);
  const text = value.toFixed(digits);
  const short = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return short === '-0' ? '0' : short;
}

/** Several operands with a space between. */
export function operands(values: readonly number[], digits = 3): string {
  return values.map((v) => operand(v, digits)).join(' ');
}

/** Decimals that keep a coordinate exact to about 1/200 pt after it was scaled by `scale`. */
export function digitsFor(scale: number): number {
  if (!(scale > 0)) return 3;
  return Math.min(6, Math.max(0, Math.ceil(Math.log10(scale * 200))));
}
