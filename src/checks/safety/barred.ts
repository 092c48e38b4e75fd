import type { DirectiveFacts, Register } from '../../cautions/index.js';
import type { Report } from '../../diagnostics/index.js';
import { checkProblem } from '../codes.js';

const CHILDREN = ['child', 'children', 'kids', 'toddler', 'famil', 'infant', 'baby', 'babies'];
const BABIES = ['infant', 'baby', 'babies', 'newborn', 'weaning'];
const PREGNANT = ['pregnan', 'expecting'];
const FRAIL = [...PREGNANT, ...BABIES, 'older adult', 'seniors', 'over 65', 'immunity', 'cancer'];

/** Foods that are not offered to some rooms at all, by the words with which a lesson names its audience. */
const BARRED = [
  { code: 'S01', refusal: 'R01', flags: ['potassium-chloride'], rooms: [...CHILDREN, ...PREGNANT, 'kidney'] },
  { code: 'S10', refusal: 'R03', flags: ['honey'], rooms: BABIES },
  { code: 'S10', refusal: 'R04', flags: ['cow-milk-drink', 'plant-drink', 'rice-drink'], rooms: BABIES },
  {
    code: 'S10',
    refusal: 'R05',
    flags: ['choke-shape'],
    rooms: [...BABIES, 'toddler', 'young child', 'preschool'],
  },
  {
    code: 'S15',
    refusal: 'R28',
    flags: ['raw-animal', 'unpasteurized', 'deli-chilled', 'sprouts', 'raw-flour', 'cold-smoked-fish'],
    rooms: FRAIL,
  },
  { code: 'S06', refusal: 'R29', flags: ['star-fruit'], rooms: ['kidney'] },
  { code: 'S06', refusal: 'R29', flags: ['liver'], rooms: PREGNANT },
  { code: 'S06', refusal: 'R29', flags: ['high-mercury'], rooms: [...PREGNANT, ...CHILDREN] },
  { code: 'S06', refusal: 'R29', flags: ['fava'], rooms: ['g6pd'] },
] as const;

export interface BarredFoodsInput {
  readonly directives: readonly DirectiveFacts[];
  /** For whom the lesson is, in its own words. */
  readonly audience: string;
  readonly register: Register;
}

/** Foods in figures, plates, swaps and quizzes that the audience must not be offered. What a swap takes out is no offer. */
export function checkBarredFoods({ directives, audience, register }: BarredFoodsInput, report: Report): void {
  const words = audience.toLowerCase();
  for (const { code, refusal, flags, rooms } of BARRED) {
    const room = rooms.find((one) => words.includes(one));
    const entry = register.refusals.find(({ id }) => id === refusal);
    if (!room || !entry) continue;
    for (const { foods, place: whole } of directives)
      for (const { food, place = whole, side } of foods) {
        if (side === 'old' || !food.flags.some((flag) => flags.some((one) => one === flag))) continue;
        report.add(
          checkProblem(code, `${food.name} is not offered to this audience ("${audience}"). (${refusal})`, {
            ...(place ? { place } : {}),
            hint: entry.instead,
            actual: food.name,
          }),
        );
      }
  }
}
