import type { ReadCaution } from '../../cautions/index.js';
import type { KnownDirective } from '../../lesson/index.js';

/** Values are read with the cautions, which name what is missing and what is wrong in one place. */
export const schema: KnownDirective = {
  name: 'caution',
  forms: ['container', 'leaf'],
  id: 'register',
  attributes: {
    severity: {
      kind: { is: 'text' },
      help: "for a lesson's own caution: stop, every time or ask first",
    },
    source: { kind: { is: 'text' }, help: "for a lesson's own caution: the id of the source it rests on" },
    'review-by': {
      kind: { is: 'text' },
      help: "for a lesson's own caution: the day to check it again, as 2027-03-01",
    },
  },
  body: ['rows'],
};

export type Values = ReadCaution;
