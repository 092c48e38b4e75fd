import {
  alcoholIn,
  asGiven,
  carbohydrateChoices,
  EXCHANGE_LISTS,
  type ExchangeName,
  FROM_LESSON,
  fromInternationalUnits,
  INTERNATIONAL_UNITS,
  input,
  ok,
  STANDARD_DRINKS,
  shownChoices,
  sumExchanges,
  unitRatio,
  type VitaminForm,
} from '../../nutrition/index.js';
import { choice } from './choices.js';
import { calculation, type Field } from './contract.js';
import { amount, byDefault, measured, number } from './fields.js';
import { type Kebab, kebab, ofNumber, ofRange, ofReckoned, quantityOf } from './values.js';

const EXCHANGES = Object.fromEntries(
  (Object.keys(EXCHANGE_LISTS) as ExchangeName[]).map((name) => [
    kebab(name),
    byDefault(number('', `exchanges of ${name}`), 0),
  ]),
) as Readonly<Record<Kebab<ExchangeName>, Field<number>>>;

/** What food holds, in units of teaching and of old labels. */
export const COMPOSITION = [
  calculation({
    name: 'carbohydrate-choices',
    also: ['carb-choices'],
    what: 'carbohydrate in choices of 15 g, exact and in the halves that are shown',
    inputs: { carbohydrate: measured(['g'], 'carbohydrate') },
    example: ['carbohydrate=37g'],
    holdsFor: 'teaching; the bands are common practice',
    sources: ['common practice of diabetes teaching, from memory'],
    compute: ({ carbohydrate }) => {
      const quantity = quantityOf(carbohydrate);
      const working = asGiven(input('carbohydrate', carbohydrate.value, 'g', FROM_LESSON));
      const choices = carbohydrateChoices({ quantity, working, estimated: false });
      const shown = shownChoices(quantity);
      if (!shown.ok) return shown;
      return ok({
        results: [ofReckoned('choices', choices), ofNumber('shown as', shown.value, 'choices')],
      });
    },
  }),
  calculation({
    name: 'exchanges',
    what: 'what a number of exchanges add up to',
    inputs: EXCHANGES,
    example: ['starch=2', 'fat=1'],
    holdsFor: 'round averages of the lists; no food holds exactly these',
    sources: ['exchange lists for diabetes teaching, common practice, from memory'],
    compute: (counts) => {
      const total = sumExchanges(
        Object.fromEntries(
          (Object.keys(EXCHANGE_LISTS) as ExchangeName[]).map((name) => [name, counts[kebab(name)]]),
        ),
      );
      if (!total.ok) return total;
      const { carbohydrate, protein, fat, kcal } = total.value;
      return ok({
        results: [
          ofNumber('carbohydrate', carbohydrate, 'g'),
          ofNumber('protein', protein, 'g'),
          ofRange('fat', fat, 'g'),
          ofNumber('energy', kcal, 'kcal'),
        ],
      });
    },
  }),
  calculation({
    name: 'alcohol',
    also: ['standard-drinks'],
    what: 'the alcohol in a drink, its energy, and standard drinks',
    inputs: {
      volume: amount(['mL', 'L', 'fl oz', 'cup'], 'how much of the drink'),
      strength: number('percent', 'percent by volume', { range: '0 to 100' }),
      country: byDefault(
        choice(Object.keys(STANDARD_DRINKS) as (keyof typeof STANDARD_DRINKS)[], 'whose standard drink'),
        'us',
      ),
    },
    example: ['volume=355mL', 'strength=5%'],
    holdsFor: 'the energy of the alcohol alone; says nothing of how much is safe',
    sources: ['US standard drink of 14 g, UK unit of 8 g, from memory'],
    compute: ({ volume, strength, country }) => {
      const drink = alcoholIn(volume.value * unitRatio(volume.unit, 'mL'), strength, country);
      if (!drink.ok) return drink;
      const { grams, kcal, drinks, working } = drink.value;
      return ok({
        results: [
          ofNumber('alcohol', grams, 'g', working),
          ofNumber('energy of the alcohol', kcal, 'kcal'),
          { ...ofNumber('standard drinks', drinks, 'drinks'), says: `as counted in: ${country}` },
        ],
      });
    },
  }),
  calculation({
    name: 'international-units',
    also: ['iu'],
    what: 'international units of a vitamin as a mass, by the form of the vitamin',
    inputs: {
      form: choice(
        Object.keys(INTERNATIONAL_UNITS) as VitaminForm[],
        'the form; without it an IU says nothing',
      ),
      amount: number('IU', 'international units'),
    },
    example: ['form=vitamin D', 'amount=800IU'],
    holdsFor: 'the form that is named: vitamin A as RAE, vitamin E as alpha-tocopherol',
    sources: ['21 CFR 101.9(c)(8)(iv), footnotes, and NIH Office of Dietary Supplements, from memory'],
    compute: ({ form, amount }) => {
      const mass = fromInternationalUnits(form, amount);
      const one = INTERNATIONAL_UNITS[form];
      return ok({
        results: [
          ofNumber('mass', mass.value, mass.unit, {
            formula: 'units * each',
            inputs: [
              input('units', amount, 'IU', FROM_LESSON),
              input('each', one.value, `${one.unit} per IU`, '21 CFR 101.9(c)(8)(iv)', form),
            ],
          }),
        ],
      });
    },
  }),
];
