import type { TermTable } from '../../languages/index.js';
import type { FieldName, Sureness } from './schema.js';

export type Key =
  | FieldName
  | Sureness
  | `sample-${Exclude<FieldName, 'how-sure'>}`
  | 'title'
  | 'smaller'
  | 'sample'
  | 'leader'
  | 'private'
  | 'slide-field';

/** The program's own sample calls for no caution of any kind: it changes nothing that anybody eats. */
export const terms: TermTable<Key> = {
  en: {
    title: 'One thing I will do',
    what: 'What',
    'how-much': 'How much',
    when: 'When',
    'how-often': 'How often',
    'how-sure': 'How sure am I?',
    'not-yet': 'not yet',
    maybe: 'maybe',
    likely: 'likely',
    sure: 'sure',
    smaller: 'Below “likely”? Make it smaller.',
    sample: 'A filled sample. Yours will differ.',
    leader:
      'Give each person a card, or two: one to keep, one for the door of the refrigerator. Nobody shows a card or hands it in. Who is not yet sure, or only may be, makes the step smaller.',
    private: 'Ask for no name and no number of the body.',
    'slide-field': '{field}: ',
    'sample-what': 'write a shopping list',
    'sample-how-much': 'one list, five foods',
    'sample-when': 'Friday after supper',
    'sample-how-often': 'once a week',
  },
};
