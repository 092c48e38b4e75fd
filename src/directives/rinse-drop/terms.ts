import type { TermTable } from '../../languages/index.js';

export type Key =
  | 'label'
  | 'reading'
  | 'reading-blank'
  | 'on-label'
  | 'on-label-note'
  | 'after-rinsed'
  | 'after-drained'
  | 'after-note'
  | 'range'
  | 'look'
  | 'sure'
  | 'unsure'
  | 'gone'
  | 'caption'
  | 'row'
  | 'sodium'
  | 'to-fill'
  | 'basis'
  | 'disagree'
  | 'little'
  | 'source'
  | 'sources'
  | 'key-why';

export const terms: TermTable<Key> = {
  en: {
    label: 'Two rows of bricks: sodium in {basis} of canned {food}, on the label and after.',
    reading: 'On the label: {label}. {after}: somewhere from {range}. {gone} is gone.',
    'reading-blank':
      'A row of solid bricks for the label, and the same row in outline. One brick stands for {brick} of sodium.',
    'on-label': 'On the label',
    'on-label-note': '{label} sodium',
    'after-rinsed': 'After rinsing',
    'after-drained': 'After draining',
    'after-note': '{range} left',
    range: '{range}',
    look: 'somewhere in here',
    sure: 'still there',
    unsure: 'may be there',
    gone: 'gone',
    caption: 'Sodium in {basis} of canned {food}',
    row: 'When',
    sodium: 'Sodium',
    'to-fill': 'to fill in',
    basis: '{basis} canned {food}, as the label counts it; 1 brick = {brick} of sodium.',
    disagree: 'Studies disagree, so we show a range.',
    little: 'This can holds little salt to begin with, so rinsing matters little.',
    source: 'Source ',
    sources: 'Sources ',
    'key-why': 'From {range} is left. Any answer inside is right: studies disagree.',
  },
};
