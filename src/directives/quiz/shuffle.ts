/**
 * The same order for the same seed on every machine, so that a reprint matches its key. Fisher and
 * Yates's shuffle over a linear congruential generator (constants of Numerical Recipes, Press et al.).
 */
export function shuffle<T>(items: readonly T[], seed: number): T[] {
  const out = [...items];
  let state = seed >>> 0;
  const next = (below: number) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
  next(1);
  for (let i = out.length - 1; i > 0; i--) {
    const j = next(i + 1);
    const [a, b] = [out[i], out[j]];
    if (a !== undefined && b !== undefined) {
      out[i] = b;
      out[j] = a;
    }
  }
  return out;
}
