import { nearest, type Place } from '../../diagnostics/index.js';
import type { DirectivePart, Row } from '../../lesson/index.js';
import { NUTRIENTS, type NutrientName, parseBasis } from '../../nutrition/index.js';
import { isFood } from '../../records/index.js';
import type { ReadContext } from '../contract.js';
import { foodProblem, readProblem } from '../problems.js';
import { splitRow } from '../row.js';
import { type FormRow, MOST_MEASURES, MOST_ROWS, type Values } from './schema.js';

const LETTERS = ['A', 'B', 'C', 'D'];
const FACTS = ['choose', 'from', 'word'];

/** Reads the attributes and rows; a row that cannot be read is reported and left out. */
export function read(part: DirectivePart, context: ReadContext): Values | undefined {
  const { report } = context;
  const food = part.attributes.get('food');
  const basisText = part.attributes.get('basis');
  const show = part.attributes.get('show');
  if (!part.id || !food || !basisText || !show) return undefined;
  const basis = parseBasis(basisText.value);
  if (!basis.ok) {
    report.add(readProblem('directives/basis', basis, basisText.place));
    return undefined;
  }
  const nutrients = readMeasures(show.value, show.place, context);
  const kind = food.value.trim();
  const rows = part.rows.flatMap((row, index) => readRow(row, index, kind, context) ?? []);
  if (part.rows.length < 2 || part.rows.length > MOST_ROWS) {
    report.add(
      readProblem(
        'directives/rows',
        {
          reason: `form-compare takes two to ${MOST_ROWS} rows, and this one has ${part.rows.length}.`,
          hint: 'Write one row for each form, such as "- canned, drained".',
        },
        part.place,
      ),
    );
    return undefined;
  }
  if (nutrients.length === 0 || rows.length < part.rows.length) return undefined;
  return {
    id: part.id,
    food: kind,
    basis: basis.value,
    basisPlace: basisText.place,
    nutrients,
    rows: linkLooks(rows, part.rows, context),
  };
}

function readMeasures(text: string, place: Place, { report }: ReadContext): NutrientName[] {
  const names = Object.keys(NUTRIENTS) as NutrientName[];
  const found: NutrientName[] = [];
  for (const word of text
    .split(';')
    .map((w) => w.trim())
    .filter(Boolean)) {
    const name = names.find((n) => n.toLowerCase() === word.toLowerCase());
    if (!name) {
      report.add(
        readProblem(
          'directives/nutrient',
          { reason: `"${word}" is no nutrient that can be compared.`, near: nearest(word, names, 3) },
          place,
        ),
      );
    } else if (!found.includes(name)) found.push(name);
  }
  if (found.length > MOST_MEASURES) {
    report.add(
      readProblem(
        'directives/nutrient',
        {
          reason: `A figure compares at most ${MOST_MEASURES} measures, and this one names ${found.length}.`,
          hint: 'Leave some out, or write a second figure.',
        },
        place,
      ),
    );
  }
  return found.slice(0, MOST_MEASURES);
}

function readRow(row: Row, index: number, kind: string, context: ReadContext): FormRow | undefined {
  const { main, facts, strays } = splitRow(row);
  for (const stray of strays)
    context.report.add(
      readProblem(
        'directives/row-fact',
        {
          reason: `"${stray.text}" is no fact of this row.`,
          hint: 'Write name = value, each name once.',
          near: FACTS,
        },
        stray.place,
      ),
    );
  for (const [name, value] of facts) {
    if (!FACTS.includes(name))
      context.report.add(
        readProblem(
          'directives/row-fact',
          {
            reason: `A row of form-compare knows no "${name}".`,
            near: nearest(name, FACTS).length ? nearest(name, FACTS) : FACTS,
          },
          value.place,
        ),
      );
  }
  const found = context.foods.form(kind, main.text);
  if (!isFood(found)) {
    context.report.add(foodProblem(`${kind}, ${main.text}`, found, main.place));
    return undefined;
  }
  const choose = facts.get('choose')?.text;
  return {
    words: main.text,
    letter: LETTERS[index] ?? '',
    food: found,
    ...(choose ? { choose } : {}),
    place: main.place,
  };
}

/** `from = canned, drained ; word = rinsing` on the row that the arrow reaches. */
function linkLooks(rows: readonly FormRow[], sources: readonly Row[], { report }: ReadContext): FormRow[] {
  return rows.map((row, index) => {
    const source = sources[index];
    if (!source) return row;
    const { facts } = splitRow(source);
    const from = facts.get('from');
    const word = facts.get('word');
    if (!from && !word) return row;
    if (!from || !word) {
      report.add(
        readProblem(
          'directives/row-fact',
          {
            reason: 'An arrow needs both the row it comes from and its word.',
            hint: 'Write from = canned, drained ; word = rinsing.',
          },
          (from ?? word)?.place ?? row.place,
        ),
      );
      return row;
    }
    const start = rows.find((r) => r.words.toLowerCase() === from.text.toLowerCase());
    if (!start || start === row) {
      report.add(
        readProblem(
          'directives/row-fact',
          {
            reason: `No other row is called "${from.text}".`,
            near: rows.filter((r) => r !== row).map((r) => r.words),
          },
          from.place,
        ),
      );
      return row;
    }
    return { ...row, look: { from: start.letter, word: word.text } };
  });
}
