import type { Passage } from '../../cautions/index.js';
import type { Place } from '../../diagnostics/index.js';

/** The place of words in a passage: their own when it is one stretch of a line, else the passage's. */
export function placeIn({ place, text }: Passage, at: number, words: string): { readonly place?: Place } {
  if (!place) return {};
  if (place.endLine !== place.line || place.endColumn !== place.column + text.length) return { place };
  const column = place.column + at;
  return {
    place: {
      file: place.file,
      line: place.line,
      column,
      endLine: place.line,
      endColumn: column + words.length,
    },
  };
}
