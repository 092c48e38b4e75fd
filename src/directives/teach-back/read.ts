import type { DirectivePart, InlineNode, Row } from '../../lesson/index.js';
import type { ReadContext } from '../contract.js';
import { quoted, readProblem } from '../problems.js';
import { firstOf, type Piece, splitRow } from '../row.js';
import { MOST_PROMPTS, type Prompt, type Values } from './schema.js';
import { isClosed, nearestObjective, testingWord } from './words.js';

/** A prompt's row with the rows that say what to listen for. */
interface Written {
  readonly prompt: Row;
  readonly listenFor: readonly Row[];
}

/** Reads every prompt; whatever cannot be read is reported at its place, and then nothing is shown. */
export function read(part: DirectivePart, context: ReadContext): Values | undefined {
  const { report } = context;
  if (!part.id) return undefined;
  const written = together(part.rows, context);
  if (written.length === 0 || written.length > MOST_PROMPTS)
    report.add(
      readProblem(
        'directives/rows',
        {
          reason: `A teach-back takes one to ${MOST_PROMPTS} prompts, and this one has ${written.length}.`,
          hint: 'Write "- Show me on this can where you would look first." and below it "- listen-for = …".',
        },
        part.place,
      ),
    );
  const prompts = written.flatMap((one) => readPrompt(one, part, context) ?? []);
  const whole = written.length > 0 && written.length <= MOST_PROMPTS && prompts.length === written.length;
  return whole ? { id: part.id, prompts, place: part.place } : undefined;
}

const LISTEN = /^listen[- ]for\s*=/i;

/** What to listen for stands below its prompt, in the same list or in one of its own. */
function together(rows: readonly Row[], { report }: ReadContext): Written[] {
  const out: { prompt: Row; listenFor: Row[] }[] = [];
  for (const row of rows) {
    const last = out.at(-1);
    if (!LISTEN.test(row.text)) out.push({ prompt: row, listenFor: [...row.rows] });
    else if (last) last.listenFor.push(row);
    else
      report.add(
        readProblem('directives/rows', { reason: 'There is no prompt above this list.' }, row.place),
      );
  }
  return out;
}

function readPrompt(
  { prompt, listenFor }: Written,
  part: DirectivePart,
  context: ReadContext,
): Prompt | undefined {
  const { report, language } = context;
  const { main, facts, strays } = splitRow(prompt);
  const strange = [
    ...strays,
    ...[...facts].flatMap(([name, value]) => (name === 'objective' ? [] : [value])),
  ];
  for (const piece of strange)
    report.add(
      readProblem(
        'directives/row-fact',
        { reason: `A prompt knows only objective = …, and not ${quoted(piece.text)}.` },
        piece.place,
      ),
    );
  const words = main.text.replace(/^["“”]|["“”]$/g, '').trim();
  const closed = isClosed(words, language);
  if (words === '' || closed) report.add(closedProblem(words, main));
  const testing = testingWord(words, language);
  if (testing)
    report.add(
      readProblem(
        'teach-back/burden',
        {
          reason: `${quoted(testing)} puts the listener to the test.`,
          hint: 'Ask to be shown or told, such as "Show me how you would pick a can".',
        },
        main.place,
      ),
    );
  const points = listenFor.flatMap((row) => readPoints(row, context));
  if (points.length === 0)
    report.add(
      readProblem(
        'directives/rows',
        {
          reason: 'This prompt does not say what to listen for.',
          hint: 'Write below it "- listen-for = number of servings ; sodium line".',
        },
        main.place,
      ),
    );
  const heard = points.map(({ text }) => text).join(' ');
  const objective = objectiveOf(`${words} ${heard}`, facts.get('objective'), main, part, context);
  const unfit = firstOf(main.inlines, ['picture', 'link', 'cite']);
  if (unfit)
    report.add(readProblem('directives/row-fact', { reason: 'A prompt holds words only.' }, unfit.place));
  if (words === '' || closed || points.length === 0 || objective === undefined) return undefined;
  return { words: unquoted(main.inlines), listenFor: points.map((point) => point.inlines), objective };
}

function closedProblem(words: string, { place }: Piece) {
  return readProblem(
    'teach-back/open',
    {
      reason: words === '' ? 'This prompt holds no words.' : `Yes or no answers ${quoted(words)}`,
      hint: 'Begin with what, how, where, show me or tell me.',
    },
    place,
  );
}

/** `listen-for = a ; b` as points, also where it stands in a list of its own without the name. */
function readPoints(row: Row, { report }: ReadContext): Piece[] {
  const { main, facts, strays } = splitRow(row);
  for (const [name, value] of facts)
    report.add(
      readProblem(
        'directives/row-fact',
        { reason: `A list of what to listen for holds words, and not ${quoted(`${name} = ${value.text}`)}.` },
        value.place,
      ),
    );
  const text = main.text.replace(LISTEN, '').trim();
  const inlines = withoutStart(main.inlines, LISTEN);
  return [{ ...main, text, inlines }, ...strays].filter((piece) => piece.text !== '');
}

function withoutStart(nodes: readonly InlineNode[], start: RegExp): readonly InlineNode[] {
  const [first, ...rest] = nodes;
  if (first?.kind !== 'text') return nodes;
  const text = first.text.replace(start, '').trimStart();
  return text === '' ? rest : [{ ...first, text }, ...rest];
}

/** The prompt prints quotes of its own. */
function unquoted(nodes: readonly InlineNode[]): readonly InlineNode[] {
  return nodes.map((node, index) => {
    if (node.kind !== 'text') return node;
    const start = index === 0 ? node.text.replace(/^\s*["“”]/, '') : node.text;
    return { ...node, text: index === nodes.length - 1 ? start.trimEnd().replace(/["“”]$/, '') : start };
  });
}

function objectiveOf(
  words: string,
  own: Piece | undefined,
  main: Piece,
  part: DirectivePart,
  { front, report }: ReadContext,
): string | undefined {
  const { objectives } = front;
  const all = part.attributes.get('objective');
  const written = own ? { value: own.text, place: own.place } : all;
  const index = written === undefined ? nearestObjective(words, objectives) : Number(written.value) - 1;
  const found = index === undefined ? undefined : objectives[index];
  if (found === undefined)
    report.add(
      readProblem(
        'teach-back/objective',
        {
          reason:
            written === undefined
              ? 'This prompt points to no objective of the lesson.'
              : `The lesson has no objective ${quoted(written.value)}.`,
          hint: `Write ; objective = 1. The lesson has ${objectives.length}, counted from 1.`,
        },
        written?.place ?? main.place,
      ),
    );
  return found;
}
