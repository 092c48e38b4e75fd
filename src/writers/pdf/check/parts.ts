import { PDFArray } from 'pdf-lib';
import type { Findings } from './finding.js';
import { entry, type File, listOf, nameOf, numberOf, resolve, textOf } from './objects.js';
import type { Part, Structure } from './structure.js';

/** Standard structure types (ISO 32000-1, 14.8.4). */
const STANDARD = new Set(
  (
    'Document Part Art Sect Div BlockQuote Caption TOC TOCI Index NonStruct Private P H H1 H2 H3 H4 H5 H6 ' +
    'L LI Lbl LBody Table TR TH TD THead TBody TFoot Span Quote Note Reference BibEntry Code Link Annot ' +
    'Ruby RB RT RP Warichu WT WP Figure Formula Form'
  ).split(' '),
);

/** Elements that only group others (ISO 32000-1, 14.8.4.2 and 14.8.4.3). */
const GROUPS = new Set(['Document', 'Sect', 'Div', 'L', 'LI', 'Table', 'THead', 'TBody', 'TR']);

/** What an element says, for messages. */
export type Words = (part: Part) => string;

/** Rules that hold for single elements and for headings. */
export function checkParts(file: File, structure: Structure, words: Words, findings: Findings): void {
  const noteIds = new Set<string>();
  let level = 0;
  for (const part of structure.parts) {
    const { role, dict } = part;
    if (!STANDARD.has(role)) findings.add('7.1', `"${role}" is no standard role.`);
    if (GROUPS.has(role) && part.marked.length > 0)
      findings.add('7.1', `Content stands directly in an element (${role}) that only groups others.`);
    const language = textOf(entry(file, dict, 'Lang'));
    if (language !== undefined && !isLanguageTag(language))
      findings.add('7.2', `"${language}" is no language tag.`);
    if (role === 'Figure') checkFigure(file, part, findings);
    if (role === 'Form' && !textOf(entry(file, dict, 'Alt')) && part.objects.length === 0)
      findings.add('7.18.4', 'A place to write has no words that say what it is for.');
    if (role === 'Note') {
      const id = textOf(entry(file, dict, 'ID'));
      if (!id) findings.add('7.9', `A note has no ID${words(part)}.`);
      else if (noteIds.has(id)) findings.add('7.9', `Two notes have the same ID "${id}".`);
      noteIds.add(id ?? '');
    }
    const heading = /^H([1-6])$/.exec(role);
    if (heading) {
      const next = Number(heading[1]);
      if (next > level + 1)
        findings.add(
          '7.4.2',
          level === 0
            ? `The first heading${words(part)} is of level ${next}, not 1.`
            : `A heading${words(part)} jumps from level ${level} to ${next}.`,
        );
      if (!saysSomething(part)) findings.add('7.4.2', `A heading of level ${next} is empty.`);
      level = next;
    }
  }
}

function checkFigure(file: File, part: Part, findings: Findings): void {
  const alt = textOf(entry(file, part.dict, 'Alt')) ?? textOf(entry(file, part.dict, 'ActualText')) ?? '';
  const which = alt.trim() === '' ? '' : ` ("${shorten(alt)}")`;
  if (which === '') findings.add('7.3', 'A figure has no alternative text.');
  const box = attribute(file, part, 'Layout', 'BBox');
  const corners = box instanceof PDFArray ? box.asArray().map((n) => numberOf(resolve(file, n))) : [];
  const [left = 0, low = 0, right = 0, high = 0] = corners;
  if (corners.length !== 4 || corners.includes(undefined) || right <= left || high <= low)
    findings.add('7.3', `A figure${which} has no bounding box.`);
  if (!saysSomething(part)) findings.add('7.3', `A figure${which} has nothing drawn in it.`);
}

/** An attribute of an owner, from the element's attribute objects. */
export function attribute(file: File, part: Part, owner: string, key: string) {
  for (const item of listOf(entry(file, part.dict, 'A'))) {
    const attributes = resolve(file, item);
    if (nameOf(entry(file, attributes, 'O')) !== owner) continue;
    const value = entry(file, attributes, key);
    if (value) return value;
  }
  return undefined;
}

/** True when some content stands in the element or below it. */
export function saysSomething(part: Part): boolean {
  return part.marked.length > 0 || part.kids.some(saysSomething);
}

/** A language tag as RFC 3066 has it, which PDF asks for. */
export function isLanguageTag(text: string): boolean {
  return /^[a-z]{1,8}(-[a-z0-9]{1,8})*$/i.test(text);
}

export function shorten(text: string): string {
  return text.length > 50 ? `${text.slice(0, 49)}…` : text;
}
