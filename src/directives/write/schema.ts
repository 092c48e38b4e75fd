import type { KnownDirective } from '../../lesson/index.js';

export const MOST_LINES = 12;
export const USUAL_LINES = 2;

export const schema: KnownDirective = {
  name: 'write',
  forms: ['leaf'],
  id: 'none',
  attributes: {
    lines: {
      kind: { is: 'whole', from: 1, to: MOST_LINES },
      help: `how many lines, 1 to ${MOST_LINES} (${USUAL_LINES} when left out)`,
    },
    label: {
      kind: { is: 'text' },
      required: true,
      help: 'what to write there; printed above and read aloud',
    },
  },
};

export interface Values {
  readonly label: string;
  readonly lines: number;
}
