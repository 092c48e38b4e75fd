import type { TermTable } from '../../languages/index.js';

export type Key =
  | 'label'
  | 'label-bare'
  | 'reading'
  | 'reading-key'
  | 'reading-blank'
  | 'on-label'
  | 'on-label-note'
  | 'after-rinsed'
  | 'after-drained'
  | 'after-note'
  | 'look'
  | 'look-key'
  | 'sure'
  | 'unsure'
  | 'gone'
  | 'caption'
  | 'row'
  | 'sodium'
  | 'to-fill'
  | 'basis'
  | 'brick'
  | 'disagree'
  | 'vary'
  | 'range-blank'
  | 'little'
  | 'no-salt'
  | 'sources'
  | 'key-share'
  | 'key-bricks'
  | 'key-range';

export const terms: TermTable<Key> = {
  en: {
    label: 'Two rows of bricks: sodium in {basis}, of canned {food}, on the label and after.',
    'label-bare': 'Two rows of bricks: sodium on the label and after.',
    reading: 'On the label: {label} of sodium. {after}: somewhere from {range}.',
    'reading-key': 'Bricks to cross out: {bricks}.',
    'reading-blank':
      'On the label: {label} of sodium, a row of solid bricks. {after}: the same row in outline. One brick is {brick} of sodium.',
    'on-label': 'On the label',
    'on-label-note': '{label} sodium',
    'after-rinsed': 'After rinsing',
    'after-drained': 'After draining',
    'after-note': '{range} left',
    look: 'somewhere in here',
    'look-key': 'bricks to cross out: {bricks}',
    sure: 'still there',
    unsure: 'may be there',
    gone: 'gone',
    caption: 'Sodium in canned {food}: {basis}',
    row: 'When',
    sodium: 'Sodium',
    'to-fill': 'to fill in',
    basis: 'Canned {food}: {basis}, as on the label.',
    brick: '1 brick = {brick} of sodium.',
    disagree: 'Studies disagree, so we show a range.',
    vary: 'Findings differ, so we show a range.',
    'range-blank': 'The answer is a range.',
    little: 'This can holds little salt to begin with, so rinsing matters little.',
    'no-salt': 'This can has no salt added ({label} of sodium in {basis}), so rinsing matters little.',
    sources: { one: 'Source ', other: 'Sources ' },
    'key-share': '{after}, {share} of what the label says is gone.',
    'key-bricks': 'Crossing out {bricks} of the bricks is right.',
    'key-range': 'Any answer that leaves something from {range} is right.',
  },
};
