import type { Register } from '../../cautions/index.js';
import type { Place } from '../../diagnostics/index.js';
import type { KnownDirective } from '../../lesson/index.js';

export const TOPICS = [
  'poultry',
  'meat',
  'fish',
  'eggs',
  'leftovers',
  'shared meals',
  'produce',
  'cans',
  'beans',
] as const;
export type Topic = (typeof TOPICS)[number];

export const UNITS = ['auto', 'F', 'C'] as const;

export const schema: KnownDirective = {
  name: 'safe-food',
  forms: ['leaf'],
  id: 'required',
  attributes: {
    topics: {
      kind: { is: 'list', commas: true },
      required: true,
      help: `what it is about, the most important first: ${TOPICS.join(', ')}`,
    },
    units: {
      kind: { is: 'choice', of: UNITS },
      help: 'F or C for one scale alone; auto prints the scale of the table and the other beside it (auto when left out)',
    },
    tasting: {
      kind: { is: 'choice', of: ['yes', 'no'] },
      help: 'yes when people share food in the room, so that what others must not touch is said',
    },
  },
};

/** A time or a temperature of the register. */
export type Limit = Register['values'][string][string];
/** Times and temperatures of one country, by their names in the register. */
export type Limits = Readonly<Record<string, Limit>>;

export interface Values {
  readonly id: string;
  readonly topics: readonly Topic[];
  readonly units: (typeof UNITS)[number];
  readonly tasting: boolean;
  readonly us: Limits;
  readonly metric: Limits;
  readonly place: Place;
}

/** What the card says of a topic: terms, and the limits that fill their slots. */
export interface TopicLines {
  readonly do: `do-${string}`;
  readonly toss: `toss-${string}`;
  /** The same in few words, for `short` and the screen. */
  readonly brief: readonly [doing: `brief-do-${string}`, tossing: `brief-toss-${string}`];
  /** Names of the limits in both, as the register has them. */
  readonly limits: readonly string[];
  /** Whether its heat must also be held, where a country's table says how long. */
  readonly heats: boolean;
}

export const LINES = {
  poultry: {
    do: 'do-poultry',
    toss: 'toss-poultry',
    brief: ['brief-do-poultry', 'brief-toss-poultry'],
    limits: ['poultry', 'chill-time'],
    heats: true,
  },
  meat: {
    do: 'do-meat',
    toss: 'toss-meat',
    brief: ['brief-do-meat', 'brief-toss-meat'],
    limits: ['ground', 'whole', 'chill-time'],
    heats: true,
  },
  fish: {
    do: 'do-fish',
    toss: 'toss-fish',
    brief: ['brief-do-fish', 'brief-toss-fish'],
    limits: ['whole', 'chill-time'],
    heats: true,
  },
  eggs: {
    do: 'do-eggs',
    toss: 'toss-eggs',
    brief: ['brief-do-eggs', 'brief-toss-eggs'],
    limits: ['ground', 'chill-time'],
    heats: true,
  },
  leftovers: {
    do: 'do-leftovers',
    toss: 'toss-leftovers',
    brief: ['brief-do-leftovers', 'brief-toss-leftovers'],
    limits: ['chill-time', 'leftover-days', 'poultry'],
    heats: true,
  },
  'shared meals': {
    do: 'do-shared',
    toss: 'toss-shared',
    brief: ['brief-do-shared', 'brief-toss-shared'],
    limits: ['hold', 'fridge', 'chill-time'],
    heats: false,
  },
  produce: {
    do: 'do-produce',
    toss: 'toss-produce',
    brief: ['brief-do-produce', 'brief-toss-produce'],
    limits: ['chill-time'],
    heats: false,
  },
  cans: {
    do: 'do-cans',
    toss: 'toss-cans',
    brief: ['brief-do-cans', 'brief-toss-cans'],
    limits: ['leftover-days'],
    heats: false,
  },
  beans: {
    do: 'do-beans',
    toss: 'toss-beans',
    brief: ['brief-do-beans', 'brief-toss-beans'],
    limits: ['bean-soak', 'bean-boil'],
    heats: false,
  },
} as const satisfies Readonly<Record<Topic, TopicLines>>;

/** What holds for all food, at the foot of the card. */
export const ALL_FOOD: TopicLines = {
  do: 'do-all',
  toss: 'toss-all',
  brief: ['brief-do-all', 'brief-toss-all'],
  limits: ['fridge', 'freezer', 'chill-time'],
  heats: false,
};

/** A thing to keep or to throw out: a limit that it stays within or goes over, or something that is seen. */
export type Found =
  | { readonly topic: Topic; readonly says: `found-${string}`; readonly limit: string; readonly over: number }
  | {
      readonly topic: Topic;
      readonly says: `found-${string}`;
      readonly keep: boolean;
      readonly why: `why-${string}`;
    };

/** In the order in which they are asked; how far a time goes over or under its limit, in the limit's unit. House figures. */
export const FOUND: readonly Found[] = [
  { topic: 'poultry', says: 'found-poultry', limit: 'chill-time', over: 2 },
  { topic: 'leftovers', says: 'found-leftovers', limit: 'leftover-days', over: -1 },
  { topic: 'cans', says: 'found-can-swollen', keep: false, why: 'why-can-swollen' },
  { topic: 'produce', says: 'found-produce', limit: 'chill-time', over: -0.5 },
  { topic: 'meat', says: 'found-meat', limit: 'chill-time', over: 1 },
  { topic: 'fish', says: 'found-fish', limit: 'chill-time', over: -0.5 },
  { topic: 'shared meals', says: 'found-shared', limit: 'chill-time', over: 2 },
  { topic: 'beans', says: 'found-beans', keep: false, why: 'why-beans' },
  { topic: 'cans', says: 'found-can-dent', keep: true, why: 'why-can-dent' },
  { topic: 'eggs', says: 'found-eggs', limit: 'chill-time', over: 1 },
  { topic: 'leftovers', says: 'found-leftovers-old', limit: 'leftover-days', over: 3 },
];
