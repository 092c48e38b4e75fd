import type { Inline, SourceLine } from '../document/index.js';
import { formatDate } from '../languages/index.js';
import { isSource, type Source, type Sources, sourceBrief } from '../records/index.js';
import { pageTerms } from './terms.js';

/** Numbers the sources of one sheet or deck in the order in which they are met. */
export interface SourceNumbers {
  /** The same text with each pointer turned into its source's number. */
  readonly number: (inlines: readonly Inline[]) => Inline[];
  readonly list: () => readonly SourceLine[];
}

/** `language` is that of the words about a source's state, not of the source. */
export function createSourceNumbers(sources: Sources, language: string): SourceNumbers {
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
        if (!isSource(source)) return [];
        const state = stateOf(source, language);
        return [
          {
            id,
            number: index + 1,
            words: sourceBrief(source),
            ...(state === undefined ? {} : { state }),
            ...(source.url ? { href: source.url } : {}),
          },
        ];
      }),
  };
}

/** What a reader should know of a source before trusting it: that it was not read, or how old it is. */
function stateOf({ seen, dataDate, accessed }: Source, language: string): string | undefined {
  const say = pageTerms(language);
  if (seen === 'restated') return say('source-restated');
  if (seen === 'from memory') return say('source-memory');
  if (dataDate !== undefined) return say('source-data', { date: formatDate(dataDate, language) });
  if (accessed === undefined) return undefined;
  return say(seen === 'in part' ? 'source-part' : 'source-read', { date: formatDate(accessed, language) });
}
