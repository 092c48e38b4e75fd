import type { TermTable } from '../languages/index.js';
import type { Heading } from './register.js';

type Key = 'stop' | 'every-time' | 'ask-first' | 'who' | 'line' | 'lines' | 'slide' | 'unconfirmed';

/** What the program prints around the register's wordings. */
export const cautionTerms: TermTable<Key> = {
  en: {
    stop: 'Stop',
    'every-time': 'Every time',
    'ask-first': 'Ask first',
    who: 'your doctor, nurse or pharmacist',
    line: '{heading}, line {lines}.',
    lines: '{heading}, lines {lines}.',
    slide: '{heading}: slide {slide}.',
    unconfirmed: 'Wording not yet confirmed by a professional.',
  },
};

export function headingKey(heading: Heading): 'stop' | 'every-time' | 'ask-first' {
  return heading === 'Stop' ? 'stop' : heading === 'Every time' ? 'every-time' : 'ask-first';
}
