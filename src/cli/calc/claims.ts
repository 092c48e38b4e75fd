import {
  CONTENT_CLAIMS,
  type ContentClaimName,
  HEALTHY_ROWS,
  type HealthyKind,
  healthyByNewTest,
  healthyTestOn,
  LABEL_NUTRIENTS,
  type LabelNutrient,
  ok,
  type Result,
  refuse,
  strongestThresholdClaim,
  strongestUsClaim,
  thresholdClaim,
  thresholdClaimNames,
  usClaim,
} from '../../nutrition/index.js';
import { choice } from './choices.js';
import { LABELED, labeledFood, US_BASES, verdictAnswer } from './claim-food.js';
import { answer } from './comparing-claims.js';
import { type Answer, type Calculation, calculation } from './contract.js';
import { amount, byDefault, optional, words } from './fields.js';
import { ofWord } from './values.js';

const ABOUT = optional(
  choice(Object.keys(LABEL_NUTRIENTS) as LabelNutrient[], 'in place of a claim: the strongest one on this'),
  'the claim is judged',
);
const ON_LABELS = 'labels, on unrounded amounts; what is not known never passes as low';
const oneOf = (names: readonly string[]) =>
  refuse('No claim is named.', 'Write claim=… to judge one, or about=… for the strongest.', names);

function threshold(rules: 'eu' | 'codex', source: string, example: readonly string[]): Calculation {
  const names = thresholdClaimNames(rules);
  return calculation({
    name: `${rules}-claim`,
    what: `whether a label may say that a food has little or much of something, by ${rules === 'eu' ? "the EU's rules" : 'the Codex'}`,
    inputs: {
      claim: optional(choice(names, 'the claim'), 'the strongest one on `about`'),
      about: ABOUT,
      form: byDefault(choice(['solid', 'liquid'], 'per 100 g or per 100 mL'), 'solid'),
      ...LABELED,
      volume: optional(amount(['mL'], 'volume of that weight, for liquids'), 'not known'),
    },
    example,
    holdsFor: ON_LABELS,
    sources: [source],
    compute: ({ claim, about, form, volume, ...food }) => {
      const judged = labeledFood(food, {}, volume?.value);
      if (claim !== undefined) return verdictAnswer(thresholdClaim(rules, claim, judged, form));
      if (about === undefined) return oneOf(names);
      return strongest(about, strongestThresholdClaim(rules, about, judged, form));
    },
  });
}

function strongest(about: LabelNutrient, found: ReturnType<typeof strongestThresholdClaim>): Result<Answer> {
  if (!found.ok) return found;
  return found.value === null
    ? ok({ results: [ofWord(`strongest claim on ${about}`, 'none that is known to be allowed')] })
    : verdictAnswer(ok(found.value));
}

export const CLAIMS: readonly Calculation[] = [
  calculation({
    name: 'us-claim',
    what: 'whether a US label may say that a food has little or none of something',
    inputs: {
      claim: optional(choice<ContentClaimName>(CONTENT_CLAIMS, 'the claim'), 'the strongest one on `about`'),
      about: ABOUT,
      kind: byDefault(choice(['food', 'meal'], 'meals and main dishes have limits of their own'), 'food'),
      ...US_BASES,
      ...LABELED,
    },
    example: ['claim=low sodium', 'per=85g', 'reference=85g', 'serving=85g', 'sodium=140mg'],
    holdsFor: ON_LABELS,
    sources: ['21 CFR 101.60 to 101.62'],
    compute: ({ claim, about, kind, reference, small, serving, ...food }) => {
      const judged = labeledFood(food, { reference, small, serving });
      if (claim !== undefined) return verdictAnswer(usClaim(claim, judged, kind));
      if (about === undefined) return oneOf(CONTENT_CLAIMS);
      const best = strongestUsClaim(about, judged, kind);
      if (!best.ok) return best;
      const verdict = strongest(about, ok(best.value.verdict));
      if (!verdict.ok || !best.value.open) return verdict;
      const open = 'A stronger claim cannot be ruled out: an amount that it asks for is not known.';
      return ok({ ...verdict.value, cautions: [...(verdict.value.cautions ?? []), open] });
    },
  }),
  threshold('eu', 'Regulation (EC) 1924/2006, Annex', ['claim=low salt', 'per=100g', 'sodium=120mg']),
  threshold('codex', 'Codex CXG 23-1997', ['claim=low sodium', 'per=100g', 'sodium=120mg']),
  calculation({
    name: 'healthy-claim',
    what: 'whether a food stays within the new US limits of the word healthy',
    inputs: {
      kind: choice(Object.keys(HEALTHY_ROWS) as HealthyKind[], 'the kind of food'),
      'holds-group': answer('whether it holds enough of its food group'),
      ...US_BASES,
      ...LABELED,
      day: optional(words('the day, as 2027-03-01, for which test holds then'), 'not asked'),
    },
    example: [
      ...['kind=mixed product', 'holds-group=yes', 'per=100g', 'reference=100g'],
      ...['added-sugars=5g', 'sodium=345mg', 'saturated-fat=2g'],
    ],
    holdsFor: 'US labels by the test of 2024; rows that are not settled are refused',
    sources: ['21 CFR 101.65(d), 89 FR 106064'],
    compute: ({ kind, day, reference, small, serving, 'holds-group': group, ...food }) => {
      const judged = labeledFood(food, { reference, small, serving });
      const verdict = verdictAnswer(healthyByNewTest(kind, judged, group));
      if (!verdict.ok || day === undefined) return verdict;
      const test = healthyTestOn(day);
      return test.ok
        ? ok({ ...verdict.value, results: [...verdict.value.results, ofWord(`test on ${day}`, test.value)] })
        : test;
    },
  }),
];
