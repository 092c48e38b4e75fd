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
import type { Deck } from '../document/index.js';
import { measureSlides } from '../outputs/slides/index.js';
import { noticesFor } from '../records/local/index.js';
import { makeDeck } from './deck.js';
import { type Desk, newestData, settingFor, viewerFor } from './sheets.js';
import { createSourceNumbers } from './sources.js';
import { makeStamp } from './stamp.js';
import type { Drawers } from './tables.js';
import { pageTerms } from './terms.js';

/** The deck of a lesson, with its caution slides, shelves and sources. */
export async function deckFor(
  desk: Desk,
  drawers: Pick<Drawers, 'fonts' | 'frames'>,
  draft: boolean,
  report: Report,
): Promise<Deck> {
  const quiet = createReport();
  const { pulled, facts, computed, language } = desk;
  const setting = settingFor(desk, 'slides', 'plain');
  const viewer = viewerFor(desk, 'slides', 'plain', report);
  const say = pageTerms(language);
  const [all] = slideCautions(pulled, setting, report, Number.POSITIVE_INFINITY);
  const lines = standingLines(pulled, facts, setting);
  const sentences = standingSentences(lines, setting, report).flatMap((s) => s.inlines);
  const unconfirmed = unconfirmedLine(boxesOf(pulled), language);
  const stated = unconfirmed ? [{ text: unconfirmed }] : [];
  const dataDate = newestData(desk);
  const { site } = desk.local;
  const notices = noticesFor(desk.local.notices, 'slides', desk.on).map(({ words }) => words);
  const stamp = makeStamp(computed.lesson, {
    kind: 'slides',
    level: 'plain',
    language,
    on: desk.on,
    content: [
      computed.lesson.text,
      computed.numbers.all,
      boxesOf(pulled).map((p) => p.caution.wordings[language]),
      ...(notices.length > 0 ? [notices] : []),
    ],
    draft,
    ...(dataDate ? { dataDate } : {}),
  });
  const [first = [], ...rest] = sentences.map((inline) => [inline]);
  return makeDeck(computed, {
    viewer,
    fits: await measureSlides(drawers.fonts, drawers.frames, language),
    cautions: all ?? { lines: [], whoToAsk: '' },
    problem: (found) => report.add(found),
    shelf: {
      first,
      caution: rest,
      stop: stated,
      figure: (id, slide, stopsHere) => {
        const { notes, headings } = slideFigureCautions(pulled, id, setting, report);
        // On the shelf notes are plain, so that a stop line beside them stands out.
        const sentences = notes.map((note) => ({ text: `${note.inlines.map((i) => i.text).join('')} ` }));
        const pointed = stopsHere ? headings.filter((heading) => heading !== 'Stop') : headings;
        const pointer = slidePointer(pointed, slide, language);
        return pointer ? [...sentences, { text: `${pointer} ` }] : sentences;
      },
    },
    stops: (id) => {
      const { stops } = slideFigureCautions(pulled, id, setting, quiet);
      return stops.length > 0 ? { lines: stops, whoToAsk: '' } : undefined;
    },
    stamp,
    ...(stamp.draft ? { draft: stamp.draft } : {}),
    sources: createSourceNumbers(desk.tables.sources, language),
    notices,
    where: site?.hall ? `${site.hall.name}, ${site.town}.` : '',
    audience: say('audience', { audience: computed.lesson.front.audience }),
  });
}
