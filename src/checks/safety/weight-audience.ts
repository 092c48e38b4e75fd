import { type Register, roomIn } from '../../cautions/index.js';
import type { Place, Report } from '../../diagnostics/index.js';
import { checkProblem } from '../codes.js';

/** Everything but the sheet without weight. */
const WEIGHTY = ['handout', 'worksheet', 'key', 'slides', 'staff', 'notes', 'cards'];

export interface WeightAudienceInput {
  /** Where the lesson is about body weight; none when it is not. */
  readonly weight: readonly Place[];
  readonly audience: string;
  readonly title: string;
  readonly register: Register;
}

/**
 * Content on weight is not given to people under 18, in pregnancy or breastfeeding, or at a school or family event; the
 * sheet without weight is. Everything else of such a lesson is withheld.
 */
export function checkWeightAudience(input: WeightAudienceInput, report: Report): void {
  const { weight, audience, title, register } = input;
  const room = roomIn(audience, 'no weight') ?? roomIn(title, 'no weight');
  const refusal = register.refusals.find(({ id }) => id === 'R14');
  const [place] = weight;
  if (!place || room === undefined || !refusal) return;
  report.add(
    checkProblem('S11', `${refusal.say} "${room}" names who is there. (R14)`, {
      place,
      hint: `${refusal.instead} It is built beside these; hand out that one alone.`,
      actual: room,
      spoils: { outputs: WEIGHTY },
    }),
  );
}
