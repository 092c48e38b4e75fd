import type { DirectiveFacts, Facts } from '../cautions/index.js';
import { formatList } from '../languages/index.js';
import { nutrientsAtRisk, PATTERNS_AT_RISK, type PatternAtRisk } from '../nutrition/index.js';

/** So many nutrients of each way of eating are named. */
const NAMED = 3;

/** Topics that mean a way of eating under another name. */
const MEANT: Readonly<Record<string, PatternAtRisk>> = { 'carbohydrate down': 'very low carbohydrate' };

/**
 * The nutrients that the ways of eating of a lesson may leave short, in the order of the table: of its topics and of
 * the needs that its directives turn dishes for. Nothing when it has none.
 */
export function nutrientsSlot(
  topics: Facts['topics'],
  directives: readonly Pick<DirectiveFacts, 'settings'>[],
  language: string,
): string | undefined {
  const names = [
    ...topics.map(({ name }) => name),
    ...directives.flatMap(({ settings }) => settings?.need ?? []),
  ];
  const patterns = new Set(
    names.flatMap((name) => MEANT[name] ?? PATTERNS_AT_RISK.find((one) => one === name) ?? []),
  );
  const nutrients = [...patterns].flatMap((pattern) =>
    nutrientsAtRisk(pattern)
      .slice(0, NAMED)
      .map(({ nutrient }) => nutrient),
  );
  return nutrients.length > 0 ? formatList([...new Set(nutrients)], language) : undefined;
}
