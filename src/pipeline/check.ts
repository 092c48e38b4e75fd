import { standingLines } from '../cautions/index.js';
import {
  type Built,
  checkAlternatives,
  checkBodies,
  checkCautionsKept,
  checkLevelsAgree,
  checkNotKnown,
  checkRinseClaims,
  checkSameNumbers,
  checkSharedBasis,
  checkStructure,
  type Leveled,
} from '../checks/index.js';
import type { Report } from '../diagnostics/index.js';
import { type Desk, standingSetting } from './sheets.js';

/** Every rule of the editor over a lesson and all that was laid out from it. */
export function checkAll(desk: Desk, built: readonly Built[], report: Report): void {
  const { computed, facts, pulled } = desk;
  const { lesson, numbers } = computed;
  const passages = facts.texts;
  checkSameNumbers({ built, numbers }, report);
  checkNotKnown({ built, numbers }, report);
  checkSharedBasis({ comparisons: comparisonsOf(desk), numbers }, report);
  checkRinseClaims({ passages, numbers }, report);
  checkBodies({ passages, language: lesson.front.language }, report);
  checkLevelsAgree({ lesson, cautions: ownWordings(desk) }, report);
  checkAlternatives({ built }, report);
  checkStructure({ built }, report);
  const standing = (output: Built) => {
    const [kind, level] =
      output.kind === 'deck'
        ? (['slides', 'plain'] as const)
        : ([output.sheet.kind, output.sheet.level] as const);
    return standingLines(pulled, facts, standingSetting(desk, kind, level));
  };
  checkCautionsKept({ pulled, built, standing }, report);
}

/** Directives that set foods side by side on a basis. */
function comparisonsOf(desk: Desk) {
  return desk.computed.entries.flatMap(({ part, computed }) => {
    const basis = computed?.facts.basis;
    return basis === undefined || !part.id
      ? []
      : [{ id: part.id, place: part.place, basis, foods: computed?.facts.foods ?? [] }];
  });
}

/** The wordings of the lesson's own cautions, level by level. */
function ownWordings({ facts }: Desk): Leveled[] {
  return facts.own.map(({ id, wordings, at }) => {
    const words = wordings[facts.language];
    const levels = ['short', 'plain', 'fuller'] as const;
    return {
      what: `the caution ${id}`,
      texts: levels.flatMap((level) => (words ? [{ level, text: words[level], place: at }] : [])),
    };
  });
}
