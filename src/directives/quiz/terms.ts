import type { TermTable } from '../../languages/index.js';

export type Key = 'basis' | 'estimated' | 'sources';

export const terms: TermTable<Key> = {
  en: {
    basis: 'Each option: {basis}.',
    estimated: 'The weight of {portion} is an estimate for {foods}.',
    sources: { one: 'Source ', other: 'Sources ' },
  },
};
