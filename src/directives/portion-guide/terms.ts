import type { TermTable } from '../../languages/index.js';

export type Key =
  | 'label'
  | 'label-bare'
  | 'reading-row'
  | 'reading-holds'
  | 'reading-line'
  | 'caption'
  | 'food'
  | 'usual'
  | 'weight'
  | 'on-label'
  | 'label-cell'
  | 'not-known'
  | 'to-fill'
  | 'cup'
  | 'tbsp'
  | 'tsp'
  | 'twice'
  | 'often'
  | 'to-line'
  | 'fist'
  | 'cupped'
  | 'thumb'
  | 'thumb-tip'
  | 'check'
  | 'smaller'
  | 'basis'
  | 'basis-slide'
  | 'estimated'
  | 'sources'
  | 'guess'
  | 'measured'
  | 'difference'
  | 'guess-field'
  | 'measured-field'
  | 'difference-field'
  | 'why';

export const terms: TermTable<Key> = {
  en: {
    label: 'Cups and spoons in outline, with a line to fill them to: {foods}.',
    'label-bare': 'Cups and spoons in outline, with a line to fill them to.',
    'reading-row': '{food}: {amounts}',
    'reading-holds': 'To the rim they hold: {measures}.',
    'reading-line': 'A line of {line} shows whether the page was printed at true size.',
    caption: 'Amounts to pour',
    food: 'Food',
    usual: 'A usual amount',
    weight: 'Weight',
    'on-label': 'A label counts',
    'label-cell': '{label} (about {as})',
    'not-known': 'not known',
    'to-fill': 'to fill in',
    cup: 'Cup',
    tbsp: 'Tablespoon',
    tsp: 'Teaspoon',
    twice: 'fill it twice',
    often: 'fill it that many times',
    'to-line': 'full first, then to this line',
    fist: { one: 'about a closed fist; hands differ', other: 'about two closed fists; hands differ' },
    cupped: { one: 'about one cupped hand; hands differ', other: 'about two cupped hands; hands differ' },
    thumb: { one: 'about a thumb; hands differ', other: 'about two thumbs; hands differ' },
    'thumb-tip': { one: 'about a thumb tip; hands differ', other: 'about two thumb tips; hands differ' },
    check: 'True size on paper, if this line is {line} long.',
    smaller: 'Drawn smaller than true size.',
    basis: 'Level measures, not packed: {measures}.',
    'basis-slide': 'Level: {measures}.',
    estimated: 'The weight of {foods} is an estimate.',
    sources: { one: 'Source ', other: 'Sources ' },
    guess: 'My guess',
    measured: 'Measured',
    difference: 'Difference',
    'guess-field': '{food}: my guess',
    'measured-field': '{food}: measured',
    'difference-field': '{food}: difference',
    why: 'The food tables give these weights. A level measure that is a little off is close enough.',
  },
};
