import type { TermTable } from '../../languages/index.js';

export type Key = 'basis' | 'source' | 'sources';

export const terms: TermTable<Key> = {
  en: {
    basis: 'Each option: {basis}.',
    source: 'Source ',
    sources: 'Sources ',
  },
};
