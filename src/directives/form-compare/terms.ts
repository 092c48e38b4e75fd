import type { TermTable } from '../../languages/index.js';

export type Key =
  | 'label'
  | 'reading-lane'
  | 'reading-dot'
  | 'reading-blank'
  | 'caption'
  | 'form'
  | 'basis'
  | 'label-row'
  | 'label-rows'
  | 'not-known'
  | 'estimated'
  | 'source'
  | 'sources'
  | 'sodium-note'
  | 'choose'
  | 'to-fill'
  | 'title';

export const terms: TermTable<Key> = {
  en: {
    label: '{food} on {count} lines: {lanes}. {basis}.',
    'reading-lane': '{lane}, lowest to highest: {dots}.',
    'reading-dot': '{letter}, {form}, {value}',
    'reading-blank': 'Empty lines from zero for {lanes}. Letters to place: {letters}.',
    caption: '{food}, {basis}',
    form: 'Form',
    basis: '{basis}, {food}.',
    'label-row': '{letters} is what the label says, with the liquid; it is not how the food is eaten.',
    'label-rows': '{letters} are what the label says, with the liquid; that is not how the food is eaten.',
    'not-known': '“Not known” means no one has measured it, not zero.',
    estimated: 'The weight of a cup of {letters} is an estimate.',
    source: 'Source ',
    sources: 'Sources ',
    'sodium-note': 'a part of salt',
    choose: '{letter} {words}',
    'to-fill': 'to fill in',
    title: '{lane}: {dots}',
  },
};
