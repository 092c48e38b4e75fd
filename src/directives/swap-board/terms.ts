import type { TermTable } from '../../languages/index.js';

export type Key =
  | 'pair'
  | 'job'
  | 'change'
  | 'change-lost'
  | 'lost'
  | 'lost-none'
  | 'open'
  | 'unknown'
  | 'added'
  | 'iodine'
  | 'use'
  | 'cost'
  | 'key-before'
  | 'key-after'
  | 'label'
  | 'label-bare'
  | 'reading'
  | 'reading-job'
  | 'reading-lanes'
  | 'reading-lane'
  | 'reading-lost'
  | 'reading-lost-of'
  | 'caption'
  | 'head-swap'
  | 'head-nutrient'
  | 'head-old'
  | 'head-fresh'
  | 'ask'
  | 'ask-bare'
  | 'head-fits'
  | 'head-lost'
  | 'head-food'
  | 'fits'
  | 'fits-if'
  | 'ask-label'
  | 'fits-not'
  | 'field-fits'
  | 'field-lost'
  | 'nothing'
  | 'why'
  | 'portion'
  | 'basis'
  | 'basis-old'
  | 'basis-slide'
  | 'needs'
  | 'estimated'
  | 'sources';

export const terms: TermTable<Key> = {
  en: {
    pair: '{fresh} for {old}',
    job: 'Same job: {job}.',
    change: '{before} to {after}',
    'change-lost': '{before} to {after}, lost',
    lost: 'Lost: {nutrients}.',
    'lost-none': 'Of what is known, nothing is lost.',
    open: 'Not known whether it is lost: {nutrients}.',
    unknown: 'Not known of one food or both: {nutrients}.',
    added: 'Only if it was added: {nutrients}; check the label.',
    iodine: 'Iodine is not in the food table; milk, eggs and fish bring it to many people.',
    use: 'For: {use}.',
    cost: 'Cost: {before} before, {after} after; shelf prices at {shop}, {date}.',
    'key-before': 'before',
    'key-after': 'after',
    label: 'Swaps: {pairs}.',
    'label-bare': { one: 'A swap of one food.', other: '{count} swaps of foods, in pairs.' },
    reading: 'Pairs of foods, each joined by an arrow: {pairs}.',
    'reading-job': '{pair} (same job: {job})',
    'reading-lanes': 'What changes most: {lanes}.',
    'reading-lane': '{nutrient} {text}',
    'reading-lost': 'Lost: {lost}.',
    'reading-lost-of': '{nutrients} with {fresh}',
    caption: 'What each swap changes, for the amounts shown',
    'head-swap': 'Swap',
    'head-nutrient': 'Nutrient',
    'head-old': 'Before',
    'head-fresh': 'After',
    ask: 'Match each food to the needs that it fits: {needs}.',
    'ask-bare': 'What does each swap lose?',
    'head-food': 'Food',
    'head-fits': '{needs}?',
    'head-lost': 'What is lost?',
    fits: 'yes',
    'fits-if': 'only if',
    'fits-not': 'no',
    'ask-label': 'not known: read the label',
    'field-fits': '{food}, {needs}: does it fit',
    'field-lost': '{pair}: what is lost',
    nothing: 'nothing that is known',
    why: 'Why:',
    portion: '{amount} {food}',
    basis: '{pairs}.',
    'basis-slide': 'For the amounts shown.',
    'basis-old': 'To swap: {foods}.',
    needs: 'Tested for {needs}.',
    estimated: 'Weight is an estimate for {foods}.',
    sources: { one: 'Source ', other: 'Sources ' },
  },
};
