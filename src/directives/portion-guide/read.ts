import type { Attribute, DirectivePart } from '../../lesson/index.js';
import { parseAmount } from '../../nutrition/index.js';
import { isFood } from '../../records/index.js';
import type { ReadContext } from '../contract.js';
import { foodProblem, quoted, readProblem } from '../problems.js';
import { written } from '../written.js';
import { CUPS, type GuideRow, MEASURES, MOST_ROWS, type Values } from './schema.js';

/** Reads foods and measures. Whatever cannot be read is reported at its place, and then nothing is shown. */
export function read(part: DirectivePart, context: ReadContext): Values | undefined {
  const { report } = context;
  const foods = written(part, 'foods');
  if (!part.id || !foods) return undefined;
  const texts = foods.value
    .split(';')
    .map((text) => text.trim())
    .filter(Boolean);
  if (texts.length === 0 || texts.length > MOST_ROWS) {
    report.add(
      readProblem(
        'directives/rows',
        {
          reason: `A guide shows one to ${MOST_ROWS} foods; here are ${texts.length}.`,
          hint: 'Make two guides of it.',
        },
        foods.place,
      ),
    );
    return undefined;
  }
  const rows = texts.flatMap((text) => readRow(text, foods, context) ?? []);
  if (rows.length < texts.length || sameTwice(rows, foods, context)) return undefined;
  const named = (written(part, 'measures')?.value ?? 'cup; spoon; gram')
    .split(';')
    .map((word) => word.trim());
  const measures = MEASURES.filter((measure) => named.includes(measure));
  const into = (['cup', 'spoon'] as const).filter((measure) => measures.includes(measure));
  const cup = written(part, 'locale-cup')?.value;
  const kitchen = cup === '240 mL' || cup === '250 mL' || cup === '200 mL' ? CUPS[cup] : undefined;
  return {
    id: part.id,
    rows,
    // A guide without a measure guides nobody: whoever asks for grams alone gets cups and spoons too.
    into: into.length > 0 ? into : ['cup', 'spoon'],
    measures,
    ...(kitchen ? { kitchen } : {}),
  };
}

/** A food alone takes its usual portion; else the amount stands first, as in a recipe. */
function readRow(text: string, { place }: Attribute, { foods, report }: ReadContext): GuideRow | undefined {
  const whole = foods.find(text);
  if (isFood(whole)) return { words: text, food: whole, amount: null, place };
  const amount = parseAmount(text);
  if (!amount.ok) {
    report.add(readProblem('directives/amount', amount, place));
    return undefined;
  }
  const food = amount.value.amount === null ? whole : foods.find(amount.value.rest);
  if (isFood(food)) return { words: amount.value.rest, food, amount: amount.value.amount, place };
  report.add(foodProblem(amount.value.rest, food, place));
  return undefined;
}

function sameTwice(rows: readonly GuideRow[], { place }: Attribute, { report }: ReadContext): boolean {
  const twice = rows.find((row, i) => rows.findIndex((other) => other.food.id === row.food.id) < i);
  if (!twice) return false;
  report.add(
    readProblem(
      'directives/same-row',
      { reason: `${quoted(twice.words)} stands twice in the guide.`, hint: 'Name each food once.' },
      place,
    ),
  );
  return true;
}
