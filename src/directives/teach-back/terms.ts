import type { TermTable } from '../../languages/index.js';

export type Key = 'lead' | 'staff-lead' | 'listen' | 'listen-key' | 'objective' | 'stops';

export const terms: TermTable<Key> = {
  en: {
    lead: 'I want to be sure I explained it well.',
    'staff-lead': 'Begin with: “I want to be sure I explained it well.” Say it as yours, not as theirs.',
    listen: 'Listen for:',
    'listen-key': 'Listen for: {points}.',
    objective: 'Asks about: {objective}.',
    stops:
      'Listen, too, for each line of this page that stands under Stop. If one is missed, say it to the whole room.',
  },
};
