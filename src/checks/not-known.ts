import type { Report } from '../diagnostics/index.js';
import type { Numbers } from '../document/index.js';
import { fillSlots, isSpoken, POLICIES } from '../languages/index.js';
import { type Built, languageOf, plain, spoilsOf } from './built.js';
import { checkProblem } from './codes.js';
import { digitsIn, shownIn } from './shown.js';

export interface NotKnownInput {
  readonly built: readonly Built[];
  readonly numbers: Numbers;
}

/**
 * N04: a number without a value is shown in the words for "not known" and never with digits or at a
 * place on a line; a total whose parts are not all known says "at least", in its record and on pages.
 */
export function checkNotKnown({ built, numbers }: NotKnownInput, report: Report): void {
  for (const number of numbers.all) {
    const unknown = number.inputs.filter((i) => i.value === null).map((i) => i.name);
    if (number.value !== null && unknown.length > 0 && number.atLeast !== true)
      report.add(
        checkProblem(
          'N04',
          `\`${number.id}\` (${number.what}) has a value although ${unknown.join(', ')} is not known, and does not say at least.`,
          {
            hint: 'Mark the total as at least, or leave its value unknown.',
          },
        ),
      );
  }
  for (const output of built) {
    const language = languageOf(output);
    if (!isSpoken(language)) continue;
    const policy = POLICIES[language];
    const atLeast = plain(fillSlots(policy.atLeast, { value: '' }));
    for (const shown of shownIn(output)) {
      const number = numbers.get(shown.id);
      if (!number) continue;
      const tell = (message: string, right: string) =>
        report.add(
          checkProblem('N04', `${output.name}: \`${shown.id}\` (${number.what}) ${message}`, {
            ...(shown.place ? { place: shown.place } : {}),
            hint: `Show it as "${right}".`,
            actual: shown.text,
            spoils: spoilsOf(output),
          }),
        );
      const ranged = number.low !== undefined && number.high !== undefined;
      if (number.value === null && !ranged) {
        const digits = digitsIn(shown.text, language);
        if (digits.length > 0 || (shown.drawn !== undefined && shown.drawn !== null))
          tell(`is not known and is shown as "${shown.text}".`, policy.notKnown);
      } else if (
        number.atLeast === true &&
        !shown.text.includes(atLeast) &&
        digitsIn(shown.text, language).length > 0
      )
        tell(`is a total with a part that is not known, and is shown as "${shown.text}".`, `${atLeast} …`);
    }
  }
}
