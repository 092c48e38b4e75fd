import {
  acceptableGrams,
  ENERGY_PARTS,
  ENERGY_SHARES,
  type EnergyPart,
  energyFromFat,
  foodEnergy,
  ketogenicRatio,
  ok,
  splitEnergy,
  unitRatio,
} from '../../nutrition/index.js';
import { choice } from './choices.js';
import { calculation, type Field } from './contract.js';
import { amount, byDefault, measured, number, optional } from './fields.js';
import { type Kebab, kebab, ofNumber, ofRange, ofWorked } from './values.js';

const GRAMS = (help: string) => amount(['g', 'mg'], help);
const inGrams = (one: { readonly value: number; readonly unit: 'g' | 'mg' }) =>
  one.value * unitRatio(one.unit, 'g');

const PARTS = Object.fromEntries(
  ENERGY_PARTS.map((part) => [kebab(part), optional(measured(['g'], part), 'none in the food')]),
) as Readonly<Record<Kebab<EnergyPart>, Field<{ readonly value: number | null } | undefined>>>;

/** Energy of food from its parts. */
export const FOOD_ENERGY = [
  calculation({
    name: 'food-energy',
    also: ['atwater', 'calories'],
    what: 'energy of a food from its parts, by the general factors or those of the EU',
    inputs: {
      method: byDefault(choice(['4-4-9-7', 'eu'], 'the factors'), '4-4-9-7'),
      unit: byDefault(choice(['kcal', 'kJ'], 'kJ has its own factors, and only in the EU'), 'kcal'),
      ...PARTS,
    },
    example: ['fat=8g', 'carbohydrate=37g', 'protein=3g'],
    holdsFor:
      'unrounded amounts; total carbohydrate with the general factors, without fiber and polyols in the EU',
    sources: ['21 CFR 101.9(c)(1)(i)(B); Regulation (EU) 1169/2011, Annex XIV'],
    compute: ({ method, unit, ...parts }) => {
      const grams = Object.fromEntries(
        ENERGY_PARTS.flatMap((part): [EnergyPart, number | null][] => {
          const given = parts[kebab(part)];
          return given === undefined ? [] : [[part, given.value]];
        }),
      );
      const energy = foodEnergy(method, unit, grams);
      return energy.ok ? ok({ results: [ofWorked('energy', energy.value)] }) : energy;
    },
  }),
  calculation({
    name: 'energy-shares',
    also: ['macronutrient-split'],
    what: 'where the energy of a food or a diet comes from',
    inputs: {
      carbohydrate: GRAMS('carbohydrate'),
      protein: GRAMS('protein'),
      fat: GRAMS('fat'),
      alcohol: byDefault(GRAMS('alcohol'), { value: 0, unit: 'g' }, '0 g'),
    },
    example: ['carbohydrate=30g', 'protein=8g', 'fat=10g'],
    holdsFor: 'the factors 4, 4, 9 and 7',
    sources: ['general factors, USDA Agriculture Handbook 74'],
    compute: (of) => {
      const split = splitEnergy({
        carbohydrate: inGrams(of.carbohydrate),
        protein: inGrams(of.protein),
        fat: inGrams(of.fat),
        alcohol: inGrams(of.alcohol),
      });
      if (!split.ok) return split;
      const { percent, workings } = split.value;
      return ok({
        results: ENERGY_SHARES.map((share) => ofNumber(share, percent[share], 'percent', workings[share])),
      });
    },
  }),
  calculation({
    name: 'acceptable-range',
    also: ['amdr'],
    what: 'the acceptable share of the energy in grams',
    inputs: {
      of: choice(['carbohydrate', 'protein', 'fat'], 'of what'),
      energy: amount(['kcal'], 'energy of a day'),
      ages: byDefault(choice(['adults', '4 to 18 years', '1 to 3 years'], 'whose range'), 'adults'),
    },
    example: ['of=carbohydrate', 'energy=2000kcal'],
    holdsFor: 'groups of the ages named',
    sources: ['nasem-dri'],
    ofPeople: true,
    compute: ({ of, energy, ages }) => {
      const range = acceptableGrams(of, energy.value, ages);
      if (!range.ok) return range;
      const { unit, working } = range.value;
      return ok({ results: [ofRange(of, range.value, `${unit} a day`, working)] });
    },
  }),
  calculation({
    name: 'ketogenic-ratio',
    what: 'grams of fat for each gram of protein and carbohydrate',
    inputs: { fat: GRAMS('fat'), protein: GRAMS('protein'), carbohydrate: GRAMS('carbohydrate') },
    example: ['fat=120g', 'protein=25g', 'carbohydrate=15g'],
    holdsFor: 'naming a diet that is prescribed and followed by a team; it is no advice',
    sources: ['ratio of fat to protein and carbohydrate; factors 9 and 4'],
    compute: ({ fat, protein, carbohydrate }) => {
      const ratio = ketogenicRatio(inGrams(fat), inGrams(protein), inGrams(carbohydrate));
      if (!ratio.ok) return ratio;
      return ok({
        results: [
          ofNumber('ratio', ratio.value.ratio, 'to 1', ratio.value.working),
          ofNumber('energy from fat', ratio.value.percentFromFat, 'percent'),
        ],
      });
    },
  }),
  calculation({
    name: 'energy-from-fat',
    what: 'the share of the energy from fat at a ketogenic ratio',
    inputs: { ratio: number('', 'grams of fat for one gram of protein and carbohydrate; 3 is 3:1') },
    example: ['ratio=3'],
    holdsFor: 'the factors 9 and 4',
    sources: ['9 × ratio ÷ (9 × ratio + 4) × 100'],
    compute: ({ ratio }) => ok({ results: [ofNumber('energy from fat', energyFromFat(ratio), 'percent')] }),
  }),
];
