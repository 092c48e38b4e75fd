import {
  drainedShare,
  judgeRinseClaim,
  ok,
  type RinseKind,
  refuse,
  rinseRange,
  type Treatment,
} from '../../nutrition/index.js';
import { choice } from './choices.js';
import { calculation } from './contract.js';
import { amount, byDefault, number, words } from './fields.js';
import { ofNumber, ofRange, ofWord } from './values.js';

const KIND = choice<RinseKind>(['beans', 'vegetables', 'tuna', 'cottage cheese'], 'what was measured');
const TREATMENT = byDefault(
  choice<Treatment>(['drained', 'drained and rinsed'], 'what is done'),
  'drained and rinsed',
);
const BASIS = byDefault(
  choice(['with liquid', 'drained', 'not said'], 'what the serving on the label counts'),
  'with liquid',
);
const basisOf = (basis: 'with liquid' | 'drained' | 'not said') =>
  basis === 'not said' ? null : { state: basis };

/** Cans: what draining and rinsing do. */
export const RINSING = [
  calculation({
    name: 'rinse-range',
    also: ['rinse'],
    what: 'sodium left after draining, or draining and rinsing, over all studies',
    inputs: {
      kind: KIND,
      treatment: TREATMENT,
      label: amount(['mg'], 'sodium of one label serving'),
      basis: BASIS,
    },
    example: ['kind=beans', 'treatment=drained', 'label=440mg'],
    holdsFor: 'a label that counts the food with its liquid',
    sources: [],
    compute: ({ kind, treatment, label, basis }) => {
      const range = rinseRange({
        label: { value: label.value, unit: 'mg' },
        basis: basisOf(basis),
        kind,
        treatment,
      });
      if (!range.ok) return range;
      const { after, working, gone, goneWorking, disagree, littleToLose, findings } = range.value;
      return ok({
        results: [ofRange('left', after, 'mg', working), ofRange('gone', gone, 'mg', goneWorking)],
        sources: findings.map(({ study }) => study.source),
        cautions: [
          ...(disagree ? ['The studies disagree, so the whole range is the answer.'] : []),
          ...(littleToLose ? ['The label is low already: there is little to rinse away.'] : []),
        ],
      });
    },
  }),
  calculation({
    name: 'rinse-claim',
    what: 'whether the studies bear out what a page says of rinsing',
    inputs: {
      kind: KIND,
      treatment: TREATMENT,
      says: choice(['at least', 'up to', 'about'], 'how it is said'),
      share: number('percent', 'the share of the sodium that goes away'),
      basis: BASIS,
    },
    example: ['kind=beans', 'says=up to', 'share=41%'],
    holdsFor: 'a label that counts the food with its liquid',
    sources: ['studies in src/nutrition/rinse-studies.ts'],
    compute: ({ kind, treatment, says, share, basis }) => {
      const judged = judgeRinseClaim(
        { says, share: share / 100 },
        { basis: basisOf(basis), kind, treatment },
      );
      if (!judged.ok) return judged;
      const { low, high } = judged.value;
      return ok({
        results: [
          ofWord('the claim', 'holds'),
          ofRange('studies found', { low: low * 100, high: high * 100 }, 'percent'),
        ],
      });
    },
  }),
  calculation({
    name: 'drained-weight',
    what: 'how much of what a can holds is left when it is drained, by weight',
    inputs: { kind: words('the kind of food, such as pinto beans') },
    example: ['kind=pinto beans'],
    holdsFor: 'a canned food of the food table with both records',
    sources: ['usda-sr28'],
    compute: ({ kind }, shelf) => {
      const forms = shelf.forms(kind);
      if (!forms.ok) return forms;
      const full = forms.value.find(({ state }) => state === 'canned, with liquid');
      const left =
        forms.value.find(({ state }) => state === 'canned, drained') ??
        forms.value.find(({ state }) => state === 'canned, drained and rinsed');
      if (full === undefined || left === undefined)
        return refuse(
          `The table has not both records of ${kind}, with its liquid and drained.`,
          'Weigh a drained can, or take the drained weight on its label.',
        );
      const share = drainedShare(full, left);
      if (!share.ok) return share;
      const { measure, working } = share.value;
      return ok({
        results: [
          { ...ofNumber('drained share', share.value.share, 'of the full weight', working), says: measure },
        ],
      });
    },
  }),
];
