import { decodePDFRawStream, PDFDict, PDFDocument, PDFName, PDFRawStream } from 'pdf-lib';

/** Opens a file to be changed. */
export async function load(bytes: Uint8Array): Promise<PDFDocument> {
  return PDFDocument.load(bytes, { updateMetadata: false });
}

/** The content of a page as text. */
export async function contentOf(bytes: Uint8Array, page = 1): Promise<string> {
  const stream = (await load(bytes)).getPage(page - 1).node.lookup(PDFName.of('Contents'));
  if (!(stream instanceof PDFRawStream)) throw new Error('The page has no content.');
  return Buffer.from(decodePDFRawStream(stream).decode()).toString('latin1');
}

/** Every dictionary of the file that has an entry of this name and value. */
export function dictionariesWith(document: PDFDocument, key: string, value: string): PDFDict[] {
  return document.context
    .enumerateIndirectObjects()
    .map(([, object]) => (object instanceof PDFRawStream ? object.dict : object))
    .filter((object) => object instanceof PDFDict)
    .filter((dict) => dict.lookup(PDFName.of(key)) === PDFName.of(value));
}
