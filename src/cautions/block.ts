import type { Place, Report } from '../diagnostics/index.js';
import type { CautionBlock, CautionLine } from '../document/index.js';
import { sayFrom } from '../languages/index.js';
import { cautionProblem } from './codes.js';
import type { Pulled } from './facts.js';
import { HEADINGS } from './register.js';
import { wordCount } from './sentences.js';
import { cautionTerms, headingKey } from './terms.js';
import { type Setting, wordsOf } from './wording.js';

/** Most boxes a lesson should pull. */
export const MOST_BOXES = 8;
/** Words of all boxes on one sheet, in the wording that the level prints. House figures. */
export const BUDGET = { short: 130, plain: 130, fuller: 300 } as const;

/** The boxes of a lesson in the order in which they print: Stop, Every time, Ask first. */
export function boxesOf(pulled: readonly Pulled[]): readonly Pulled[] {
  return HEADINGS.flatMap((heading) => pulled.filter((p) => p.caution.heading === heading));
}

/**
 * The one block of a sheet: a line for each box, whole and in order. Too many boxes or words are
 * reported with what pulls each line; nothing is left out for it.
 */
export function cautionBlock(pulled: readonly Pulled[], setting: Setting, report: Report): CautionBlock {
  const boxes = boxesOf(pulled);
  const say = sayFrom(cautionTerms, setting.language);
  const lines = boxes.flatMap((p): CautionLine[] => {
    const heading = p.caution.heading;
    if (heading === undefined) return [];
    return [
      {
        id: p.caution.id,
        heading,
        word: say(headingKey(heading)),
        inlines: wordsOf(p, setting, report),
      },
    ];
  });
  tight(boxes, setting, report);
  return { lines, whoToAsk: say('who') };
}

/**
 * Counts the words of the boxes at a level. A stop that the lesson's subject pulls prints its longer
 * wording on the plain sheet; it is counted by its short one there, since the budget is about how many
 * groups of people must find their line.
 */
export function boxWords(
  boxes: readonly Pulled[],
  level: 'short' | 'plain' | 'fuller',
  language: string,
): number {
  const size = level === 'fuller' ? 'plain' : 'short';
  return boxes.reduce((sum, p) => sum + wordCount(p.caution.wordings[language]?.[size] ?? ''), 0);
}

function tight(boxes: readonly Pulled[], { level, language, output }: Setting, report: Report): void {
  if (boxes.length > MOST_BOXES)
    report.add(
      cautionProblem(
        'cautions/boxes',
        `This lesson pulls ${boxes.length} boxes; at most ${MOST_BOXES} can be found by the people they are for.`,
        {
          ...askedAt(boxes),
          hint: `Should it be two lessons? ${whatPulls(boxes)}`,
        },
      ),
    );
  if (level === 'staff' || output === 'slides' || output === 'staff') return;
  const words = boxWords(boxes, level, language);
  if (words > BUDGET[level])
    report.add(
      cautionProblem(
        'cautions/budget',
        `The boxes of the ${level} sheet have ${words} words; ${BUDGET[level]} is about the most.`,
        {
          ...askedAt(boxes),
          hint: `Should it be two lessons? ${whatPulls(boxes)}`,
          spoils: { levels: [level] },
        },
      ),
    );
}

/** The lesson's topics, since they are what its author can part; else the first thing that pulls a box. */
function askedAt(boxes: readonly Pulled[]): { readonly place?: Place } {
  const reasons = boxes.flatMap((p) => p.reasons).filter((r) => r.place !== undefined);
  const place = (reasons.find((r) => r.by === 'topic') ?? reasons[0])?.place;
  return place ? { place } : {};
}

/** "damaged-cans: topic cans; pinto beans, canned in form-compare." for each line. */
function whatPulls(boxes: readonly Pulled[]): string {
  return boxes
    .map((p) => `${p.caution.id}: ${[...new Set(p.reasons.map((r) => r.says))].slice(0, 3).join('; ')}.`)
    .join(' ');
}
