import type { Report } from '../diagnostics/index.js';
import type { Numbers, ShownNumber } from '../document/index.js';
import { formatQuantity, isSpoken } from '../languages/index.js';
import { type Built, blocksOf, languageOf, spoilsOf } from './built.js';
import { checkProblem } from './codes.js';
import { digitsIn, type ShownAt, shownIn } from './shown.js';

/** What N02 looks at: all outputs of one build and the numbers they were made from. */
export interface SameNumbersInput {
  readonly built: readonly Built[];
  readonly numbers: Numbers;
}

/**
 * N02: what an output shows under an id is that number's one value, rounded once. Reported are ids that
 * no number has, digits that differ from the value's, dots drawn elsewhere, and answers on a key that no
 * number of their question has. A number shown in words ("about half") has no digits and passes.
 */
export function checkSameNumbers({ built, numbers }: SameNumbersInput, report: Report): void {
  for (const output of built) {
    const language = languageOf(output);
    for (const shown of shownIn(output)) checkShown(shown, output, numbers, language, report);
    checkAnswers(output, numbers, language, report);
  }
}

function checkShown(shown: ShownAt, output: Built, numbers: Numbers, language: string, report: Report): void {
  const number = numbers.get(shown.id);
  const tell = (message: string, expected?: string) =>
    report.add(
      checkProblem('N02', `${output.name}: ${message}`, {
        ...(shown.place ? { place: shown.place } : {}),
        hint: 'Let the program print the number from its id.',
        actual: shown.text,
        ...(expected === undefined ? {} : { expected: [expected] }),
        spoils: spoilsOf(output),
      }),
    );
  if (!number) {
    tell(`"${shown.text}" is shown as \`${shown.id}\`, and no number has that id.`);
    return;
  }
  const right = printed(number, language);
  if (right !== undefined && !sameDigits(shown.text, number, right, language))
    tell(`\`${shown.id}\` (${number.what}) is shown as "${shown.text}"; it is ${right}.`, right);
  if (shown.drawn !== undefined && shown.drawn !== number.value)
    tell(
      `\`${shown.id}\` is drawn at ${shown.drawn ?? 'no value'}; its value is ${number.value ?? 'not known'}.`,
    );
}

/** The number as the one rounding prints it; nothing in a language that the program does not speak. */
function printed(number: ShownNumber, language: string): string | undefined {
  if (!isSpoken(language)) return undefined;
  return formatQuantity(number, language);
}

function sameDigits(text: string, number: ShownNumber, right: string, language: string): boolean {
  const found = digitsIn(text, language);
  if (found.length === 0) return true;
  const all = digitsIn(right, language);
  // One end of a range may stand alone, beside its mark in the figure.
  const ends = number.low !== undefined && found.length === 1;
  return ends ? all.includes(found[0] ?? '') : found.join(' ') === all.join(' ');
}

/** On a key each choice shows its value; it has to be a value of that question's numbers. */
function checkAnswers(output: Built, numbers: Numbers, language: string, report: Report): void {
  if (!isSpoken(language)) return;
  for (const block of blocksOf(output)) {
    if (block.kind !== 'question') continue;
    const own = numbers.all.filter((n) => isOf(n.id, block.id));
    if (own.length === 0) continue;
    const values = new Set(own.map((n) => digitsIn(formatQuantity(n, language), language).join(' ')));
    for (const choice of block.choices) {
      const digits = choice.key ? digitsIn(choice.key.value, language).join(' ') : '';
      if (digits === '' || values.has(digits)) continue;
      report.add(
        checkProblem(
          'N02',
          `${output.name}: the key of \`${block.id}\` says "${choice.key?.value}" for ${choice.letter}, which is no value of that question.`,
          {
            ...(block.place ? { place: block.place } : {}),
            hint: 'Let the key take its values from the computed numbers.',
            spoils: spoilsOf(output),
          },
        ),
      );
    }
  }
}

/** `q1.pinto-beans.sodium` belongs to the questions `q1` and `q1-2` of one directive. */
function isOf(number: string, question: string): boolean {
  const directive = number.split('.')[0] ?? '';
  return (
    question === directive ||
    (question.startsWith(`${directive}-`) && /^\d+$/.test(question.slice(directive.length + 1)))
  );
}
