import type { Inline, SourceLine } from '../document/index.js';
import { isSource, type Sources, sourceBrief } from '../records/index.js';

/** Numbers the sources of one sheet or deck in the order in which they are met. */
export interface SourceNumbers {
  /** The same text with each pointer turned into its source's number. */
  readonly number: (inlines: readonly Inline[]) => Inline[];
  readonly list: () => readonly SourceLine[];
}

export function createSourceNumbers(sources: Sources): SourceNumbers {
  const order: string[] = [];
  const numberOf = (id: string): number => {
    if (!order.includes(id)) order.push(id);
    return order.indexOf(id) + 1;
  };
  return {
    number: (inlines) =>
      inlines.map((inline) =>
        inline.cite === undefined ? inline : { ...inline, text: String(numberOf(inline.cite)) },
      ),
    list: () =>
      order.flatMap((id, index): SourceLine[] => {
        const source = sources.find(id);
        return isSource(source)
          ? [
              {
                id,
                number: index + 1,
                words: sourceBrief(source),
                ...(source.url ? { href: source.url } : {}),
              },
            ]
          : [];
      }),
  };
}
