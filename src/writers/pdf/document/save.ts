import { createHash } from 'node:crypto';
import { type PDFContext, PDFHexString, PDFStreamWriter } from 'pdf-lib';

/** The finished file. Its identifier is a hash of its objects, so that same pages give same bytes. */
export async function saveObjects(context: PDFContext): Promise<Uint8Array> {
  const hash = createHash('sha256');
  for (const [ref, object] of context.enumerateIndirectObjects()) {
    const bytes = new Uint8Array(object.sizeInBytes());
    object.copyBytesInto(bytes, 0);
    hash.update(`${ref.objectNumber} `).update(bytes);
  }
  const id = PDFHexString.of(hash.digest('hex').slice(0, 32).toUpperCase());
  context.trailerInfo.ID = context.obj([id, id]);
  return PDFStreamWriter.forContext(context, Number.POSITIVE_INFINITY).serializeToBuffer();
}
