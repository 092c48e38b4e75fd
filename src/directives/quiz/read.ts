import { nearest } from '../../diagnostics/index.js';
import type { DirectivePart, InlineNode, Row } from '../../lesson/index.js';
import { NUTRIENTS, type NutrientName, parseBasis } from '../../nutrition/index.js';
import { isFood } from '../../records/index.js';
import type { ReadContext } from '../contract.js';
import { foodProblem, readProblem } from '../problems.js';
import { readFact, splitRow } from '../row.js';
import { MOST_OPTIONS, type Option, type Question, type Values } from './schema.js';
import { shuffle } from './shuffle.js';

export function read(part: DirectivePart, context: ReadContext): Values | undefined {
  const basisWords = part.attributes.get('basis');
  if (!part.id || !basisWords) return undefined;
  const basis = parseBasis(basisWords.value);
  if (!basis.ok) {
    context.report.add(readProblem('directives/basis', basis, basisWords.place));
    return undefined;
  }
  const seed = part.attributes.get('seed')?.value;
  const questions = part.rows.map((row) =>
    readQuestion(row, seed === undefined ? undefined : Number(seed), context),
  );
  if (questions.length === 0) {
    context.report.add(
      readProblem(
        'directives/question',
        {
          reason: 'This quiz holds no question.',
          hint: 'Write "- Q: Which has the least sodium?" with its options as a list below it.',
        },
        part.place,
      ),
    );
  }
  const read = questions.flatMap((question) => question ?? []);
  return read.length > 0 && read.length === questions.length
    ? { id: part.id, basis: basis.value, questions: read }
    : undefined;
}

function readQuestion(row: Row, seed: number | undefined, context: ReadContext): Question | undefined {
  const fault = (reason: string, hint: string, place = row.place) => {
    context.report.add(readProblem('directives/question', { reason, hint }, place));
    return undefined;
  };
  if (!/^Q:\s*\S/.test(row.text))
    return fault('A question begins with "Q:".', 'Write "- Q: Which has the least sodium?".');
  const answers = row.rows.filter((r) => readFact({ text: r.text, place: r.place })?.name === 'answer');
  const optionRows = row.rows.filter((r) => !answers.includes(r));
  const [answer] = answers;
  if (!answer || answers.length > 1)
    return fault(
      answers.length ? 'This question has two answers.' : 'This question has no answer to compute.',
      'Write one row "- answer = min(sodium)" or "- answer = max(fiber)".',
      answers[1]?.place ?? row.place,
    );
  if (optionRows.length < 2 || optionRows.length > MOST_OPTIONS)
    return fault(
      `A question takes two to ${MOST_OPTIONS} options, and this one has ${optionRows.length}.`,
      'Write each as "- pinto beans, canned, drained ; why = some salt stays".',
    );
  const rule = readRule(answer, context);
  const options = optionRows.map((option) => readOption(option, context));
  const read = options.flatMap((option) => option ?? []);
  if (!rule || read.length < options.length) return undefined;
  return {
    prompt: withoutMark(row.inlines),
    promptText: row.text.replace(/^Q:\s*/, ''),
    options: seed === undefined ? read : shuffle(read, seed),
    ...rule,
    place: row.place,
    answerPlace: answer.place,
  };
}

function readRule(row: Row, { report }: ReadContext): Pick<Question, 'find' | 'nutrient'> | undefined {
  const match = /^answer\s*=\s*(min|max)\(([^)]*)\)$/i.exec(row.text);
  const names = Object.keys(NUTRIENTS) as NutrientName[];
  const written = match?.[2]?.trim().toLowerCase() ?? '';
  const nutrient = names.find((name) => name.toLowerCase() === written);
  if (match && nutrient) return { find: match[1]?.toLowerCase() === 'max' ? 'max' : 'min', nutrient };
  report.add(
    match
      ? readProblem(
          'directives/nutrient',
          { reason: `"${match[2]}" is no nutrient that can be compared.`, near: nearest(written, names, 3) },
          row.place,
        )
      : readProblem(
          'directives/question',
          {
            reason: `"${row.text}" is no rule for an answer.`,
            hint: 'Write answer = min(sodium) for the least, or answer = max(fiber) for the most.',
          },
          row.place,
        ),
  );
  return undefined;
}

function readOption(row: Row, context: ReadContext): Option | undefined {
  const { main, facts, strays } = splitRow(row);
  const wrong = [...strays, ...[...facts].flatMap(([name, value]) => (name === 'why' ? [] : [value]))];
  for (const piece of wrong)
    context.report.add(
      readProblem(
        'directives/row-fact',
        { reason: `An option knows only why = …, and not "${piece.text}".` },
        piece.place,
      ),
    );
  const why = facts.get('why');
  if (!why?.text)
    context.report.add(
      readProblem(
        'directives/question',
        {
          reason: `The option "${main.text}" says no reason.`,
          hint: 'Write ; why = … so that the key can explain it.',
        },
        row.place,
      ),
    );
  const food = context.foods.find(main.text);
  if (!isFood(food)) context.report.add(foodProblem(main.text, food, main.place));
  return isFood(food) && why?.text ? { words: main.text, food, why: why.text, place: main.place } : undefined;
}

/** The prompt without its leading `Q:`. */
function withoutMark(nodes: readonly InlineNode[]): readonly InlineNode[] {
  const [first, ...rest] = nodes;
  return first?.kind === 'text' ? [{ ...first, text: first.text.replace(/^Q:\s*/, '') }, ...rest] : nodes;
}
