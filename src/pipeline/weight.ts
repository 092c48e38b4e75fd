import type { Place } from '../diagnostics/index.js';
import type { ComputedLesson } from './compute.js';

const TOPIC = 'weight';

/** Where a lesson is about body weight: its topic, and directives that are. Then it gets sheets without weight too. */
export function weightPlaces({ lesson, entries }: ComputedLesson): readonly Place[] {
  const { front, titlePlace } = lesson;
  const topics = front.topics.flatMap((topic, index) =>
    topic === TOPIC ? [front.places.get(`topics.${index}`) ?? titlePlace] : [],
  );
  return [...topics, ...entries.flatMap(({ part, kind }) => (kind.aboutWeight ? [part.place] : []))];
}
