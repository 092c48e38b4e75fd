import type { Place, Report } from '../diagnostics/index.js';
import type { Block, Inline, Sheet } from '../document/index.js';
import { type Built, opened, plain, spoilsOf } from './built.js';
import { checkProblem } from './codes.js';

/** Units of weight, words of it and words of energy. A measure of food is meant where a food follows. English. */
const WORDS: readonly RegExp[] = [
  /\d[\d.,/]* ?(?:lbs?|pounds?|kgs?|kilos?|kilograms?|stones?)\b(?! of [a-z])/i,
  /\b(?:pounds?|kilos?|kilograms?) (?:off|lost|gone|less|lighter|heavier|overweight)\b/i,
  /\b(?:body ?)?weights?\b/i,
  /\b(?:over|under)weight\b/i,
  /\bweigh(?:s|ed|ing|-ins?)?\b/i,
  /\b(?:bmi|body mass|body fat|waist\w*|obes\w+|slim\w*|skinny|plateau\w*)\b/i,
  /\b(?:k?cals?|k?calories?|kilocalories?|kilojoules?|kj)\b/i,
  /\b(?:diet(?:s|ed|ing|ers?)|(?:on|go on|start) a diet)\b/i,
  /\b(?:drop|lose|losing|lost) (?:a |two |\d+ )?(?:dress |clothes )?(?:sizes?|inches)\b/i,
];

/**
 * The sheet without weight holds no weight: no unit, number or word of it, and no energy either, in its title, message,
 * text, tables, figures, their alternatives and sources. Cautions are the register's own words and stand as they are. A
 * sheet that says nothing is told too.
 */
export function checkWeightFree({ built }: { readonly built: readonly Built[] }, report: Report): void {
  for (const output of built) {
    if (output.kind !== 'sheet' || !output.sheet.weightFree) continue;
    const { name, sheet } = output;
    if (sheet.blocks.length === 0)
      report.add(
        checkProblem('S19', `${name} has no text of its own.`, {
          hint: 'Write what it says inside ::::only{out=weightfree}, on sleep, energy, moving or blood pressure.',
          spoils: spoilsOf(output),
        }),
      );
    if (sheet.language !== 'en') continue;
    for (const { text, place } of textsOf(sheet)) {
      const found = WORDS.map((word) => word.exec(text)?.[0]).find((words) => words !== undefined);
      if (found === undefined) continue;
      report.add(
        checkProblem('weight-free/word', `${name} says "${plain(found)}".`, {
          ...(place ? { place } : {}),
          hint: 'Put what is about weight inside ::::only{out=handout}, and other words for this sheet inside ::::only{out=weightfree}.',
          actual: plain(text),
          spoils: spoilsOf(output),
        }),
      );
    }
  }
}

interface Text {
  readonly text: string;
  readonly place?: Place;
}

function textsOf(sheet: Sheet): readonly Text[] {
  const inlines = (list: readonly { readonly text: string }[]) => list.map(({ text }) => text).join('');
  return [
    { text: sheet.title },
    { text: inlines(sheet.message) },
    ...(sheet.notices ?? []).map((notice) => ({ text: inlines(notice) })),
    ...opened(sheet.blocks).flatMap((block) => blockTexts(block)),
    ...sheet.sources.map((source) => ({ text: stringsIn(source).join(' ') })),
  ];
}

function blockTexts(block: Block): readonly Text[] {
  if (block.kind === 'figure-caution') return [];
  const at = block.place ? { place: block.place } : {};
  if ('inlines' in block) return [{ text: block.inlines.map(({ text }) => text).join(''), ...at }];
  return stringsIn(block).map((text) => ({ text, ...at }));
}

/** Keys whose strings nobody reads. */
const SILENT: ReadonlySet<string> = new Set([
  'kind',
  'id',
  'number',
  'numbers',
  'cite',
  'sign',
  'mode',
  'place',
  'cautions',
  'href',
  'path',
]);

/** Every stretch of words in a value; inlines that run on are one stretch. */
function stringsIn(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  if (Array.isArray(value)) {
    if (value.length > 0 && value.every(isInline)) return [value.map(({ text }) => text).join('')];
    return value.flatMap(stringsIn);
  }
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, one]) => (SILENT.has(key) ? [] : stringsIn(one)));
}

function isInline(value: unknown): value is Inline {
  return (
    typeof value === 'object' &&
    value !== null &&
    'text' in value &&
    Object.keys(value).every((key) => INLINE.has(key))
  );
}

const INLINE: ReadonlySet<string> = new Set([
  'text',
  'strong',
  'emphasis',
  'struck',
  'code',
  'breakBefore',
  'number',
  'cite',
  'href',
  'language',
]);
