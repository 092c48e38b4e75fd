import { createHash } from 'node:crypto';
import type { Sheet, Stamp } from '../document/index.js';
import { formatDate } from '../languages/index.js';
import type { Lesson } from '../lesson/index.js';
import { pageTerms } from './terms.js';

const LETTERS: Readonly<Record<string, string>> = { short: 'S', plain: 'P', fuller: 'F' };
const KINDS: Readonly<Record<Sheet['kind'] | 'slides', string>> = {
  handout: '',
  worksheet: 'W',
  key: 'K',
  staff: 'L',
  review: 'R',
  notes: 'N',
  cards: 'C',
  prices: 'F',
  slides: 'D',
};

export interface StampOptions {
  readonly kind: Sheet['kind'] | 'slides';
  readonly level: Sheet['level'];
  readonly language: string;
  readonly on: string;
  /** Newest date of the food data behind the numbers, if any. */
  readonly dataDate?: string;
  /** All that the pages say; the version code is its fingerprint. */
  readonly content: unknown;
  readonly draft: boolean;
}

/**
 * What every page prints about itself. The version code names the lesson, the level or kind, the
 * language and a fingerprint of the content: the same words and numbers have the same code.
 */
export function makeStamp(lesson: Lesson, options: StampOptions): Stamp {
  const { kind, level, language, on, dataDate } = options;
  const { review, code } = lesson.front;
  const say = pageTerms(language);
  const mark = `${KINDS[kind]}${kind === 'handout' || kind === 'worksheet' || kind === 'key' ? (LETTERS[level] ?? '') : ''}`;
  const expired = review !== 'none' && on > review.next;
  const date = (iso: string) => formatDate(iso, language);
  return {
    version: `${code} · ${mark}-${language.toUpperCase()} · ${fingerprint(options.content)}`,
    dataDate: dataDate === undefined ? '' : say('data', { date: date(dataDate) }),
    review:
      review === 'none'
        ? say('not-reviewed')
        : expired
          ? say('expired', { next: date(review.next) })
          : say('reviewed', { role: review.role, date: date(review.date), next: date(review.next) }),
    page: say('page', { page: '{page}', pages: '{pages}' }),
    expired,
    ...(options.draft ? { draft: say('draft') } : {}),
  };
}

/** Four characters that change with the content. */
function fingerprint(content: unknown): string {
  return createHash('sha256').update(JSON.stringify(content)).digest('hex').slice(0, 4).toUpperCase();
}
