import type { PDFObject } from 'pdf-lib';
import type { Findings } from './finding.js';
import type { ReadPage } from './links-to-pages.js';
import { entry, type File, listOf, nameOf, numberOf, resolve, sameRef, textOf } from './objects.js';
import { saysSomething, type Words } from './parts.js';
import type { Part, Structure } from './structure.js';

/** The role of the element that each kind of annotation belongs to. */
const OWNER: Readonly<Record<string, string>> = { Link: 'Link', Widget: 'Form' };

/** The clause that rules each kind. */
const CLAUSE: Readonly<Record<string, string>> = { Link: '7.18.5', Widget: '7.18.4' };

/** Rules for links and other things that can be clicked. */
export function checkAnnotations(
  file: File,
  pages: readonly ReadPage[],
  structure: Structure,
  words: Words,
  findings: Findings,
): void {
  for (const page of pages) {
    if (nameOf(entry(file, page.dict, 'Tabs')) !== 'S')
      findings.add('7.18.3', 'The page does not say that the tab key follows the structure.', page.number);
    for (const annotation of listOf(entry(file, page.dict, 'Annots')))
      checkAnnotation(file, annotation, page.number, structure, findings);
  }
  for (const part of structure.parts) {
    if (part.role !== 'Link') continue;
    if (part.objects.length === 0) findings.add('7.18.5', `A link${words(part)} leads nowhere.`);
    if (!saysSomething(part)) findings.add('7.18.5', 'A link has no words.');
  }
}

function checkAnnotation(
  file: File,
  annotation: PDFObject,
  number: number,
  structure: Structure,
  findings: Findings,
): void {
  const dict = resolve(file, annotation);
  const kind = nameOf(entry(file, dict, 'Subtype')) ?? 'unknown';
  // A pop-up belongs to its annotation and stands in no structure.
  if (kind === 'Popup') return;
  const owner = ownerOf(annotation, structure);
  const wanted = OWNER[kind] ?? 'Annot';
  const clause = CLAUSE[kind] ?? '7.18.1';
  if (owner?.role !== wanted)
    findings.add(
      clause,
      `An annotation (${kind}) does not belong to an element of the kind ${wanted}.`,
      number,
    );
  const key = numberOf(entry(file, dict, 'StructParent'));
  if (owner && !sameRef(structure.parentsAt(key), owner.ref))
    findings.add(
      clause,
      `The parent tree does not lead from an annotation (${kind}) to its element.`,
      number,
    );
  const says = textOf(entry(file, dict, kind === 'Widget' ? 'TU' : 'Contents'));
  if (!says?.trim())
    findings.add(clause, `An annotation (${kind}) has no words that say what it is for.`, number);
}

function ownerOf(annotation: PDFObject, structure: Structure): Part | undefined {
  return structure.parts.find((part) => part.objects.some((object) => sameRef(object, annotation)));
}
