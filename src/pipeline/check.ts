import { standingLines, withoutWeight } from '../cautions/index.js';
import { type Built, type Comparison, checkOutputs, checkSource } from '../checks/index.js';
import type { Report } from '../diagnostics/index.js';
import { type Desk, settingFor } from './sheets.js';
import { weightPlaces } from './weight.js';

/** Every rule of the editor over a lesson and all that was laid out from it. */
export function checkAll(desk: Desk, built: readonly Built[], report: Report): void {
  const { computed, facts, pulled } = desk;
  const { lesson, numbers } = computed;
  const comparisons = comparisonsOf(desk);
  checkSource(
    {
      lesson,
      passages: facts.texts,
      comparisons,
      numbers,
      pulled,
      facts,
      register: desk.tables.register,
      on: desk.on,
      weight: weightPlaces(computed),
    },
    report,
  );
  const standing = (output: Built) => {
    const setting =
      output.kind === 'deck'
        ? settingFor(desk, 'slides', 'plain')
        : settingFor(desk, output.sheet.kind, output.sheet.level);
    const noWeight = output.kind === 'sheet' && output.sheet.weightFree;
    return standingLines(noWeight ? withoutWeight(pulled) : pulled, facts, setting);
  };
  checkOutputs({ built, numbers, pulled, standing }, report);
}

/** Directives that set foods side by side on a basis. */
function comparisonsOf(desk: Desk): Comparison[] {
  return desk.computed.entries.flatMap(({ part, computed }) => {
    const basis = computed?.facts.basis;
    if (basis === undefined || !part.id) return [];
    return [{ id: part.id, place: part.place, basis, foods: computed?.facts.foods ?? [] }];
  });
}
