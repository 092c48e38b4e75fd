import type { TermTable } from '../../languages/index.js';

export type Key =
  | 'form-bowl'
  | 'form-plate'
  | 'form-tray'
  | 'form-lunch-box'
  | 'form-shared-pot'
  | 'kind-produce'
  | 'kind-protein'
  | 'kind-grain'
  | 'bar-produce'
  | 'bar-protein'
  | 'bar-grain'
  | 'letter-produce'
  | 'letter-protein'
  | 'letter-grain'
  | 'extent-none'
  | 'extent-little'
  | 'extent-some'
  | 'extent-half'
  | 'extent-most'
  | 'extent-all'
  | 'beside-drink'
  | 'beside-fat'
  | 'beside-calcium'
  | 'beside-other'
  | 'beside-line'
  | 'beside-slide'
  | 'portion'
  | 'portion-after'
  | 'counted'
  | 'food-parts'
  | 'kind-parts'
  | 'kind-extent'
  | 'kind-slide'
  | 'slide-title'
  | 'slide-title-extent'
  | 'own'
  | 'own-slide'
  | 'goal-slide'
  | 'goal'
  | 'label'
  | 'label-bare'
  | 'label-blank'
  | 'reading-start'
  | 'reading-kind'
  | 'reading-kind-extent'
  | 'reading-foods'
  | 'reading-food'
  | 'reading-goal'
  | 'reading-waiting'
  | 'reading-blank'
  | 'reading-letters'
  | 'caption'
  | 'head-food'
  | 'head-kind'
  | 'head-parts'
  | 'head-extent'
  | 'cell-parts'
  | 'to-fill'
  | 'fill-in'
  | 'key-right'
  | 'key-kind'
  | 'key-why'
  | 'key-share'
  | 'totals'
  | 'totals-all'
  | 'lacks'
  | 'lacks-fat'
  | 'lacks-calcium'
  | 'basis-one'
  | 'basis-many'
  | 'basis-slide'
  | 'too-little'
  | 'words-only'
  | 'estimated'
  | 'sources';

export const terms: TermTable<Key> = {
  en: {
    'form-bowl': 'bowl',
    'form-plate': 'plate',
    'form-tray': 'tray',
    'form-lunch-box': 'lunch box',
    'form-shared-pot': 'shared pot',
    'kind-produce': 'vegetables and fruit',
    'kind-protein': 'protein',
    'kind-grain': 'grain or starch',
    'bar-produce': 'Vegetables and fruit',
    'bar-protein': 'Protein',
    'bar-grain': 'Grain, starch',
    'letter-produce': 'V',
    'letter-protein': 'P',
    'letter-grain': 'G',
    'extent-none': 'none',
    'extent-little': 'a little',
    'extent-some': 'some',
    'extent-half': 'about half',
    'extent-most': 'most of it',
    'extent-all': 'all of it',
    'beside-drink': 'Drink',
    'beside-fat': 'Fat',
    'beside-calcium': 'Calcium food',
    'beside-other': 'With it',
    'beside-line': '{what}: {foods}.',
    'beside-slide': 'beside it: {foods}',
    portion: '{amount} {food}',
    'portion-after': '{food}, {amount}',
    counted: '{food} (counts as {kind})',
    'food-parts': '{parts} of 12 parts',
    'kind-parts': '{parts} of 12 parts: {foods}',
    'kind-extent': '{kind}: {extent}',
    'kind-slide': '{parts} of 12: {kind}',
    'slide-title': '{kind}: {parts} of 12 parts',
    'slide-title-extent': '{kind}: {extent}',
    own: 'This {form}',
    'own-slide': 'this dish',
    'goal-slide': 'the goal',
    goal: 'The goal',
    label: 'A {form} seen from above, in twelve parts: {foods}.',
    'label-bare': 'A {form} seen from above, in twelve parts.',
    'label-blank': 'A {form} seen from above, with twelve empty counters.',
    'reading-start': 'A {form} in twelve parts.',
    'reading-kind': '{kind}: {parts} of 12',
    'reading-kind-extent': '{kind}: {extent}',
    'reading-foods': 'Parts of each food: {foods}.',
    'reading-food': '{food} {parts}',
    'reading-goal': 'The goal: {goals}.',
    'reading-waiting': 'The other counters are still empty.',
    'reading-blank': 'Its twelve counters are empty. Each one gets the letter of a kind: {letters}.',
    'reading-letters': '{letter} for {kind}',
    caption: 'The {form} in twelve parts',
    'head-food': 'Food',
    'head-kind': 'Counts as',
    'head-parts': 'Parts of 12',
    'head-extent': 'How much of the {form}',
    'cell-parts': '{parts} of 12',
    'to-fill': 'to fill in',
    'fill-in': 'Write a letter in each counter: {letters}. The foods as served:',
    'key-right': 'Right in any place: {kinds} counters, twelve in all.',
    'key-kind': '{letter} on {ends}',
    'key-why': 'Why: shares by volume are {shares}.',
    'key-share': '{kind} {share}',
    totals: 'One person gets {fiber} of fiber and {sodium} of sodium from all of it.',
    'totals-all':
      'One person gets {energy}, {protein} of protein, {fiber} of fiber, {sodium} of sodium and {saturated-fat} of saturated fat.',
    lacks: 'Not here yet: {what}.',
    'lacks-fat': 'a little healthy fat',
    'lacks-calcium': 'a calcium food',
    'basis-one': '{form} for one person, as served: {foods}. Shares by volume.',
    'basis-many': '{form} for {people} people, as served: {foods}. Shares by volume.',
    'basis-slide': 'Shares by volume, as served.',
    'too-little': 'Too little for a part of its own: {foods}.',
    'words-only': 'Not in the totals: {foods}.',
    estimated: 'Volume or weight is an estimate for {foods}.',
    sources: { one: 'Source ', other: 'Sources ' },
  },
};
