import {
  decodePDFRawStream,
  PDFArray,
  PDFBool,
  type PDFContext,
  PDFDict,
  PDFHexString,
  PDFName,
  PDFNumber,
  type PDFObject,
  PDFRawStream,
  PDFRef,
  PDFStream,
  PDFString,
} from 'pdf-lib';

/** A finished file, opened to be read. */
export interface File {
  readonly context: PDFContext;
  readonly catalog: PDFDict;
}

/** The thing itself, where a reference may stand for it. */
export function resolve(file: File, object: PDFObject | undefined): PDFObject | undefined {
  return object instanceof PDFRef ? file.context.lookup(object) : object;
}

/** An entry of a dictionary or of a stream's dictionary. */
export function entry(file: File, holder: PDFObject | undefined, key: string): PDFObject | undefined {
  return resolve(file, dictionaryOf(resolve(file, holder))?.get(PDFName.of(key)));
}

/** An entry as it stands, a reference left a reference. */
export function rawEntry(holder: PDFObject | undefined, key: string): PDFObject | undefined {
  return dictionaryOf(holder)?.get(PDFName.of(key));
}

export function dictionaryOf(object: PDFObject | undefined): PDFDict | undefined {
  if (object instanceof PDFDict) return object;
  return object instanceof PDFStream ? object.dict : undefined;
}

export function nameOf(object: PDFObject | undefined): string | undefined {
  return object instanceof PDFName ? object.decodeText() : undefined;
}

export function numberOf(object: PDFObject | undefined): number | undefined {
  return object instanceof PDFNumber ? object.asNumber() : undefined;
}

export function isTrue(object: PDFObject | undefined): boolean {
  return object instanceof PDFBool && object.asBoolean();
}

export function textOf(object: PDFObject | undefined): string | undefined {
  return object instanceof PDFString || object instanceof PDFHexString ? object.decodeText() : undefined;
}

/** The members of an array; one thing alone counts as an array of one, nothing as none. */
export function listOf(object: PDFObject | undefined): readonly PDFObject[] {
  if (object instanceof PDFArray) return object.asArray();
  return object === undefined ? [] : [object];
}

/** The bytes of a stream, unpacked; `undefined` where there is none. */
export function bytesOf(object: PDFObject | undefined): Uint8Array | undefined {
  if (!(object instanceof PDFRawStream)) return undefined;
  return decodePDFRawStream(object).decode();
}

/** Equal for two references to one object. */
export function sameRef(a: PDFObject | undefined, b: PDFObject | undefined): boolean {
  return a instanceof PDFRef && b instanceof PDFRef && a.tag === b.tag;
}
