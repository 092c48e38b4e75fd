import type { TermTable } from '../../languages/index.js';

export type Key =
  | 'form-bowl'
  | 'form-plate'
  | 'form-tray'
  | 'form-lunch-box'
  | 'form-shared-pot'
  | 'letter-produce'
  | 'letter-protein'
  | 'letter-grain'
  | 'kind-protein'
  | 'kind-grain'
  | 'kind-produce'
  | 'before'
  | 'after'
  | 'key-before'
  | 'key-after'
  | 'key-changed'
  | 'counted'
  | 'swapped'
  | 'swap'
  | 'nothing-swapped'
  | 'lane'
  | 'lane-lost'
  | 'lost'
  | 'lost-none'
  | 'open'
  | 'iodine'
  | 'label'
  | 'label-bare'
  | 'label-blank'
  | 'reading-start'
  | 'reading-start-short'
  | 'reading-lanes'
  | 'reading-lane'
  | 'reading-blank'
  | 'caption'
  | 'caption-blank'
  | 'head-nutrient'
  | 'head-food'
  | 'head-goes'
  | 'ask'
  | 'field-goes'
  | 'why'
  | 'goes'
  | 'stays'
  | 'to-fill'
  | 'portion'
  | 'basis-one'
  | 'basis-many'
  | 'basis-slide'
  | 'estimated'
  | 'sources';

export const terms: TermTable<Key> = {
  en: {
    'form-bowl': 'bowl',
    'form-plate': 'plate',
    'form-tray': 'tray',
    'form-lunch-box': 'lunch box',
    'form-shared-pot': 'shared pot',
    'kind-produce': 'vegetables and fruit',
    'kind-protein': 'protein',
    'kind-grain': 'grain or starch',
    'letter-produce': 'V',
    'letter-protein': 'P',
    'letter-grain': 'G',
    before: 'The dish as it was',
    after: 'Turned',
    'key-before': 'before',
    'key-after': 'after',
    'key-changed': 'ringed: changed',
    counted: '{amount}, counts as {kind}',
    swapped: 'Swapped: {swaps}.',
    swap: '{old} for {fresh}',
    'nothing-swapped': 'Nothing has to go.',
    lane: '{before} to {after}',
    'lane-lost': '{before} to {after}, lost',
    lost: 'Lost: {nutrients}.',
    'lost-none': 'Of the nutrients that are known, none is lost.',
    open: 'Not known whether it is lost: {nutrients}.',
    iodine: 'Iodine is not in the food table; fish, milk and eggs bring it to many people.',
    label: 'A {form} before and after, for {needs}: {swaps}.',
    'label-bare': 'A {form} before and after, with the foods that changed.',
    'label-blank': 'A {form} as it is, and an empty one beside it.',
    'reading-start':
      'A {form} in twelve parts and the same one for {needs}; counters that changed are ringed.',
    'reading-start-short': 'Foods that change for {needs}.',
    'reading-lanes': 'For one person: {lanes}.',
    'reading-lane': '{nutrient} {text}',
    'reading-blank': 'Which foods have to go for {needs}? The counters of the second dish are empty.',
    caption: 'For one person, before and after',
    'caption-blank': 'The foods of the dish',
    'head-nutrient': 'Nutrient',
    'head-food': 'Food',
    'head-goes': 'Goes or stays?',
    ask: 'Which of these foods has to go for {needs}?',
    'field-goes': '{food}: what happens to it',
    why: 'Why:',
    goes: 'goes',
    stays: 'stays',
    'to-fill': 'to fill in',
    portion: '{amount} {food}',
    'basis-one': '{form} for one person, as served: {foods}. Shares by volume.',
    'basis-many': '{form} for {people} people, as served: {foods}. Shares by volume; numbers for one person.',
    'basis-slide': 'Shares by volume, as served.',
    estimated: 'Volume or weight is an estimate for {foods}.',
    sources: { one: 'Source ', other: 'Sources ' },
  },
};
