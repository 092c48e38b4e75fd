import { nearest } from '../../diagnostics/index.js';
import type { DirectivePart, InlineNode, Row } from '../../lesson/index.js';
import { NUTRIENTS, type NutrientName } from '../../nutrition/index.js';
import { isFood } from '../../records/index.js';
import { readBasis } from '../basis.js';
import type { ReadContext } from '../contract.js';
import { foodProblem, quoted, readProblem } from '../problems.js';
import { firstOf, type Piece, readFact, splitRow } from '../row.js';
import { written } from '../written.js';
import { asksFor } from './asks.js';
import { MOST_OPTIONS, type Option, type Question, type Values } from './schema.js';
import { shuffle } from './shuffle.js';

/** Reads every question; whatever cannot be read is reported at its place, and then nothing is shown. */
export function read(part: DirectivePart, context: ReadContext): Values | undefined {
  const { id } = part;
  const basisWords = written(part, 'basis');
  if (!id || !basisWords) return undefined;
  const basis = readBasis(basisWords, 'directives/basis', context.report);
  const seed = part.attributes.get('seed')?.value;
  const questions = part.rows.map((row, index) => {
    const question = readQuestion(row, id, context);
    // Each question has an order of its own; otherwise the right boxes would stand in one column.
    return question && seed !== undefined
      ? { ...question, options: shuffle(question.options, Number(seed) + index * APART) }
      : question;
  });
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
  const complete = questions.flatMap((question) => question ?? []);
  if (!basis || complete.length === 0 || complete.length < questions.length) return undefined;
  return { id, basis, questions: complete };
}

/** More than any seed, so that no two questions of two quizzes share an order by accident. */
const APART = 1_000_003;

function readQuestion(row: Row, id: string, context: ReadContext): Question | undefined {
  const fault = (reason: string, hint: string, place = row.place): undefined => {
    context.report.add(readProblem('directives/question', { reason, hint }, place));
  };
  if (!/^Q:\s*\S/.test(row.text))
    return fault('A question begins with "Q:".', 'Write "- Q: Which has the least sodium?".');
  const answers = row.rows.filter((r) => readFact(wholeOf(r))?.name === 'answer');
  const optionRows = row.rows.filter((r) => !answers.includes(r));
  const [answer, second] = answers;
  if (!answer || second)
    return fault(
      second ? 'This question has two answers.' : 'This question has no answer to compute.',
      'Write one row "- answer = min(sodium)" or "- answer = max(fiber)".',
      second?.place,
    );
  if (optionRows.length < 2 || optionRows.length > MOST_OPTIONS)
    return fault(
      `A question takes two to ${MOST_OPTIONS} options, and this one has ${optionRows.length}.`,
      'Write each as "- pinto beans, canned, drained ; why = some salt stays".',
    );
  for (const { rows } of row.rows)
    if (rows[0]) fault('An option and an answer hold no list.', 'Write each on one line.', rows[0].place);
  checkPrompt(row, id, context);
  const rule = readRule(answer, context);
  const options = optionRows.flatMap((option) => readOption(option, context) ?? []);
  if (!rule || options.length < optionRows.length) return undefined;
  const asks = asksFor(row.text, context.language);
  if (asks && asks !== rule.find)
    context.report.add(
      readProblem(
        'quiz/prompt',
        {
          reason: `The question asks for the ${asks === 'min' ? 'least' : 'most'} and its answer is the ${asks === 'min' ? 'most' : 'least'}.`,
          hint: `Write answer = ${asks}(${rule.nutrient}), or ask the other way.`,
        },
        answer.place,
      ),
    );
  return {
    prompt: withoutMark(row.inlines),
    options,
    ...rule,
    place: row.place,
    answerPlace: answer.place,
  };
}

/** A question that shows one of its own numbers would answer itself. */
function checkPrompt(row: Row, id: string, { report }: ReadContext): void {
  const own = numbersOf(row.inlines).find((node) => node.of === id);
  if (own)
    report.add(
      readProblem(
        'directives/question',
        {
          reason: 'The question shows a number of its own answer.',
          hint: 'Say it in the reason of an option; it prints on the key.',
        },
        own.place,
      ),
    );
  const picture = firstOf(row.inlines, ['picture']);
  if (picture)
    report.add(
      readProblem(
        'directives/question',
        { reason: 'A picture cannot stand in a question.', hint: 'Put it on a line above the quiz.' },
        picture.place,
      ),
    );
}

function numbersOf(nodes: readonly InlineNode[]): (InlineNode & { readonly kind: 'number' })[] {
  return nodes.flatMap((node) =>
    node.kind === 'number' ? [node] : 'children' in node ? numbersOf(node.children) : [],
  );
}

function readRule(row: Row, { report }: ReadContext): Pick<Question, 'find' | 'nutrient'> | undefined {
  const match = /^answer\s*=\s*(min|max)\s*\(([^)]*)\)$/i.exec(row.text.trim());
  const names = Object.keys(NUTRIENTS) as NutrientName[];
  const written = match?.[2]?.trim().replace(/\s+/g, ' ') ?? '';
  const nutrient = names.find((name) => name.toLowerCase() === written.toLowerCase());
  if (match && nutrient) return { find: match[1]?.toLowerCase() === 'max' ? 'max' : 'min', nutrient };
  report.add(
    match
      ? readProblem(
          'directives/nutrient',
          {
            reason: `${quoted(written)} is no nutrient that can be compared.`,
            near: nearest(written, names, 3),
          },
          row.place,
        )
      : readProblem(
          'directives/question',
          {
            reason: `${quoted(row.text)} is no rule for an answer.`,
            hint: 'Write answer = min(sodium) for the least, or answer = max(fiber) for the most.',
          },
          row.place,
        ),
  );
  return undefined;
}

function readOption(row: Row, context: ReadContext): Option | undefined {
  const { report } = context;
  const { main, facts, strays } = splitRow(row);
  const wrong = [...strays, ...[...facts].flatMap(([name, value]) => (name === 'why' ? [] : [value]))];
  for (const piece of wrong)
    report.add(
      readProblem(
        'directives/row-fact',
        { reason: `An option knows only why = …, and not ${quoted(piece.text)}.` },
        piece.place,
      ),
    );
  const why = facts.get('why');
  if (!why?.text)
    report.add(
      readProblem(
        'directives/question',
        {
          reason: `The option ${quoted(main.text)} says no reason.`,
          hint: 'Write ; why = … so that the key can explain it.',
        },
        row.place,
      ),
    );
  const unfit = why && firstOf(why.inlines, ['cite', 'link', 'picture']);
  if (unfit)
    report.add(
      readProblem(
        'directives/row-fact',
        {
          reason: 'A reason holds words and numbers only.',
          hint: 'Sources stand below the question; a picture or link can stand above it.',
        },
        unfit.place,
      ),
    );
  const food = context.foods.find(main.text);
  if (!isFood(food)) report.add(foodProblem(main.text, food, main.place));
  return isFood(food) && why?.text
    ? { words: main.text, food, why: why.inlines, place: main.place }
    : undefined;
}

function wholeOf(row: Row): Piece {
  return { text: row.text, inlines: row.inlines, place: row.place };
}

/** The prompt without its leading `Q:`. */
function withoutMark(nodes: readonly InlineNode[]): readonly InlineNode[] {
  const [first, ...rest] = nodes;
  return first?.kind === 'text' ? [{ ...first, text: first.text.replace(/^Q:\s*/, '') }, ...rest] : nodes;
}
