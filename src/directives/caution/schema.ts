import type { ReadCaution } from '../../cautions/index.js';
import type { KnownDirective } from '../../lesson/index.js';

export const schema: KnownDirective = {
  name: 'caution',
  forms: ['container', 'leaf'],
  id: 'register',
  attributes: {
    severity: {
      kind: { is: 'choice', of: ['stop', 'every time', 'ask first'] },
      help: "for a lesson's own caution: stop, every time or ask first",
    },
    source: { kind: { is: 'text' }, help: "for a lesson's own caution: the id of the source it rests on" },
    'review-by': {
      kind: { is: 'date' },
      help: "for a lesson's own caution: the day to check it again, as 2027-03-01",
    },
  },
  body: ['rows'],
};

export type Values = ReadCaution;
