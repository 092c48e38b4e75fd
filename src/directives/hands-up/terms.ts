import type { TermTable } from '../../languages/index.js';

export type Key =
  | 'ways'
  | 'ways-short'
  | 'box'
  | 'before'
  | 'after'
  | 'label'
  | 'label-bare'
  | 'caption'
  | 'answer'
  | 'people'
  | 'share'
  | 'not-counted'
  | 'reading-open'
  | 'reading-all'
  | 'reading-rounds'
  | 'told'
  | 'told-rounds'
  | 'with-share'
  | 'no-share'
  | 'own'
  | 'no-answer'
  | 'minutes'
  | 'how'
  | 'pattern';

export const terms: TermTable<Key> = {
  en: {
    ways: 'Answer in your own way: raise a hand, hold up a card, nod or point. You can pass.',
    'ways-short': 'Hand, card, nod or point: all ways count.',
    box: 'One box is {people} people.',
    before: 'before',
    after: 'after',
    label: 'Show of hands: {question}',
    'label-bare': 'A show of hands with boxes to fill.',
    caption: 'How many people gave each answer',
    answer: 'Answer',
    people: 'People',
    share: 'Percent',
    'not-counted': 'not counted yet',
    'reading-open':
      'A row of empty boxes for each answer: {answers}. One box is one person; nobody has counted yet.',
    'reading-all': '{people} people answered. {told}.',
    'reading-rounds': '{before} people answered before and {after} after. {told}.',
    told: '{answer}: {count}',
    'told-rounds': '{answer}: {before} before and {after} after',
    'with-share': '{count} ({percent})',
    'no-share': 'Fewer than 20 people answered, so no percent is given.',
    own: 'Check the box that is true for you. No answer is right or wrong.',
    'no-answer': 'No answer is right or wrong, so there is nothing to check here.',
    minutes: { one: 'About {count} minute.', other: 'About {count} minutes.' },
    how: 'Fill one box for each person. Do not call on anybody, and count no names.',
    pattern: 'If most choose “{answer}”:',
  },
};
