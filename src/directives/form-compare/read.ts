import { nearest, type Report } from '../../diagnostics/index.js';
import { kebab } from '../../document/index.js';
import type { Attribute, DirectivePart, Row } from '../../lesson/index.js';
import { NUTRIENTS, type NutrientName } from '../../nutrition/index.js';
import { isFood } from '../../records/index.js';
import { readBasis } from '../basis.js';
import type { ReadContext } from '../contract.js';
import { foodProblem, quoted, readProblem } from '../problems.js';
import { firstOf, type Piece, splitRow } from '../row.js';
import { written } from '../written.js';
import { FACTS, type FormRow, MOST_MEASURES, MOST_ROWS, type Values } from './schema.js';

const LETTERS = ['A', 'B', 'C', 'D'];

/** Reads the attributes and rows. Whatever cannot be read is reported at its place, and then nothing is shown. */
export function read(part: DirectivePart, context: ReadContext): Values | undefined {
  const { report } = context;
  const food = written(part, 'food');
  const basisText = written(part, 'basis');
  const show = written(part, 'show');
  if (!part.id || !food || !basisText || !show) return undefined;
  const basis = readBasis(basisText, 'directives/basis', report);
  const nutrients = readMeasures(show, report);
  const kind = food.value.trim().replace(/\s+/g, ' ');
  const rows = readRows(part, kind, food, context);
  if (!basis || !nutrients || !rows) return undefined;
  return { id: part.id, food: kind, basis, basisPlace: basisText.place, nutrients, rows };
}

function readMeasures({ value, place }: Attribute, report: Report): NutrientName[] | undefined {
  const names = Object.keys(NUTRIENTS) as NutrientName[];
  const words = value
    .split(';')
    .map((w) => w.trim().replace(/\s+/g, ' '))
    .filter(Boolean);
  const fault = (reason: string, hint: string): undefined => {
    report.add(readProblem('directives/nutrient', { reason, hint }, place));
  };
  const found = words.map((word) => names.find((name) => name.toLowerCase() === word.toLowerCase()));
  words.forEach((word, index) => {
    if (found[index]) return;
    const near = nearest(word, names, 3);
    fault(
      `${quoted(word)} is no nutrient that can be compared.`,
      near.length > 0
        ? `Did you mean ${near.join(' or ')}?`
        : 'Name nutrients of the food tables, such as sodium, fiber or vitamin C.',
    );
  });
  const known = [...new Set(found.flatMap((name) => name ?? []))];
  if (known.length > MOST_MEASURES)
    return fault(
      `A figure compares at most ${MOST_MEASURES} measures, and this one names ${known.length}.`,
      'Leave some out, or write a second figure.',
    );
  return known.length > 0 && found.every(Boolean) ? known : undefined;
}

function readRows(
  part: DirectivePart,
  kind: string,
  food: Attribute,
  context: ReadContext,
): readonly FormRow[] | undefined {
  const { report } = context;
  const { rows } = part;
  if (rows.length < 2 || rows.length > MOST_ROWS) {
    report.add(
      readProblem(
        'directives/rows',
        {
          reason: `form-compare takes two to ${MOST_ROWS} rows, and this one has ${rows.length}.`,
          hint:
            rows.length < 2
              ? 'Write one row for each form, such as "- canned, drained".'
              : 'Leave some out, or write a second figure.',
        },
        part.place,
      ),
    );
    return undefined;
  }
  if (context.foods.forms(kind).length === 0) {
    const near = context.foods.form(kind, '');
    report.add(foodProblem(kind, isFood(near) ? { near: [] } : near, food.place));
    return undefined;
  }
  const read = rows.flatMap((row, index) => readRow(row, index, kind, context) ?? []);
  if (read.length < rows.length) return undefined;
  return distinct(read, report) ? withArrow(read, rows, report) : undefined;
}

function readRow(row: Row, index: number, kind: string, context: ReadContext): FormRow | undefined {
  const { report, foods } = context;
  const { main, facts, strays } = splitRow(row);
  const fault = (reason: string, near: readonly string[], place: Piece['place']) =>
    report.add(
      readProblem(
        'directives/row-fact',
        { reason, hint: 'Write facts as name = value, each name once.', near },
        place,
      ),
    );
  for (const stray of strays) fault(`${quoted(stray.text)} is no fact of this row.`, FACTS, stray.place);
  for (const [name, value] of facts)
    if (!FACTS.some((fact) => fact === name))
      fault(
        `A row of form-compare knows no ${quoted(name)}.`,
        nearest(name, FACTS).length > 0 ? nearest(name, FACTS) : FACTS,
        value.place,
      );
  const [inner] = row.rows;
  if (inner)
    report.add(
      readProblem(
        'directives/rows',
        { reason: 'A row of form-compare holds no list of its own.', hint: 'Write each form on one line.' },
        inner.place,
      ),
    );
  const choose = facts.get('choose');
  const picture = choose && firstOf(choose.inlines, ['picture']);
  if (picture) fault('A picture cannot stand in "choose".', [], picture.place);
  if (main.text === '') {
    report.add(
      readProblem(
        'directives/rows',
        { reason: 'This row names no form.', hint: 'Write the form first, such as "- canned, drained".' },
        row.place,
      ),
    );
    return undefined;
  }
  const found = foods.form(kind, main.text);
  if (!isFood(found)) {
    report.add(foodProblem(`${kind}, ${main.text}`, found, main.place));
    return undefined;
  }
  return {
    words: main.text,
    letter: LETTERS[index] ?? '',
    food: found,
    ...(choose && choose.text !== '' ? { choose: choose.inlines } : {}),
    place: main.place,
  };
}

function distinct(rows: readonly FormRow[], report: Report): boolean {
  const twice = rows.flatMap((row, index) => {
    const first = rows
      .slice(0, index)
      .find((r) => r.food.id === row.food.id || kebab(r.words) === kebab(row.words));
    return first ? [{ row, first }] : [];
  });
  for (const { row, first } of twice)
    report.add(
      readProblem(
        'directives/same-row',
        {
          reason: `${quoted(row.words)} is the same form as ${quoted(first.words)}: ${row.food.name}.`,
          hint: 'Name another form, or take one row out.',
        },
        row.place,
      ),
    );
  return twice.length === 0;
}

/** `from = canned, drained ; word = rinsing` on the row that the arrow reaches. One arrow a figure. */
function withArrow(rows: readonly FormRow[], sources: readonly Row[], report: Report): FormRow[] {
  let drawn = false;
  const fault = (reason: string, hint: string, place: Piece['place'], near: readonly string[] = []) =>
    report.add(readProblem('directives/row-fact', { reason, hint, near }, place));
  return rows.map((row, index) => {
    const source = sources[index];
    const { facts } = source ? splitRow(source) : { facts: new Map<string, Piece>() };
    const from = facts.get('from');
    const word = facts.get('word');
    const at = from ?? word;
    if (!at) return row;
    const start = rows.find((r) => r !== row && r.words.toLowerCase() === from?.text.toLowerCase());
    if (!from?.text || !word?.text)
      fault(
        'An arrow needs both the row that it comes from and its word.',
        'Write from = canned, drained ; word = rinsing.',
        at.place,
      );
    else if (!start)
      fault(
        `No other row is called ${quoted(from.text)}.`,
        'Write the other row as it stands in this figure.',
        from.place,
        rows.filter((r) => r !== row).map((r) => r.words),
      );
    else if (drawn)
      fault('This figure has an arrow already.', 'Keep the one move that is worth seeing.', from.place);
    else {
      drawn = true;
      return { ...row, look: { from: start.letter, word: word.text } };
    }
    return row;
  });
}
