import {
  boxesOf,
  slideCautions,
  slideFigureCautions,
  slidePointer,
  standingLines,
  standingSentences,
  unconfirmedLine,
} from '../cautions/index.js';
import { createReport, type Report } from '../diagnostics/index.js';
import type { Deck, Inline } from '../document/index.js';
import { partCautions, shelfFits } from '../outputs/slides/index.js';
import type { Fonts } from '../text/index.js';
import { makeDeck } from './deck.js';
import { type Desk, newestData, settingFor, viewerFor } from './sheets.js';
import { createSourceNumbers } from './sources.js';
import { makeStamp } from './stamp.js';
import { pageTerms } from './terms.js';

/** The deck of a lesson, with its caution slides, shelves and sources. */
export function deckFor(desk: Desk, fonts: Fonts, draft: boolean, report: Report): Deck {
  const quiet = createReport();
  const { pulled, facts, computed, language } = desk;
  const setting = settingFor(desk, 'slides', 'plain');
  const viewer = viewerFor(desk, 'slides', 'plain', report);
  const say = pageTerms(language);
  const [all] = slideCautions(pulled, setting, report, Number.POSITIVE_INFINITY);
  const lines = standingLines(pulled, facts, setting);
  const sentences = standingSentences(lines, setting, report).flatMap((s) => s.inlines);
  const spaced = (list: readonly Inline[]) =>
    list.flatMap((inline, index) => (index > 0 ? [{ text: ' ' }, inline] : [inline]));
  const unconfirmed = unconfirmedLine(boxesOf(pulled), language);
  const dataDate = newestData(desk);
  const { site } = desk.local;
  const stamp = makeStamp(computed.lesson, {
    kind: 'slides',
    level: 'plain',
    language,
    on: desk.on,
    content: [
      computed.lesson.text,
      computed.numbers.all,
      boxesOf(pulled).map((p) => p.caution.wordings[language]),
    ],
    draft,
    ...(dataDate ? { dataDate } : {}),
  });
  const [first = [], ...rest] = sentences.map((inline) => [inline]);
  return makeDeck(computed, {
    viewer,
    cautions: partCautions(all?.lines ?? [], language, fonts).map((lines) => ({
      lines,
      whoToAsk: all?.whoToAsk ?? '',
    })),
    shelf: {
      first,
      caution: spaced([...rest.flat(), ...(unconfirmed ? [{ text: unconfirmed }] : [])]),
      figure: (id, slide) => {
        const here = slideFigureCautions(pulled, id, setting, report);
        const notes = here.notes.flatMap((note) => [...note.inlines, { text: ' ' }]);
        const pointer = slidePointer(here.headings, slide, language);
        return pointer ? [...notes, { text: `${pointer} ` }] : notes;
      },
      fits: (words) => shelfFits(words, language, fonts),
    },
    stops: (id) => {
      const { stops } = slideFigureCautions(pulled, id, setting, quiet);
      return stops.length > 0 ? { lines: stops, whoToAsk: '' } : undefined;
    },
    stamp,
    ...(stamp.draft ? { draft: stamp.draft } : {}),
    sources: createSourceNumbers(desk.tables.sources),
    where: site ? `${site.hall.name}, ${site.town}.` : '',
    audience: say('audience', { audience: computed.lesson.front.audience }),
  });
}
