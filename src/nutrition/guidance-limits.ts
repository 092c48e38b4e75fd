import { GUIDANCE_SOURCES, type GuidanceEdition } from './guidance-patterns.js';
import type { Published } from './published.js';

/** What an edition may say something about, beside food groups. */
export const GUIDANCE_TOPICS = [
  'added sugars',
  'saturated fat',
  'sodium',
  'protein',
  'alcohol, men',
  'alcohol, women',
] as const;
export type GuidanceTopic = (typeof GUIDANCE_TOPICS)[number];

/** What an edition says on a topic. */
export interface GuidanceLimit extends Published {
  readonly edition: GuidanceEdition;
  readonly topic: GuidanceTopic;
  /** `none` when the edition gives no figure on purpose; `low` and `high` are then `null`. */
  readonly says: 'a figure' | 'none';
  readonly low: number | null;
  readonly high: number | null;
  /** Below `high`, not at it. */
  readonly under: boolean;
  readonly unit: string;
}

type Row = Pick<GuidanceLimit, 'low' | 'high' | 'under' | 'unit'> & { readonly note?: string };

const NONE = { low: null, high: null, under: false } as const;
const upTo = (high: number, unit: string, note?: string): Row => ({
  low: null,
  high,
  under: false,
  unit,
  ...(note === undefined ? {} : { note }),
});
const below = (high: number, unit: string, note?: string): Row => ({
  ...upTo(high, unit, note),
  under: true,
});

const LIMITS: Readonly<Record<GuidanceEdition, Readonly<Record<GuidanceTopic, Row>>>> = {
  'us-2020': {
    'added sugars': below(10, 'percent of energy', 'from 2 years; none before'),
    'saturated fat': below(10, 'percent of energy', 'from 2 years'),
    sodium: below(2300, 'mg a day', 'from 14 years; less before'),
    protein: {
      ...NONE,
      unit: 'g per kg of body weight a day',
      note: 'the reference intakes stand in its place',
    },
    'alcohol, men': upTo(2, 'drinks a day'),
    'alcohol, women': upTo(1, 'drinks a day'),
  },
  'us-2025': {
    'added sugars': upTo(10, 'g a meal'),
    'saturated fat': upTo(10, 'percent of energy'),
    sodium: below(2300, 'mg a day'),
    protein: { low: 1.2, high: 1.6, under: false, unit: 'g per kg of body weight a day', note: 'adults' },
    'alcohol, men': { ...NONE, unit: 'drinks a day', note: 'drink less; no count is given' },
    'alcohol, women': { ...NONE, unit: 'drinks a day', note: 'drink less; no count is given' },
  },
};

/**
 * What one edition says on a topic. There is no default edition. Sources: Dietary Guidelines for Americans, 2020-2025,
 * as public copies give it, and 2025-2030 as press and professional summaries of January 2026 give it.
 */
export function guidanceLimit(edition: GuidanceEdition, topic: GuidanceTopic): GuidanceLimit {
  const row = LIMITS[edition][topic];
  return {
    edition,
    topic,
    says: row.high === null ? 'none' : 'a figure',
    ...row,
    source: GUIDANCE_SOURCES[edition],
    checked: 'copies',
  };
}
