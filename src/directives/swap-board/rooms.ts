/** People who have to be kept from some foods. */
export type Room = 'babies' | 'under five' | 'no potassium salt';

const BABIES = /\b(?:infants?|bab(?:y|ies)|newborns?|weaning|under (?:1|one)|under (?:12|twelve) months)\b/i;
const UNDER_FIVE =
  /\b(?:toddlers?|preschool\w*|young child\w*|small child\w*|under (?:2|3|4|5|two|three|four|five))\b/i;
const NO_POTASSIUM_SALT = /child|\bkids?\b|famil|pregnan|expecting|kidney/i;

/** Reads who is in the room from the words in which a lesson names its audience. */
export function roomsIn(audience: string): ReadonlySet<Room> {
  const babies = BABIES.test(audience);
  const small = babies || UNDER_FIVE.test(audience);
  return new Set<Room>([
    ...(babies ? (['babies'] as const) : []),
    ...(small ? (['under five'] as const) : []),
    ...(small || NO_POTASSIUM_SALT.test(audience) ? (['no potassium salt'] as const) : []),
  ]);
}
