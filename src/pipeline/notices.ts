import type { Passage } from '../cautions/index.js';
import type { Block, Inline } from '../document/index.js';
import { formatDate } from '../languages/index.js';
import { type Notice, type NoticePage, noticesFor } from '../records/local/index.js';
import { pageTerms } from './terms.js';

interface Place {
  readonly local: { readonly notices: readonly Notice[] };
  readonly language: string;
  readonly on: string;
}

const ROOM: readonly NoticePage[] = ['handout', 'worksheet', 'slides'];

/** What notices say pulls cautions and is held to the same rules as the lesson's own text; a leader's is like notes. */
export function noticePassages(notices: readonly Notice[], on: string): readonly Passage[] {
  const told = new Set(ROOM.flatMap((page) => noticesFor(notices, page, on)));
  const leaders = noticesFor(notices, 'leader', on).filter((notice) => !told.has(notice));
  return [
    ...[...told].map(({ words, place }): Passage => ({ text: words, where: 'text', place })),
    ...leaders.map(({ words, place }): Passage => ({ text: words, where: 'notes', place })),
  ];
}

/** The notices under the lines for everybody, each a line of its own. */
export function noticeLines(
  { local, language, on }: Place,
  page: NoticePage,
): readonly (readonly Inline[])[] {
  const word = pageTerms(language)('notice');
  return noticesFor(local.notices, page, on).map(({ words }) => [
    { text: word, strong: true },
    { text: words },
  ]);
}

/** The notices for the leader, each with who says it, its day and its last day. */
export function noticeSection({ local, language, on }: Place): readonly Block[] {
  const notices = noticesFor(local.notices, 'leader', on);
  if (notices.length === 0) return [];
  const say = pageTerms(language);
  const heading: Block = { kind: 'heading', level: 2, inlines: [{ text: say('notices') }] };
  return [heading, ...notices.flatMap((notice) => leaderLines(notice, language))];
}

function leaderLines({ words, source, dated, until, place }: Notice, language: string): readonly Block[] {
  const said = pageTerms(language)('notice-said', {
    source,
    date: formatDate(dated, language),
    until: formatDate(until, language),
  });
  return [
    { kind: 'paragraph', inlines: [{ text: words }], place },
    { kind: 'basis', inlines: [{ text: said }], place },
  ];
}
