import type { Report } from '../diagnostics/index.js';
import type { Food, Measure } from '../nutrition/food.js';
import { problem } from './codes.js';
import { RELEASE_SOURCE } from './columns.js';
import type { EverydayRow, WrittenMeasure } from './everyday.js';
import { idOf } from './names.js';
import type { Release, ReleaseRow } from './release.js';

/** The food of a row, with the nutrients of its record. */
export function makeFood(row: EverydayRow, release: Release): Food {
  const record = release.row(row.number.text);
  if (record === undefined) throw new Error(`Food ${row.number.text} was there when the table was read.`);
  return {
    id: idOf(row.name.text),
    name: row.name.text,
    aliases: row.aliases.map((alias) => alias.text),
    state: row.state,
    kind: row.kind.text,
    form: row.form,
    plate: row.plate,
    measures: row.measures.map((measure) => makeMeasure(measure, record)),
    usual: row.usual,
    contains: row.contains,
    picture: row.picture,
    flags: row.flags,
    per100g: { ...record.per100g, 'added sugars': row.single ? 0 : null },
    record: { ...RELEASE_SOURCE, number: record.number, description: record.description },
  };
}

function makeMeasure(measure: WrittenMeasure, record: ReleaseRow): Measure {
  const { name, grams, from } = measure;
  if (from.kind === 'estimated') return { name, grams, source: 'house', note: from.why, estimated: true };
  if (from.kind === 'source') return { name, grams, source: from.source, note: from.note };
  const words = record.weights[from.weight - 1]?.words ?? '';
  return { name, grams, source: RELEASE_SOURCE.source, note: words };
}

/** Reports a row that disagrees with the release. False if it cannot be used: no record, or another food's. */
export function agreesWithRelease(row: EverydayRow, release: Release, report: Report): boolean {
  const record = release.row(row.number.text);
  if (record === undefined) {
    report.add(
      problem('records/unknown-number', `The release has no food ${row.number.text}.`, {
        place: row.number.place,
        hint: 'Look the food up in release.tsv and write its number, five digits.',
        actual: row.number.text,
      }),
    );
    return false;
  }
  if (record.description !== row.description.text) {
    report.add(
      problem('records/description', `Food ${record.number} is "${record.description}" in the release.`, {
        place: row.description.place,
        hint: 'Correct the number, or repeat the description word for word.',
        actual: row.description.text,
        expected: [record.description],
      }),
    );
    return false;
  }
  for (const measure of row.measures) checkWeight(measure, record, report);
  return true;
}

function checkWeight(measure: WrittenMeasure, record: ReleaseRow, report: Report): void {
  if (measure.from.kind !== 'weight') return;
  const weight = record.weights[measure.from.weight - 1];
  const amount = Number(/^(\d*\.?\d+) /.exec(weight?.words ?? '')?.[1]);
  const grams = weight && amount > 0 ? weight.grams / amount : undefined;
  if (grams !== undefined && Math.abs(grams - measure.grams) < 1e-6) return;
  const says = weight ? `"${weight.words}" weighs ${weight.grams} g` : 'nothing';
  report.add(
    problem(
      'records/weight',
      `One ${measure.name} is ${measure.grams} g here; household weight ${measure.from.weight} of food ${record.number} says ${says}.`,
      {
        place: measure.place,
        hint:
          grams === undefined
            ? 'Name another source for the grams.'
            : `Write ${grams}, or name another source.`,
      },
    ),
  );
}
