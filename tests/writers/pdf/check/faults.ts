import {
  decodePDFRawStream,
  PDFArray,
  type PDFDict,
  type PDFDocument,
  PDFName,
  type PDFObject,
  PDFRawStream,
} from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { createReport } from '../../../../src/diagnostics/index.js';
import { checkPdf, writePdf } from '../../../../src/writers/pdf/index.js';
import { handout } from '../handout.js';
import { dictionariesWith, load } from '../objects.js';

/**
 * Every rule is broken once, in a finished file that was without fault. The rules are those of
 * ISO 14289-1:2014, each named by its clause as in veraPDF's published PDF/UA-1 validation profile;
 * rules beyond those (one title, no scripts) are our own.
 */
export type Change = (document: PDFDocument) => void;

export const name = PDFName.of;

export function first(document: PDFDocument, key: string, value: string): PDFDict {
  const found = dictionariesWith(document, key, value)[0];
  if (!found) throw new Error(`No ${value} in the file.`);
  return found;
}

/** The elements of a role, in the order of the structure. */
export const elements = (document: PDFDocument, role: string) => dictionariesWith(document, 'S', role);
export const element = (document: PDFDocument, role: string, index = 0) => {
  const found = elements(document, role)[index];
  if (!found) throw new Error(`No ${role} in the file.`);
  return found;
};

export function refOf(document: PDFDocument, object: PDFObject) {
  const ref = document.context.getObjectRef(object);
  if (!ref) throw new Error('The object has no number.');
  return ref;
}

export const kids = (dict: PDFDict) => dict.lookup(name('K'), PDFArray);

export function stream(
  document: PDFDocument,
  holder: PDFDict,
  key: string,
  edit: (text: string) => string,
): void {
  const old = holder.lookup(name(key));
  if (!(old instanceof PDFRawStream)) throw new Error(`${key} is no stream.`);
  const text = Buffer.from(decodePDFRawStream(old).decode()).toString('latin1');
  const changed = edit(text);
  if (changed === text) throw new Error(`Nothing changed in ${key}.`);
  const entries = Object.fromEntries(
    old.dict
      .entries()
      .map(([k, v]) => [k.decodeText(), v])
      .filter(([k]) => k !== 'Filter' && k !== 'Length'),
  );
  const bytes = Uint8Array.from(Buffer.from(changed, 'latin1'));
  holder.set(name(key), document.context.register(document.context.stream(bytes, entries)));
}

export const content = (document: PDFDocument, edit: (text: string) => string, page = 0) =>
  stream(document, document.getPage(page).node, 'Contents', edit);

export const xmp = (document: PDFDocument, edit: (text: string) => string) =>
  stream(document, document.catalog, 'Metadata', edit);

let clean: Promise<Uint8Array> | undefined;

/** A file without fault, changed. Without a change it is saved once more. */
export async function changed(change: Change = () => undefined): Promise<Uint8Array> {
  clean ??= writePdf(handout(), { name: 'handout.pdf' }, createReport());
  const document = await load(await clean);
  change(document);
  return document.save({ useObjectStreams: false, updateFieldAppearances: false });
}

export type Fault = readonly [what: string, change: Change, rule: string, message: RegExp];

/** Breaks a rule at a time and expects the finding. */
export function describeFaults(what: string, faults: readonly Fault[]): void {
  describe(`the check of ${what}`, () => {
    it.each(faults)('finds %s', async (_, change, rule, message) => {
      const findings = await checkPdf(await changed(change));
      expect(findings).toContainEqual(
        expect.objectContaining({ rule, message: expect.stringMatching(message) }),
      );
    });
  });
}
