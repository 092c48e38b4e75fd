import type { TermTable } from '../../languages/index.js';

export type Key =
  | 'label'
  | 'label-many'
  | 'label-bare'
  | 'reading-rows'
  | 'reading-row'
  | 'reading-lane'
  | 'reading-lane-open'
  | 'reading-lane-none'
  | 'reading-dot'
  | 'reading-look'
  | 'reading-blank'
  | 'and-then'
  | 'and-lane'
  | 'caption'
  | 'form'
  | 'row'
  | 'to-fill'
  | 'sodium-note'
  | 'basis'
  | 'label-rows'
  | 'before-cooking'
  | 'weights'
  | 'weight'
  | 'not-known'
  | 'estimated'
  | 'sources';

export const terms: TermTable<Key> = {
  en: {
    label: '{food} in {forms} forms, compared by {lanes}. {basis}.',
    'label-many': '{food} in {forms} forms, compared by {lanes} measures. {basis}.',
    'label-bare': 'One food in {forms} forms, side by side.',
    'reading-rows': 'In {basis}: {rows}.',
    'reading-row': '{letter} is {form}',
    'reading-lane': '{lane}, lowest to highest: {dots}',
    'reading-lane-open': '{lane}, lowest to highest: {dots}; not known for {letters}',
    'reading-lane-none': '{lane}: not known for {letters}',
    'reading-dot': '{letter}, {value}',
    'reading-look': 'An arrow leads from {from} to {to}: {word}.',
    'reading-blank': {
      one: 'An empty line from zero for {lanes}: each letter has a place on it.',
      other: 'Empty lines from zero for {lanes}: each letter has a place on each line.',
    },
    'and-then': '; ',
    'and-lane': '; and ',
    caption: '{food}, {basis}',
    form: 'Form',
    row: '{letter}, {form}',
    'to-fill': 'to fill in',
    'sodium-note': 'a part of salt',
    basis: '{food}: {basis}.',
    'label-rows': {
      one: '{letters} is what the label says, with the liquid; it is not how the food is eaten.',
      other: '{letters} are what the label says, with the liquid; that is not how the food is eaten.',
    },
    'before-cooking': {
      one: '{letters} is measured before cooking.',
      other: '{letters} are measured before cooking.',
    },
    weights: 'The food weighs: {weights}.',
    weight: '{letter} {weight}',
    'not-known': '“Not known” means that the food table has no value. It does not mean zero.',
    estimated: 'The weight of {portion} of {letters} is an estimate.',
    sources: { one: 'Source ', other: 'Sources ' },
  },
};
