import type { Place } from '../../diagnostics/index.js';
import type { KnownDirective } from '../../lesson/index.js';
import type { Amount, Basis, Food, RinseKind, Treatment } from '../../nutrition/index.js';

export const TREATMENTS = ['drained', 'drained and rinsed'] as const satisfies readonly Treatment[];

export const schema: KnownDirective = {
  name: 'rinse-drop',
  forms: ['leaf'],
  id: 'required',
  attributes: {
    food: { kind: { is: 'text' }, required: true, help: 'the canned food, such as black beans, canned' },
    'label-sodium': {
      kind: { is: 'text' },
      required: true,
      help: 'sodium in one serving on the label, such as 460 mg',
    },
    'label-basis': {
      kind: { is: 'text' },
      required: true,
      help: 'the serving on the label, and that it counts the liquid: 1/2 cup, with liquid',
    },
    treatment: {
      kind: { is: 'choice', of: TREATMENTS },
      help: 'what is done to the food: drained, or drained and rinsed (the second when left out)',
    },
    'no-salt-added': {
      kind: { is: 'choice', of: ['yes', 'no'] },
      help: 'yes for a can that says no salt added: no range is shown, only that rinsing matters little',
    },
  },
};

export interface Values {
  readonly id: string;
  /** The food in the author's words, without the word canned. */
  readonly name: string;
  /** The food's own table row, for the cautions. */
  readonly food: Food;
  readonly kind: RinseKind;
  readonly label: Amount<'mg'>;
  readonly basis: Basis;
  readonly treatment: Treatment;
  readonly noSaltAdded: boolean;
  readonly place: Place;
  readonly foodPlace: Place;
  readonly labelPlace: Place;
  readonly basisPlace: Place;
}
