/**
 * Who is in the room, by the words with which a lesson names its audience or its title. English stems from the start
 * of a word; one list for every refusal, so that no two of them disagree about who is there.
 */
const STEMS = {
  infants:
    'infant|bab(?:y|ies)(?!s)|newborn|weaning|under[- ](?:1|one)\\b(?![- ]?[0-9])|under[- ](?:12|twelve) months',
  'under five': 'toddler|preschool|(?:young|small) child|under[- ](?:2|3|4|5|two|three|four|five)\\b',
  children: 'child(?!less)|kid(?:s)?\\b|girls?\\b|boys?\\b|minors?\\b',
  teens: 'teen|adolescent|youth|young people|under[- ](?:18|19|eighteen)',
  school: 'school|classroom|pupil|student',
  families: 'famil|parents?\\b',
  pregnancy: 'pregnan|expecting|prenatal|postpartum',
  breastfeeding: 'breast-?feed|nursing (?:mothers|parents)',
  kidney: 'kidney|dialysis|CKD\\b',
  'older adults': 'older adult|seniors?\\b|over 65',
  'low immunity': '(?:low |weak )?immunity|cancer|chemotherapy',
  g6pd: 'g6pd',
} as const;
export type Room = keyof typeof STEMS;

const WORDS = Object.entries(STEMS).map(
  ([room, stems]) => [room as Room, new RegExp(`(?<![\\p{L}\\p{N}])(?:${stems})`, 'iu')] as const,
);

/** Infants and small children are children too, and come with their families. */
const YOUNG: readonly Room[] = ['infants', 'under five'];

/** Rooms by what a refusal calls them; one place, so that a refusal means the same in a figure and in a text. */
export const ROOMS = {
  infants: ['infants'],
  'small children': YOUNG,
  children: [...YOUNG, 'children', 'families'],
  pregnancy: ['pregnancy'],
  kidney: ['kidney'],
  frail: ['infants', 'pregnancy', 'older adults', 'low immunity'],
  'no potassium salt': [...YOUNG, 'children', 'teens', 'families', 'pregnancy', 'breastfeeding', 'kidney'],
  'no weight': [...YOUNG, 'children', 'teens', 'school', 'families', 'pregnancy', 'breastfeeding'],
  g6pd: ['g6pd'],
} as const satisfies Readonly<Record<string, readonly Room[]>>;
export type RoomGroup = keyof typeof ROOMS;

/** The words that put one of a group's rooms into an audience, or nothing when none of them is there. */
export function roomIn(audience: string, group: RoomGroup): string | undefined {
  const rooms: readonly Room[] = ROOMS[group];
  for (const [room, words] of WORDS) {
    const found = rooms.includes(room) ? words.exec(audience)?.[0] : undefined;
    if (found !== undefined) return found;
  }
  return undefined;
}
