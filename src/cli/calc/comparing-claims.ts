import {
  LABEL_NUTRIENTS,
  type LabelNutrient,
  leastReduction,
  lessClaim,
  lightClaim,
  moreClaim,
  ok,
  sourceClaim,
} from '../../nutrition/index.js';
import { choice } from './choices.js';
import { calculation } from './contract.js';
import { amount, byDefault, measured } from './fields.js';
import { MASS, VALUED } from './labels.js';
import { ofNumber, ofWord, quantityOf } from './values.js';

/** Three answers. */
export const answer = (help: string) => choice(['yes', 'no', 'unknown'], help);
export const US_LABELS = 'US labels; what is not known never passes as yes';

/** Claims that compare a food with another, or with a Daily Value. */
export const COMPARING_CLAIMS = [
  calculation({
    name: 'reduced-claim',
    also: ['less-claim'],
    what: 'how much less a food holds than the food it names: reduced, less, light in sodium',
    inputs: {
      food: measured(['mg', 'g', 'kcal'], 'in the food, per reference amount'),
      reference: measured(['mg', 'g', 'kcal'], 'in the food that it names'),
      'reference-is-low': byDefault(answer('whether the food that it names is itself low in this'), 'no'),
    },
    example: ['food=450mg', 'reference=600mg'],
    holdsFor: US_LABELS,
    sources: ['21 CFR 101.60 to 101.62'],
    compute: ({ food, reference, 'reference-is-low': low }) => {
      const claim = lessClaim(quantityOf(food), quantityOf(reference), low);
      if (!claim.ok) return claim;
      const { lessPercent, reduced, half, working, source, checked } = claim.value;
      return ok({
        results: [
          ofNumber('less', lessPercent, 'percent', working),
          ofWord('reduced or less (25 percent)', reduced),
          ofWord('half; light in sodium (50 percent)', half),
        ],
        sources: [source],
        checked,
      });
    },
  }),
  calculation({
    name: 'least-reduction',
    what: 'the least reduction for a comparing claim of the EU or the Codex',
    inputs: {
      rules: choice(['eu', 'codex'], 'whose rules'),
      about: choice(Object.keys(LABEL_NUTRIENTS) as LabelNutrient[], 'what is reduced'),
    },
    example: ['rules=eu', 'about=fat'],
    holdsFor: 'labels of the EU and by the Codex',
    sources: ['Regulation (EC) 1924/2006, Annex', 'Codex CXG 23-1997'],
    compute: ({ rules, about }) =>
      ok({
        results: [ofNumber('at least less', leastReduction(rules, about), 'percent')],
        checked: 'memory',
      }),
  }),
  calculation({
    name: 'light-claim',
    what: 'whether a US label may call a food light',
    inputs: {
      fat: amount(['g'], 'fat in the food'),
      energy: amount(['kcal'], 'energy of the food'),
      'reference-fat': amount(['g'], 'fat in the food that it names'),
      'reference-energy': amount(['kcal'], 'energy of the food that it names'),
    },
    example: ['fat=5g', 'energy=100kcal', 'reference-fat=10g', 'reference-energy=150kcal'],
    holdsFor: 'US labels, per reference amount, on unrounded amounts',
    sources: ['21 CFR 101.56(b)'],
    compute: (of) => {
      const claim = lightClaim(
        { fatGrams: of.fat.value, kcal: of.energy.value },
        { fatGrams: of['reference-fat'].value, kcal: of['reference-energy'].value },
      );
      if (!claim.ok) return claim;
      const { allowed, fromFatPercent, lessFatPercent, lessEnergyPercent, checked } = claim.value;
      return ok({
        results: [
          ofWord('light', allowed ? 'yes' : 'no'),
          ofNumber('energy of the named food that comes from fat', fromFatPercent, 'percent'),
          ofNumber('less fat', lessFatPercent, 'percent'),
          ofNumber('less energy', lessEnergyPercent, 'percent'),
        ],
        checked,
      });
    },
  }),
  calculation({
    name: 'source-claim',
    what: 'whether a US label may call a food high in something or a good source of it',
    inputs: {
      nutrient: VALUED,
      amount: measured(MASS, 'in one reference amount, unrounded'),
      'low-fat': byDefault(answer('whether the food is low in fat, which fiber asks for'), 'unknown'),
    },
    example: ['nutrient=fiber', 'amount=5.6g', 'low-fat=yes'],
    holdsFor: US_LABELS,
    sources: ['21 CFR 101.54(b) to (d)'],
    compute: ({ nutrient, amount, 'low-fat': lowFat }) => {
      const claim = sourceClaim(nutrient, quantityOf(amount), lowFat);
      if (!claim.ok) return claim;
      const { word, share, say, checked } = claim.value;
      const percent = ofNumber('percent of the Daily Value', share.percent, 'percent', share.working);
      return ok({ results: [ofWord('word', word), percent], cautions: say, checked });
    },
  }),
  calculation({
    name: 'more-claim',
    what: 'whether a US label may say more, added or enriched',
    inputs: {
      nutrient: VALUED,
      food: measured(MASS, 'in one reference amount of the food'),
      reference: measured(MASS, 'in the food that it names'),
    },
    example: ['nutrient=calcium', 'food=300mg', 'reference=170mg'],
    holdsFor: US_LABELS,
    sources: ['21 CFR 101.54(e)'],
    compute: ({ nutrient, food, reference }) => {
      const claim = moreClaim(nutrient, quantityOf(food), quantityOf(reference));
      if (!claim.ok) return claim;
      const { allowed, morePercent, checked } = claim.value;
      const more = ofNumber('more, of the Daily Value', morePercent, 'percent');
      return ok({ results: [ofWord('allowed', allowed), more], checked });
    },
  }),
];
