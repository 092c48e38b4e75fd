import { nearest } from '../../diagnostics/index.js';
import type { DirectivePart } from '../../lesson/index.js';
import type { ReadContext } from '../contract.js';
import { quoted, readProblem } from '../problems.js';
import { written } from '../written.js';
import { TOPICS, type Topic, UNITS, type Values } from './schema.js';

/** Ways of keeping food that are never taught in a lesson: done wrong they kill without a smell. */
const NOT_TAUGHT =
  /\b(?:home[ -]?)?cann(?:ing|ed at home)|preserv|jarring|\bin oil\b|\bcuring\b|ferment|sprouting|raw[ -]milk cheese/i;

/** Reads the topics. What is not taught is refused; an unknown topic is a problem; then nothing is shown. */
export function read(part: DirectivePart, { register, report, refuse }: ReadContext): Values | undefined {
  const topics = written(part, 'topics');
  if (!part.id || !topics) return undefined;
  const words = topics.value
    .split(/[,;]/)
    .map((word) => word.trim().toLowerCase().replace(/\s+/g, ' '))
    .filter(Boolean);
  if (words.some((word) => NOT_TAUGHT.test(word))) {
    refuse('R23', topics.place);
    return undefined;
  }
  const known = (word: string): Topic | undefined => TOPICS.find((topic) => topic === word);
  const strange = words.find((word) => !known(word));
  if (strange !== undefined || words.length === 0) {
    report.add(
      readProblem(
        'safe-food/topic',
        {
          reason: strange === undefined ? 'No topic is named.' : `There is no topic ${quoted(strange)}.`,
          hint: `Topics: ${TOPICS.join(', ')}.`,
          near:
            strange === undefined
              ? []
              : nearest(strange, TOPICS).filter((one) => TOPICS.some((t) => t === one)),
        },
        topics.place,
      ),
    );
    return undefined;
  }
  return {
    id: part.id,
    topics: [...new Set(words.flatMap((word) => known(word) ?? []))],
    units: UNITS.find((unit) => unit === part.attributes.get('units')?.value) ?? 'auto',
    tasting: part.attributes.get('tasting')?.value === 'yes',
    us: register.values.us ?? {},
    metric: register.values.uk ?? {},
    place: part.place,
  };
}
