import { createReport } from '../diagnostics/index.js';
import { numbersIn, type ShownNumber } from '../document/index.js';
import { isSource, sourceWords } from '../records/index.js';
import type { Fonts } from '../text/index.js';
import { deckFor } from './deck-for.js';
import { HANDOUT_LEVELS } from './settings.js';
import { type Desk, makeSheet } from './sheets.js';

/** One number with everything behind it and everywhere it stands. */
export interface NumberStory {
  readonly number: ShownNumber;
  /** The value before rounding, in words. */
  readonly worked: string;
  readonly sources: readonly string[];
  /** Sheets and slides that show it. */
  readonly places: readonly string[];
}

export function numberStory(desk: Desk, fonts: Fonts, id: string): NumberStory | undefined {
  const number = desk.computed.numbers.get(id);
  if (!number) return undefined;
  const { low, high, value, unit } = number;
  const worked =
    low !== undefined && high !== undefined
      ? `${low} to ${high} ${unit}`
      : value === null
        ? 'not known'
        : `${value} ${unit}`;
  const sources = number.sources.map((source) => {
    const found = desk.tables.sources.find(source);
    return isSource(found) ? sourceWords(found) : source;
  });
  return { number, worked, sources, places: placesOf(desk, fonts, id) };
}

function placesOf(desk: Desk, fonts: Fonts, id: string): string[] {
  const quiet = createReport();
  const sheets = HANDOUT_LEVELS.flatMap((level) =>
    (['handout', 'worksheet', 'key'] as const).flatMap((kind) => {
      const sheet = makeSheet(desk, kind, level, false, quiet);
      return numbersIn([{ kind: 'paragraph', inlines: sheet.message }, ...sheet.blocks]).includes(id)
        ? [`${kind}, ${level}`]
        : [];
    }),
  );
  const slides = deckFor(desk, fonts, false, quiet).slides.flatMap((slide) => {
    const figure = slide.stage.kind === 'show' ? [slide.stage.block] : [];
    const shown = numbersIn([
      { kind: 'paragraph', inlines: [...slide.title, ...slide.shelf] },
      ...figure,
      ...slide.say,
    ]);
    return shown.includes(id) ? [`slide ${slide.number}`] : [];
  });
  return [...sheets, ...slides, 'review sheet', 'numbers.json'];
}
