import { type Say, sayFrom, type TermTable } from '../languages/index.js';

type Key =
  | 'handout'
  | 'worksheet'
  | 'key'
  | 'staff'
  | 'review'
  | 'notes'
  | 'strip'
  | 'strip-month'
  | 'page'
  | 'data'
  | 'not-reviewed'
  | 'reviewed'
  | 'expired'
  | 'draft'
  | 'sources'
  | 'source'
  | 'key-mark'
  | 'interpreter'
  | 'for-leaders'
  | 'for-editors'
  | 'say'
  | 'do'
  | 'slide-sources'
  | 'answer'
  | 'caution-title'
  | 'caution-title-more'
  | 'caution-say'
  | 'audience';

/** Words that pages print around a lesson's own. */
const TERMS: TermTable<Key> = {
  en: {
    handout: 'Take-home sheet',
    worksheet: 'Worksheet',
    key: 'Worksheet key',
    staff: 'For the leader',
    review: 'Review sheet',
    notes: 'Speaker notes',
    strip: '{kind} · {place}',
    'strip-month': '{kind} · {month} talk, {place}',
    page: 'Page {page} of {pages}',
    data: 'Food data: {date}.',
    'not-reviewed': 'Not yet reviewed.',
    reviewed: 'Reviewed by: {role}, {date}. Check again by {next}.',
    expired: 'Review ran out on {next}. Do not hand out.',
    draft: 'Draft, do not hand out',
    sources: 'Sources',
    source: '{words}',
    'key-mark': 'KEY',
    interpreter: '{words}: {phone}',
    'for-leaders': 'For the leader. Do not hand out.',
    'for-editors': 'For editors and reviewers. Do not hand out.',
    say: 'Say',
    do: 'Do',
    'slide-sources': 'Where the numbers come from',
    answer: 'Answer: {letter}. {why}',
    'caution-title': 'Before we start',
    'caution-title-more': 'Before we start, part {part}',
    'caution-say': 'Read every line aloud, slowly. Say where people can ask in private.',
    audience: 'A talk for {audience}',
  },
};

export function pageTerms(language: string): Say<Key> {
  return sayFrom(TERMS, language);
}
