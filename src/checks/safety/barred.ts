import { type DirectiveFacts, type Register, type RoomGroup, roomIn } from '../../cautions/index.js';
import type { Report } from '../../diagnostics/index.js';
import { checkProblem } from '../codes.js';

/** Foods that are not offered to some rooms at all. */
const BARRED: readonly {
  readonly code: 'S01' | 'S06' | 'S10' | 'S15';
  readonly refusal: string;
  readonly flags: readonly string[];
  readonly rooms: RoomGroup;
}[] = [
  { code: 'S01', refusal: 'R01', flags: ['potassium-chloride'], rooms: 'no potassium salt' },
  { code: 'S10', refusal: 'R03', flags: ['honey'], rooms: 'infants' },
  { code: 'S10', refusal: 'R04', flags: ['cow-milk-drink', 'plant-drink', 'rice-drink'], rooms: 'infants' },
  { code: 'S10', refusal: 'R05', flags: ['choke-shape'], rooms: 'small children' },
  {
    code: 'S15',
    refusal: 'R28',
    flags: ['raw-animal', 'unpasteurized', 'deli-chilled', 'sprouts', 'raw-flour', 'cold-smoked-fish'],
    rooms: 'frail',
  },
  { code: 'S06', refusal: 'R29', flags: ['star-fruit'], rooms: 'kidney' },
  { code: 'S06', refusal: 'R29', flags: ['liver'], rooms: 'pregnancy' },
  { code: 'S06', refusal: 'R29', flags: ['high-mercury'], rooms: 'pregnancy' },
  { code: 'S06', refusal: 'R29', flags: ['high-mercury'], rooms: 'children' },
  { code: 'S06', refusal: 'R29', flags: ['fava'], rooms: 'g6pd' },
];

export interface BarredFoodsInput {
  readonly directives: readonly DirectiveFacts[];
  /** For whom the lesson is, in its own words. */
  readonly audience: string;
  readonly register: Register;
}

/** Foods in figures, plates, swaps and quizzes that the audience must not be offered. What a swap takes out is no offer. */
export function checkBarredFoods({ directives, audience, register }: BarredFoodsInput, report: Report): void {
  for (const { code, refusal, flags, rooms } of BARRED) {
    const entry = register.refusals.find(({ id }) => id === refusal);
    if (roomIn(audience, rooms) === undefined || !entry) continue;
    for (const { foods, place: whole } of directives)
      for (const { food, place = whole, side } of foods) {
        if (side === 'old' || !food.flags.some((flag) => flags.includes(flag))) continue;
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
