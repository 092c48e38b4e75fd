import { type Say, sayFrom, type TermTable } from '../languages/index.js';
import type { ReviewWords } from '../outputs/review/blocks.js';

type Key =
  | 'handout'
  | 'worksheet'
  | 'key'
  | 'staff'
  | 'review'
  | 'notes'
  | 'cards'
  | 'prices'
  | 'room'
  | 'notices'
  | 'notice'
  | 'notice-said'
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
  | 'weight-free'
  | 'say'
  | 'do'
  | 'slide-sources'
  | 'slide-sources-more'
  | 'source-data'
  | 'source-read'
  | 'source-part'
  | 'source-restated'
  | 'source-memory'
  | 'minutes'
  | 'answer'
  | 'caution-title'
  | 'caution-title-more'
  | 'caution-say'
  | 'audience'
  | 'notes-slide'
  | 'notes-whole'
  | 'notes-shorter'
  | 'notes-steps'
  | 'notes-cut'
  | 'notes-stop'
  | 'notes-answer'
  | 'notes-option'
  | 'explained'
  | 'stop-title';

/** Words that pages print around a lesson's own. */
const TERMS: TermTable<Key> = {
  en: {
    handout: 'Take-home sheet',
    worksheet: 'Worksheet',
    key: 'Worksheet key',
    staff: 'For the leader',
    review: 'Review sheet',
    notes: 'Speaker notes',
    prices: 'Price form',
    cards: 'Cards to cut',
    room: 'In the room',
    notices: 'Notices',
    notice: 'Notice: ',
    'notice-said': 'From: {source}, {date}. Good until {until}.',
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
    'weight-free':
      'Beside each handout stands the same sheet without weight (handout-…-weightfree-…). It leaves out {lines}, which speak of the page with weight.',
    say: 'Say',
    do: 'Do',
    'slide-sources': 'Where the numbers come from',
    'slide-sources-more': 'Where the numbers come from, part {part}',
    'source-data': 'Data of {date}',
    'source-read': 'Read on {date}',
    'source-part': 'Read in part on {date}',
    'source-restated': 'As others report it',
    'source-memory': 'From memory, still to be checked',
    minutes: { one: '{count} minute', other: '{count} minutes' },
    answer: 'Answer: {letter}. {why}.',
    'caution-title': 'Before we start',
    'caution-title-more': 'Before we start, part {part}',
    'caution-say': 'Read every line aloud, slowly. Say where people can ask in private.',
    audience: 'A talk for {audience}',
    'notes-slide': 'Slide {number}',
    'notes-whole': { one: 'The talk takes {count} minute.', other: 'The talk takes {count} minutes.' },
    'notes-shorter': {
      one: 'For a talk of {length} minutes leave out slide {slides}: that leaves {left} minutes.',
      other: 'For a talk of {length} minutes leave out slides {slides}: that leaves {left} minutes.',
    },
    'notes-steps': { one: '{count} step', other: '{count} steps' },
    'notes-stop': 'First step: read the caution aloud.',
    'notes-answer': 'Answer',
    'notes-option': '{letter}, {value}. {why}.',
    explained: '{term} ({means})',
    'stop-title': 'Before this: {title}',
    'notes-cut': 'Leave out when the talk is {length} minutes long.',
  },
};

export function pageTerms(language: string): Say<Key> {
  return sayFrom(TERMS, language);
}

/** Words of the review sheet, which is for editors. */
const REVIEW: TermTable<keyof ReviewWords> = {
  en: {
    numbers: 'Every number',
    cautions: 'Every caution',
    problems: 'What the checks found',
    number: 'Number',
    shown: 'Shown as',
    how: 'Worked out',
    from: 'Sources in full',
    caution: 'Caution',
    words: 'As printed',
    pulledBy: 'Pulled by',
    toConfirm: 'Still to confirm',
    unconfirmed: 'Not yet confirmed.',
    problem: 'Found',
    toDo: 'To do',
    place: 'Where',
    unrounded: 'not rounded',
    notKnown: 'not known',
    none: 'None.',
  },
};

export function reviewTerms(language: string): ReviewWords {
  const say = sayFrom(REVIEW, language);
  const keys = Object.keys(REVIEW.en) as (keyof ReviewWords)[];
  return Object.fromEntries(keys.map((key) => [key, say(key)])) as unknown as ReviewWords;
}
