import { parseXml, XmlElement } from '@rgrove/parse-xml';
import { PDFArray, PDFDict, type PDFObject, PDFStream } from 'pdf-lib';
import type { Findings } from './finding.js';
import { bytesOf, dictionaryOf, entry, type File, isTrue, nameOf, textOf } from './objects.js';
import { isLanguageTag } from './parts.js';

/** Rules for the whole file: language, title, metadata, no scripts. */
export function checkDocument(file: File, findings: Findings): void {
  const { catalog, context } = file;
  const mark = entry(file, catalog, 'MarkInfo');
  if (!isTrue(entry(file, mark, 'Marked'))) findings.add('7.1', 'The file does not say that it is tagged.');
  if (isTrue(entry(file, mark, 'Suspects'))) findings.add('7.1', 'The file calls its own tags doubtful.');
  if (!isTrue(entry(file, entry(file, catalog, 'ViewerPreferences'), 'DisplayDocTitle')))
    findings.add('7.1', 'The window would show the name of the file instead of the title.');
  const language = textOf(entry(file, catalog, 'Lang'));
  if (!language) findings.add('7.2', 'The file has no language.');
  else if (!isLanguageTag(language)) findings.add('7.2', `"${language}" is no language tag.`);
  checkMetadata(file, language, findings);
  if (context.trailerInfo.Encrypt) findings.add('7.16', 'The file is locked.');
  if (entry(file, entry(file, catalog, 'AcroForm'), 'XFA'))
    findings.add('7.15', 'The file holds a dynamic form.');
  if (entry(file, catalog, 'AA') || runsOnOpening(file))
    findings.add('7.19', 'The file does something when it is opened.');
  for (const [, object] of context.enumerateIndirectObjects()) checkActions(file, object, findings, 0);
}

function runsOnOpening(file: File): boolean {
  const action = entry(file, file.catalog, 'OpenAction');
  // A place to open at is fine; an action that is not a jump is not.
  return action instanceof PDFDict && nameOf(entry(file, action, 'S')) !== 'GoTo';
}

/** Scripts, programs and addresses of an unsafe kind, wherever they stand. */
function checkActions(file: File, object: PDFObject | undefined, findings: Findings, depth: number): void {
  if (depth > 30) return;
  if (object instanceof PDFArray)
    for (const item of object.asArray()) checkActions(file, item, findings, depth + 1);
  const dict = dictionaryOf(object);
  if (!dict) return;
  const kind = nameOf(entry(file, dict, 'S'));
  if (entry(file, dict, 'JS') || kind === 'JavaScript') findings.add('7.19', 'The file holds a script.');
  if (kind === 'Launch' || kind === 'SubmitForm' || kind === 'ImportData')
    findings.add('7.19', `The file holds an action that a handout must not have: ${kind}.`);
  if (kind === 'URI') {
    const address = textOf(entry(file, dict, 'URI')) ?? '';
    if (!/^(https?|mailto|tel):/i.test(address))
      findings.add('7.19', `A link leads to "${address}", which is unsafe.`);
  }
  for (const value of dict.values())
    if (!(value instanceof PDFStream)) checkActions(file, value, findings, depth + 1);
}

function checkMetadata(file: File, language: string | undefined, findings: Findings): void {
  const title = textOf(entry(file, file.context.trailerInfo.Info, 'Title'));
  if (!title?.trim()) findings.add('7.1', 'The file has no title.');
  const bytes = bytesOf(entry(file, file.catalog, 'Metadata'));
  if (!bytes) {
    findings.add('7.1', 'The file has no metadata.');
    return;
  }
  const root = parsed(new TextDecoder().decode(bytes));
  if (!root) {
    findings.add('7.1', 'The metadata cannot be read.');
    return;
  }
  const said = (name: string) => valueIn(root, name)?.trim();
  if (!said('dc:title')) findings.add('7.1', 'The metadata has no title.');
  else if (said('dc:title') !== title?.trim())
    findings.add('7.1', `The metadata's title is "${said('dc:title')}" and the file's is "${title ?? ''}".`);
  if (language && said('dc:language') !== language)
    findings.add(
      '7.2',
      `The metadata's language is "${said('dc:language') ?? ''}" and the file's is "${language}".`,
    );
  if (said('pdfuaid:part') !== '1') findings.add('5', 'The metadata does not say that the file is PDF/UA-1.');
}

function parsed(text: string): XmlElement | undefined {
  try {
    return parseXml(text.replace(/^\uFEFF/, '')).root ?? undefined;
  } catch {
    return undefined;
  }
}

/** Text of the first element of a name, or of an attribute of that name, as XMP allows either. */
function valueIn(element: XmlElement, name: string): string | undefined {
  if (element.name === name) return element.text;
  const attribute = element.attributes[name];
  if (attribute !== undefined) return attribute;
  for (const child of element.children) {
    const found = child instanceof XmlElement ? valueIn(child, name) : undefined;
    if (found !== undefined) return found;
  }
  return undefined;
}
