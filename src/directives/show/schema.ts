import type { KnownDirective } from '../../lesson/index.js';

export const schema: KnownDirective = {
  name: 'show',
  forms: ['leaf'],
  id: 'none',
  attributes: {
    figure: {
      kind: { is: 'reference' },
      required: true,
      help: 'the id of a figure or question of this lesson',
    },
  },
};

export interface Values {
  readonly figure: string;
}
