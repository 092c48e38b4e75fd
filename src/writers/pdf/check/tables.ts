import type { Findings } from './finding.js';
import { type File, nameOf, numberOf } from './objects.js';
import { attribute, type Words } from './parts.js';
import type { Part, Structure } from './structure.js';

/** Who may stand in whom (ISO 32000-1, 14.8.4.3.3 and 14.8.4.3.4; ISO 14289-1, 7.2). */
const PARENTS: Readonly<Record<string, readonly string[]>> = {
  TR: ['Table', 'THead', 'TBody', 'TFoot'],
  THead: ['Table'],
  TBody: ['Table'],
  TFoot: ['Table'],
  TH: ['TR'],
  TD: ['TR'],
  LI: ['L'],
  Lbl: ['LI', 'Note', 'P', 'Div', 'TOCI'],
  LBody: ['LI'],
};

const KIDS: Readonly<Record<string, RegExp>> = {
  Table: /^(Caption )?((TR |THead |TBody |TFoot )+)(Caption )?$/,
  THead: /^(TR )+$/,
  TBody: /^(TR )+$/,
  TFoot: /^(TR )+$/,
  TR: /^((TH|TD) )+$/,
  L: /^(Caption )?((L|LI) )+$/,
  LI: /^(Lbl )?LBody $|^Lbl $/,
};

const ORDERS = new Set(['Decimal', 'UpperRoman', 'LowerRoman', 'UpperAlpha', 'LowerAlpha']);

const PLAIN: Readonly<Record<string, string>> = {
  Table: 'a table',
  THead: 'the head of a table',
  TBody: 'the body of a table',
  TR: 'a table row',
  L: 'a list',
  LI: 'a list item',
};

/** Rules for tables and lists. */
export function checkTablesAndLists(
  file: File,
  structure: Structure,
  words: Words,
  findings: Findings,
): void {
  for (const part of structure.parts) {
    const parents = PARENTS[part.role];
    if (parents && !parents.includes(part.parent?.role ?? ''))
      findings.add('7.2', `A ${part.role} stands in ${part.parent?.role ?? 'nothing'}, where none may.`);
    const kids = part.kids.map((kid) => `${kid.role} `).join('');
    const allowed = KIDS[part.role];
    if (allowed && !allowed.test(kids))
      findings.add(
        '7.2',
        `In ${PLAIN[part.role] ?? part.role} stands what may not: ${kids.trim() || 'nothing'}.`,
      );
    if (part.role === 'Table') checkTable(file, part, words, findings);
    if (part.role === 'L') checkNumbering(file, part, words, findings);
  }
}

function checkTable(file: File, table: Part, words: Words, findings: Findings): void {
  const rows = rowsOf(table);
  const cells = rows.flat();
  const heads = cells.filter((cell) => cell.role === 'TH');
  if (heads.length === 0) findings.add('7.5', `A table${words(table)} has no header cell.`);
  for (const head of heads) {
    const scope = nameOf(attribute(file, head, 'Table', 'Scope'));
    if (scope !== 'Row' && scope !== 'Column' && scope !== 'Both')
      findings.add('7.5', `A header cell${words(head)} does not say whether it heads a row or a column.`);
  }
  for (const kind of ['THead', 'TFoot'])
    if (table.kids.filter((kid) => kid.role === kind).length > 1)
      findings.add('7.2', `A table${words(table)} has more than one ${kind}.`);
  if (table.kids.some((kid) => kid.role === 'THead') && !table.kids.some((kid) => kid.role === 'TBody'))
    findings.add('7.2', `A table${words(table)} has a head and no body.`);
  const widths = rowWidths(file, rows);
  if (new Set(widths).size > 1)
    findings.add(
      '7.2',
      `The rows of a table${words(table)} are not of one length: ${widths.join(', ')} cells.`,
    );
}

function rowsOf(table: Part): (readonly Part[])[] {
  return table.kids.flatMap((kid) => (kid.role === 'TR' ? [kid.kids] : kid.kids.map((row) => row.kids)));
}

/** Cells in each row, counting those that reach over several columns or down from rows above. */
function rowWidths(file: File, rows: readonly (readonly Part[])[]): number[] {
  const reaching: number[] = rows.map(() => 0);
  return rows.map((row, index) => {
    let width = reaching[index] ?? 0;
    for (const cell of row) {
      const columns = numberOf(attribute(file, cell, 'Table', 'ColSpan')) ?? 1;
      const down = numberOf(attribute(file, cell, 'Table', 'RowSpan')) ?? 1;
      width += columns;
      for (let i = index + 1; i < Math.min(rows.length, index + down); i++)
        reaching[i] = (reaching[i] ?? 0) + columns;
    }
    return width;
  });
}

/** An order that is seen must be told, and one that is told must be seen. */
function checkNumbering(file: File, list: Part, words: Words, findings: Findings): void {
  const numbering = nameOf(attribute(file, list, 'List', 'ListNumbering')) ?? 'None';
  const labels = list.kids.flatMap((item) => item.kids.filter((kid) => kid.role === 'Lbl'));
  const ordered = labels.find((label) => /[\p{L}\p{N}]/u.test(words(label)));
  if (!ORDERS.has(numbering) && ordered)
    findings.add('7.6', `A list counts its items${words(ordered)} and is not marked as an ordered list.`);
  if (ORDERS.has(numbering) && labels.length === 0)
    findings.add('7.6', `A list is marked as ordered (${numbering}), and its items have no labels.`);
}
