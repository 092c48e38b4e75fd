import { nearest, type Place } from '../../diagnostics/index.js';
import type { Attribute, DirectivePart, Row } from '../../lesson/index.js';
import type { ReadContext } from '../contract.js';
import { quoted, readProblem } from '../problems.js';
import { type Piece, readFact } from '../row.js';
import { personalMatter } from './personal.js';
import { COPIES, type Copies, FIELDS, type FieldName, type Sample, SURE, type Values } from './schema.js';

/** More words do not stand on a line of a card. */
const LONGEST_ANSWER = 60;

/** Reads the fields and the sample. Whatever asks about the person is refused at its place. */
export function read(part: DirectivePart, context: ReadContext): Values | undefined {
  if (!part.id) return undefined;
  const fields = readFields(part.attributes.get('fields'), context);
  const sample = readSample(part.rows, fields ?? FIELDS, context);
  if (!fields || sample === 'wrong') return undefined;
  return { id: part.id, fields, copies: copiesOf(part), ...(sample ? { sample } : {}) };
}

/** Another number was reported when the lesson was read. */
function copiesOf(part: DirectivePart): Copies {
  const copies = Number(part.attributes.get('copies')?.value);
  return COPIES.find((one) => one === copies) ?? COPIES[0];
}

/** The fields in the order in which they are written. */
function readFields(attribute: Attribute | undefined, context: ReadContext): FieldName[] | undefined {
  if (!attribute) return [...FIELDS];
  const { report, refuse, language } = context;
  const found: FieldName[] = [];
  let wrong = false;
  const fault = (reason: string, place: Place, hint?: string) => {
    wrong = true;
    report.add(readProblem('goal-card/fields', { reason, ...(hint ? { hint } : {}) }, place));
  };
  for (const { 0: written, index } of attribute.value.matchAll(/[^;,\s](?:[^;,]*[^;,\s])?/g)) {
    const column = attribute.place.column + index;
    const place = { file: attribute.place.file, line: attribute.place.line, column };
    const name = written.toLowerCase().replace(/\s+/g, '-');
    const field = FIELDS.find((one) => one === name);
    if (!field && personalMatter(written, language)) {
      wrong = true;
      refuse('R09', place);
    } else if (!field) {
      const near = nearest(name, FIELDS, 1)[0];
      fault(
        `${quoted(written)} is no field of a goal card.`,
        place,
        near ? `Did you mean ${near}?` : undefined,
      );
    } else if (found.includes(field)) fault(`The field ${field} stands here twice.`, place);
    else found.push(field);
  }
  if (!wrong && !found.some((field) => field !== 'how-sure'))
    fault('This card has no line to write on.', attribute.place, 'Name what, how-much, when or how-often.');
  return wrong ? undefined : found;
}

/** Rows such as `what = rinse canned beans`; nothing without rows. */
function readSample(
  rows: readonly Row[],
  fields: readonly FieldName[],
  context: ReadContext,
): Sample | undefined | 'wrong' {
  if (rows.length === 0) return undefined;
  const words: Partial<Record<FieldName, string>> = {};
  let sure: Sample['sure'];
  const sound = rows.map((row) => {
    const piece: Piece = { text: row.text, inlines: row.inlines, place: row.place };
    const fact = readFact(piece);
    const name = fact?.name.trim().replace(/\s+/g, '-');
    const field = fields.find((one) => one === name);
    const fault = (reason: string, hint: string) => {
      context.report.add(readProblem('goal-card/sample', { reason, hint }, row.place));
      return false;
    };
    if (!fact || !field || fact.value.text.trim() === '')
      return fault(
        `${quoted(row.text)} fills no field of this card.`,
        `Write "- ${fields[0] ?? 'what'} = …". Its fields are ${fields.join(', ')}.`,
      );
    if (words[field] !== undefined || (field === 'how-sure' && sure))
      return fault(`The field ${field} is filled twice.`, 'Keep one of the two.');
    const value = fact.value.text.trim().replace(/\s+/g, ' ');
    if (personalMatter(value, context.language)) {
      context.refuse('R09', fact.value.place);
      return false;
    }
    if (row.rows.length > 0 || value.length > LONGEST_ANSWER)
      return fault(
        `What fills ${field} is longer than a line of the card.`,
        `Say it in ${LONGEST_ANSWER} characters or fewer.`,
      );
    if (field !== 'how-sure') words[field] = value;
    else sure = SURE.find((one) => one === value.toLowerCase().replace(/\s+/g, '-'));
    return field !== 'how-sure' || sure !== undefined
      ? true
      : fault(`${quoted(value)} is none of the four words.`, 'Write not yet, maybe, likely or sure.');
  });
  if (sound.includes(false)) return 'wrong';
  const missing = fields.find((field) => (field === 'how-sure' ? !sure : words[field] === undefined));
  if (missing) {
    const place = rows.at(-1)?.place;
    if (place)
      context.report.add(
        readProblem(
          'goal-card/sample',
          { reason: `The sample leaves ${missing} empty.`, hint: `Write "- ${missing} = …".` },
          place,
        ),
      );
    return 'wrong';
  }
  return { words, ...(sure ? { sure } : {}) };
}
