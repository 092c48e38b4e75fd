import { createReport } from '../diagnostics/index.js';
import { type Block, numbersIn, type ShownNumber, type Stage } from '../document/index.js';
import type { Level } from '../reading/index.js';
import { isSource, sourceWords } from '../records/index.js';
import { deckFor } from './deck-for.js';
import { HANDOUT_LEVELS } from './settings.js';
import { type Desk, makeSheet } from './sheets.js';
import type { Drawers } from './tables.js';

/** One number with everything behind it and everywhere it stands. */
export interface NumberStory {
  readonly number: ShownNumber;
  /** The value before rounding, in words. */
  readonly worked: string;
  readonly sources: readonly string[];
  /** Sheets and slides that show it. */
  readonly places: readonly string[];
}

export async function numberStory(
  desk: Desk,
  drawers: Pick<Drawers, 'fonts' | 'frames'>,
  id: string,
): Promise<NumberStory | undefined> {
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
  return { number, worked, sources, places: await placesOf(desk, drawers, id) };
}

async function placesOf(
  desk: Desk,
  drawers: Pick<Drawers, 'fonts' | 'frames'>,
  id: string,
): Promise<string[]> {
  const quiet = createReport();
  const shows = (kind: 'handout' | 'worksheet' | 'key' | 'staff', level: Level) => {
    const sheet = makeSheet(desk, kind, level, false, quiet);
    return numbersIn([{ kind: 'paragraph', inlines: sheet.message }, ...sheet.blocks]).includes(id);
  };
  const sheets = HANDOUT_LEVELS.flatMap((level) =>
    (['handout', 'worksheet', 'key'] as const)
      .filter((kind) => shows(kind, level))
      .map((kind) => `${kind}, ${level}`),
  );
  const { parts } = desk.computed.lesson;
  const hasStaff = parts.some((part) => part.kind === 'holder' && part.name === 'staff');
  if (hasStaff && shows('staff', 'staff')) sheets.push("leader's page");
  const deck = await deckFor(desk, drawers, false, quiet);
  const slides = deck.slides.flatMap(({ number, title, shelf, stage, say }) => {
    const words: Block = { kind: 'paragraph', inlines: [...title, ...shelf] };
    const shown = numbersIn([words, ...onStage(stage), ...say]);
    return shown.includes(id) ? [`slide ${number}`] : [];
  });
  return [...sheets, ...new Set(slides), 'review sheet', 'numbers.json'];
}

function onStage(stage: Stage): readonly Block[] {
  switch (stage.kind) {
    case 'show':
      return [stage.block];
    case 'ask':
    case 'answer':
      return [stage.question];
    case 'words':
      return stage.blocks;
    case 'do':
      return stage.steps.map((inlines) => ({ kind: 'paragraph', inlines }));
    case 'open':
    case 'say':
    case 'caution':
    case 'sources':
      return [];
  }
}
