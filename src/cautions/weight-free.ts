import type { Pulled } from './facts.js';

/**
 * What stands on the sheet without weight: everything but the lines that speak of the page with weight on it, such as
 * "skip this page". Those that the lesson calls by name stay.
 */
export function withoutWeight(pulled: readonly Pulled[]): readonly Pulled[] {
  return pulled.filter(
    ({ caution, reasons }) => caution.guards !== 'weight' || reasons.some(({ by }) => by === 'lesson'),
  );
}
