import type { TermTable } from '../../languages/index.js';

export type Key =
  | 'mon'
  | 'tue'
  | 'wed'
  | 'thu'
  | 'fri'
  | 'sat'
  | 'sun'
  | 'light'
  | 'moderate'
  | 'vigorous'
  | 'strength'
  | 'balance'
  | 'label'
  | 'label-bare'
  | 'days-head'
  | 'sum-head'
  | 'brick'
  | 'vigorous-key'
  | 'strength-key'
  | 'balance-key'
  | 'balance-letter'
  | 'reading-days'
  | 'reading-day'
  | 'reading-none'
  | 'reading-sum'
  | 'reading-strength'
  | 'reading-balance'
  | 'reading-blank'
  | 'caption'
  | 'day'
  | 'minutes'
  | 'marks'
  | 'none'
  | 'to-fill'
  | 'adds-up'
  | 'there'
  | 'short-of'
  | 'step'
  | 'strength-there'
  | 'strength-short'
  | 'strength-none'
  | 'balance-there'
  | 'balance-short'
  | 'seated'
  | 'light-too'
  | 'talk'
  | 'talk-short'
  | 'able'
  | 'example'
  | 'move'
  | 'move-head'
  | 'move-seated'
  | 'twice'
  | 'source'
  | 'shelf'
  | 'task'
  | 'how-long'
  | 'kind'
  | 'find'
  | 'answer'
  | 'find-minutes'
  | 'find-days'
  | 'unit-minutes'
  | 'unit-days'
  | 'own'
  | 'own-write'
  | 'key-sum'
  | 'key-days';

export const terms: TermTable<Key> = {
  en: {
    mon: 'Mon',
    tue: 'Tue',
    wed: 'Wed',
    thu: 'Thu',
    fri: 'Fri',
    sat: 'Sat',
    sun: 'Sun',
    light: 'light',
    moderate: 'moderate',
    vigorous: 'vigorous',
    strength: 'strength',
    balance: 'balance',
    label: 'Seven columns of bricks and the sum of the week, with moves from {first} to {last}.',
    'label-bare': 'Seven columns of bricks, one for each day, and the sum of the week.',
    'days-head': 'Minutes that count',
    'sum-head': 'The week',
    brick: '{brick}',
    'vigorous-key': 'vigorous, counted twice',
    'strength-key': 'strength work',
    'balance-key': 'balance work',
    'balance-letter': 'B',
    'reading-days': 'Minutes that count: {days}.',
    'reading-day': '{day} {minutes}',
    'reading-none': 'No minutes count in this week.',
    'reading-sum': 'The week adds up to {total}, beside rules at {from} and {to}.',
    'reading-strength': 'Strength work: {days}.',
    'reading-balance': 'Balance work: {days}.',
    'reading-blank':
      'Each day has six empty bricks of {brick}. The row of the week is empty too, with rules at {from} and {to}.',
    caption: 'One week of moves',
    day: 'Day',
    minutes: 'Minutes that count',
    marks: 'Strength and balance',
    none: 'none',
    'to-fill': 'to fill in',
    'adds-up': 'This week adds up to {total}.',
    there: 'That is in the {goal} a week that the guidelines for adults name, or more.',
    'short-of': 'The guidelines for adults name {goal} a week, so {missing} are still to go.',
    step: 'A small next step: {step} more on one day.',
    'strength-there': 'Strength work is on {days}; the guidelines name {goal} or more.',
    'strength-short': 'Strength work is on {days}; the guidelines name {goal} or more, so add another day.',
    'strength-none': 'Strength work is still missing; the guidelines name {goal} or more.',
    'balance-there': 'Balance work is there too.',
    'balance-short': 'Balance work is still missing.',
    seated: {
      one: 'One of these moves is done sitting, and it counts.',
      other: '{seated} of these moves are done sitting, and they count.',
    },
    'light-too': 'Light moves are not added up, and they are good for you too.',
    talk: 'Moderate: you can talk, but not sing. Vigorous: only a few words at a time.',
    'talk-short': 'Moderate: you can talk, but not sing.',
    able: 'Not able to do this much? Do what you can. Every move is better than none.',
    example: 'An example week, not your plan: {moves}.',
    move: '{day} {name}, {minutes} {kind}',
    'move-seated': '{day} {name}, {minutes} {kind}, seated',
    'move-head': 'Move',
    twice: 'A vigorous minute counts as {twice}.',
    source: 'Source ',
    shelf:
      'An example week. Bricks of {brick}. White line: vigorous, a minute counts as {twice}. Ring: strength. B: balance.',
    task: 'An example week. Add the moderate minutes. Count each vigorous minute as {twice}.',
    'how-long': 'How long',
    kind: 'Kind',
    find: 'To find',
    answer: 'Answer',
    'find-minutes': 'Minutes that count in this week',
    'find-days': 'Days with strength work',
    'unit-minutes': 'minutes',
    'unit-days': 'days',
    own: 'Now your own week. Fill a brick for each {brick}, two for vigorous ones. Ring the days with strength work.',
    'own-write': 'My next small step',
    'key-sum':
      '{moderate} + {twice} × {vigorous} = {total}. Strength and balance work count as days, not as minutes.',
    'key-days': 'Strength work is on {days}. Your own week has no key, and every honest week is right.',
  },
};
